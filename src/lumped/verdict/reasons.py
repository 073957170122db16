"""Why a part does what it does: causes that are seen, and causes that are found by computing without them."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial

from lumped.circuit import Network, OperatingPoint, operating_point
from lumped.errors import SolverError
from lumped.sculpt import Part, Sculpture
from lumped.texts import say
from lumped.verdict import changes
from lumped.verdict.budget import Budget
from lumped.verdict.readings import Reading
from lumped.verdict.states import is_best, merit_of, state_of
from lumped.verdict.suspects import leg_words, suspects_for

__all__ = ["Reason", "reasons_for"]

_GAIN = 1.3  # a change that raises the current by less explains nothing
_NOTHING = 1e-6  # A; below this no current is worth explaining


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """One cause.

    Parameters
    ----------
    code : str
        Which cause: "wrong-way", "leg-out", …
    words : dict
        What fills its sentence.
    would_be : str
        State of the part with the cause mended; "" if that was not computed.
    """

    code: str
    words: Mapping[str, str] = field(default_factory=dict)
    would_be: str = ""

    def __str__(self) -> str:
        return say(f"reason-{self.code}", **self.words)


def reasons_for(part: Part, sculpture: Sculpture, reading: Reading, budget: Budget | None) -> tuple[Reason, ...]:
    """Find why a part does not do what it is for.

    Parameters
    ----------
    part : Part
        The part.
    sculpture : Sculpture
        What stands on the table.
    reading : Reading
        The reading that is explained.
    budget : Budget or None
        Where the volts go in it.

    Returns
    -------
    tuple of Reason
        The cause that explains most first; empty if the part does what it is for, or is a switch.
    """
    if is_best(part, state_of(part, reading.point)):
        return ()
    seen = next(_seen(part, sculpture, reading), None) if part.kind != "pack" else None
    return (seen,) if seen is not None else tuple(_computed(part, sculpture, reading, budget))


def _seen(part: Part, sculpture: Sculpture, reading: Reading) -> Iterator[Reason]:
    """Causes that need no computing: nothing to drive the part, or a leg that is not in anything."""
    if not sculpture.packs:
        yield Reason(code="no-pack")
    held = {run.leg.node for run in reading.solved.settled.runs}
    held |= {node for touch in reading.solved.settled.touches for node in (touch.first, touch.second)}
    for leg in part.legs:
        if leg.node not in held:
            yield Reason(code="leg-out", words={"leg": leg_words(part, leg.name)})
    for pack in sculpture.packs:
        for leg in pack.legs:
            if leg.node not in held:
                yield Reason(code="pack-leg-out", words={"leg": leg_words(pack, leg.name)})
    for switch in (each for each in sculpture.parts if each.kind == "switch" and each.state == "open"):
        if _mended(part, reading, partial(changes.with_wired, parts=[switch])):
            yield Reason(code="switch-open", words={"switch": switch.name})


def _computed(part: Part, sculpture: Sculpture, reading: Reading, budget: Budget | None) -> Iterator[Reason]:
    """Causes found by computing without them: a decisive one alone, else the two that explain most.

    What lifts the state comes before what only lifts the current; among the former a teacher's order is kept.
    """
    before, current = state_of(part, reading.point), abs(reading.point.currents[part.name])
    wants_more = before not in _TOO_MUCH
    ranked: list[tuple[int, float, Reason]] = []
    for suspect in suspects_for(part, sculpture, reading, budget):
        if not wants_more and suspect.code in _ONLY_TOO_LITTLE:
            continue
        point = _point_of(suspect.mended(), reading)
        if point is None:
            continue
        after, gain = state_of(part, point), abs(point.currents[part.name]) / max(current, _NOTHING)
        found = Reason(code=suspect.code, words=suspect.words, would_be=after)
        better = merit_of(part, after) - merit_of(part, before)
        eased = not wants_more and gain < 1 / _GAIN
        if suspect.decisive and (better > 0 or eased):
            yield found
            return
        if better > 0 or (wants_more and gain > _GAIN and current > _NOTHING):
            ranked.append((-better, 0.0 if better > 0 else -gain, found))
    if ranked and part.kind != "pack":
        yield from (found for _, _, found in sorted(ranked, key=lambda each: each[:2])[:2])
    else:
        yield Reason(code=_FALLBACK.get(before) or ("not-connected" if budget is None else "too-little"))


_ONLY_TOO_LITTLE = ("in-a-row", "shared", "metal", "legs-thin", "path", "pack-weak")
_TOO_MUCH = ("too-hot", "hot", "nearly-shorted", "fuse-tripped")
_FALLBACK = {
    "too-hot": "too-much", "hot": "too-much", "idle": "pack-idle",
    "nearly-shorted": "pack-heavy", "fuse-tripped": "pack-heavy",
}  # fmt: skip


def _mended(part: Part, reading: Reading, change: Callable[[Network], Network]) -> bool:
    """Whether a change lets a part come nearer to what it is for."""
    point = _point_of(change(reading.network), reading)
    return point is not None and merit_of(part, state_of(part, point)) > merit_of(part, state_of(part, reading.point))


def _point_of(network: Network, reading: Reading) -> OperatingPoint | None:
    """Solve a changed network, from where the reading came to rest; a change that can't be solved explains nothing."""
    try:
        return operating_point(network, start=reading.point.potentials)
    except SolverError:
        return None
