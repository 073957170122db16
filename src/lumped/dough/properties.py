"""What can be asked of a dough that was followed through: one row a property, the same for maps and comparisons."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from difflib import get_close_matches
from functools import cache
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds, molar_mass_of
from lumped.chemistry.solubility import is_limited, solubility
from lumped.dough.bowl import salt_rows
from lumped.dough.chain import Chain
from lumped.errors import InputError
from lumped.quantities import Value, drawn, figure_text
from lumped.texts import say

__all__ = [
    "LUMP", "PROPERTIES", "Property", "drawn_prices", "find_property", "middle_prices", "salt_excess",
    "solid_salt", "spent", "sugar_excess", "sugar_rows",
]  # fmt: skip

Array = NDArray[np.float64]
LUMP = 0.060  # kg; a ball that fills a child's hand, as everywhere in Lumped where "a lump" is weighed
_TINY = 1e-12
_SUGARS = ("sucrose", "glucose", "fructose", "sorbitol")
_POURS = 20.0  # water to flour; with more of it or without flour nobody asks how much


@dataclass(frozen=True, slots=True, kw_only=True)
class Property:
    """Something that a dough has.

    Parameters
    ----------
    key : str
        What programs call it.
    unit : str
        SI unit.
    shown : str
        Unit in which people read it; "money" stands for the money in which prices are given.
    factor : float
        From the SI unit to the one that people read. [1]
    steps : {"even", "ratio"}
        Whether levels are equal steps, or equal ratios as for a resistivity.
    span : (float, float)
        What a picture shows of it at least and at most. [unit]
    of : callable
        Takes a chain of (n,) doughs and what each cost, gives (n,). [unit]
    """

    key: str
    unit: str
    shown: str
    factor: float
    steps: Literal["even", "ratio"]
    span: tuple[float, float]
    of: Callable[[Chain, Array], Array]

    @property
    def words(self) -> str:
        """What people call it."""
        return say(f"property-{self.key.replace('_', '-')}")

    def text(self, value: Value | float, money: str = "") -> str:
        """Write a figure of it as people read it, with its interval if it has one."""
        unit = self.shown.replace("money", money)
        if not isinstance(value, Value):
            return f"{figure_text(self.factor * value, unit)} {unit}".strip()
        ends = {end: self.factor * getattr(value, end) for end in ("mean", "low", "high")}
        return replace(value, unit=unit, **ends).text()

    def given(self, chain: Chain, cost: Array | None = None) -> Array:
        """Give it for doughs. [unit]

        Raises
        ------
        InputError
            If it needs prices and there are none.
        """
        if self.key == "cost" and cost is None:
            raise InputError("map-no-prices")
        found = self.of(chain, np.zeros(1) if cost is None else cost)
        return np.array(np.broadcast_to(found, chain.mass.shape))

    def drawn(self, values: Array) -> Array:
        """Give values as a picture can show them, within its span. [unit]"""
        return np.asarray(np.clip(values, *self.span))


def solid_salt(chain: Chain) -> Array:
    """Give the share of a dough's mass that is salt which did not dissolve. [1]"""
    rows = list(salt_rows())
    solid = (chain.components[rows] - chain.dissolved[rows]).sum(axis=0)
    return np.asarray(solid / np.maximum(chain.mass, _TINY))


def salt_excess(chain: Chain) -> Array:
    """Give how much more salt there is than the water holds, as a share of the dough; below 0 what it could still take.

    Next to the limit it goes on evenly through 0, so that a border can be drawn along it. Salts that share an ion
    are taken as if alone below 0, and as they are above.
    """
    return _excess(chain, salt_rows(), solid_salt(chain))


def sugar_excess(chain: Chain) -> Array:
    """Give how much more sugar there is than the water holds, as `salt_excess` does for salt."""
    rows = sugar_rows()
    solid = (chain.components[list(rows)] - chain.dissolved[list(rows)]).sum(axis=0) / np.maximum(chain.mass, _TINY)
    return _excess(chain, rows, np.asarray(solid))


def _excess(chain: Chain, rows: Iterable[int], solid: Array) -> Array:
    """What is solid, a share of the dough; where nothing is, what the water could still take, below 0."""
    limited = [row for row in rows if is_limited(compounds()[row].key) and chain.components[row].any()]
    if not limited:
        return np.full_like(chain.mass, -1.0)
    limits = np.array([[float(solubility(compounds()[row].key, chain.temperature))] for row in limited])
    beyond = np.max(chain.components[limited] - limits * chain.liquid_water, axis=0) / np.maximum(chain.mass, _TINY)
    return np.where(solid > _TINY, solid, np.minimum(beyond, 0.0))


