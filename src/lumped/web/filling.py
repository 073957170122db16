"""A form that is looked at while it is filled in: what is wrong stands beside its field, and nothing typed is lost."""

from collections.abc import Callable, Mapping, Sequence
from itertools import count
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.web.fields import field, sent, written_in
from lumped.web.looks import reveal
from lumped.web.words import Words

__all__ = ["Filling"]

_ids = count(1)
_LOOKED = 0.3  # s between two looks at what a hand writes
_SAID = """(event) => {
  const form = event.target.closest("form");
  emit(Object.fromEntries(new FormData(form)));
}"""
_FIRST = "document.querySelector('form.fill [aria-invalid=true]')?.focus()"


class Filling:
    """A form; fields are put on the page inside `with filling.form`.

    Parameters
    ----------
    marker : str
        Its name, for tests.
    on_look : callable
        Told what stands in all fields whenever something was written.
    on_send : callable
        Told the same, with the button's `way`, when it is sent.
    """

    def __init__(
        self, marker: str, *, on_look: Callable[[dict[str, str]], Any], on_send: Callable[[dict[str, str]], Any]
    ) -> None:
        self._fields: dict[str, tuple[Element, Words]] = {}
        self.form: Element = html.form().classes("fill").props("novalidate").mark(marker)
        self.form.on("input", lambda event: on_look(dict(event.args)), throttle=_LOOKED, leading_events=False,
                     js_handler=_SAID)  # fmt: skip
        sent(self.form, lambda event: on_send(dict(event.args)))

    def write(self, name: str, label: str, value: str = "", *, hint: str = "", **props: Any) -> None:
        """Put a field to write in on the page."""
        place = field(name, label, value, **props)
        self._slip(name, place, written_in(place), hint)

    def write_much(self, name: str, label: str, value: str = "") -> None:
        """Put a field for several lines on the page."""
        with html.div().classes("field") as place:
            key = f"fill-{next(_ids)}"
            Words("label", label).props(f"for={key}")
            written = Element("textarea").props(f"id={key} rows=3 maxlength=4000 name={name}").mark(f"write-{name}")
            written.props.update({".textContent": value})  # of several lines it is what stands there at first
        self._slip(name, place, written, "")

    def choose(self, name: str, label: str, options: Sequence[tuple[str, str]], value: str = "") -> None:
        """Put a choice from a list on the page: key and words of each."""
        with html.div().classes("field") as place:
            key = f"fill-{next(_ids)}"
            Words("label", label).props(f"for={key}")
            chosen = Element("select").props(f"id={key} name={name}").mark(f"write-{name}")
            with chosen:
                for each, words in options:
                    option = Words("option", words)
                    option.props.update({"value": each} | ({"selected": True} if each == value else {}))
        self._slip(name, place, chosen, "")

    def tag(self, name: str, words: str, *, value: str = "yes", chosen: bool = False, kind: str = "checkbox") -> None:
        """Put something to tick on the page, or one of several of a name (`kind` "radio")."""
        with html.label().classes("tag"):
            one = Element("input").props(f"type={kind}").mark(f"tag-{name}-{value}")
            one.props.update({"name": name, "value": value} | ({"checked": True} if chosen else {}))
            Words("span", words)

    def _slip(self, name: str, place: Element, written: Element, hint: str) -> None:
        key = f"slip-{next(_ids)}"
        with place:
            if hint:
                Words("p", hint, "soft hint")
            words = Words("p", "", "amiss hidden-now").props(f"id={key} aria-live=polite").mark(f"beside-{name}")
        written.props.update({"aria-describedby": key})
        self._fields[name] = (written, words)

    def tell(self, slips: Mapping[str, str]) -> tuple[str, ...]:
        """Say what is wrong beside the fields; give what belongs to none of them."""
        for name, (written, words) in self._fields.items():
            words.tell(slips.get(name, ""))
            reveal(words, name in slips)
            if (written.props.get("aria-invalid") == "true") != (name in slips):
                written.props.update({"aria-invalid": "true" if name in slips else "false"})
        return tuple(words for name, words in slips.items() if name not in self._fields)

    def go_to_first(self) -> None:
        """Lead to the first field that something is wrong with."""
        ui.run_javascript(_FIRST)
