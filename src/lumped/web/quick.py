"""Answers that come while a hand is still moving: one at a time beside the event loop, and the last question wins."""

import asyncio
import traceback
from collections.abc import Callable
from typing import Any

from lumped.errors import LumpedError

__all__ = ["Quick", "answer_to"]


class Quick:
    """Light work in a thread of the app.

    Parameters
    ----------
    work : callable
        What works a question out.
    on_answer : callable
        Shows an answer, or what failed as the command line prints it: `on_answer(content, failure)`.
    """

    def __init__(self, work: Callable[..., Any], on_answer: Callable[[Any, dict[str, Any] | None], None]) -> None:
        self._work, self._on_answer = work, on_answer
        self._next: tuple[Any, ...] | None = None
        self._busy = False

    async def ask(self, *question: Any) -> None:
        """Work a question out; a question that waited behind another is dropped for a newer one."""
        self._next = question
        if self._busy:
            return
        self._busy = True
        try:
            while self._next is not None:
                question, self._next = self._next, None
                self._on_answer(*await answer_to(self._work, *question))
        finally:
            self._busy = False


async def answer_to(work: Callable[..., Any], *question: Any) -> tuple[Any, dict[str, Any] | None]:
    """Work a question out in a thread; give the answer, or what failed."""
    try:
        return await asyncio.to_thread(work, *question), None
    except LumpedError as error:
        return None, error.as_dict()
    except Exception:
        traceback.print_exc()
        return None, LumpedError("work-broke-off").as_dict()
