"""What may be the trouble, and the sculpture without it."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial

from lumped.circuit import Network, Pack, TrippedPack
from lumped.quantities import rounded_text
from lumped.sculpt import Part, Sculpture
from lumped.texts import say
from lumped.verdict import changes
from lumped.verdict.budget import Budget
from lumped.verdict.readings import Reading

__all__ = ["Suspect", "bridge_words", "leg_words", "node_words", "suspects_for"]

_WORTH_A_WORD = 0.05  # of the pack's volts


@dataclass(frozen=True, slots=True, kw_only=True)
class Suspect:
    """A possible cause.

    Parameters
    ----------
    code : str
        Which cause.
    words : mapping of str to str
        What fills its sentence.
    mended : callable
        Gives the network without it.
    decisive : bool
        Whether it is the whole story once mending it helps.
    """

    code: str
    mended: Callable[[], Network]
    words: Mapping[str, str] = field(default_factory=dict)
    decisive: bool = False


def suspects_for(part: Part, sculpture: Sculpture, reading: Reading, budget: Budget | None) -> Iterator[Suspect]:
    """List what may keep a part from doing what it is for, in the order in which a teacher would look.

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

    Yields
    ------
    Suspect
    """
    yield from _mistakes(part, sculpture, reading)
    yield from _company(part, sculpture, reading.network)
    if budget is not None:
        yield from _spenders(reading, budget)
    given = sum(law.emf for law in reading.point.laws.values() if isinstance(law, Pack | TrippedPack))
    fresh = partial(changes.with_fresh_packs, sculpture, reading.network)
    yield Suspect(code="pack-weak", words={"given": f"{given:.1f}"}, mended=fresh)


def _mistakes(part: Part, sculpture: Sculpture, reading: Reading) -> Iterator[Suspect]:
    """What somebody would put right at once."""
    network = reading.network
    if part.kind == "lamp" and reading.point.voltages[part.name] < 0:
        leg = leg_words(part, part.legs[0].name)
        turned = partial(changes.with_turned, network, part)
        yield Suspect(code="wrong-way", words={"leg": leg}, mended=turned, decisive=True)
    if reading.solved.settled.touches:
        apart = partial(changes.without_touches, network)
        outside = all(touch.outside for touch in reading.solved.settled.touches)
        yield Suspect(
            code="metal-outside" if outside else "metal-touch",
            words={"pairs": touch_words(sculpture, reading)},
            mended=apart,
            decisive=True,
        )
    if len(sculpture.packs) > 1:
        names = " and ".join(f"“{each.name}”" for each in sculpture.packs)
        kept = part if part.kind == "pack" else sculpture.packs[0]
        one = partial(changes.without_parts, network, [each for each in sculpture.packs if each is not kept])
        yield Suspect(code="two-packs", words={"packs": names}, mended=one, decisive=True)
    if lumps := bridge_words(part, reading):
        cut = partial(changes.without_bridge, reading, part)
        yield Suspect(code="bridged", words={"lumps": lumps}, mended=cut, decisive=True)
    if any(each.state == "tired" for each in sculpture.packs):
        fresh = partial(changes.with_fresh_packs, sculpture, network)
        yield Suspect(code="pack-tired", mended=fresh, decisive=True)


def _company(part: Part, sculpture: Sculpture, network: Network) -> Iterator[Suspect]:
    """Other parts in the same row, or beside it on the same pack."""
    for switch in (each for each in sculpture.parts if each.kind == "switch" and each is not part):
        gone = partial(changes.without_parts, network, [switch])
        yield Suspect(code="bypassed", words={"switch": switch.name}, mended=gone, decisive=True)
    others = [each for each in sculpture.parts if each.kind in ("lamp", "motor", "resistor") and each is not part]
    if others:
        words = {"others": " and ".join(f"“{each.name}”" for each in others)}
        yield Suspect(code="in-a-row", words=words, mended=partial(changes.with_wired, network, others))
        yield Suspect(code="shared", words=words, mended=partial(changes.without_parts, network, others))


def _spenders(reading: Reading, budget: Budget) -> Iterator[Suspect]:
    """Where the volts go, as far as they are worth a word."""
    given, worth_it = f"{budget.given:.1f}", _WORTH_A_WORD * budget.given
    if budget.metal > worth_it:
        yield Suspect(
            code="metal",
            words={"given": given, "volts": f"{budget.metal:.1f}"},
            mended=partial(changes.without_metal_price, reading),
        )
    if budget.metal + budget.dough_leads > worth_it:
        yield Suspect(
            code="legs-thin",
            words={"ohms": rounded_text(budget.dough_leads / budget.current), "volts": f"{budget.dough_leads:.1f}"},
            mended=partial(changes.with_nails, reading),
        )
    if budget.dough_path > worth_it:
        yield Suspect(
            code="path",
            words={"ohms": rounded_text(budget.dough_path / budget.current), "volts": f"{budget.dough_path:.1f}"},
            mended=partial(changes.with_path_shortened, reading),
        )


def bridge_words(part: Part, reading: Reading) -> str:
    """Name the lumps through which dough joins the two legs of a part; "" if none does."""
    runs = reading.solved.settled.runs
    plus = [run for run in runs if run.leg.node == part.legs[0].node]
    minus = [run for run in runs if run.leg.node == part.legs[1].node]
    shared = [(one, other) for one in plus for other in minus if one.body == other.body]
    names = dict.fromkeys(name for one, other in shared for name in (*one.lumps, *other.lumps))
    return " and ".join(f"“{name}”" for name in names)


def touch_words(sculpture: Sculpture, reading: Reading) -> str:
    """Name the metals that meet."""
    pairs = ((touch.first, touch.second) for touch in reading.solved.settled.touches)
    return ", ".join(
        say("touch-pair", first=node_words(sculpture, a), second=node_words(sculpture, b)) for a, b in pairs
    )


def node_words(sculpture: Sculpture, node: str) -> str:
    """Name a leg by its node: "the red wire of “pack”"."""
    part, leg = next((part, leg) for part in sculpture.parts for leg in part.legs if leg.node == node)
    return leg_words(part, leg.name)


def leg_words(part: Part, leg: str) -> str:
    """Name a leg as people do: "the long leg of “light”"."""
    return say(f"leg-{leg}", part=part.name)
