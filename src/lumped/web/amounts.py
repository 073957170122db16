"""What goes into a dough: each amount as words to write and a slider to drag; both move the same."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.texts import say
from lumped.web import paths
from lumped.web.looks import lead_to, reveal
from lumped.web.words import Words

__all__ = ["Amounts"]

_DRAGGED, _WRITTEN = 0.06, 0.25  # s between two words of the same hand
_SLID = """(event) => {
  const words = event.target.value + " g";
  event.target.setAttribute("aria-valuetext", words);
  document.getElementById(event.target.dataset.field).value = words;
  emit(words);
}"""
_PLACE = """for (const [name, grams] of Object.entries(%s)) {
  const slider = document.getElementById(name);
  if (slider) { slider.value = grams; slider.setAttribute("aria-valuetext", slider.value + " g"); }
}"""


class Amounts:
    """The rows of what goes in.

    Parameters
    ----------
    on_change : callable
        Told the number of a row and its amount in words.
    fixed : bool
        Whether they can only be read.
    """

    def __init__(self, on_change: Callable[[int, str], Any], *, fixed: bool = False) -> None:
        self._on_change, self._fixed = on_change, fixed
        self._rows = 0
        self._feels: list[Words] = []
        self._written = False
        self._place: Element = html.div().classes("ingredients").mark("amounts")

    def lay(self, rows: Sequence[tuple[str, str, Any]], slides: Sequence[Mapping[str, float]]) -> None:
        """Lay rows out: name, amount in words and what is added by feel of each, and how far its slider goes."""
        self._place.clear()
        self._rows, self._feels = 0, []
        with self._place:
            for (name, amount, by_feel), slide in zip(rows, slides, strict=True):
                self._row(self._rows, name, amount, by_feel, slide)
                self._rows += 1

    def _row(self, k: int, name: str, amount: str, by_feel: Any, slide: Mapping[str, float]) -> None:
        with html.div().classes("amount"):
            with html.div().classes("amount-name"):
                Words("label", name).props(f"for=amount-{k}")
                about = lead_to("?", paths.ingredient(name), f"about-{k}", "about")
                about.props.update({"aria-label": say("web-about", name=name)})
            written = Element("input").props(f"id=amount-{k} autocomplete=off").mark(f"amount-{k}")
            # "^value" is what stands there at first; as a mere "value" each redrawing of the page would put it back.
            written.props.update({"^value": amount, "maxlength": 60} | ({"readonly": True} if self._fixed else {}))
            written.on("input", lambda event, k=k: self._write(k, str(event.args)), throttle=_WRITTEN,
                       leading_events=False, js_handler="(event) => emit(event.target.value)")  # fmt: skip
            self._feels.append(Words("span", "", "soft by-feel"))
            self._tell_feel(k, by_feel)
            if not self._fixed:
                self._slider(k, name, slide)

    def _slider(self, k: int, name: str, slide: Mapping[str, float]) -> None:
        dragged = Element("input").props(f"id=drag-{k} type=range").classes("drag").mark(f"drag-{k}")
        dragged.props.update(
            {"min": 0, "max": slide["most"], "step": slide["step"], "^value": slide["grams"],
             "data-field": f"amount-{k}", "aria-label": say("web-drag", name=name),
             "aria-valuetext": f"{slide['grams']:g} g"}
        )  # fmt: skip
        dragged.on("input", lambda event, k=k: self._drag(k, str(event.args)), throttle=_DRAGGED, js_handler=_SLID)

    def _drag(self, k: int, amount: str) -> Any:
        self._written = False
        return self._on_change(k, amount)

    def _write(self, k: int, amount: str) -> Any:
        self._written = True
        return self._on_change(k, amount)

    def _tell_feel(self, k: int, feel: Any) -> None:
        self._feels[k].tell("" if feel is None else say("web-by-feel", least=f"{feel[0]:g}", most=f"{feel[1]:g}"))
        reveal(self._feels[k], feel is not None)

    def follow(self, grams: Mapping[int, float], feels: Mapping[int, Any]) -> None:
        """Put the sliders where the words say, after words were written, and tell what is added by feel. [g]"""
        for k, feel in feels.items():
            self._tell_feel(k, feel)
        if self._written:
            ui.run_javascript(_PLACE % {f"drag-{k}": each for k, each in grams.items()})
            self._written = False
