"""How far salt creeps from conducting dough into an insulating wall, and how long the wall lasts.

On both sides of a joint salt spreads by diffusion, `c = c_joint erfc(x/(2 √(D t)))`; the joint keeps the share
`E/(E + E')` of the saltier side, with E = φ √D of either dough. A wall's resistance is `∫ dx/σ(c)`: its least salty
middle decides, so it holds long after its faces are lost.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = ["creep_depth", "creep_diffusivity", "erfc", "joint_share", "salt_at", "wall_left", "wall_lifetime"]

Array = NDArray[np.float64]
_CHEBYSHEV = (-1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398, 1.48851587,
              -0.82215223, 0.17087277)  # fmt: skip
_IMAGES = 10
_PLACES, _WEIGHTS = np.polynomial.legendre.leggauss(40)
_HALVINGS = 40
_SHORTEST, _LONGEST = 1e-5, 3.0  # D t over the square of the depth


def creep_diffusivity(in_liquid: ArrayLike, obstruction: ArrayLike, liquid_share: ArrayLike) -> Array:
    """Give the diffusivity at which salt creeps through a dough.

    Parameters
    ----------
    in_liquid : (...) float
        Diffusivity of the salt in the dough's own liquid: in water, times the mobility that a syrup leaves. [m²/s]
    obstruction : (...) float
        Conductivity of the dough over that of its liquid. [1]
    liquid_share : (...) float
        Liquid's share of the volume. [1]

    Returns
    -------
    (...) float
        Diffusivity. [m²/s]

    Notes
    -----
    Flour stands in the way of salt as it stands in the way of current; and only the liquid has to fill with salt.

    Examples
    --------
    >>> float(creep_diffusivity(1.5e-9, 0.25, 0.5))
    7.5e-10
    """
    return np.asarray(np.asarray(in_liquid) * np.asarray(obstruction) / np.asarray(liquid_share, float))


def joint_share(
    salty: ArrayLike, wall: ArrayLike, *, salty_liquid: ArrayLike = 1.0, wall_liquid: ArrayLike = 1.0
) -> Array:
    """Give the saltiness of the joint between two thick pieces.

    Parameters
    ----------
    salty, wall : (...) float
        Diffusivities of salt in both doughs. [m²/s]
    salty_liquid, wall_liquid : (...) float
        Liquid's share of the volume of each. [1]

    Returns
    -------
    (...) float
        Salt in the liquid at the joint over that of the salty dough, from the first moment on. [1]

    References
    ----------
    J. Crank, The Mathematics of Diffusion, 2nd edition (1975), section 3.3 (composite media).

    Examples
    --------
    >>> float(joint_share(1e-10, 1e-10))
    0.5
    """
    out, into = (np.asarray(share) * np.sqrt(np.asarray(speed, float))
                 for share, speed in ((salty_liquid, salty), (wall_liquid, wall)))  # fmt: skip
    return np.asarray(out / (out + into))


def salt_at(depth: ArrayLike, time: ArrayLike, diffusivity: ArrayLike, joint: ArrayLike = 0.5) -> Array:
    """Give the saltiness at a depth in a thick wall.

    Parameters
    ----------
    depth, time : (...) float
        Way from the joint, and how long it has been. [m, s]
    diffusivity : (...) float
        Diffusivity of salt in the wall. [m²/s]
    joint : (...) float
        Saltiness at the joint. [1]

    Returns
    -------
    (...) float
        Salt in the liquid over that of the salty dough. [1]

    Examples
    --------
    >>> float(salt_at(0.003, 86400.0, 1e-10).round(3))
    0.235
    """
    reach = 2 * np.sqrt(np.asarray(diffusivity, float) * np.asarray(time))
    return np.asarray(np.asarray(joint) * erfc(np.asarray(depth) / reach))


def creep_depth(limit: ArrayLike, time: ArrayLike, diffusivity: ArrayLike, joint: ArrayLike = 0.5) -> Array:
    """Give how deep a thick wall is saltier than a limit.

    Parameters
    ----------
    limit : (...) float
        Salt in the liquid over that of the salty dough. [1]
    time, diffusivity, joint
        As of `salt_at`.

    Returns
    -------
    (...) float
        Depth; 0 where not even the joint is so salty. [m]

    Examples
    --------
    >>> float((1e3 * creep_depth(0.01, 86400.0, 1e-10)).round(1))
    9.7
    """
    share = np.clip(np.asarray(limit, float) / np.asarray(joint, float), 1e-300, 1.0)
    low, high = np.zeros_like(share), np.full_like(share, 27.0)
    for _ in range(50):
        middle = (low + high) / 2
        beyond = erfc(middle) > share
        low, high = np.where(beyond, middle, low), np.where(beyond, high, middle)
    return np.asarray(2 * np.sqrt(np.asarray(diffusivity, float) * np.asarray(time)) * (low + high) / 2)


def wall_left(
    time: ArrayLike,
    thickness: ArrayLike,
    diffusivity: ArrayLike,
    *,
    contrast: ArrayLike,
    joint: ArrayLike = 0.5,
    sides: int = 2,
) -> Array:
    """Give the share of its resistance that a wall still has.

    Parameters
    ----------
    time, thickness : (...) float
        How long it has stood, and its thickness. [s, m]
    diffusivity : (...) float
        Diffusivity of salt in the wall. [m²/s]
    contrast : (...) float
        How many times better the wall conducts once its liquid is as salty as that of the conducting dough. [1]
    joint : (...) float
        Saltiness at the joints. [1]
    sides : int
        2 for a wall between two salty lumps; 1 for a layer on one lump.

    Returns
    -------
    (...) float
        Resistance over that of the fresh wall. [1]

    Notes
    -----
    Conductivity rises in a straight line with salt. The joints keep their saltiness, which is right until the fronts
    meet (D t/d² about 0.05) and kind after that; both lumps are thick. Sugar and water that wander the other way are
    left out.

    Examples
    --------
    >>> wall_left([0.0, 3600.0, 86400.0], 0.006, 1e-10, contrast=500.0).round(2).tolist()
    [1.0, 0.2, 0.0]
    """
    depth = np.asarray(thickness, float) / sides
    age = np.asarray(diffusivity) * np.asarray(time, float) / depth**2
    return _left(age, np.asarray(contrast, float), np.asarray(joint, float))


def wall_lifetime(
    thickness: ArrayLike,
    diffusivity: ArrayLike,
    *,
    factor: ArrayLike,
    contrast: ArrayLike,
    joint: ArrayLike = 0.5,
    sides: int = 2,
) -> Array:
    """Give how long a wall lasts before it has only a part of its resistance.

    Parameters
    ----------
    thickness, diffusivity, contrast, joint, sides
        As of `wall_left`.
    factor : (...) float
        Resistance of the fresh wall over what is just enough. [1]

    Returns
    -------
    (...) float
        Time; infinite where even a salty wall would do, 0 where the fresh one does not. [s]

    Examples
    --------
    >>> float((wall_lifetime(0.006, 1e-10, factor=10.0, contrast=500.0) / 3600).round(1))
    1.4
    """
    depth = np.asarray(thickness, float) / sides
    wanted = 1 / np.asarray(factor, float)
    better, shore = np.asarray(contrast, float), np.asarray(joint, float)
    shape = np.broadcast_shapes(depth.shape, np.shape(diffusivity), wanted.shape, better.shape, shore.shape)
    low, high = np.full(shape, np.log(_SHORTEST)), np.full(shape, np.log(_LONGEST))
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        holds = _left(np.exp(middle), better, shore) > wanted
        low, high = np.where(holds, middle, low), np.where(holds, high, middle)
    found = np.exp((low + high) / 2) * depth**2 / np.asarray(diffusivity)
    enough = wanted * (1 + (better - 1) * shore) <= 1
    return np.asarray(np.where(wanted >= 1, 0.0, np.where(enough, np.inf, found)))


def _left(age: Array, contrast: Array, joint: Array) -> Array:
    """Resistance left of a layer of depth 1, salty at one face and tight (or mirrored) at the other."""
    where = (_PLACES + 1) / 2
    squeezed = where**2  # finer near the salty face
    shape = np.broadcast_shapes(age.shape, contrast.shape, joint.shape)
    age, contrast, joint = (np.broadcast_to(each, shape)[..., None] for each in (age, contrast, joint))
    reach = 2 * np.sqrt(np.maximum(age, 1e-12))
    salt = sum(
        (-1) ** n * (erfc((2 * n + squeezed) / reach) + erfc((2 * n + 2 - squeezed) / reach)) for n in range(_IMAGES)
    )
    worse = 1 + (contrast - 1) * joint * np.where(age > 0, salt, 0.0)
    return np.asarray((_WEIGHTS * where / worse).sum(axis=-1))


def erfc(x: ArrayLike) -> Array:
    """Give the complementary error function.

    Parameters
    ----------
    x : (...) float
        From 0 on. [1]

    Returns
    -------
    (...) float
        Within 1.2 parts in ten million of itself. [1]

    References
    ----------
    W. H. Press and others, Numerical Recipes, 2nd edition (1992), section 6.2 (Chebyshev fit); from memory.

    Examples
    --------
    >>> erfc([0.0, 1.0, 2.0]).round(5).tolist()
    [1.0, 0.1573, 0.00468]
    """
    z = np.asarray(x, float)
    t = 1 / (1 + z / 2)
    polynomial = np.zeros_like(t)
    for factor in reversed(_CHEBYSHEV):
        polynomial = polynomial * t + factor
    return np.asarray(t * np.exp(-z * z + polynomial))
