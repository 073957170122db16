"""A picture whose places can be touched: by finger, mouse or arrow keys; it tells where, as shares."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from nicegui.element import Element
from nicegui.events import GenericEventArguments

__all__ = ["Touching"]

_THROTTLE = 0.06  # s


class Touching(Element, component="touching.js"):
    """A picture to touch.

    Parameters
    ----------
    label : str
        What it shows, for those who don't see it.
    on_place : callable
        Told the place: one share along a row of amounts, or three of the corners of a triangle. [1]
    """

    def __init__(self, label: str, on_place: Callable[[Sequence[float]], Any]) -> None:
        super().__init__()
        self._props.update({"label": label, "day": "", "night": "", "said": "", "begin": []})

        async def tell(event: GenericEventArguments) -> None:
            await on_place([float(each) for each in event.args])

        self.on("place", tell, throttle=_THROTTLE)

    def show(self, drawings: Mapping[str, str], begin: Sequence[float]) -> None:
        """Show the picture by day and in the evening, touched at first where `begin` says."""
        self._props["day"], self._props["night"] = drawings["dough-light"], drawings["dough-dark"]
        self._props["begin"] = list(begin)
        self.update()

    def tell(self, words: str) -> None:
        """Say what is touched, for those who don't see it."""
        self._props["said"] = words
        self.update()
