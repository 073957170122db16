"""Sugar makes the liquid thick, and ions slow: Walden's rule with a power."""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.interpolate import PchipInterpolator

from lumped.chemistry.solubility import T20
from lumped.reference import handbook

__all__ = ["liquid_viscosity_ratio", "mobility_left", "syrup_viscosity"]

Array = NDArray[np.float64]


def syrup_viscosity(sugar_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the viscosity of sugar in water.

    Parameters
    ----------
    sugar_fraction : (...) float
        Mass of sucrose over mass of syrup, up to 0.75. [1]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Viscosity. [Pa·s]

    Notes
    -----
    The table of 20 °C, moved to other temperatures by Génotelle's (1978) form
    log₁₀ η = … + (30 - t)/(91 + t) · (1.1 + 43.1 N^1.25), N = s/(1900 - 18 s), s in per cent.

    Examples
    --------
    >>> (1e3 * syrup_viscosity([0.0, 0.60, 0.666], 293.15)).round(1).tolist()
    [1.0, 58.5, 208.5]
    """
    return np.asarray(_water(temperature) * _sugar_ratio(sugar_fraction, temperature))


def liquid_viscosity_ratio(sugar_fraction: ArrayLike, glycerol_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the viscosity of water with sugar and glycerine over that of water.

    Parameters
    ----------
    sugar_fraction, glycerol_fraction : (...) float
        Mass of each over mass of it and the water. [1]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Ratio of viscosities; the two thicken independently. [1]

    Examples
    --------
    >>> float(liquid_viscosity_ratio(0.0, 0.5, 293.15).round(2))
    5.99
    """
    glycerol = np.exp(_log_glycerol()(np.clip(glycerol_fraction, 0, 1)) - _log_glycerol()(0.0))
    return np.asarray(_sugar_ratio(sugar_fraction, temperature) * glycerol)


def mobility_left(viscosity_ratio: ArrayLike, exponent: ArrayLike) -> Array:
    """Give the share of their mobility that small ions keep in a thick liquid.

    Parameters
    ----------
    viscosity_ratio : (...) float
        Viscosity of the liquid over that of water. [1]
    exponent : (...) float
        Walden exponent: 1 for a ball in a plain liquid, 0.6 to 0.9 for small ions in syrup. [1]

    Returns
    -------
    (...) float
        Share, at most 1. [1]

    Examples
    --------
    >>> float(mobility_left(100.0, 0.75).round(4))
    0.0316
    """
    return np.asarray(np.asarray(viscosity_ratio, float) ** -np.asarray(exponent, float))


def _sugar_ratio(sugar_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    sugar = np.clip(np.asarray(sugar_fraction, float), 0, 0.8)
    bend = _genotelle(sugar, temperature) - _genotelle(sugar, T20) - _genotelle(0.0, temperature) + _genotelle(0.0, T20)
    return np.asarray(np.exp(_log_sugar()(sugar) - _log_sugar()(0.0)) * 10.0**bend)


def _genotelle(sugar_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    book = handbook()
    a, b, n, t0, t1 = (
        book.row("syrup", "genotelle", each).printed for each in ("offset", "factor", "power", "temperature", "shift")
    )
    s, t = 100 * np.asarray(sugar_fraction, float), np.asarray(temperature, float) - 273.15
    return np.asarray((t0 - t) / (t1 + t) * (a + b * (s / (1900 - 18 * s)) ** n))


def _water(temperature: ArrayLike) -> Array:
    return np.asarray(np.exp(_log_water()(np.asarray(temperature, float))))


@cache
def _log_water() -> PchipInterpolator:
    return _log_curve("water-viscosity", "temperature")


@cache
def _log_sugar() -> PchipInterpolator:
    return _log_curve("sucrose-viscosity-20degC", "sugar")


@cache
def _log_glycerol() -> PchipInterpolator:
    return _log_curve("glycerol-viscosity-20degC", "glycerol")


def _log_curve(key: str, axis: str) -> PchipInterpolator:
    table = handbook().curve(key)
    return PchipInterpolator(table[axis], np.log(table["viscosity"]))
