"""From pieces of dough to cells: unknowns, faces and their conductances.

One unknown for each (cell, body) pair, so bodies that share a cell are not joined by that. The conductance of a face
is  pitch × ∫ σ̄ dA / pitch²  over the share of the face inside the body, σ̄ the harmonic mean of the conductivity
along the normal between the two cell centres: σ × share × pitch in one dough, and conductances in series across a
plane between two.
"""

import os
from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.errors import InputError
from lumped.shape import cutting
from lumped.shape.bins import Bins, Grid, binned
from lumped.shape.pieces import Piece, space_of
from lumped.shape.solids import bounds_of

__all__ = ["Cells", "cells_of"]

_MOST_CELLS = 60_000_000  # cells of the box around a body that are looked at
_REACH = 1.5  # in pitches; forms beyond do not matter to a cell
_SHARED_FROM = 64  # bins; fewer are cut by one thread
Integers = NDArray[np.int64]
Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Cells:
    """Cells of all bodies.

    Parameters
    ----------
    index : (n, 3) int
        Cell of each unknown; its centre is at `origin + pitch * (index + 1/2)`.
    body : (n,) int
        Body of each unknown.
    piece : (n,) int
        Piece that owns the cell's centre (or is nearest to it).
    conductivity : (n,) float
        Conductivity of that piece. [S/m]
    share : (n,) float
        Share of the cell's volume inside the body.
    edges : (m, 2) int
        Pairs of unknowns that share a face, both of one body.
    conductance : (m,) float
        Conductance from centre to centre. [S]
    origin : (3,) float
        Corner of cell (0, 0, 0). [m]
    pitch : float
        Edge of a cell. [m]
    leaning : (m, p) sparse float, optional
        By what share each face's conductance grows when the conductivity of each of the p pieces does; rows sum to
        one. Only where it was asked for.
    """

    index: Integers
    body: Integers
    piece: Integers
    conductivity: Floats
    share: Floats
    edges: Integers
    conductance: Floats
    origin: Floats
    pitch: float
    leaning: sparse.csr_array | None = None

    @property
    def centres(self) -> Floats:
        """Centres of the cells, (n, 3). [m]"""
        return self.origin + self.pitch * (self.index + 0.5)

    def volume(self, body: int) -> float:
        """Give the volume of a body. [m³]"""
        return float(self.share[self.body == body].sum() * self.pitch**3)


def cells_of(
    pieces: Sequence[Piece],
    body_of_piece: Sequence[int],
    *,
    pitch: float,
    offset: tuple[float, float, float] = (0.0, 0.0, 0.0),
    leaning: bool = False,
) -> Cells:
    """Cut pieces into cells.

    Parameters
    ----------
    pieces : sequence of Piece
        The lumps; where two overlap the later one has the space.
    body_of_piece : sequence of int
        Body of each piece. Pieces of different bodies never exchange current.
    pitch : float
        Edge of a cell. [m]
    offset : (3,) float
        Shift of the grid, in pitches; half a pitch gives a second opinion. [1]
    leaning : bool
        Whether to tell on which pieces each face leans, which `conduction.sensitivities` asks for.

    Returns
    -------
    Cells
        Unknowns and faces.

    Raises
    ------
    InputError
        If there are no pieces, the pitch is not positive, or it would take too many cells.

    Examples
    --------
    >>> from lumped.shape.solids import Block
    >>> bar = Piece(name="bar", solid=Block(centre=(0, 0, 0), size=(0.04, 0.01, 0.01)), conductivity=2.0)
    >>> cells = cells_of([bar], [0], pitch=0.01)
    >>> len(cells.body), cells.conductance.round(6).tolist()
    (4, [0.02, 0.02, 0.02])
    """
    _check(pieces, pitch)
    bodies = np.asarray(body_of_piece, dtype=np.int64)
    low = bounds_of([piece.solid for piece in pieces])[0]
    grid = Grid(low - pitch * (1 + np.mod(offset, 1.0)), float(pitch))
    sigma = np.array([piece.conductivity for piece in pieces])
    parts = [_cut(pieces, bodies == body, grid, leaning=leaning) for body in np.unique(bodies)]
    starts = np.cumsum([0, *(len(part.piece) for part in parts)])
    index, piece, share, edges, conductance = (np.concatenate(each) for each in list(zip(*parts, strict=True))[:5])
    edges += np.repeat(starts[:-1], [len(part.edges) for part in parts])[:, None]
    return Cells(
        index=index, body=bodies[piece], piece=piece, conductivity=sigma[piece], share=share, edges=edges,
        conductance=conductance, origin=grid.origin, pitch=grid.pitch,
        leaning=sparse.vstack([part.leaning for part in parts], format="csr") if leaning else None,
    )  # fmt: skip


