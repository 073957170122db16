"""What a recipe leaves open, as values with intervals, and as draws; a calibration narrows it."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from lumped.dough.bowl import natural_salts
from lumped.dough.chain import Unknowns
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.quantities import LEVEL, Provenance, Status, Value, drawn
from lumped.reference import handbook

if TYPE_CHECKING:
    from lumped.dough.calibrating import Calibration

__all__ = ["Draws", "beliefs", "draws", "middle", "sorted_out", "spread_over"]

Array = NDArray[np.float64]
_MEMORY = Provenance(status=Status.FROM_MEMORY)
_TABLES = Provenance(status=Status.COMPUTED, note="in half-widths of the interval that the tables of liquids give")
_DOUGH = {
    # field of Unknowns: row of the handbook's entry `unmeasured`
    "bound_water": "bound_water", "archie_exponent": "archie_exponent", "walden_exponent": "walden_exponent",
    "air": "air", "percolation": "percolation", "mobile_single": "mobile_potassium",
    "mobile_double": "mobile_magnesium", "dry_conductivity": "dry_conductivity", "picture": "picture",
    "flour_ph": "flour_ph", "flour_binding": "flour_binding",
    "activity_error": "activity_error", "scatter": "scatter",
}  # fmt: skip
_TOLD = ((1 - LEVEL) / 2, 0.5, (1 + LEVEL) / 2)  # shares of the draws below the figures of a value
_LIMITS = {"bound_water": (0.0, 2.0), "air": (0.0, 0.5), "mobile_double": (0.0, 1.0), "percolation": (0.0, 0.3)}


@dataclass(frozen=True, slots=True, kw_only=True)
class Draws:
    """Draws of all that is open, as the chain takes them.

    Parameters
    ----------
    masses : (I, n) float
        Mass of each ingredient, in the order of `keys`. [kg]
    lost_share, weighed_after : (n,) float
        Share of water that leaves as steam, and the weight of the finished dough if it is known. [1], [kg]
    moisture, minerals : mapping of int to (n,) float
        Water and minerals of an ingredient, by its row. [1]
    unknowns : Unknowns
        The rest.
    """

    keys: tuple[str, ...]
    masses: Array
    lost_share: Array
    weighed_after: Array | None
    moisture: Mapping[int, Array]
    minerals: Mapping[int, Array]
    unknowns: Unknowns

    def first(self, count: int) -> "Draws":
        """Give the first so many; their order is shuffled by design, so that they are spread like all."""
        return self._each(lambda draws: draws[..., :count])

    def taken(self, places: NDArray[np.int64]) -> "Draws":
        """Give those at some places, such as `spread_over` finds."""
        count = self.masses.shape[1]
        return self._each(lambda draws: np.broadcast_to(draws, (*draws.shape[:-1], count))[..., places])

    def repeated(self, times: int) -> "Draws":
        """Give all of them so many times, one round after the other, for as many variants of a recipe."""
        count = self.masses.shape[1]
        return self._each(lambda draws: np.tile(np.broadcast_to(draws, (*draws.shape[:-1], count)), times))

    def _each(self, change: "Callable[[Array], Array]") -> "Draws":
        """Change every array of draws."""
        unknowns = {name: change(getattr(self.unknowns, name)) for name in Unknowns.__dataclass_fields__}
        return replace(
            self, masses=change(self.masses), lost_share=change(self.lost_share), unknowns=Unknowns(**unknowns),
            weighed_after=None if self.weighed_after is None else change(self.weighed_after),
            moisture={row: change(each) for row, each in self.moisture.items()},
            minerals={row: change(each) for row, each in self.minerals.items()},
        )  # fmt: skip


def beliefs(recipe: Recipe, pantry: Pantry) -> dict[str, Value]:
    """Give all that is uncertain of a dough: amounts, steam, moisture and minerals, and what no recipe says.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    pantry : Pantry
        What the ingredients are.

    Returns
    -------
    dict of str to Value
        By name: "mass N" and "needed N" for portion N (from 1), "moisture KEY", "minerals KEY", "water_lost",
        "weighed_after", "brine_error", and the fields of `Unknowns`.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> from lumped.dough import Portion
    >>> flour = Portion(ingredient="plain-flour", written="1 g", mass=Value.exact(1e-3, "kg"))
    >>> found = beliefs(Recipe(title="", kind="insulating", portions=(flour,), cooked="not cooked"), pantry())
    >>> found["moisture plain-flour"].text()
    '0.119 (0.104 to 0.134)'
    """
    book = handbook()
    found = {name: book.value("doughs", "unmeasured", row) for name, row in _DOUGH.items()}
    found["brine_error"] = Value(mean=0.0, low=-1.0, high=1.0, unit="", provenance=_TABLES)
    found["water_lost"] = book.value("doughs", recipe.cooked.replace(" ", "-"), "water_lost")
    if recipe.weighed_after is not None:
        after = recipe.weighed_after
        half = max(0.01 * after, 1e-3)
        found["weighed_after"] = Value(mean=after, low=after - half, high=after + half, unit="kg", provenance=_MEMORY)
    for number, portion in enumerate(recipe.portions, 1):
        found[f"mass {number}"] = portion.mass
        if portion.as_needed is not None:
            low, high = portion.as_needed
            found[f"needed {number}"] = Value(
                mean=(low + high) / 2, low=low, high=high, unit="kg", provenance=_MEMORY, spread="uniform"
            )
    for key in recipe.ingredients:
        found[f"moisture {key}"], found[f"minerals {key}"] = pantry[key].moisture, pantry[key].minerals
    return found


def middle(recipe: Recipe, pantry: Pantry, calibration: "Calibration | None" = None) -> Draws:
    """Give the middle of what is believed, as one entry.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    pantry : Pantry
        What the ingredients are.
    calibration : Calibration, optional
        What measured batches taught of the obstruction.
    """
    values = beliefs(recipe, pantry)
    if calibration is not None:
        values |= calibration.values()
    return sorted_out(recipe, {name: np.array([value.mean]) for name, value in values.items()}, pantry, plain=True)


def draws(recipe: Recipe, pantry: Pantry, calibration: "Calibration | None" = None) -> tuple[Draws, dict[str, Array]]:
    """Draw all that is open.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    pantry : Pantry
        What the ingredients are.
    calibration : Calibration, optional
        What a measured batch taught of the obstruction.

    Returns
    -------
    Draws
        As the chain takes them.
    dict of str to (n,) float
        The same by name, as `beliefs` names them.
    """
    values = beliefs(recipe, pantry)
    named = drawn(values)
    if calibration is not None:
        named |= calibration.draws()
    for name, (low, high) in _LIMITS.items():
        named[name] = np.clip(named[name], low, high)
    return sorted_out(recipe, named, pantry), named


def sorted_out(recipe: Recipe, named: Mapping[str, Array], pantry: Pantry, *, plain: bool = False) -> Draws:
    """Sort draws by name, as `beliefs` names them, into what the chain takes; `plain` keeps to the table."""
    keys = recipe.ingredients
    masses = np.zeros((len(keys), len(named["picture"])))
    for number, portion in enumerate(recipe.portions, 1):
        masses[keys.index(portion.ingredient)] += np.maximum(named[f"mass {number}"], 0.0)
        if f"needed {number}" in named:
            masses[keys.index(portion.ingredient)] += named[f"needed {number}"]
    moisture, minerals = {}, {}
    if not plain:
        for row, key in enumerate(keys):
            if not pantry[key].moisture.is_exact:
                moisture[row] = np.clip(named[f"moisture {key}"], 0.0, 1.0)
            if natural_salts(pantry[key]):
                minerals[row] = named[f"minerals {key}"]
    return Draws(
        keys=keys, masses=masses, lost_share=np.clip(named["water_lost"], 0.0, 0.95),
        weighed_after=named.get("weighed_after"), moisture=moisture, minerals=minerals,
        unknowns=Unknowns(brine_error=named["brine_error"], **{name: named[name] for name in _DOUGH}),
    )  # fmt: skip


def spread_over(figure: Array, count: int) -> NDArray[np.int64]:
    """Give places of draws that stand for all of them in a figure: evenly from its least to its greatest.

    Parameters
    ----------
    figure : (n,) float
        What came of each draw.
    count : int
        How many stand for all; more than one.

    Returns
    -------
    (count,) int
        The median and the ends of an interval are those of all draws.

    Examples
    --------
    >>> spread_over(np.array([3.0, 1.0, 4.0, 1.5, 9.0]), 5).tolist()
    [1, 3, 0, 2, 4]

    Notes
    -----
    A quantile lies between two of the few: those two are the ones between which it lies in all of them.
    """
    most = len(figure) - 1
    places = np.linspace(0, most, count).round().astype(np.int64)
    for share in _TOLD:
        first = int(share * (count - 1))
        places[first : first + 2] = int(share * most) + np.arange(2)
    return np.asarray(np.argsort(figure, kind="stable")[places])
