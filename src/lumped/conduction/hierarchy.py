"""A multigrid preconditioner: the network, and coarser and coarser ones that stand for it.

One *cycle* on a level smooths by coloured Gauss–Seidel, solves for what is left on the coarser level, hands the
answer down and smooths again, backwards. On every coarser level two steps of conjugate gradients go round the cycle
(a K-cycle): piecewise constant groups alone move the answer too little, and these steps find by how much.

References
----------
Y. Notay and P. S. Vassilevski, Recursive Krylov-based multigrid cycles, Numer. Linear Algebra Appl. 15 (2008); from
memory.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from lumped.conduction.grouping import coarser, grouped
from lumped.conduction.kernels import COLUMNS
from lumped.conduction.network import Network

__all__ = ["Hierarchy"]

Singles = NDArray[np.float32]
Doubles = NDArray[np.float64]
_DENSE = 400  # unknowns of the coarsest level, whose matrix is inverted
_SWEEPS = 2
_SHRINKS = 0.8  # a coarser level with more of the finer one's unknowns is not worth its while
_MOST_DENSE = 4000


@dataclass(frozen=True, kw_only=True)
class _Level:
    """A network and where its unknowns go on the next coarser level, with room for what is worked out there."""

    network: Network
    group: NDArray[np.int32]
    starts: NDArray[np.int32]
    members: NDArray[np.int32]

    @classmethod
    def over(cls, network: Network, group: NDArray[np.int64]) -> "_Level":
        starts = np.concatenate([[0], np.cumsum(np.bincount(group))]).astype(np.int32)
        members = np.argsort(group, kind="stable").astype(np.int32)
        return cls(network=network, group=group.astype(np.int32), starts=starts, members=members)

    @cached_property
    def left(self) -> Singles:
        """What the first sweeps leave."""
        return _room(self.network.size)


class Hierarchy:
    """Levels from a network down to one whose matrix is inverted.

    Parameters
    ----------
    network : Network
        The finest network; some of its unknowns, in each connected piece, leak to what is held at zero.
    """

    def __init__(self, network: Network) -> None:
        self._levels: list[_Level] = []
        while network.size > _DENSE:
            group = grouped(network)
            if int(group.max()) + 1 > _SHRINKS * network.size and network.size <= _MOST_DENSE:
                break
            coarse, to_coarse = coarser(network, group)
            self._levels.append(_Level.over(network, to_coarse))
            network = coarse
        self._inverse = np.linalg.inv(network.dense())  # in double: a lump may hang by a ten-thousand-millionth
        self._coarsest = network
        sizes = [level.network.size for level in self._levels[1:]] + [network.size]
        self._rooms = [[_room(size) for _ in range(5)] for size in sizes]

    @property
    def sizes(self) -> tuple[int, ...]:
        """Number of unknowns of each level, the finest first."""
        return (*(level.network.size for level in self._levels), self._coarsest.size)

    def precondition(self, b: Singles, out: Singles) -> None:
        """Nearly solve A out = b, (n, 8) each."""
        self._cycle(0, b, out)

    def _cycle(self, depth: int, b: Singles, x: Singles) -> None:
        if depth == len(self._levels):
            x[:] = self._inverse @ b.astype(float)
            return
        level = self._levels[depth]
        network, loops = level.network, level.network.loops
        x.fill(0)
        loops.scale(network.inverse, x, b, 0, int(network.colours[1]))
        self._sweep(network, b, x, range(1, len(network.colours) - 1))
        for _ in range(_SWEEPS - 1):
            self._sweep(network, b, x, range(len(network.colours) - 1))
        loops.residual(network.starts, network.columns, network.links, network.drain, x, b, level.left,
                       int(network.colours[-2]))  # fmt: skip
        coarse_b, coarse_x = self._rooms[depth][:2]
        loops.gathered(level.starts, level.members, level.left, coarse_b)
        self._solve(depth + 1, coarse_b, coarse_x)
        loops.handed_down(level.group, coarse_x, x)
        for _ in range(_SWEEPS):
            self._sweep(network, b, x, range(len(network.colours) - 2, -1, -1))

    def _sweep(self, network: Network, b: Singles, x: Singles, colours: range) -> None:
        for k in colours:
            network.loops.relax(network.starts, network.columns, network.links, network.inverse, x, b,
                                int(network.colours[k]), int(network.colours[k + 1]))  # fmt: skip

    def _solve(self, depth: int, b: Singles, x: Singles) -> None:
        """Two steps of conjugate gradients round the cycle; b is used up."""
        self._cycle(depth, b, x)
        if depth == len(self._levels):
            return
        network, loops = self._levels[depth].network, self._levels[depth].network.loops
        first, second, of_second = self._rooms[depth - 1][2:]
        matrix = (network.starts, network.columns, network.links, network.drain)
        loops.multiply(*matrix, x, first)
        along, energy, _ = loops.dots(x, b, first, first)
        step = _quotient(along, energy)
        loops.stepped(b, (-step).astype(np.float32), first)
        self._cycle(depth, b, second)
        loops.multiply(*matrix, second, of_second)
        shared, own, ahead = loops.dots(second, first, of_second, b)
        rest = own - _quotient(shared**2, energy)
        more = _quotient(ahead, rest)
        back = step - _quotient(shared * more, energy)
        loops.combined(x, back.astype(np.float32), x, more.astype(np.float32), second)


def _room(size: int) -> Singles:
    return np.zeros((size, COLUMNS), dtype=np.float32)


def _quotient(above: Doubles, below: Doubles) -> Doubles:
    """Divide; where there is nothing to divide by there is nothing to do."""
    return np.divide(above, below, out=np.zeros_like(above), where=below > 0)
