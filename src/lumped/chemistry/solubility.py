"""How much dissolves in water, and what stays solid."""

from collections.abc import Iterable, Mapping
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.density import T20, brine_density
from lumped.quantities import Provenance, Value
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook
from lumped.reference.rows import Curve

__all__ = [
    "T20",
    "bitartrate_solubility",
    "brine_density",
    "is_limited",
    "parted",
    "salt_solubility",
    "solubility",
    "solubility_provenance",
    "solubility_value",
    "sugar_solubility",
]

Array = NDArray[np.float64]
_IN_OTHER_TABLES = {"sodium-chloride": ("nacl-solubility", "salt"), "sucrose": ("sucrose-solubility", "sugar")}
_SHARED = ("sodium-chloride", "potassium-chloride")
_ROUNDS = 12


def solubility(compound: str, temperature: ArrayLike) -> Array:
    """Give how much of a compound water holds.

    Parameters
    ----------
    compound : str
        Its key in the table `compounds`, without the water of its crystals.
    temperature : (...) float
        Temperature; beyond a table's ends the figure stays. [K]

    Returns
    -------
    (...) float
        Mass of it over mass of water, crystal water counted as water; infinite for liquids and for what no table
        limits. [1]

    Notes
    -----
    Each by itself: neighbours that share an ion hold less (see `parted` for the two chlorides).

    Examples
    --------
    >>> solubility("sodium-chloride", [273.25, 293.15, 373.15]).round(3).tolist()
    [0.357, 0.359, 0.391]
    >>> float(solubility("glycerol", 293.15))
    inf
    """
    warmth = np.asarray(temperature, float)
    if not is_limited(compound):
        return np.full_like(warmth, np.inf)
    held = _curve(compound)(warmth)
    return np.asarray(held / (1 - held) if compound in _IN_OTHER_TABLES else held)


@cache
def is_limited(compound: str) -> bool:
    """Tell whether a table limits how much of a compound water holds.

    Examples
    --------
    >>> is_limited("sucrose"), is_limited("acetic-acid")
    (True, False)
    """
    return compound in _IN_OTHER_TABLES or f"solubility-{compound}" in handbook().curves


def solubility_value(compound: str, temperature: float) -> Value:
    """Give the solubility with its interval and source. [1]

    Parameters
    ----------
    compound : str
        One that `is_limited`.
    temperature : float
        Temperature. [K]

    Examples
    --------
    >>> solubility_value("potassium-hydrogen-tartrate", 298.15).text()
    '0.0062 (0.0052 to 0.0071)'
    """
    mean, table = float(solubility(compound, temperature)), _table(compound)
    column = _IN_OTHER_TABLES.get(compound, ("", "held"))[1]
    width = table.tolerances.get(column, 0.002)
    if compound in _IN_OTHER_TABLES:  # printed as a share of the solution
        width *= 1 + mean
    half = width * mean
    return Value(mean=mean, low=mean - half, high=mean + half, unit="", provenance=table.provenance)


def solubility_provenance(compounds: Iterable[str]) -> Provenance:
    """Say what it rests on how much of some compounds dissolves; what no table limits needs none.

    Examples
    --------
    >>> solubility_provenance(["sucrose", "acetic-acid"]).status.value
    'from memory'
    """
    there = [each for each in compounds if is_limited(each)]
    parts = [_table(each).provenance for each in there]
    if set(_SHARED) <= set(there):
        parts += [handbook().value("solubility", "both-chlorides", each).provenance for each in _SHARED]
    return Provenance.of(parts)


