"""Sugar makes the liquid thick, and ions slow: Walden's rule with a power.

What is dissolved thickens independently, `ln(η/η_water) = Σ ln rᵢ(wᵢ, T)`, each at its own mass fraction in the water
`wᵢ = mᵢ/(mᵢ + m_water)`; sugars count together as one.
"""

from collections.abc import Iterable, Mapping
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.density import T0, T20
from lumped.chemistry.viscosity import salt_thickening, viscosity_provenance, water_viscosity
from lumped.quantities import Provenance, Value
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = [
    "glycerol_viscosity",
    "liquid_thickening",
    "liquid_viscosity_ratio",
    "mobility_left",
    "syrup_viscosity",
    "thickening_provenance",
    "walden_exponent",
]

Array = NDArray[np.float64]
_SUGARS = ("sucrose", "glucose", "fructose", "maltose", "sorbitol")
_TINY = 1e-12


def syrup_viscosity(sugar_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the viscosity of sugar in water.

    Parameters
    ----------
    sugar_fraction : (...) float
        Mass of sucrose over mass of syrup, up to 0.70. [1]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Viscosity. [Pa·s]

    Notes
    -----
    The table of 20 °C, moved to other temperatures by Génotelle's (1978) form
    log₁₀ η = … + (30 - t)/(91 + t) · (1.1 + 43.1 N^1.25), N = s/(1900 - 18 s), s in per cent. Beyond 70 % the
    logarithm goes on with the last slope.

    Examples
    --------
    >>> (1e3 * syrup_viscosity([0.0, 0.60, 0.666], 293.15)).round(1).tolist()
    [1.0, 58.5, 208.5]
    """
    return np.asarray(water_viscosity(temperature) * _sugar_ratio(sugar_fraction, temperature))


def glycerol_viscosity(glycerol_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the viscosity of glycerine in water.

    Parameters
    ----------
    glycerol_fraction : (...) float
        Mass of glycerol over mass of it and the water. [1]
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Viscosity, within 6 %. [Pa·s]

    Notes
    -----
    The table of 20 °C, moved to other temperatures by Cheng's formula.

    References
    ----------
    N.-S. Cheng, Ind. Eng. Chem. Res. 47, 3285 (2008); coefficients from memory.

    Examples
    --------
    >>> (1e3 * glycerol_viscosity([0.5, 1.0], [293.15, 298.15])).round(1).tolist()
    [6.0, 903.0]
    """
    return np.asarray(water_viscosity(temperature) * _glycerol_ratio(glycerol_fraction, temperature))


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
    return np.asarray(_sugar_ratio(sugar_fraction, temperature) * _glycerol_ratio(glycerol_fraction, temperature))


def liquid_thickening(water: ArrayLike, dissolved: Mapping[str, ArrayLike], temperature: ArrayLike) -> Array:
    """Give the viscosity of a liquid over that of water, by what sugars, sorbitol and glycerine do to it.

    Parameters
    ----------
    water, dissolved, temperature
        As of `density.liquid_volume`.

    Returns
    -------
    (...) float
        Ratio of viscosities. [1]

    Notes
    -----
    Salts and acids count too, by `salt_thickening`. Ions in salt water already move as the conductivity tables of
    salt water say: whoever slows ions by Walden's rule leaves the salts out of `dissolved`. Simple sugars thicken as
    the share of sucrose that the table `syrup` gives them.

    Examples
    --------
    >>> float(liquid_thickening(0.4, {"sucrose": 0.6}, 293.15).round(1))
    58.4
    """
    free, sugar, ratio = np.asarray(water, float), np.zeros(()), np.ones(())
    for each, amount in dissolved.items():
        mass = np.asarray(amount, float)
        share = mass / np.maximum(mass + free, _TINY)
        if each in _SUGARS:
            sugar = sugar + _as_sucrose(each) * mass
        elif each == "glycerol":
            ratio = ratio * _glycerol_ratio(share, temperature)
        else:
            ratio = ratio * salt_thickening(each, share, temperature)
    return np.asarray(ratio * _sugar_ratio(sugar / np.maximum(sugar + free, _TINY), temperature))


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


def thickening_provenance(dissolved: Iterable[str]) -> Provenance:
    """Say what it rests on how thick some compounds make water.

    Examples
    --------
    >>> thickening_provenance(["glucose"]).status.value
    'from memory'
    """
    book, parts = handbook(), []
    for each in dissolved:
        if each in _SUGARS:
            parts += [book.curve("sucrose-viscosity-20degC").provenance,
                      *(row.value.provenance for row in book.entry("syrup", "genotelle").rows.values())]  # fmt: skip
            parts += [] if each == "sucrose" else [book.value("syrup", each, "as_sucrose").provenance]
        elif each == "glycerol":
            parts.append(book.curve("glycerol-viscosity-20degC").provenance)
        else:
            parts.append(viscosity_provenance(each))
    return Provenance.of(parts)


def walden_exponent() -> Value:
    """Give what is believed of the Walden exponent of small ions in syrup: anything from 0.6 to 0.9. [1]

    Examples
    --------
    >>> walden_exponent().text()
    '0.75 (0.60 to 0.90)'
    """
    return handbook().value("doughs", "unmeasured", "walden_exponent")


@cache
def _as_sucrose(compound: str) -> float:
    """Sucrose that thickens water as a kilogram of it does. [1]"""
    return 1.0 if compound == "sucrose" else handbook().value("syrup", compound, "as_sucrose").mean


def _sugar_ratio(sugar_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    sugar = np.clip(np.asarray(sugar_fraction, float), 0, 0.8)
    curve, slope = _log_sugar()
    bend = _genotelle(sugar, temperature) - _genotelle(sugar, T20) - _genotelle(0.0, temperature) + _genotelle(0.0, T20)
    thick = curve(sugar) + slope * np.maximum(sugar - curve.x[-1], 0)
    return np.asarray(np.exp(thick + np.log(10) * bend))


def _genotelle(sugar_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    a, b, n, t0, t1 = _genotelle_coefficients()
    s, t = 100 * np.asarray(sugar_fraction, float), np.asarray(temperature, float) - T0
    return np.asarray((t0 - t) / (t1 + t) * (a + b * (s / (1900 - 18 * s)) ** n))


@cache
def _genotelle_coefficients() -> tuple[float, ...]:
    names = ("offset", "factor", "power", "temperature", "shift")
    return tuple(handbook().row("syrup", "genotelle", each).printed for each in names)


def _glycerol_ratio(glycerol_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    share = np.clip(np.asarray(glycerol_fraction, float), 0, 1)
    return np.asarray(np.exp(_log_glycerol()(share) + _log_cheng(share, temperature) - _log_cheng(share, T20)))


def _log_cheng(share: Array, temperature: ArrayLike) -> Array:
    """Logarithm of Cheng's viscosity over that of water. [1]"""
    t = np.asarray(temperature, float) - T0
    water = 1.790e-3 * np.exp(-(1230 + t) * t / (36100 + 360 * t))
    pure = 12.1 * np.exp((t - 1233) * t / (9900 + 70 * t))
    a = 0.705 - 0.0017 * t
    b = (4.9 + 0.036 * t) * a**2.5
    part = share - a * b * share * (1 - share) / (a * share + b * (1 - share))
    return np.asarray(part * np.log(pure / water))


@cache
def _log_sugar() -> tuple[Monotone, float]:
    table = handbook().curve("sucrose-viscosity-20degC")
    logs = np.log(table["viscosity"] / table["viscosity"][0])
    return Monotone(table["sugar"], logs), float(np.diff(logs)[-1] / np.diff(table["sugar"])[-1])


@cache
def _log_glycerol() -> Monotone:
    table = handbook().curve("glycerol-viscosity-20degC")
    return Monotone(table["glycerol"], np.log(table["viscosity"] / table["viscosity"][0]))
