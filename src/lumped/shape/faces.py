"""What share of a cell's face lies inside a body.

A face is divided into small squares, each into four triangles round its middle; on a triangle the signed distance
is taken as linear, which gives the inside area in closed form. The error falls with the square of the division, so
two divisions, one twice as fine, are extrapolated to none. Where an edge of the body crosses the face, the signed
distance has a kink, and the face is divided more finely.
"""

import numpy as np
from numpy.typing import NDArray

from lumped.compiling import compiled

__all__ = ["FINE", "FINER", "Point", "is_kinked", "point_of_face", "share_of_face", "share_of_square"]

Floats = NDArray[np.float64]
Point = tuple[float, float, float]
FINE, FINER = 2, 4  # small squares along an edge of a face; where there is a kink
_KINK = 0.08  # in pitches; smooth surfaces curve less than this over a small square
_TRUSTED = 0.05  # where the two divisions differ more, a wall thinner than a pitch passes: the finer one stands


@compiled
def point_of_face(low: Floats, h: float, at: tuple[int, int, int], axis: int, u: float, v: float) -> Point:
    """Give a point of the face between a cell and the next one along an axis.

    Parameters
    ----------
    low : (3,) float
        Corner of cell (0, 0, 0). [m]
    h : float
        Edge of a cell. [m]
    at : (3,) int
        The cell.
    axis : int
        Direction of the face's normal, 0 to 2.
    u, v : float
        How far along the face's two edges, 0 to 1.
    """
    x = low[0] + h * (at[0] + (1.0 if axis == 0 else u))
    y = low[1] + h * (at[1] + (u if axis == 0 else (1.0 if axis == 1 else v)))
    z = low[2] + h * (at[2] + (1.0 if axis == 2 else v))
    return x, y, z


@compiled
def is_kinked(corner: Floats, pitch: float) -> bool:
    """Tell whether an edge of the body crosses a face, from levels at the corners of its small squares."""
    for i in range(FINE):
        for j in range(FINE):
            if abs(corner[i, j] + corner[i + 1, j + 1] - corner[i + 1, j] - corner[i, j + 1]) > _KINK * pitch:
                return True
    return False


@compiled
def share_of_face(corner: Floats, division: int) -> float:
    """Give the inside share of a face, 0 to 1.

    Parameters
    ----------
    corner : (division + 1, division + 1) float
        Signed distance at the corners of its small squares, negative inside.
    division : int
        Small squares along an edge, an even number.

    Examples
    --------
    >>> round(share_of_face(np.array([[-0.75, -0.25, 0.25]] * 3).T.copy(), 2), 6)
    0.75
    """
    fine = coarse = 0.0
    for i in range(division):
        for j in range(division):
            fine += share_of_square(corner[i, j], corner[i + 1, j], corner[i + 1, j + 1], corner[i, j + 1])
    for i in range(0, division, 2):
        for j in range(0, division, 2):
            coarse += share_of_square(corner[i, j], corner[i + 2, j], corner[i + 2, j + 2], corner[i, j + 2])
    fine, coarse = fine / division**2, 4 * coarse / division**2
    if abs(fine - coarse) < _TRUSTED:
        fine = (4 * fine - coarse) / 3
    return min(max(fine, 0.0), 1.0)


@compiled
def share_of_square(a: float, b: float, c: float, d: float) -> float:
    """Give the inside share of a square from the levels at its corners, in turn round it.

    Examples
    --------
    >>> share_of_square(-1.0, -1.0, 1.0, 1.0)
    0.5
    """
    middle = (a + b + c + d) / 4
    if a < 0 and b < 0 and c < 0 and d < 0 and middle < 0:
        return 1.0
    if a >= 0 and b >= 0 and c >= 0 and d >= 0 and middle >= 0:
        return 0.0
    found = _share_of_triangle(a, b, middle) + _share_of_triangle(b, c, middle)
    return float(found + _share_of_triangle(c, d, middle) + _share_of_triangle(d, a, middle)) / 4


@compiled
def _share_of_triangle(p: float, q: float, r: float) -> float:
    """Inside share of a triangle whose corners have levels p, q, r: one corner alone on its side is cut off."""
    low, high = min(p, q, r), max(p, q, r)
    middle = max(min(p, q), min(max(p, q), r))
    if low >= 0:
        return 0.0
    if high < 0:
        return 1.0
    if middle >= 0:
        return low * low / max((low - middle) * (low - high), 1e-300)
    return 1.0 - high * high / max((high - low) * (high - middle), 1e-300)
