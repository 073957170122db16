"""The same sculpture read in several ways: as drawn, at the ends of what is unknown, and with touches the other way.

Three things are unknown everywhere: how well the doughs conduct, what passing from metal to dough costs, and how much
this lamp, this motor, these cells differ from their kind. Each is counted in 95 % half-widths, positive against the
current in its proper way (conducting dough that conducts badly and walls that conduct well, dear passages, stiff
motors). The ends lie on the sphere of radius one: to first order the extremes of any figure on that sphere are the ends
of its 95 % interval. A pair of lumps that a hand can't tell apart or together is also read the other way round, at the
middle of everything else.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

import numpy as np

from lumped.circuit import Network, OperatingPoint, operating_point
from lumped.dough import Dough
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

FLIPS_ALONE = 6
Progress = Callable[[float], None]
_HALF = 2**-0.5


@dataclass(frozen=True, slots=True)
class End:
    """Where what is unknown stands, as shares of its 95 % half-width; positive is against the current. [1]"""

    dough: float = 0.0
    price: float = 0.0
    parts: float = 0.0


def _ends() -> Iterator[End]:
    """Points of the sphere in which all three stand on the same side: a quarter circle, one halfway up, the top."""
    for sign in (-1, 1):
        for angle in np.linspace(0, np.pi / 2, 5):
            dough, price = sign * float(np.cos(angle)), sign * float(np.sin(angle))
            yield End(dough, price)
            yield End(_HALF * dough, _HALF * price, sign * _HALF)
        yield End(0.0, 0.0, sign)


DRAWN = End()
ENDS = tuple(_ends())


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """One way to read the sculpture, and where its circuit comes to rest.

    Parameters
    ----------
    end : End
        Where what is unknown stands.
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
    drawn : Reading
        As drawn.
    ends : tuple of Reading
        At the ends of what is unknown.
    flips : tuple of Reading
        With a touch the other way, everything else as drawn.
    shifted : Reading or None
        As drawn, on a grid shifted by half a pitch; None if that was not asked for.
    pairs : tuple of Nearness
        All lumps that touch or nearly do.
    unsure : tuple of Nearness
        Those of which a hand can't tell whether they touch, and to which it matters.
    """

    drawn: Reading
    ends: tuple[Reading, ...]
    flips: tuple[Reading, ...]
    shifted: Reading | None
    pairs: tuple[Nearness, ...]
    unsure: tuple[Nearness, ...]

    @property
    def grid_spread(self) -> float | None:
        """How much the largest current differs between the two grids, relative to it. [1]"""
        if self.shifted is None:
            return None
        first, second = self.drawn.point.currents, self.shifted.point.currents
        largest = max((abs(current) for current in first.values()), default=0.0)
        return max((abs(first[name] - second[name]) for name in first), default=0.0) / max(largest, 1e-12)


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
    unsure = [pair for pair in pairs if pair.unsure and _matters(pair, sculpture)]
    groups = _groups(unsure)
    desk = _Desk(sculpture, effort, report, total=1 + len(ENDS) + len(groups))
    as_drawn, *ends = (desk.read(drawn, end) for end in (DRAWN, *ENDS))
    flips = [desk.read(settled(sculpture, _flipped(touching, group)), flipped=group) for group in groups]
    doubtful = settled(sculpture, touching, metals_meet=True)
    if len(doubtful.touches) > len(drawn.touches):
        flips.append(desk.read(drawn, touches=doubtful.touches))
    shifted = desk.shifted(as_drawn)
    report(1.0)
    return Readings(
        drawn=as_drawn, ends=tuple(ends), flips=tuple(flips), shifted=shifted, pairs=pairs, unsure=tuple(unsure)
    )


def _groups(unsure: list[Nearness]) -> list[tuple[Nearness, ...]]:
    """Pairs that are flipped together: each alone, or if they are many those that touch, and those that don't."""
    if len(unsure) <= FLIPS_ALONE:
        return [(pair,) for pair in unsure]
    both = (tuple(pair for pair in unsure if pair.touching == touching) for touching in (False, True))
    return [group for group in both if group]


