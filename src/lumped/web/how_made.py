"""How a dough is made: what heats it, how warm it is used, and what is added by feel."""

from collections.abc import Callable, Sequence
from functools import partial
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.app.changing import WAYS
from lumped.texts import say
from lumped.web.controls import choose, dial
from lumped.web.fields import live_field
from lumped.web.words import Words

__all__ = ["HowMade"]

_WARMEST = 60  # °C; no hand takes a warmer dough, but a recipe may say so


class HowMade:
    """The choices of a recipe that are no amounts.

    Parameters
    ----------
    on_way, on_warmth : callable
        Told how it is heated, and how warm it is used in °C, as it is written.
    on_feel : callable
        Told the number of a row and what is added by feel, as somebody writes it.
    """

    def __init__(
        self, on_way: Callable[[str], Any], on_warmth: Callable[[str], Any], on_feel: Callable[[int, str], Any]
    ) -> None:
        self._on_way, self._on_warmth, self._on_feel = on_way, on_warmth, on_feel
        self._place: Element = html.div().classes("how-made").mark("how-made")

    def lay(self, way: str, degrees: float, rows: Sequence[tuple[str, tuple[float, float] | None]]) -> None:
        """Lay the choices out: how it is heated, how warm it is used [°C], name and by feel of each row [g]."""
        ways = [(each, say(f"making-way-{each.replace(' ', '-')}")) for each in WAYS]
        self._place.clear()
        with self._place:
            choose(say("web-how-made"), ways, way, self._on_way, classes="pick", marker="cooked")
            dial("degrees", say("web-how-warm"), degrees, self._on_warmth,
                 ends=(0, max(_WARMEST, degrees), 1), unit="°C")  # fmt: skip
            with html.details().classes("feels").mark("feels"):
                Words("summary", say("web-feels"))
                Words("p", say("web-feels-hint"), "soft hint")
                for k, (name, feel) in enumerate(rows):
                    live_field(f"feel-{k}", name, feel_words(feel), partial(self._on_feel, k), pause=0.25,
                               maxlength=30, inputmode="text")  # fmt: skip


def feel_words(feel: tuple[float, float] | None) -> str:
    """Write what is added by feel as a field has it. [g]

    Examples
    --------
    >>> feel_words((0.0, 40.0)), feel_words((10.0, 40.0)), feel_words(None)
    ('40', '10-40', '')
    """
    if feel is None:
        return ""
    return f"{feel[1]:g}" if not feel[0] else f"{feel[0]:g}-{feel[1]:g}"
