"""A recipe on the page: what its dough does comes first, then what goes in, which can be dragged and written."""

import asyncio
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from functools import partial
from typing import Any

from nicegui import background_tasks, html, ui
from nicegui.element import Element

from lumped.app.amiss import amiss
from lumped.app.changing import RECIPE_WORDS, amounts_in, leaves_out, name_of, names_in, with_amount, with_feel
from lumped.app.given import Given
from lumped.app.jobs import Ticket
from lumped.app.kept import Kept
from lumped.app.larder import shop_with_own
from lumped.app.readings import readings
from lumped.app.recipes import kneaded
from lumped.app.sources import source_of
from lumped.errors import LumpedError
from lumped.notebook import Revision
from lumped.texts import say
from lumped.web import paths
from lumped.web.amounts import Amounts
from lumped.web.asked import Asked
from lumped.web.choosing import put_more, put_region
from lumped.web.dough_folds import DoughFolds
from lumped.web.how_made import HowMade
from lumped.web.keeping import Keeping
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, press, reveal
from lumped.web.papers import Papers
from lumped.web.past import Past, kept_words, put_old
from lumped.web.quick import Quick
from lumped.web.scales import Gist, Readings
from lumped.web.sources import Sources
from lumped.web.ways import Ways
from lumped.web.words import Words

__all__ = ["RecipeView"]

_BEAT = 0.08  # s
_REST = 0.35  # s without a change after which what takes longer is worked out


