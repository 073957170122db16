"""How long does it last? A piece that dries, what brings it back, when hands may take it hot, what can grow in it."""

from collections.abc import Callable, Mapping
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.asking_time import cooled_told, dried_told, kept_told, refreshed_told
from lumped.app.drying import SHAPES
from lumped.app.given import Given
from lumped.dough.lasting.handing import FORMS
from lumped.dough.lasting.outlook import COVERS, DRAUGHTS
from lumped.texts import say
from lumped.web.asked import Asked
from lumped.web.controls import choose
from lumped.web.drawing import Drawing
from lumped.web.fields import live_field
from lumped.web.fold import Fold
from lumped.web.kitchen import Kitchen
from lumped.web.looks import listed, reveal, sorry
from lumped.web.measure import measure
from lumped.web.question import answer_page, tell_address
from lumped.web.quick import Quick
from lumped.web.sources import Sources
from lumped.web.tally import tally
from lumped.web.words import Words

__all__ = ["time_page"]

_FIRST = {
    "shape": "roll", "thick": "12 mm", "cover": "open", "room": "21 °C", "humidity": "45 %", "draught": "quiet",
    "hours": "24", "weighed": "", "now": "", "form": "pot", "deep": "20 mm", "mass": "", "where": "room",
}  # fmt: skip
_CHOICES = {
    "shape": SHAPES, "cover": COVERS, "draught": DRAUGHTS, "hours": ("24", "72", "168", "720"), "form": FORMS,
    "where": ("room", "fridge"),
}  # fmt: skip
_SLIDES = {
    "thick": (3.0, 40.0, 0.5, "mm"), "room": (5.0, 35.0, 0.5, "°C"), "humidity": (10.0, 95.0, 1.0, "%"),
    "deep": (5.0, 80.0, 1.0, "mm"),
}  # fmt: skip
_PIECE = ("shape", "thick", "cover", "room", "humidity", "draught", "hours")
_HOT = ("form", "deep", "mass", "room")


async def time_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of how long a dough lasts."""
    await answer_page(kitchen, "time", asked.query_parameters, _TimePage)


class _Answer:
    """One answer of the page: how it is found, and where it or what stands in its way is laid."""

    def __init__(self, work: Callable[..., Any], lay: Callable[[Mapping[str, Any]], None], marker: str) -> None:
        self._lay = lay
        self._quick = Quick(work, self._show)
        self._trouble: Element = html.div()
        self.place: Element = html.div().classes("answer").mark(marker).props("aria-live=polite")

    async def ask(self, *question: Any) -> None:
        """Find it anew; what stood there stays, and stands back, if it can't be found."""
        await self._quick.ask(*question)

    def clear(self) -> None:
        """Say nothing."""
        self._trouble.clear()
        self.place.clear()

    def _show(self, found: Mapping[str, Any] | None, failure: Mapping[str, Any] | None) -> None:
        self._trouble.clear()
        self.place.classes(add="stale" if found is None else "", remove="" if found is None else "stale")
        if found is None:
            with self._trouble:
                sorry(failure["message"] if failure else "")
            return
        self.place.clear()
        with self.place:
            self._lay(found)


