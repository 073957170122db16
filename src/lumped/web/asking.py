"""Asking the workers for a page: first a sketch, then a quick answer, then the full one, each replacing the last.

A new question stops the one before it, so the page never shows an answer to what is no longer asked.
"""

from collections.abc import Callable
from time import monotonic
from typing import Any

from nicegui import ui

from lumped.app.answers import answered, sketched
from lumped.app.given import Given
from lumped.app.jobs import Jobs, Ticket, Work

__all__ = ["Asking"]

_BEAT = 0.08  # s
_REST = 0.6  # s; the full answer is asked for when sliders have come to rest for so long


class Asking:
    """One page's questions.

    Parameters
    ----------
    jobs : Jobs
        The workers.
    on_sketch : callable
        Given the drawings of a sculpture that is not judged yet.
    on_answer : callable
        Given an answer, and whether it is the last one.
    on_failure : callable
        Given a failure as the command line prints it.
    on_share : callable
        Told the share that is done; None when nothing is being worked out.
    """

    def __init__(
        self,
        jobs: Jobs,
        *,
        on_sketch: Callable[[dict[str, str]], None],
        on_answer: Callable[[dict[str, Any], bool], None],
        on_failure: Callable[[dict[str, Any]], None],
        on_share: Callable[[float | None], None],
    ) -> None:
        self._jobs, self._on_share = jobs, on_share
        self._on_sketch, self._on_answer, self._on_failure = on_sketch, on_answer, on_failure
        self._steps: list[tuple[Work, Given]] = []
        self._full_from = 0.0
        self._ticket: Ticket | None = None
        self._timer = ui.timer(_BEAT, self._look, active=False)
        ui.context.client.on_delete(self.stop)

    def ask(self, given: Given, effort: str = "full") -> None:
        """Ask about a sculpture, no longer about the one before."""
        self.stop()
        self._full_from = monotonic() + _REST
        self._steps = [(sketched, given.computed("quick")), (answered, given.computed("quick"))]
        if effort == "full":
            self._steps.append((answered, given.computed("full")))
        self._next()

    def stop(self) -> None:
        """Ask nothing any more."""
        if self._ticket is not None:
            self._ticket.stop()
        self._ticket, self._steps = None, []

    def _next(self) -> None:
        if self._steps[0][1].effort == "full" and monotonic() < self._full_from:
            return
        work, given = self._steps.pop(0)
        self._ticket = self._jobs.submit(work, given, given.key)
        self._timer.activate()
        self._look()

    def _look(self) -> None:
        """See how far the work is."""
        if self._ticket is None and self._steps:
            self._next()
            return
        if self._ticket is None:
            self._timer.deactivate()
            self._on_share(None)
            return
        if not self._ticket.done:
            self._on_share(self._ticket.share)
            return
        answer, self._ticket = self._ticket.answer(), None
        if answer.failure is not None:
            self._steps = []
            self._on_failure(answer.failure)
        elif not answer.stopped:
            self._show(answer.content)
        self._look()

    def _show(self, content: dict[str, Any]) -> None:
        if "verdict" in content:
            self._on_answer(content, not self._steps)
        else:
            self._on_sketch(content)
