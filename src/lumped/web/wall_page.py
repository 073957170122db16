"""Insulating enough? A wall of a dough beside a lamp, its thickness and its touch dragged."""

from collections.abc import Mapping
from functools import partial
from math import isnan, nan
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.asking import LAMPS_FIRST, Question, wall_lasts, walled
from lumped.errors import InputError
from lumped.quantities import read_number
from lumped.reference import handbook
from lumped.texts import say
from lumped.web.asked import Asked
from lumped.web.controls import choose, dial
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import sorry
from lumped.web.question import answer_page, tell_address
from lumped.web.quick import Quick
from lumped.web.sources import Sources
from lumped.web.wall_drawing import wall_drawing
from lumped.web.words import Words

__all__ = ["wall_page"]

_ENDS = {"thick": (1.0, 25.0, 0.5, 3.0), "touch": (0.5, 20.0, 0.5, 4.0)}  # least, most, step, at first; mm and cm²
_UNITS = {"thick": "mm", "touch": "cm²"}


async def wall_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of a wall."""
    await answer_page(kitchen, "wall", asked.query_parameters, _WallPage)


class _WallPage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked = asked
        taken = {name: _taken(asked.options.get(name, ""), name) for name in _ENDS}
        self._said = {name: number for name, (number, _) in taken.items()}
        lamps = handbook().keys("lamps")
        lamp = asked.options.get("lamp", "")
        self._lamp = lamp if lamp in lamps else LAMPS_FIRST
        no_lamp = "" if lamp in (*lamps, "") else say(
            "web-wall-no-lamp", text=lamp[:60], shown=handbook().name("lamps", self._lamp)
        )  # fmt: skip
        self._beyond: Element = html.div()
        with self._beyond:
            for words in (*(words for _, words in taken.values()), no_lamp):
                if words:
                    sorry(words, "beyond")
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        self._quick = Quick(walled, self._show)
        with html.div().classes("atlas"):
            with html.section().classes("slip does").mark("wall-found").props("aria-live=polite"):
                self._enough = Words("p", say("web-working"), "state")
                self._night = Words("p", say("web-wall-night-working"), "state night").mark("wall-night")
                self._drawing = ui.html("", sanitize=False).classes("wall-drawing")
                self._words = Words("p", "")
                self._numbers: Element = html.dl().classes("numbers")
                self._states = Words("p", "", "soft")
            with html.section().classes("slip wishes"):
                for name in _ENDS:
                    self._slider(name)
                options = [(key, handbook().name("lamps", key)) for key in lamps]
                choose(say("web-wall-lamp"), options, self._lamp, self._choose, classes="pick", marker="lamp")
            with html.section().classes("slip wide").mark("wall-lasts"):
                Words("h2", say("heading-wall-lasts"))
                self._later = Later(kitchen, wall_lasts, self._show_lasting, on_failure=self._forget_night)
                self._notes = html.ul().classes("notes")
                self._whence: Element = html.div()
        ui.timer(0.01, self._ask, once=True)

    def _slider(self, name: str) -> None:
        least, most, step, _ = _ENDS[name]
        dial(name, say(f"web-wall-{name}"), self._said[name], partial(self._move, name),
             ends=(least, most, step), unit=_UNITS[name])  # fmt: skip

    async def _move(self, name: str, value: str) -> None:
        self._said[name], _ = _taken(value, name)
        self._beyond.clear()
        await self._ask()

    async def _choose(self, lamp: str) -> None:
        self._lamp = lamp
        self._beyond.clear()
        await self._ask()

    async def _ask(self) -> None:
        said = self._said
        tell_address("wall", self._asked, thick=f"{said['thick']:g}", touch=f"{said['touch']:g}", lamp=self._lamp)
        self._night.tell(say("web-wall-night-working"))
        self._later.ask(Question(given=self._asked.given, said={**said, "lamp": self._lamp}))
        await self._quick.ask(self._asked.given, said["thick"], said["touch"], self._lamp)

    def _show(self, found: Mapping[str, Any] | None, failure: Mapping[str, Any] | None) -> None:
        if found is None:
            self._enough.tell(say("web-dough-not"))
            self._words.tell(failure["message"] if failure else "")
            return
        self._told = {**self._told, **found["sources"]}
        self._enough.tell(say(f"web-wall-{found['enough']}"))
        self._words.tell(found["words"])
        self._drawing.set_content(wall_drawing(self._said["thick"], self._said["touch"], self._lamp))
        poor, _, good = found["states"]
        self._states.tell(say("web-wall-state" if poor == good else "web-wall-states", poor=poor, good=good))
        if not self._numbers.default_slot.children:
            self._lay(found)
        for key, _, figure in found["figures"]:
            self._figures[key].tell(figure)

    def _lay(self, found: Mapping[str, Any]) -> None:
        self._figures: dict[str, Words] = {}
        with self._numbers:
            for key, words, _ in found["figures"]:
                Words("dt", words)
                with html.dd():
                    self._figures[key] = self._sources.figure(key)

    def _forget_night(self) -> None:
        self._night.tell("")
        self._notes.clear()
        self._whence.clear()

    def _show_lasting(self, found: Mapping[str, Any]) -> None:
        self._told = {**self._told, **found["sources"]}
        self._night.tell(say(f"web-wall-night-{found['night']}"))
        self._notes.clear()
        with self._notes:
            for each in (*found["words"], say("web-wall-scene")):
                Words("li", each)
        self._whence.clear()
        with self._whence:
            self._sources.where("wall-lasts")


def _taken(text: str, name: str) -> tuple[float, str]:
    """Read a slider's place; what is none, or off its ends, gives the nearest that is one, and a sentence that says so.

    Examples
    --------
    >>> _taken("", "thick"), _taken("4,5", "thick")
    ((3.0, ''), (4.5, ''))
    >>> _taken("-1", "thick")[0]
    1.0
    """
    least, most, _, first = _ENDS[name]
    if not text.strip():
        return first, ""
    try:
        number = read_number(text)
    except InputError:
        number = nan
    place = first if isnan(number) else min(max(number, least), most)
    if place == number:
        return place, ""
    return place, say("web-wall-beyond", text=text[:60], what=say(f"web-wall-{name}"), least=f"{least:g}",
                      most=f"{most:g}", shown=f"{place:g}", unit=_UNITS[name])  # fmt: skip
