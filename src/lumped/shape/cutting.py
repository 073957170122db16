"""Cut one body into cells, bin by bin, compiled.

Three passes go over the bins: the level (signed distance) of each cell's centre; the conductance of the face between
each cell and the next one along each axis; and last the numbers of the cells that any face leads to. A pass reads
what the one before wrote and writes only in its own bins, so that bins may be shared out to threads.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from lumped.compiling import compiled
from lumped.shape.bins import EDGE, Bins, Grid
from lumped.shape.faces import FINE, FINER, is_kinked, point_of_face, share_of_face
from lumped.shape.forms import MINE, PIECE, SIGMA
from lumped.shape.meeting import FAR, form_of, mean_conductivity, place_of
from lumped.shape.pieces import Near, dough_at, level_at

__all__ = ["Blocks", "faced", "leaned", "levelled", "numbered", "written"]

Floats = NDArray[np.float64]
Integers = NDArray[np.int64]

_CELLS = EDGE**3
_LEAST_SHARE = 1e-4  # smaller shares of a face are dropped
_IN_SURFACE = 1e-3  # in pitches; faces this near to a surface in their middle may lie in it
_SKIN = 1e-6  # in pitches; a face that lies in the surface itself is outside, whatever rounding does
_HALVES = 2 * EDGE + 1
_LEAST_VOLUME = 0.01
_EDGED = 0.02  # in pitches; smooth surfaces curve less than this over a cell


class Blocks(NamedTuple):
    """What is known of each bin's cells, (b, EDGE³): cell (i, j, k) of a bin stands at (i · EDGE + j) · EDGE + k.

    Parameters
    ----------
    level : (b, EDGE³) float32
        Signed distance of the centre, negative inside. [m]
    owner : (b, EDGE³) int16
        Piece that owns the centre or is nearest to it.
    mixed : (b, EDGE³) bool
        Whether doughs of two conductivities reach the cell.
    conductance : (b, 3, EDGE³) float
        Conductance to the next cell along each axis; 0 where there is none. [S]
    share : (b, EDGE³) float32
        Share of the cell's volume inside the body.
    number : (b, EDGE³) int32
        Number of the cell's unknown; -1 where there is none.
    """

    level: NDArray[np.float32]
    owner: NDArray[np.int16]
    mixed: NDArray[np.bool_]
    conductance: Floats
    share: NDArray[np.float32]
    number: NDArray[np.int32]

    @classmethod
    def empty(cls, bins: int) -> "Blocks":
        """Make room for so many bins."""
        shape = (bins, _CELLS)
        return cls(
            np.empty(shape, np.float32), np.zeros(shape, np.int16), np.zeros(shape, np.bool_),
            np.zeros((bins, 3, _CELLS)), np.zeros(shape, np.float32), np.full(shape, -1, np.int32),
        )  # fmt: skip


@compiled
def levelled(space: Floats, grid: Grid, bins: Bins, blocks: Blocks, first: int, last: int) -> None:
    """Fill in level, owner and whether doughs mix, for bins `first` to `last`."""
    for b in range(first, last):
        if bins.whole[b]:
            blocks.level[b, :] = -FAR * grid.pitch
            blocks.owner[b, :] = space[bins.listed[bins.starts[b]], PIECE]
            continue
        near = (bins.listed, bins.starts[b], bins.starts[b + 1])
        mixes = _has_two_doughs(space, near)
        for c in range(0, _CELLS, 2):
            if c // EDGE % 2 == 0 and c // EDGE**2 % 2 == 0:
                _level_eight(space, grid, bins, blocks, b, c, near, mixes)


@compiled
def _level_eight(space, grid, bins, blocks, b, c, near, mixes):  # type: ignore[no-untyped-def]
    """Fill in eight cells from the first, c, on; one look between them tells whether the surface comes near."""
    h, far = grid.pitch, FAR * grid.pitch
    low = bins.first + EDGE * bins.place[b]
    x = grid.origin[0] + h * (low[0] + c // EDGE**2 + 1)
    y = grid.origin[1] + h * (low[1] + c // EDGE % EDGE + 1)
    z = grid.origin[2] + h * (low[2] + c % EDGE + 1)
    level, owner = level_at(space, near, far, (x, y, z))
    apart = np.sqrt(0.75) * h  # from there to each centre, and from a centre to the corners of its cell
    plain = level > 2 * apart or (level < -2 * apart and near[2] - near[1] == 1)
    kept, sigma = np.empty(near[2] - near[1]), np.empty(near[2] - near[1])
    for k in range(8):
        d = c + k // 4 * EDGE**2 + k // 2 % 2 * EDGE + k % 2
        if not plain:
            u, v, w = x + h * (k // 4 - 0.5), y + h * (k // 2 % 2 - 0.5), z + h * (k % 2 - 0.5)
            level, owner = level_at(space, near, far, (u, v, w))
            if mixes and level < h:
                count = dough_at(space, near, far, (u, v, w), (kept, sigma))
                blocks.mixed[b, d] = _reached_by_two(kept, sigma, count, apart)
        blocks.level[b, d], blocks.owner[b, d] = level, owner


@compiled
def _has_two_doughs(space: Floats, near: Near) -> bool:
    found = 0.0
    for e in range(near[1], near[2]):
        f = near[0][e]
        if space[f, MINE] > 0 and found == 0.0:
            found = space[f, SIGMA]
        elif space[f, MINE] > 0 and space[f, SIGMA] != found:
            return True
    return False


@compiled
def _reached_by_two(kept: Floats, sigma: Floats, count: int, reach: float) -> bool:
    found = 0.0
    for k in range(count):
        if kept[k] < reach:
            if found not in (0.0, sigma[k]):
                return True
            found = sigma[k]
    return False


@compiled
def faced(space: Floats, grid: Grid, bins: Bins, blocks: Blocks, first: int, last: int) -> None:
    """Fill in the conductances of faces and the shares of volumes, for bins `first` to `last`."""
    h = grid.pitch
    reach = np.sqrt(0.75) * h  # from a cell's centre to the far corners of its faces
    halves, cube, corner = np.empty((_HALVES, _HALVES, _HALVES)), np.empty((3, 3, 3)), np.empty((FINER + 1, FINER + 1))
    for b in range(first, last):
        near = (bins.listed, bins.starts[b], bins.starts[b + 1])
        low = grid.origin + h * (bins.first + EDGE * bins.place[b])
        halves[:] = np.nan
        for c in range(_CELLS):
            here, at = blocks.level[b, c], (c // EDGE**2, c // EDGE % EDGE, c % EDGE)
            if here >= reach:
                continue
            blocks.share[b, c] = 1.0
            if here > -reach:
                _look_around(space, near, low, h, halves, at, cube)
                blocks.share[b, c] = _volume(space, near, low, h, cube, at)
            for axis in range(3):
                other, d = neighbour(bins, b, c, axis)
                if other < 0 or blocks.level[other, d] >= reach:
                    continue
                share = 1.0
                if min(here, blocks.level[other, d]) > -reach:
                    share = _share(space, near, low, h, cube, at, axis, corner)
                if share <= _LEAST_SHARE:
                    continue
                if blocks.mixed[b, c] or blocks.mixed[other, d]:
                    mean = mean_conductivity(space, near, low, h, at, axis, np.empty(near[2] - near[1]))
                else:
                    mean = space[form_of(space, near, blocks.owner[b, c]), SIGMA]
                blocks.conductance[b, axis, c] = mean * share * h


@compiled
def neighbour(bins: Bins, b: int, c: int, axis: int) -> tuple[int, int]:
    """Bin and cell that come next along an axis; bin -1 if the body does not reach there."""
    step = EDGE * EDGE if axis == 0 else (EDGE if axis == 1 else 1)
    if c // step % EDGE < EDGE - 1:
        return b, c + step
    i, j, k = bins.place[b, 0] + (axis == 0), bins.place[b, 1] + (axis == 1), bins.place[b, 2] + (axis == 2)
    nx, ny, nz = bins.number.shape
    if i >= nx or j >= ny or k >= nz:
        return -1, 0
    return bins.number[i, j, k], c - (EDGE - 1) * step


@compiled
def _look_around(space, near, low, h, halves, at, cube):  # type: ignore[no-untyped-def]
    """Fill in the levels of a cell's corners and of what lies halfway between, each looked up once in its bin."""
    for i in range(3):
        for j in range(3):
            for k in range(3):
                u, v, w = 2 * at[0] + i, 2 * at[1] + j, 2 * at[2] + k
                if np.isnan(halves[u, v, w]):
                    x, y, z = low[0] + 0.5 * h * u, low[1] + 0.5 * h * v, low[2] + 0.5 * h * w
                    halves[u, v, w] = level_at(space, near, FAR * h, (x, y, z))[0]
                cube[i, j, k] = halves[u, v, w]