class RecipeView:
    """A recipe, looked at and changed.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    asked : Asked
        The recipe, and how it is changed.
    on_changed : callable, optional
        Called when another revision was brought back, or the recipe was taken out of the notebook.
    """

    def __init__(self, kitchen: Kitchen, asked: Asked, *, on_changed: Callable[[], Any] | None = None) -> None:
        self._kitchen, self._asked, self._kept, self._on_changed = kitchen, asked, asked.kept, on_changed
        self._document = asked.kept.revision.document if asked.kept is not None else None
        self._names: list[str] = []
        self._written_amounts: list[str] = []
        self._before: Mapping[str, Any] | None = None
        self._number = 0
        self._client = ui.context.client
        self._ticket: Ticket | None = None
        self._quick = Quick(readings, self._show)
        self._sources = Sources(lambda what: source_of(self._asked.given, what, self._asked.region))
        with html.main():
            with html.div().classes("sheet-width recipe").mark("recipe") as self._page:
                self._put_top()
                with html.div().classes("bowl"):
                    self._put_dough()
                    with html.div().classes("hands"):
                        self._put_ingredients()
                        self._keep_place = html.div().style("display: contents")
                self._ways = Ways()
                with html.div().classes("says"):
                    self._folds = DoughFolds(self._sources)
                    with self._folds.aside:
                        self._put_taking()
            self._past_place = html.div().classes("sheet-width past-place")
        self._timer = ui.timer(_BEAT, self._look, active=False)
        self._client.on_delete(self._stop)
        if self._kept is not None:
            self._show_past(self._kept)
        ui.timer(0.01, self._begin, once=True)

    @property
    def _fixed(self) -> bool:
        return self._kept is not None and self._kept.old

    def _put_top(self) -> None:
        title = self._asked.title
        ui.page_title(say("web-page-title", title=title))
        with html.header().classes("top"):
            lead_to(say("web-back"), paths.TABLE, "to-table", "back")
            self._heading = Words("h1", title)
            self._invented = Words("p", say("web-recipe-invented"), "soft invented hidden-now")
            with html.p().classes("changed-line hidden-now").mark("changed") as self._changed_line:
                Words("span", say("web-changed"))
                lead_to(say("web-put-back"), self._asked.page, "put-back", "back")
            self._kept_line = Words("p", "", "kept-line hidden-now").mark("kept-line")
            if self._fixed:
                assert self._kept is not None
                put_old(self._kitchen, self._kept, self._changed)
            self._story = Words("p", "", "soft story-text hidden-now")

    def _put_dough(self) -> None:
        with html.section().classes("slip does").mark("does"):
            self._does = Words("p", say("web-working"), "state").props("role=status")
            self._unfit = Words("p", "", "weak hidden-now").mark("unfit")
            with html.div().classes("trouble hidden-now").props("role=alert") as self._trouble_place:
                self._trouble = Words("p", "", "amiss").mark("trouble")
                Words("p", say("web-dough-not-now"), "soft")
            self._readings_place: Element = html.div().style("display: contents")
            self._lay_readings()
            self._notes = html.ul().classes("why notes")

    def _lay_readings(self) -> None:
        self._readings_place.clear()
        with self._readings_place:
            self._readings = Readings(self._sources, self._asked.region)
            put_region(self._asked.region, self._move)

    def _put_ingredients(self) -> None:
        with html.section().classes("slip goes-in"):
            Words("h2", say("web-goes-in"))
            self._gist = Gist()
            self._amounts = Amounts(self._change, fixed=self._fixed)
            self._made = Words("p", "", "soft hidden-now")
            if not self._fixed:
                put_more(self._add, shop_with_own(self._asked.written.labels)[0])
                self._how = HowMade(partial(self._set, "cooked"), partial(self._set, "degrees"), self._add_by_feel)

    def _put_taking(self) -> None:
        with html.section().classes("slip taking"):
            Words("h2", say("web-taking"))
            with html.div().classes("takes"):
                press(say("web-take-file"), self._hand_out, "take-file")
            Papers(self._kitchen, self._written)

    async def _begin(self) -> None:
        """Show the recipe as it is written before the changes of the address, so that they can be seen."""
        if self._asked.changes:
            with suppress(LumpedError):
                self._before = await asyncio.to_thread(readings, self._asked.written, self._asked.region)
                self._readings.show(self._before["readings"])
        await self._ask()

    async def _ask(self) -> None:
        """Have the dough worked out: what it does at once, the rest when the hand rests."""
        self._stop()
        if self._names:
            self._page.classes("moving")
        background_tasks.create(self._ask_later(self._number))
        await self._quick.ask(self._asked.given, self._asked.region)

    async def _ask_later(self, number: int) -> None:
        await asyncio.sleep(_REST if self._names else 0)
        if number == self._number and not self._client.is_deleted:
            with self._client:
                self._tell_address()
            given = self._asked.given
            self._ticket = self._kitchen.jobs.submit(kneaded, given, given.key)
            self._timer.activate()

    def _stop(self) -> None:
        if self._ticket is not None:
            self._ticket.stop()
        self._ticket = None
        self._number += 1

    def _look(self) -> None:
        ticket = self._ticket
        if ticket is not None and not ticket.done:
            return
        self._timer.deactivate()
        self._ticket = None
        answer = ticket.answer() if ticket is not None else None
        if answer is not None and answer.content is not None:
            self._show_all(answer.content)
        elif answer is not None and answer.failure is not None:
            self._fail(amiss(answer.failure))

    def _fail(self, words: str) -> None:
        """Say why no dough comes of it; what was read before is taken off the page, for it is not of this."""
        self._page.classes("failing", remove="moving")
        self._does.tell(say("web-dough-not"))
        self._trouble.tell(words)
        reveal(self._unfit, False)
        self._gist.fail(say("web-dough-not"))
        reveal(self._trouble_place, True)
        reveal(self._keep_place, False)
        self._tell_notes([])
        if not self._names and self._before is not None:
            self._lay_as_said(self._before)

    def _lay_as_said(self, before: Mapping[str, Any]) -> None:
        """Lay out what the address says, which can't be read as it is, so that it can be mended."""
        given, changes = self._asked.written, self._asked.changes
        self._names = names_in(given.text)
        amounts = [changes.get(name, amount).partition(";")[0]
                   for name, amount in zip(self._names, amounts_in(given.text), strict=True)]  # fmt: skip
        rows = [*zip(before["names"], amounts, before["by_feel"], strict=True)]
        more = [name for name in changes if name not in (*self._names, *RECIPE_WORDS)]
        self._names += more
        rows += [(name, changes[name], None) for name in more]
        self._lay_rows(rows, [*before["amounts"], *({"grams": 0, "most": 100, "step": 1} for _ in more)], before)

    def _show(self, found: Mapping[str, Any] | None, failure: Mapping[str, Any] | None) -> None:
        """Show what the dough does."""
        if found is None:
            self._fail(amiss(failure) if failure else "")
            return
        self._page.classes(remove="failing")
        reveal(self._trouble_place, False)
        reveal(self._keep_place, True)
        self._does.tell(found["headline"])
        self._unfit.tell(" ".join(found["unfit"]))
        reveal(self._unfit, bool(found["unfit"]))
        self._readings.show(found["readings"])
        self._gist.show(found["readings"])
        reveal(self._invented, found["invented"])
        if not self._names:
            self._lay_ingredients(found)
        self._amounts.follow(*self._rows_of(found))
        if not self._keep_place.default_slot.children:
            self._put_keeping()
        self._page.props.update({"data-kneaded": "yes"})

    def _rows_of(self, found: Mapping[str, Any]) -> tuple[dict[int, float], dict[int, Any]]:
        """Give grams and what is added by feel of each row; what is left out has no portion, and stands at nothing."""
        changes, rows = self._asked.changes, range(len(self._names))
        there = [k for k, name in enumerate(self._names) if not leaves_out(changes.get(name, ""))]
        grams = (each["grams"] for each in found["amounts"])
        feels = dict(zip(there, found["by_feel"], strict=False))
        return dict.fromkeys(rows, 0.0) | dict(zip(there, grams, strict=False)), dict.fromkeys(rows) | feels

    def _lay_ingredients(self, found: Mapping[str, Any]) -> None:
        """Lay out what goes in; in an old revision it can only be read."""
        given = self._asked.given
        self._names = names_in(given.text)
        rows = zip(found["names"], amounts_in(given.text), found["by_feel"], strict=True)
        self._lay_rows([*rows], found["amounts"], found)

    def _lay_rows(
        self, rows: Sequence[tuple[str, str, Any]], slides: Sequence[Mapping[str, float]], found: Mapping[str, Any]
    ) -> None:
        self._written_amounts = [amount for _, amount, _ in rows]
        self._amounts.lay(rows, slides)
        if not self._fixed:
            self._how.lay(found["cooked"], found["degrees"], [(name, feel) for name, _, feel in rows])

    def _show_all(self, shown: Mapping[str, Any]) -> None:
        self._page.classes(remove="moving")
        self._story.tell(shown["story"])
        reveal(self._story, bool(shown["story"]))
        way = shown["method"].replace(" ", "-")
        self._made.tell(" ".join((say(f"web-cooked-{way}"), shown["temperature"])))
        reveal(self._made, self._fixed)
        self._tell_notes(shown["notes"])
        self._folds.show(shown)

    def _tell_notes(self, notes: Sequence[str]) -> None:
        self._notes.clear()
        with self._notes:
            for note in notes:
                Words("li", note)

    async def _change(self, k: int, amount: str) -> None:
        said = self._asked.changes.get(self._names[k], "")
        self._written_amounts[k] = amount
        await self._set(self._names[k], with_amount(said, amount))

    async def _add_by_feel(self, k: int, feel: str) -> None:
        said = self._asked.changes.get(self._names[k], "")
        await self._set(self._names[k], with_feel(said, self._written_amounts[k], feel))

    async def _set(self, name: str, value: str) -> None:
        """Change one thing of the recipe."""
        self._asked = self._asked.with_changes({**self._asked.changes, name: value})
        await self._ask()

    async def _add(self, key: str) -> None:
        """Put something more in."""
        name = name_of(key)
        if name not in self._names:
            self._asked = self._asked.with_changes({**self._asked.changes, name: say("web-first-amount")})
            self._names = []
            await self._ask()

    async def _move(self, region: str) -> None:
        """Buy it elsewhere."""
        self._asked = replace(self._asked, options={**self._asked.options, "region": region})
        self._lay_readings()
        await self._ask()

    def _tell_address(self) -> None:
        """Have the address tell what isn't written down, so that loading the page anew loses nothing."""
        said = {"region": self._asked.options["region"]} if "region" in self._asked.options else {}
        page = paths.kept(self._document) if self._document and not self._fixed else self._asked.page
        ui.navigate.history.replace(paths.changed(page, {**self._asked.changes, **said}))
        reveal(self._changed_line, bool(self._asked.changes))
        self._ways.lead(self._asked)

    def _written(self) -> Given:
        return self._asked.given

    def _put_keeping(self) -> None:
        if self._fixed:
            return
        with self._keep_place:
            self._keeping = Keeping(
                self._kitchen, given=self._written, title=self._asked.title,
                kept=self._kept.newest if self._kept is not None else None, on_kept=self._was_kept,
            )  # fmt: skip

    def _was_kept(self, revision: Revision) -> None:
        """Go on as the page of what was written."""
        if self._document is not None and revision.document != self._document:
            ui.navigate.to(paths.kept(revision.document))
            return
        self._document = revision.document
        self._heading.tell(revision.title)
        ui.page_title(say("web-page-title", title=revision.title))
        self._asked = replace(
            self._asked, page=paths.kept(revision.document), written=self._asked.given, changes={}
        )  # fmt: skip
        self._names = names_in(self._asked.written.text)
        self._tell_address()
        ui.timer(0.01, self._look_up, once=True)

    async def _look_up(self) -> None:
        if self._document is None:
            return
        with suppress(LumpedError):
            self._show_past(await asyncio.to_thread(self._kitchen.shelf.kept, self._document))

    def _show_past(self, kept: Kept) -> None:
        self._kept_line.tell(kept_words(kept))
        reveal(self._kept_line, True)
        self._past_place.clear()
        with self._past_place:
            Past(self._kitchen, kept, on_changed=self._changed)

    def _changed(self) -> Any:
        if self._on_changed is not None:
            return self._on_changed()
        assert self._document is not None
        return ui.navigate.to(paths.kept(self._document))

    def _hand_out(self) -> None:
        given = self._written()
        ui.download(given.text.encode(), given.name, "application/toml")
