"""One figure of a question: words to write and a slider to drag; both move the same."""

from collections.abc import Callable
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.web.words import Words

__all__ = ["measure"]

_DRAGGED, _WRITTEN = 0.06, 0.25  # s between two words of the same hand
_SLID = """(event) => {
  const words = `${event.target.value} ${event.target.dataset.unit}`;
  event.target.setAttribute("aria-valuetext", words);
  document.getElementById(event.target.dataset.field).value = words;
  emit(words);
}"""
_WROTE = """(event) => {
  const slider = document.getElementById(event.target.dataset.slider), words = event.target.value.replace(",", ".");
  const number = words.replace(slider.dataset.unit, "").trim();
  if (number !== "" && isFinite(number)) { slider.value = number; slider.setAttribute("aria-valuetext", words); }
  emit(event.target.value);
}"""


def measure(
    name: str, label: str, value: str, slide: tuple[float, float, float, str], on_say: Callable[[str], Any]
) -> Element:
    """Put a figure on the page.

    Parameters
    ----------
    name, label : str
        Its name for tests, and what is written beside it.
    value : str
        What stands there at first; it may be no figure, and is then answered in words.
    slide : (float, float, float, str)
        Least and most of its slider, its step, and the unit that a bare number has.
    on_say : callable
        Told what was written, or where the slider was dragged to.

    Returns
    -------
    Element
    """
    least, most, step, unit = slide
    number = value.replace(unit, "").replace(",", ".").strip()
    place: Element = html.div().classes("amount")
    with place:
        Words("label", label).props(f"for=say-{name}")
        written = Element("input").props(f"id=say-{name} autocomplete=off").mark(f"say-{name}")
        written.props.update({"^value": value, "maxlength": 30, "data-slider": f"drag-{name}"})
        written.on("input", lambda event: on_say(str(event.args)), throttle=_WRITTEN, leading_events=False,
                   js_handler=_WROTE)  # fmt: skip
        dragged = Element("input").props(f"id=drag-{name} type=range").classes("drag").mark(f"drag-{name}")
        dragged.props.update({"min": least, "max": most, "step": step, "^value": number, "data-unit": unit,
                              "data-field": f"say-{name}", "aria-label": label, "aria-valuetext": value})  # fmt: skip
        dragged.on("input", lambda event: on_say(str(event.args)), throttle=_DRAGGED, js_handler=_SLID)
    return place
