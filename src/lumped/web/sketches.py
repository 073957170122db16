"""Drawings that come in when the workers have made them."""

from collections.abc import Iterable

from nicegui import ui

from lumped.app.answers import sketched
from lumped.app.given import Given
from lumped.web.drawing import Drawing
from lumped.web.kitchen import Kitchen

__all__ = ["draw_soon"]

_BEAT = 0.1  # s


def draw_soon(kitchen: Kitchen, wanted: Iterable[tuple[Drawing, Given]]) -> None:
    """Have sculptures sketched, and show each when it is ready; one that can't be drawn stays empty."""
    waiting = [(drawing, kitchen.jobs.submit(sketched, given, given.key)) for drawing, given in wanted]

    def look() -> None:
        for pair in [pair for pair in waiting if pair[1].done]:
            waiting.remove(pair)
            answer = pair[1].answer()
            if answer.content is not None:
                pair[0].show(answer.content)
        if not waiting:
            timer.cancel()

    timer = ui.timer(_BEAT, look)
