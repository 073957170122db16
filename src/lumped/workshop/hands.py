"""How long hands take: weighing, cooking by what the stove gives, kneading, washing, handing out.

A pot of dough is done when it is hot and its steam has left, so a batch cooks for
`t = (m c ΔT + m_steam L) / P`, with what passes into the pot for P: twice the dough takes twice as long.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.vapour import evaporation_heat
from lumped.dough.kneading import Kneading
from lumped.dough.lasting import WarmDough, warm_from
from lumped.quantities import Provenance, Value, believed, drawn
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Step", "Work", "work_of"]

Array = NDArray[np.float64]
_WATER_HEAT = 4186.0  # J/(kg·K)
_BOILS = 373.15
_HANDS = ("setting_out", "weighing", "kneading", "kneading_more", "pressing", "washing", "sharing")


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One kind of work.

    Parameters
    ----------
    key, words : str
        What programs and people call it.
    time : Value
        How long it takes altogether. [s]
    """

    key: str
    words: str
    time: Value


@dataclass(frozen=True, slots=True, kw_only=True)
class Work:
    """What making a dough asks of hands and stove, in draws.

    Parameters
    ----------
    way : str
        How it is heated.
    ingredients : int
        How many are weighed in.
    groups_per_mass : float
        Among how many groups a kilogram is shared out. [1/kg]
    heating : (n,) float
        How long the stove takes for a kilogram of dough. [s/kg]
    hot : (n,) float
        How warm the dough is when it is made. [K]
    hands : mapping of str to (n,) float
        Each kind of handwork, as the handbook names it. [s]
    warm : WarmDough
        The dough, as cooling needs it; (n,).
    provenance : Provenance
        Where all this comes from.
    """

    way: str
    ingredients: int
    groups_per_mass: float
    heating: Array
    hot: Array
    hands: Mapping[str, Array]
    warm: WarmDough
    provenance: Provenance

    def parts(self, mass: ArrayLike, count: ArrayLike, *, pressed: bool = False) -> dict[str, Array]:
        """Give how long each kind of work takes.

        Parameters
        ----------
        mass : (...) float
            Dough of all batches. [kg]
        count : (...) float
            How many batches.
        pressed : bool
            Whether it is rolled out thin to cool.

        Returns
        -------
        dict of str to (..., n) float
            By kind of work. [s]
        """
        mass, count = (np.asarray(each, float)[..., None] for each in (mass, count))
        hands = self.hands
        found = {
            "setting_out": hands["setting_out"] + 0 * mass,
            "weighing": count * self.ingredients * hands["weighing"],
            "cooking": mass * self.heating,
            "kneading": count * hands["kneading"] + mass * hands["kneading_more"],
            "pressing": mass * hands["pressing"] if pressed else 0 * mass * self.heating,
            "washing": (count - 1) * hands["washing"],
            "sharing": mass * self.groups_per_mass * hands["sharing"],
        }
        return {key: np.asarray(each) for key, each in found.items()}

    def active(self, mass: ArrayLike, count: ArrayLike, *, pressed: bool = False) -> Array:
        """Give how long one person is busy. (..., n) [s]"""
        return np.asarray(sum(self.parts(mass, count, pressed=pressed).values()))

    def steps(self, mass: float, count: int) -> tuple[Step, ...]:
        """Give each kind of work that there is."""
        return tuple(
            Step(key=key, words=say(f"work-{key.replace('_', '-')}"), time=self.value(each))
            for key, each in self.parts(mass, count).items() if np.any(each > 0)
        )  # fmt: skip

    def value(self, draws: Array) -> Value:
        """Give what draws of a time say. [s]"""
        return believed(draws, unit="s", provenance=self.provenance)


def work_of(done: Kneading, *, groups_per_mass: float = 0.0) -> Work:
    """Work out what making a dough asks of hands and stove.

    Parameters
    ----------
    done : Kneading
        The recipe followed through.
    groups_per_mass : float
        Among how many groups a kilogram of the dough is shared out. [1/kg]

    Examples
    --------
    >>> from lumped.dough import Portion, Recipe
    >>> from lumped.dough.kneading import kneading
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> work = work_of(kneading(Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")))
    >>> 3 < work.value(work.parts(0.4, 1)["cooking"]).mean / 60 < 8  # a small pot takes a few minutes
    True
    """
    values = {key: handbook().value("workshop", "hands", key) for key in _HANDS}
    cooked = done.recipe.cooked
    if cooked != "not cooked":
        values |= {key: handbook().value("workshop", "heating", key) for key in (cooked, f"done_{cooked}", "beginning")}
    found, warm = drawn(values), warm_from(done.chain)
    hot = found[f"done_{cooked}"] if cooked != "not cooked" else np.full(len(found["weighing"]), np.nan)
    return Work(
        way=cooked, ingredients=len(done.recipe.ingredients), groups_per_mass=groups_per_mass, hot=hot, warm=warm,
        heating=_heating(done, found, warm), hands={key: found[key] for key in _HANDS},
        provenance=Provenance.of([done.provenance, *(value.provenance for value in values.values())]),
    )  # fmt: skip


def _heating(done: Kneading, found: Mapping[str, Array], warm: WarmDough) -> Array:
    """How long the stove takes for a kilogram of dough. [s/kg]"""
    chain, cooked = done.chain, done.recipe.cooked
    if cooked == "not cooked":
        return np.zeros_like(chain.mass)
    if cooked == "kettle":
        water = chain.of("water") + chain.water_lost
        heat = water * _WATER_HEAT * (_BOILS - found["beginning"])
    else:
        rise = found[f"done_{cooked}"] - found["beginning"]
        heat = chain.went_in * np.asarray(warm.capacity) * rise + chain.water_lost * evaporation_heat(_BOILS)
    return np.asarray(heat / (chain.mass * found[cooked]))
