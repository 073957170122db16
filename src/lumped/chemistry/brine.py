"""How well salt water conducts, from the handbook's tables.

At 20 °C the logarithm of the molar conductivity Λ = κ/c runs smoothly along √c from infinite dilution through the
table's nodes to saturation. Temperature multiplies it by the curve of saturated brine to a power between 0.93 and 1,
because thinner salt water warms a little less: `κ(T) = c Λ(c) f(T)^b(c)`.
"""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import compound
from lumped.chemistry.density import brine_density, water_density
from lumped.chemistry.solubility import salt_solubility
from lumped.errors import InputError
from lumped.quantities import Provenance, Status, Value
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = [
    "bend",
    "brine_conductivity",
    "cold_limit",
    "is_extrapolated",
    "log_molar_conductivity",
    "molar_conductivity",
    "refuse_temperature",
    "relative_width",
    "salt_water_conductivity",
    "temperature_factor",
    "warmth_width",
]

Array = NDArray[np.float64]
T20 = 293.15
COLDEST, WARMEST = 273.15, 373.15
TABLE_BEGINS, TABLE_ENDS = 283.15, 308.15
_DILUTE_ENDS = 50.0  # mol/m³: above it the table of 20 °C takes over


def brine_conductivity(salt_fraction: float, temperature: float) -> Value:
    """Give the conductivity of salt water with its interval.

    Parameters
    ----------
    salt_fraction : float
        Mass of salt over mass of brine, 0 to saturation. [1]
    temperature : float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    Value
        Conductivity. [S/m] Below 10 and above 35 °C, where the tables end, the interval is wider and the provenance
        says so.

    Raises
    ------
    InputError
        If more salt is asked for than dissolves, or the temperature is out of range.

    Notes
    -----
    ±2 % is the table's own tolerance at 20 °C; ±0.1 % is added for each kelvin away from it, ±0.2 % for each kelvin
    below 10 °C, where one point from memory is the guide, and ±0.4 % for each above 35 °C, where the fluidity of water
    is.

    Examples
    --------
    >>> brine_conductivity(0.10, 293.15).text()
    '12.6 S/m (12.3 to 12.9)'
    """
    refuse_temperature(temperature)
    limit = float(salt_solubility(temperature))
    if not 0 <= salt_fraction <= limit * 1.002:
        raise InputError("brine-salt", salt=f"{100 * salt_fraction:.1f}", limit=f"{100 * limit:.1f}")
    mean = float(salt_water_conductivity(salt_fraction, temperature))
    half = mean * float(relative_width(temperature))
    cold = "below 10 °C: extrapolated to a point from memory" if temperature < TABLE_BEGINS else ""
    note = "above 35 °C: extrapolated along the fluidity of water" if temperature > TABLE_ENDS else cold
    curves = ("nacl-conductivity-20degC", "nacl-conductivity-saturated", "nacl-conductivity-dilute-25degC")
    sources = tuple(dict.fromkeys(key for curve in curves for key in handbook().curve(curve).provenance.sources))
    beyond = not TABLE_BEGINS <= temperature <= TABLE_ENDS
    status = Status.FROM_MEMORY if beyond else Status.COMPUTED
    origin = Provenance(status=status, sources=sources, note=note)
    return Value(mean=mean, low=mean - half, high=mean + half, unit="S/m", provenance=origin)


def refuse_temperature(temperature: ArrayLike) -> None:
    """Refuse what is no temperature of a liquid here.

    Raises
    ------
    InputError
        If it is not between 0 and 100 °C.
    """
    kelvins = np.asarray(temperature, float)
    if not np.all((kelvins >= COLDEST - 1e-9) & (kelvins <= WARMEST + 1e-9)):
        worst = float(
            kelvins.flat[int(np.argmax(np.abs(np.nan_to_num(kelvins, nan=np.inf) - (COLDEST + WARMEST) / 2)))]
        )
        raise InputError("brine-temperature", temperature=f"{worst - 273.15:.0f}")


def is_extrapolated(temperature: float) -> bool:
    """Tell whether a temperature lies above the tables of salt water; `reach` says all that lies beyond tables.

    Examples
    --------
    >>> is_extrapolated(293.15), is_extrapolated(333.15)
    (False, True)
    """
    return temperature > TABLE_ENDS


def relative_width(temperature: ArrayLike) -> Array:
    """Relative half-width of the 95 % interval of salt water's conductivity. [1]"""
    return np.asarray(0.02 + warmth_width(temperature))


def warmth_width(temperature: ArrayLike) -> Array:
    """What temperature adds to that half-width. [1]"""
    kelvins = np.asarray(temperature, float)
    beyond = 0.002 * np.maximum(TABLE_BEGINS - kelvins, 0) + 0.004 * np.maximum(kelvins - TABLE_ENDS, 0)
    return np.asarray(0.001 * np.abs(kelvins - T20) + beyond)


