"""What if one thing were otherwise? Each change gives a network in which just that is mended.

A change that lets a part do what it is for names the cause: the verdict does not guess, it computes the sculpture
again without the trouble.
"""

from collections.abc import Callable, Iterable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from lumped.circuit import Branch, Conductor, Network, StraightLine, pack
from lumped.sculpt import Part, Sculpture
from lumped.verdict.budget import resistance_near_leads
from lumped.verdict.readings import Reading

__all__ = [
    "with_fresh_packs",
    "with_lead_dough_halved",
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
    near = resistance_near_leads(reading)
    return _with_matrix(reading.network, lambda y: _in_series(times * _in_series(y, -0.98 * near), 0.98 * near))


def with_lead_dough_halved(reading: Reading) -> Network:
    """Halve the resistance close round the leads: legs twice as deep."""
    near = resistance_near_leads(reading)
    return _with_matrix(reading.network, lambda y: _in_series(y, -near / 2))


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
    """Put a resistance in series with each port; negative ones take some out, but never more than there is."""
    for _ in range(30):
        mended = y @ np.linalg.inv(np.eye(len(y)) + np.diag(resistances) @ y)
        mended = (mended + mended.T) / 2
        np.fill_diagonal(mended, 0.0)
        mended -= np.diag(mended.sum(axis=1))
        powers = np.linalg.eigvalsh(mended)
        if powers[0] > -1e-9 * powers[-1]:
            break
        resistances = resistances * 0.7
    return np.asarray(mended)


def _with_branches(network: Network, branches: Iterable[Branch]) -> Network:
    return replace(network, branches=tuple(branches))


def _with_matrix(network: Network, change: Callable[[Matrix], Matrix]) -> Network:
    conductors = tuple(Conductor(nodes=each.nodes, matrix=change(each.matrix)) for each in network.conductors)
    return replace(network, conductors=conductors)
