"""The notebook: everything in it, what was taken out, where it lies and who writes in it."""

import asyncio

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.kept import Where
from lumped.errors import LumpedError
from lumped.notebook import Entry
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen
from lumped.web.leaves import Leaves
from lumped.web.looks import lead_to, moment, press, sorry
from lumped.web.past import changed, kind_words
from lumped.web.words import Words

__all__ = ["notebook_page"]

SHOWN = 40


async def notebook_page(kitchen: Kitchen) -> None:
    """Lay out the page of the notebook."""
    ui.page_title(say("web-page-title", title=say("web-notebook")))
    with html.main().classes("sheet-width notebook").mark("notebook"):
        lead_to(say("web-back"), paths.TABLE, "to-table", "back")
        Words("h1", say("web-notebook"))
        place: Element = html.section().classes("lies-where")
        leaves = Leaves(kitchen, kinds=("sculpture", "recipe", "batch", "ingredient", "outcome"), shown=SHOWN)
        taken_out: Element = html.div()
    try:
        where = await asyncio.to_thread(kitchen.shelf.where)
    except LumpedError as error:
        with place:
            sorry(str(error), "notebook-trouble")
        return
    _put_where(place, where)

    async def show() -> None:
        await leaves.show()
        await _put_taken_out(kitchen, taken_out, show)

    await show()


def _put_where(place: Element, where: Where) -> None:
    with place:
        if not where.there:
            Words("p", say("web-notebook-none", place=where.place)).mark("notebook-where")
            return
        Words("p", say("web-notebook-where", place=where.place), "soft").mark("notebook-where")
        if where.folder:
            Words("p", say("web-notebook-folder", folder=where.folder), "soft")
        Words("p", say("web-notebook-who", who=where.who), "soft").mark("notebook-who")
        if where.read_only:
            Words("p", say("web-notebook-read-only"), "sorry")


async def _put_taken_out(kitchen: Kitchen, place: Element, on_changed: object) -> None:
    """Fold what was taken out below the rest; each can be brought back."""
    try:
        removed = await asyncio.to_thread(kitchen.shelf.leaves, removed=True)
    except LumpedError:
        removed = ()
    place.clear()
    if not removed:
        return
    with place, html.details().classes("taken-out").mark("taken-out"):
        Words("summary", say("web-taken-out", count=len(removed)))
        trouble = html.div()
        with html.ol().classes("leaves"):
            for each in removed:
                with html.li().classes("leaf-row"):
                    _put_removed(kitchen, each.entry, trouble, on_changed)


def _put_removed(kitchen: Kitchen, entry: Entry, trouble: Element, on_changed: object) -> None:
    with html.div():
        lead_to(entry.title, paths.kept(entry.document), f"removed-{entry.document}", "back")
        Words("span", kind_words(entry.kind), "kind")
        Words("p", say("web-by", moment=moment(entry.at), who=entry.made_by), "soft")
    press(
        say("web-bring-back"),
        lambda: changed(trouble, on_changed, kitchen.shelf.bring_back, entry.document),  # type: ignore[arg-type]
        "bring-back",
    )
