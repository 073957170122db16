"""Solve Kirchhoff's law in dough for all leads together.

Conjugate gradients, preconditioned by algebraic multigrid (a direct factor for small systems), one column for each
lead, until the *port matrix* is known well enough, not the potentials.
"""

import warnings
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy import linalg, sparse
from scipy.sparse import csgraph
from scipy.sparse.linalg import splu

from lumped.conduction.leads import Couplings, Lead, Terminal, couple
from lumped.conduction.ports import Ports
from lumped.conduction.system import FaceSystem
from lumped.errors import InputError, SolverError

__all__ = ["solve_ports"]

Matrix = NDArray[np.float64]
_DIRECT_BELOW = 15_000  # unknowns; up to here a sparse factorisation is the quickest
_ROUNDS = 300


def solve_ports(system: FaceSystem, leads: Sequence[Lead | Terminal], *, port_rtol: float = 1e-4) -> Ports:
    """Compute the port matrix of a system of cells and leads.

    Parameters
    ----------
    system : FaceSystem
        The cells and what joins them.
    leads : sequence of Lead or Terminal
        The electrodes, each with its own name; none give an empty matrix.
    port_rtol : float
        Relative error wanted of every two-terminal conductance; the iteration stops when its own estimate is
        below. The grid's error comes on top. [1]

    Returns
    -------
    Ports
        Port matrix, potentials, and how well they are known.

    Raises
    ------
    InputError
        If two leads share a name, or one has no dough around it.
    SolverError
        If the accuracy is not reached.

    Notes
    -----
    Only pieces of dough with two leads or more are solved. The columns of X sum to one, so the last lead's column
    needs no solution and rows of the matrix sum to zero exactly. See `ports` for the energy form.

    Examples
    --------
    >>> bar = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[2.0],
    ...                  conductivity=[1.0, 1.0], origin=[0, 0, 0], pitch=1.0)
    >>> ends = [Terminal(name=name, cells=[k], conductance=[4.0]) for k, name in enumerate("ab")]
    >>> round(solve_ports(bar, ends).resistance("a", "b"), 6)
    1.0
    """
    names = _names(leads)
    if not names:
        return _without_ports(system)
    couplings = couple(system, leads)
    component = _components(system)
    couplings = _kept_to_one_component(couplings, component)
    groups = _groups(couplings, component, len(names))
    matrix, potentials = np.zeros((len(names), len(names))), np.zeros((system.size, len(names)), dtype=np.float32)
    solved = []
    laplacian = system.laplacian()
    for cells, ports in groups:
        if len(ports) < 2:
            potentials[np.ix_(cells, ports)] = 1.0
            continue
        part = _solve_group(laplacian, couplings, (cells, ports), port_rtol, system.pitch)
        matrix[np.ix_(ports, ports)] = part.matrix
        potentials[np.ix_(cells, ports)] = part.potentials
        solved.append(part)
    return Ports(
        names=names,
        matrix=matrix,
        pitch=system.pitch,
        port_error=max((part.error for part in solved), default=0.0),
        residual=max((part.residual for part in solved), default=0.0),
        iterations=max((part.rounds for part in solved), default=0),
        unknowns=system.size,
        potentials=potentials,
        floating=tuple(names[ports[0]] for _, ports in groups if len(ports) == 1),
    )


def _without_ports(system: FaceSystem) -> Ports:
    return Ports(
        names=(), matrix=np.zeros((0, 0)), pitch=system.pitch, port_error=0.0, residual=0.0, iterations=0,
        unknowns=system.size, potentials=np.zeros((system.size, 0), dtype=np.float32), floating=(),
    )  # fmt: skip


def _names(leads: Sequence[Lead | Terminal]) -> tuple[str, ...]:
    names = tuple(lead.name for lead in leads)
    for name in names:
        if names.count(name) > 1:
            raise InputError("ports-names", lead=name)
    return names


