"""For a class: how much dough, what to weigh out, the clock, money, and what to buy; to be printed and taken along."""

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from nicegui import PageArguments, html
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.for_class import GROUPS, classed, party_said
from lumped.texts import say
from lumped.web.asked import Asked
from lumped.web.choosing import put_region
from lumped.web.controls import choose
from lumped.web.fields import live_field
from lumped.web.fold import Fold
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import lead_to, listed, press, reveal
from lumped.web.papers import Papers
from lumped.web.question import answer_page, tell_address
from lumped.web.sources import Sources
from lumped.web.tally import Cell, tally
from lumped.web.words import Words

__all__ = ["make_page"]

_FIRST = {"by": "people", "people": "28", "age": "9", "group": "two", "mass": "", "pot": "3", "minutes": "",
          "packets": "cheap"}  # fmt: skip
_LONGEST = 20  # letters of what somebody writes
_CHOICES = {"by": ("people", "mass", "recipe"), "group": tuple(GROUPS), "packets": ("cheap", "little")}


async def make_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of a class."""
    await answer_page(kitchen, "make", asked.query_parameters, _MakePage)


class _MakePage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked, self._region = asked, asked.region
        self._said = {name: asked.options.get(name, first)[:_LONGEST] for name, first in _FIRST.items()}
        for name, options in _CHOICES.items():
            self._said[name] = self._said[name] if self._said[name] in options else _FIRST[name]
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        with html.section().classes("slip wishes"):
            self._put_wishes()
        self._later = Later(kitchen, classed, self._show, on_failure=self._clear)
        self._found: Element = html.div().classes("proposals class-plan").mark("make-found").props("aria-live=polite")
        with html.section().classes("slip card-for-class").mark("card-for-class") as self._card:
            Words("h2", say("web-make-card"))
            Papers(kitchen, lambda: self._asked.given, self._people)
        self._ask()

    def _put_wishes(self) -> None:
        self._choose("by")
        self._for_people: Element = html.div().classes("together")
        with self._for_people:
            self._write("people", inputmode="numeric")
            self._write("age", inputmode="decimal", placeholder=say("web-make-no-age"))
        self._in_groups = self._choose("group")
        self._of_mass: Element = html.div().classes("together")
        with self._of_mass:
            self._write("mass", inputmode="decimal")
        with Fold("wishes", say("web-make-more"), "span"):
            with html.div().classes("together"):
                self._write("pot", inputmode="decimal")
                self._write("minutes", inputmode="decimal", placeholder=say("web-make-no-minutes"))
                put_region(self._region, self._move)
            self._choose("packets")

    def _choose(self, name: str) -> Element:
        options = [(each, say(f"web-make-{name}-{each}")) for each in _CHOICES[name]]
        return choose(say(f"web-make-{name}"), options, self._said[name], partial(self._say, name), classes="pick",
                      marker=name)  # fmt: skip

    def _write(self, name: str, **props: Any) -> None:
        live_field(
            name, say(f"web-make-{name}"), self._said[name], partial(self._say, name), maxlength=_LONGEST, **props
        )

    def _say(self, name: str, value: str) -> None:
        self._said[name] = value
        self._ask()

    def _move(self, region: str) -> None:
        self._region = region
        self._ask()

    def _ask(self) -> None:
        said, by = self._said, self._said["by"]
        for place, shown in ((self._for_people, "people"), (self._in_groups, "people"), (self._of_mass, "mass")):
            reveal(place, by == shown)
        tell_address("make", self._asked, **said, region=self._region)
        if by in ("people", "mass") and not said[by].strip():
            self._later.leave()
            self._clear()
            with self._found:
                Words("p", say(f"web-make-begin-{by}"), "soft")
            return
        self._later.ask(Question(given=self._asked.given, said={
            **{name: said[name] for name in ("by", "people", "age", "group", "mass", "pot", "minutes")},
            "region": self._region, "little_over": said["packets"] == "little",
        }))  # fmt: skip

    def _people(self) -> str:
        """Say for whom the card is; "" where the plan is for no people."""
        return party_said(self._said) if self._said["by"] == "people" else ""

    def _clear(self) -> None:
        self._found.clear()
        reveal(self._card, False)

    def _show(self, found: Mapping[str, Any]) -> None:
        self._told = found["sources"]
        self._found.clear()
        reveal(self._card, self._said["by"] != "mass")  # a card is for people, or as the recipe says
        with self._found:
            self._put_first(found)
            if found["minutes"]:
                self._put_in_time(found)
            self._put_batch(found)
            self._put_clock(found)
            self._put_shops(found)
            self._put_cautions(found["cautions"])

    def _put_first(self, found: Mapping[str, Any]) -> None:
        with html.section().classes("slip wide plan-first").mark("make-first"):
            with html.div():
                Words("p", found["title"], "soft")
                Words("p", found["state"], "state")
                if found["holding"]:
                    Words("p", " ".join(found["holding"]), "blocks").mark("holding")
            with html.dl().classes("numbers"):
                for key, words, figure in found["figures"]:
                    Words("dt", words)
                    with html.dd():
                        self._sources.figure(key, figure)
            listed(found["sentences"])
            with html.div().classes("takes"):
                press(say("web-make-print"), lambda: None, "print").on("click", js_handler="() => window.print()")

    def _put_in_time(self, found: Mapping[str, Any]) -> None:
        minutes = found["minutes"]
        with html.section().classes("slip wide").mark("in-time"):
            Words("h2", say("heading-in-time", minutes=minutes))
            Words("p", found["in_time_state"], "state")
            if found["blocks"]:
                Words("p", found["blocks"], "blocks").mark("blocks")
            headings = [say("column-way"), say("column-all-ready"), say("column-in-time", minutes=minutes)]
            self._tally(headings, found["in_time"])
            listed(found["in_time_notes"])

    def _put_batch(self, found: Mapping[str, Any]) -> None:
        batch = found["batch"]
        rows = [
            (
                name,
                self._cell(f"grams-{key}", grams),
                self._cell(f"cups-{key}", measures),
                *(self._cell(f"all-{key}", each) for each in more),
            )
            for key, (name, grams, measures, *more) in zip(batch["keys"], batch["rows"], strict=True)
        ]
        with html.section().classes("slip weigh").mark("weigh"):
            Words("h2", say("web-make-weigh"))
            tally(batch["headings"], rows, numbers=(1, 3), on_phone="packed")
            Words("p", found["shift"], "soft")

    def _put_clock(self, found: Mapping[str, Any]) -> None:
        with html.section().classes("slip").mark("clock"), Fold("clock", say("web-make-clock")):
            self._tally([say("column-work"), say("making-column-time")], found["work"], on_phone="")
            Words("p", found["ready"])
            if found["cooling"]["rows"]:
                headings = [say("column-cooling"), say("column-safe"), say("column-all-ready")]
                self._tally(headings, found["cooling"])

    def _put_shops(self, found: Mapping[str, Any]) -> None:
        name, shelf, need, buy, over, money = range(6)
        headings = [say("web-make-column-what"), *found["shop_headings"][need:]]
        with html.section().classes("slip shop").mark("shop"), Fold("shop", say("web-make-shop")):
            if not found["shops"]:
                Words("p", say("web-make-nothing-bought"))
            for place, rows, keys in found["shops"]:
                Words("h3", place)
                tally(headings, [
                    (partial(_named, row[name], row[shelf]),
                     *(self._cell(f"{what}-{key}", row[column])
                       for what, column in (("need", need), ("buy", buy), ("over", over), ("money", money))))
                    for key, row in zip(keys, rows, strict=True)
                ], numbers=(1, 3, 4), on_phone="packed")  # fmt: skip
            for each in filter(None, (found["tap"], found["sum"])):
                Words("p", each)
            for words, key in found["far"]:
                with html.p():
                    Words("span", f"{words} ")
                    address = self._asked.ask("swap", without=key, region=self._region)
                    lead_to(say("web-way-swap"), address, f"instead-{key}", "back")
            listed([*found["unpriced"], *found["used"]])

    def _put_cautions(self, cautions: Sequence[tuple[str, str, str]]) -> None:
        with html.section().classes("slip").mark("cautions"):
            Words("h2", say("heading-cautions"))
            self._sources.cautions(cautions)

    def _tally(self, headings: Sequence[str], table: Mapping[str, Any], *, on_phone: Any = "packed") -> None:
        """Lay rows whose second and third cells are numbers with a source."""
        rows = [(first, self._cell(key, figure), *(self._cell(f"{key}-more", each) for each in more))
                for key, (first, figure, *more) in zip(table["keys"], table["rows"], strict=True)]  # fmt: skip
        tally(headings, rows, on_phone=on_phone)

    def _cell(self, key: str, text: str) -> Cell:
        return partial(self._sources.figure, key, text) if text and key in self._told else text


def _named(name: str, beside: str) -> None:
    Words("span", name)
    Words("span", beside, "soft")
