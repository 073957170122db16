"""Where doughs of two conductivities meet: what a face between two cells conducts.

The conductance of a face is  pitch × ∫ σ̄ dA / pitch²  over its share inside the body, σ̄ the harmonic mean of the
conductivity along the normal between the two cell centres. Lines run along the normal through the middles of the
face's small squares; on each interval of a line the share of each piece follows from a linear cut of its signed
distance, which is exact where doughs meet in a plane. Parts outside the body are ignored.
"""

import numpy as np
from numpy.typing import NDArray

from lumped.compiling import compiled
from lumped.shape.faces import point_of_face, share_of_square
from lumped.shape.forms import MINE, PIECE, SIGMA
from lumped.shape.pieces import Near, dough_at, level_at

__all__ = ["FAR", "form_of", "mean_conductivity", "place_of"]

Floats = NDArray[np.float64]
_LINES = 3  # along each edge of a face
_ALONG = 4  # intervals along the normal
FAR = 4.0  # in pitches; beyond, distances need not be right


@compiled
def form_of(space: Floats, near: Near, piece: int) -> int:
    """Give the first form near that belongs to a piece."""
    for e in range(near[1], near[2]):
        if space[near[0][e], PIECE] == piece:
            return int(near[0][e])
    return int(near[0][near[1]])


@compiled
def mean_conductivity(space: Floats, near: Near, low: Floats, h: float, at: tuple[int, int, int], axis: int,
                      lean: Floats) -> float:  # fmt: skip
    """Mean over a face's inside share of the harmonic mean of σ along the normal, from centre to centre. [S/m]

    Parameters
    ----------
    space, near, low, h, at, axis
        The body, the forms near, and the face after cell `at` of a bin (see `point_of_face`).
    lean : (k,) float
        Filled in with how far the mean leans on each of the body's pieces near, in order: by what share it grows when
        that piece's conductivity does. They sum to one.
    """
    far = FAR * h
    corner = np.empty((_LINES + 1, _LINES + 1))
    for i in range(_LINES + 1):
        for j in range(_LINES + 1):
            corner[i, j] = level_at(space, near, far, point_of_face(low, h, at, axis, i / _LINES, j / _LINES))[0]
    p, q, r = h / _ALONG * (axis == 0), h / _ALONG * (axis == 1), h / _ALONG * (axis == 2)
    kept, sigma, part = np.empty(len(lean)), np.empty(len(lean)), np.empty(len(lean))
    line, plain = np.empty((len(lean), _ALONG + 1)), np.zeros(len(lean))
    weighted = total = unweighted = passed = 0.0
    lean[:] = 0.0
    for i in range(_LINES):
        for j in range(_LINES):
            x, y, z = point_of_face(low, h, at, axis, (i + 0.5) / _LINES, (j + 0.5) / _LINES)
            count = 0
            for k in range(_ALONG + 1):
                s = k - 0.5 * _ALONG
                count = dough_at(space, near, far, (x + s * p, y + s * q, z + s * r), (kept, sigma))
                line[:count, k] = kept[:count]
            mean = _along(line, sigma, count, part)
            if mean > 0:
                share = share_of_square(corner[i, j], corner[i + 1, j], corner[i + 1, j + 1], corner[i, j + 1])
                weighted, total = weighted + share * mean, total + share
                unweighted, passed = unweighted + mean, passed + 1.0
                for n in range(count):
                    lean[n] += share * mean * part[n]
                    plain[n] += mean * part[n]
    if total > 0:
        lean /= weighted
        return weighted / total
    if passed > 0:
        lean[:] = plain / unweighted
        return unweighted / passed  # two lumps face to face: the face itself is in no lump
    owner = level_at(space, near, far, point_of_face(low, h, at, axis, 0.5, 0.5))[1]
    lean[place_of(space, near, owner)] = 1.0
    return float(space[form_of(space, near, owner), SIGMA])


@compiled
def place_of(space: Floats, near: Near, piece: int) -> int:
    """Give the place of a piece among the body's pieces near, in order; 0 if it is none of them."""
    place, before = -1, -1.0
    for e in range(near[1], near[2]):
        f = near[0][e]
        if space[f, MINE] > 0 and space[f, PIECE] != before:
            place, before = place + 1, space[f, PIECE]
            if before == piece:
                return place
    return 0


@compiled
def _along(line: Floats, sigma: Floats, count: int, part: Floats) -> float:
    """Harmonic mean of σ along a line [S/m], 0 where no dough is; `part` is each piece's part of the resistance."""
    length = resistance = 0.0
    for n in range(count):
        own = 0.0
        for k in range(_ALONG):
            low, high = min(line[n, k], line[n, k + 1]), max(line[n, k], line[n, k + 1])
            if high < 0:
                own += 1.0
            elif low < 0:
                own += low / (low - high)
        part[n] = own / sigma[n]
        length, resistance = length + own, resistance + part[n]
    if resistance == 0:
        return 0.0
    part[:count] /= resistance
    return length / resistance
