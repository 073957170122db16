"""What solids are to compiled code: rows of numbers, one for each simple form.

A form is a ball, a block, a barrel (what stands between two walls round one axis, with flat ends) or a taper, and may
be cut off by a plane. A solid is one form or the union of several.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.compiling import compiled

__all__ = [
    "BALL", "BARREL", "BLOCK", "BOX", "KIND", "MINE", "PIECE", "PLANE", "SIGMA", "TAPER", "distance_at", "distances",
    "row",
]  # fmt: skip

Floats = NDArray[np.float64]
BALL, BLOCK, BARREL, TAPER = 0.0, 1.0, 2.0, 3.0
# Columns of a row. The first sixteen hold places, directions and lengths as `distance_at` reads them [m]; the form
# keeps what lies where `normal · point < place` of its plane. Those from PIECE on are filled in by who puts forms
# together: the piece that a form belongs to, whether that is one of the body's, and its conductivity [S/m].
PLANE, KIND, BOX = slice(16, 20), 20, slice(21, 27)
PIECE, MINE, SIGMA = 27, 28, 29
_WIDTH = 30
_NOWHERE = 1e300


def row(kind: float, box: ArrayLike, *numbers: float) -> Floats:
    """Make the row of one form that no plane cuts, shape (1, …).

    Parameters
    ----------
    kind : float
        `BALL`, `BLOCK`, `BARREL` or `TAPER`.
    box : (2, 3) float
        Box around it. [m]
    *numbers : float
        As `distance_at` reads them.
    """
    found = np.zeros((1, _WIDTH))
    found[0, : len(numbers)] = numbers
    found[0, PLANE] = [0.0, 0.0, 0.0, _NOWHERE]
    found[0, KIND], found[0, BOX] = kind, np.ravel(box)
    return found


@compiled
def _corner(first: float, second: float) -> float:
    """Distance to what is inside two walls at right angles, from the distances to each wall."""
    if first > 0.0 and second > 0.0:
        return float(np.sqrt(first * first + second * second))
    return max(first, second)


@compiled
def _to_block(n: Floats, f: int, x: float, y: float, z: float) -> float:
    """Middle, half lengths, and the three rows of the turn."""
    x, y, z = x - n[f, 0], y - n[f, 1], z - n[f, 2]
    a = abs(n[f, 6] * x + n[f, 7] * y + n[f, 8] * z) - n[f, 3]
    b = abs(n[f, 9] * x + n[f, 10] * y + n[f, 11] * z) - n[f, 4]
    c = abs(n[f, 12] * x + n[f, 13] * y + n[f, 14] * z) - n[f, 5]
    if a <= 0.0 and b <= 0.0 and c <= 0.0:
        return float(max(a, b, c))
    a, b, c = max(a, 0.0), max(b, 0.0), max(c, 0.0)
    return float(np.sqrt(a * a + b * b + c * c))


@compiled
def _to_barrel(n: Floats, f: int, x: float, y: float, z: float) -> float:
    """Middle of one end, direction, length, middle and half of the wall's radii."""
    x, y, z = x - n[f, 0], y - n[f, 1], z - n[f, 2]
    along = x * n[f, 3] + y * n[f, 4] + z * n[f, 5]
    across = np.sqrt(max(x * x + y * y + z * z - along * along, 0.0))
    return float(_corner(abs(across - n[f, 7]) - n[f, 8], abs(along - 0.5 * n[f, 6]) - 0.5 * n[f, 6]))


@compiled
def _to_taper(n: Floats, f: int, x: float, y: float, z: float) -> float:
    """Middle of the first end, direction, length, radii at both ends."""
    x, y, z = x - n[f, 0], y - n[f, 1], z - n[f, 2]
    along = x * n[f, 3] + y * n[f, 4] + z * n[f, 5]
    across = np.sqrt(max(x * x + y * y + z * z - along * along, 0.0))
    length, near, far = n[f, 6], n[f, 7], n[f, 8]
    over = abs(along - 0.5 * length) - 0.5 * length
    beside = max(across - (near if along < 0.5 * length else far), 0.0)
    fall = far - near
    share = min(max(((across - near) * fall + along * length) / (fall * fall + length * length), 0.0), 1.0)
    off, up = across - near - share * fall, along - share * length
    nearest = np.sqrt(min(beside * beside + over * over, off * off + up * up))
    inside = over < 0.0 and (across - near) * length < along * fall
    return float(-nearest if inside else nearest)


@compiled
def distance_at(n: Floats, f: int, x: float, y: float, z: float) -> float:
    """Signed distance of a point to form f of some rows, negative inside. [m]"""
    kind = n[f, 20]
    if kind == BARREL:
        found = _to_barrel(n, f, x, y, z)
    elif kind == BLOCK:
        found = _to_block(n, f, x, y, z)
    elif kind == BALL:
        a, b, c = x - n[f, 0], y - n[f, 1], z - n[f, 2]
        found = np.sqrt(a * a + b * b + c * c) - n[f, 3]
    else:
        found = _to_taper(n, f, x, y, z)
    return float(max(found, n[f, 16] * x + n[f, 17] * y + n[f, 18] * z - n[f, 19]))


@compiled
def distances(forms: Floats, points: Floats) -> Floats:
    """Signed distance of points (n, 3) to the union of forms, (n,). [m]"""
    found = np.empty(len(points))
    for i in range(len(points)):
        nearest = np.inf
        for f in range(len(forms)):
            nearest = min(nearest, distance_at(forms, f, points[i, 0], points[i, 1], points[i, 2]))
        found[i] = nearest
    return found
