"""The first page: doughs and things on the table to begin with, the story's sculptures, and a place for one's own."""

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.answers import sketched
from lumped.app.examples import example_heading, example_names
from lumped.app.given import Given
from lumped.sculpt.starting import StartingShape, as_toml, started, starting_shapes
from lumped.texts import say
from lumped.web import paths
from lumped.web.drawing import Drawing
from lumped.web.kitchen import Kitchen
from lumped.web.leaves import put_shelf
from lumped.web.looks import lead_to
from lumped.web.sketches import draw_soon
from lumped.web.table_doughs import put_doughs
from lumped.web.words import Words

__all__ = ["ask_for_sketches", "first_page"]


def first_page(kitchen: Kitchen) -> None:
    """Lay out the first page."""
    ui.page_title(say("web-title"))
    with html.main().classes("sheet-width"):
        with html.header().classes("greeting"):
            Words("p", say("web-maker"), "maker")
            Words("h1", say("web-greeting"))
            Words("p", say("web-greeting-lure"))
        put_doughs()
        _put_pantry()
        _put_things(kitchen)
        put_shelf(kitchen)
        _put_bring()
        _put_story()


def ask_for_sketches(kitchen: Kitchen) -> None:
    """Have all starting shapes drawn, so that the first page finds them ready."""
    for shape in starting_shapes():
        given = _given(shape)
        kitchen.jobs.submit(sketched, given, given.key)


def _put_pantry() -> None:
    with html.nav().classes("onward pantry-door") as place:
        place.props.update({"aria-label": say("web-pantry")})
        for address, key in ((paths.PANTRY, "web-pantry"), (paths.PACKET, "web-packet")):
            with lead_to(say(key), address, f"to-{key}", "way"):
                Words("span", say(f"{key}-lure"), "soft")


def _put_things(kitchen: Kitchen) -> None:
    drawings = {}
    Words("h2", say("web-things"), "heading")
    Words("p", say("web-things-lure"), "soft")
    with html.section().classes("things") as things:
        things.props.update({"aria-label": say("web-things")})
        for shape in starting_shapes():
            with html.a(href=paths.shape(shape.key)).classes("thing").mark(f"thing-{shape.key}"):
                with html.div().classes("mat"):
                    drawings[shape.key] = Drawing(shape.title)
                Words("h2", shape.title)
                Words("p", shape.lure)
    draw_soon(kitchen, [(drawings[shape.key], _given(shape)) for shape in starting_shapes()])


def _put_bring() -> None:
    """A form of the browser's own: it works with the keyboard, and by dropping files on it."""
    Words("h2", say("web-bring"), "heading")
    Words("p", say("web-bring-lure"), "soft")
    with html.form().classes("bring") as form:
        form.props.update({"method": "post", "action": paths.BRING, "enctype": "multipart/form-data"})
        with html.label():
            files = Element("input").classes("unseen").mark("bring")
            files.props.update({"type": "file", "name": "files", "multiple": True, "accept": ".toml,.csv"})
            files.on("change", js_handler="(event) => event.target.files.length && event.target.form.submit()")
            here = Words("span", say("web-bring-here"), "bring-here")
            here.on("dragover.prevent", js_handler="() => {}")
            here.on("drop.prevent", js_handler=_DROP)


_DROP = """(event) => {
  const input = event.currentTarget.closest("form").querySelector("input");
  input.files = event.dataTransfer.files;
  input.form.submit();
}"""


def _put_story() -> None:
    names = example_names()
    if not names:
        return
    Words("h2", say("web-story"), "heading")
    Words("p", say("web-story-lure"), "soft")
    with html.ul().classes("story"):
        for name in names:
            title, lure = example_heading(name)
            with html.li(), html.a(href=paths.example(name)).mark(f"story-{name}"):
                Words("b", title)
                Words("span", f" – {lure}", "soft")


def _given(shape: StartingShape) -> Given:
    return Given(name=f"{shape.key}.toml", text=as_toml(started(shape.key)), effort="quick")
