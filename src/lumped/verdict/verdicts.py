"""The verdict as an object: for each part a state in words and numbers, with its uncertainty and its reasons."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from lumped.chemistry.electrodes import electrode_provenance
from lumped.quantities import Provenance, significant
from lumped.reference import handbook
from lumped.sculpt import Part, Sculpture
from lumped.texts import say
from lumped.verdict.budget import Budget
from lumped.verdict.readings import Readings
from lumped.verdict.reasons import Reason

__all__ = ["Flip", "PartVerdict", "Span", "Verdict", "interval_text"]

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

    def figures(self, *, scale: float = 1.0, digits: int = 1) -> dict[str, str]:
        """Write mean, low and high for people, each times a scale."""
        ends = {"mean": self.mean, "low": self.low, "high": self.high}
        return {end: _figure(scale * each, digits) for end, each in ends.items()}

    def text(self, *, scale: float = 1.0, digits: int = 1) -> str:
        """Write it for people, times a scale; the interval is left out where it rounds to the figure."""
        return interval_text(self.figures(scale=scale, digits=digits))

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
        if self.part.kind != "motor" or not any((self.speed.mean, self.speed.low, self.speed.high)):
            return self.headline
        return say("motor-turns", does=self.headline, turns=interval_text(self.turns))

    @property
    def turns(self) -> dict[str, str]:
        """Turns a minute, either way, as people read them: two digits, more are not known."""
        mean, *ends = (_PER_MINUTE * abs(each) for each in (self.speed.mean, self.speed.low, self.speed.high))
        turns = {"mean": mean, "low": min(mean, *ends), "high": max(mean, *ends)}
        return {end: f"{significant(each, 2):,.0f}" for end, each in turns.items()}

    @property
    def figures(self) -> dict[str, dict[str, str]]:
        """Volts, milliamperes and of a motor turns a minute, each as mean, low and high as people read them."""
        found = {"volts": self.voltage.figures(), "current": self.current.figures(scale=1e3)}
        return found | {"speed": self.turns} if self.part.kind == "motor" else found

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "part": self.part.name, "title": self.part.title, "kind": self.part.kind,
            "state": self.state, "states": list(self.states), "headline": self.headline, "does": self.does,
            "shown": {name: figure | {"text": interval_text(figure)} for name, figure in self.figures.items()},
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
        Where the pack's volts go, as drawn; None if there is not exactly one pack, or no current.
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
    def provenance(self) -> Provenance:
        """Where the figures behind it come from: of the doughs, of the metals in them, and of the parts."""
        sculpture, book = self.sculpture, handbook()
        doughs = (sculpture.doughs[lump.dough].resistivity.provenance for lump in sculpture.lumps)
        metals = {run.leg.gauge.plating for run in self.readings.drawn.solved.settled.runs}
        rows = (row for part in sculpture.parts for row in book.entry(part.table, part.key).rows.values())
        return Provenance.of([*doughs, *map(electrode_provenance, metals), *(row.value.provenance for row in rows)])

    @property
    def sources(self) -> tuple[str, ...]:
        """The sources that this verdict used, in short."""
        return tuple(handbook().citations(self.provenance))

    @property
    def how_computed(self) -> tuple[str, ...]:
        """How it was computed and on whose figures, in a few sentences."""
        ports, spread = self.readings.drawn.solved.ports, self.readings.grid_spread
        said = [say("how-cells", pitch=f"{1e3 * ports.pitch:.1f}", count=ports.unknowns)]
        if spread is not None:
            said.append(say("how-spread", spread=f"{100 * spread:.1f}"))
        said.append(say("how-ends"))
        status = self.provenance.status.value
        if self.sources:
            said.append(say("how-sources", sources="; ".join(self.sources), status=status))
        else:
            said.append(say("how-status", status=status))
        return tuple(said)

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
            "weakest_status": self.provenance.status.value, "how_computed": list(self.how_computed),
            "computed": {
                "pitch_m": ports.pitch, "unknowns": ports.unknowns, "port_error": ports.port_error,
                "grid_spread": self.readings.grid_spread,
                "power_error": self.readings.drawn.point.power_error,
            },
        }  # fmt: skip


def interval_text(shown: Mapping[str, str]) -> str:
    """Write a figure with its interval, which is left out where it rounds to the figure.

    Examples
    --------
    >>> interval_text({"mean": "6.6", "low": "1.2", "high": "18.0"})
    '6.6 (1.2 to 18.0)'
    """
    return shown["mean"] if len(set(shown.values())) == 1 else say("interval", **shown)


def _figure(number: float, digits: int) -> str:
    """Write a figure with some decimals, but no more than three digits of which a hand could measure."""
    return f"{significant(number, 3):z,.{digits if abs(number) < 100 else 0}f}".replace("-", "−")
