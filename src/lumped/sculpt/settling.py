"""A sculpture with every question of touch settled: what is one body, which lead runs through what, which metals meet.

What a hand can't tell (do these two lumps touch?) is settled one way here, and the other way in another call; the
verdict compares the two.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from lumped.reference import handbook
from lumped.sculpt.bodies import Nearness, bodies_of, near_pairs
from lumped.sculpt.scene import Leg, Sculpture
from lumped.shape import Piece, Roll, Solid

__all__ = ["MetalTouch", "Run", "Settled", "find_near_pairs", "lead_distance", "settled"]

_SAMPLES = 400
_SHORTEST_RUN = 3e-4  # m; a scratch shallower than a third of a millimetre carries nothing
_BRIDGE_REACH = 2e-3  # m; how far an accidental touch is drawn into both lumps, so that it surely joins them


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """The stretch of one leg inside one body.

    Parameters
    ----------
    leg : Leg
        Whose stretch it is.
    body : int
        Which body.
    points : (2, 3) float
        Where it begins and ends. [m]
    lumps : tuple of str
        The lumps that it passes, in order.
    """

    leg: Leg
    body: int
    points: NDArray[np.float64]
    lumps: tuple[str, ...]

    @property
    def name(self) -> str:
        """Name of its port: leg and body."""
        return f"{self.leg.node}@{self.body}"

    @property
    def length(self) -> float:
        """Its length. [m]"""
        return float(np.linalg.norm(self.points[1] - self.points[0]))


@dataclass(frozen=True, slots=True, kw_only=True)
class MetalTouch:
    """Two legs whose metals meet, by node name, and their distance (0 if twisted together outside). [m]"""

    first: str
    second: str
    distance: float
    outside: bool
    unsure: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Settled:
    """One reading of the sculpture.

    Parameters
    ----------
    pieces : tuple of Piece
        Solids in order, unit conductivity, named by their dough.
    bodies : (n,) int
        Body of each piece.
    runs : tuple of Run
        The leads in dough.
    touches : tuple of MetalTouch
        Metals that meet in this reading.
    """

    pieces: tuple[Piece, ...]
    bodies: NDArray[np.intp]
    runs: tuple[Run, ...]
    touches: tuple[MetalTouch, ...]


def find_near_pairs(sculpture: Sculpture) -> tuple[Nearness, ...]:
    """Find the pairs of lumps that touch or may touch, by the handbook's figures for hands."""
    book = handbook()
    return near_pairs(
        sculpture.lumps,
        hand_gap=book.value("hands", "dough-gap", "unsure_gap").mean,
        hand_overlap=book.value("hands", "dough-gap", "unsure_overlap").mean,
    )


def settled(sculpture: Sculpture, touching: Iterable[Nearness], *, metals_meet: bool = False) -> Settled:
    """Settle which lumps touch, and whether metals that nearly meet do.

    Parameters
    ----------
    sculpture : Sculpture
        The sculpture.
    touching : iterable of Nearness
        The pairs that touch in this reading. A pair that does not touch as drawn, or that a hand can't tell, is
        joined by a short bridge of the handbook's accidental touch.
    metals_meet : bool
        Whether leads that nearly meet inside the dough do.

    Returns
    -------
    Settled
    """
    touching = tuple(touching)
    bodies = bodies_of(len(sculpture.lumps), [(pair.first, pair.second) for pair in touching])
    bridges = [pair for pair in touching if pair.unsure]
    pieces = [
        Piece(name=sculpture.lumps[pair.first].dough, solid=_bridge(sculpture, pair), conductivity=1.0)
        for pair in bridges
    ]
    pieces += [Piece(name=lump.dough, solid=lump.solid, conductivity=1.0) for lump in sculpture.lumps]
    runs = tuple(run for leg in sculpture.legs for run in _runs_of(leg, sculpture, bodies))
    touches = tuple(touch for touch in _touches(sculpture, runs) if metals_meet or not touch.unsure)
    all_bodies = np.array([*(bodies[pair.first] for pair in bridges), *bodies], dtype=np.intp)
    return Settled(pieces=tuple(pieces), bodies=all_bodies, runs=runs, touches=touches)


