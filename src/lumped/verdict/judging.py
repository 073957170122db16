"""Judging a sculpture: each part's states over all readings, what they hang on, and why."""

from collections.abc import Callable, Iterable

import numpy as np

from lumped.chemistry.electrodes import plating_charge
from lumped.quantities import rounded_text, significant
from lumped.reference import handbook
from lumped.sculpt import Effort, Nearness, Part, Run, Sculpture
from lumped.texts import say
from lumped.verdict.budget import Budget, budget_of
from lumped.verdict.cautions import cautions_for
from lumped.verdict.readings import Reading, Readings, read_all_ways
from lumped.verdict.reasons import Reason, reasons_for
from lumped.verdict.states import STATES, order_of, state_of
from lumped.verdict.suspects import node_words
from lumped.verdict.verdicts import Flip, PartVerdict, Span, Verdict

__all__ = ["judge"]

_LESSON = 2400.0  # s; forty minutes
_PROTRUDES = 1e-3  # m; a leg that is that much longer than what dough holds of it comes out again


def judge(sculpture: Sculpture, effort: Effort, report: Callable[[float], None] = lambda share: None) -> Verdict:
    """Judge a sculpture.

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
    Verdict

    Raises
    ------
    SolverError
        If the field or the circuit does not reach its accuracy.
    """
    readings = read_all_ways(sculpture, effort, report)
    budget = budget_of(sculpture, readings.drawn)
    parts = tuple(_part_verdict(part, sculpture, readings, budget) for part in sculpture.parts)
    return Verdict(
        sculpture=sculpture, parts=parts, budget=budget if len(sculpture.packs) == 1 else None,
        findings=tuple(_findings(sculpture, readings)),
        cautions=cautions_for(sculpture, parts), readings=readings,
    )  # fmt: skip


def _part_verdict(part: Part, sculpture: Sculpture, readings: Readings, budget: Budget | None) -> PartVerdict:
    drawn, ends = readings.drawn, readings.ends
    state = state_of(part, drawn.point)
    between = {order_of(part, state_of(part, each.point)) for each in (drawn, *ends)}
    states = STATES[part.kind][min(between) : max(between) + 1]
    if "too-hot" not in states:
        states = states[::-1]
    sign = -1 if part.kind == "pack" else 1

    def span(figure: Callable[[Reading], float]) -> Span:
        return Span.of(figure(drawn), map(figure, ends))

    flips = tuple(
        Flip(what=_what_flips(flip, sculpture), state=other, touching=_is_touching(flip))
        for flip in readings.flips
        if (other := state_of(part, flip.point)) not in states
    )
    return PartVerdict(
        part=part, state=state, states=states,
        voltage=span(lambda each: each.point.voltages[part.name]),
        current=span(lambda each: sign * each.point.currents[part.name]),
        speed=span(lambda each: each.point.speed(part.name)),
        flips=flips, reasons=reasons_for(part, sculpture, drawn, budget) or tuple(_why_a_range(part, states, readings)),
    )  # fmt: skip


def _why_a_range(part: Part, states: tuple[str, ...], readings: Readings) -> Iterable[Reason]:
    """Say on what it hangs which of several states a part is in."""
    if len(states) == 1 or part.kind in ("pack", "switch"):
        return

    def width(axis: str) -> float:
        alone = [each for each in readings.ends if abs(getattr(each.end, axis)) == 1.0]
        currents = [abs(each.point.currents[part.name]) for each in alone]
        return max(currents) - min(currents)

    widest = max(("dough", "price", "parts"), key=width)
    safe = "too-hot" in states and states[0] != "too-hot"
    yield Reason(code=f"range-{widest}-hot" if safe else f"range-{widest}")


def _is_touching(flip: Reading) -> bool:
    """Whether a flipped reading is the one in which things touch."""
    return flip.metals_meet or not flip.flipped[0].touching


