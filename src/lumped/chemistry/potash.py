"""How well potassium chloride conducts in water: the salt with which conductivity meters are set.

At each temperature of the standards the logarithm of the molar conductivity runs smoothly along the root of
concentration, through 0.01, 0.1 and 1 mol in a kilogram of water; beyond, by the strong liquids of 20 °C and their
temperature coefficients, which are from memory.
"""

from functools import cache, lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import compound
from lumped.chemistry.density import liquid_volume
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = [
    "STRONGEST",
    "bend",
    "log_molar_conductivity",
    "potash_conductivity",
    "potash_molar_conductivity",
    "potash_warmth",
]

Array = NDArray[np.float64]
KEY = "potassium-chloride"
STRONGEST = 1.0  # mol in a kilogram of water: above it the figures are from memory
_NODES = {"thin": 0.01, "middle": 0.1, "strong": 1.0}
_T20 = 293.15


def potash_conductivity(molality: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the conductivity of potassium chloride in water.

    Parameters
    ----------
    molality : (...) float
        Moles in a kilogram of water, up to 4.8. [mol/kg]
    temperature : (...) float
        Temperature; the standards end at 0 and 50 °C, and the rise of the last five kelvins goes on. [K]

    Returns
    -------
    (...) float
        Conductivity. [S/m]

    Examples
    --------
    >>> float(potash_conductivity(0.1, 298.15).round(5))
    1.28246
    """
    c = concentration_of(molality)
    return np.asarray(c * potash_molar_conductivity(c, temperature))


def concentration_of(molality: ArrayLike) -> Array:
    """Concentration at 20 °C. [mol/m³]"""
    m = np.asarray(molality, float)
    mass = m * (compound(KEY).molar_mass or 0.0)
    return np.asarray(m / liquid_volume(np.ones_like(m), {KEY: mass}, _T20))


def potash_molar_conductivity(concentration: ArrayLike, temperature: ArrayLike) -> Array:
    """Molar conductivity of potassium chloride.

    Parameters
    ----------
    concentration : (...) float
        Moles in a cubic metre at 20 °C. [mol/m³]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Molar conductivity. [S·m²/mol]
    """
    c = np.asarray(concentration, float)
    root, saturated = np.sqrt(c), log_molar_conductivity().x[-1]
    thinned = 2 * np.log(np.maximum(root / saturated, 1.0))  # beyond the strongest more ions carry no more
    return np.asarray(np.exp(log_molar_conductivity()(root) - thinned + potash_warmth(root, temperature)))


def potash_warmth(root: ArrayLike, temperature: ArrayLike) -> Array:
    """Logarithm of conductivity over that at 20 °C.

    Parameters
    ----------
    root : (...) float
        Root of the concentration at 20 °C. [(mol/m³)^½]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Logarithm. [1]
    """
    nodes = _node_roots()
    place = np.interp(np.asarray(root, float), nodes, range(len(nodes)))
    weights = (np.maximum(1 - np.abs(place - node), 0.0) for node in range(len(nodes)))
    logs = _standards(temperature) if isinstance(temperature, float) else _standards.__wrapped__(temperature)
    return np.asarray(sum(w * log for w, log in zip(weights, logs, strict=True)) * bend()(root))


@lru_cache(256)
def _standards(temperature: ArrayLike) -> tuple[Array, ...]:
    return tuple(warming(temperature) for warming in _warmings())


@cache
def bend() -> Monotone:
    """How much of the temperature dependence of the strongest standard stronger liquids show, along √c. [1]"""
    table = handbook().curve("kcl-warmth")
    return Monotone(np.sqrt(concentration_of(_molality(table["salt"]))), table["bend"])


def _molality(share: Array) -> Array:
    return np.asarray(share / (1 - share) / (compound(KEY).molar_mass or 1.0))


@cache
def _node_roots() -> Array:
    return np.asarray(np.sqrt([float(concentration_of(m)) for m in _NODES.values()]))


@cache
def _warmings() -> tuple["_Warming", ...]:
    """For each strength of the standards: logarithm of conductivity over that at 20 °C."""
    table = handbook().curve("kcl-conductivity-standards")
    return tuple(_Warming(table["temperature"], np.log(table[column])) for column in _NODES)


class _Warming:
    """A table of logarithms against temperature, 0 at 20 °C, going on straight in fluidity beyond its ends."""

    def __init__(self, temperature: Array, log: Array) -> None:
        self.inside = Monotone(temperature, log - Monotone(temperature, log)(_T20))
        self.ends = temperature[0], temperature[-1]
        self.slopes = (
            (log[1] - log[0]) / (temperature[1] - temperature[0]),
            (log[-1] - log[-2]) / (temperature[-1] - temperature[-2]),
        )

    def __call__(self, temperature: ArrayLike) -> Array:
        kelvins = np.asarray(temperature, float)
        below, above = np.minimum(kelvins - self.ends[0], 0), np.maximum(kelvins - self.ends[1], 0)
        return np.asarray(self.inside(kelvins) + below * self.slopes[0] + above * self.slopes[1])


@cache
def log_molar_conductivity() -> Monotone:
    """Logarithm of the molar conductivity against the root of concentration at 20 °C."""
    book = handbook()
    table, strong = book.curve("kcl-conductivity-standards"), book.curve("kcl-conductivity-20degC")
    row = int(np.argmin(np.abs(table["temperature"] - _T20)))
    c = concentration_of(np.concatenate([list(_NODES.values()), _molality(strong["salt"])]))
    known = np.concatenate([[table[column][row] for column in _NODES], strong["conductivity"]])
    limit = sum(book.value("ions", ion, "limiting_conductivity").mean for ion in ("potassium", "chloride"))
    cooled = table["thin"][row] / table["thin"][int(np.argmin(np.abs(table["temperature"] - 298.15)))]
    return Monotone(np.sqrt(np.append(0.0, c)), np.log(np.append(limit * cooled, known / c)))
