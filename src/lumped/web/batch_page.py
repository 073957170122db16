"""Writing a batch down: what the scale said, how it felt, what was measured; looked at while it is filled in."""

import asyncio
from collections.abc import Mapping
from datetime import date
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.batch_form import Filled, batch_filled, batch_written, goes_in, recipe_along, ways_to_measure
from lumped.app.given import Given
from lumped.app.kept import Kept
from lumped.app.titles import title_in
from lumped.dough.texture import FEELS
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked
from lumped.web.filling import Filling
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, press, sorry
from lumped.web.question import answer_page
from lumped.web.quick import Quick, answer_to
from lumped.web.words import Words, unbroken

__all__ = ["batch_page"]


async def batch_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the form for a batch of a recipe; or filled in with a batch of the notebook, to be changed."""
    with html.div().style("display: contents") as place:
        pass
    batch = await _batch_in(kitchen, str(asked.query_parameters.get("of", "")))
    with place:
        if batch is None:
            await answer_page(kitchen, "batch", asked.query_parameters, _new_batch)
        else:
            _change_batch(kitchen, batch)


async def _batch_in(kitchen: Kitchen, page: str) -> Kept | None:
    """Give the batch of the notebook whose page is named."""
    document = page.removeprefix(f"{paths.NOTEBOOK}/")
    if document == page or not kitchen.shelf.begun:
        return None
    try:
        kept = await asyncio.to_thread(kitchen.shelf.kept, document)
    except LumpedError:
        return None
    return kept if kept.revision.kind == "batch" and kept.given is not None else None


def _new_batch(kitchen: Kitchen, asked: Asked) -> None:
    today = date.today().isoformat()
    title = say("web-batch-title", title=asked.title, day=today)
    _BatchForm(kitchen, asked.given, {"title": title, "made_on": today})


def _change_batch(kitchen: Kitchen, kept: Kept) -> None:
    title = kept.revision.title
    ui.page_title(say("web-page-title", title=say("web-batch-change-title", title=title)))
    with html.main(), html.div().classes("sheet-width question batch").mark("batch"):
        with html.header().classes("top"):
            lead_to(say("web-batch-back", title=title), paths.kept(kept.revision.document), "to-batch", "back")
            Words("h1", say("web-batch-change-title", title=title))
            Words("p", say("web-batch-change-lure"), "soft")
        assert kept.given is not None  # the page looked
        try:
            recipe, said = recipe_along(kept.given), batch_written(kept.given)
        except LumpedError as error:
            sorry(str(error), "batch-trouble")
            return
        _BatchForm(kitchen, recipe, said, kept)


class _BatchForm:
    """The form, and beside it what is taken from it.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    recipe : Given
        The recipe that was made.
    said : mapping of str to str
        What stands in the fields at first.
    kept : Kept, optional
        The batch that is changed.
    """

    def __init__(self, kitchen: Kitchen, recipe: Given, said: Mapping[str, str], kept: Kept | None = None) -> None:
        self._kitchen, self._recipe, self._kept = kitchen, recipe, kept
        self._before = "" if kept is None else kept.text
        try:
            rows = goes_in(recipe, *(name.removeprefix("weighed-") for name in said if name.startswith("weighed-")))
        except LumpedError as error:
            sorry(str(error), "batch-trouble")
            return
        self._filled: Filled | None = None
        self._quick = Quick(batch_filled, self._show)
        with html.div().classes("filled"):
            with html.section().classes("slip leaf"):
                self._filling = Filling("batch-form", on_look=self.look, on_send=self._send)
                with self._filling.form:
                    self._put_fields(rows, said)
                    self._put_ends()
            with html.div().classes("taken").props("aria-live=polite"):
                Words("h2", say("web-batch-taken"), "heading")
                self._taken = html.ul().classes("notes").mark("batch-taken")
        self._show(batch_filled(said if kept else {}, recipe, self._before), None)

    def _put_fields(self, rows: tuple[tuple[str, str, str], ...], said: Mapping[str, str]) -> None:
        one = self._filling
        one.write("title", say("web-batch-name"), said.get("title", ""), required=True, maxlength=200)
        one.write("made_on", say("web-batch-day"), said.get("made_on", ""), kind="date")
        Words("h2", say("web-batch-weighed"))
        Words("p", say("web-batch-weighed-hint"), "soft hint")
        with html.div().classes("figures-in"):
            for key, name, amount in rows:
                words = unbroken(say("web-batch-ingredient", name=name, amount=amount))
                grams = said.get(f"weighed-{key}", "")
                one.write(f"weighed-{key}", words, grams, inputmode="decimal", maxlength=12)
        one.write("weighed_after_g", say("web-batch-after"), said.get("weighed_after_g", ""),
                  hint=say("web-batch-after-hint"), inputmode="decimal", maxlength=12)  # fmt: skip
        with html.fieldset().classes("pick"):
            Words("legend", say("web-batch-feel"))
            felt = said.get("feel", "")
            one.tag("feel", say("web-batch-feel-none"), value="", chosen=not felt, kind="radio")
            for score, word in FEELS.items():
                words = say("web-batch-score", score=score, word=say(f"feel-{word}"))
                one.tag("feel", words, value=str(score), chosen=felt == str(score), kind="radio")
        self._put_measured(said)
        one.write_much("notes", say("web-batch-notes"), said.get("notes", ""))

    def _put_measured(self, said: Mapping[str, str]) -> None:
        one = self._filling
        Words("h2", say("web-batch-resistivity-heading"))
        ways = [("", say("web-batch-way-none")), *ways_to_measure()]
        one.choose("measured_by", say("web-batch-way"), ways, said.get("measured_by", ""))
        usual = "" if "measured_by" in said else "20"
        with html.div().classes("figures-in"):
            for name, words, value in (
                ("resistivity_ohm_m", say("web-batch-resistivity"), ""), ("low_ohm_m", say("web-batch-low"), ""),
                ("high_ohm_m", say("web-batch-high"), ""), ("temperature_degC", say("web-batch-temperature"), usual),
            ):  # fmt: skip
                one.write(name, words, said.get(name, value), inputmode="decimal", maxlength=12)

    def _put_ends(self) -> None:
        with html.div().classes("takes"):
            button = html.button().classes("take ink").props("type=submit").mark("batch-keep")
            with button:
                Words("span", say("web-keep" if self._kept is None else "web-keep-next"))
            press(say("web-take-file"), self._hand_out, "batch-file")
        self._trouble: Element = html.div().props("role=status")

    async def look(self, said: Mapping[str, str]) -> None:
        """Look at what stands in the fields, and show what comes of it."""
        await self._quick.ask(dict(said), self._recipe, self._before)

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
        filled, failure = await answer_to(batch_filled, said, self._recipe, self._before)
        self._show(filled, failure)
        if filled is None or filled.slips or not said.get("title", "").strip():
            if filled is not None and not said.get("title", "").strip():
                self._filling.tell({**filled.slips, "title": say("document-remedy-short")})
            self._filling.go_to_first()
            return
        await self._keep(filled)

    async def _keep(self, filled: Filled) -> None:
        """Write it down; another batch of that name stays what it is, and so does a newer revision."""
        shelf, title, mine = self._kitchen.shelf, title_in(filled.given), None
        after = None
        if self._kept is not None:
            mine, after = self._kept.revision.document, self._kept.revision.number
        try:
            there = [each.entry for each in await asyncio.to_thread(shelf.leaves, kind="batch")]
            if any(each.title.casefold() == title.casefold() for each in there if each.document != mine):
                self._filling.tell({"title": say("web-batch-name-taken")})
                self._filling.go_to_first()
                return
            kept = await asyncio.to_thread(shelf.keep, filled.given, document=mine, after=after)
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
