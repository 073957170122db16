"""The verdict as slips of paper: one for each part, and what is worth knowing below.

A slip stays where it lies when the answer changes, and only its words do: whoever is on it with finger, keyboard or
screen reader stays there.
"""

from collections.abc import Mapping, Sequence
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.outcomes import Outcome
from lumped.texts import say
from lumped.web.looks import reveal
from lumped.web.marks import mark
from lumped.web.seen import OnTakeBack, OnTap, Seen
from lumped.web.words import Words

__all__ = ["Slips"]

_NO_BREAK = "\u00a0"
_ALARMS = ("nearly-shorted", "fuse-tripped", "too-hot")
_BUDGET = ("given", "parts", "metal", "dough_leads", "dough_path", "pack")


class Slips:
    """All slips of one page.

    Parameters
    ----------
    place : Element
        Where they lie.
    on_tap, on_take_back : callable
        Told what a part was seen to do, and which note is taken back.
    """

    def __init__(self, place: Element, *, on_tap: OnTap, on_take_back: OnTakeBack) -> None:
        self._place, self._on_tap, self._on_take_back = place, on_tap, on_take_back
        self._slips: dict[tuple[str, str, str], _Slip] = {}
        self._choices: Mapping[str, Sequence[str]] = {}
        self._outcomes: Sequence[Outcome] = ()
        self._folds: _Folds | None = None
        self._alarmed = False

    def show(self, verdict: Mapping[str, Any], keys: Mapping[str, str]) -> None:
        """Show a verdict.

        Parameters
        ----------
        verdict : mapping
            As JSON shows it.
        keys : mapping of str to str
            Handbook key of each part, which colours its mark.
        """
        wanted = [(each["part"], each["kind"], each["title"]) for each in verdict["parts"]]
        if list(self._slips) != wanted or self._folds is None:
            self._lay(wanted)
        for slip, each in zip(self._slips.values(), verdict["parts"], strict=True):
            slip.show(each, keys[each["part"]])
        assert self._folds is not None
        self._folds.show(verdict)
        alarmed = any(each["state"] in _ALARMS for each in verdict["parts"])
        if alarmed and not self._alarmed:
            self._folds.unfold_cautions()
        self._alarmed = alarmed
        self._ask_what_happened()

    def _lay(self, wanted: Sequence[tuple[str, str, str]]) -> None:
        self.clear()
        with self._place:
            self._slips = {one: _Slip(*one) for one in wanted}
            self._folds = _Folds()

    def clear(self) -> None:
        """Show nothing."""
        self._place.clear()
        self._slips, self._folds, self._alarmed = {}, None, False

    def touch(self, part: str) -> None:
        """Show the slip of a part that was touched."""
        for (name, _, _), slip in self._slips.items():
            slip.place.classes(add="touched" if name == part else None, remove=None if name == part else "touched")
            if name == part:
                ui.run_javascript(
                    f"getHtmlElement({slip.place.id})?.scrollIntoView({{behavior: 'smooth', block: 'nearest'}})"
                )

    def know_choices(self, choices: Mapping[str, Sequence[str]]) -> None:
        """Ask what happened to each part of a kind that can be seen to do something."""
        self._choices = choices
        self._ask_what_happened()

    def _ask_what_happened(self) -> None:
        for (_, kind, _), slip in self._slips.items():
            if kind in self._choices and slip.seen is None:
                slip.ask(self._choices[kind], self._on_tap, self._on_take_back)
        self.show_outcomes(self._outcomes)

    def show_outcomes(self, outcomes: Sequence[Outcome]) -> None:
        """Show what was noted of the parts."""
        self._outcomes = outcomes
        for (part, _, _), slip in self._slips.items():
            if slip.seen is not None:
                slip.seen.show([each for each in outcomes if each.part == part])

    def tell(self, part: str, words: str, noted: str | None = None) -> None:
        """Say on a part's slip what came of a tap; `noted` is the id of the note that it made."""
        for (name, _, _), slip in self._slips.items():
            if slip.seen is not None and name == part:
                slip.seen.tell(words, noted)


