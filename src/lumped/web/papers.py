"""Papers of a dough to take along: its recipe card and its labels, in four languages, on the paper that there is."""

from collections.abc import Callable
from datetime import date
from functools import partial

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.asking_paper import carded, tagged
from lumped.app.given import Given
from lumped.texts import LANGUAGES, say
from lumped.web.fields import live_field, select
from lumped.web.kitchen import Kitchen
from lumped.web.looks import press, reveal, sorry
from lumped.web.words import Words

__all__ = ["Papers"]

_BEAT = 0.1  # s
PAPERS = ("a4", "us-letter")
_WORK = {"card": carded, "labels": tagged}


class Papers:
    """Buttons for the papers of a dough.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    written : callable
        Gives the recipe as it is now.
    people : callable, optional
        Gives for whom the card is, in words, or ""; without it the page asks.
    """

    def __init__(self, kitchen: Kitchen, written: Callable[[], Given], people: Callable[[], str] | None = None) -> None:
        self._kitchen, self._written, self._said_people = kitchen, written, people
        self._chosen = {"language": "en", "paper": kitchen.settings.paper, "people": ""}
        papers = [(each, say(f"web-paper-{each}")) for each in PAPERS]
        with html.div().classes("papers").mark("papers"):
            if people is None:
                live_field("people", say("web-paper-people"), "", partial(self._choose, "people"), pause=0.1,
                           maxlength=60, placeholder=say("web-paper-people-as-written"))  # fmt: skip
            select(say("web-paper-language"), [(each, say(f"web-paper-{each}")) for each in LANGUAGES], "en",
                   partial(self._choose, "language"), "paper-language")  # fmt: skip
            select(say("web-paper-size"), papers, kitchen.settings.paper, partial(self._choose, "paper"), "paper")
        with html.div().classes("takes"):
            self._buttons = {
                what: press(say(f"web-take-{what}"), partial(self._write, what), f"take-{what}") for what in _WORK
            }
        self._waiting = Words("p", say("web-paper-working"), "soft hidden-now").props("role=status")
        self._trouble: Element = html.div()

    def _choose(self, what: str, value: str) -> None:
        self._chosen[what] = value

    def _write(self, what: str) -> None:
        """Have a paper written, and hand it over."""
        given, button, language = self._written(), self._buttons[what], self._chosen["language"]
        people = self._chosen["people"] if self._said_people is None else self._said_people()
        said = {**self._chosen, "on": date.today().isoformat(), "people": people}
        question = Question(given=given, said=said)
        ticket = self._kitchen.jobs.submit(_WORK[what], question, question.key)
        button.props("disabled")
        self._trouble.clear()
        reveal(self._waiting, True)

        def look() -> None:
            if not ticket.done:
                return
            timer.cancel()
            button.props(remove="disabled")
            reveal(self._waiting, False)
            answer = ticket.answer()
            if answer.failure is not None:
                with self._trouble:
                    sorry(answer.failure["message"])
            elif answer.content is not None:
                name = f"{given.name.removesuffix('.toml')}-{what}-{language}.pdf"
                ui.download(answer.content, name, "application/pdf")

        timer = ui.timer(_BEAT, look)
