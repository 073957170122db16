"""Answers that take their time: a worker of the pool gives them, the last question wins."""

from collections.abc import Callable
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.asking import Question
from lumped.app.jobs import Ticket, Work
from lumped.texts import say
from lumped.web.kitchen import Kitchen
from lumped.web.looks import reveal, sorry
from lumped.web.words import Words

__all__ = ["Later"]

_BEAT = 0.08  # s


class Later:
    """A question to the workers, and what the page says while it waits.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    work : callable
        What answers it.
    on_answer : callable
        Shows what came.
    on_failure : callable
        Takes off the page what no longer holds, when there is no answer.
    """

    def __init__(
        self, kitchen: Kitchen, work: Work, on_answer: Callable[[Any], None],
        on_failure: Callable[[], None] = lambda: None,
    ) -> None:  # fmt: skip
        self._kitchen, self._work, self._on_answer, self._on_failure = kitchen, work, on_answer, on_failure
        self._ticket: Ticket | None = None
        self._waiting = Words("p", say("web-working"), "soft hidden-now").props("role=status").mark("waiting")
        self._trouble: Element = html.div()
        self._timer = ui.timer(_BEAT, self._look, active=False)
        ui.context.client.on_delete(self._stop)

    def ask(self, question: Question) -> None:
        """Ask, no longer what was asked before."""
        self.leave()
        reveal(self._waiting, True)
        self._ticket = self._kitchen.jobs.submit(self._work, question, question.key)
        self._timer.activate()

    def leave(self) -> None:
        """Ask nothing any more."""
        self._stop()
        self._trouble.clear()
        reveal(self._waiting, False)

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
        reveal(self._waiting, False)
        if answer.failure is not None:
            self._on_failure()
            with self._trouble:
                sorry(answer.failure["message"])
        else:
            self._on_answer(answer.content)
