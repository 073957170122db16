"""Bins of cells, and the few forms that reach each.

The grid around a body is divided into bins of 8 × 8 × 8 cells. A form is listed in a bin that its surface or its
inside comes near to; where one covers the whole bin, what stood in the list before it does not matter any more. Only
bins that the body reaches are kept.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from lumped.compiling import compiled
from lumped.shape.forms import BOX, MINE, distance_at

__all__ = ["EDGE", "Bins", "Grid", "binned"]

Floats = NDArray[np.float64]
Integers = NDArray[np.int64]
EDGE = 8  # cells along the edge of a bin
_OVER = 1.0  # pitches beyond a bin's own cells that are looked at from within it


class Grid(NamedTuple):
    """The grid: cell (i, j, k) has its centre at `origin + pitch * (index + 1/2)`.

    Parameters
    ----------
    origin : (3,) float
        Corner of cell (0, 0, 0). [m]
    pitch : float
        Edge of a cell. [m]
    """

    origin: Floats
    pitch: float


class Bins(NamedTuple):
    """The bins that a body reaches.

    Parameters
    ----------
    number : (nx, ny, nz) int
        Number of the bin at each place; -1 where the body does not reach.
    first : (3,) int
        Cell in the corner of the bin at place (0, 0, 0).
    place : (b, 3) int
        Place of each bin.
    starts : (b + 1,) int
        Where the list of each bin begins.
    listed : (…,) int
        Forms that come near, in order.
    whole : (b,) bool
        Whether a single piece covers the bin and all around it that is looked at.
    """

    number: Integers
    first: Integers
    place: Integers
    starts: Integers
    listed: Integers
    whole: NDArray[np.bool_]


def binned(space: Floats, grid: Grid, reach: float) -> Bins:
    """List for each bin the forms that come nearer than `reach` [m] to any of its cells."""
    boxes = space[space[:, MINE] > 0, BOX]
    low, high = boxes[:, :3].min(axis=0), boxes[:, 3:].max(axis=0)
    first = np.floor((low - grid.origin) / grid.pitch).astype(np.int64) - 1
    last = np.floor((high - grid.origin) / grid.pitch).astype(np.int64) + 1
    shape = (last - first) // EDGE + 1
    count, mine, whole = (np.zeros(shape, dtype) for dtype in (np.int64, np.bool_, np.bool_))
    corner = grid.origin + grid.pitch * first
    begins = np.zeros((*shape, 2), dtype=np.int64)
    _listed(space, corner, grid.pitch, reach, count, mine, whole, begins, np.empty(0, np.int64))
    starts = np.concatenate([[0], np.cumsum(count[mine])])
    begins[mine] = np.column_stack([starts[:-1], starts[1:]])
    listed = np.empty(starts[-1], dtype=np.int64)
    _listed(space, corner, grid.pitch, reach, count, mine, whole, begins, listed)
    number = np.full(shape, -1)
    number[mine] = np.arange(np.count_nonzero(mine))
    return Bins(number, first, np.argwhere(mine), starts, listed, whole[mine])


@compiled
def _listed(space, corner, pitch, reach, count, mine, whole, begins, listed):  # type: ignore[no-untyped-def]
    """Count what each bin lists, and fill it in where there is room: `begins` is where each list begins and ends."""
    count[:], mine[:], whole[:] = 0, False, False
    edge = EDGE * pitch
    radius = np.sqrt(0.75) * (EDGE + 2 * _OVER) * pitch
    nx, ny, nz = count.shape
    for f in range(len(space)):
        box, mine_too = space[f, BOX], space[f, MINE] > 0
        low = np.maximum(np.floor((box[:3] - reach - 2 * pitch - corner) / edge), 0.0)
        high = np.floor((box[3:] + reach + 2 * pitch - corner) / edge)
        for i in range(int(low[0]), min(int(high[0]), nx - 1) + 1):
            for j in range(int(low[1]), min(int(high[1]), ny - 1) + 1):
                for k in range(int(low[2]), min(int(high[2]), nz - 1) + 1):
                    x, y, z = corner[0] + edge * (i + 0.5), corner[1] + edge * (j + 0.5), corner[2] + edge * (k + 0.5)
                    d = distance_at(space, f, x, y, z)
                    if d > radius + reach:
                        continue
                    covers = d < -radius - reach
                    if covers:
                        count[i, j, k], mine[i, j, k] = 0, False
                    whole[i, j, k] = covers and mine_too
                    if covers and not mine_too:
                        continue
                    if not mine[i, j, k] and not mine_too:
                        continue  # there is nothing yet that it could take away
                    mine[i, j, k] = True
                    where = begins[i, j, k, 0] + count[i, j, k]
                    if where < begins[i, j, k, 1]:
                        listed[where] = f
                    count[i, j, k] += 1