@compiled
def _share(space, near, low, h, cube, at, axis, corner):  # type: ignore[no-untyped-def]
    """Inside share of the face between cell `at` of a bin and the next one along an axis."""
    middle = cube[1 + (axis == 0), 1 + (axis == 1), 1 + (axis == 2)]
    if abs(middle) >= np.sqrt(0.5) * h:
        return 1.0 if middle < 0 else 0.0
    if abs(middle) < _IN_SURFACE * h:
        _fill_both_sides(space, near, low, h, at, axis, corner)
        return share_of_face(corner, FINER)
    for m in range(FINE + 1):
        for n in range(FINE + 1):
            level = cube[2, m, n] if axis == 0 else (cube[m, 2, n] if axis == 1 else cube[m, n, 2])
            corner[m, n] = level + _SKIN * h
    if not is_kinked(corner, h):
        return share_of_face(corner, FINE)
    for m in range(FINER + 1):
        for n in range(FINER + 1):
            x, y, z = point_of_face(low, h, at, axis, m / FINER, n / FINER)
            corner[m, n] = level_at(space, near, FAR * h, (x, y, z))[0] + _SKIN * h
    return share_of_face(corner, FINER)


@compiled
def _fill_both_sides(space, near, low, h, at, axis, corner):  # type: ignore[no-untyped-def]
    """Levels where a face may lie in a surface: outside unless both sides are inside, as for lumps face to face."""
    over = 2 * _IN_SURFACE * h
    p, q, r = over * (axis == 0), over * (axis == 1), over * (axis == 2)
    for m in range(FINER + 1):
        for n in range(FINER + 1):
            x, y, z = point_of_face(low, h, at, axis, m / FINER, n / FINER)
            ahead = level_at(space, near, FAR * h, (x + p, y + q, z + r))[0]
            behind = level_at(space, near, FAR * h, (x - p, y - q, z - r))[0]
            corner[m, n] = max(ahead, behind) + _SKIN * h


