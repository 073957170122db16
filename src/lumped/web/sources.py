"""Numbers that can be asked where they come from: each is a button, and one slip on the page tells."""

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from itertools import count
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.texts import say
from lumped.web.fold import Fold
from lumped.web.looks import listed, press
from lumped.web.quick import answer_to
from lumped.web.words import Figure, Words

__all__ = ["Sources"]

_ids = count(1)
_GRAVEST = 5  # cautions that are never folded


class Sources:
    """The slip that says where a number comes from; it lies over the page until it is put away.

    Parameters
    ----------
    ask : callable
        Takes the key of a number, gives what `app.sources.source_of` gives.
    """

    def __init__(self, ask: Callable[[str], Mapping[str, Any]]) -> None:
        self._ask = ask
        heading = f"source-{next(_ids)}"
        self._slip = Element("dialog").classes("slip source").mark("source")
        self._slip.props.update({"aria-labelledby": heading})
        self._slip.on("click", js_handler="(event) => event.target === event.currentTarget && event.target.close()")
        with self._slip:
            Words("p", say("web-source-heading"), "kind")
            self._title = Words("h2", "").props(f"id={heading} tabindex=-1 autofocus").mark("source-title")
            self._figure = Words("p", "", "state")
            self._inside: Element = html.div().classes("source-inside")
            away = press(say("web-source-close"), lambda: None, "source-close")
            away.on("click", js_handler="(event) => event.target.closest('dialog').close()")

    def figure(self, what: str, text: str = "") -> Words:
        """Put a number on the page."""
        button = Figure("button", text, "figure").mark(f"figure-{what}")
        button.props.update({"type": "button", "aria-haspopup": "dialog", "data-figure": what})
        button.on("click", partial(self._show, what, button))
        return button

    def where(self, what: str) -> None:
        """Ask where the numbers of the sentences or the table above come from."""
        with html.div().classes("where-from"):
            self.figure(what, say("web-source-ask"))

    def cautions(self, rows: Sequence[tuple[str, str, str]]) -> None:
        """Put cautions on the page, the gravest first: key, severity and words of each; a phone folds the rest."""
        self._lay_cautions(rows[:_GRAVEST])
        if rows[_GRAVEST:]:
            with Fold("cautions", say("web-more-cautions", count=len(rows) - _GRAVEST), "span"):
                self._lay_cautions(rows[_GRAVEST:])

    def _lay_cautions(self, rows: Sequence[tuple[str, str, str]]) -> None:
        with html.ul().classes("cautions"):
            for key, severity, words in rows:
                with html.li().classes(f"caution {severity.replace(' ', '-')}"):
                    Words("span", words)
                    self.figure(key, say("web-source-ask"))

    async def _show(self, what: str, button: Words) -> None:
        told, failure = await answer_to(self._ask, what)
        self._title.tell("" if told is None else told["title"])
        self._figure.tell(button.text)
        self._inside.clear()
        with self._inside:
            if failure is not None:
                Words("p", failure["message"])
            else:
                self._lay(told)
        ui.run_javascript(f"getHtmlElement({self._slip.id}).showModal()")

    def _lay(self, told: Mapping[str, Any]) -> None:
        Words("p", told["status"], "status-words")
        if told["note"]:
            Words("p", told["note"], "soft")
        Words("h3", say("web-source-sources"))
        listed(told["sources"] or [say("web-source-none")])
        if told["made_of"]:
            Words("h3", say("web-source-made-of"))
            with html.dl().classes("numbers open-numbers"):
                for each in told["made_of"]:
                    Words("dt", each["words"])
                    with html.dd():
                        Words("span", each["figure"])
                        Words("span", each["status"], "soft status")
