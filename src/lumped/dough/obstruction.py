"""How much of its liquid's conductivity a body keeps when part of it does not conduct.

Two pictures of a dough: a pack of grains whose pores the liquid fills (Archie, φ^m), and a gel that ions enter
(Mackie-Meares, φ·(φ/(2 - φ))²). No isotropic body keeps more than the bound of Hashin and Shtrikman, 2φ/(3 - φ).
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = ["archie", "bruggeman", "hashin_shtrikman", "mackie_meares", "maxwell_garnett", "obstruction_bound"]

Array = NDArray[np.float64]


def archie(share: ArrayLike, exponent: ArrayLike) -> Array:
    """Give the share of conductivity that a pack of grains keeps.

    Parameters
    ----------
    share : (...) float
        Volume share of liquid. [1]
    exponent : (...) float
        Archie's exponent. [1]

    References
    ----------
    G. E. Archie, Trans. AIME 146, 54 (1942).

    Examples
    --------
    >>> round(1 / float(archie(0.2, 2.0)), 6)
    25.0
    """
    return np.asarray(np.asarray(share, float) ** np.asarray(exponent, float))


def mackie_meares(share: ArrayLike) -> Array:
    """Give the share of conductivity that a gel keeps.

    Parameters
    ----------
    share : (...) float
        Volume share of liquid; the rest is polymer, fat and air. [1]

    Notes
    -----
    Ions move by ((1 - φp)/(1 + φp))² as fast, φp = 1 - φ, and there are φ times as many of them in a volume of gel.

    Examples
    --------
    >>> float(mackie_meares(1.0)), float(mackie_meares(0.5).round(4))
    (1.0, 0.0556)
    """
    phi = np.asarray(share, float)
    return np.asarray(phi * (phi / (2 - phi)) ** 2)


def obstruction_bound(share: ArrayLike) -> Array:
    """Give the most that an isotropic body with insulating parts can keep (Hashin and Shtrikman 1962).

    Examples
    --------
    >>> float(obstruction_bound(0.7).round(6))
    0.608696
    """
    phi = np.asarray(share, float)
    return np.asarray(2 * phi / (3 - phi))


def hashin_shtrikman(first: float, second: float, second_share: float) -> tuple[float, float]:
    """Give the bounds on an isotropic mixture of two conductivities, lower and upper. [unit of the inputs]

    Examples
    --------
    >>> low, high = hashin_shtrikman(10.0, 1.0, 0.5)
    >>> round(low, 6), round(high, 6)
    (2.8, 4.705882)
    """
    (better, share_worse), (worse, share_better) = (
        ((first, second_share), (second, 1 - second_share))
        if first >= second
        else ((second, 1 - second_share), (first, second_share))
    )
    return _coated(worse, better, share_better), _coated(better, worse, share_worse)


def _coated(matrix: float, core: float, core_share: float) -> float:
    """Spheres of `core` coated with `matrix`; the same as Maxwell Garnett's mixture."""
    if core == matrix or core_share == 0:
        return matrix
    if matrix == 0:
        return 0.0
    return matrix + core_share / (1 / (core - matrix) + (1 - core_share) / (3 * matrix))


def maxwell_garnett(matrix: float, spheres: float, share: float) -> float:
    """Give the conductivity of a matrix with a share of spheres, by Maxwell's (1873) dilute field. [as the inputs]

    Examples
    --------
    >>> round(maxwell_garnett(1.0, 0.0, 0.3), 6)
    0.608696
    """
    contrast = (spheres - matrix) / (spheres + 2 * matrix)
    return matrix * (1 + 2 * share * contrast) / (1 - share * contrast)


def bruggeman(first: float, second: float, second_share: float) -> float:
    """Give Bruggeman's (1935) symmetric mixture of two conductivities. [as the inputs]

    Examples
    --------
    >>> round(bruggeman(10.0, 1.0, 0.5), 6)
    4.0
    """
    b = (3 * (1 - second_share) - 1) * first + (3 * second_share - 1) * second
    return float((b + np.sqrt(b * b + 8 * first * second)) / 4)
