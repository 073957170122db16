"""Leads and pads, and how they couple to the cells around them.

A lead is a thin conductor pushed into dough. Its line is cut into short pieces; piece k exchanges current with the
cells around it, with weights w_k (quadratic B-spline, Σ w_k = 1), through its own conductance

    g_k = 2π σ ds / ln(r_eq / r_w),        current of piece k = g_k (V_lead − w_kᵀ φ),

so the current along the wire is not forced to be even: it crowds to the tip and to the side that faces the other
lead, as it does in dough. Wires that are not thin beside the pitch spread from a ring of their own radius.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.conduction.equivalent_radius import across, equivalent_radius
from lumped.conduction.system import FaceSystem
from lumped.errors import InputError

__all__ = ["Couplings", "Lead", "Terminal", "couple"]

_STEP = 0.5  # length of a piece, in pitches
_RING_FROM = 0.2  # wires fatter than this, in pitches, spread from a ring
_WHOLE_FROM = 0.25  # cells with a smaller share take less than their weight
_LEAST_LOG = 0.01  # the coupling of a piece stays finite
_RING_STEP = 0.75  # distance of the points on a ring, in pitches


@dataclass(frozen=True, slots=True, kw_only=True)
class Lead:
    """A wire, pin or nail inside dough.

    Parameters
    ----------
    name : str
        Name of the port.
    body : int
        Body that it is pushed into.
    points : (p, 3) float
        Axis of the part inside the dough, as a polyline. [m]
    radius : float
        Radius; of a square pin 0.59 of its side. [m]

    Notes
    -----
    A square rod of side a acts like a round one of radius 0.59 a (its conformal radius,
    Γ(1/4)² a / (4 π^1.5) = 0.5902 a; from memory).
    """

    name: str
    body: int
    points: NDArray[np.float64]
    radius: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Terminal:
    """An electrode given by what it touches: a pad, a plate, a node of a network.

    Parameters
    ----------
    name : str
        Name of the port.
    cells : (k,) int
        Unknowns that it touches.
    conductance : (k,) float
        Conductance between the metal and each unknown's centre. [S]
    """

    name: str
    cells: NDArray[np.int64]
    conductance: NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Couplings:
    """All pieces of all electrodes.

    Parameters
    ----------
    weights : (k, n) sparse float
        Share of each unknown in each piece; rows sum to one.
    conductance : (k,) float
        Conductance of each piece. [S]
    port : (k,) int
        Electrode that the piece belongs to.
    """

    weights: sparse.csr_array
    conductance: NDArray[np.float64]
    port: NDArray[np.int64]


def couple(system: FaceSystem, electrodes: Sequence[Lead | Terminal]) -> Couplings:
    """Couple electrodes to a system's unknowns.

    Raises
    ------
    InputError
        If an electrode has no conductor around it, or its radius or conductance is not positive.

    Examples
    --------
    >>> cell = FaceSystem(index=[[0, 0, 0]], body=[0], edges=[], conductance=[], conductivity=[1.0],
    ...                   origin=[0, 0, 0], pitch=1.0)
    >>> float(couple(cell, [Terminal(name="pad", cells=[0], conductance=[3.0])]).conductance[0])
    3.0
    """
    pieces = [_pieces(system, each) for each in electrodes]
    port = np.repeat(np.arange(len(pieces)), [len(g) for _, g in pieces])
    weights = sparse.vstack([w for w, _ in pieces], format="csr")
    return Couplings(weights=weights, conductance=np.concatenate([g for _, g in pieces]), port=port)


def _pieces(system: FaceSystem, electrode: Lead | Terminal) -> tuple[sparse.csr_array, NDArray[np.float64]]:
    if isinstance(electrode, Terminal):
        return _terminal_pieces(system, electrode)
    return _lead_pieces(system, electrode)


def _terminal_pieces(system: FaceSystem, pad: Terminal) -> tuple[sparse.csr_array, NDArray[np.float64]]:
    cells, g = np.asarray(pad.cells, dtype=np.int64), np.asarray(pad.conductance, dtype=float)
    if not len(cells):
        raise InputError("lead-outside", lead=pad.name)
    if not np.all(np.isfinite(g) & (g > 0)):
        raise InputError("terminal-not-positive", lead=pad.name)
    rows = np.arange(len(cells))
    return sparse.csr_array((np.ones(len(cells)), (rows, cells)), shape=(len(cells), system.size)), g


def _lead_pieces(system: FaceSystem, lead: Lead) -> tuple[sparse.csr_array, NDArray[np.float64]]:
    if not (np.isfinite(lead.radius) and lead.radius > 0):
        raise InputError("lead-radius", lead=lead.name, radius_mm=f"{1e3 * lead.radius:g}")
    middles, tangents, lengths = cut_line(np.asarray(lead.points, dtype=float), _STEP * system.pitch)
    points, owner = _on_rings(middles, tangents, lead.radius, system.pitch)
    cells, weights, sigma = spread(system, points, lead.body)
    touching = weights.sum(axis=1) > 0
    if not touching.any():
        raise InputError("lead-outside", lead=lead.name)
    fatness = _log_ratio(system, middles, tangents, lead.radius)
    per_ring = np.bincount(owner, minlength=len(middles))
    g = (2 * np.pi * lengths / fatness / per_ring)[owner] * sigma
    rows = np.repeat(np.arange(touching.sum()), weights.shape[1])
    kept, columns = weights[touching].ravel(), cells[touching].ravel()
    matrix = sparse.coo_array((kept, (rows, np.maximum(columns, 0))), shape=(int(touching.sum()), system.size))
    matrix.sum_duplicates()
    matrix.eliminate_zeros()
    return matrix.tocsr(), g[touching]


def cut_line(
    points: NDArray[np.float64], step: float
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Cut a polyline into pieces no longer than `step`: middles (k, 3), unit tangents (k, 3), lengths (k,). [m]

    Examples
    --------
    >>> middles, tangents, lengths = cut_line(np.array([[0, 0, 0], [0, 0, 1.0]]), 0.5)
    >>> middles[:, 2].tolist(), lengths.tolist()
    ([0.25, 0.75], [0.5, 0.5])
    """
    middles, tangents, lengths = [], [], []
    for start, end in zip(points[:-1], points[1:], strict=True):
        length = float(np.linalg.norm(end - start))
        if length == 0:
            continue
        count = int(np.ceil(length / step - 1e-9))
        place = (np.arange(count) + 0.5) / count
        middles.append(start + place[:, None] * (end - start))
        tangents.append(np.tile((end - start) / length, (count, 1)))
        lengths.append(np.full(count, length / count))
    if not middles:
        return np.empty((0, 3)), np.empty((0, 3)), np.empty(0)
    return np.concatenate(middles), np.concatenate(tangents), np.concatenate(lengths)


