"""From a settled sculpture to the conductances between its leads."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np

from lumped.conduction import FaceSystem, Lead, Ports, port_spread, solve_ports
from lumped.sculpt.settling import Run, Settled, lead_distance
from lumped.shape import Ball, Block, Cells, Disc, PathRoll, Roll, Solid, cells_of

__all__ = ["Effort", "Solved", "choose_pitch", "solve_settled"]

CELL_LIMIT = 600_000
_FINEST_SPACING = 1.5e-3  # m; where legs nearly touch, a finer grid would not make the verdict surer


@dataclass(frozen=True, slots=True, kw_only=True)
class Effort:
    """How finely to compute.

    Parameters
    ----------
    cells_across : float
        Cells across the thinnest lump that is joined to a lead. [1]
    cells_between : float
        Cells between the nearest two leads of a body. [1]
    shifted_grid : bool
        Whether a second, shifted grid estimates the error of the pitch.
    """

    cells_across: float
    cells_between: float
    shifted_grid: bool

    @classmethod
    def named(cls, name: Literal["quick", "full"]) -> "Effort":
        """Give the effort of a live page ("quick") or of a printed verdict ("full")."""
        if name == "quick":
            return cls(cells_across=7.0, cells_between=4.0, shifted_grid=False)
        return cls(cells_across=10.0, cells_between=4.0, shifted_grid=True)


@dataclass(frozen=True, slots=True, kw_only=True)
class Solved:
    """The port matrix of a settled sculpture, and the cells that it was computed on.

    Parameters
    ----------
    settled : Settled
        What was solved.
    cells : Cells
        The cells, for pictures of the field.
    ports : Ports
        Conductances between the leads, `names` being the runs' names. [S]
    shifted : Ports or None
        The same on a grid shifted by half a pitch, which shows the error that the pitch leaves; None if not computed.
    """

    settled: Settled
    cells: Cells
    ports: Ports
    shifted: Ports | None = None

    @property
    def spread(self) -> float | None:
        """Largest relative difference of any conductance between the two grids. [1]"""
        return port_spread(self.ports, self.shifted) if self.shifted is not None else None


def choose_pitch(settled: Settled, effort: Effort) -> float:
    """Choose the edge of a cell.

    Parameters
    ----------
    settled : Settled
        What will be solved.
    effort : Effort
        How finely.

    Returns
    -------
    float
        A share of the thinnest lump that is joined to a lead, and of the smallest spacing of leads (of 1.5 mm where
        they are nearer), but no finer than the limit on cells. [m]
    """
    boxes = [piece.solid.bounds() for piece in settled.pieces]
    held = {run.body for run in settled.runs}
    thicknesses = [
        _thickness(piece.solid)
        for piece, body in zip(settled.pieces, settled.bodies, strict=True)
        if body in held or not held
    ]
    thickness = min(thicknesses)
    met = {frozenset((touch.first, touch.second)) for touch in settled.touches}
    spacings = [
        max(lead_distance(a.points, b.points), _FINEST_SPACING)
        for j, b in enumerate(settled.runs)
        for a in settled.runs[:j]
        if a.body == b.body and frozenset((a.leg.node, b.leg.node)) not in met
    ]
    wanted = min([thickness / effort.cells_across, *(each / effort.cells_between for each in spacings)])
    volume = sum(float(np.prod(box[1] - box[0])) for box in boxes)
    return float(max(wanted, (volume / CELL_LIMIT) ** (1 / 3)))


def solve_settled(settled: Settled, conductivities: Mapping[str, float], effort: Effort) -> Solved:
    """Solve for the conductances between all leads.

    Parameters
    ----------
    settled : Settled
        The sculpture, its touches settled.
    conductivities : mapping of str to float
        Conductivity of each dough. [S/m]
    effort : Effort
        How finely.

    Returns
    -------
    Solved

    Raises
    ------
    SolverError
        If the field solver does not reach its accuracy.
    """
    pitch = choose_pitch(settled, effort)
    cells, ports = _solve_once(settled, conductivities, pitch, 0.0)
    shifted = _solve_once(settled, conductivities, pitch, 0.5)[1] if effort.shifted_grid else None
    return Solved(settled=settled, cells=cells, ports=ports, shifted=shifted)


def _solve_once(
    settled: Settled, conductivities: Mapping[str, float], pitch: float, shift: float
) -> tuple[Cells, Ports]:
    pieces = [replace(piece, conductivity=conductivities[piece.name]) for piece in settled.pieces]
    cells = cells_of(pieces, settled.bodies.tolist(), pitch=pitch, offset=(shift,) * 3)
    system = FaceSystem(
        index=cells.index, body=cells.body, edges=cells.edges, conductance=cells.conductance,
        conductivity=cells.conductivity, origin=cells.origin, pitch=cells.pitch, share=cells.share,
    )  # fmt: skip
    return cells, solve_ports(system, [_lead(run) for run in settled.runs], port_rtol=1e-5)


def _thickness(solid: Solid) -> float:
    """How thick a solid is where it is thinnest, however it is turned. [m]"""
    match solid:
        case Block():
            return min(solid.size)
        case Disc():
            return min(2 * solid.radius, solid.height)
        case Roll():
            return min(2 * solid.radius, float(np.linalg.norm(np.subtract(solid.end, solid.start))))
        case Ball() | PathRoll():
            return 2 * solid.radius
    box = solid.bounds()
    return float(np.min(box[1] - box[0]))


def _lead(run: Run) -> Lead:
    return Lead(name=run.name, body=run.body, points=run.points, radius=run.leg.gauge.equivalent_radius)
