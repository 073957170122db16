"""Pieces of dough in order: where two overlap, the later one has the space.

For one body the signed distance of its space is built up piece by piece, φ ← min(φ, d) for a piece of the body and
φ ← max(φ, −d) for any other, which takes space away. Each step keeps the sign exact.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.errors import InputError
from lumped.shape.solids import Points, Solid

__all__ = ["Piece", "Space"]


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


@dataclass(frozen=True, slots=True, kw_only=True)
class Space:
    """The space of one body among all pieces.

    Parameters
    ----------
    pieces : sequence of Piece
        All pieces, later ones win.
    members : (p,) bool
        Which pieces belong to the body.
    reach : float
        Distances beyond this need not be right. [m]
    """

    pieces: Sequence[Piece]
    members: NDArray[np.bool_]
    reach: float

    def level(self, points: Points) -> tuple[NDArray[np.float64], NDArray[np.int64]]:
        """Signed distance of the body's space and the piece that owns (or is nearest to) each point, both (n,)."""
        level = np.full(len(points), 2 * self.reach)
        owner = np.full(len(points), int(np.argmax(self.members)))
        for number, piece in enumerate(self.pieces):
            near, distance = self._near(piece, points)
            if self.members[number]:
                mine = near[(distance < 0) | (distance < level[near])]
                owner[mine] = number
                level[near] = np.minimum(level[near], distance)
            else:
                level[near] = np.maximum(level[near], -distance)
        return level, owner

    def level_of_piece(self, number: int, points: Points) -> NDArray[np.float64]:
        """Signed distance of the space that one piece keeps after the later ones took theirs, (n,). [m]"""
        level = np.full(len(points), 2 * self.reach)
        for other in range(number, len(self.pieces)):
            near, distance = self._near(self.pieces[other], points)
            level[near] = distance if other == number else np.maximum(level[near], -distance)
        return level

    def _near(self, piece: Piece, points: Points) -> tuple[NDArray[np.int64], NDArray[np.float64]]:
        low, high = piece.solid.bounds()
        inside = np.all((points > low - self.reach) & (points < high + self.reach), axis=1)
        near = np.flatnonzero(inside)
        return near, piece.solid.distance(points[near])
