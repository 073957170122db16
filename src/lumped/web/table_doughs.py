"""The doughs on the table: the two that come along, shown by what they do."""

import asyncio
from collections.abc import Mapping
from functools import partial
from typing import Any

from nicegui import html, ui

from lumped.app.answers import lump_drawn
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.app.readings import home_region, readings
from lumped.app.sources import source_of
from lumped.app.titles import title_in
from lumped.texts import say
from lumped.web import paths
from lumped.web.drawing import Drawing
from lumped.web.looks import lead_to
from lumped.web.quick import answer_to
from lumped.web.scales import Readings
from lumped.web.sources import Sources
from lumped.web.words import Words

__all__ = ["put_doughs"]

_THERE = ("ropewalk-salt.toml", "ropewalk-sugar.toml")
_SHOWN = ("resistivity", "water_activity", "feel")


def put_doughs() -> None:
    """Put the doughs on the page; what they do comes a moment later."""
    there = [(name, text) for name in _THERE if (text := example_recipe(name)) is not None]
    if not there:
        return
    Words("h2", say("web-doughs"), "heading first")
    Words("p", say("web-doughs-lure"), "soft")
    with html.section().classes("doughs") as place:
        place.props.update({"aria-label": say("web-doughs")})
        for name, text in there:
            _Card(name, Given(name=name, text=text))


class _Card:
    """One dough."""

    def __init__(self, name: str, given: Given) -> None:
        self._given = given
        sources = Sources(lambda what: source_of(given, what, home_region()))
        with html.article().classes("slip dough-card").mark(f"dough-{name}"):
            with html.div().classes("dough-head"):
                with html.div().classes("lump"):
                    self._drawing = Drawing(title_in(given))
                with html.div():
                    self._does = Words("p", say("web-working"), "state")
                    lead_to(title_in(given), paths.dough(name), f"to-{name}", "dough-name")
            self._readings = Readings(sources, home_region(), _SHOWN)
            with html.div().classes("takes"):
                lead_to(say("web-dough-look"), paths.dough(name), f"look-{name}", "take ink")
                own = paths.changed(paths.dough(name), {"title": say("web-own-title")})
                lead_to(say("web-dough-own"), own, f"own-{name}", "take")
        ui.timer(0.01, partial(self._fill), once=True)

    async def _fill(self) -> None:
        found, _ = await answer_to(readings, self._given, home_region())
        if found is not None:
            self._show(found, await asyncio.to_thread(lump_drawn, found["conducts"]))

    def _show(self, found: Mapping[str, Any], drawings: Mapping[str, str]) -> None:
        self._does.tell(found["headline"])
        self._drawing.show(drawings)
        self._readings.show(found["readings"])
