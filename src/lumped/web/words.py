"""Text on the page: elements that hold nothing but text."""

from nicegui.element import Element

__all__ = ["Words"]


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
