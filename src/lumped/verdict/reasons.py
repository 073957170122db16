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
from lumped.verdict.suspects import bridge_words, leg_words, suspects_for
from lumped.verdict.wiring import joining_of

__all__ = ["Reason", "reasons_for"]

_GAIN = 1.3  # a change that raises the current by less explains nothing
_FAR_MORE = 10.0  # a gain of the current by this factor tells, even if the part shows nothing of it
_BACKWARDS = -0.3  # V; more than leaks and galvanic volts put across a lamp
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
    """Causes found by computing without them: the best decisive one alone, else the two that explain most.

    What lifts the state comes before what only lifts the current; among equals a teacher's order is kept. A change that
    would burn the part is no mend, but for a lamp that only has to be turned as well.
    """
    before, current = state_of(part, reading.point), abs(reading.point.currents[part.name])
    wants_more = before not in _TOO_MUCH
    decisive: list[tuple[bool, int, Reason]] = []
    ranked: list[tuple[int, float, Reason]] = []
    for suspect in suspects_for(part, sculpture, reading, budget):
        point = _point_of(suspect.mended(), reading)
        if point is None or (not wants_more and suspect.code in _ONLY_TOO_LITTLE):
            continue
        after, gain = state_of(part, point), abs(point.currents[part.name]) / max(current, _NOTHING)
        burns = wants_more and after in _TOO_MUCH
        if burns and suspect.code != "wrong-way":
            continue
        found = Reason(code=f"{suspect.code}-hot" if burns else suspect.code, words=suspect.words, would_be=after)
        better = merit_of(part, after) - merit_of(part, before)
        eased = gain > _FAR_MORE if wants_more else gain < 1 / _GAIN
        if suspect.decisive and (better > 0 or eased):
            decisive.append((burns, -better, found))
        elif better > 0 or (wants_more and gain > _GAIN and current > _NOTHING):
            ranked.append((-better, 0.0 if better > 0 else -gain, found))
    if decisive:
        yield min(decisive, key=lambda each: each[:2])[2]
    elif ranked and part.kind != "pack":
        yield from (found for _, _, found in sorted(ranked, key=lambda each: each[:2])[:2])
    else:
        yield _last_resort(part, sculpture, reading, before)


def _last_resort(part: Part, sculpture: Sculpture, reading: Reading, before: str) -> Reason:
    """What can be said where no single change helps: how the part is joined, or that it takes several changes."""
    if before in _FALLBACK:
        return Reason(code=_FALLBACK[before])
    joining = joining_of(part, sculpture, reading)
    if part.kind == "lamp" and reading.point.voltages[part.name] < _BACKWARDS:
        return Reason(code="wrong-way", words={"leg": leg_words(part, part.legs[0].name)})
    blocking = [name for name in _doughs_at(part, sculpture, reading) if not sculpture.doughs[name].conducts]
    if blocking:
        return Reason(code="dough-blocks", words={"dough": blocking[0]})
    if joining == "legs-joined":
        lumps = bridge_words(part, reading)
        return Reason(code="same-lump", words={"lumps": lumps}) if lumps else Reason(code="same-metal")
    if joining == "pack-joined":
        return Reason(code="pack-in-one")
    return Reason(code="not-connected" if joining == "apart" else "too-little")


def _doughs_at(part: Part, sculpture: Sculpture, reading: Reading) -> Iterator[str]:
    """Doughs that the legs of a part are in."""
    legs = {leg.node for leg in part.legs}
    for run in reading.solved.settled.runs:
        if run.leg.node in legs:
            yield from (sculpture.lump(name).dough for name in run.lumps)


_ONLY_TOO_LITTLE = ("in-a-row", "shared", "metal", "legs-thin", "path", "pack-weak")
_TOO_MUCH = ("too-hot", "hot", "nearly-shorted", "fuse-tripped")
_FALLBACK = {
    "too-hot": "too-much", "hot": "too-much", "idle": "pack-idle",
    "nearly-shorted": "pack-heavy", "fuse-tripped": "pack-heavy",
}  # fmt: skip


def _mended(part: Part, reading: Reading, change: Callable[[Network], Network]) -> bool:
    """Whether a change lets a part come nearer to what it is for, or lets far more current through it."""
    point = _point_of(change(reading.network), reading)
    if point is None:
        return False
    better = merit_of(part, state_of(part, point)) > merit_of(part, state_of(part, reading.point))
    before = max(abs(reading.point.currents[part.name]), _NOTHING)
    return better or abs(point.currents[part.name]) > _FAR_MORE * before


def _point_of(network: Network, reading: Reading) -> OperatingPoint | None:
    """Solve a changed network, from where the reading came to rest; a change that can't be solved explains nothing."""
    try:
        return operating_point(network, start=reading.point.potentials)
    except SolverError:
        return None
