"""Who may touch a dough, who must not eat it, what to mind, and which doughs may stand on a table for its children."""

from collections.abc import Mapping, Sequence
from datetime import date
from functools import partial
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.asking_care import cared
from lumped.dough.safety import known_needs, need_named
from lumped.errors import InputError
from lumped.texts import say
from lumped.web.asked import Asked, with_own
from lumped.web.choosing import tick
from lumped.web.fields import live_field
from lumped.web.fold import Fold
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import lead_to, listed, sorry
from lumped.web.others import offered, recipes_at, side_names
from lumped.web.question import answer_page, tell_address
from lumped.web.sources import Sources
from lumped.web.tally import tally
from lumped.web.words import Words

__all__ = ["care_page"]

_FIRST = {"age": "2", "dog": "", "on": ""}
_GLUTEN = "cereals containing gluten"
_OFTEN = ("coeliac", _GLUTEN, "wheat", "nuts", "peanuts", "tree nuts", "milk", "eggs", "soybeans", "sesame", "corn",
          "vegan")  # fmt: skip


async def care_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of what to mind."""
    await answer_page(kitchen, "care", asked.query_parameters, _CarePage)


class _CarePage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._kitchen, self._asked = kitchen, asked
        self._written = {name: asked.options.get(name, first) for name, first in _FIRST.items()}
        self._needs, unknown = _understood(_parted(asked.options.get("child", "")))
        self._chosen = _parted(asked.options.get("others", ""))
        self._sides = [asked]
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        self._unknown: Element = html.div()
        with self._unknown:
            for words in unknown:
                sorry(words, "unknown-need")
        with html.section().classes("slip wishes"):
            self._put_needs()
            self._choice: Element = html.div()
            with html.div().classes("together"):
                self._put("age", say("web-care-age"))
                self._put("dog", say("web-care-dog"))
                live_field("on", say("web-care-on"), self._written["on"] or date.today().isoformat(),
                           partial(self._say, "on"), kind="date")  # fmt: skip
        self._later = Later(kitchen, cared, self._show)
        self._found: Element = html.div().classes("proposals").mark("care-found").props("aria-live=polite")
        ui.timer(0.01, self._begin, once=True)

    def _put_needs(self) -> None:
        seldom = [each for each in known_needs() if each not in _OFTEN]
        tick(say("web-care-needs"), [(each, _short(each)) for each in _OFTEN], self._needs, self._tick_need)
        with html.details().classes("more-needs") as more:
            more.props.update({"open": True} if set(seldom) & set(self._needs) else {})
            Words("summary", say("web-care-more-needs"))
            tick(say("web-care-seldom"), [(each, each) for each in seldom], self._needs, self._tick_need)

    def _put(self, name: str, label: str) -> None:
        live_field(name, label, self._written[name], partial(self._say, name), maxlength=6, inputmode="decimal")

    async def _begin(self) -> None:
        """Offer the other doughs, then ask."""
        there = await offered(self._kitchen)
        there.pop(self._asked.page, None)
        self._chosen = [each for each in self._chosen if each in there]
        with self._choice:
            tick(say("web-care-others"), list(there.items()), self._chosen, self._tick_other)
        await self._ask()

    async def _say(self, name: str, value: str) -> None:
        self._written[name] = value
        await self._ask()

    async def _tick_need(self, need: str, chosen: bool) -> None:
        self._needs = [each for each in self._needs if each != need] + ([need] if chosen else [])
        self._unknown.clear()
        await self._ask()

    async def _tick_other(self, address: str, chosen: bool) -> None:
        self._chosen = [each for each in self._chosen if each != address] + ([address] if chosen else [])
        await self._ask()

    async def _ask(self) -> None:
        tell_address("care", self._asked, child=",".join(self._needs), others=",".join(self._chosen), **self._written)
        chosen = list(self._chosen)
        sides = [self._asked, *await recipes_at(self._kitchen, chosen)]
        given = [await with_own(self._kitchen, each.given) for each in sides]
        if chosen != self._chosen:
            return  # somebody ticked meanwhile, and that is asked
        self._sides = sides
        written = self._written | {"on": self._written["on"] or date.today().isoformat()}
        said = {"needs": self._needs, "names": side_names(self._sides), **written}
        self._later.ask(Question(given=given[0], others=tuple(given[1:]), said=said))

    def _show(self, found: Mapping[str, Any]) -> None:
        self._told = found["sources"]
        self._found.clear()
        with self._found:
            if found["standing"]:
                self._put_table(found)
            with html.section().classes("slip"):
                Words("h2", say("web-care-allergens"))
                for words, named in found["allergens"]:
                    Words("h3", words)
                    listed(named or [say("web-care-none")])
            with html.section().classes("slip"):
                _put_diets(found)
            if found["remarks"]:
                with html.section().classes("slip"), Fold("remarks", say("heading-remarks")):
                    listed(found["remarks"])
            if found["doses"]:
                self._put_doses(found)
            if found["metals"]:
                _put_metals(found)
            with html.section().classes("slip wide").mark("cautions"):
                Words("h2", say("heading-cautions"))
                self._sources.cautions(found["cautions"])

    def _put_table(self, found: Mapping[str, Any]) -> None:
        """Show which doughs may stand on the table, what that means for all, and what would mend it."""
        with html.section().classes("slip wide").mark("standing"):
            Words("h2", say("web-care-table"))
            rows = [(dough, partial(Words, "b", words, f"stands {state}"), "; ".join(because))
                    for dough, state, words, because in found["standing"]]  # fmt: skip
            tally([say(f"column-care-{each}") for each in ("dough", "stands", "because")], rows, on_phone="packed")
            listed([*found["whole_table"], *found["packets"]])
            if found["limited"]:
                self._sources.where("gluten-limit")
            with html.div().classes("takes"):
                for number, dough, diets, without in found["mends"]:
                    address = self._sides[number].ask("swap", diet=",".join(diets), without=",".join(without))
                    lead_to(say("web-care-mend", dough=dough), address, f"mend-{number}", "take ink")

    def _put_doses(self, found: Mapping[str, Any]) -> None:
        with html.section().classes("slip wide").mark("doses"), Fold("doses", found["eaters"]):
            rows = [(words, amount, partial(self._sources.figure, key, held), source)
                    for key, words, amount, held, source in found["doses"]]  # fmt: skip
            columns = [say(f"column-care-{each}") for each in ("dose", "amount", "held", "source")]
            tally(columns, rows, on_phone="packed")


def _put_diets(found: Mapping[str, Any]) -> None:
    Words("h2", say("web-care-diets"))
    with html.dl().classes("numbers diets"):
        for diet, fits, words in found["diets"]:
            Words("dt", diet)
            Words("dd", words, "" if fits else "not-fit")


def _put_metals(found: Mapping[str, Any]) -> None:
    with html.section().classes("slip wide").mark("metals"), Fold("metals", found["metals_heading"]):
        columns = ("metal", "in-dough", "dry", "pliable", "sticky", "valid")
        tally([say(f"column-care-{each}") for each in columns], found["metals"], on_phone="packed")
        Words("p", say("safety-no-certificate"), "soft")


def _short(need: str) -> str:
    return say("web-care-gluten") if need == _GLUTEN else need


def _parted(words: str) -> list[str]:
    return [each for each in words.split(",") if each]


def _understood(words: Sequence[str]) -> tuple[list[str], list[str]]:
    """Give the needs that an address names, and of each that is none a sentence that says so."""
    needs, unknown = [], []
    for each in words:
        try:
            needs.append(need_named(each[:60]))
        except InputError as problem:
            near = say("web-care-near", near=problem.data["near"]) if "near" in problem.data else ""
            unknown.append(" ".join((say("web-care-no-need", need=each[:60]), near)).strip())
    return list(dict.fromkeys(needs)), unknown
