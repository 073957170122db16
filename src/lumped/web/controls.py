"""Things to move on a page: a slider, and a choice between a few words."""

from collections.abc import Callable, Sequence
from itertools import count
from typing import Any

from nicegui import html
from nicegui.element import Element
from nicegui.events import GenericEventArguments

from lumped.picture.theme import lamp_colour
from lumped.sculpt.starting import Choice, Slider
from lumped.texts import say
from lumped.web.words import Words

__all__ = ["choose", "dial", "pick", "slide"]

_ids = count(1)
_THROTTLE = 0.12  # s
_SLID = """(event) => {
  const slider = event.target, value = Number(slider.value);
  const words = (value < 0 ? slider.dataset.pressed : slider.dataset.words).replace("#", Math.abs(value));
  slider.setAttribute("aria-valuetext", words);
  slider.closest(".slide").querySelector("output").textContent = words;
  emit(slider.value);
}"""


def slide(slider: Slider, value: float, on_slide: Callable[[float], None]) -> None:
    """Put a slider on the page.

    Parameters
    ----------
    slider : Slider
        What it is.
    value : float
        Where it stands.
    on_slide : callable
        Told where it was moved to.
    """
    name = f"slide-{next(_ids)}"
    apart, pressed = (
        (say("web-slider-mm", value="#"), say("web-slider-pressed", value="#")) if slider.unit == "mm" else ("#", "#")
    )
    shown = (pressed if value < 0 else apart).replace("#", f"{abs(value):g}")
    with html.div().classes("slide"):
        with html.label().props(f"for={name}"):
            Words("span", slider.label)
            Words("output", shown).props(f"for={name}")
        moved = Element("input").props(f"id={name} type=range")
        # "^value" sets where it stands at first; as a mere "value" each redrawing of the page would push it back there.
        moved.props.update(
            {"min": slider.low, "max": slider.high, "step": slider.step, "^value": value, "data-slider": slider.name,
             "aria-valuetext": shown, "data-words": apart, "data-pressed": pressed}
        )  # fmt: skip
        moved.on("input", lambda event: on_slide(_number(event)), throttle=_THROTTLE, js_handler=_SLID)
        moved.mark(f"slide-{slider.name}")


def dial(
    name: str, label: str, value: float, on_slide: Callable[[str], Any], *, ends: tuple[float, float, float], unit: str
) -> None:
    """Put a slider for a figure with its unit on the page.

    Parameters
    ----------
    name, label : str
        Its name for tests, and what it is.
    value : float
        Where it stands.
    on_slide : callable
        Told where it was moved to, as it is written.
    ends : (float, float, float)
        Least, most, and the step between.
    unit : str
        What stands behind the figure.
    """
    key, (least, most, step) = f"slide-{next(_ids)}", ends
    words = say("web-slider-unit", value="#", unit=unit)
    shown = words.replace("#", f"{value:g}")
    with html.div().classes("slide"):
        with html.label().props(f"for={key}"):
            Words("span", label)
            Words("output", shown).props(f"for={key}")
        moved = Element("input").props(f"id={key} type=range").mark(f"slide-{name}")
        moved.props.update({"min": least, "max": most, "step": step, "^value": value, "data-slider": name,
                            "aria-valuetext": shown, "data-words": words, "data-pressed": words})  # fmt: skip
        moved.on("input", lambda event: on_slide(str(event.args)), throttle=0.06, js_handler=_SLID)


def _number(event: GenericEventArguments) -> float:
    return float(event.args)


def pick(choice: Choice, value: str, on_pick: Callable[[str], None]) -> None:
    """Put a choice of a starting shape on the page."""
    options = [(option, choice.words(option)) for option in choice.options]
    choose(choice.label, options, value, on_pick, classes="pick", marker=f"pick-{choice.name}")


def choose(
    label: str,
    options: Sequence[tuple[str, str]],
    value: str,
    on_pick: Callable[[str], Any],
    *,
    classes: str,
    marker: str,
) -> Element:
    """Put a choice between a few words on the page.

    Parameters
    ----------
    label : str
        What is chosen.
    options : sequence of (str, str)
        Key and words of each.
    value : str
        The key that is chosen.
    on_pick : callable
        Told the key that was chosen.
    classes, marker : str
        How it looks, and its name for tests.

    Returns
    -------
    Element
    """
    group = f"{marker}-{next(_ids)}"
    field: Element = html.fieldset().classes(classes)
    with field:
        Words("legend", label)
        for key, words in options:
            with html.label().classes("tag"):
                one = Element("input").props(f"type=radio name={group}").mark(f"{marker}-{key}")
                one.props.update({"value": key, "data-key": key} | ({"checked": True} if key == value else {}))
                one.on("change", lambda event: on_pick(str(event.args)), js_handler="(e) => emit(e.target.value)")
                with html.span():
                    if key.startswith("lamp-"):
                        html.i().classes("bead").style(f"--bead: {lamp_colour(key.removeprefix('lamp-'))}")
                    Words("span", words)
    return field
