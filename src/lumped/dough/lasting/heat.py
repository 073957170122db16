"""How much heat a dough holds and how well it passes it on, from what it is made of.

Heat capacities add by mass, conductivities by volume, and pores hold heat back (Maxwell), as in tables of foods.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.errors import InputError
from lumped.reference import handbook

__all__ = ["HEAT_PARTS", "WarmDough", "warm_dough"]

Array = NDArray[np.float64]
HEAT_PARTS = ("water", "starch", "protein", "fat", "salt")


@dataclass(frozen=True, slots=True, kw_only=True)
class WarmDough:
    """What cooling needs to know of a dough.

    Parameters
    ----------
    density : (...) float
        Density. [kg/m³]
    capacity : (...) float
        Heat capacity. [J/(kg·K)]
    conductivity : (...) float
        Heat conductivity. [W/(m·K)]

    Examples
    --------
    >>> float((1e7 * WarmDough(density=1250.0, capacity=2900.0, conductivity=0.45).diffusivity).round(2))
    1.24
    """

    density: ArrayLike
    capacity: ArrayLike
    conductivity: ArrayLike

    @property
    def diffusivity(self) -> Array:
        """How fast warmth spreads in it. [m²/s]"""
        return np.asarray(np.asarray(self.conductivity, float) / (np.asarray(self.density) * np.asarray(self.capacity)))


def warm_dough(shares: Mapping[str, ArrayLike], *, pores: ArrayLike = 0.0) -> WarmDough:
    """Work out the thermal properties of a dough.

    Parameters
    ----------
    shares : mapping of str to (...) float
        Mass of water, starch (with sugar), protein, fat and salt over their sum, or in any one unit. [1]
    pores : (...) float
        Air's share of the volume. [1]

    Returns
    -------
    WarmDough
        ±15 %; for 20 to 60 °C.

    Raises
    ------
    InputError
        If a part has another name, or there is nothing.

    References
    ----------
    Y. Choi and M. R. Okos (1986), figures at 40 °C from memory.

    Examples
    --------
    >>> dough = warm_dough({"water": 0.45, "starch": 0.27, "protein": 0.04, "salt": 0.24})
    >>> int(dough.density), int(dough.capacity), float(dough.conductivity.round(2))
    (1306, 2605, 0.49)
    """
    strange = sorted(set(shares) - set(HEAT_PARTS))
    if strange:
        raise InputError("lasting-heat-part", part=strange[0], parts=", ".join(HEAT_PARTS))
    whole = np.asarray(sum((np.asarray(each, float) for each in shares.values()), np.zeros(())))
    if not np.all(whole > 0):
        raise InputError("lasting-heat-nothing")
    volume, heat, passing = np.zeros(()), np.zeros(()), np.zeros(())
    for part, share in shares.items():
        capacity, conductivity, density = _figures(part)
        room = np.asarray(share, float) / density
        volume, heat = volume + room, heat + np.asarray(share) * capacity
        passing = passing + room * conductivity
    solid = 1 - np.asarray(pores, float)
    return WarmDough(
        density=whole / volume * solid, capacity=heat / whole, conductivity=passing / volume * 2 * solid / (3 - solid)
    )


@cache
def _figures(part: str) -> tuple[float, float, float]:
    book = handbook()
    capacity, conductivity, density = (
        book.value("lasting", part, quantity).mean for quantity in ("heat_capacity", "heat_conductivity", "density")
    )
    return capacity, conductivity, density
