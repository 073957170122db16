"""The port matrix: what a lump is, seen through its leads.

Currents into the dough = matrix @ potentials of the leads. With the cells' matrix A (Kirchhoff's law and the leads'
own conductances), B the leads' current per volt, and D = Σ g, the exact matrix is D − Bᵀ A⁻¹ B. From potentials X
that are only nearly right it is taken in the energy form

    Y = D − (BᵀX + XᵀB − XᵀAX),        Y − Y_exact = EᵀAE,        E = X − A⁻¹B,

which is symmetric, and whose error is the square of the potentials' error.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = ["Ports", "cell_potential", "port_spread"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Ports:
    """Conductances between leads, and how well they are known.

    Parameters
    ----------
    names : tuple of str
        The leads, in the order of the matrix.
    matrix : (l, l) float
        Currents into the dough at 1 V on one lead and 0 V on the others; symmetric, rows sum to zero. [S]
    pitch : float
        Edge of a cell. [m]
    port_error : float
        Bound, estimated from the solution itself, on the relative error of any two-terminal conductance that the
        iteration leaves; the grid's own error is not in it (see `port_spread`). [1]
    residual : float
        Largest norm of Kirchhoff's law left over, relative to the leads' currents. [1]
    iterations : int
        Rounds of the solver, the slowest body's.
    unknowns : int
        Number of cell potentials.
    potentials : (n, l) float32
        Potential of each cell at 1 V on one lead and 0 V on the others. Cells of a piece of dough with one lead
        follow that lead; cells of a piece without a lead are at 0. [1]
    floating : tuple of str
        Leads that share no dough with another lead: no current can pass them, their row is zero.
    """

    names: tuple[str, ...]
    matrix: NDArray[np.float64]
    pitch: float
    port_error: float
    residual: float
    iterations: int
    unknowns: int
    potentials: NDArray[np.float32]
    floating: tuple[str, ...]

    def resistance(self, first: str, second: str) -> float:
        """Give the resistance between two leads with all others left open; infinite if nothing joins them. [Ω]"""
        from scipy.sparse.csgraph import connected_components

        i, j = self.names.index(first), self.names.index(second)
        label = connected_components(self.matrix != 0, directed=False)[1]
        if i == j or label[i] != label[j]:
            return 0.0 if i == j else float("inf")
        free = np.flatnonzero((label == label[j]) & (np.arange(len(label)) != j))  # the second lead is held at zero
        volts = np.linalg.solve(self.matrix[np.ix_(free, free)], (free == i).astype(float))
        return float(volts[free == i][0])


def cell_potential(ports: Ports, lead_potentials: ArrayLike) -> NDArray[np.float64]:
    """Give the potential of every cell when the leads are at given potentials.

    Parameters
    ----------
    ports : Ports
        A solved system.
    lead_potentials : (l,) float
        Potentials of the leads, in the order of `ports.names`. [V]

    Returns
    -------
    (n,) float
        Potential of each unknown. [V]

    Examples
    --------
    >>> ports = Ports(names=("a", "b"), matrix=np.array([[1.0, -1.0], [-1.0, 1.0]]), pitch=1.0, port_error=0.0,
    ...               residual=0.0, iterations=1, unknowns=1, potentials=np.array([[0.25, 0.75]], dtype="f4"),
    ...               floating=())
    >>> cell_potential(ports, [4.0, 0.0]).tolist()
    [1.0]
    """
    return np.asarray(ports.potentials.astype(float) @ np.asarray(lead_potentials, dtype=float))


def port_spread(first: Ports, second: Ports) -> float:
    """Estimate the grid's error from two grids that are shifted against each other by half a pitch.

    Parameters
    ----------
    first, second : Ports
        Port matrices of the same leads.

    Returns
    -------
    float
        Largest relative difference of any conductance between two leads, others at 0 V; conductances below a
        millionth of the largest are not looked at. [1]

    Notes
    -----
    An estimate, not a bound: both grids share the part of the error that does not depend on the offset.

    Examples
    --------
    >>> ports = Ports(names=("a", "b"), matrix=np.array([[1.0, -1.0], [-1.0, 1.0]]), pitch=1.0, port_error=0.0,
    ...               residual=0.0, iterations=1, unknowns=1, potentials=np.zeros((1, 2), dtype="f4"), floating=())
    >>> port_spread(ports, ports)
    0.0
    """
    a, b = first.matrix, second.matrix
    size = np.maximum(np.abs(a), np.abs(b))
    looked_at = size > 1e-6 * size.max(initial=0.0)
    return float(np.max(np.abs(a - b)[looked_at] / size[looked_at], initial=0.0))