class _TimePage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked = asked
        self._said = {name: asked.options.get(name, first) for name, first in _FIRST.items()}
        self._told: dict[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        with html.div().classes("atlas"):
            with html.section().classes("picture-place"):
                self._picture = Drawing(say("web-time-picture"))
            with html.section().classes("slip wishes"):
                self._put_piece()
            with html.section().classes("slip").mark("time-dry"):
                Words("h2", say("web-time-dry"))
                self._dry = _Answer(_dry, self._lay_dry, "dry-found")
        with html.div().classes("proposals"):
            with html.section().classes("slip"), Fold("time-refresh", say("web-time-refresh")):
                self._put_refresh()
            with html.section().classes("slip"), Fold("time-cool", say("web-time-cool")):
                self._put_cool()
        with html.section().classes("slip"), Fold("time-keep", say("web-time-keep")):
            self._choose("where", self._ask_keep)
            self._keep = _Answer(kept_told, self._lay_keep, "keep-found")
        ui.timer(0.01, self._begin, once=True)

    def _put_piece(self) -> None:
        self._choose("shape", self._ask_dry)
        self._measure("thick", self._ask_dry)
        self._choose("cover", self._ask_dry)
        self._measure("room", self._ask_room)
        self._measure("humidity", self._ask_dry)
        self._choose("draught", self._ask_dry)
        self._choose("hours", self._ask_dry)

    def _put_refresh(self) -> None:
        Words("p", say("web-time-refresh-lure"), "soft")
        with html.div().classes("pair"):
            self._write("weighed", self._ask_refresh)
            self._write("now", self._ask_refresh)
        self._refresh = _Answer(refreshed_told, self._lay_refresh, "refresh-found")

    def _put_cool(self) -> None:
        with html.div().classes("wishes") as wishes:
            self._choose("form", self._ask_cool)
            deep, mass = self._measure("deep", self._ask_cool), self._write("mass", self._ask_cool)
        self._hot = {"wishes": wishes, "deep": deep, "mass": mass}
        self._cool = _Answer(_cool, self._lay_cool, "cool-found")

    def _choose(self, name: str, ask: Callable[[], Any]) -> None:
        options = [(each, say(f"web-time-{name}-{each}")) for each in _CHOICES[name]]
        choose(say(f"web-time-{name}"), options, self._said[name], self._take(name, ask), classes="pick", marker=name)

    def _measure(self, name: str, ask: Callable[[], Any]) -> Element:
        return measure(name, say(f"web-time-{name}"), self._said[name], _SLIDES[name], self._take(name, ask))

    def _write(self, name: str, ask: Callable[[], Any]) -> Element:
        return live_field(
            name, say(f"web-time-{name}"), self._said[name], self._take(name, ask), pause=0.25, maxlength=30
        )

    def _take(self, name: str, ask: Callable[[], Any]) -> Callable[[str], Any]:
        async def taken(words: str) -> None:
            self._said[name] = words
            tell_address("time", self._asked, **self._said)
            await ask()

        return taken

    async def _begin(self) -> None:
        for ask in (self._ask_dry, self._ask_keep, self._ask_cool, self._ask_refresh):
            await ask()

    async def _ask_dry(self) -> None:
        await self._dry.ask(self._asked.given, {name: self._said[name] for name in _PIECE})

    async def _ask_room(self) -> None:
        await self._ask_dry()
        await self._ask_cool()

    async def _ask_cool(self) -> None:
        pot = self._said["form"] == "pot"
        reveal(self._hot["deep"], not pot)
        reveal(self._hot["mass"], pot)
        await self._cool.ask(self._asked.given, {name: self._said[name] for name in _HOT})

    async def _ask_refresh(self) -> None:
        weighed, now = self._said["weighed"], self._said["now"]
        if weighed.strip() and now.strip():
            await self._refresh.ask(self._asked.given, weighed, now)
        else:
            self._refresh.clear()

    async def _ask_keep(self) -> None:
        await self._keep.ask(self._asked.given, self._said["where"])

    def _lay_dry(self, found: Mapping[str, Any]) -> None:
        self._told |= found["sources"]
        self._picture.show(found["drawings"])
        listed(found["words"])
        self._sources.where("time-dry")
        Words("h3", say("heading-rest"))
        listed(found["rest"])
        self._sources.where("time-rest")
        with html.details().classes("hours").mark("time-table"):
            Words("summary", say("web-time-table"))
            tally(found["columns"], found["rows"], on_phone="packed")
            self._sources.where("time-dry")

    def _lay_refresh(self, found: Mapping[str, Any]) -> None:
        self._told |= found["sources"]
        listed(found["words"])
        self._sources.where("time-refresh")

    def _lay_cool(self, found: Mapping[str, Any]) -> None:
        self._told |= found["sources"]
        reveal(self._hot["wishes"], found["hot"])
        listed(found["words"])
        if found["hot"]:
            self._sources.where("time-cool")

    def _lay_keep(self, found: Mapping[str, Any]) -> None:
        self._told |= found["sources"]
        Words("p", found["caveat"], "weak").mark("caveat")
        listed(found["words"])
        tally(found["columns"], found["rows"], numbers=(1,), on_phone="packed")
        with html.dl().classes("numbers open-numbers"):
            for key, words, figure in found["figures"]:
                Words("dt", words)
                with html.dd():
                    self._sources.figure(key, figure)


def _dry(given: Given, said: Mapping[str, str]) -> dict[str, Any]:
    return dried_told(given, **said)


def _cool(given: Given, said: Mapping[str, str]) -> dict[str, Any]:
    return cooled_told(given, form=said["form"], thick=said["deep"], mass=said["mass"], room=said["room"])
