"""A starting shape: its sculpture, and sliders to pull it about."""

from collections.abc import Callable, Mapping
from functools import partial
from typing import Any

from nicegui import PageArguments, html, ui

from lumped.app.given import Given
from lumped.app.kept import Kept
from lumped.app.titles import same_but_title, titled
from lumped.errors import InputError
from lumped.sculpt.starting import Slider, as_toml, placed, started, starting_shape
from lumped.texts import say
from lumped.web import paths
from lumped.web.controls import pick, slide
from lumped.web.kitchen import Kitchen
from lumped.web.nothing import nothing_here
from lumped.web.sculpture_view import SculptureView
from lumped.web.words import Words

__all__ = ["PulledAbout", "pulled_about_in", "shape_page"]


def shape_page(kitchen: Kitchen, key: str, asked: PageArguments) -> None:
    """Lay out the page of a starting shape; how far it was pulled about stands in the address, so it can be kept."""
    try:
        values = placed(key, asked.query_parameters)
    except InputError as error:
        nothing_here(str(error))
        return
    PulledAbout(kitchen, key, values)


class PulledAbout:
    """A starting shape with its sliders; in the notebook it goes on under the address of its document.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    key : str
        Which starting shape.
    values : dict
        How far it was pulled about.
    kept : Kept, optional
        The revision of the notebook that it is.
    on_changed : callable, optional
        Called when another revision was brought back, or the sculpture was taken out of the notebook.
    """

    def __init__(
        self,
        kitchen: Kitchen,
        key: str,
        values: dict[str, float | str],
        *,
        kept: Kept | None = None,
        on_changed: Callable[[], Any] | None = None,
    ) -> None:
        self._key, self._values, self._shape = key, values, starting_shape(key)
        self._written = dict(placed(*made_of)) if (made_of := _placed_in(kept)) else {}
        self._view = SculptureView(
            kitchen, kept.revision.title if kept else self._shape.title, self._put_controls,
            kept=kept, remark=self._remark, on_kept=self._go_on, on_changed=on_changed,
        )  # fmt: skip
        given = _given(key, values)
        self._view.ask(titled(given, kept.revision.title) if kept else given)

    def _put_controls(self) -> None:
        Words("h2", say("web-knead"))
        with html.div().classes("sliders"):
            for each in self._shape.controls:
                if isinstance(each, Slider):
                    slide(each, float(self._values[each.name]), partial(self._move, each.name))
        with html.div().classes("picks"):
            for each in self._shape.controls:
                if not isinstance(each, Slider):
                    pick(each, str(self._values[each.name]), partial(self._move, each.name))

    def _move(self, name: str, value: float | str) -> None:
        self._values[name] = value
        self._tell_address(self._view.document)
        self._view.ask(_given(self._key, self._values))

    def _go_on(self, document: str) -> None:
        """Go on under the address of the document that it was written down as."""
        self._written = dict(self._values)
        self._tell_address(document)

    def _tell_address(self, document: str | None) -> None:
        """Have the address tell what isn't written down, so that loading the page anew loses nothing."""
        written = self._written if document is not None else self._shape.defaults
        moved = {name: value for name, value in self._values.items() if value != written.get(name)}
        ui.navigate.history.replace(paths.shape(self._key, moved, kept_as=document))

    def _remark(self) -> str:
        address = paths.shape(self._key, self._shape.changed(self._values))
        return say("web-pulled", shape=self._shape.title, address=address)


def pulled_about_in(kept: Kept, asked: Mapping[str, str]) -> tuple[str, dict[str, float | str]] | None:
    """Find the starting shape and slider positions that made a sculpture of the notebook, by what was noted with it.

    Parameters
    ----------
    kept : Kept
        The sculpture.
    asked : mapping of str to str
        Positions in the page's address, which go before those of the notebook.

    Returns
    -------
    (str, dict) or None
        None unless the shape so placed says just what the sculpture says.
    """
    found = _placed_in(kept)
    if found is None or kept.given is None:
        return None
    try:
        if not same_but_title(_given(found[0], placed(*found)).text, kept.given.text):
            return None
        return found[0], placed(found[0], found[1] | dict(asked))
    except InputError:
        return None


def _placed_in(kept: Kept | None) -> tuple[str, dict[str, str]] | None:
    """Find what was noted of a starting shape with the revision, or with the one that it brought back."""
    if kept is None:
        return None
    return paths.values_in(kept.history[(kept.revision.restored or kept.revision.number) - 1].note)


def _given(key: str, values: Mapping[str, float | str]) -> Given:
    """Write the sculpture as a file that can be kept."""
    return Given(name=f"{key}.toml", text=as_toml(started(key, values)))
