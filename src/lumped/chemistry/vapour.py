"""Water as vapour: its pressure over water, over salts, its heat, and how fast it creeps through air."""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = [
    "evaporation_heat",
    "saturated_humidity",
    "saturation_pressure",
    "saturation_slope",
    "vapour_density",
    "vapour_diffusivity",
]

Array = NDArray[np.float64]
ATMOSPHERE = 101325.0
VAPOUR_CONSTANT = 8.31446262 / 0.01801527  # J/(kg·K)
_CRITICAL_TEMPERATURE, _CRITICAL_PRESSURE = 647.096, 22.064e6
_SERIES = ((1.0, -7.85951783), (1.5, 1.84408259), (3.0, -11.7866497), (3.5, 22.6807411), (4.0, -15.9618719),
           (7.5, 1.80122502))  # fmt: skip


def saturation_pressure(temperature: ArrayLike) -> Array:
    """Give the pressure of vapour over water.

    Parameters
    ----------
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Pressure, within 0.01 %. [Pa]

    References
    ----------
    W. Wagner, A. Pruß, J. Phys. Chem. Ref. Data 31, 387 (2002), equation 2.5; coefficients from memory.

    Examples
    --------
    >>> saturation_pressure([293.15, 298.15]).round(1).tolist()
    [2339.2, 3169.8]
    """
    kelvins = np.asarray(temperature, float)
    cold = 1 - kelvins / _CRITICAL_TEMPERATURE
    series = sum(factor * cold**power for power, factor in _SERIES)
    return np.asarray(_CRITICAL_PRESSURE * np.exp(_CRITICAL_TEMPERATURE / kelvins * series))


def saturation_slope(temperature: ArrayLike) -> Array:
    """Give how fast the pressure of vapour over water rises with temperature. [Pa/K]

    Parameters
    ----------
    temperature
        As of `saturation_pressure`.

    Examples
    --------
    >>> float(saturation_slope(293.15).round(1))
    144.9
    """
    kelvins = np.asarray(temperature, float)
    cold = 1 - kelvins / _CRITICAL_TEMPERATURE
    pressure = saturation_pressure(kelvins)
    climb = sum(factor * power * cold ** (power - 1) for power, factor in _SERIES)
    return np.asarray(-pressure / kelvins * (np.log(pressure / _CRITICAL_PRESSURE) + climb))


def vapour_density(temperature: ArrayLike, humidity: ArrayLike = 1.0) -> Array:
    """Give the mass of vapour in a cubic metre of air.

    Parameters
    ----------
    temperature : (...) float
        Temperature. [K]
    humidity : (...) float
        Relative humidity, or water activity of what the air touches. [1]

    Returns
    -------
    (...) float
        Density, as of an ideal gas (within 0.1 % at room temperature). [kg/m³]

    Examples
    --------
    >>> float((1e3 * vapour_density(293.15, 0.5)).round(2))
    8.64
    """
    kelvins = np.asarray(temperature, float)
    return np.asarray(np.asarray(humidity, float) * saturation_pressure(kelvins) / (VAPOUR_CONSTANT * kelvins))


def saturated_humidity(compound: str, temperature: ArrayLike) -> Array:
    """Give the relative humidity over water that is saturated with a salt.

    Parameters
    ----------
    compound : str
        "sodium-chloride", "potassium-chloride" or "magnesium-chloride".
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Relative humidity, ±0.02. [1]

    Notes
    -----
    RH = A exp(B/T).

    Examples
    --------
    >>> float(saturated_humidity("sodium-chloride", 293.15).round(3))
    0.754
    """
    factor, warmth = _humidity_constants(compound)
    return np.asarray(factor * np.exp(warmth / np.asarray(temperature, float)))


@cache
def _humidity_constants(compound: str) -> tuple[float, float]:
    book = handbook()
    return (
        book.value("air", compound, "humidity_factor").mean,
        book.value("air", compound, "humidity_temperature").mean,
    )


def evaporation_heat(temperature: ArrayLike) -> Array:
    """Give the heat that it takes to evaporate water.

    Parameters
    ----------
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Heat. [J/kg]

    Examples
    --------
    >>> float(evaporation_heat(293.15))
    2453500.0
    """
    return _evaporation()(np.asarray(temperature, float))


@cache
def _evaporation() -> Monotone:
    table = handbook().curve("water-evaporation")
    return Monotone(table["temperature"], table["heat"])


def vapour_diffusivity(temperature: ArrayLike, pressure: ArrayLike = ATMOSPHERE) -> Array:
    """Give how fast water vapour creeps through air.

    Parameters
    ----------
    temperature : (...) float
        Temperature. [K]
    pressure : (...) float
        Pressure of the air. [Pa]

    Returns
    -------
    (...) float
        Diffusivity, ±5 %. [m²/s]

    References
    ----------
    W. J. Massman, Atmos. Environ. 32, 1111 (1998); from memory.

    Examples
    --------
    >>> float((1e5 * vapour_diffusivity(298.15)).round(2))
    2.55
    """
    book = handbook()
    cold = book.value("air", "air", "vapour_diffusivity").mean
    power = book.value("air", "air", "vapour_diffusivity_power").mean
    return np.asarray(cold * (np.asarray(temperature, float) / 273.15) ** power * ATMOSPHERE / np.asarray(pressure))