def spread(
    system: FaceSystem, points: NDArray[np.float64], body: int
) -> tuple[NDArray[np.int64], NDArray[np.float64], NDArray[np.float64]]:
    """Spread points over the 27 cells around each.

    The B-spline's weights are multiplied by each cell's conductivity, and made smaller in slivers, so that current
    enters a cell in proportion to what that cell can carry away; then they are made to sum to one.

    Returns
    -------
    cells : (p, 27) int
        Unknowns; -1 where the body has none.
    weights : (p, 27) float
        Their weights; all zero for a point with no conductor around it. [1]
    conductivity : (p,) float
        Conductivity of the dough that holds the point. [S/m]
    """
    place = (points - system.origin) / system.pitch
    nearest = np.floor(place).astype(np.int64)
    u = place - nearest - 0.5
    along = np.stack([0.5 * (0.5 - u) ** 2, 0.75 - u**2, 0.5 * (0.5 + u) ** 2], axis=1)
    steps = np.stack(np.meshgrid(*[np.arange(3)] * 3, indexing="ij"), axis=-1).reshape(27, 3)
    spline = along[:, steps[:, 0], 0] * along[:, steps[:, 1], 1] * along[:, steps[:, 2], 2]
    cells = system.find(nearest[:, None, :] + steps - 1, body)
    held = np.where(cells >= 0, spline * np.minimum(1, system.share[cells] / _WHOLE_FROM), 0.0)
    sigma = system.conductivity[cells[np.arange(len(points)), _home(cells, held)]]
    weights = held * system.conductivity[cells]
    total = weights.sum(axis=1, keepdims=True)
    return cells, np.divide(weights, total, out=np.zeros_like(weights), where=total > 0), sigma


def _home(cells: NDArray[np.int64], held: NDArray[np.float64]) -> NDArray[np.int64]:
    """The middle cell where the body has it, else the one that holds most."""
    return np.where(cells[:, 13] >= 0, 13, np.argmax(held, axis=1))


def _on_rings(
    middles: NDArray[np.float64], tangents: NDArray[np.float64], radius: float, pitch: float
) -> tuple[NDArray[np.float64], NDArray[np.int64]]:
    """Points that a lead spreads from, (p, 3), and the piece of each, (p,)."""
    if radius < _RING_FROM * pitch:
        return middles, np.arange(len(middles))
    count = max(8, int(np.ceil(2 * np.pi * radius / (_RING_STEP * pitch))))
    points = []
    for k, (middle, tangent) in enumerate(zip(middles, tangents, strict=True)):
        first, second = across(tangent)
        angle = 2 * np.pi * (np.arange(count) + 0.5 * (k % 2)) / count
        points.append(middle + radius * (np.cos(angle)[:, None] * first + np.sin(angle)[:, None] * second))
    return np.concatenate(points), np.repeat(np.arange(len(middles)), count)


def _log_ratio(
    system: FaceSystem, middles: NDArray[np.float64], tangents: NDArray[np.float64], radius: float
) -> NDArray[np.float64]:
    """ln(r_eq / r_w) of each piece."""
    ring = 0.0 if radius < _RING_FROM * system.pitch else radius
    offsets = np.mod((middles - system.origin) / system.pitch, 1.0) - 0.5
    ratio = np.empty(len(middles))
    directions, which = np.unique(np.round(tangents, 3), axis=0, return_inverse=True)
    for number, direction in enumerate(directions):
        mine = which.ravel() == number
        r_eq = equivalent_radius(direction, pitch=system.pitch, ring=ring, offsets=offsets[mine])
        ratio[mine] = np.log(r_eq / radius)
    return np.maximum(ratio, _LEAST_LOG)
