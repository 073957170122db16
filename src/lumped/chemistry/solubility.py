"""How much dissolves, and how dense the liquid is."""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.interpolate import CubicSpline, PchipInterpolator

from lumped.reference import handbook

__all__ = ["bitartrate_solubility", "brine_density", "salt_solubility", "sugar_solubility"]

Array = NDArray[np.float64]
T20 = 293.15


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
    return np.asarray(_curve("nacl-solubility", "temperature", "salt")(np.asarray(temperature, float)))


def sugar_solubility(temperature: ArrayLike) -> Array:
    """Give the mass fraction of sugar in saturated syrup.

    Parameters
    ----------
    temperature : (...) float
        Temperature; from 60 °C the figure of 60 °C is used. [K]

    Returns
    -------
    (...) float
        Mass of sucrose over mass of syrup. [1]

    Examples
    --------
    >>> float(sugar_solubility(293.15).round(3))
    0.666
    """
    inside = np.clip(np.asarray(temperature, float), 273.15, 333.15)
    return np.asarray(_curve("sucrose-solubility", "temperature", "sugar")(inside))


def bitartrate_solubility() -> float:
    """Give how much cream of tartar water holds, as mass of it over mass of water at room temperature.

    Examples
    --------
    >>> round(bitartrate_solubility(), 5)
    0.00617
    """
    return 1e-3 / handbook().value("substances", "bitartrate", "water_per_g").mean


def brine_density(salt_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the density of salt water.

    Parameters
    ----------
    salt_fraction : (...) float
        Mass of salt over mass of brine, 0 to saturation. [1]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Density. [kg/m³]

    Notes
    -----
    A cubic through the table of 20 °C, times a linear thermal expansion of 20 to 25 °C; within 1 % up to 60 °C.

    Examples
    --------
    >>> float(brine_density(0.10, 293.15).round(1))
    1070.7
    """
    salt, warmth = np.asarray(salt_fraction, float), np.asarray(temperature, float) - T20
    expansion = _curve("nacl-expansion", "salt", "expansion")(np.clip(salt, 0, 0.26))
    return np.asarray(_density_20()(salt) * (1 - expansion * warmth))


@cache
def _density_20() -> CubicSpline:
    table = handbook().curve("nacl-density-20degC")
    return CubicSpline(table["salt"], table["density"])


@cache
def _curve(key: str, axis: str, column: str) -> PchipInterpolator:
    table = handbook().curve(key)
    return PchipInterpolator(table[axis], table[column])
