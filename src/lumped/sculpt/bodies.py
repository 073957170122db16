"""Which lumps are one body, and which pairs lie so close that a hand can't tell.

Lumps that overlap are one body. A pair whose gap, or whose overlap, is finer than a hand's precision may touch on one
table and not on the next: the verdict is computed for both.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components

from lumped.sculpt.scene import Lump
from lumped.shape import Gap, gap_between

__all__ = ["Nearness", "bodies_of", "near_pairs"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Nearness:
    """Two lumps that touch or nearly do.

    Parameters
    ----------
    first, second : int
        Places of the lumps in their order.
    gap : Gap
        Distance of the surfaces (negative: depth of overlap), and the point where they are nearest. [m]
    unsure : bool
        Whether a hand can't tell if they touch.
    """

    first: int
    second: int
    gap: Gap
    unsure: bool

    @property
    def touching(self) -> bool:
        """Whether they touch as drawn."""
        return self.gap.distance <= 0


def near_pairs(lumps: Sequence[Lump], *, hand_gap: float, hand_overlap: float) -> tuple[Nearness, ...]:
    """Find all pairs of lumps that touch or that a hand might make touch.

    Parameters
    ----------
    lumps : sequence of Lump
        The lumps in order.
    hand_gap, hand_overlap : float
        A gap, or an overlap, below which a hand can't tell. [m]

    Returns
    -------
    tuple of Nearness
    """
    boxes = [lump.solid.bounds() for lump in lumps]
    pairs = ((i, j) for j in range(len(lumps)) for i in range(j) if _boxes_near(boxes[i], boxes[j], hand_gap))
    found = []
    for i, j in pairs:
        gap = gap_between(lumps[i].solid, lumps[j].solid)
        if gap.distance < hand_gap:
            unsure = -hand_overlap < gap.distance
            found.append(Nearness(first=i, second=j, gap=gap, unsure=unsure))
    return tuple(found)


def bodies_of(count: int, touching: Iterable[tuple[int, int]]) -> NDArray[np.intp]:
    """Number the bodies: lumps joined by touching pairs are one.

    Parameters
    ----------
    count : int
        How many lumps there are.
    touching : iterable of (int, int)
        Pairs that touch.

    Returns
    -------
    (count,) int
        Body of each lump.

    Examples
    --------
    >>> bodies_of(3, [(0, 2)]).tolist()
    [0, 1, 0]
    """
    pairs = np.array(list(touching), dtype=int).reshape(-1, 2)
    graph = coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(count, count))
    return np.asarray(connected_components(graph, directed=False)[1], dtype=np.intp)


def _boxes_near(a: NDArray[np.float64], b: NDArray[np.float64], reach: float) -> bool:
    return bool(np.all(a[0] - reach <= b[1]) and np.all(b[0] - reach <= a[1]))
