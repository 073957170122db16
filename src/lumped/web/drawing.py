"""A drawing on the page: the SVG by day and in the evening, whose parts can be touched."""

from collections.abc import Callable, Mapping

from nicegui.element import Element
from nicegui.events import GenericEventArguments

__all__ = ["Drawing"]


class Drawing(Element, component="drawing.js"):
    """A drawing.

    Parameters
    ----------
    label : str
        What it shows, for those who don't see it.
    on_part : callable, optional
        Told the name of a part that is touched.
    """

    def __init__(self, label: str, on_part: Callable[[str], None] | None = None) -> None:
        super().__init__()
        self._props["label"] = label
        self._props["day"] = self._props["night"] = ""
        if on_part is not None:
            touched = on_part

            def tell(event: GenericEventArguments) -> None:
                touched(str(event.args))

            self.on("part", tell)

    def show(self, drawings: Mapping[str, str], view: str = "dough") -> None:
        """Show a view of the drawings that an answer holds."""
        self._props["day"], self._props["night"] = drawings[f"{view}-light"], drawings[f"{view}-dark"]
        self.update()

    @property
    def svg(self) -> str:
        """The drawing by day."""
        return str(self._props["day"])
