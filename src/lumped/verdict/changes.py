"""What if one thing were otherwise? Each change gives a network in which just that is mended.

A change that lets a part do what it is for names the cause: the verdict does not guess, it computes the sculpture
again without the trouble.
"""

from collections.abc import Callable, Iterable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.electrodes import electrode
from lumped.circuit import Branch, Conductor, Network, StraightLine, gauge, pack
from lumped.sculpt import Part, Sculpture
from lumped.verdict.budget import resistance_near_leads
from lumped.verdict.readings import Reading

__all__ = [
    "with_fresh_packs",
    "with_nails",
    "with_path_shortened",
    "with_turned",
    "with_wired",
    "without_bridge",
    "without_metal_price",
    "without_parts",
    "without_touches",
]

_WIRE = 0.02  # Ω; a short piece of copper wire in place of a part
_FREE = 1e-3  # Ω; a passage from metal to dough that costs nothing
_NAIL, _DEEPER = "nail-iron-3mm", 2.0
_MENDED_PACK = "pack-4aa-alkaline"
Matrix = NDArray[np.float64]


def with_turned(network: Network, part: Part) -> Network:
    """Turn a part round."""
    turned = (
        replace(each, plus=each.minus, minus=each.plus) if each.name == part.name else each for each in network.branches
    )
    return _with_branches(network, turned)


def without_touches(network: Network) -> Network:
    """Keep metals apart that meet."""
    return _with_branches(network, (each for each in network.branches if "~" not in each.name))


def without_parts(network: Network, parts: Iterable[Part]) -> Network:
    """Take other parts out."""
    names = {part.name for part in parts}
    return _with_branches(network, (each for each in network.branches if each.name not in names))


def with_wired(network: Network, parts: Iterable[Part]) -> Network:
    """Put a piece of wire in the place of other parts."""
    names, wire = {part.name for part in parts}, StraightLine(resistance=_WIRE)
    return _with_branches(
        network, (replace(each, law=wire) if each.name in names else each for each in network.branches)
    )


def with_fresh_packs(sculpture: Sculpture, network: Network) -> Network:
    """Put four fresh alkaline cells in the place of each pack."""
    names, fresh = {part.name for part in sculpture.packs}, pack(_MENDED_PACK, state="fresh", fuse=False)
    return _with_branches(
        network, (replace(each, law=fresh) if each.name in names else each for each in network.branches)
    )


def without_metal_price(reading: Reading) -> Network:
    """Let current pass from metal to dough for nothing."""
    ports, free = {run.name for run in reading.solved.settled.runs}, StraightLine(resistance=_FREE)
    return _with_branches(
        reading.network,
        (replace(each, law=free) if each.name in ports else each for each in reading.network.branches),
    )


def with_path_shortened(reading: Reading, times: float = 3.0) -> Network:
    """Make the way through the dough several times shorter or fatter, and leave the dough round the leads as it is."""

    def shortened(y: Matrix) -> Matrix:
        way, near = _taken_out(y, resistance_near_leads(reading))
        return _in_series(times * way, near)

    return _with_matrix(reading.network, shortened)


def with_nails(reading: Reading) -> Network:
    """Put iron nails in the place of thinner leads, twice as deep: less dough close round them, more metal in it."""
    nail = gauge(_NAIL)
    now = resistance_near_leads(reading)
    then = resistance_near_leads(reading, at_least=nail.equivalent_radius, deeper=_DEEPER)
    laws = {
        run.name: electrode(nail.plating, nail.wetted_area(_DEEPER * run.length), price=reading.end.price)
        for run in reading.solved.settled.runs
        if run.leg.gauge.equivalent_radius < nail.equivalent_radius
    }
    mended = _with_matrix(reading.network, lambda y: _taken_out(y, now - then)[0])
    return _with_branches(mended, (replace(each, law=laws.get(each.name, each.law)) for each in mended.branches))


def without_bridge(reading: Reading, part: Part) -> Network:
    """Cut the dough between the two legs of a part, each other lead staying with the leg that it is nearer to."""
    runs = reading.solved.settled.runs
    plus = [k for k, run in enumerate(runs) if run.leg.node == part.legs[0].node]
    minus = [k for k, run in enumerate(runs) if run.leg.node == part.legs[1].node]

    def cut(y: Matrix) -> Matrix:
        to_plus, to_minus = (-y[:, side].sum(axis=1) for side in (plus, minus))
        side = to_plus > to_minus
        side[plus], side[minus] = True, False
        kept = np.where(side[:, None] == side[None], y, 0.0)
        np.fill_diagonal(kept, 0.0)
        return kept - np.diag(kept.sum(axis=1))

    return _with_matrix(reading.network, cut)


def _in_series(y: Matrix, resistances: NDArray[np.float64]) -> Matrix:
    """Put a resistance in series with each port: Y·(1 + R·Y)⁻¹, which keeps rows summing to zero."""
    mended = np.linalg.solve((np.eye(len(y)) + np.diag(resistances) @ y).T, y.T).T
    mended = np.where(y == 0, 0.0, (mended + mended.T) / 2)
    np.fill_diagonal(mended, 0.0)
    return np.asarray(mended - np.diag(mended.sum(axis=1)))


def _taken_out(y: Matrix, resistances: NDArray[np.float64]) -> tuple[Matrix, NDArray[np.float64]]:
    """Take a resistance out of each port, or as much of it as leaves a port matrix; give what was taken. [S, Ω]"""
    for _ in range(40):
        resistances = 0.9 * resistances
        left = _in_series(y, -resistances)
        if np.all(left - np.diag(np.diag(left)) <= 0) and np.all(np.isfinite(left)):
            return left, resistances
    return y, np.zeros(len(y))


def _with_branches(network: Network, branches: Iterable[Branch]) -> Network:
    return replace(network, branches=tuple(branches))


def _with_matrix(network: Network, change: Callable[[Matrix], Matrix]) -> Network:
    conductors = tuple(Conductor(nodes=each.nodes, matrix=change(each.matrix)) for each in network.conductors)
    return replace(network, conductors=conductors)