def salt_water_conductivity(salt_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the conductivity of salt water, without interval, for arrays.

    Parameters
    ----------
    salt_fraction : (...) float
        Mass of salt over mass of brine. [1]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Conductivity. [S/m]

    Examples
    --------
    >>> salt_water_conductivity([0.0, 0.05, 0.25], 293.15).round(2).tolist()
    [0.0, 7.01, 22.2]
    """
    salt = np.asarray(salt_fraction, float)
    concentration = concentration_of(salt)
    warmth = bend()(np.sqrt(concentration)) * np.log(temperature_factor(temperature))
    return np.asarray(concentration * molar_conductivity(concentration) * np.exp(warmth))


def concentration_of(salt_fraction: ArrayLike) -> Array:
    """Concentration of salt at 20 °C. [mol/m³]"""
    salt = np.asarray(salt_fraction, float)
    return np.asarray(salt * brine_density(salt, T20) / (compound("sodium-chloride").molar_mass or 0.0))


def molar_conductivity(concentration: ArrayLike) -> Array:
    """Molar conductivity of salt water at 20 °C, from infinite dilution to saturation. [S·m²/mol]

    Parameters
    ----------
    concentration : (...) float
        Moles of salt in a cubic metre. Beyond saturation more ions carry no more: κ stays. [mol/m³]
    """
    c = np.asarray(concentration, float)
    saturated = log_molar_conductivity().x[-1] ** 2
    inside = np.minimum(c, saturated)
    return np.asarray(
        np.exp(log_molar_conductivity()(np.sqrt(inside))) * np.where(c > saturated, inside / np.maximum(c, 1e-12), 1.0)
    )


@cache
def log_molar_conductivity() -> Monotone:
    """Logarithm of Λ against √c at 20 °C: limit, dilute table (25 °C, cooled), table of 20 °C, saturated brine."""
    book = handbook()
    dilute, table = book.curve("nacl-conductivity-dilute-25degC"), book.curve("nacl-conductivity-20degC")
    thin = dilute["concentration"] <= _DILUTE_ENDS * 1.001
    saturated = float(salt_solubility(T20))
    salt = np.append(table["salt"], saturated)
    conductivity = np.append(table["conductivity"], _saturated()(T20))
    shrunk = dilute["concentration"][thin] * water_density(T20) / water_density(298.15)
    c = np.concatenate([shrunk, concentration_of(salt)])
    cooled = np.exp(-bend()(np.sqrt(shrunk)) * np.log(temperature_factor(298.15)))
    known = np.concatenate([dilute["conductivity"][thin] * cooled, conductivity])
    limit = sum(cold_limit(ion) for ion in ("sodium", "chloride"))
    return Monotone(np.sqrt(np.append(0.0, c)), np.log(np.append(limit, known / c)))


def cold_limit(ion: str) -> float:
    """Limiting conductivity of an ion at 20 °C, cooled as thin salt water; H+ and OH- less. [S·m²/mol]

    Examples
    --------
    >>> round(1e4 * cold_limit("chloride"), 2)
    68.72
    """
    book = handbook()
    power = book.value("ions", ion, "temperature_power").mean if book.has("ions", ion, "temperature_power") else 1.0
    fall = power * float(bend()(0.0)) * float(np.log(temperature_factor(298.15)))
    return book.value("ions", ion, "limiting_conductivity").mean * float(np.exp(-fall))


@cache
def bend() -> Monotone:
    """How much of the temperature dependence of saturated brine salt water shows, along √c. [1]"""
    table = handbook().curve("nacl-warmth")
    return Monotone(np.sqrt(concentration_of(table["salt"])), table["bend"])


def temperature_factor(temperature: ArrayLike) -> Array:
    """Conductivity of saturated salt water over that at 20 °C. [1]

    Notes
    -----
    By the table of saturated brine from 0 to 35 °C; beyond, by a power of water's fluidity that meets the table at
    35 °C.

    Examples
    --------
    >>> float(temperature_factor(298.15).round(3))
    1.112
    """
    kelvins = np.asarray(temperature, float)
    inside = _saturated()(np.minimum(kelvins, TABLE_ENDS)) / _saturated()(T20)
    thinner = _log_fluidity()(kelvins) - _log_fluidity()(TABLE_ENDS)
    return np.asarray(inside * np.exp(_fluidity_power() * np.maximum(thinner, 0)))


@cache
def _saturated() -> Monotone:
    table = handbook().curve("nacl-conductivity-saturated")
    return Monotone(table["temperature"], table["conductivity"])


@cache
def _log_fluidity() -> Monotone:
    table = handbook().curve("water-viscosity")
    return Monotone(table["temperature"], -np.log(table["viscosity"]))


@cache
def _fluidity_power() -> float:
    rise = np.log(_saturated()(TABLE_ENDS) / _saturated()(T20))
    return float(rise / (_log_fluidity()(TABLE_ENDS) - _log_fluidity()(T20)))