def _check(pieces: Sequence[Piece], pitch: float) -> None:
    if not pieces:
        raise InputError("no-pieces")
    if not (np.isfinite(pitch) and pitch > 0):
        raise InputError("pitch-not-positive", pitch_mm=f"{1e3 * pitch:g}")
    low, high = bounds_of([piece.solid for piece in pieces])
    volume = float(np.prod(high - low))
    if volume / pitch**3 > _MOST_CELLS:
        fits = (volume / _MOST_CELLS) ** (1 / 3)
        raise InputError("too-many-cells", pitch_mm=f"{1e3 * pitch:.3g}", fits_mm=f"{1.05e3 * fits:.2g}")


class _Part(NamedTuple):
    """The cells of one body, as in `Cells`; `place` is the index there."""

    place: Integers
    piece: Integers
    share: Floats
    edges: Integers
    conductance: Floats
    leaning: sparse.csr_array


def _cut(pieces: Sequence[Piece], mine: NDArray[np.bool_], grid: Grid, *, leaning: bool) -> _Part:
    """Cut one body."""
    reach = _REACH * grid.pitch
    space = space_of(pieces, mine, reach)
    bins = binned(space, grid, reach)
    blocks = cutting.Blocks.empty(len(bins.place))
    _shared_out(bins, lambda first, last: cutting.levelled(space, grid, bins, blocks, first, last))
    _shared_out(bins, lambda first, last: cutting.faced(space, grid, bins, blocks, first, last))
    cells, faces = cutting.numbered(bins, blocks)
    part = _Part(
        place=np.empty((cells, 3), np.int64), piece=np.empty(cells, np.int64), share=np.empty(cells),
        edges=np.empty((faces, 2), np.int64), conductance=np.empty(faces),
        leaning=sparse.csr_array((faces, len(pieces))),
    )  # fmt: skip
    cutting.written(bins, blocks, *part[:5])
    return part._replace(leaning=_leaning(space, grid, bins, blocks, part.leaning.shape)) if leaning else part


def _leaning(space: Floats, grid: Grid, bins: Bins, blocks: cutting.Blocks, shape: tuple[int, int]) -> sparse.csr_array:
    """On which pieces each face of a body leans, (m, p)."""
    room = shape[0] * int(np.max(np.diff(bins.starts)))
    face, piece, share = np.empty(room, np.int64), np.empty(room, np.int64), np.empty(room)
    count = cutting.leaned(space, grid, bins, blocks, face, piece, share)
    return sparse.csr_array(sparse.coo_array((share[:count], (face[:count], piece[:count])), shape=shape))


def _shared_out(bins: Bins, work: Callable[[int, int], None]) -> None:
    """Do some work on all bins, on all processors where there are many."""
    count = len(bins.place)
    if count < _SHARED_FROM:
        return work(0, count)
    threads = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1
    ends = np.linspace(0, count, 8 * threads + 1).astype(int).tolist()
    with ThreadPoolExecutor(threads) as pool:
        for done in [pool.submit(work, first, last) for first, last in pairwise(ends)]:
            done.result()
    return None