def spent(keys: tuple[str, ...], masses: Array, prices: Mapping[str, Array] | None) -> Array | None:
    """Give what recipes cost.

    Parameters
    ----------
    keys : tuple of str
        The ingredients.
    masses : (I, n) float
        Mass of each. [kg]
    prices : mapping of str to (n,) or (1,) float, or None
        Price of each ingredient. [money/kg]

    Returns
    -------
    (n,) float or None
        Money; None if a price is missing.

    Examples
    --------
    >>> spent(("table-salt",), np.array([[0.5]]), {"table-salt": np.array([0.8])}).tolist()
    [0.4]
    """
    if prices is None or any(key not in prices for key in keys):
        return None
    return np.asarray(sum(masses[row] * prices[key] for row, key in enumerate(keys)))


def middle_prices(prices: Mapping[str, Value] | None) -> dict[str, Array] | None:
    """Give the middle of each price, (1,). [money/kg]"""
    return None if prices is None else {key: np.array([each.mean]) for key, each in prices.items()}


def drawn_prices(prices: Mapping[str, Value] | None) -> dict[str, Array] | None:
    """Draw each price, the same in every recipe, (DRAWS,). [money/kg]"""
    if prices is None:
        return None
    found = drawn({f"price {key}": each for key, each in prices.items()})
    return {key: found[f"price {key}"] for key in prices}


@cache
def sugar_rows() -> tuple[int, ...]:
    """Rows of the sugars whose solubility is known, sorbitol among them."""
    return tuple(row for row, each in enumerate(compounds()) if each.key in _SUGARS)


@cache
def _sodium() -> Array:
    """Sodium in a mass of each compound. [1]"""
    sodium = molar_mass_of("Na")
    return np.array([each.atoms.get("Na", 0) * sodium / (each.molar_mass or np.inf) for each in compounds()])


def _of_mass(part: Array, chain: Chain) -> Array:
    return np.asarray(part / np.maximum(chain.mass, _TINY))


PROPERTIES = {
    each.key: each
    for each in (
        Property(key="resistivity", unit="Ω·m", shown="Ω·m", factor=1.0, steps="ratio", span=(1e-3, 1e7),
                 of=lambda chain, cost: chain.resistivity),
        Property(key="water_activity", unit="", shown="", factor=1.0, steps="even", span=(0.0, 1.0),
                 of=lambda chain, cost: chain.water_activity),
        Property(key="hydration", unit="", shown="%", factor=1e2, steps="ratio", span=(0.05, 20.0),
                 of=lambda chain, cost: np.minimum(chain.hydration, _POURS)),
        Property(key="ph", unit="", shown="", factor=1.0, steps="even", span=(0.0, 14.0),
                 of=lambda chain, cost: chain.ph),
        Property(key="sodium", unit="kg", shown="mg", factor=1e6, steps="even", span=(0.0, LUMP),
                 of=lambda chain, cost: LUMP * _of_mass(_sodium() @ chain.components, chain)),
        Property(key="cost", unit="money/kg", shown="money/kg", factor=1.0, steps="even", span=(0.0, 1e6),
                 of=lambda chain, cost: _of_mass(cost, chain)),
        Property(key="salt_solid", unit="", shown="%", factor=1e2, steps="even", span=(0.0, 1.0),
                 of=lambda chain, cost: solid_salt(chain)),
        Property(key="free_water", unit="", shown="%", factor=1e2, steps="even", span=(0.0, 1.0),
                 of=lambda chain, cost: _of_mass(chain.free_water, chain)),
        Property(key="liquid_share", unit="", shown="%", factor=1e2, steps="even", span=(0.0, 1.0),
                 of=lambda chain, cost: chain.liquid_share),
        Property(key="density", unit="kg/m³", shown="kg/m³", factor=1.0, steps="even", span=(0.0, 5e3),
                 of=lambda chain, cost: chain.density),
    )
}  # fmt: skip


def find_property(word: str) -> Property:
    """Find a property by its key or its words.

    Raises
    ------
    InputError
        If there is none; the sentence names what looks alike, or all.

    Examples
    --------
    >>> find_property("water activity").key
    'water_activity'
    """
    asked = word.strip().casefold().replace(" ", "_").replace("-", "_")
    if asked in PROPERTIES:
        return PROPERTIES[asked]
    near = get_close_matches(asked, PROPERTIES, n=3, cutoff=0.6)
    shown = ", ".join(each.replace("_", "-") for each in near or PROPERTIES)
    if near:
        raise InputError("map-property-near", word=word, near=shown)
    raise InputError("map-property", word=word, known=shown)
