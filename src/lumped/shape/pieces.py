"""Pieces of dough in order: where two overlap, the later one has the space.

For one body the signed distance of its space is built up form by form, φ ← min(φ, d) for a form of the body and
φ ← max(φ, −d) for any other, which takes space away. Each step keeps the sign exact, and never makes φ change faster
than the point moves.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.compiling import compiled
from lumped.errors import InputError
from lumped.shape.faces import Point
from lumped.shape.forms import MINE, PIECE, SIGMA, distance_at
from lumped.shape.solids import Solid

__all__ = ["Near", "Piece", "dough_at", "level_at", "space_of"]

Floats = NDArray[np.float64]
Near = tuple[NDArray[np.int64], int, int]  # a list of forms, and where in it those near begin and end


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """One solid of one dough.

    Parameters
    ----------
    name : str
        Name of the lump.
    solid : Solid
        Its shape.
    conductivity : float
        Conductivity of its dough. [S/m]
    """

    name: str
    solid: Solid
    conductivity: float

    def __post_init__(self) -> None:
        if not (np.isfinite(self.conductivity) and self.conductivity > 0):
            raise InputError("piece-conductivity", piece=self.name, value=f"{self.conductivity:g}")


def space_of(pieces: Sequence[Piece], mine: NDArray[np.bool_], reach: float) -> Floats:
    """Gather the forms of one body, and of whatever comes within `reach` [m] of the box around it.

    Parameters
    ----------
    pieces : sequence of Piece
        All pieces, later ones win.
    mine : (p,) bool
        Which pieces belong to the body.
    reach : float
        How far away a piece may be. [m]

    Returns
    -------
    (f, …) float
        Forms in order, all columns filled in (see `lumped.shape.forms`).
    """
    boxes = np.array([piece.solid.bounds() for piece in pieces])
    low, high = boxes[mine, 0].min(axis=0) - reach, boxes[mine, 1].max(axis=0) + reach
    near = np.flatnonzero(np.all((boxes[:, 0] <= high) & (boxes[:, 1] >= low), axis=1))
    found = [pieces[int(k)].solid.forms for k in near]
    space = np.concatenate(found)
    space[:, PIECE] = np.repeat(near, [len(each) for each in found])
    space[:, MINE] = np.repeat(mine[near], [len(each) for each in found])
    space[:, SIGMA] = np.repeat([pieces[int(k)].conductivity for k in near], [len(each) for each in found])
    return space


@compiled
def level_at(space: Floats, near: Near, far: float, point: Point) -> tuple[float, int]:
    """Signed distance of the body's space [m], and the piece that owns (or is nearest to) a point, -1 if all are far.

    Only forms near are looked at; `far` is the distance of what is not.
    """
    level, owner = far, -1.0
    for e in range(near[1], near[2]):
        f = near[0][e]
        d = distance_at(space, f, point[0], point[1], point[2])
        if space[f, MINE] > 0:
            if d < 0.0 or d < level:
                owner = space[f, PIECE]
            level = min(level, d)
        else:
            level = max(level, -d)
    return level, int(owner)


@compiled
def dough_at(space: Floats, near: Near, far: float, point: Point, kept: tuple[Floats, Floats]) -> int:
    """Fill in what each of the body's pieces keeps after the later ones took theirs, and its conductivity.

    Returns
    -------
    int
        How many pieces: up to there `kept` has their signed distances [m] and their conductivities [S/m].
    """
    level, sigma = kept
    count, before = 0, -1.0
    for e in range(near[1], near[2]):
        f = near[0][e]
        d = distance_at(space, f, point[0], point[1], point[2])
        own = space[f, MINE] > 0
        joins = own and space[f, PIECE] == before
        for k in range(count - 1 if joins else count):
            level[k] = max(level[k], -d)
        if joins:
            level[count - 1] = min(level[count - 1], d)
        elif own:
            level[count], sigma[count], before = min(far, d), space[f, SIGMA], space[f, PIECE]
            count += 1
    return count
