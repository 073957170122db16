"""How much heat and vapour the air carries away from a piece on a table.

A draught sweeps past (forced), and warm or damp air rises by itself (free); `Nu³ = Nu_forced³ + Nu_free³`. Vapour goes
as heat does (Lewis): `h_m = h / (ρ c_p Le^⅔)`.
"""

from functools import cache
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.vapour import ATMOSPHERE, VAPOUR_CONSTANT, saturation_pressure, vapour_diffusivity
from lumped.reference import handbook

__all__ = ["air_density", "evaporation_rate", "heat_transfer", "vapour_transfer"]

Array = NDArray[np.float64]
Shape = Literal["slab", "roll"]
_GRAVITY, _AIR_CONSTANT, _T20 = 9.81, 287.05, 293.15


def heat_transfer(
    length: ArrayLike, *, air_speed: ArrayLike, lighter: ArrayLike, temperature: ArrayLike, shape: Shape = "slab"
) -> Array:
    """Give the heat that goes to the air for each kelvin.

    Parameters
    ----------
    length : (...) float
        Of a slab: the way of the air along it; of a roll: its diameter. [m]
    air_speed : (...) float
        Speed of the air; 0.05 to 0.2 m/s in a quiet room. [m/s]
    lighter : (...) float
        By which share the air at the surface is lighter than that of the room: (T_surface - T)/T, and 0.6 times what
        vapour adds to the air's pressure. [1]
    temperature : (...) float
        Mean temperature of the air. [K]
    shape : {"slab", "roll"}
        A flat piece with its face upward, or a lying roll.

    Returns
    -------
    (...) float
        Heat-transfer coefficient without radiation, ±25 %. [W/(m²·K)]

    Notes
    -----
    Slab: 0.664 √Re Pr^⅓ (laminar; Re below 5·10⁵), and 0.54 Ra^¼ with a quarter of the length. Roll: Churchill and
    Bernstein, Churchill and Chu. All from memory.

    Examples
    --------
    >>> float(heat_transfer(0.1, air_speed=1.0, lighter=0.0, temperature=293.15).round(1))
    12.4
    """
    kelvins, size = np.asarray(temperature, float), np.asarray(length, float)
    viscosity, spread, prandtl, conductivity = _air(kelvins)
    reynolds = np.maximum(air_speed, 0.0) * size / viscosity
    buoyancy = _GRAVITY * np.maximum(np.abs(lighter), 1e-9) / (viscosity * spread)
    if shape == "roll":
        forced, free = _roll_forced(reynolds, prandtl), _roll_free(buoyancy * size**3, prandtl)
    else:
        forced = 0.664 * np.sqrt(reynolds) * prandtl ** (1 / 3)
        free = 4 * 0.54 * (buoyancy * (size / 4) ** 3) ** 0.25
    return np.asarray(conductivity / size * np.cbrt(forced**3 + free**3))


def _roll_forced(reynolds: Array, prandtl: float) -> Array:
    factor = 0.62 * prandtl ** (1 / 3) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25
    return np.asarray(0.3 + factor * np.sqrt(reynolds) * (1 + (reynolds / 282000) ** 0.625) ** 0.8)


def _roll_free(rayleigh: Array, prandtl: float) -> Array:
    return np.asarray((0.60 + 0.387 * rayleigh ** (1 / 6) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2)


def vapour_transfer(heat: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the transfer coefficient of vapour that belongs to one of heat.

    Parameters
    ----------
    heat : (...) float
        Heat-transfer coefficient without radiation. [W/(m²·K)]
    temperature : (...) float
        Temperature of the air. [K]

    Returns
    -------
    (...) float
        Mass that evaporates from a square metre in a second over the difference of vapour pressure, the latter made
        a density at the mean temperature (see `evaporation_rate`). [m/s]

    Notes
    -----
    Lewis: h_m = h/(ρ c_p Le^⅔), Le = heat's diffusivity over vapour's, about 0.85 in air.

    Examples
    --------
    >>> float((1e3 * vapour_transfer(10.0, 293.15)).round(1))
    9.1
    """
    kelvins = np.asarray(temperature, float)
    spread = _air(kelvins)[1]
    lewis = spread / vapour_diffusivity(kelvins)
    return np.asarray(np.asarray(heat) / (air_density(kelvins) * _of_air("heat_capacity") * lewis ** (2 / 3)))


def evaporation_rate(
    transfer: ArrayLike, *, surface: ArrayLike, activity: ArrayLike, air: ArrayLike, humidity: ArrayLike
) -> Array:
    """Give the water that a surface loses to the air.

    Parameters
    ----------
    transfer : (...) float
        Transfer coefficient of vapour. [m/s]
    surface, air : (...) float
        Temperature of the surface and of the room. [K]
    activity : (...) float
        Water activity at the surface. [1]
    humidity : (...) float
        Relative humidity of the room. [1]

    Returns
    -------
    (...) float
        Mass from a square metre in a second; negative where the surface takes up water. [kg/(m²·s)]

    Notes
    -----
    Vapour pressure drives, not vapour density: a surface that is 7 K colder than the air would seem to lose a tenth
    more by the difference of densities.

    Examples
    --------
    >>> rate = evaporation_rate(0.005, surface=291.15, activity=1.0, air=293.15, humidity=0.5)
    >>> float((3600 * rate).round(3))
    0.119
    """
    warm, cold = np.asarray(air, float), np.asarray(surface, float)
    drive = np.asarray(activity) * saturation_pressure(cold) - np.asarray(humidity) * saturation_pressure(warm)
    return np.asarray(np.asarray(transfer) * drive / (VAPOUR_CONSTANT * (warm + cold) / 2))


def air_density(temperature: ArrayLike, pressure: ArrayLike = ATMOSPHERE) -> Array:
    """Give the density of dry air. [kg/m³]

    Examples
    --------
    >>> float(air_density(293.15).round(3))
    1.204
    """
    return np.asarray(np.asarray(pressure) / (_AIR_CONSTANT * np.asarray(temperature, float)))


def _air(kelvins: Array) -> tuple[Array, Array, float, Array]:
    """Viscosity over density, heat's diffusivity, Prandtl number and heat conductivity of air. [m²/s, m²/s, 1, SI]"""
    prandtl, viscosity, conductivity = _of_cold_air()
    ratio = kelvins / _T20
    warmer = ratio**0.76
    over_density = viscosity * (warmer * ratio)
    return over_density, over_density / prandtl, prandtl, conductivity * warmer


@cache
def _of_cold_air() -> tuple[float, float, float]:
    """Prandtl number, viscosity over density, and heat conductivity at 20 °C. [1, m²/s, W/(m·K)]"""
    viscosity, conductivity = _of_air("viscosity"), _of_air("heat_conductivity")
    return viscosity * _of_air("heat_capacity") / conductivity, viscosity / float(air_density(_T20)), conductivity


@cache
def _of_air(quantity: str) -> float:
    return handbook().value("air", "air", quantity).mean
