"""How dense the liquid is, and how much room it takes.

Each solute takes the room that it takes alone in the liquid's water: `V = m_water/ρ_water + Σ mᵢ vᵢ(wᵢ, T)`, with
the apparent volume `vᵢ` of a gram at its own mass fraction `wᵢ = mᵢ/(mᵢ + m_water)`. It is exact for each alone.
"""

from collections.abc import Iterable, Mapping
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.quantities import Provenance
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook

__all__ = ["apparent_volume", "brine_density", "liquid_volume", "volume_provenance", "water_density"]

Array = NDArray[np.float64]
T0, T20 = 273.15, 293.15
_SALT = "sodium-chloride"
_TINY = 1e-12
_KELL = (999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12)


def brine_density(salt_fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the density of salt water.

    Parameters
    ----------
    salt_fraction : (...) float
        Mass of salt over mass of brine, 0 to saturation. [1]
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Density, within 0.1 %. [kg/m³]

    Notes
    -----
    Laliberté's fit, moved by less than 0.06 % onto the table of 20 °C, whose points it meets.

    References
    ----------
    M. Laliberté, J. Chem. Eng. Data 54, 1725 (2009); Poradnik fizykochemiczny (1974).

    Examples
    --------
    >>> brine_density(0.10, [293.15, 333.15]).round(1).tolist()
    [1070.7, 1052.2]
    """
    salt = np.asarray(salt_fraction, float)
    return np.asarray(_onto_table()(salt) * _fitted_density(salt, temperature))


@cache
def _onto_table() -> Monotone:
    table = handbook().curve("nacl-density-20degC")
    return Monotone(table["salt"], table["density"] / _fitted_density(table["salt"], T20))


def _fitted_density(salt: Array, temperature: ArrayLike) -> Array:
    warmth = np.asarray(temperature, float)
    return np.asarray(1 / ((1 - salt) / water_density(warmth) + salt * _laliberte(_SALT, salt, warmth)))


def water_density(temperature: ArrayLike) -> Array:
    """Give the density of water at the pressure of the air.

    Parameters
    ----------
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Density. [kg/m³]

    References
    ----------
    G. S. Kell, J. Chem. Eng. Data 20, 97 (1975), as Laliberté prints it.

    Examples
    --------
    >>> water_density([277.13, 298.15]).round(2).tolist()
    [999.97, 997.04]
    """
    t = np.asarray(temperature, float) - T0
    a0, a1, a2, a3, a4, a5 = _KELL
    return np.asarray((a0 + t * (a1 + t * (a2 + t * (a3 + t * (a4 + t * a5))))) / (1 + 0.01687985 * t))


def liquid_volume(water: ArrayLike, dissolved: Mapping[str, ArrayLike], temperature: ArrayLike) -> Array:
    """Give the volume of water with all that is dissolved in it.

    Parameters
    ----------
    water : (...) float
        Mass of the liquid's water. [kg]
    dissolved : mapping of str to (...) float
        Mass of each dissolved compound. [kg]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Volume. [m³]

    Notes
    -----
    Salt water is its table; the others add their apparent volume. For one solute that is as good as its row (0.1 %
    of the liquid for salts, 0.2 % for sugar and glycerine); for salt and sugar together 0.5 %, from memory.

    Examples
    --------
    >>> float(1e3 * liquid_volume(0.9, {"sodium-chloride": 0.1}, 293.15).round(7))
    0.934
    """
    free = np.asarray(water, float)
    salt = np.asarray(dissolved.get(_SALT, 0.0), float)
    brine = free + salt
    volume = brine / brine_density(salt / np.maximum(brine, _TINY), temperature)
    for each, amount in dissolved.items():
        if each != _SALT:
            mass = np.asarray(amount, float)
            volume = volume + mass * apparent_volume(each, mass / np.maximum(mass + free, _TINY), temperature)
    return np.asarray(volume)


def volume_provenance(dissolved: Iterable[str]) -> Provenance:
    """Say what the volume of water with some compounds in it rests on.

    Examples
    --------
    >>> volume_provenance(["sodium-chloride"]).sources
    ('poradnik-1974', 'laliberte-2009')
    """
    book, parts = handbook(), []
    for each in dissolved:
        if each == _SALT:
            parts.append(book.curve("nacl-density-20degC").provenance)
        if each == "glycerol":
            parts.append(book.curve("glycerol-density-20degC").provenance)
        elif book.has("solutions", each, "c0"):
            parts += [row.value.provenance for row in book.entry("solutions", each).rows.values()]
        else:
            parts.append(book.value("solutions", each, "apparent_volume").provenance)
    return Provenance.of(parts)


def apparent_volume(compound: str, fraction: ArrayLike, temperature: ArrayLike) -> Array:
    """Give the room that a kilogram of a compound takes when water dissolves it.

    Parameters
    ----------
    compound : str
        Its key in the table `compounds`.
    fraction : (...) float
        Mass of it over mass of it and the water. [1]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Apparent volume; near the data's end it stays as it is there. [m³/kg]

    Examples
    --------
    >>> apparent_volume("sucrose", [0.1, 0.6], 293.15).round(6).tolist()
    [0.000616, 0.000627]
    """
    share, warmth = np.asarray(fraction, float), np.asarray(temperature, float)
    if compound == "glycerol":
        return np.asarray(_glycerol()(share) + 0 * warmth)
    if handbook().has("solutions", compound, "c0"):
        return _laliberte(compound, share, warmth)
    return np.asarray(_plain_volume(compound) + 0 * (share + warmth))


def _laliberte(compound: str, share: Array, temperature: Array) -> Array:
    c0, c1, c2, c3, c4, most = _coefficients(compound)
    w, t = np.minimum(share, most), temperature - T0
    return np.asarray((w + c2 + c3 * t) / ((c0 * w + c1) * np.exp(1e-6 * (t + c4) ** 2)))


@cache
def _coefficients(compound: str) -> tuple[float, ...]:
    names = ("c0", "c1", "c2", "c3", "c4", "density_to")
    return tuple(handbook().row("solutions", compound, each).printed for each in names)


@cache
def _plain_volume(compound: str) -> float:
    return handbook().value("solutions", compound, "apparent_volume").mean


@cache
def _glycerol() -> Monotone:
    """Apparent volume from the densities of the mixtures; thinner than a tenth as at a tenth."""
    table = handbook().curve("glycerol-density-20degC")
    share = table["glycerol"][1:]
    volume = (1 / table["density"][1:] - (1 - share) / table["density"][0]) / share
    return Monotone(share, volume)
