"""Writing a batch down: what the scale said, how it felt, what was measured; looked at while it is filled in."""

import asyncio
from collections.abc import Mapping
from datetime import date
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.batches import Filled, batch_filled, goes_in, ways_to_measure
from lumped.app.shelf import title_in
from lumped.dough.texture import FEELS
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked
from lumped.web.filling import Filling
from lumped.web.kitchen import Kitchen
from lumped.web.looks import press, sorry
from lumped.web.question import answer_page
from lumped.web.quick import Quick, answer_to
from lumped.web.words import Words

__all__ = ["batch_page"]


async def batch_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the form for a batch of a recipe."""
    await answer_page(kitchen, "batch", asked.query_parameters, _BatchPage)


class _BatchPage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._kitchen, self._asked = kitchen, asked
        try:
            rows = goes_in(asked.given)
        except LumpedError as error:
            sorry(str(error), "batch-trouble")
            return
        self._filled: Filled | None = None
        self._quick = Quick(batch_filled, self._show)
        with html.div().classes("filled"):
            with html.section().classes("slip leaf"):
                self._filling = Filling("batch-form", on_look=self.look, on_send=self._send)
                with self._filling.form:
                    self._put_fields(rows)
                    self._put_ends()
            with html.div().classes("taken").props("aria-live=polite"):
                Words("h2", say("web-batch-taken"), "heading")
                self._taken = html.ul().classes("notes").mark("batch-taken")
        self._show(batch_filled({}, asked.given), None)

    def _put_fields(self, rows: tuple[tuple[str, str, str], ...]) -> None:
        one, today = self._filling, date.today().isoformat()
        title = say("web-batch-title", title=self._asked.title, day=today)
        one.write("title", say("web-batch-name"), title, required=True, maxlength=200)
        one.write("made_on", say("web-batch-day"), today, kind="date")
        Words("h2", say("web-batch-weighed"))
        Words("p", say("web-batch-weighed-hint"), "soft hint")
        with html.div().classes("figures-in"):
            for key, name, amount in rows:
                words = say("web-batch-ingredient", name=name, amount=amount)
                one.write(f"weighed-{key}", words, inputmode="decimal", maxlength=12)
        one.write("weighed_after_g", say("web-batch-after"), hint=say("web-batch-after-hint"), inputmode="decimal",
                  maxlength=12)  # fmt: skip
        with html.fieldset().classes("pick"):
            Words("legend", say("web-batch-feel"))
            one.tag("feel", say("web-batch-feel-none"), value="", chosen=True, kind="radio")
            for score, word in FEELS.items():
                words = say("web-batch-score", score=score, word=say(f"feel-{word}"))
                one.tag("feel", words, value=str(score), kind="radio")
        self._put_measured()
        one.write_much("notes", say("web-batch-notes"))

    def _put_measured(self) -> None:
        one = self._filling
        Words("h2", say("web-batch-resistivity-heading"))
        one.choose("measured_by", say("web-batch-way"), [("", say("web-batch-way-none")), *ways_to_measure()])
        with html.div().classes("figures-in"):
            for name, words, value in (
                ("resistivity_ohm_m", say("web-batch-resistivity"), ""), ("low_ohm_m", say("web-batch-low"), ""),
                ("high_ohm_m", say("web-batch-high"), ""), ("temperature_degC", say("web-batch-temperature"), "20"),
            ):  # fmt: skip
                one.write(name, words, value, inputmode="decimal", maxlength=12)

    def _put_ends(self) -> None:
        with html.div().classes("takes"):
            button = html.button().classes("take ink").props("type=submit").mark("batch-keep")
            with button:
                Words("span", say("web-keep"))
            press(say("web-take-file"), self._hand_out, "batch-file")
        self._trouble: Element = html.div().props("role=status")

    async def look(self, said: Mapping[str, str]) -> None:
        """Look at what stands in the fields, and show what comes of it."""
        await self._quick.ask(dict(said), self._asked.given)

    def _show(self, filled: Filled | None, failure: Mapping[str, Any] | None) -> None:
        self._filled = filled
        rest = self._filling.tell(filled.slips) if filled is not None else (failure["message"] if failure else "",)
        words = filled.words if filled is not None and not filled.slips else rest or (say("web-packet-see-fields"),)
        self._taken.clear()
        with self._taken:
            for each in words:
                Words("li", each)

    async def _send(self, said: dict[str, str]) -> None:
        """Keep it, or say what is still wrong and leave everything as it was typed."""
        filled, failure = await answer_to(batch_filled, said, self._asked.given)
        self._show(filled, failure)
        if filled is None or filled.slips or not said.get("title", "").strip():
            if filled is not None and not said.get("title", "").strip():
                self._filling.tell({**filled.slips, "title": say("document-remedy-short")})
            self._filling.go_to_first()
            return
        await self._keep(filled)

    async def _keep(self, filled: Filled) -> None:
        """Write it down as a batch of its own; another of that name stays what it is."""
        shelf, title = self._kitchen.shelf, title_in(filled.given)
        try:
            there = await asyncio.to_thread(shelf.leaves, kind="batch")
            if any(each.entry.title.casefold() == title.casefold() for each in there):
                self._filling.tell({"title": say("web-batch-name-taken")})
                self._filling.go_to_first()
                return
            kept = await asyncio.to_thread(shelf.keep, filled.given)
        except LumpedError as error:
            self._trouble.clear()
            with self._trouble:
                sorry(str(error), "batch-trouble")
            return
        ui.navigate.to(paths.kept(kept.document))

    def _hand_out(self) -> None:
        if self._filled is None or self._filled.slips:
            self._filling.go_to_first()
            return
        ui.download(self._filled.given.text.encode(), self._filled.given.name, "application/toml")
