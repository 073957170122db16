"""How a document of the notebook came to be: its revisions, what changed between them, what it is kin to."""

import asyncio
from collections.abc import Callable, Sequence
from functools import partial
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.kept import Kept, Related
from lumped.errors import LumpedError
from lumped.notebook import Revision
from lumped.texts import has, say
from lumped.web import paths
from lumped.web.fields import select
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, moment, press, sorry
from lumped.web.words import Words

__all__ = ["Past", "kept_words", "kind_words", "put_old"]

_SHOWN = 12  # revisions that are not folded away


class Past:
    """The past of one document, on its page.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    kept : Kept
        The document.
    on_changed : callable
        Called when a revision was brought back, or the document taken out.
    """

    def __init__(self, kitchen: Kitchen, kept: Kept, *, on_changed: Callable[[], Any]) -> None:
        self._kitchen, self._kept, self._on_changed = kitchen, kept, on_changed
        with html.section().classes("past").props("id=past").mark("past") as place:
            Words("h2", say("web-past"))
            place.props.update({"aria-label": say("web-past")})
            newest_first = kept.history[::-1]
            self._rows(newest_first[:_SHOWN])
            if len(newest_first) > _SHOWN:
                with html.details():
                    Words("summary", say("web-past-older", count=len(newest_first) - _SHOWN))
                    self._rows(newest_first[_SHOWN:])
            self._trouble = html.div()
            if len(kept.history) > 1:
                self._put_changes()
            self._put_kin()
            if not kept.newest.removed:
                with html.div().classes("takes"):
                    press(say("web-remove"), self._remove, "remove")
                Words("p", say("web-remove-comfort"), "soft")

    def _rows(self, revisions: Sequence[Revision]) -> None:
        with html.ol().classes("leaves"):
            for each in revisions:
                with html.li().classes("leaf-row").mark(f"revision-{each.number}"):
                    self._row(each)

    def _row(self, each: Revision) -> None:
        looked_at = each.number == self._kept.revision.number
        with html.div():
            if looked_at or each.removed:
                Words("b", say("web-revision", number=each.number))
            else:
                address = paths.kept if each.number == self._kept.newest.number else paths.old
                arguments = (each.document,) if address is paths.kept else (each.document, each.number)
                lead_to(say("web-revision", number=each.number), address(*arguments), f"look-{each.number}", "back")
            if looked_at:
                Words("span", say("web-revision-here"), "here")
            Words("p", say("web-by", moment=moment(each.at), who=each.made_by), "soft")
            if words := _what(each):
                Words("p", words)
            if each.note:
                Words("p", each.note, "remark")
        if not each.removed and each.number != self._kept.newest.number:
            number = each.number
            press(say("web-bring-back"), lambda: self._bring_back(number), f"bring-back-{number}")

    def _put_changes(self) -> None:
        """What changed between any two; at first between the one that is looked at and the one before it."""
        history = self._kept.history
        after = max(self._kept.revision.number, history[1].number)
        there = [each.number for each in history if not each.removed]
        taken_out = self._kept.revision.removed and len(there) > 1
        self._pair = there[-2:] if taken_out else [after - 1, after]
        options = [(str(each.number), say("web-revision", number=each.number)) for each in history]
        Words("h3", say("web-changes"))
        with html.div().classes("pair"):
            for k, label in enumerate((say("web-changes-from"), say("web-changes-to"))):
                select(label, options, str(self._pair[k]), partial(self._pick, k), f"pair-{k}")
        self._changes: Element = html.ul().classes("notes changes").props("role=status").mark("changes")
        with self._changes:
            ui.timer(0.01, self._compare, once=True)

    async def _pick(self, k: int, value: str) -> None:
        self._pair[k] = int(value)
        await self._compare()

    async def _compare(self) -> None:
        pair = tuple(self._pair)
        try:
            lines = await asyncio.to_thread(self._kitchen.shelf.changes, self._kept.revision.document, *pair)
        except LumpedError as error:
            lines = (str(error),)
        if pair != tuple(self._pair):
            return
        self._changes.clear()
        with self._changes:
            for line in lines or (say("web-changes-none"),):
                Words("li", line)

    def _put_kin(self) -> None:
        kin = (
            (say("web-made-from"), (self._kept.made_from,) if self._kept.made_from else ()),
            (say("web-made-into"), self._kept.made_into),
            (say("web-uses" if self._kept.revision.kind == "sculpture" else "web-of"), self._kept.uses),
            (say("web-used-by"), self._kept.used_by),
        )
        for heading, related in kin:
            if related:
                Words("h3", heading)
                with html.ul().classes("leaves"):
                    for each in related:
                        with html.li():
                            self._kin(each)

    def _kin(self, each: Related) -> None:
        words = say("web-kin", title=each.title, kind=kind_words(each.kind), number=each.number)
        lead_to(words, paths.kept(each.document), f"kin-{each.document}", "back")

    async def _bring_back(self, number: int) -> None:
        await self._change(self._kitchen.shelf.bring_back, number)

    async def _remove(self) -> None:
        await self._change(self._kitchen.shelf.remove)

    async def _change(self, work: Callable[..., Any], *arguments: int) -> None:
        await changed(self._trouble, self._on_changed, work, self._kept.revision.document, *arguments)


async def changed(trouble: Element, on_changed: Callable[[], Any], work: Callable[..., Any], *arguments: Any) -> None:
    """Do something in the notebook and go on, or say why it did not go."""
    trouble.clear()
    try:
        await asyncio.to_thread(work, *arguments)
    except LumpedError as error:
        with trouble:
            sorry(str(error))
        return
    result = on_changed()
    if result is not None:
        await result


def put_old(kitchen: Kitchen, kept: Kept, on_changed: Callable[[], Any]) -> None:
    """Say clearly that a revision is an old one, lead to the newest, and offer to bring it back."""
    document, number = kept.revision.document, kept.revision.number
    with html.div().classes("old-slip").mark("old"):
        Words("p", say("web-old", number=number, newest=kept.newest.number))
        trouble = html.div()
        with html.div().classes("takes"):
            lead_to(say("web-old-newest"), paths.kept(document), "to-newest", "take")
            if not kept.revision.removed:
                press(
                    say("web-bring-back"),
                    lambda: changed(trouble, on_changed, kitchen.shelf.bring_back, document, number),
                    "bring-this-back",
                )


def kept_words(kept: Kept) -> str:
    """Say which revision it is, of when and by whom."""
    each = kept.revision
    words = say("web-kept-line", number=each.number, moment=moment(each.at), who=each.made_by)
    return " ".join(filter(None, (words, _what(each))))


def _what(each: Revision) -> str:
    if each.removed:
        return say("web-revision-removed")
    return say("web-revision-restored", number=each.restored) if each.restored is not None else ""


def kind_words(kind: str) -> str:
    """Name a kind of document; one that nobody knows here by its own name."""
    return say(f"web-kind-{kind}") if has(f"web-kind-{kind}") else kind
