"""The verdict as slips of paper: one for each part, its numbers folded, and what is worth knowing below."""

from collections.abc import Mapping, Sequence
from typing import Any

from nicegui import html, ui
from nicegui.element import Element
from nicegui.events import GenericEventArguments

from lumped.texts import say
from lumped.web.marks import mark
from lumped.web.words import Words

__all__ = ["Slips"]

_TOGGLED = "(event) => emit(event.target.open)"
_NO_BREAK = "\u00a0"
_ALARMS = ("nearly-shorted", "fuse-tripped", "too-hot")


class Slips:
    """All slips of one page; what was unfolded stays so when the answer changes.

    Parameters
    ----------
    place : Element
        Where they lie.
    """

    def __init__(self, place: Element) -> None:
        self._place = place
        self._open: set[str] = set()
        self._slips: dict[str, Element] = {}
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
        self._unfold_cautions(verdict)
        self._place.clear()
        with self._place:
            self._slips = {each["part"]: self._slip(each, keys[each["part"]]) for each in verdict["parts"]}
            with html.section().classes("slip folds"):
                self._notes("careful", say("web-careful"), verdict["cautions"])
                self._notes("findings", say("web-findings"), verdict["findings"])
                if verdict["budget"]:
                    self._budget(verdict["budget"])
                self._notes("computed", say("web-computed"), verdict["how_computed"])

    def clear(self) -> None:
        """Show nothing."""
        self._place.clear()
        self._slips = {}

    def touch(self, part: str) -> None:
        """Show the slip of a part that was touched."""
        for name, slip in self._slips.items():
            slip.classes(add="touched" if name == part else None, remove=None if name == part else "touched")
        if part in self._slips:
            ui.run_javascript(
                f"getHtmlElement({self._slips[part].id})?.scrollIntoView({{behavior: 'smooth', block: 'nearest'}})"
            )

    def _unfold_cautions(self, verdict: Mapping[str, Any]) -> None:
        """Unfold the cautions when something begins to get hot."""
        alarmed = any(each["state"] in _ALARMS for each in verdict["parts"])
        if alarmed and not self._alarmed:
            self._open.add("careful")
        self._alarmed = alarmed

    def _slip(self, each: Mapping[str, Any], key: str) -> Element:
        slip: Element = html.section().classes("slip").mark(f"slip-{each['part']}")
        with slip:
            slip.props.update({"data-slip": each["part"], "aria-label": each["part"]})
            with html.div().classes("slip-head"):
                ui.html(mark(each["kind"], key, each["state"]), sanitize=False)
                with html.div():
                    Words("p", f"{each['part']} ({each['title']})", "name")
                    Words("p", each["headline"], "state")
                    Words("p", _figures(each), "figures")
            if each["reasons"]:
                with html.ul().classes("why"):
                    for reason in each["reasons"]:
                        Words("li", reason["text"])
            self._numbers(each)
        return slip

    def _numbers(self, each: Mapping[str, Any]) -> None:
        with self._folded(f"numbers {each['part']}", say("web-numbers")), html.dl().classes("numbers"):
            for name, shown in each["shown"].items():
                Words("dt", say(f"web-number-{name}"))
                Words("dd", say("web-number-as-drawn", **shown))
            for flip in each["depends_on"]:
                state = say(f"state-{each['kind']}-{flip['state']}")
                key = "web-hangs-touching" if flip["if_touching"] else "web-hangs-apart"
                Words("dt", say("web-number-hangs"))
                Words("dd", say(key, state=state, what=flip["what"]))

    def _budget(self, budget: Mapping[str, float]) -> None:
        with self._folded("volts", say("web-volts")), html.dl().classes("numbers"):
            for name in ("given", "parts", "metal", "dough_leads", "dough_path", "pack"):
                Words("dt", say(f"web-volts-{name}"))
                Words("dd", f"{budget[f'{name}_V']:.1f} V")

    def _notes(self, name: str, heading: str, notes: Sequence[str]) -> None:
        if not notes:
            return
        with self._folded(name, heading).classes(name), html.ul().classes("notes"):
            for note in notes:
                Words("li", note)

    def _folded(self, name: str, heading: str) -> Element:
        """Something folded under its heading, unfolded if it was so before."""
        folded: Element = html.details()
        if name in self._open:
            folded.props("open")
        folded.on("toggle", lambda event: self._remember(name, event), js_handler=_TOGGLED)
        with folded:
            Words("summary", heading)
        return folded

    def _remember(self, name: str, event: GenericEventArguments) -> None:
        if event.args:
            self._open.add(name)
        else:
            self._open.discard(name)


def _figures(each: Mapping[str, Any]) -> str:
    """Figures in one line; where it is too short it breaks between them only."""
    shown = {name: figure["text"].replace(" ", _NO_BREAK) for name, figure in each["shown"].items()}
    words = say("web-figures", volts=shown["volts"], current=shown["current"])
    turning = "speed" in shown and each["speed_rad_per_s"]["high"] > 0
    return f"{words}, {say('web-speed', speed=shown['speed'])}" if turning else words
