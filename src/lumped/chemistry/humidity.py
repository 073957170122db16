"""Damp air: dew point, wet bulb, and the mass of vapour that a kilogram of dry air carries."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.density import T0
from lumped.chemistry.vapour import ATMOSPHERE, saturation_pressure, saturation_slope

__all__ = ["dew_point", "humidity_from_wet_bulb", "humidity_ratio", "wet_bulb"]

Array = NDArray[np.float64]
MASS_RATIO = 0.621945  # of a mole of water to a mole of dry air
_ROUNDS = 5


def humidity_ratio(temperature: ArrayLike, humidity: ArrayLike, pressure: ArrayLike = ATMOSPHERE) -> Array:
    """Give the mass of vapour that comes with a kilogram of dry air.

    Parameters
    ----------
    temperature : (...) float
        Temperature. [K]
    humidity : (...) float
        Relative humidity. [1]
    pressure : (...) float
        Pressure of the air. [Pa]

    Returns
    -------
    (...) float
        Mass ratio. [1]

    Examples
    --------
    >>> float(humidity_ratio(293.15, 0.5).round(5))
    0.00726
    """
    vapour = np.asarray(humidity, float) * saturation_pressure(temperature)
    return np.asarray(MASS_RATIO * vapour / (np.asarray(pressure) - vapour))


def dew_point(temperature: ArrayLike, humidity: ArrayLike) -> Array:
    """Give the temperature at which air begins to drip.

    Parameters
    ----------
    temperature : (...) float
        Temperature. [K]
    humidity : (...) float
        Relative humidity, above 0. [1]

    Returns
    -------
    (...) float
        Dew point, over water also below 0 °C. [K]

    Notes
    -----
    Magnus' formula to begin with, then Newton steps on the logarithm of the pressure.

    Examples
    --------
    >>> float((dew_point(293.15, 0.5) - 273.15).round(2))
    9.27
    """
    wanted = np.log(np.asarray(humidity, float) * saturation_pressure(temperature))
    magnus = wanted - np.log(611.2)
    found = T0 + 243.12 * magnus / (17.62 - magnus)
    for _ in range(_ROUNDS):
        pressure = saturation_pressure(found)
        found = found - (np.log(pressure) - wanted) * pressure / saturation_slope(found)
    return np.asarray(found)


def wet_bulb(temperature: ArrayLike, humidity: ArrayLike, pressure: ArrayLike = ATMOSPHERE) -> Array:
    """Give the temperature that a wet cloth takes in moving air.

    Parameters
    ----------
    temperature : (...) float
        Temperature of the air, 0 to 60 °C. [K]
    humidity : (...) float
        Relative humidity. [1]
    pressure : (...) float
        Pressure of the air. [Pa]

    Returns
    -------
    (...) float
        Wet-bulb temperature. [K]

    Notes
    -----
    Adiabatic saturation with heats of 1006 and 1860 J/(kg·K) for air and vapour, 4186 for water and 2501 kJ/kg at
    0 °C (the handbook formula of engineers of air conditioning, from memory). Found by halving.

    Examples
    --------
    >>> float((wet_bulb(293.15, 0.5) - 273.15).round(2))
    13.78
    """
    dry, present = np.asarray(temperature, float), humidity_ratio(temperature, humidity, pressure)
    low, high = np.full(np.broadcast_shapes(dry.shape, present.shape), T0 - 30.0), dry + 0 * present
    for _ in range(34):  # the span of 90 K halved 34 times
        middle = (low + high) / 2
        too_wet = _ratio_over_wet_bulb(dry, middle, pressure) > present
        low, high = np.where(too_wet, low, middle), np.where(too_wet, middle, high)
    return np.asarray((low + high) / 2)


def humidity_from_wet_bulb(temperature: ArrayLike, wet: ArrayLike, pressure: ArrayLike = ATMOSPHERE) -> Array:
    """Give the relative humidity from the temperatures of a dry and a wet bulb.

    Parameters
    ----------
    temperature, wet : (...) float
        Of the dry and the wet bulb. [K]
    pressure : (...) float
        Pressure of the air. [Pa]

    Returns
    -------
    (...) float
        Relative humidity. [1]

    Examples
    --------
    >>> float(humidity_from_wet_bulb(293.15, 286.93).round(3))
    0.5
    """
    dry = np.asarray(temperature, float)
    ratio = _ratio_over_wet_bulb(dry, np.asarray(wet, float), pressure)
    vapour = np.asarray(pressure) * ratio / (MASS_RATIO + ratio)
    return np.asarray(vapour / saturation_pressure(dry))


def _ratio_over_wet_bulb(dry: Array, wet: Array, pressure: ArrayLike) -> Array:
    """Humidity ratio of air whose wet bulb is at `wet`. [1]"""
    full, t, w = humidity_ratio(wet, 1.0, pressure), dry - T0, wet - T0
    return np.asarray(((2501 - 2.326 * w) * full - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w))
