"""How strongly dissolved salts hold water: Pitzer's equation for the osmotic coefficient.

`φ = 1 - |z₊z₋| A √I/(1 + 1.2 √I) + m (2ν₊ν₋/ν) B(I) + m² (2(ν₊ν₋)^1.5/ν) C`, where `A` is the slope of Debye and
Hückel, computed from water's density and permittivity, and `B`, `C` are fitted for each salt and move with
temperature.
"""

from functools import cache, lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.density import T0, water_density
from lumped.reference import handbook

__all__ = ["beyond_the_fit", "debye_hueckel_slope", "osmotic_coefficient"]

Array = NDArray[np.float64]
T25 = 298.15
_AVOGADRO, _CHARGE, _BOLTZMANN, _VACUUM = 6.02214076e23, 1.602176634e-19, 1.380649e-23, 8.8541878128e-12
_TERMS = ("", "_inverse", "_log", "_slope", "_square")
_STEP = 0.01  # of a fit, over which its last slope is taken
_COEFFICIENTS = ("beta_0", "beta_1", "beta_2", "c_phi")


def osmotic_coefficient(compound: str, strength: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the osmotic coefficient of a salt.

    Parameters
    ----------
    compound : str
        A salt with the law "pitzer" in the table `activity`.
    strength : (...) float
        Ionic strength: half the sum of molality times charge squared. [mol/kg]
    temperature : (...) float
        Temperature, 0 to 60 °C. [K]

    Returns
    -------
    (...) float
        Osmotic coefficient; beyond the fit's end it goes on straight (see `beyond_the_fit`). [1]

    References
    ----------
    K. S. Pitzer, G. Mayorga, J. Phys. Chem. 77, 2300 (1973); L. F. Silvester, K. S. Pitzer, J. Phys. Chem. 81, 1822
    (1977).

    Examples
    --------
    >>> osmotic_coefficient("sodium-chloride", [0.1, 1.0, 5.0], 298.15).round(4).tolist()
    [0.9319, 0.9356, 1.1915]
    """
    inside = np.minimum(np.maximum(strength, 0.0), _end(compound))
    found = _fitted(compound, inside, np.asarray(temperature, float))
    return np.asarray(found + beyond_the_fit(compound, strength, temperature))


def beyond_the_fit(compound: str, strength: ArrayLike, temperature: ArrayLike) -> Array:
    """Give what the straight line beyond a fit's end adds to the osmotic coefficient.

    Parameters
    ----------
    compound, strength, temperature
        As of `osmotic_coefficient`.

    Returns
    -------
    (...) float
        0 inside the fit. Saturated magnesium chloride, a sixth beyond its end, comes out within 0.006 in water
        activity; saturated calcium chloride, at three times its end, 0.05 too low at 25 °C. [1]

    Examples
    --------
    >>> beyond_the_fit("sodium-chloride", [6.0, 7.2], 298.15).round(3).tolist()
    [0.0, 0.084]
    """
    end = _end(compound)
    more = np.maximum(np.asarray(strength, float) - end, 0.0)
    if not more.any():
        return np.zeros(np.broadcast_shapes(more.shape, np.shape(temperature)))
    kelvins, step = np.asarray(temperature, float), _STEP * end
    slope = (_fitted(compound, end, kelvins) - _fitted(compound, end - step, kelvins)) / step
    return np.asarray(slope * more)


def _fitted(compound: str, strength: ArrayLike, kelvins: Array) -> Array:
    """Osmotic coefficient inside the fit. [1]"""
    plus, minus, _, table = _salt(compound)
    cations, anions = minus // np.gcd(plus, minus), plus // np.gcd(plus, minus)
    m, root = np.asarray(strength) / _per_molality(plus, minus), np.sqrt(strength)
    (b0, b1, b2, c), slope = _warm(compound, kelvins) if kelvins.ndim else _warm_at(compound, float(kelvins))
    fast = 1.4 if plus == minus == 2 else 2.0
    b = b0 + b1 * np.exp(-fast * root)
    if table[2].any():
        b = b + b2 * np.exp(-12 * root)
    whole, product = cations + anions, cations * anions
    long_range = plus * minus * slope * root / (1 + 1.2 * root)
    return np.asarray(1 - long_range + 2 * product / whole * m * b + 2 * product**1.5 / whole * m**2 * c)


def _warm(compound: str, kelvins: Array) -> tuple[Array, Array]:
    """A salt's four coefficients, shape (4, ...), and the slope of Debye and Hückel."""
    return np.tensordot(_salt(compound)[3], _warmth(kelvins), axes=1), debye_hueckel_slope(kelvins)


@lru_cache(1024)
def _warm_at(compound: str, kelvin: float) -> tuple[Array, Array]:
    """The same at one temperature, at which thousands of doughs are asked for."""
    return _warm(compound, np.asarray(kelvin))


def _warmth(kelvins: Array) -> Array:
    """What the five terms of a coefficient are multiplied with, shape (5, ...)."""
    away = kelvins - T25
    return np.stack([np.ones_like(kelvins), -away / (kelvins * T25), np.log(kelvins / T25), away, kelvins**2 - T25**2])


@cache
def _end(compound: str) -> float:
    """Ionic strength where a salt's fit ends. [mol/kg]"""
    plus, minus, most, _ = _salt(compound)
    return _per_molality(plus, minus) * most


def _per_molality(plus: int, minus: int) -> float:
    """Ionic strength of a mole of salt in a kilogram of water. [1]"""
    return plus * minus * (plus + minus) / float(2 * np.gcd(plus, minus))


@cache
def _salt(compound: str) -> tuple[int, int, float, Array]:
    """Charges, the molality where the fit ends, and the coefficients' terms, shape (4, 5)."""
    entry = handbook().entry("activity", compound)
    plus, minus = entry.facts["charges"]
    rows = entry.rows
    table = np.array([[rows[n + t].printed if n + t in rows else 0.0 for t in _TERMS] for n in _COEFFICIENTS])
    return plus, minus, rows["molality_to"].printed, table


def debye_hueckel_slope(temperature: ArrayLike) -> Array:
    """Give the slope `A` that Debye and Hückel found for the osmotic coefficient.

    Parameters
    ----------
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Slope. [(kg/mol)^½]

    Notes
    -----
    A = ⅓ √(2π N ρ) (e²/(4π ε₀ ε k T))^1.5, with water's permittivity by Malmberg and Maryott (1956; from memory).

    Examples
    --------
    >>> float(debye_hueckel_slope(298.15).round(3))
    0.392
    """
    kelvins = np.asarray(temperature, float)
    t = kelvins - T0
    permittivity = 87.740 + t * (-0.40008 + t * (9.398e-4 - 1.410e-6 * t))
    length = _CHARGE**2 / (4 * np.pi * _VACUUM * permittivity * _BOLTZMANN * kelvins)
    return np.asarray(np.sqrt(2 * np.pi * _AVOGADRO * water_density(kelvins)) * length**1.5 / 3)
