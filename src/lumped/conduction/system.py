"""A body of dough as a network: one unknown for each (cell, body) pair, one conductance for each shared face.

A cell alone is never an unknown: two lumps closer than one pitch share cells, and must not be joined by that.
"""

from dataclasses import dataclass, field
from functools import cached_property

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.errors import InputError

__all__ = ["FaceSystem"]


@dataclass(frozen=True, kw_only=True)
class FaceSystem:
    """What conducts, as arrays.

    Parameters
    ----------
    index : (n, 3) int
        Cell of each unknown; the cell's centre is at `origin + pitch * (index + 1/2)`.
    body : (n,) int
        Body of each unknown. Unknowns of two bodies are never joined.
    edges : (m, 2) int
        Pairs of unknowns that share a face.
    conductance : (m,) float
        Conductance from cell centre to cell centre. [S]
    conductivity : (n,) float
        Conductivity of the dough in each cell. [S/m]
    origin : (3,) float
        Corner of cell (0, 0, 0). [m]
    pitch : float
        Edge of a cell. [m]
    share : (n,) float, optional
        Share of the cell's volume inside the body; 1 everywhere if left out. [1]

    Raises
    ------
    InputError
        If shapes don't fit, a number is not finite, or a conductance or conductivity is not positive.

    Examples
    --------
    >>> pair = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[2.0],
    ...                   conductivity=[1.0, 1.0], origin=[0, 0, 0], pitch=1e-3)
    >>> pair.laplacian().toarray().tolist()
    [[2.0, -2.0], [-2.0, 2.0]]
    """

    index: NDArray[np.int64]
    body: NDArray[np.int64]
    edges: NDArray[np.int64]
    conductance: NDArray[np.float64]
    conductivity: NDArray[np.float64]
    origin: NDArray[np.float64]
    pitch: float
    share: NDArray[np.float64] = field(default_factory=lambda: np.empty(0))

    def __post_init__(self) -> None:
        n = len(self.body)
        share = np.asarray(self.share, dtype=float)
        put = object.__setattr__
        put(self, "index", np.asarray(self.index, dtype=np.int64).reshape(n, 3))
        put(self, "body", np.asarray(self.body, dtype=np.int64))
        put(self, "edges", np.asarray(self.edges, dtype=np.int64).reshape(-1, 2))
        put(self, "conductance", np.asarray(self.conductance, dtype=float).reshape(len(self.edges)))
        put(self, "conductivity", np.asarray(self.conductivity, dtype=float).reshape(n))
        put(self, "origin", np.asarray(self.origin, dtype=float).reshape(3))
        put(self, "share", share if share.size else np.ones(n))
        self._check()

    def _check(self) -> None:
        for name in ("conductance", "conductivity"):
            values = getattr(self, name)
            if not np.all(np.isfinite(values) & (values > 0)):
                worst = values[~(np.isfinite(values) & (values > 0))][0]
                raise InputError("system-not-positive", what=name, value=f"{worst:g}")
        if self.edges.size and (self.edges.min() < 0 or self.edges.max() >= len(self.body)):
            raise InputError("system-edge-nowhere", cells=len(self.body))

    @property
    def size(self) -> int:
        """Number of unknowns."""
        return len(self.body)

    @property
    def centres(self) -> NDArray[np.float64]:
        """Centres of the unknowns' cells, shape (n, 3). [m]"""
        return self.origin + self.pitch * (self.index + 0.5)

    def laplacian(self) -> sparse.csr_array:
        """Give the matrix L of Kirchhoff's law, shape (n, n): currents out of the cells = L @ potentials. [S]"""
        i, j, g = self.edges[:, 0], self.edges[:, 1], self.conductance
        rows, columns = np.concatenate([i, j, i, j]), np.concatenate([j, i, i, j])
        values = np.concatenate([-g, -g, g, g])
        return sparse.csr_array(sparse.coo_array((values, (rows, columns)), shape=(self.size, self.size)))

    def find(self, index: NDArray[np.int64], body: NDArray[np.int64] | int) -> NDArray[np.int64]:
        """Find the unknowns of cells `index` (…, 3) in a body; -1 where there is none, shape (…)."""
        low, extent, sorted_keys, order = self._table
        inside = np.all((index >= low[:3]) & (index < (low + extent)[:3]), axis=-1)
        keys = _keys(index, np.broadcast_to(body, index.shape[:-1]), low, extent)
        place = np.minimum(np.searchsorted(sorted_keys, keys), self.size - 1)
        return np.where(inside & (sorted_keys[place] == keys), order[place], -1)

    @cached_property
    def _table(self) -> tuple[NDArray[np.int64], NDArray[np.int64], NDArray[np.int64], NDArray[np.int64]]:
        both = np.column_stack([self.index, self.body])
        low = both.min(axis=0)
        extent = both.max(axis=0) - low + 1
        keys = _keys(self.index, self.body, low, extent)
        order = np.argsort(keys)
        return low, extent, keys[order], order


def _keys(
    index: NDArray[np.int64], body: NDArray[np.int64], low: NDArray[np.int64], extent: NDArray[np.int64]
) -> NDArray[np.int64]:
    """One number for each (cell, body) pair."""
    key = np.asarray(body - low[3])
    for axis in range(3):
        key = key * extent[axis] + (index[..., axis] - low[axis])
    return key