def _what_flips(flip: Reading, sculpture: Sculpture) -> str:
    if flip.metals_meet:
        return " and ".join(
            say(
                "touch-pair",
                first=node_words(sculpture, touch.first), second=node_words(sculpture, touch.second),
            )
            for touch in flip.solved.settled.touches if touch.unsure
        )  # fmt: skip
    return " and ".join(_pair_words(pair, sculpture) for pair in flip.flipped)


def _pair_words(pair: Nearness, sculpture: Sculpture) -> str:
    first, second = (sculpture.lumps[k].name for k in (pair.first, pair.second))
    return say("what-lumps", first=first, second=second)


def _findings(sculpture: Sculpture, readings: Readings) -> Iterable[str]:
    """What is worth knowing of the sculpture as a whole."""
    solved = readings.drawn.solved
    for touch in solved.settled.touches:
        key = "finding-joined" if touch.outside else "finding-metal-touch"
        yield say(key, first=node_words(sculpture, touch.first), second=node_words(sculpture, touch.second))
    if len(sculpture.packs) > 1:
        yield say("finding-packs", count=len(sculpture.packs))
    if not sculpture.packs:
        yield say("finding-no-pack")
    for pair in readings.unsure:
        gap = f"{abs(1e3 * pair.gap.distance):.1f}"
        first, second = (sculpture.lumps[k].name for k in (pair.first, pair.second))
        yield say("finding-near" if not pair.touching else "finding-grazing", first=first, second=second, gap=gap)
    yield from _findings_of_legs(sculpture, solved.settled.runs)
    yield from _findings_of_plating(sculpture, readings.drawn)
    for name in dict.fromkeys(lump.dough for lump in sculpture.lumps):
        resistivity = sculpture.doughs[name].resistivity
        if sculpture.doughs[name].how == "unknown":
            low, high = rounded_text(resistivity.low), rounded_text(resistivity.high)
            yield say("finding-unknown", dough=name, low=low, high=high)
        elif sculpture.doughs[name].how == "recipe":
            yield say("finding-unmeasured", dough=name, interval=resistivity.text())


def _findings_of_legs(sculpture: Sculpture, runs: Iterable[Run]) -> Iterable[str]:
    """Legs that miss the dough, come out of it again, or will not hold."""
    held: dict[str, float] = {}
    for run in runs:
        held[run.leg.node] = held.get(run.leg.node, 0.0) + run.length
    holding = handbook().value("hands", "leg-depth", "holding_depth").mean
    for leg in sculpture.legs:
        if leg.entry is None or leg.tip is None:
            continue
        depth, inside = float(np.linalg.norm(leg.tip - leg.entry)), held.get(leg.node, 0.0)
        words = {"leg": node_words(sculpture, leg.node), "inside": f"{1e3 * inside:.0f}"}
        if inside == 0:
            yield say("finding-leg-misses", leg=words["leg"])
        elif inside < depth - _PROTRUDES:
            yield say("finding-leg-through", **words, depth=f"{1e3 * depth:.0f}")
        elif inside < holding:
            yield say("finding-leg-shallow", **words)


def _findings_of_plating(sculpture: Sculpture, reading: Reading) -> Iterable[str]:
    """Legs whose plating the current eats away within a lesson: where it goes from metal into dough, metal goes too."""
    eaten = []
    for run in reading.solved.settled.runs:
        wire, current = run.leg.gauge, reading.point.currents[run.name]
        if wire.plating == wire.core or current <= 0:
            continue
        charge = plating_charge(wire.plating, wire.plating_thickness, wire.wetted_area(run.length))
        if charge < current * _LESSON:
            minutes = f"{max(1.0, significant(charge / current / 60, 1)):.0f}"
            leg, plating = node_words(sculpture, run.leg.node), handbook().name("metals", wire.plating)
            eaten.append(say("plating-eaten", leg=leg, minutes=minutes, plating=plating))
    if eaten:
        yield say("finding-plating", eaten=", ".join(eaten))