@compiled
def _volume(space, near, low, h, cube, at):  # type: ignore[no-untyped-def]
    """Share of a cell's volume inside the body, from eight smaller cells.

    The level in the middle of each is the mean of its corners; where an edge of the body makes that wrong, it is
    looked up.
    """
    total = cube[0, 0, 0] + cube[0, 0, 2] + cube[0, 2, 0] + cube[0, 2, 2]
    total += cube[2, 0, 0] + cube[2, 0, 2] + cube[2, 2, 0] + cube[2, 2, 2]
    smooth = abs(total / 8 - cube[1, 1, 1]) < _EDGED * h
    inside = 0.0
    for i in range(2):
        for j in range(2):
            for k in range(2):
                level = 0.0
                if smooth:
                    for n in range(8):
                        level += cube[i + n // 4, j + n // 2 % 2, k + n % 2] / 8
                else:
                    x, y = low[0] + h * (at[0] + 0.25 + 0.5 * i), low[1] + h * (at[1] + 0.25 + 0.5 * j)
                    z = low[2] + h * (at[2] + 0.25 + 0.5 * k)
                    level = level_at(space, near, FAR * h, (x, y, z))[0]
                inside += min(max(0.5 - level / (h / 2), 0.0), 1.0) / 8
    return max(inside, _LEAST_VOLUME)


@compiled
def numbered(bins: Bins, blocks: Blocks) -> tuple[int, int]:
    """Number the cells that a face leads to, bin by bin; how many cells and faces there are."""
    faces = 0
    for b in range(len(bins.place)):
        for axis in range(3):
            for c in range(_CELLS):
                if blocks.conductance[b, axis, c] > 0:
                    other, d = neighbour(bins, b, c, axis)
                    blocks.number[b, c] = blocks.number[other, d] = 0
                    faces += 1
    cells = 0
    for b in range(len(bins.place)):
        for c in range(_CELLS):
            if blocks.number[b, c] == 0:
                blocks.number[b, c] = cells
                cells += 1
    return cells, faces


@compiled
def written(bins: Bins, blocks: Blocks, index, piece, share, edges, conductance) -> None:  # type: ignore[no-untyped-def]
    """Write down the cells' places and pieces, and the faces between them."""
    m = 0
    for b in range(len(bins.place)):
        low = bins.first + EDGE * bins.place[b]
        for c in range(_CELLS):
            n = blocks.number[b, c]
            if n < 0:
                continue
            index[n, 0], index[n, 1], index[n, 2] = low[0] + c // EDGE**2, low[1] + c // EDGE % EDGE, low[2] + c % EDGE
            piece[n], share[n] = blocks.owner[b, c], blocks.share[b, c]
            for axis in range(3):
                if blocks.conductance[b, axis, c] > 0:
                    other, d = neighbour(bins, b, c, axis)
                    edges[m, 0], edges[m, 1] = n, blocks.number[other, d]
                    conductance[m] = blocks.conductance[b, axis, c]
                    m += 1


@compiled
def leaned(space: Floats, grid: Grid, bins: Bins, blocks: Blocks, face, piece, share) -> int:  # type: ignore[no-untyped-def]
    """Write down on which pieces' conductivities each face leans, and by what share; how many entries there are.

    Faces come in the order of `written`; one in a single dough leans on the piece that owns its first cell.
    """
    m = entries = 0
    h = grid.pitch
    for b in range(len(bins.place)):
        near = (bins.listed, bins.starts[b], bins.starts[b + 1])
        low = grid.origin + h * (bins.first + EDGE * bins.place[b])
        lean = np.empty(near[2] - near[1])
        for c in range(_CELLS):
            for axis in range(3):
                if blocks.number[b, c] < 0 or blocks.conductance[b, axis, c] == 0:
                    continue
                other, d = neighbour(bins, b, c, axis)
                if blocks.mixed[b, c] or blocks.mixed[other, d]:
                    mean_conductivity(space, near, low, h, (c // EDGE**2, c // EDGE % EDGE, c % EDGE), axis, lean)
                else:
                    lean[:] = 0.0
                    lean[place_of(space, near, blocks.owner[b, c])] = 1.0
                place, before = -1, -1.0
                for e in range(near[1], near[2]):
                    f = near[0][e]
                    if space[f, MINE] == 0 or space[f, PIECE] == before:
                        continue
                    place, before = place + 1, space[f, PIECE]
                    if lean[place] > 0:
                        face[entries], piece[entries], share[entries] = m, int(before), lean[place]
                        entries += 1
                m += 1
    return entries