def parted(
    masses: Mapping[str, ArrayLike], water: ArrayLike, temperature: ArrayLike
) -> tuple[dict[str, Array], dict[str, Array]]:
    """Part what dissolves from what stays solid, once all has had its time.

    Parameters
    ----------
    masses : mapping of str to (...) float
        Mass of each compound that dissolves in water, without the water of its crystals. [kg]
    water : (...) float
        Mass of water. [kg]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    dissolved, solid : dict of str to (...) float
        The two parts of each. [kg]

    Notes
    -----
    Table salt and potassium chloride share their chloride. Each lowers the other's limit in proportion, and the two
    lines meet where water at 25 °C holds both: 0.298 and 0.162 kg in a kilogram (from memory). All else is taken by
    itself.

    Examples
    --------
    >>> dissolved, solid = parted({"sodium-chloride": 0.1}, 0.15, 293.15)
    >>> float(dissolved["sodium-chloride"].round(4)), float(solid["sodium-chloride"].round(4))
    (0.0539, 0.0461)
    """
    free, amounts = np.asarray(water, float), {each: np.asarray(mass, float) for each, mass in masses.items()}
    dissolved = {
        each: np.minimum(mass, solubility(each, temperature) * free) if is_limited(each) else mass + 0 * free
        for each, mass in amounts.items()
    }
    if all(each in amounts for each in _SHARED):
        dissolved |= _chlorides(amounts, free, temperature)
    return dissolved, {each: amounts[each] - dissolved[each] for each in amounts}


def _chlorides(amounts: Mapping[str, Array], water: Array, temperature: ArrayLike) -> dict[str, Array]:
    """Let the two chlorides settle: each takes what the other leaves, which converges by a quarter a round."""
    salt, potash = _SHARED
    salt_limit, potash_limit = solubility(salt, temperature), solubility(potash, temperature)
    by_potash, by_salt = _crowding()
    held = np.minimum(amounts[salt], salt_limit * water)
    other = np.zeros_like(held)
    for _ in range(_ROUNDS):
        other = np.minimum(amounts[potash], np.maximum(potash_limit * water - by_salt * held, 0))
        held = np.minimum(amounts[salt], np.maximum(salt_limit * water - by_potash * other, 0))
    return {salt: held, potash: other}


@cache
def _crowding() -> tuple[float, float]:
    """How much less of one chloride dissolves for each kilogram of the other. [1]"""
    salt, potash = _SHARED
    both = {each: handbook().value("solubility", "both-chlorides", each).mean for each in _SHARED}
    alone = {each: float(solubility(each, 298.15)) for each in _SHARED}
    return (alone[salt] - both[salt]) / both[potash], (alone[potash] - both[potash]) / both[salt]


def salt_solubility(temperature: ArrayLike) -> Array:
    """Give the mass fraction of salt in saturated brine.

    Parameters
    ----------
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Mass of salt over mass of brine. [1]

    Examples
    --------
    >>> float(salt_solubility(293.15).round(4))
    0.2644
    """
    return _curve("sodium-chloride")(np.asarray(temperature, float))


def sugar_solubility(temperature: ArrayLike) -> Array:
    """Give the mass fraction of sugar in saturated syrup.

    Parameters
    ----------
    temperature
        As of `salt_solubility`.

    Returns
    -------
    (...) float
        Mass of sucrose over mass of syrup. [1]

    Examples
    --------
    >>> float(sugar_solubility(293.15).round(3))
    0.667
    """
    return _curve("sucrose")(np.asarray(temperature, float))


def bitartrate_solubility(temperature: ArrayLike = 298.15) -> float:
    """Give how much cream of tartar water holds, as mass of it over mass of water.

    Parameters
    ----------
    temperature : float
        Temperature. [K]

    Examples
    --------
    >>> round(bitartrate_solubility(), 5)
    0.00617
    """
    return float(solubility("potassium-hydrogen-tartrate", temperature))


@cache
def _curve(compound: str) -> Monotone:
    table = _table(compound)
    return Monotone(table["temperature"], table[_IN_OTHER_TABLES.get(compound, ("", "held"))[1]])


@cache
def _table(compound: str) -> Curve:
    return handbook().curve(_IN_OTHER_TABLES.get(compound, (f"solubility-{compound}",))[0])
