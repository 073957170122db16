"""How fast ions and water creep: `D = R T λ°/(|z| F²)`, from the same figures as conductivity."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.viscosity import water_viscosity
from lumped.quantities import Value
from lumped.reference import handbook

__all__ = ["ion_diffusivity", "salt_diffusivity", "water_in_dough"]

Array = NDArray[np.float64]
T25 = 298.15
GAS_CONSTANT, FARADAY = 8.31446262, 96485.33212


def ion_diffusivity(ion: str, temperature: ArrayLike) -> Array:
    """Give the diffusivity of an ion in much water.

    Parameters
    ----------
    ion : str
        Its key in the handbook's table `ions`.
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Diffusivity: exact at 25 °C as the limiting conductivity is; ±2 % from 0 to 50 °C, ±10 % beyond. [m²/s]

    Notes
    -----
    Nernst and Einstein at 25 °C; from there as water's fluidity. By the same law D goes as T λ, and the standards of
    thin potassium chloride rise so within 1.3 %; the T/η of Stokes and Einstein goes too fast, by 10 % at 0 °C.

    Examples
    --------
    >>> float((1e9 * ion_diffusivity("sodium", 298.15)).round(3))
    1.334
    """
    book = handbook()
    conductivity = book.value("ions", ion, "limiting_conductivity").mean
    charge = abs(book.value("ions", ion, "charge").mean)
    at_25 = GAS_CONSTANT * T25 * conductivity / (charge * FARADAY**2)
    return np.asarray(at_25 * water_viscosity(T25) / water_viscosity(temperature))


def salt_diffusivity(temperature: ArrayLike, cation: str = "sodium", anion: str = "chloride") -> Array:
    """Give the diffusivity of a salt, whose ions can't leave each other.

    Parameters
    ----------
    temperature : (...) float
        Temperature. [K]
    cation, anion : str
        Their keys in the handbook's table `ions`.

    Returns
    -------
    (...) float
        Diffusivity in thin liquid; strong brine is within 10 % of it. In dough times the obstruction. [m²/s]

    Notes
    -----
    Nernst and Hartley: D = (z₊ + z₋) D₊ D₋/(z₊ D₊ + z₋ D₋).

    Examples
    --------
    >>> float((1e9 * salt_diffusivity(298.15)).round(2))
    1.61
    """
    plus, minus = (abs(handbook().value("ions", ion, "charge").mean) for ion in (cation, anion))
    fast, slow = ion_diffusivity(cation, temperature), ion_diffusivity(anion, temperature)
    return np.asarray((plus + minus) * fast * slow / (plus * fast + minus * slow))


def water_in_dough() -> Value:
    """Give what is believed of the diffusivity of water in a moist dough at 20 °C. [m²/s]

    Notes
    -----
    From memory of what is reported for flour doughs and breads at a third to a half water; in a dry skin it falls by
    ten to a hundred. To be replaced by a weighed drying slab.

    Examples
    --------
    >>> believed = water_in_dough()
    >>> believed.low < 1e-10 < believed.high
    True
    """
    return handbook().value("air", "water-in-dough", "diffusivity")
