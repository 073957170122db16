"""Fields to write in, and forms whose content is sent when somebody presses a button or Enter."""

from collections.abc import Callable, Sequence
from itertools import count
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.texts import say
from lumped.web.words import Words

__all__ = ["field", "live_field", "search_field", "select", "sent", "written_in"]

_ids = count(1)
_SENT = """(event) => {
  const said = Object.fromEntries(new FormData(event.target));
  emit({...said, way: event.submitter?.dataset.way || ""});
}"""


def field(name: str, label: str, value: str, *, kind: str = "text", required: bool = False, **props: Any) -> Element:
    """Put a field with its label on the page.

    Parameters
    ----------
    name : str
        Its name in the form.
    label : str
        What is written above it.
    value : str
        What stands in it at first.
    kind : str
        "text" or "search".
    required : bool
        Whether it may not stay empty.
    **props : object
        Further properties of the field.

    Returns
    -------
    Element
        Label and field.
    """
    key = f"field-{next(_ids)}"
    place: Element = html.div().classes("field").mark(f"field-{name}")
    with place:
        Words("label", label).props(f"for={key}")
        written = Element("input").props(f"id={key} autocomplete=off").mark(f"write-{name}")
        # "^value" is what stands in it at first; as a mere "value" each redrawing of the page would put it back.
        written.props.update(
            {"type": kind, "name": name, "^value": value} | props | ({"required": True} if required else {})
        )
    return place


def written_in(place: Element) -> Element:
    """Give what is written in, of what `field` put on the page."""
    return next(each for each in place.descendants() if each.tag == "input")


def live_field(
    name: str, label: str, value: str, on_say: Callable[[str], Any], *, pause: float = 0.4, **props: Any
) -> Element:
    """Put a field on the page that tells what stands in it while somebody writes; see `field`.

    Parameters
    ----------
    on_say : callable
        Told what stands in it.
    pause : float
        How long a hand must rest. [s]
    """
    place = field(name, label, value, **props)
    written_in(place).on("input", lambda event: on_say(str(event.args)), throttle=pause, leading_events=False,
                         js_handler="(event) => emit(event.target.value)")  # fmt: skip
    return place


def select(
    label: str, options: Sequence[tuple[str, str]], value: str, on_pick: Callable[[str], Any], marker: str
) -> None:
    """Put a choice from a list on the page: key and words of each, and which stands there at first."""
    key = f"field-{next(_ids)}"
    with html.div().classes("field"):
        Words("label", label).props(f"for={key}")
        chosen = Element("select").props(f"id={key}").mark(marker)
        with chosen:
            for each, words in options:
                option = Words("option", words)
                option.props.update({"value": each} | ({"selected": True} if each == value else {}))
        chosen.on("change", lambda event: on_pick(str(event.args)), js_handler="(event) => emit(event.target.value)")


def sent(form: Element, on_sent: Callable[..., Any]) -> None:
    """Tell what stands in a form's fields when it is sent, by their names; `way` is the button that was pressed."""
    form.on("submit.prevent", on_sent, js_handler=_SENT)


def search_field(on_search: Callable[[str], Any], label: str = "", words: str = "") -> None:
    """Put a field on the page that searches while somebody writes."""
    live_field("words", label or say("web-search"), words, on_search, pause=0.3, kind="search", maxlength=100)
