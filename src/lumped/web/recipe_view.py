"""A recipe on the page: what its dough does comes first, then what goes in, which can be changed."""

import asyncio
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.given import Given
from lumped.app.jobs import Ticket
from lumped.app.recipes import amounts_in, kneaded, with_amounts
from lumped.app.shelf import Kept, title_in
from lumped.errors import LumpedError
from lumped.notebook import Revision
from lumped.texts import say
from lumped.web import paths
from lumped.web.keeping import Keeping
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, press, reveal
from lumped.web.past import Past, kept_words, put_old
from lumped.web.words import Words

__all__ = ["RecipeView"]

_BEAT = 0.08  # s
_THROTTLE = 0.4  # s


class RecipeView:
    """A recipe, looked at and changed.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    given : Given
        The recipe.
    kept : Kept, optional
        The revision of the notebook that it is.
    on_changed : callable, optional
        Called when another revision was brought back, or the recipe was taken out of the notebook.
    """

    def __init__(
        self,
        kitchen: Kitchen,
        given: Given,
        *,
        kept: Kept | None = None,
        on_changed: Callable[[], Any] | None = None,
    ) -> None:
        self._kitchen, self._given, self._kept, self._on_changed = kitchen, given, kept, on_changed
        self._document = kept.revision.document if kept is not None else None
        self._amounts: list[str] | None = None
        self._ticket: Ticket | None = None
        with html.main():
            with html.div().classes("sheet-width recipe").mark("recipe") as self._page:
                self._put_top(kept)
                with html.div().classes("bowl"):
                    self._put_dough()
                    self._put_ingredients()
                with html.div().classes("says"):
                    self._folds = html.section().classes("slip folds")
                    self._keep_place = html.div().style("display: contents")
                    with html.div().classes("takes"):
                        press(say("web-take-file"), self._hand_out, "take-file")
            self._past_place = html.div().classes("sheet-width past-place")
        self._timer = ui.timer(_BEAT, self._look, active=False)
        ui.context.client.on_delete(self._stop)
        if kept is not None:
            self._show_past(kept)
        self._ask()

    def _put_top(self, kept: Kept | None) -> None:
        title = title_in(self._given)
        ui.page_title(say("web-page-title", title=title))
        with html.header().classes("top"):
            lead_to(say("web-back"), paths.TABLE, "to-table", "back")
            self._heading = Words("h1", title)
            self._invented = Words("p", say("web-recipe-invented"), "soft invented hidden-now")
            self._kept_line = Words("p", "", "kept-line hidden-now").mark("kept-line")
            if kept is not None and kept.old:
                put_old(self._kitchen, kept, self._changed)
            self._story = Words("p", "", "soft story-text hidden-now")

    def _put_dough(self) -> None:
        with html.section().classes("slip does").props("aria-live=polite").mark("does"):
            self._does = Words("p", say("web-working"), "state")
            self._figures = Words("p", "", "figures")
            self._notes = html.ul().classes("why notes")

    def _put_ingredients(self) -> None:
        with html.section().classes("slip goes-in"):
            Words("h2", say("web-goes-in"))
            self._ingredients: Element = html.div().classes("ingredients")
            self._made = Words("p", "", "soft")

    def _ask(self) -> None:
        """Have the dough worked out, no longer the one before."""
        self._stop()
        asked = self._written()
        self._ticket = self._kitchen.jobs.submit(kneaded, asked, asked.key)
        self._timer.activate()

    def _written(self) -> Given:
        """Give the recipe with the amounts that stand on the page."""
        return with_amounts(self._given, self._amounts) if self._amounts is not None else self._given

    def _stop(self) -> None:
        if self._ticket is not None:
            self._ticket.stop()
        self._ticket = None

    def _look(self) -> None:
        ticket = self._ticket
        if ticket is not None and not ticket.done:
            return
        self._timer.deactivate()
        self._ticket = None
        answer = ticket.answer() if ticket is not None else None
        if answer is None or answer.stopped:
            return
        if answer.failure is not None:
            self._fail(answer.failure["message"])
        else:
            self._show(answer.content)

    def _fail(self, words: str) -> None:
        self._does.tell(say("web-dough-not"))
        self._figures.tell("")
        self._page.classes("failing")
        self._tell_notes([words])

    def _show(self, shown: Mapping[str, Any]) -> None:
        self._page.classes(remove="failing")
        dough = shown["dough"]
        self._does.tell(say("web-dough-conducts" if shown["conducts"] else "web-dough-blocks"))
        figures = {"figure": shown["resistivity"], "other": shown["resistivity_ohm_cm"]}
        self._figures.tell(say("web-dough-figures", temperature=f"{shown['temperature_degC']:g}", **figures))
        self._tell_notes([*shown["does"], *dough["notes"]])
        self._story.tell(shown["story"])
        reveal(self._story, bool(shown["story"]))
        reveal(self._invented, dough["invented"])
        self._made.tell(say(f"web-cooked-{shown['method'].replace(' ', '-')}"))
        if self._amounts is None:
            self._lay_ingredients(shown["ingredients"])
            self._put_keeping()
            self._lay_folds(shown)
        else:
            self._tell_folds(shown)
        self._page.props.update({"data-kneaded": "yes"})

    def _tell_notes(self, notes: Sequence[str]) -> None:
        self._notes.clear()
        with self._notes:
            for note in notes:
                Words("li", note)

    def _lay_ingredients(self, ingredients: Sequence[tuple[str, Any]]) -> None:
        """Lay out what goes in; in an old revision it can only be read."""
        self._amounts = amounts_in(self._given.text)
        fixed = self._kept is not None and self._kept.old
        with self._ingredients:
            for k, (name, as_needed) in enumerate(ingredients):
                Words("label", name).props(f"for=amount-{k}")
                with html.div():
                    amount = Element("input").props(f"id=amount-{k} autocomplete=off").mark(f"amount-{k}")
                    amount.props.update(
                        {"^value": self._amounts[k], "maxlength": 60} | ({"readonly": True} if fixed else {})
                    )
                    amount.on(
                        "input", lambda event, k=k: self._change(k, str(event.args)), throttle=_THROTTLE,
                        leading_events=False, js_handler="(event) => emit(event.target.value)",
                    )  # fmt: skip
                    if as_needed is not None:
                        least, most = (f"{each:g}" for each in as_needed)
                        Words("span", say("web-by-feel", least=least, most=most), "soft")

    def _change(self, k: int, amount: str) -> None:
        assert self._amounts is not None
        self._amounts[k] = amount
        self._ask()

    def _lay_folds(self, shown: Mapping[str, Any]) -> None:
        with self._folds:
            with html.details().classes("careful"):
                Words("summary", say("web-careful"))
                self._cautions = html.ul().classes("notes")
            with html.details():
                Words("summary", say("heading-narrower"))
                self._narrower = html.ul().classes("notes")
            with html.details():
                Words("summary", say("web-dough-steps"))
                self._steps = html.dl().classes("numbers")
        self._tell_folds(shown)

    def _tell_folds(self, shown: Mapping[str, Any]) -> None:
        self._cautions.clear()
        with self._cautions:
            for each in shown["cautions"]:
                Words("li", each)
        self._narrower.clear()
        with self._narrower:
            for each in shown["narrower"]:
                Words("li", each)
        self._steps.clear()
        with self._steps:
            for words, figure in shown["steps"]:
                Words("dt", words)
                Words("dd", figure)

    def _put_keeping(self) -> None:
        if self._kept is not None and self._kept.old:
            return
        with self._keep_place:
            self._keeping = Keeping(
                self._kitchen, given=self._written, title=title_in(self._given),
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
        ui.navigate.history.replace(paths.kept(revision.document))
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