def _bridge(sculpture: Sculpture, pair: Nearness) -> Roll:
    """A short roll through the place where two lumps are nearest, as fat as an accidental touch."""
    radius = float(np.sqrt(handbook().value("hands", "dough-gap", "touch_area").mean / np.pi))
    first, second = (sculpture.lumps[k].solid for k in (pair.first, pair.second))
    normal = _slope(first, pair.gap.point) - _slope(second, pair.gap.point)
    size = np.linalg.norm(normal)
    normal = normal / size if size > 1e-9 else np.array([1.0, 0.0, 0.0])
    half = (abs(pair.gap.distance) / 2 + _BRIDGE_REACH) * normal
    start, end = (tuple(map(float, pair.gap.point + sign * half)) for sign in (-1, 1))
    return Roll(start=start, end=end, radius=radius)  # type: ignore[arg-type]


def _slope(solid: Solid, point: NDArray[np.float64]) -> NDArray[np.float64]:
    """Direction in which the distance from a solid grows fastest."""
    step = 1e-5 * np.eye(3)
    return np.asarray(solid.distance(point + step) - solid.distance(point - step)) / 2e-5


def _runs_of(leg: Leg, sculpture: Sculpture, bodies: NDArray[np.intp]) -> list[Run]:
    """Cut a leg into stretches, each inside one body."""
    if leg.entry is None or leg.tip is None:
        return []
    share = (np.arange(_SAMPLES) + 0.5) / _SAMPLES
    points = leg.entry + share[:, None] * (leg.tip - leg.entry)
    owner = np.full(_SAMPLES, -1)
    for k, lump in enumerate(sculpture.lumps):
        owner[lump.solid.distance(points) < 0] = k
    body = np.where(owner >= 0, bodies[owner], -1)
    edges = np.r_[0, np.flatnonzero(np.diff(body)) + 1, _SAMPLES]
    runs = []
    for start, stop in pairwise(edges):
        ends = leg.entry + np.array([[start], [stop]]) / _SAMPLES * (leg.tip - leg.entry)
        if body[start] >= 0 and np.linalg.norm(ends[1] - ends[0]) > _SHORTEST_RUN:
            passed = tuple(dict.fromkeys(sculpture.lumps[k].name for k in owner[start:stop]))
            runs.append(Run(leg=leg, body=int(body[start]), points=ends, lumps=passed))
    return _joined_by_body(runs)


def _joined_by_body(runs: list[Run]) -> list[Run]:
    """A leg that leaves a body and comes back into it is one port: keep its longest stretch."""
    longest: dict[int, Run] = {}
    for run in runs:
        if run.body not in longest or run.length > longest[run.body].length:
            longest[run.body] = run
    return list(longest.values())


def _touches(sculpture: Sculpture, runs: tuple[Run, ...]) -> list[MetalTouch]:
    """Metals that meet: twisted together outside, or near each other inside one body."""
    unsure_gap = handbook().value("hands", "metal-gap", "unsure_gap").mean
    found = [MetalTouch(first=a, second=b, distance=0.0, outside=True, unsure=False) for a, b in sculpture.joined]
    for j, second in enumerate(runs):
        for first in runs[:j]:
            if first.leg.node == second.leg.node or first.body != second.body:
                continue
            radii = first.leg.gauge.equivalent_radius + second.leg.gauge.equivalent_radius
            distance = lead_distance(first.points, second.points) - radii
            if distance < unsure_gap:
                found.append(
                    MetalTouch(
                        first=first.leg.node, second=second.leg.node, distance=max(0.0, distance),
                        outside=False, unsure=distance > 0,
                    )
                )  # fmt: skip
    return found


def lead_distance(a: NDArray[np.float64], b: NDArray[np.float64]) -> float:
    """Give the shortest distance between two straight leads, by projecting each on the other in turn.

    Parameters
    ----------
    a, b : (2, 3) float
        Where each begins and ends. [m]

    Returns
    -------
    float
        Distance of their axes. [m]

    Examples
    --------
    >>> lead_distance(np.array([[0.0, 0, 0], [0, 0, 1]]), np.array([[0.3, 0, 2], [0.3, 0, 0.5]]))
    0.3
    """
    along_a, along_b = a[1] - a[0], b[1] - b[0]

    def settle(s: float) -> float:
        for _ in range(60):
            t = np.clip((a[0] + s * along_a - b[0]) @ along_b / (along_b @ along_b), 0, 1)
            s = float(np.clip((b[0] + t * along_b - a[0]) @ along_a / (along_a @ along_a), 0, 1))
        return float(np.linalg.norm(a[0] + s * along_a - b[0] - t * along_b))

    return min(map(settle, (0.0, 0.5, 1.0)))