class _Slip:
    """One part: its mark, what it does, why, its numbers, and the question what it really did."""

    def __init__(self, part: str, kind: str, title: str) -> None:
        self._part, self._kind = part, kind
        self.seen: Seen | None = None
        self._each: Mapping[str, Any] = {}
        self.place: Element = html.section().classes("slip").mark(f"slip-{part}")
        self.place.props.update({"data-slip": part, "aria-label": part})
        with self.place:
            with html.div().classes("slip-head"):
                self._mark = ui.html("", sanitize=False)
                with html.div():
                    Words("p", f"{part} ({title})", "name")
                    self._state = Words("p", "", "state")
                    self._figures = Words("p", "", "figures")
            self._why = html.ul().classes("why")
            with html.details():
                Words("summary", say("web-numbers"))
                self._numbers = html.dl().classes("numbers")

    def show(self, each: Mapping[str, Any], key: str) -> None:
        self._mark.set_content(mark(self._kind, key, each["state"]))
        self._state.tell(each["headline"])
        self._figures.tell(_figures(each))
        if each != self._each:
            self._tell_why(each)
            self._tell_numbers(each)
        self._each = each
        if self.seen is not None:
            self.seen.ask(each)

    def ask(self, choices: Sequence[str], on_tap: OnTap, on_take_back: OnTakeBack) -> None:
        with self.place:
            self.seen = Seen(self._part, self._kind, choices, on_tap=on_tap, on_take_back=on_take_back)
        self.seen.ask(self._each)

    def _tell_why(self, each: Mapping[str, Any]) -> None:
        self._why.clear()
        with self._why:
            for reason in each["reasons"]:
                Words("li", reason["text"])
        reveal(self._why, bool(each["reasons"]))

    def _tell_numbers(self, each: Mapping[str, Any]) -> None:
        self._numbers.clear()
        with self._numbers:
            for name, shown in each["shown"].items():
                Words("dt", say(f"web-number-{name}"))
                Words("dd", say("web-number-as-drawn", **shown))
            for flip in each["depends_on"]:
                state = say(f"state-{each['kind']}-{flip['state']}")
                key = "web-hangs-touching" if flip["if_touching"] else "web-hangs-apart"
                Words("dt", say("web-number-hangs"))
                Words("dd", say(key, state=state, what=flip["what"]))


class _Folds:
    """What is worth knowing, folded under its headings."""

    def __init__(self) -> None:
        self._folds: dict[str, tuple[Element, Element]] = {}
        headings = {
            "careful": say("web-careful"), "findings": say("web-findings"), "volts": say("web-volts"),
            "computed": say("web-computed"),
        }  # fmt: skip
        with html.section().classes("slip folds"):
            for name, heading in headings.items():
                with html.details().classes(name) as folded:
                    Words("summary", heading)
                    inside = html.dl().classes("numbers") if name == "volts" else html.ul().classes("notes")
                self._folds[name] = (folded, inside)

    def show(self, verdict: Mapping[str, Any]) -> None:
        self._tell("careful", verdict["cautions"])
        self._tell("findings", verdict["findings"])
        self._tell("computed", verdict["how_computed"])
        folded, inside = self._folds["volts"]
        reveal(folded, bool(verdict["budget"]))
        inside.clear()
        with inside:
            for name in _BUDGET if verdict["budget"] else ():
                Words("dt", say(f"web-volts-{name}"))
                Words("dd", f"{verdict['budget'][f'{name}_V']:.1f} V")

    def unfold_cautions(self) -> None:
        """Unfold the cautions: something begins to get hot."""
        folded = self._folds["careful"][0]
        folded.props("open")
        ui.run_javascript(f"const folded = getHtmlElement({folded.id}); if (folded) folded.open = true")

    def _tell(self, name: str, notes: Sequence[str]) -> None:
        folded, inside = self._folds[name]
        reveal(folded, bool(notes))
        inside.clear()
        with inside:
            for note in notes:
                Words("li", note)


def _figures(each: Mapping[str, Any]) -> str:
    """Figures in one line; where it is too short it breaks between them only."""
    shown = {name: figure["text"].replace(" ", _NO_BREAK) for name, figure in each["shown"].items()}
    words = say("web-figures", volts=shown["volts"], current=shown["current"])
    turning = "speed" in shown and each["speed_rad_per_s"]["high"] > 0
    return f"{words}, {say('web-speed', speed=shown['speed'])}" if turning else words
