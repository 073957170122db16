"""What the pages that ask something about a dough have in common: whose dough it is, the way back, the ways on."""

import asyncio
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.own import unfit_in
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked, asked_recipe
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, reveal
from lumped.web.nothing import nothing_here
from lumped.web.ways import put_other_ways
from lumped.web.words import Words

__all__ = ["answer_page", "laid", "tell_address"]


async def answer_page(
    kitchen: Kitchen, what: str, query: Mapping[str, Any], put: Callable[[Kitchen, Asked], object]
) -> None:
    """Lay out the page of a question, if the recipe that it asks about is here."""
    with html.div().style("display: contents") as place:
        pass
    asked = await asked_recipe(kitchen, query)
    with place:
        if asked is None:
            nothing_here(say("web-no-dough"))
            return
        with laid(what, asked):
            _put_unfit(asked)
            put(kitchen, asked)


def _put_unfit(asked: Asked) -> None:
    """Say before all else, a moment later, that it is no dough or does the opposite of what it is for."""
    place = Words("p", "", "weak hidden-now").mark("unfit").props("role=status")

    async def look() -> None:
        told = await asyncio.to_thread(unfit_in, asked.given)
        place.tell(" ".join(told))
        reveal(place, bool(told))

    ui.timer(0.01, look, once=True)


@contextmanager
def laid(what: str, asked: Asked) -> Iterator[Element]:
    """Lay the head of a question's page, and below what is put there the ways on."""
    question = say(f"web-way-{what}")
    ui.page_title(say("web-page-title", title=f"{question} – {asked.title}"))
    with html.main(), html.div().classes(f"sheet-width question {what}").mark(what) as page:
        with html.header().classes("top"):
            lead_to(say("web-back-to-dough", title=asked.title), asked.address, "to-dough", "back")
            Words("h1", question)
        yield page
        put_other_ways(asked, what)


def tell_address(what: str, asked: Asked, **options: str) -> None:
    """Have the address tell what was chosen, so that the page can be kept and loaded anew."""
    ui.navigate.history.replace(paths.ask(what, asked.page, asked.changes, **options))
