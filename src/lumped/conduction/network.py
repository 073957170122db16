"""Unknowns and the links between them, laid out for sweeps: coloured, and renumbered colour by colour."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.compiling import compiled
from lumped.conduction.kernels import PARALLEL, SERIAL, Kernels

__all__ = ["Network", "arranged", "laid_out"]

Singles = NDArray[np.float32]
Doubles = NDArray[np.float64]
Integers = NDArray[np.int32]
_ALONE_BELOW = 150_000  # unknowns; one thread is quicker up to here


@dataclass(frozen=True, kw_only=True)
class Network:
    """The matrix of Kirchhoff's law: `(A x)_i = leak_i x_i + Σ_j g_ij (x_i - x_j)`.

    Parameters
    ----------
    starts : (n + 1,) int32
        Where the links of each unknown begin.
    columns : (2m,) int32
        The neighbour at the other end of each link.
    conductance : (2m,) float
        Conductance of each link. [S]
    leak : (n,) float
        Conductance from each unknown to what is held at zero. [S]
    cell : (n, 3) int
        Where each unknown lies, in cells.
    colours : (k + 1,) int
        Where the unknowns of each colour begin; no two of one colour are linked.
    order : (n,) int
        Number that each unknown had before it was renumbered by colour.
    """

    starts: Integers
    columns: Integers
    conductance: Doubles
    leak: Doubles
    cell: NDArray[np.int64]
    colours: NDArray[np.int64]
    order: NDArray[np.int64]

    @property
    def size(self) -> int:
        """Number of unknowns."""
        return len(self.leak)

    @cached_property
    def loops(self) -> Kernels:
        """The loops that are quickest for this size."""
        return SERIAL if self.size < _ALONE_BELOW else PARALLEL

    @cached_property
    def links(self) -> Singles:
        """Conductances of the links in single precision. [S]"""
        return self.conductance.astype(np.float32)

    @cached_property
    def drain(self) -> Singles:
        """The leak in single precision. [S]"""
        return self.leak.astype(np.float32)

    @cached_property
    def inverse(self) -> Singles:
        """One over the diagonal of the matrix. [1/S]"""
        return (1 / (self._linked + self.leak)).astype(np.float32)

    @property
    def _linked(self) -> Doubles:
        """Sum of each unknown's links. [S]"""
        rows = np.repeat(np.arange(self.size), np.diff(self.starts))
        return np.bincount(rows, self.conductance, self.size).astype(float)

    def dense(self) -> Doubles:
        """Give the matrix itself, (n, n). [S]"""
        links = sparse.csr_array((-self.conductance, self.columns, self.starts), shape=(self.size, self.size))
        matrix = links.toarray()
        matrix[np.diag_indices(self.size)] += self._linked + self.leak
        return np.asarray(matrix)


def laid_out(edges: NDArray[np.int64], conductance: Doubles, leak: Doubles, cell: NDArray[np.int64]) -> Network:
    """Lay a network out.

    Parameters
    ----------
    edges : (m, 2) int
        Pairs of unknowns, each pair once.
    conductance : (m,) float
        Conductance between them. [S]
    leak : (n,) float
        Conductance to what is held at zero. [S]
    cell : (n, 3) int
        Where each unknown lies.

    Examples
    --------
    >>> pair = laid_out(np.array([[0, 1]]), np.array([2.0]), np.array([1.0, 0.0]), np.zeros((2, 3), int))
    >>> pair.dense().tolist(), pair.colours.tolist()
    ([[3.0, -2.0], [-2.0, 2.0]], [0, 1, 2])
    """
    ends = np.ascontiguousarray(edges, dtype=np.int64).reshape(-1, 2)
    starts, columns, links = _rows(ends, np.asarray(conductance, dtype=float), len(leak))
    return arranged(starts, columns, links, leak, cell)


def arranged(starts: Integers, columns: Integers, links: Doubles, leak: Doubles, cell: NDArray[np.int64]) -> Network:
    """Colour rows that are there, and renumber them colour by colour."""
    colour = _coloured(starts, columns)
    order, bounds = _by_number(colour, int(colour.max(initial=-1)) + 1)
    starts, columns, links = _renumbered(starts, columns, links, order)
    return Network(
        starts=starts, columns=columns, conductance=links, leak=leak[order], cell=cell[order], colours=bounds,
        order=order,
    )  # fmt: skip


@compiled
def _rows(edges, conductance, n):  # type: ignore[no-untyped-def]
    """Links of each unknown, row by row."""
    starts = np.zeros(n + 1, np.int32)
    for e in range(len(edges)):
        starts[edges[e, 0] + 1] += 1
        starts[edges[e, 1] + 1] += 1
    for i in range(n):
        starts[i + 1] += starts[i]
    columns, links, next_one = np.empty(starts[n], np.int32), np.empty(starts[n]), starts[:-1].copy()
    for e in range(len(edges)):
        for near, far in ((edges[e, 0], edges[e, 1]), (edges[e, 1], edges[e, 0])):
            columns[next_one[near]], links[next_one[near]] = far, conductance[e]
            next_one[near] += 1
    return starts, columns, links


@compiled
def _by_number(number, count):  # type: ignore[no-untyped-def]
    """Unknowns sorted by a number that each bears, in order where they bear the same; and where each number begins."""
    bounds = np.zeros(count + 1, np.int64)
    for i in range(len(number)):
        bounds[number[i] + 1] += 1
    for k in range(count):
        bounds[k + 1] += bounds[k]
    order, next_one = np.empty(len(number), np.int64), bounds[:-1].copy()
    for i in range(len(number)):
        order[next_one[number[i]]] = i
        next_one[number[i]] += 1
    return order, bounds


@compiled
def _renumbered(starts, columns, links, order):  # type: ignore[no-untyped-def]
    """Rows in a new order, their columns numbered anew."""
    n = len(order)
    place = np.empty(n, np.int32)
    for i in range(n):
        place[order[i]] = i
    new_starts, new_columns, new_links = np.empty(n + 1, np.int32), np.empty_like(columns), np.empty_like(links)
    e = 0
    for i in range(n):
        new_starts[i] = e
        for k in range(starts[order[i]], starts[order[i] + 1]):
            new_columns[e], new_links[e] = place[columns[k]], links[k]
            e += 1
    new_starts[n] = e
    return new_starts, new_columns, new_links


@compiled
def _coloured(starts: Integers, columns: Integers) -> NDArray[np.int64]:
    """Give each unknown the first colour that none of its neighbours bears."""
    n = len(starts) - 1
    colour = np.full(n, -1, np.int64)
    most = 0
    for i in range(n):
        most = max(most, starts[i + 1] - starts[i])
    seen = np.full(most + 2, -1, np.int64)  # the unknown that saw each colour last
    for i in range(n):
        for e in range(starts[i], starts[i + 1]):
            if colour[columns[e]] >= 0:
                seen[colour[columns[e]]] = i
        k = 0
        while seen[k] == i:
            k += 1
        colour[i] = k
    return colour