def _components(system: FaceSystem) -> NDArray[np.int64]:
    """Number of the connected piece that each unknown belongs to, (n,)."""
    i, j = system.edges.T
    graph = sparse.coo_array((np.ones(len(i)), (i, j)), shape=(system.size, system.size))
    return np.asarray(csgraph.connected_components(graph, directed=False)[1], dtype=np.int64)


def _kept_to_one_component(couplings: Couplings, component: NDArray[np.int64]) -> Couplings:
    """Keep each piece of lead to the connected piece of dough that holds most of it, so that no crumb floats."""
    weights = couplings.weights.tocoo()
    there = component[weights.col]
    held = sparse.csr_array(sparse.coo_array((weights.data, (weights.row, there))))
    home = np.asarray(held.argmax(axis=1)).ravel()
    keep = there == home[weights.row]
    kept = sparse.csr_array((weights.data[keep], (weights.row[keep], weights.col[keep])), shape=weights.shape)
    total = np.asarray(kept.sum(axis=1)).ravel()
    scaled = sparse.csr_array(sparse.diags_array(1 / total) @ kept)
    return Couplings(weights=scaled, conductance=couplings.conductance, port=couplings.port)


def _groups(
    couplings: Couplings, component: NDArray[np.int64], ports: int
) -> list[tuple[NDArray[np.int64], NDArray[np.int64]]]:
    """Cells and ports that share currents: pieces of dough joined by a common lead are one group."""
    pieces = int(component.max()) + 1
    first = couplings.weights.indices[couplings.weights.indptr[:-1]]
    links = sparse.coo_array(
        (np.ones(len(first)), (component[first], pieces + couplings.port)), shape=(pieces + ports, pieces + ports)
    )
    label = csgraph.connected_components(links, directed=False)[1]
    of_cell, of_port = label[:pieces][component], label[pieces:]
    return [(np.flatnonzero(of_cell == each), np.flatnonzero(of_port == each)) for each in np.unique(of_port)]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Part:
    matrix: Matrix
    potentials: Matrix
    error: float
    residual: float
    rounds: int


def _solve_group(
    laplacian: sparse.csr_array,
    couplings: Couplings,
    group: tuple[NDArray[np.int64], NDArray[np.int64]],
    port_rtol: float,
    pitch: float,
) -> _Part:
    """Solve for the ports of one group; its last port follows from the others."""
    cells, ports = group
    mine = np.isin(couplings.port, ports)
    W, g = couplings.weights[mine][:, cells], couplings.conductance[mine]
    member = sparse.csr_array((g, (np.arange(len(g)), np.searchsorted(ports, couplings.port[mine]))))
    inner = laplacian[cells][:, cells]
    A = sparse.csr_array(inner + W.T @ sparse.diags_array(g) @ W)
    B = np.asarray((W.T @ member).todense())
    D: Matrix = np.asarray(member.sum(axis=0), dtype=float).ravel()
    precondition = _preconditioner(sparse.csr_array(inner + sparse.diags_array(B.sum(axis=1))), A)
    X, error, rounds = _iterate(A, B[:, :-1], D[:-1], precondition, port_rtol)
    if not error <= port_rtol:
        raise SolverError(
            "ports-not-converged", error=f"{error:.1g}", wanted=f"{port_rtol:.1g}", iterations=rounds,
            pitch_mm=f"{1e3 * pitch:.3g}",
        )  # fmt: skip
    R = B[:, :-1] - A @ X
    reduced = np.diag(D[:-1]) - B[:, :-1].T @ X - X.T @ R
    residual = np.max(np.linalg.norm(R, axis=0) / np.linalg.norm(B[:, :-1], axis=0))
    X = np.column_stack([X, 1 - X.sum(axis=1)])
    return _Part(matrix=_completed(reduced), potentials=X, error=error, residual=float(residual), rounds=rounds)


def _completed(reduced: Matrix) -> Matrix:
    """Add the last port: rows and columns of a port matrix sum to zero."""
    symmetric = (reduced + reduced.T) / 2
    tall = np.vstack([symmetric, -symmetric.sum(axis=0)])
    return np.column_stack([tall, -tall.sum(axis=1)])


