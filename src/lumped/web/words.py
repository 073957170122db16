"""Text on the page: elements that hold nothing but text, and figures with their intervals."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import pi
from typing import Any

from nicegui.element import Element

from lumped.quantities import significant
from lumped.texts import say

__all__ = ["Figure", "Words", "figures_of"]


class Words(Element):
    """An element that holds text and nothing else; what it is told is never read as markup.

    Parameters
    ----------
    tag : str
        Which HTML element.
    text : str
        What it holds.
    classes : str
        Its classes.
    """

    def __init__(self, tag: str, text: str = "", classes: str = "") -> None:
        super().__init__(tag)
        self._text = text
        self.classes(classes)

    def tell(self, text: str) -> None:
        """Hold another text."""
        if text != self._text:
            self._text = text
            self.update()

    @property
    def text(self) -> str:
        """What it holds."""
        return self._text or ""


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure as it is written: as drawn, and its least and greatest."""

    mean: str
    low: str
    high: str

    def __str__(self) -> str:
        """Write it with its interval, which is left out where it rounds to the figure.

        Examples
        --------
        >>> str(Figure("6.6", "1.2", "18.0")), str(Figure("6.2", "6.2", "6.2"))
        ('6.6 (1.2 to 18.0)', '6.2')
        """
        if self.low == self.high == self.mean:
            return self.mean
        return say("interval", mean=self.mean, low=self.low, high=self.high)


def figures_of(part: Mapping[str, Any]) -> dict[str, Figure]:
    """Give the figures of a part's verdict as JSON shows it: volts, milliamperes, and of a motor turns a minute.

    Examples
    --------
    >>> same = dict.fromkeys(("mean", "low", "high"), -0.00004)
    >>> str(figures_of({"voltage_V": same, "current_A": same, "speed_rad_per_s": None})["volts"])
    '0.0'
    """
    found = {"volts": _figure(part["voltage_V"], _tenths), "current": _figure(part["current_A"], _milli)}
    if part["speed_rad_per_s"] is not None:
        found["speed"] = _figure(part["speed_rad_per_s"], _turns)
    return found


def _figure(span: Mapping[str, float], write: Callable[[float], str]) -> Figure:
    return Figure(*(write(span[end]) for end in ("mean", "low", "high")))


def _tenths(value: float) -> str:
    return f"{value:z.1f}".replace("-", "−")


def _milli(value: float) -> str:
    return _tenths(1e3 * value)


def _turns(value: float) -> str:
    """Turns a minute, two digits of them: more are not known."""
    return f"{significant(60 * abs(value) / (2 * pi), 2):,.0f}"
