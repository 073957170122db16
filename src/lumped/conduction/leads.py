"""Leads and pads, and how they couple to the cells around them.

A lead is a thin conductor pushed into dough. Its line is cut into short pieces; piece k exchanges current with the
cells around it, with weights w_k (quadratic B-spline, Σ w_k = 1), through its own conductance

    g_k = 2π σ ds / ln(r_eq / r_w),        current of piece k = g_k (V_lead − w_kᵀ φ),

so the current along the wire is not forced to be even: it crowds to the tip and to the side that faces the other
lead, as it does in dough. Wires that are not thin beside the pitch spread from a ring of their own radius.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.conduction.equivalent_radius import across, equivalent_radius
from lumped.conduction.system import FaceSystem
from lumped.conduction.tips import one_sided_log
from lumped.errors import InputError

__all__ = ["Couplings", "Lead", "Terminal", "couple"]

Floats = NDArray[np.float64]
_STEP = 0.25  # length of a piece, in pitches
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
    points: Floats
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
    conductance: Floats


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
    home : (k,) int
        Unknown whose dough the piece's conductance goes with; -1 where it was given, as a terminal's is.
    """

    weights: sparse.csr_array
    conductance: Floats
    port: NDArray[np.int64]
    home: NDArray[np.int64]


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
    weights, conductance, home = zip(*pieces, strict=True)
    return Couplings(
        weights=sparse.vstack(weights, format="csr"), conductance=np.concatenate(conductance),
        port=np.repeat(np.arange(len(pieces)), [len(g) for g in conductance]), home=np.concatenate(home),
    )  # fmt: skip


_Pieces = tuple[sparse.csr_array, Floats, NDArray[np.int64]]


def _pieces(system: FaceSystem, electrode: Lead | Terminal) -> _Pieces:
    if isinstance(electrode, Terminal):
        return _terminal_pieces(system, electrode)
    return _lead_pieces(system, electrode)


def _terminal_pieces(system: FaceSystem, pad: Terminal) -> _Pieces:
    cells, g = np.asarray(pad.cells, dtype=np.int64), np.asarray(pad.conductance, dtype=float)
    if not len(cells):
        raise InputError("lead-outside", lead=pad.name)
    if not np.all(np.isfinite(g) & (g > 0)):
        raise InputError("terminal-not-positive", lead=pad.name)
    rows = np.arange(len(cells))
    weights = sparse.csr_array((np.ones(len(cells)), (rows, cells)), shape=(len(cells), system.size))
    return weights, g, np.full(len(cells), -1)


def _lead_pieces(system: FaceSystem, lead: Lead) -> _Pieces:
    if not (np.isfinite(lead.radius) and lead.radius > 0):
        raise InputError("lead-radius", lead=lead.name, radius_mm=f"{1e3 * lead.radius:g}")
    middles, tangents, lengths = cut_line(np.asarray(lead.points, dtype=float), _STEP * system.pitch)
    points, owner = _on_rings(middles, tangents, lead.radius, system.pitch)
    cells, weights, home = spread(system, points, lead.body)
    touching = weights.sum(axis=1) > 0
    if not touching.any():
        raise InputError("lead-outside", lead=lead.name)
    fatness = _log_ratio(system, lead, middles, tangents, lengths)
    per_ring = np.bincount(owner, minlength=len(middles))
    g = (2 * np.pi * lengths / fatness / per_ring)[owner] * system.conductivity[home]
    rows = np.repeat(np.arange(touching.sum()), weights.shape[1])
    kept, columns = weights[touching].ravel(), cells[touching].ravel()
    matrix = sparse.coo_array((kept, (rows, np.maximum(columns, 0))), shape=(int(touching.sum()), system.size))
    matrix.sum_duplicates()
    matrix.eliminate_zeros()
    return matrix.tocsr(), g[touching], home[touching]


def cut_line(points: Floats, step: float) -> tuple[Floats, Floats, Floats]:
    """Cut a polyline into pieces no longer than `step`: middles (k, 3), unit tangents (k, 3), lengths (k,). [m]

    Examples
    --------
    >>> middles, tangents, lengths = cut_line(np.array([[0, 0, 0], [0, 0, 1.0]]), 0.5)
    >>> middles[:, 2].tolist(), lengths.tolist()
    ([0.25, 0.75], [0.5, 0.5])
    """
    middles, tangents, lengths = [], [], []
    for start, end in pairwise(points):
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


