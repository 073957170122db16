"""Papers of a dough to take along: its recipe card and its labels, each in four languages."""

from collections.abc import Callable
from datetime import date
from functools import partial

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.asking_paper import carded, tagged
from lumped.app.given import Given
from lumped.texts import LANGUAGES, say
from lumped.web.fields import select
from lumped.web.kitchen import Kitchen
from lumped.web.looks import press, reveal, sorry
from lumped.web.words import Words

__all__ = ["Papers"]

_BEAT = 0.1  # s
_WORK = {"card": carded, "labels": tagged}


class Papers:
    """Buttons for the papers of a dough.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    written : callable
        Gives the recipe as it is now.
    """

    def __init__(self, kitchen: Kitchen, written: Callable[[], Given]) -> None:
        self._kitchen, self._written, self._language = kitchen, written, "en"
        with html.div().classes("papers").mark("papers"):
            select(say("web-paper-language"), [(each, say(f"web-paper-{each}")) for each in LANGUAGES], "en",
                   self._speak, "paper-language")  # fmt: skip
            self._buttons = {
                what: press(say(f"web-take-{what}"), partial(self._write, what), f"take-{what}") for what in _WORK
            }
        self._waiting = Words("p", say("web-paper-working"), "soft hidden-now").props("role=status")
        self._trouble: Element = html.div()

    def _speak(self, language: str) -> None:
        self._language = language

    def _write(self, what: str) -> None:
        """Have a paper written, and hand it over."""
        given, button, language = self._written(), self._buttons[what], self._language
        said = {"on": date.today().isoformat(), "language": language, "paper": self._kitchen.settings.paper}
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