def _matters(pair: Nearness, sculpture: Sculpture) -> bool:
    """Whether it makes a difference if two lumps touch: not if one of them insulates."""
    return all(sculpture.doughs[sculpture.lumps[k].dough].conducts for k in (pair.first, pair.second))


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
        end: End = DRAWN,
        flipped: tuple[Nearness, ...] = (),
        touches: tuple[MetalTouch, ...] | None = None,
    ) -> Reading:
        scale = next(iter(self._conductivities(end.dough).values()))
        solved = self._solved_at(case, end.dough, shifted=end == DRAWN and not flipped)
        if touches is not None:
            solved = _with_touches(solved, touches)
        network = network_of(self._sculpture, solved, price=end.price, against=end.parts, scale=scale)
        self._read += 1
        self._report(min(0.99, self._read / self._total))
        return Reading(
            end=end, flipped=flipped, metals_meet=touches is not None, solved=solved, scale=scale,
            network=network, point=operating_point(network),
        )  # fmt: skip

    def shifted(self, drawn: Reading) -> Reading | None:
        """Give the reading as drawn on the shifted grid, if that was solved."""
        if drawn.solved.shifted is None:
            return None
        solved = replace(drawn.solved, ports=drawn.solved.shifted)
        network = network_of(self._sculpture, solved, scale=drawn.scale)
        return replace(drawn, solved=solved, network=network, point=operating_point(network))

    def _solved_at(self, case: Settled, share: float, *, shifted: bool = False) -> Solved:
        """Give the field for unit conductivity of the first dough.

        Between the middle and an end only the ratios of the conductivities change. There the port matrix is mixed
        from the two, which keeps it a port matrix, and is exact where one dough leaks little beside the other.
        """
        whole = float(np.sign(share))
        if share not in (0.0, whole):
            middle, end = self._solved_at(case, 0.0), self._solved_at(case, whole)
            if middle is end:
                return middle
            weight = _weight(self._relative(0.0), self._relative(share), self._relative(whole))
            matrix = (1 - weight) * middle.ports.matrix + weight * end.ports.matrix
            return replace(middle, ports=replace(middle.ports, matrix=matrix))
        relative = self._relative(share)
        key = (id(case), tuple(round(each, 9) for each in relative.values()))
        if key not in self._solved:
            effort = self._effort if shifted else replace(self._effort, shifted_grid=False)
            self._solved[key] = solve_settled(case, relative, effort)
        return self._solved[key]

    def _relative(self, share: float) -> dict[str, float]:
        conductivities = self._conductivities(share)
        first = next(iter(conductivities.values()))
        return {name: each / first for name, each in conductivities.items()}

    def _conductivities(self, share: float) -> dict[str, float]:
        """Conductivity of each dough in use, the first lump's dough first. [S/m]"""
        used = dict.fromkeys(lump.dough for lump in self._sculpture.lumps)
        return {name: 1 / _resistivity_at(self._sculpture.doughs[name], share) for name in used}


def _weight(middle: Mapping[str, float], here: Mapping[str, float], end: Mapping[str, float]) -> float:
    """How far the ratios stand between the middle and an end, by least squares over the doughs. [1]"""
    whole = np.array([end[name] - middle[name] for name in middle])
    part = np.array([here[name] - middle[name] for name in middle])
    return float(np.clip(part @ whole / (whole @ whole), 0, 1))


def _resistivity_at(dough: Dough, share: float) -> float:
    """Resistivity of a dough at a share of its interval; a wall is against the current when it conducts. [Ω·m]"""
    return dough.resistivity.at(share if dough.conducts else -share)


def _with_touches(solved: Solved, touches: tuple[MetalTouch, ...]) -> Solved:
    return replace(solved, settled=replace(solved.settled, touches=touches))
