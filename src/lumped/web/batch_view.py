"""A batch of the notebook on its page: what was weighed, measured and felt, and what it taught of its recipe."""

import asyncio
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.batches import batch_told
from lumped.app.kept import Kept
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import hand_out, lead_to, listed
from lumped.web.past import put_old
from lumped.web.sources import Sources
from lumped.web.tally import tally
from lumped.web.words import Words

__all__ = ["BatchView"]


class BatchView:
    """A batch, as it is now or as it once was.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    kept : Kept
        The batch.
    on_changed : callable
        Called when another revision was brought back.
    """

    def __init__(self, kitchen: Kitchen, kept: Kept, on_changed: Callable[[], Any]) -> None:
        self._kitchen, self._kept = kitchen, kept
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        if kept.old:
            put_old(kitchen, kept, on_changed)
        for recipe in (each for each in kept.uses if each.kind == "recipe"):
            lead_to(say("web-batch-of", title=recipe.title), paths.kept(recipe.document), "to-recipe", "back")
        self._later = Later(kitchen, batch_told, self._show)
        self._found: Element = html.div().classes("ingredient").mark("batch-found").props("aria-live=polite")
        with html.section().classes("slip folds"), html.details():
            Words("summary", say("web-batch-file"))
            Words("pre", kept.text, "as-file")
        with html.div().classes("takes"):
            if not kept.old:
                lead_to(say("web-own-change"), paths.batch(kept.revision.document), "batch-change", "take")
            hand_out(say("web-take-file"), kept.text, kept.given.name if kept.given else "", "take-file")
        ui.timer(0.01, self._ask, once=True)

    async def _ask(self) -> None:
        given = self._kept.given
        assert given is not None  # the page looked
        batches: tuple[Any, ...] = ()
        for recipe in (each for each in self._kept.uses if each.kind == "recipe"):
            try:
                whole = (await asyncio.to_thread(self._kitchen.shelf.kept, recipe.document)).given
            except LumpedError:
                continue
            batches = whole.batches if whole is not None else ()
        self._later.ask(Question(given=replace(given, batches=batches)))

    def _show(self, told: Mapping[str, Any]) -> None:
        self._told = told["sources"]
        self._found.clear()
        with self._found:
            self._put_taken(told)
            self._put_learnt(told)
            if told["weighed"]:
                self._put_weighed(told["weighed"])

    def _put_taken(self, told: Mapping[str, Any]) -> None:
        with html.section().classes("slip").mark("batch-found-taken"):
            Words("h2", say("web-batch-found"))
            listed([*told["taken"], *([say("web-batch-invented")] if told["invented"] else [])])
            if told["notes"]:
                Words("p", told["notes"], "remark")

    def _put_learnt(self, told: Mapping[str, Any]) -> None:
        """Each property without and with what was found."""
        stages = [say(f"web-batch-stage-{each}") for each in told["stages"]]
        with html.section().classes("slip").mark("batch-learnt"):
            Words("h2", say("web-batch-learnt"))
            Words("p", say("web-batch-learnt-lure"), "soft")
            with html.dl().classes("numbers ingredient-numbers"):
                for _, words, figures in told["learnt"]:
                    for (key, figure), stage in zip(figures, stages, strict=True):
                        with html.dt():
                            Words("span", words)
                            Words("span", stage, "soft status")
                        with html.dd():
                            self._sources.figure(key, figure)
            listed(told["taught"])

    def _put_weighed(self, rows: list[tuple[str, str, str]]) -> None:
        with html.section().classes("slip").mark("batch-weighed"):
            Words("h2", say("web-batch-scale"))
            tally(["", say("web-batch-by-recipe"), say("web-batch-really")], rows, numbers=(1, 2))
