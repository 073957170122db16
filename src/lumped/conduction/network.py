"""Unknowns and the links between them, laid out for sweeps: coloured, and renumbered colour by colour."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.compiling import compiled
from lumped.conduction.kernels import PARALLEL, SERIAL, Kernels

__all__ = ["Network", "laid_out"]

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
    n = len(leak)
    colour = _coloured(*_rows(edges, None, n)[:2])
    order = np.argsort(colour, kind="stable")
    place = np.empty(n, dtype=np.int64)
    place[order] = np.arange(n)
    starts, columns, links = _rows(place[edges], conductance, n)
    bounds = np.concatenate([[0], np.cumsum(np.bincount(colour))])
    return Network(
        starts=starts, columns=columns, conductance=links, leak=leak[order], cell=cell[order], colours=bounds,
        order=order,
    )  # fmt: skip


def _rows(edges: NDArray[np.int64], conductance: Doubles | None, n: int) -> tuple[Integers, Integers, Doubles]:
    """Links of each unknown, row by row."""
    ends = np.concatenate([edges, edges[:, ::-1]])
    values = np.ones(len(ends)) if conductance is None else np.concatenate([conductance, conductance])
    rows = sparse.csr_array(sparse.coo_array((values, (ends[:, 0], ends[:, 1])), shape=(n, n)))
    return rows.indptr.astype(np.int32), rows.indices.astype(np.int32), rows.data


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