def _iterate(
    A: sparse.csr_array, B: Matrix, D: Matrix, precondition: Callable[[Matrix], Matrix], port_rtol: float
) -> tuple[Matrix, float, int]:
    """Run conjugate gradients on all columns in step until the port error is small."""
    X, R = np.zeros_like(B), B.copy()
    Z = precondition(R)
    P, rz = Z.copy(), np.einsum("ij,ij->j", R, Z)
    steps: list[Matrix] = []
    turns: list[Matrix] = []
    error = np.inf
    for rounds in range(1, _ROUNDS + 1):
        AP = A @ P
        alpha = _quotient(rz, np.einsum("ij,ij->j", P, AP))
        X += alpha * P
        R -= alpha * AP
        Z = precondition(R)
        old, rz = rz, np.einsum("ij,ij->j", R, Z)
        beta = _quotient(rz, old)
        P = Z + beta * P
        steps.append(alpha)
        turns.append(beta)
        Y = np.diag(D) - B.T @ X - X.T @ R
        error = _port_error(R.T @ Z, Y) / _smallest_ritz(np.array(steps), np.array(turns))
        if error <= port_rtol:
            return X, error, rounds
    return X, error, _ROUNDS


def _quotient(above: Matrix, below: Matrix) -> Matrix:
    """Divide; a column that is solved already stays where it is."""
    return np.divide(above, below, out=np.zeros_like(above), where=below > 1e-290)


def _port_error(left: Matrix, Y: Matrix) -> float:
    """Largest of vᵀ(EᵀAE)v / vᵀYv over all lead potentials v: no weak link between strong ones is overlooked."""
    left, Y = (left + left.T) / 2, (Y + Y.T) / 2
    scale = 1 / np.sqrt(np.maximum(np.diag(Y), 1e-300))
    try:
        lower = linalg.cholesky(Y * np.outer(scale, scale), lower=True)
    except linalg.LinAlgError:
        return np.inf
    half = linalg.solve_triangular(lower, left * np.outer(scale, scale), lower=True)
    return float(np.linalg.norm(linalg.solve_triangular(lower, half.T, lower=True), 2))


def _smallest_ritz(steps: Matrix, turns: Matrix) -> float:
    """Estimate the smallest eigenvalue of the preconditioned matrix from the iteration's own coefficients.

    RᵀMR, with M the preconditioner, is at most EᵀAE divided by it; so dividing by it makes the estimate safe.
    """
    smallest = 1.0
    for alpha, beta in zip(steps.T, turns.T, strict=True):
        used = int(np.argmin(alpha > 0)) if np.any(alpha <= 0) else len(alpha)
        if used == 0:
            continue
        a, b = alpha[:used], beta[: used - 1]
        main = 1 / a
        main[1:] += b / a[:-1]
        off = np.sqrt(b) / a[:-1]
        smallest = min(smallest, float(linalg.eigvalsh_tridiagonal(main, off, select="i", select_range=(0, 0))[0]))
    return max(smallest, 1e-6)


def _preconditioner(approximate: sparse.csr_array, exact: sparse.csr_array) -> Callable[[Matrix], Matrix]:
    """Give a function that nearly solves for each column."""
    if exact.shape[0] <= _DIRECT_BELOW:
        factor = splu(sparse.csc_array(exact), permc_spec="COLAMD")
        return lambda R: np.asarray(factor.solve(R))
    cycle = _multigrid(approximate)
    return lambda R: np.column_stack([cycle @ column for column in R.T])


def _multigrid(matrix: sparse.csr_array) -> Any:
    """Set up one symmetric V-cycle; the library's own warnings are of no use to a person and stay inside."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        import pyamg

        levels = pyamg.ruge_stuben_solver(sparse.csr_matrix(matrix), max_coarse=300, coarse_solver="splu")
        return levels.aspreconditioner(cycle="V")
