"""What follows from a dough, on slips: what one change would do, what would narrow its figure, steps, cautions."""

from collections.abc import Mapping, Sequence
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.texts import say
from lumped.web.looks import reveal
from lumped.web.sources import Sources
from lumped.web.words import Words

__all__ = ["DoughFolds"]

_FEW = 5  # changes that are not folded away


class DoughFolds:
    """The slips beside a dough; more can lie in the last row of them (`aside`).

    Parameters
    ----------
    sources : Sources
        Where their numbers are asked for.
    """

    def __init__(self, sources: Sources) -> None:
        self._sources = sources
        with html.section().classes("slip what-ifs").mark("what-ifs"):
            Words("h2", say("web-what-if"))
            Words("p", say("web-what-if-lure"), "soft")
            self._changes = _awaited(html.dl().classes("numbers"))
            with html.details().classes("hidden-now") as self._more_fold:
                Words("summary", say("web-what-if-more"))
                self._more: Element = html.dl().classes("numbers")
        with html.section().classes("slip narrower").mark("narrower"):
            Words("h2", say("heading-narrower"))
            self._narrower = _awaited(html.ul().classes("notes"))
        self.aside: Element = html.div().classes("aside")
        with self.aside:
            self._put_aside()

    def _put_aside(self) -> None:
        with html.section().classes("slip hidden-now").mark("taught") as self._taught:
            Words("h2", say("heading-batches"))
            self._lessons: Element = html.ul().classes("notes")
        with html.section().classes("slip folds"):
            with html.details().classes("careful"):
                Words("summary", say("web-careful"))
                self._cautions = _awaited(html.ul().classes("notes"))
            with html.details().mark("steps"):
                Words("summary", say("web-dough-steps"))
                self._steps = _awaited(html.dl().classes("numbers"))

    def show(self, shown: Mapping[str, Any]) -> None:
        """Show what follows from a dough that was worked out in full."""
        for place in (self._changes, self._narrower, self._cautions, self._steps):
            place.props(remove="data-waiting")
        changes = [(f"what-if-{key}", words, figure) for key, words, figure in shown["what_if"]]
        self._tell_numbers(self._changes, changes[:_FEW])
        self._tell_numbers(self._more, changes[_FEW:])
        reveal(self._more_fold, bool(changes[_FEW:]))
        self._tell_numbers(self._steps, shown["steps"])
        self._narrower.clear()
        with self._narrower:
            for key, words, figure in shown["narrower"]:
                with html.li():
                    Words("span", words, "narrower-words")
                    self._sources.figure(f"narrower-{key}", figure)
        reveal(self._taught, bool(shown["batches"]))
        self._lessons.clear()
        with self._lessons:
            for each in shown["batches"]:
                Words("li", each)
        self._cautions.clear()
        with self._cautions:
            for each in shown["cautions"]:
                Words("li", each)

    def _tell_numbers(self, place: Element, rows: Sequence[tuple[str, str, str]]) -> None:
        place.clear()
        with place:
            for key, words, figure in rows:
                Words("dt", words)
                with html.dd():
                    self._sources.figure(key, figure)


def _awaited(place: Element) -> Element:
    """Have a place say that it is worked out, as long as nothing stands in it."""
    place.props.update({"data-waiting": say("web-working")})
    return place