def spread(system: FaceSystem, points: Floats, body: int) -> tuple[NDArray[np.int64], Floats, NDArray[np.int64]]:
    """Spread points over the 27 cells around each.

    The B-spline's weights are multiplied by each cell's conductivity, and made smaller in slivers, so that current
    enters a cell in proportion to what that cell can carry away; then they are made to sum to one.

    Returns
    -------
    cells : (p, 27) int
        Unknowns; -1 where the body has none.
    weights : (p, 27) float
        Their weights; all zero for a point with no conductor around it. [1]
    home : (p,) int
        The unknown whose dough holds the point.
    """
    cells, spline = _around(system, points, body)
    held = np.where(cells >= 0, spline * np.minimum(1, system.share[cells] / _WHOLE_FROM), 0.0)
    home = cells[np.arange(len(points)), _home(cells, held)]
    weights = held * system.conductivity[cells]
    total = weights.sum(axis=1, keepdims=True)
    return cells, np.divide(weights, total, out=np.zeros_like(weights), where=total > 0), home


def _around(system: FaceSystem, points: Floats, body: int) -> tuple[NDArray[np.int64], Floats]:
    """Unknowns of the 27 cells around points (-1: none) and the B-spline's weights, both (p, 27)."""
    place = (points - system.origin) / system.pitch
    nearest = np.floor(place).astype(np.int64)
    u = place - nearest - 0.5
    along = np.stack([0.5 * (0.5 - u) ** 2, 0.75 - u**2, 0.5 * (0.5 + u) ** 2], axis=1)
    steps = np.stack(np.meshgrid(*[np.arange(3)] * 3, indexing="ij"), axis=-1).reshape(27, 3)
    spline = along[:, steps[:, 0], 0] * along[:, steps[:, 1], 1] * along[:, steps[:, 2], 2]
    return system.find(nearest[:, None, :] + steps - 1, body), spline


def _home(cells: NDArray[np.int64], held: Floats) -> NDArray[np.int64]:
    """The middle cell where the body has it, else the one that holds most."""
    return np.where(cells[:, 13] >= 0, 13, np.argmax(held, axis=1))


def _on_rings(middles: Floats, tangents: Floats, radius: float, pitch: float) -> tuple[Floats, NDArray[np.int64]]:
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


def _log_ratio(system: FaceSystem, lead: Lead, middles: Floats, tangents: Floats, lengths: Floats) -> Floats:
    """ln(r_eq / r_w) of each piece, less near a tip."""
    ring = 0.0 if lead.radius < _RING_FROM * system.pitch else lead.radius
    offsets = np.mod((middles - system.origin) / system.pitch, 1.0) - 0.5
    full, smear = np.empty(len(middles)), np.empty(len(middles))
    directions, which = np.unique(np.round(tangents, 3), axis=0, return_inverse=True)
    for number, direction in enumerate(directions):
        mine = which.ravel() == number
        r_eq = equivalent_radius(direction, pitch=system.pitch, ring=ring, offsets=offsets[mine])
        full[mine] = np.maximum(np.log(r_eq / lead.radius), _LEAST_LOG)
        smear[mine] = equivalent_radius(direction, pitch=system.pitch)
    walked = np.cumsum(lengths) - lengths / 2
    ends = (
        (walked, middles[0] - tangents[0] * lengths[0] / 2, -tangents[0]),
        (lengths.sum() - walked, middles[-1] + tangents[-1] * lengths[-1] / 2, tangents[-1]),
    )
    sides = []
    for distance, tip, outward in ends:
        buried = _buried(system, tip + system.pitch * outward, lead.body)
        sides.append((1 - buried) * full + buried * one_sided_log(distance, full, smear=smear))
    return np.maximum((sides[0] + sides[1]) / 2, _LEAST_LOG)


def _buried(system: FaceSystem, point: Floats, body: int) -> float:
    """How surely a lead's end is a tip, from the dough around a point one pitch beyond: 0 at a surface, 1 inside."""
    cells, spline = _around(system, point[None], body)
    held = np.sum(np.where(cells >= 0, spline * system.share[cells], 0.0))
    return float(np.clip((held - 0.1) / 0.35, 0, 1))  # slivers of a surface cell hold up to 0.1; half a cell away 0.45
