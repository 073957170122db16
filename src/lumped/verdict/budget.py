"""Where the pack's volts go.

Each watt that the packs give is spent somewhere: in parts, in dough, where metal meets dough, inside the packs. Divided
by the packs' current, watts become volts; round a single loop these are the voltages that a meter would read.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.circuit import Pack, TrippedPack
from lumped.sculpt import Run, Sculpture, Settled, Solved, lead_distance
from lumped.verdict.readings import Reading

__all__ = ["Budget", "budget_of", "resistance_near_leads"]

_NOTHING = 1e-6  # A


@dataclass(frozen=True, slots=True, kw_only=True)
class Budget:
    """Where the volts of the packs go.

    Parameters
    ----------
    given : float
        Open-circuit voltage that the packs give. [V]
    current : float
        Current of the packs. [A]
    parts : float
        Kept by lamps, motors, resistors and switches. [V]
    metal : float
        Spent where metal meets dough. [V]
    dough_leads, dough_path : float
        Spent in the dough close round the leads, and on the way between them. [V]
    pack : float
        Lost inside the packs and where metal touches metal. [V]
    """

    given: float
    current: float
    parts: float
    metal: float
    dough_leads: float
    dough_path: float
    pack: float

    def as_dict(self) -> dict[str, float]:
        """Give it as JSON shows it."""
        return {
            "given_V": self.given, "current_A": self.current, "parts_V": self.parts, "metal_V": self.metal,
            "dough_leads_V": self.dough_leads, "dough_path_V": self.dough_path, "pack_V": self.pack,
        }  # fmt: skip


def budget_of(sculpture: Sculpture, reading: Reading) -> Budget | None:
    """Give the budget of a reading.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    reading : Reading
        One reading of it.

    Returns
    -------
    Budget or None
        None if no pack gives a current worth the name.
    """
    point, network = reading.point, reading.network
    inner = given = total = 0.0
    for part in sculpture.packs:
        law, current = point.laws[part.name], point.currents[part.name]
        if isinstance(law, Pack | TrippedPack):
            given += -law.emf * current
            inner += law.resistance * current**2
            total += abs(current)
    if given <= 0 or total < _NOTHING:
        return None
    ports = {run.name for run in reading.solved.settled.runs}
    metal = sum(point.power(name) for name in ports)
    parts = sum(point.power(part.name) for part in sculpture.parts if part.kind != "pack")
    touches = sum(point.power(branch.name) for branch in network.branches if "~" in branch.name)
    dough, leads = _power_in_dough(reading)
    return Budget(
        given=given / total, current=total, parts=parts / total, metal=metal / total,
        dough_leads=leads / total, dough_path=(dough - leads) / total, pack=(inner + touches) / total,
    )  # fmt: skip


def resistance_near_leads(reading: Reading, *, at_least: float = 0.0, deeper: float = 1.0) -> NDArray[np.float64]:
    """Give the resistance of the dough close round each lead.

    Parameters
    ----------
    reading : Reading
        One reading.
    at_least : float
        Radius below which no lead is taken to be. [m]
    deeper : float
        How many times deeper the leads are taken to be. [1]

    Returns
    -------
    (n,) float
        ln(reach / radius) / (2π σ length) of each port. The reach is the distance from the lead's middle to the lump's
        skin, or half the way to the next lead of its body, whichever is less: so two neighbours share what lies between
        them, ln(s/2r) each, which is less than the ln(s/r) that each really has. [Ω]
    """
    solved = reading.solved
    found = []
    for run in solved.settled.runs:
        radius = max(run.leg.gauge.equivalent_radius, at_least)
        conductivity = reading.scale * _conductivity_at(solved, run.points.mean(axis=0))
        log = np.log(max(_reach(run, solved.settled), radius) / radius)
        found.append(log / (2 * np.pi * conductivity * deeper * run.length))
    return np.array(found)


def _reach(run: Run, settled: Settled) -> float:
    """How far the dough close round a lead goes. [m]"""
    middle = run.points.mean(axis=0)
    skins = (
        -float(piece.solid.distance(middle[None])[0])
        for piece, body in zip(settled.pieces, settled.bodies, strict=True)
        if body == run.body
    )
    neighbours = (
        lead_distance(run.points, other.points) / 2
        for other in settled.runs
        if other.body == run.body and other is not run
    )
    return min(max(skins), *neighbours, np.inf)


def _conductivity_at(solved: Solved, point: NDArray[np.float64]) -> float:
    cells = solved.cells
    centres = cells.origin + cells.pitch * (cells.index + 0.5)
    return float(cells.conductivity[np.argmin(np.sum((centres - point) ** 2, axis=1))])


def _power_in_dough(reading: Reading) -> tuple[float, float]:
    """Power in all dough, and the share of it that is spent close round the leads, body by body. [W]"""
    if not reading.network.conductors:
        return 0.0, 0.0
    conductor = reading.network.conductors[0]
    potentials = np.array([reading.point.potentials[node] for node in conductor.nodes])
    currents = conductor.matrix @ potentials
    near = resistance_near_leads(reading) * currents**2
    bodies = np.array([run.body for run in reading.solved.settled.runs])
    power = leads = 0.0
    for body in np.unique(bodies):
        mine = bodies == body
        here = float(potentials[mine] @ currents[mine])
        power += here
        leads += min(float(near[mine].sum()), here)
    return power, leads
