"""Solve Kirchhoff's law in dough for all leads together.

Pieces of dough that share a lead are one group; each group is laid out as a network and iterated until its *port
matrix* is known well enough, not the potentials.
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse import csgraph

from lumped.conduction.iteration import Answer, Grounded, Watch, iterated
from lumped.conduction.leads import Couplings, Lead, Terminal, couple
from lumped.conduction.network import laid_out
from lumped.conduction.ports import Ports
from lumped.conduction.system import FaceSystem
from lumped.errors import InputError, SolverError

__all__ = ["carried_over", "coupled", "solve_ports"]

Matrix = NDArray[np.float64]
Integers = NDArray[np.int64]


def solve_ports(
    system: FaceSystem, leads: Sequence[Lead | Terminal], *, port_rtol: float = 1e-4,
    start: NDArray[np.floating] | None = None, watch: Watch | None = None,
) -> Ports:  # fmt: skip
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
    start : (n, l) float, optional
        Potentials to begin from, as in `Ports.potentials`, for a dough that was solved before and changed a little;
        see `carried_over` where its cells changed, too. The answer is as sure as without. [1]
    watch : callable, optional
        Told rounds and port error after every round; what it raises ends the work.

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
    component = _components(system)
    couplings = _kept_to_one_component(couple(system, leads), component)
    groups = _groups(couplings, component, len(names))
    matrix, potentials = np.zeros((len(names), len(names))), np.zeros((system.size, len(names)), dtype=np.float32)
    solved = []
    for cells, ports in groups:
        if len(ports) < 2:
            potentials[np.ix_(cells, ports)] = 1.0
            continue
        known = None if start is None else start[np.ix_(cells, ports[:-1])]
        part = _solved(system, couplings, (cells, ports), port_rtol=port_rtol, start=known, watch=watch)
        matrix[np.ix_(ports, ports)] = _completed(part.matrix)
        potentials[np.ix_(cells, ports[:-1])] = part.potentials
        potentials[cells, ports[-1]] = 1 - part.potentials.sum(axis=1)
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


def carried_over(before: FaceSystem, potentials: NDArray[np.floating], system: FaceSystem) -> NDArray[np.float32]:
    """Carry potentials over to cells that lie nearly where those before lay.

    Parameters
    ----------
    before : FaceSystem
        The cells that were solved, n of them.
    potentials : (n, l) float
        Their potentials. [1]
    system : FaceSystem
        The cells to solve, m of them, of the same pitch.

    Returns
    -------
    (m, l) float32
        For `solve_ports` to begin from: each cell takes over that of the cell in whose place it lies, or else that of
        one beside it; where there was no dough, the mean of all. [1]
    """
    shift = np.rint((system.origin - before.origin) / before.pitch).astype(np.int64)
    place = system.index + shift
    found = before.find(place, system.body)
    for step in (*np.eye(3, dtype=np.int64), *-np.eye(3, dtype=np.int64)):
        missing = np.flatnonzero(found < 0)
        if not len(missing):
            break
        found[missing] = before.find(place[missing] + step, system.body[missing])
    start = np.asarray(potentials, dtype=np.float32)[np.maximum(found, 0)]
    start[found < 0] = potentials.mean(axis=0)
    return start


def coupled(system: FaceSystem, leads: Sequence[Lead | Terminal]) -> Couplings:
    """Couple electrodes to the cells as `solve_ports` does: each piece of a lead to one connected piece of dough."""
    return _kept_to_one_component(couple(system, leads), _components(system))


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
    return replace(couplings, weights=scaled)


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


def _solved(
    system: FaceSystem, couplings: Couplings, group: tuple[Integers, Integers], *, port_rtol: float,
    start: NDArray[np.floating] | None, watch: Watch | None,
) -> Answer:  # fmt: skip
    """Solve for the ports of one group of cells and ports; its last port follows from the others."""
    grounded, order = _grounded(system, couplings, *group)
    found = iterated(grounded, port_rtol=port_rtol, start=None if start is None else start[order], watch=watch)
    if not found.error <= port_rtol:
        raise SolverError(
            "ports-not-converged", error=f"{found.error:.1g}", wanted=f"{port_rtol:.1g}", iterations=found.rounds,
            pitch_mm=f"{1e3 * system.pitch:.3g}",
        )  # fmt: skip
    potentials = np.empty_like(found.potentials)
    potentials[order] = found.potentials
    return replace(found, potentials=potentials)


def _grounded(system: FaceSystem, couplings: Couplings, cells: Integers, ports: Integers) -> tuple[Grounded, Integers]:
    """Lay a group out; and the number in `cells` of each of its unknowns."""
    mine = np.isin(couplings.port, ports)
    weights, g = couplings.weights[mine][:, cells], couplings.conductance[mine]
    member = sparse.csr_array((g, (np.arange(len(g)), np.searchsorted(ports, couplings.port[mine]))))
    currents = sparse.csr_array(weights.T @ member)
    leak = np.asarray(currents.sum(axis=1), dtype=float).ravel()
    place = np.full(system.size, -1)
    place[cells] = np.arange(len(cells))
    edges = place[system.edges]
    inside = edges[:, 0] >= 0
    network = laid_out(edges[inside], system.conductance[inside], leak, system.index[cells])
    touched = np.flatnonzero(network.leak > 0)
    there = network.order[touched]
    return Grounded(
        network=network, touched=touched, weights=sparse.csr_array(weights[:, there]), conductance=g,
        currents=currents[there].toarray()[:, :-1], own=np.asarray(member.sum(axis=0), dtype=float).ravel()[:-1],
    ), network.order  # fmt: skip


def _completed(reduced: Matrix) -> Matrix:
    """Add the last port: rows and columns of a port matrix sum to zero."""
    tall = np.vstack([reduced, -reduced.sum(axis=0)])
    return np.column_stack([tall, -tall.sum(axis=1)])
