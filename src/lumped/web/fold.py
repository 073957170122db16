"""A part of a page that is long: open on a desk, folded on a phone until somebody opens it."""

from nicegui.element import Element

from lumped.web.words import Words

__all__ = ["Fold"]


class Fold(Element, component="fold.js"):
    """A part under its heading; what was opened or folded stays so when the part is laid out anew.

    Parameters
    ----------
    name : str
        By which the page remembers it.
    heading : str
        What stands on it when it is folded.
    tag : str
        Which HTML element the heading is.
    """

    def __init__(self, name: str, heading: str, tag: str = "h2") -> None:
        super().__init__()
        self._props["name"] = name
        with self.add_slot("summary"):
            Words(tag, heading)
