"""What a picture needs to know of a verdict: for each part a word and how lively it is; lumps that nearly touch."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from lumped.sculpt import Nearness, Part, Sculpture
from lumped.texts import say
from lumped.verdict import PartVerdict, Reading, Verdict

__all__ = ["Remark", "View", "view_of"]

_GLOW = {"barely-lit": 0.2, "dim": 0.5, "bright": 1.0, "too-hot": 1.0}
_TURN = {"straining": 0.4, "turning": 1.0}


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark:
    """What is said of a part, and how lively it is drawn: 0 at rest, 1 at its best. [1]"""

    words: str
    state: str
    lively: float


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """What a picture shows.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    remarks : mapping of str to Remark
        What each part does, by name; may lack parts.
    near : tuple of Nearness
        Pairs of lumps of which a hand can't tell whether they touch.
    reading : Reading or None
        The field as drawn, for level lines.
    """

    sculpture: Sculpture
    remarks: Mapping[str, Remark] = field(default_factory=dict)
    near: tuple[Nearness, ...] = ()
    reading: Reading | None = None


def view_of(verdict: Verdict | View) -> View:
    """Take from a verdict what a picture shows; a view is given back as it is."""
    if isinstance(verdict, View):
        return verdict
    return View(
        sculpture=verdict.sculpture,
        remarks={each.part.name: _remark(each) for each in verdict.parts},
        near=verdict.readings.unsure,
        reading=verdict.readings.drawn,
    )


def _remark(each: PartVerdict) -> Remark:
    """The states in few words: the range, and what it flips to."""
    words = [_word(each.part, each.states[0])]
    if len(each.states) > 1:
        words = [say("state-range", one=words[0], other=_word(each.part, each.states[-1]))]
    for flip in each.flips:
        other = _word(each.part, flip.state)
        if other not in words:
            words.append(other)
    lively = (_GLOW | _TURN).get(each.state, 0.0)
    return Remark(words=f" {say('picture-or')} ".join(words), state=each.state, lively=lively)


def _word(part: Part, state: str) -> str:
    return say(f"state-{part.kind}-{state}")
