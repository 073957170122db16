"""A document of the notebook, as it is now or as it once was."""

import asyncio

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.given import Given
from lumped.app.kept import Kept
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked, sorted_query
from lumped.web.batch_view import BatchView
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, press
from lumped.web.nothing import nothing_here
from lumped.web.own_ingredient import put_own
from lumped.web.past import Past, changed, kept_words, kind_words, put_old
from lumped.web.recipe_view import RecipeView
from lumped.web.sculpture_view import SculptureView
from lumped.web.seen import outcome_words
from lumped.web.shape_page import PulledAbout, pulled_about_in
from lumped.web.words import Words

__all__ = ["kept_page"]

_NONE = 0  # no revision has this number
_NOTHING = ("document-unknown", "revision-unknown", "notebook-not-there")

_GO_ON = """
const told = document.querySelector(".kept-line");
told?.setAttribute("tabindex", "-1");
told?.focus();
"""


async def kept_page(kitchen: Kitchen, document: str, asked: PageArguments, number: str = "") -> None:
    """Lay out the page of a document, or of one revision of it."""
    with html.div().style("display: contents") as place:
        pass
    await _KeptPage(kitchen, place, document, number, dict(asked.query_parameters)).lay()


class _KeptPage:
    """The page; it is laid anew when another revision was brought back."""

    def __init__(self, kitchen: Kitchen, place: Element, document: str, number: str, asked: dict[str, str]) -> None:
        self._kitchen, self._place, self._document, self._number = kitchen, place, document, number
        self._asked = asked

    async def lay(self) -> None:
        number = (paths.number_in(self._number) or _NONE) if self._number else None
        try:
            kept = await asyncio.to_thread(self._kitchen.shelf.kept, self._document, number)
        except LumpedError as error:
            self._place.clear()
            with self._place:
                nothing_here(say("web-no-kept") if error.code in _NOTHING else str(error))
            return
        self._place.clear()
        with self._place:
            self._put(kept)

    def _put(self, kept: Kept) -> None:
        title = kept.revision.title
        ui.page_title(say("web-page-title", title=title))
        if kept.given is None:
            self._put_plain(kept)
        elif kept.revision.kind == "recipe":
            self._put_recipe(kept, kept.given)
        elif kept.revision.kind in ("ingredient", "batch"):
            self._put_noted(kept)
        elif not kept.old and (found := pulled_about_in(kept, self._asked)):
            PulledAbout(self._kitchen, found[0], found[1], kept=kept, on_changed=self._changed)
        else:
            SculptureView(self._kitchen, title, kept=kept, on_changed=self._changed).ask(kept.given)

    def _put_recipe(self, kept: Kept, given: Given) -> None:
        document, number = kept.revision.document, kept.revision.number
        page = paths.old(document, number) if kept.old else paths.kept(document)
        options, changes = sorted_query(self._asked)
        asked = Asked(page=page, written=given, changes={} if kept.old else changes, options=options, kept=kept)
        RecipeView(self._kitchen, asked, on_changed=self._changed)

    def _put_noted(self, kept: Kept) -> None:
        """An ingredient or a batch, and how it came to be."""
        own = kept.revision.kind == "ingredient"
        with html.main(), html.div().classes("sheet-width question"):
            with html.header().classes("top"):
                back = say("web-back-to-pantry") if own else say("web-back")
                lead_to(back, paths.PANTRY if own else paths.TABLE, "to-pantry" if own else "to-table", "back")
                Words("h1", kept.revision.title)
                Words("p", kept_words(kept), "kept-line")
            if own:
                put_own(self._kitchen, kept, self._changed)
            else:
                BatchView(self._kitchen, kept, self._changed)
            Past(self._kitchen, kept, on_changed=self._changed)

    async def _changed(self) -> None:
        """Show what it is now."""
        if self._number:
            ui.navigate.to(paths.kept(self._document))
            return
        self._asked = {}
        ui.navigate.history.replace(paths.kept(self._document))
        await self.lay()
        with self._place:
            ui.run_javascript(_GO_ON)

    def _put_plain(self, kept: Kept) -> None:
        """A document that was taken out, or of a kind that has no page of its own."""
        with html.main().classes("sheet-width plain").mark("plain"):
            lead_to(say("web-back"), paths.TABLE, "to-table", "back")
            Words("h1", kept.revision.title)
            Words("p", kind_words(kept.revision.kind), "soft")
            Words("p", kept_words(kept), "kept-line")
            if kept.revision.kind == "outcome" and kept.revision.body is not None:
                Words("p", outcome_words(kept.revision.body)).mark("outcome")
            if kept.old:
                put_old(self._kitchen, kept, self._changed)
            elif kept.revision.removed:
                self._put_removed(kept)
            if kept.text:
                Words("pre", kept.text, "slip as-file")
            Past(self._kitchen, kept, on_changed=self._changed)

    def _put_removed(self, kept: Kept) -> None:
        with html.div().classes("old-slip").mark("removed"):
            Words("p", say("web-removed"))
            trouble = html.div()
            with html.div().classes("takes"):
                press(
                    say("web-bring-back"),
                    lambda: changed(trouble, self._changed, self._kitchen.shelf.bring_back, kept.revision.document),
                    "bring-this-back",
                )
