"""What a dough does, as grooves: a smear as wide as the interval, a bead at the middle, a ring where it came from."""

from collections.abc import Mapping
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.app.readings import READINGS, scales
from lumped.texts import say
from lumped.web.looks import reveal
from lumped.web.sources import Sources
from lumped.web.words import Words

__all__ = ["Gist", "Readings"]


class Readings:
    """All readings of one dough.

    Parameters
    ----------
    sources : Sources
        Where their numbers are asked for.
    region : str
        Where the dough's ingredients are bought.
    keys : sequence of str
        Which readings.
    """

    def __init__(self, sources: Sources, region: str, keys: tuple[str, ...] = READINGS) -> None:
        marked = scales(region)
        with html.div().classes("readings"):
            self._grooves = {key: _Groove(key, sources, marked[key].places) for key in keys}

    def show(self, found: Mapping[str, Any]) -> None:
        """Show what was found; the first answer is where later ones come from."""
        for key, groove in self._grooves.items():
            groove.show(found[key])

    def forget(self, *keys: str) -> None:
        """Take the next answer for where later ones come from."""
        for key in keys or tuple(self._grooves):
            self._grooves[key].was = None


class Gist:
    """The same in one line, for a narrow page: it stays in sight while amounts are dragged below it."""

    def __init__(self) -> None:
        with html.ul().classes("dough-gist").props("aria-hidden=true").mark("gist"):
            self._words = {key: Words("li", "") for key in READINGS}

    def show(self, found: Mapping[str, Any]) -> None:
        """Show what was found."""
        for key, words in self._words.items():
            words.tell(say(f"web-gist-{key.replace('_', '-')}", figure=found[key]["short"]))

    def fail(self, words: str) -> None:
        """Say in place of it that nothing was found."""
        for number, each in enumerate(self._words.values()):
            each.tell("" if number else words)


class _Groove:
    """One reading."""

    def __init__(self, key: str, sources: Sources, marks: tuple[float, ...]) -> None:
        self.was: Mapping[str, Any] | None = None
        with html.div().classes("reading").mark(f"reading-{key}") as place:
            place.props.update({"data-reading": key})
            with html.div().classes("reading-head"):
                Words("span", say(f"web-reading-{key.replace('_', '-')}"), "reading-name")
                self._figure = sources.figure(key)
            with html.div().classes("groove").props("aria-hidden=true") as groove:
                self._place: Element = groove
                for at in marks:
                    html.i().classes("tick").style(f"--at: {at}")
                for each in ("smear", "ring", "bead"):
                    html.i().classes(each)
            with html.div().classes("ends"):
                Words("span", say(f"web-ends-{key.replace('_', '-')}-low"))
                self._before = Words("span", "", "before hidden-now")
                Words("span", say(f"web-ends-{key.replace('_', '-')}-high"))
            self._says = Words("p", "", "reading-says")

    def show(self, found: Mapping[str, Any]) -> None:
        self.was = self.was or found
        moved = found["figure"] != self.was["figure"]
        self._figure.tell(found["figure"])
        self._says.tell(found["says"])
        if moved:
            self._before.tell(say("web-before", figure=self.was["short"]))
        reveal(self._before, moved)
        known = found["middle"] is not None and self.was["middle"] is not None
        self._place.classes(add="" if known else "unknown", remove="unknown" if known else "")
        if known:
            self._place.style(
                f"--low: {found['low']}; --high: {found['high']}; --middle: {found['middle']}; "
                f"--was: {self.was['middle']}"
            )
            self._place.classes(add="moved" if moved else "", remove="" if moved else "moved")
