"""A starting shape: its sculpture, and sliders to pull it about."""

from functools import partial

from nicegui import html

from lumped.app.given import Given
from lumped.sculpt.starting import Slider, StartingShape, as_toml, started, starting_shapes
from lumped.texts import say
from lumped.web.controls import pick, slide
from lumped.web.kitchen import Kitchen
from lumped.web.nothing import nothing_here
from lumped.web.sculpture_view import SculptureView
from lumped.web.words import Words

__all__ = ["shape_page"]


def shape_page(kitchen: Kitchen, key: str) -> None:
    """Lay out the page of a starting shape."""
    shape = next((each for each in starting_shapes() if each.key == key), None)
    if shape is None:
        nothing_here()
        return
    values = shape.defaults

    def move(name: str, value: float | str) -> None:
        values[name] = value
        view.ask(_given(shape, values))

    def controls() -> None:
        Words("h2", say("web-knead"))
        with html.div().classes("sliders"):
            for each in shape.controls:
                if isinstance(each, Slider):
                    slide(each, each.default, partial(move, each.name))
        with html.div().classes("picks"):
            for each in shape.controls:
                if not isinstance(each, Slider):
                    pick(each, each.default, partial(move, each.name))

    view = SculptureView(kitchen, shape.title, controls)
    view.ask(_given(shape, values))


def _given(shape: StartingShape, values: dict[str, float | str]) -> Given:
    """Write the sculpture as a file that can be kept."""
    return Given(name=f"{shape.key}.toml", text=as_toml(started(shape.key, values)))
