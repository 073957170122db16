"""The same sculpture read in several ways: as drawn, at both ends of what is unknown, and with touches the other way.

*Kind* takes the conducting dough at its most conducting, walls at their most insulating, and metal–dough passages at
their cheapest; *hard* takes the opposite of each. A pair of lumps that a hand can't tell apart or together is also
read the other way round, at the middle of everything else.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Literal

from lumped.circuit import Network, OperatingPoint, operating_point
from lumped.sculpt import (
    Effort,
    MetalTouch,
    Nearness,
    Sculpture,
    Settled,
    Solved,
    find_near_pairs,
    network_of,
    settled,
    solve_settled,
)  # fmt: skip

__all__ = ["Reading", "Readings", "read_all_ways"]

FLIPS_ALONE = 3
Progress = Callable[[float], None]
End = Literal["middle", "kind", "hard"]
_PRICE: dict[End, float] = {"middle": 0.0, "kind": -1.0, "hard": 1.0}


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """One way to read the sculpture, and where its circuit comes to rest.

    Parameters
    ----------
    end : {"middle", "kind", "hard"}
        Which end of what is unknown.
    flipped : tuple of Nearness
        Pairs of lumps that are read the other way than drawn.
    metals_meet : bool
        Whether leads that nearly meet do.
    solved : Solved
        The field.
    scale : float
        Factor on the solved conductances. [1]
    network, point : Network, OperatingPoint
        The circuit and its operating point.
    """

    end: End
    flipped: tuple[Nearness, ...]
    metals_meet: bool
    solved: Solved
    scale: float
    network: Network
    point: OperatingPoint


@dataclass(frozen=True, slots=True, kw_only=True)
class Readings:
    """All readings of one sculpture.

    Parameters
    ----------
    drawn, kind, hard : Reading
        As drawn, and at both ends.
    flips : tuple of Reading
        With a touch the other way, everything else as drawn.
    pairs : tuple of Nearness
        All lumps that touch or nearly do.
    """

    drawn: Reading
    kind: Reading
    hard: Reading
    flips: tuple[Reading, ...]
    pairs: tuple[Nearness, ...]


def read_all_ways(sculpture: Sculpture, effort: Effort, report: Progress = lambda share: None) -> Readings:
    """Compute a sculpture in all ways that matter.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    effort : Effort
        How finely to compute.
    report : callable
        Told the share that is done, 0 to 1. [1]

    Returns
    -------
    Readings

    Raises
    ------
    SolverError
        If the field or the circuit does not reach its accuracy.
    """
    pairs = find_near_pairs(sculpture)
    touching = tuple(pair for pair in pairs if pair.touching)
    drawn = settled(sculpture, touching)
    unsure = [pair for pair in pairs if pair.unsure]
    groups = [(pair,) for pair in unsure] if len(unsure) <= FLIPS_ALONE else [tuple(unsure)]
    desk = _Desk(sculpture, effort, report, total=3 + len(groups))
    ends = {end: desk.read(drawn, end) for end in _PRICE}
    flips = [desk.read(settled(sculpture, _flipped(touching, group)), flipped=group) for group in groups]
    doubtful = settled(sculpture, touching, metals_meet=True)
    if len(doubtful.touches) > len(drawn.touches):
        flips.append(desk.read(drawn, touches=doubtful.touches))
    report(1.0)
    return Readings(drawn=ends["middle"], kind=ends["kind"], hard=ends["hard"], flips=tuple(flips), pairs=pairs)


def _flipped(touching: tuple[Nearness, ...], group: tuple[Nearness, ...]) -> list[Nearness]:
    """The touching pairs, with those of the group the other way round."""
    return [pair for pair in touching if pair not in group] + [pair for pair in group if pair not in touching]


class _Desk:
    """Solves settled sculptures, each set of relative conductivities once."""

    def __init__(self, sculpture: Sculpture, effort: Effort, report: Progress, total: int) -> None:
        self._sculpture, self._effort, self._report, self._total = sculpture, effort, report, total
        self._solved: dict[object, Solved] = {}
        self._read = 0

    def read(
        self,
        case: Settled,
        end: End = "middle",
        flipped: tuple[Nearness, ...] = (),
        touches: tuple[MetalTouch, ...] | None = None,
    ) -> Reading:
        conductivities = self._conductivities(end)
        scale = next(iter(conductivities.values()))
        relative = {name: each / scale for name, each in conductivities.items()}
        key = (id(case), tuple(round(each, 9) for each in relative.values()))
        if key not in self._solved:
            as_drawn = end == "middle" and not flipped
            effort = self._effort if as_drawn else replace(self._effort, shifted_grid=False)
            self._solved[key] = solve_settled(case, relative, effort)
        solved = self._solved[key]
        if touches is not None:
            solved = _with_touches(solved, touches)
        network = network_of(self._sculpture, solved, price=_PRICE[end], scale=scale)
        self._read += 1
        self._report(min(0.99, self._read / self._total))
        return Reading(
            end=end, flipped=flipped, metals_meet=touches is not None, solved=solved, scale=scale,
            network=network, point=operating_point(network),
        )  # fmt: skip

    def _conductivities(self, end: End) -> Mapping[str, float]:
        """Conductivity of each dough in use, the first lump's dough first. [S/m]"""
        used = dict.fromkeys(lump.dough for lump in self._sculpture.lumps)
        found = {}
        for name in used:
            dough = self._sculpture.doughs[name]
            low_end = (end == "kind") == (dough.kind == "conducting")
            resistivity = dough.resistivity
            ends = resistivity.low if low_end else resistivity.high
            found[name] = 1 / (resistivity.mean if end == "middle" else ends)
        return found


def _with_touches(solved: Solved, touches: tuple[MetalTouch, ...]) -> Solved:
    return replace(solved, settled=replace(solved.settled, touches=touches))
