"""What share of a cell's face lies inside a body.

A face is divided into small squares, each into four triangles round its middle; on a triangle the signed distance
is taken as linear, which gives the inside area in closed form. The error falls with the square of the division, so
two divisions, one twice as fine, are extrapolated to none. Where an edge of the body crosses the face, the signed
distance has a kink, and the face is divided more finely.
"""

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

__all__ = ["corner_levels", "face_shares", "square_shares"]

_FINE, _FINER = 2, 8  # small squares along an edge of a face; where there is a kink
_KINK = 0.08  # in pitches; smooth surfaces curve less than this over a small square
_TRUSTED = 0.05  # where the two divisions differ more, a wall thinner than a pitch passes: the finer one stands
_SKIN = 1e-6  # in pitches; a face that lies in the surface itself is outside, whatever rounding does

Level = Callable[[NDArray[np.float64]], NDArray[np.float64]]


def face_shares(level: Level, centres: NDArray[np.float64], axis: int, pitch: float) -> NDArray[np.float64]:
    """Give the share of faces inside a body.

    Parameters
    ----------
    level : callable
        Signed distance of points (n, 3), negative inside, shape (n,). [m]
    centres : (f, 3) float
        Middles of the faces. [m]
    axis : int
        Direction of their normals, 0 to 2.
    pitch : float
        Edge of a face. [m]

    Returns
    -------
    (f,) float
        Shares, 0 to 1.

    Examples
    --------
    >>> half = face_shares(lambda points: points[:, 0] - 0.25, np.zeros((1, 3)), axis=2, pitch=1.0)
    >>> round(float(half[0]), 4)
    0.75
    """
    values = corner_levels(level, centres, axis, pitch, _FINE)
    share = _extrapolated(values, pitch)
    twist = values[:, :-1, :-1] + values[:, 1:, 1:] - values[:, 1:, :-1] - values[:, :-1, 1:]
    kinked = np.any(np.abs(twist) > _KINK * pitch, axis=(1, 2))
    share[kinked] = _extrapolated(corner_levels(level, centres[kinked], axis, pitch, _FINER), pitch)
    return np.asarray(share)


def _extrapolated(values: NDArray[np.float64], pitch: float) -> NDArray[np.float64]:
    """Share of each face from levels at the corners of its small squares, (f,)."""
    values = values + _SKIN * pitch
    fine = square_shares(values).mean(axis=(1, 2))
    coarse = square_shares(values[:, ::2, ::2]).mean(axis=(1, 2))
    smooth = np.abs(fine - coarse) < _TRUSTED
    return np.asarray(np.clip(np.where(smooth, (4 * fine - coarse) / 3, fine), 0.0, 1.0))


def corner_levels(
    level: Level, centres: NDArray[np.float64], axis: int, pitch: float, division: int
) -> NDArray[np.float64]:
    """Signed distance at the corners of the small squares, shape (f, division + 1, division + 1). [m]"""
    place = pitch * (np.arange(division + 1) / division - 0.5)
    steps = np.zeros((division + 1, division + 1, 3))
    first, second = (each for each in range(3) if each != axis)
    steps[..., first], steps[..., second] = np.meshgrid(place, place, indexing="ij")
    points = centres[:, None, None, :] + steps
    return np.asarray(level(points.reshape(-1, 3)).reshape(points.shape[:-1]))


def square_shares(corner: NDArray[np.float64]) -> NDArray[np.float64]:
    """Give the inside share of each square from levels at its corners (f, m+1, m+1), shape (f, m, m).

    Examples
    --------
    >>> square_shares(np.array([[[-1.0, 1.0], [-1.0, 1.0]]])).tolist()
    [[[0.5]]]
    """
    a, b = corner[:, :-1, :-1], corner[:, 1:, :-1]
    c, d = corner[:, 1:, 1:], corner[:, :-1, 1:]
    middle = (a + b + c + d) / 4
    share = ((a < 0).astype(float) + (b < 0) + (c < 0) + (d < 0)) / 4
    cut = (share > 0) & (share < 1) | ((share == 0) & (middle < 0)) | ((share == 1) & (middle >= 0))
    a, b, c, d, middle = (each[cut] for each in (a, b, c, d, middle))
    share[cut] = sum(_triangle_share(p, q, middle) for p, q in ((a, b), (b, c), (c, d), (d, a))) / 4
    return share


def _triangle_share(p: NDArray[np.float64], q: NDArray[np.float64], r: NDArray[np.float64]) -> NDArray[np.float64]:
    """Inside share of triangles whose corners have levels p, q, r: one corner alone on its side cuts off a corner."""
    low, middle, high = np.sort(np.stack([p, q, r]), axis=0)
    tiny = 1e-300
    one_in = low**2 / np.maximum((low - middle) * (low - high), tiny)
    one_out = 1 - high**2 / np.maximum((high - low) * (high - middle), tiny)
    return np.where(low >= 0, 0.0, np.where(middle >= 0, one_in, np.where(high >= 0, one_out, 1.0)))
