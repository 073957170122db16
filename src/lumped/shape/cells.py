"""From pieces of dough to cells: unknowns, faces and their conductances.

One unknown for each (cell, body) pair, so bodies that share a cell are not joined by that. The conductance of a face
is  pitch × ∫ σ̄ dA / pitch²  over the share of the face inside the body, σ̄ the harmonic mean of the conductivity
along the normal between the two cell centres: σ × share × pitch in one dough, and conductances in series across a
plane between two.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from lumped.errors import InputError
from lumped.shape.faces import corner_levels, face_shares, square_shares
from lumped.shape.pieces import Piece, Space
from lumped.shape.solids import bounds_of

__all__ = ["Cells", "cells_of"]

_LEAST_SHARE = 1e-4  # smaller shares of a face are dropped
_MOST_CELLS = 60_000_000  # cells of the box around a body that are looked at
_IN_SURFACE = 1e-3  # in pitches; faces this near to a surface in their middle may lie in it
_LINES = 4  # lines along each edge of a face, where doughs meet
_ALONG = 4  # intervals along the normal where doughs meet
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
    origin = low - pitch * (1 + np.mod(offset, 1.0))
    parts = [_cells_of_one(pieces, bodies == body, int(body), origin, pitch) for body in np.unique(bodies)]
    starts = np.cumsum([0, *(len(part.body) for part in parts)])
    joined = {
        name: np.concatenate([getattr(part, name) for part in parts])
        for name in ("index", "body", "piece", "conductivity", "share", "conductance")
    }
    edges = np.concatenate([part.edges + start for part, start in zip(parts, starts[:-1], strict=True)])
    return Cells(**joined, edges=edges, origin=origin, pitch=pitch)


def _cells_of_one(
    pieces: Sequence[Piece], members: NDArray[np.bool_], body: int, origin: Floats, pitch: float
) -> Cells:
    """Cut one body, with those pieces in view whose boxes meet its box."""
    boxes = np.array([piece.solid.bounds() for piece in pieces])
    low, high = boxes[members, 0].min(axis=0) - 2 * pitch, boxes[members, 1].max(axis=0) + 2 * pitch
    near = np.flatnonzero(np.all((boxes[:, 0] <= high) & (boxes[:, 1] >= low), axis=1))
    part = _cells_of_body([pieces[int(k)] for k in near], members[near], body, origin, pitch)
    return replace(part, piece=near[part.piece])


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


@dataclass(frozen=True, slots=True, kw_only=True)
class _Grid:
    """The part of the grid around one body, cell by cell."""

    space: Space
    pitch: float
    shape: Integers
    places: Integers
    centres: Floats
    level: Floats
    owner: Integers


def _cells_of_body(
    pieces: Sequence[Piece], members: NDArray[np.bool_], body: int, origin: Floats, pitch: float
) -> Cells:
    """Cut one body, on the part of the grid around it."""
    low, high = bounds_of([piece.solid for piece, member in zip(pieces, members, strict=True) if member])
    first = np.floor((low - origin) / pitch).astype(np.int64)
    shape = np.floor((high - origin) / pitch).astype(np.int64) + 1 - first
    space = Space(pieces=pieces, members=members, reach=1.5 * pitch)
    places = np.stack(np.meshgrid(*(np.arange(size) for size in shape), indexing="ij"), axis=-1).reshape(-1, 3)
    centres = origin + pitch * (places + first + 0.5)
    level, owner = space.level(centres)
    grid = _Grid(
        space=space, pitch=pitch, shape=shape, places=places, centres=centres, level=level, owner=owner
    )  # fmt: skip
    pairs, conductance = _faces(grid)
    used, edges = np.unique(pairs, return_inverse=True)
    return Cells(
        index=places[used] + first,
        body=np.full(len(used), body),
        piece=owner[used],
        conductivity=np.array([piece.conductivity for piece in pieces])[owner[used]],
        share=_volume_shares(space, centres[used], level[used], pitch),
        edges=edges.reshape(-1, 2),
        conductance=conductance,
        origin=origin,
        pitch=pitch,
    )


def _faces(grid: _Grid) -> tuple[Integers, Floats]:
    """Pairs of cells (by place in the grid) and the conductances of their faces, in all three directions."""
    sigma = np.array([piece.conductivity for piece in grid.space.pieces])
    mixed = _near_another_dough(grid.space, grid.centres, grid.level, grid.pitch)
    strides = np.array([grid.shape[1] * grid.shape[2], grid.shape[2], 1])
    pairs, values = [], []
    for axis in range(3):
        near = np.flatnonzero((grid.places[:, axis] < grid.shape[axis] - 1) & (grid.level < 1.2 * grid.pitch))
        far = near + strides[axis]
        share = _shares(grid, near, far, axis)
        kept = share > _LEAST_SHARE
        near, far, share = near[kept], far[kept], share[kept]
        mean = sigma[grid.owner[near]]
        across = mixed[near] | mixed[far]
        mean[across] = _mean_conductivity(grid.space, grid.centres[near[across]], axis, grid.pitch)
        pairs.append(np.column_stack([near, far]))
        values.append(mean * share * grid.pitch)
    return np.concatenate(pairs), np.concatenate(values)


def _shares(grid: _Grid, near: Integers, far: Integers, axis: int) -> Floats:
    """Inside shares of the faces between cells and their next ones along an axis."""
    here, there = grid.level[near], grid.level[far]
    reach = np.sqrt(0.75) * grid.pitch  # from a cell's centre to the far corners of its faces
    share = np.where(np.minimum(here, there) < -reach, 1.0, 0.0)
    step = np.zeros(3)
    step[axis] = grid.pitch / 2
    unsure = np.flatnonzero((np.abs(here) < reach) & (np.abs(there) < reach))
    middles = grid.centres[near[unsure]] + step
    level = grid.space.level(middles)[0]
    share[unsure] = np.where(level < 0, 1.0, 0.0)
    in_surface = np.abs(level) < _IN_SURFACE * grid.pitch
    close = (np.abs(level) < np.sqrt(0.5) * grid.pitch) & ~in_surface
    share[unsure[close]] = face_shares(_level_of(grid.space), middles[close], axis, grid.pitch)
    both_sides = _level_of(grid.space, 2 * _IN_SURFACE * 2 * step)
    share[unsure[in_surface]] = face_shares(both_sides, middles[in_surface], axis, grid.pitch)
    return share


def _level_of(space: Space, step: Floats | None = None) -> Callable[[Floats], Floats]:
    """Level of points; with a step: outside unless both sides are inside, as where two lumps lie face to face."""
    if step is None:
        return lambda points: space.level(points)[0]
    return lambda points: np.maximum(space.level(points + step)[0], space.level(points - step)[0])


def _near_another_dough(space: Space, centres: Floats, level: Floats, pitch: float) -> NDArray[np.bool_]:
    """Cells that space of two conductivities reaches."""
    near = np.zeros(len(centres), dtype=bool)
    members = np.flatnonzero(space.members)
    sigma = np.array([space.pieces[int(number)].conductivity for number in members])
    doughs = np.unique(sigma)
    if len(doughs) == 1:
        return near
    inside = np.flatnonzero(level < pitch)
    reached = np.zeros(len(inside), dtype=np.int64)
    for dough in doughs:
        levels = [space.level_of_piece(int(number), centres[inside]) for number in members[sigma == dough]]
        reached += np.min(levels, axis=0) < np.sqrt(0.75) * pitch
    near[inside] = reached > 1
    return near


def _mean_conductivity(space: Space, centres: Floats, axis: int, pitch: float) -> Floats:
    """Mean over a face's inside share of the harmonic mean of σ along the normal, from centre to centre. [S/m]

    Lines run along the normal through the middles of the face's small squares. On each interval of a line the share
    of each piece follows from a linear cut of its signed distance; parts outside the body are ignored.
    """
    if not len(centres):
        return np.empty(0)
    sigma = np.array([piece.conductivity for piece in space.pieces])
    step = np.zeros(3)
    step[axis] = pitch / 2
    corners = corner_levels(lambda points: space.level(points)[0], centres + step, axis, pitch, _LINES)
    weight = square_shares(corners).reshape(len(centres), -1)
    lines = _lines(centres, axis, pitch)
    length, resistance = np.zeros(lines.shape[:2]), np.zeros(lines.shape[:2])
    for number in np.flatnonzero(space.members):
        own = space.level_of_piece(int(number), lines.reshape(-1, 3)).reshape(lines.shape[:3])
        part = _inside_parts(own[..., :-1], own[..., 1:]).sum(axis=-1)
        length += part
        resistance += part / sigma[number]
    weight[weight.sum(axis=1) == 0] = 1.0  # two lumps face to face: the face itself is in no lump
    counted = weight * (length > 0)
    mean = np.divide(length, resistance, out=np.zeros_like(length), where=resistance > 0)
    total = counted.sum(axis=1)
    fallback = sigma[space.level(centres + step)[1]]
    return np.where(total > 0, (counted * mean).sum(axis=1) / np.where(total > 0, total, 1), fallback)


def _lines(centres: Floats, axis: int, pitch: float) -> Floats:
    """Points on lines from cell to next cell, shape (f, LINES², _ALONG + 1, 3). [m]"""
    first, second = (each for each in range(3) if each != axis)
    place = (np.arange(_LINES) + 0.5) / _LINES - 0.5
    steps = np.zeros((_LINES, _LINES, _ALONG + 1, 3))
    steps[..., first], steps[..., second], steps[..., axis] = np.meshgrid(
        place, place, np.arange(_ALONG + 1) / _ALONG, indexing="ij"
    )
    return np.asarray(centres[:, None, None, :] + pitch * steps.reshape(_LINES**2, _ALONG + 1, 3))


def _inside_parts(here: Floats, there: Floats) -> Floats:
    """Part of an interval that is inside, from the levels at its ends."""
    low, high = np.minimum(here, there), np.maximum(here, there)
    span = np.where(high > low, high - low, 1.0)
    return np.where(high < 0, 1.0, np.where(low >= 0, 0.0, -low / span))


def _volume_shares(space: Space, centres: Floats, level: Floats, pitch: float) -> Floats:
    """Share of each cell's volume inside the body; surface cells by eight smaller ones."""
    share = np.where(level < 0, 1.0, 0.0)
    skin = np.flatnonzero(np.abs(level) < np.sqrt(0.75) * pitch)
    corners = np.stack(np.meshgrid(*[[-0.25, 0.25]] * 3, indexing="ij"), axis=-1).reshape(8, 3)
    points = centres[skin, None, :] + pitch * corners
    small = space.level(points.reshape(-1, 3))[0].reshape(-1, 8)
    share[skin] = np.maximum(np.clip(0.5 - small / (pitch / 2), 0, 1).mean(axis=1), 0.01)
    return share
