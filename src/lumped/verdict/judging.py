"""The verdict on a sculpture: for each part a state, how surely, and why."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

from lumped.quantities import Provenance, significant
from lumped.reference import handbook
from lumped.sculpt import Effort, Nearness, Part, Sculpture
from lumped.texts import say
from lumped.verdict.budget import Budget, budget_of
from lumped.verdict.cautions import cautions_for
from lumped.verdict.readings import Reading, Readings, read_all_ways
from lumped.verdict.reasons import Reason, reasons_for
from lumped.verdict.states import STATES, order_of, state_of
from lumped.verdict.suspects import node_words

__all__ = ["Flip", "PartVerdict", "Span", "Verdict", "judge"]

_PER_MINUTE = 60 / 6.283185307179586  # turns a minute for one radian a second


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A figure as drawn, and its least and greatest over all readings at the ends of what is unknown."""

    mean: float
    low: float
    high: float

    @classmethod
    def of(cls, drawn: float, others: Iterable[float]) -> "Span":
        """Gather a figure over readings."""
        figures = [drawn, *others]
        return cls(mean=drawn, low=min(figures), high=max(figures))

    def text(self, *, scale: float = 1.0, digits: int = 1) -> str:
        """Write it for people, times a scale; the interval is left out where it rounds to the figure."""
        shown, low, high = (
            f"{scale * each:z.{digits}f}".replace("-", "−") for each in (self.mean, self.low, self.high)
        )
        return shown if low == high == shown else say("interval", mean=shown, low=low, high=high)

    def as_dict(self) -> dict[str, float]:
        """Give it as JSON shows it."""
        return {"mean": self.mean, "low": self.low, "high": self.high}


@dataclass(frozen=True, slots=True, kw_only=True)
class Flip:
    """A part whose state hangs on something that a hand can't promise.

    Parameters
    ----------
    what : str
        What is uncertain: "“A” and “B” touch".
    state : str
        State of the part in that case; it differs from the state as drawn.
    touching : bool
        Whether the other case is the touching one.
    """

    what: str
    state: str
    touching: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class PartVerdict:
    """What one part does.

    Parameters
    ----------
    part : Part
        The part.
    state : str
        As drawn, at the middle of what is unknown.
    states : tuple of str
        All states between the ends, best first; from least to most if the most is too much.
    voltage, current, speed : Span
        Across it, through it (plus leg to minus leg; of a pack: out of the red wire), and of a motor. [V, A, rad/s]
    flips : tuple of Flip
        What would change its state and can't be told by hand.
    reasons : tuple of Reason
        Why it does not do what it is for; empty if it does.
    """

    part: Part
    state: str
    states: tuple[str, ...]
    voltage: Span
    current: Span
    speed: Span
    flips: tuple[Flip, ...]
    reasons: tuple[Reason, ...]

    @property
    def headline(self) -> str:
        """The state in words, with its uncertainty: "bright to dim", "bright if … stay apart, dark if they touch"."""
        words = [say(f"state-{self.part.kind}-{state}") for state in self.states]
        head = words[0] if len(words) == 1 else say("state-range", one=words[0], other=words[-1])
        for flip in self.flips:
            other = say(f"state-{self.part.kind}-{flip.state}")
            key = "state-if-touching" if flip.touching else "state-if-apart"
            head = say(key, head=head, what=flip.what, other=other)
        return head

    @property
    def does(self) -> str:
        """The headline, and of a motor that turns how fast, with its interval."""
        if self.part.kind != "motor" or self.speed.high == 0:
            return self.headline
        turns = (_PER_MINUTE * abs(each) for each in (self.speed.mean, self.speed.low, self.speed.high))
        mean, low, high = (f"{significant(each, 2):,.0f}" for each in turns)
        return say("motor-turns", does=self.headline, mean=mean, low=low, high=high)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "part": self.part.name, "title": self.part.title, "kind": self.part.kind,
            "state": self.state, "states": list(self.states), "headline": self.headline, "does": self.does,
            "voltage_V": self.voltage.as_dict(), "current_A": self.current.as_dict(),
            "speed_rad_per_s": self.speed.as_dict() if self.part.kind == "motor" else None,
            "depends_on": [
                {"what": flip.what, "state": flip.state, "if_touching": flip.touching} for flip in self.flips
            ],
            "reasons": [
                {"code": reason.code, "text": str(reason), "would_be": reason.would_be or None}
                for reason in self.reasons
            ],
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """The verdict on a sculpture.

    Parameters
    ----------
    sculpture : Sculpture
        What was judged.
    parts : tuple of PartVerdict
        One for each part, in the file's order.
    budget : Budget or None
        Where the pack's volts go, as drawn.
    findings : tuple of str
        What is worth knowing of the sculpture as a whole.
    cautions : tuple of str
        What to be careful with.
    readings : Readings
        The computations behind it.
    """

    sculpture: Sculpture
    parts: tuple[PartVerdict, ...]
    budget: Budget | None
    findings: tuple[str, ...]
    cautions: tuple[str, ...]
    readings: Readings

    @property
    def sources(self) -> tuple[str, ...]:
        """The sources that this verdict used, in short."""
        doughs = [self.sculpture.doughs[lump.dough] for lump in self.sculpture.lumps]
        provenance = Provenance.of(dough.resistivity.provenance for dough in doughs)
        return tuple(handbook().citations(provenance))

    @property
    def why(self) -> tuple[tuple[str, str], ...]:
        """Each reason once, with the names of the parts that it holds for."""
        found: dict[str, list[str]] = {}
        for each in self.parts:
            for reason in each.reasons:
                found.setdefault(str(reason), []).append(each.part.name)
        return tuple((", ".join(names), text) for text, names in found.items())

    def part(self, name: str) -> PartVerdict:
        """Give the verdict on one part."""
        return next(each for each in self.parts if each.part.name == name)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        ports = self.readings.drawn.solved.ports
        return {
            "kind": "verdict", "schema": 1, "title": self.sculpture.title, "invented": self.sculpture.invented,
            "parts": [each.as_dict() for each in self.parts],
            "budget": self.budget.as_dict() if self.budget else None,
            "doughs": {name: dough.resistivity.as_dict() for name, dough in self.sculpture.doughs.items()},
            "findings": list(self.findings), "cautions": list(self.cautions), "sources": list(self.sources),
            "computed": {
                "pitch_m": ports.pitch, "unknowns": ports.unknowns, "port_error": ports.port_error,
                "grid_spread": self.readings.grid_spread,
                "power_error": self.readings.drawn.point.power_error,
            },
        }  # fmt: skip


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
