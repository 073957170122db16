"""How thick water and salt water are."""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.density import T0
from lumped.quantities import Provenance
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = ["brine_viscosity", "salt_thickening", "viscosity_provenance", "water_viscosity"]

Array = NDArray[np.float64]


def water_viscosity(temperature: ArrayLike) -> Array:
    """Give the viscosity of water.

    Parameters
    ----------
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Viscosity. [Pa·s]

    Examples
    --------
    >>> (1e3 * water_viscosity([293.15, 298.15])).round(3).tolist()
    [1.002, 0.89]
    """
    return np.asarray(np.exp(_log_water()(np.asarray(temperature, float))))


@cache
def _log_water() -> Monotone:
    table = handbook().curve("water-viscosity")
    return Monotone(table["temperature"], np.log(table["viscosity"]))


def brine_viscosity(salt_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the viscosity of salt water.

    Parameters
    ----------
    salt_fraction : (...) float
        Mass of salt over mass of brine, 0 to saturation. [1]
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Viscosity, ±2 %. [Pa·s]

    Examples
    --------
    >>> float((1e3 * brine_viscosity(0.20, 293.15)).round(2))
    1.56
    """
    return np.asarray(water_viscosity(temperature) * salt_thickening("sodium-chloride", salt_fraction, temperature))


def salt_thickening(compound: str, fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the viscosity of water with one salt or acid over that of water.

    Parameters
    ----------
    compound, fraction, temperature
        As of `density.apparent_volume`.

    Returns
    -------
    (...) float
        Ratio of viscosities. Citric acid by its table of 20 °C. Where no row is known: that of salt at the same mass,
        which is within a third of what the known ones do. [1]

    Notes
    -----
    ln η = w_water ln η_water + w ln ηᵢ, ηᵢ = exp((v₁ w^v₂ + v₃)/(v₄ t + 1))/(v₅ w^v₆ + 1), t in °C, η in mPa·s. Beyond
    the data's end the solute keeps the ηᵢ of the end.

    References
    ----------
    M. Laliberté, J. Chem. Eng. Data 52, 321 (2007) and 54, 1725 (2009).

    Examples
    --------
    >>> salt_thickening("potassium-chloride", [0.0, 0.1, 0.2], 293.15).round(3).tolist()
    [1.0, 0.985, 1.009]
    """
    share, t = np.asarray(fraction, float), np.asarray(temperature, float) - T0
    if compound == "citric-acid":
        return np.asarray(np.exp(_log_citric()(share)) + 0 * t)
    v1, v2, v3, v4, v5, v6, most = _coefficients(compound)
    w = np.maximum(np.minimum(share, most), 1e-9)
    alone = (v1 * w**v2 + v3) / (v4 * t + 1) - np.log1p(v5 * w**v6)
    water = np.log((t + 246) / ((0.05594 * t + 5.2842) * t + 137.37))
    return np.asarray(np.exp(share * (alone - water)))


def viscosity_provenance(compound: str) -> Provenance:
    """Say what it rests on how thick a salt or an acid makes water; one without figures of its own counts as salt."""
    book = handbook()
    if compound == "citric-acid":
        return book.curve("citric-acid-viscosity-20degC").provenance
    known = compound in book.keys("solutions") and book.has("solutions", compound, "v1")
    rows = book.entry("solutions", compound if known else "sodium-chloride").rows
    return Provenance.of(row.value.provenance for key, row in rows.items() if key.startswith("v"))


@cache
def _log_citric() -> Monotone:
    """Logarithm of the ratio against the share of acid; beyond its table it stays."""
    table = handbook().curve("citric-acid-viscosity-20degC")
    return Monotone(table["acid"], np.log(table["ratio"]))


@cache
def _coefficients(compound: str) -> tuple[float, ...]:
    book = handbook()
    known = compound in book.keys("solutions") and book.has("solutions", compound, "v1")
    names = ("v1", "v2", "v3", "v4", "v5", "v6", "viscosity_to")
    return tuple(book.row("solutions", compound if known else "sodium-chloride", each).printed for each in names)
