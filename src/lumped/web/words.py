"""Text on the page: elements that hold nothing but text, and figures with their intervals."""

from collections.abc import Mapping

from nicegui.element import Element

from lumped.texts import say

__all__ = ["Words", "figure", "figures_of", "number"]


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


def figure(span: Mapping[str, float], *, scale: float = 1.0, digits: int = 1) -> str:
    """Write a figure with its interval, the interval left out where it rounds to the figure.

    Examples
    --------
    >>> figure({"mean": 0.0066, "low": 0.0012, "high": 0.018}, scale=1e3)
    '6.6 (1.2 to 18.0)'
    """
    shown, *ends = (number(scale * span[end], digits) for end in ("mean", "low", "high"))
    return shown if ends[0] == ends[1] == shown else say("interval", mean=shown, low=ends[0], high=ends[1])


def number(value: float, digits: int) -> str:
    """Write a number; nothing below nothing has a sign.

    Examples
    --------
    >>> number(-0.04, 1), number(-0.94, 1)
    ('0.0', '−0.9')
    """
    return f"{round(value, digits) + 0.0:.{digits}f}".replace("-", "−")


def figures_of(part: Mapping[str, object]) -> dict[str, tuple[Mapping[str, float], float, int]]:
    """Give the figures of a part's verdict: span, scale to what is shown, and digits, by the name of the figure."""
    found = {"volts": (part["voltage_V"], 1.0, 1), "current": (part["current_A"], 1e3, 1)}
    if part["speed_rad_per_s"] is not None:
        found["speed"] = (part["speed_rad_per_s"], 60 / 6.283185307179586, 0)
    return found  # type: ignore[return-value]
