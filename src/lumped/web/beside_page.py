"""Side by side: a dough against others, or against what it was."""

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.beside import besides
from lumped.app.given import Given
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked, with_own
from lumped.web.choosing import put_region, tick
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import lead_to, listed, sorry
from lumped.web.others import RECENT, offered, recipes_at, side_names
from lumped.web.question import answer_page, tell_address
from lumped.web.sources import Sources
from lumped.web.tally import Cell, tally
from lumped.web.words import Words

__all__ = ["beside_page"]

_MOST = 3  # others; a fifth column can't be read


async def beside_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of doughs side by side."""
    await answer_page(kitchen, "beside", asked.query_parameters, _BesidePage)


class _BesidePage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._kitchen, self._asked, self._region = kitchen, asked, asked.region
        self._chosen = [each for each in asked.options.get("others", "").split(",") if each][:_MOST]
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        with html.section().classes("slip wishes"):
            self._choice: Element = html.div()
            put_region(self._region, self._move)
        self._later = Later(kitchen, besides, self._show)
        self._trouble: Element = html.div()
        self._found: Element = html.div().classes("proposals").mark("beside-found").props("aria-live=polite")
        ui.timer(0.01, self._begin, once=True)

    async def _begin(self) -> None:
        """Offer what there is, the dough as it is written or was first, then ask."""
        itself = self._itself()
        there = itself | await offered(self._kitchen) | itself
        there.pop(self._asked.address, None)
        self._chosen = [each for each in self._chosen if each in there] or list(there)[:1]
        with self._choice:
            tick(say("web-beside-others"), list(there.items()), self._chosen, self._tick)
        await self._ask()

    def _itself(self) -> dict[str, str]:
        """The dough as it is written, if the page has changes; and as it was before, if it is of the notebook."""
        written = {self._asked.page: say("web-beside-written")} if self._asked.changes else {}
        if self._asked.kept is None:
            return written
        older = self._asked.kept.history[:-1][-RECENT:][::-1]
        return written | {
            paths.old(each.document, each.number): say("beside-revision", title=each.title, number=each.number)
            for each in older if not each.removed
        }  # fmt: skip

    async def _tick(self, address: str, chosen: bool) -> None:
        self._chosen = [each for each in self._chosen if each != address] + ([address] if chosen else [])
        await self._ask()

    async def _move(self, region: str) -> None:
        self._region = region
        await self._ask()

    async def _ask(self) -> None:
        tell_address("beside", self._asked, others=",".join(self._chosen), region=self._region)
        self._trouble.clear()
        self._found.clear()
        if not self._chosen or len(self._chosen) > _MOST:
            with self._found:
                Words("p", say("web-beside-begin", most=_MOST), "soft")
            return
        chosen = list(self._chosen)
        others = await recipes_at(self._kitchen, chosen)
        given = [await with_own(self._kitchen, each.given) for each in (self._asked, *others)]
        if chosen != self._chosen:
            return  # somebody ticked meanwhile, and that is asked
        if len(others) < len(chosen):
            with self._trouble:
                sorry(say("web-no-dough"))
            return
        names = side_names([self._asked, *others])
        self._later.ask(_question(given, names, self._region))

    def _show(self, found: Mapping[str, Any]) -> None:
        self._told = found["sources"]
        self._found.clear()
        with self._found:
            for heading, rows in (("web-beside-out", found["outcomes"]), ("web-beside-in", found["amounts"])):
                with html.section().classes("slip wide").mark(heading):
                    Words("h2", say(heading))
                    self._table(found["titled"], rows)
            with html.section().classes("slip wide"):
                listed(found["notes"])
                with html.div().classes("ways-on"):
                    for name, address in zip(found["titled"][1:], self._chosen, strict=True):
                        lead_to(name, address, "to-other", "back")

    def _table(self, titled: Sequence[str], rows: Sequence[tuple[str, str, Sequence[str]]]) -> None:
        cells = [
            (words, *(self._cell(f"{key}-{number}", cell) for number, cell in enumerate(sides)))
            for key, words, sides in rows
        ]
        tally(["", *titled], cells, on_phone="sides", marks=[f"row-{key}" for key, _, _ in rows])

    def _cell(self, place: str, cell: str) -> Cell:
        return partial(self._sources.figure, place, cell) if place in self._told else cell


def _question(given: Sequence[Given], names: Sequence[str], region: str) -> Question:
    return Question(given=given[0], others=tuple(given[1:]), said={"names": list(names), "region": region})
