"""The ways of legs from a part's body to the dough: stiff legs run straight, wires run softly round the dough."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.picture.bodies import Body, entry_of, terminals
from lumped.picture.ground import Ground
from lumped.sculpt import Leg, Sculpture

__all__ = ["Wire", "lay_wires"]

Floats = NDArray[np.float64]
_FLEXIBLE = ("motor", "pack")
_FARTHEST_STIFF = 60.0  # mm
_STUB = 9.0  # mm; how far a leg in the air sticks out
_RUN_UP = 9.0  # mm; straight before a wire goes in


@dataclass(frozen=True, slots=True, kw_only=True)
class Wire:
    """One leg as drawn.

    Parameters
    ----------
    leg : Leg
        Which.
    points : (n, 2) float
        From the body to where it goes in, or to its end in the air. [mm]
    stiff : bool
        A bare metal leg, not a covered wire.
    loose : bool
        It ends in the air.
    hidden : (2, 2) float or None
        The stretch inside the dough; None where there is none. [mm]
    twisted : bool
        Its end is twisted to another leg's.
    """

    leg: Leg
    points: Floats
    stiff: bool
    loose: bool
    hidden: Floats | None
    twisted: bool = False


def lay_wires(sculpture: Sculpture, bodies: tuple[Body, ...], ground: Ground) -> tuple[Wire, ...]:
    """Lay all legs, stiff ones first, so that wires keep off them.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    bodies : tuple of Body
        Bodies of its parts.
    ground : Ground
        The table.

    Returns
    -------
    tuple of Wire
    """
    ends = {leg.node: end for body in bodies for leg, end in zip(body.part.legs, terminals(body), strict=True)}
    meets = _meeting_points(sculpture, bodies, ends)
    laid = []
    for body in sorted(bodies, key=lambda each: each.part.kind in _FLEXIBLE):
        for leg in body.part.legs:
            wire = _wire(leg, body, ends[leg.node], meets.get(leg.node), ground)
            ground.take(wire.points, reach=1.0)
            laid.append(wire)
    return tuple(laid)


def _meeting_points(sculpture: Sculpture, bodies: tuple[Body, ...], ends: dict[str, Floats]) -> dict[str, Floats]:
    """Where each leg that is not in dough is twisted to another: at that one's hole, or where a stiff one ends."""
    body_of = {leg.node: body for body in bodies for leg in body.part.legs}
    entries = {leg.node: entry for leg in sculpture.legs if (entry := entry_of(leg)) is not None}
    meets = {}
    for pair in sculpture.joined:
        host, guest = sorted(pair, key=lambda node: (node not in entries, body_of[node].part.kind in _FLEXIBLE))
        place = entries.get(host)
        if place is None:
            place = _stub(body_of[host], ends[host])[-1]
            meets[host] = place
        if guest not in entries:
            meets[guest] = place
    return meets


def _wire(leg: Leg, body: Body, start: Floats, meets: Floats | None, ground: Ground) -> Wire:
    stiff = body.part.kind not in _FLEXIBLE
    goal, entry = meets, entry_of(leg)
    hidden = None if leg.entry is None or leg.tip is None else 1e3 * np.array([leg.entry[:2], leg.tip[:2]])
    if entry is not None:
        goal = entry
    if goal is None:
        return Wire(leg=leg, points=_stub(body, start), stiff=stiff, loose=True, hidden=None, twisted=False)
    if stiff and np.linalg.norm(goal - start) < _FARTHEST_STIFF:
        points = np.array([start, goal])
    else:
        points = ground.way(start, _before(leg, goal), then=goal)
    return Wire(leg=leg, points=points, stiff=stiff, loose=False, hidden=hidden, twisted=entry is None)


def _before(leg: Leg, goal: Floats) -> Floats:
    """Where a wire lines up to go in: outside, on the line of its hidden stretch."""
    if leg.entry is None or leg.tip is None:
        return goal
    back = 1e3 * (leg.entry[:2] - leg.tip[:2])
    length = float(np.linalg.norm(back))
    return goal + _RUN_UP * back / length if length > 1.0 else goal


def _stub(body: Body, start: Floats) -> Floats:
    """A short bend into the air, away from the body."""
    outwards = start - body.centre
    outwards = outwards / max(float(np.linalg.norm(outwards)), 1e-9)
    side = np.array([-outwards[1], outwards[0]])
    t = np.linspace(0, 1, 9)[:, None]
    return np.asarray(start + _STUB * (t * outwards + 0.25 * t**2 * side))
