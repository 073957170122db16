"""Judging a sculpture: each part's states over all readings, what they hang on, and why."""

from collections.abc import Callable, Iterable

from lumped.sculpt import Effort, Nearness, Part, Sculpture
from lumped.texts import say
from lumped.verdict.budget import Budget, budget_of
from lumped.verdict.cautions import cautions_for
from lumped.verdict.readings import Reading, Readings, read_all_ways
from lumped.verdict.reasons import reasons_for
from lumped.verdict.states import STATES, order_of, state_of
from lumped.verdict.suspects import node_words
from lumped.verdict.verdicts import Flip, PartVerdict, Span, Verdict

__all__ = ["judge"]


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
        sculpture=sculpture, parts=parts, budget=budget,
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
        flips=flips, reasons=reasons_for(part, sculpture, drawn, budget),
    )  # fmt: skip


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
    for pair in readings.pairs:
        if pair.unsure:
            gap = f"{abs(1e3 * pair.gap.distance):.1f}"
            first, second = (sculpture.lumps[k].name for k in (pair.first, pair.second))
            yield say("finding-near" if not pair.touching else "finding-grazing", first=first, second=second, gap=gap)
    runs = {run.leg.node for run in solved.settled.runs}
    for leg in sculpture.legs:
        if leg.entry is not None and leg.node not in runs:
            yield say("finding-leg-misses", leg=node_words(sculpture, leg.node))
    for name in dict.fromkeys(lump.dough for lump in sculpture.lumps):
        if sculpture.doughs[name].how != "measured":
            yield say("finding-unmeasured", dough=name, interval=sculpture.doughs[name].resistivity.text())
