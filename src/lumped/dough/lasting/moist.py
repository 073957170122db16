"""What drying needs to know of a dough: how much water it holds, how tightly, and how fast water creeps in it."""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.lasting.isotherm import Isotherm
from lumped.reference import handbook

__all__ = ["MoistDough", "falling_diffusivity"]

Array = NDArray[np.float64]
Law = Callable[[Array], Array]


@dataclass(frozen=True, slots=True, kw_only=True)
class MoistDough:
    """What drying needs to know of a dough.

    Parameters
    ----------
    density : (...) float
        Density of the fresh dough. [kg/m³]
    content : (...) float
        Its water over its dry matter; salt and sugar are dry matter. [1]
    isotherm : Isotherm
        Water activity against water content.
    diffusivity : callable
        Diffusivity of water in the dough at water contents of shape (layers, ...). [m²/s]
    resistivity : callable, optional
        Resistivity at water contents of shape (..., layers). [Ω·m]
    shrinks : (...) float
        Share of the leaving water's volume that the piece loses; the rest becomes pores. [1]

    Examples
    --------
    >>> from lumped.dough.lasting.isotherm import linear_isotherm
    >>> MoistDough(density=1250.0, content=1.0, isotherm=linear_isotherm(0.9), diffusivity=lambda x: 1e-10).shrinks
    1.0
    """

    density: ArrayLike
    content: ArrayLike
    isotherm: Isotherm
    diffusivity: Callable[[Array], ArrayLike]
    resistivity: Callable[[Array], ArrayLike] | None = None
    shrinks: ArrayLike = 1.0


def falling_diffusivity(moist: ArrayLike | None = None, slower: ArrayLike | None = None) -> Law:
    """Give a diffusivity of water that falls as the dough dries.

    Parameters
    ----------
    moist : (...) float, optional
        Diffusivity in the moist dough; the handbook's. [m²/s]
    slower : (...) float, optional
        How many times slower water creeps in a dry skin; the handbook's. [1]

    Returns
    -------
    callable
        Takes water contents (layers, ...). [1] -> [m²/s]

    Notes
    -----
    The logarithm falls in a straight line between a moist and a dry water content; all four figures from memory. A
    weighed drying slab replaces the first.

    Examples
    --------
    >>> law = falling_diffusivity(moist=1e-10, slower=30.0)
    >>> (1e12 * law(np.array([0.1, 0.3, 1.0]))).round(1).tolist()
    [3.3, 18.3, 100.0]
    """
    book = handbook()
    wet, dried = (book.value("lasting", "skin", key).mean for key in ("moist", "dry"))
    fast = np.asarray(book.value("air", "water-in-dough", "diffusivity").mean if moist is None else moist, float)
    fall = np.asarray(book.value("lasting", "skin", "slower").mean if slower is None else slower, float)
    steep = -np.log(fall)

    def law(content: Array) -> Array:
        missing = np.minimum(np.maximum((wet - content) / (wet - dried), 0.0), 1.0)
        return np.asarray(fast * np.exp(steep * missing))

    return law
