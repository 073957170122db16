"""A starting shape: its sculpture, and sliders to pull it about."""

from collections.abc import Mapping
from functools import partial

from nicegui import PageArguments, html, ui

from lumped.app.given import Given
from lumped.errors import InputError
from lumped.sculpt.starting import Slider, as_toml, placed, started, starting_shape
from lumped.texts import say
from lumped.web import paths
from lumped.web.controls import pick, slide
from lumped.web.kitchen import Kitchen
from lumped.web.nothing import nothing_here
from lumped.web.sculpture_view import SculptureView
from lumped.web.words import Words

__all__ = ["shape_page"]


def shape_page(kitchen: Kitchen, key: str, asked: PageArguments) -> None:
    """Lay out the page of a starting shape; how far it was pulled about stands in the address, so it can be kept."""
    try:
        values = placed(key, asked.query_parameters)
    except InputError as error:
        nothing_here(str(error))
        return
    shape = starting_shape(key)

    def move(name: str, value: float | str) -> None:
        values[name] = value
        ui.navigate.history.replace(paths.shape(key, shape.changed(values)))
        view.ask(_given(key, values))

    def controls() -> None:
        Words("h2", say("web-knead"))
        with html.div().classes("sliders"):
            for each in shape.controls:
                if isinstance(each, Slider):
                    slide(each, float(values[each.name]), partial(move, each.name))
        with html.div().classes("picks"):
            for each in shape.controls:
                if not isinstance(each, Slider):
                    pick(each, str(values[each.name]), partial(move, each.name))

    view = SculptureView(kitchen, shape.title, controls)
    view.ask(_given(key, values))


def _given(key: str, values: Mapping[str, float | str]) -> Given:
    """Write the sculpture as a file that can be kept."""
    return Given(name=f"{key}.toml", text=as_toml(started(key, values)))
