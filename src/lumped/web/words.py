"""Text on the page: elements that hold nothing but text."""

import re

from nicegui.element import Element

__all__ = ["Figure", "Words", "unbroken"]

_TIGHT = "\N{NO-BREAK SPACE}"
_BRACKETS = re.compile(r"\([^()]*\d[^()]*\)")
_UNIT = re.compile(r"(?<=\d) (?=[^\s\d(][^\s(]*(?: \(|$))")


def unbroken(text: str) -> str:
    r"""Keep an interval in its brackets and a number with its unit on one line.

    Examples
    --------
    >>> unbroken("1.82 kg (1.24 to 2.89)").split(" ")
    ['1.82\xa0kg', '(1.24\xa0to\xa02.89)']
    """
    return _BRACKETS.sub(lambda match: match[0].replace(" ", _TIGHT), _UNIT.sub(_TIGHT, text))


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


class Figure(Words):
    """A number with its unit and interval, which break between and not within; it reads back as it was told."""

    def __init__(self, tag: str, text: str = "", classes: str = "") -> None:
        super().__init__(tag, unbroken(text), classes)

    def tell(self, text: str) -> None:
        """Hold another number."""
        super().tell(unbroken(text))

    @property
    def text(self) -> str:
        """What it was told."""
        return super().text.replace(_TIGHT, " ")
