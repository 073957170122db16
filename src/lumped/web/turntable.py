"""The sculpture as a thing that turns, drawn by the browser from meshes."""

from collections.abc import Callable
from typing import Any

from nicegui.element import Element
from nicegui.elements.scene import scene as _scene  # noqa: F401 - it brings the library that draws

__all__ = ["Turntable"]


class Turntable(Element, component="turntable.js"):
    """A sculpture that turns under the finger, the mouse or the arrow keys; seen from above at first.

    Parameters
    ----------
    label : str
        What it shows and how to turn it, for those who don't see it.
    content : dict
        The scene of an answer.
    on_flat : callable
        Told if this browser can't draw in space.
    """

    def __init__(self, label: str, content: dict[str, Any], on_flat: Callable[[], None]) -> None:
        super().__init__()
        self._props["label"] = label
        self._content = content
        self.on("ready", lambda: self.show(self._content))
        self.on("flat", on_flat)

    def show(self, content: dict[str, Any]) -> None:
        """Show another scene."""
        self._content = content
        self.run_method("show", content)
