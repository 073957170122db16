"""Choices that the pages of a dough have in common: where it is bought, and what else could go in."""

from collections.abc import Callable, Collection, Sequence
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.pantry import Pantry, pantry, region, regions
from lumped.texts import say
from lumped.web.fields import select
from lumped.web.words import Words

__all__ = ["put_more", "put_region", "tick"]


def put_region(chosen: str, on_pick: Callable[[str], Any]) -> None:
    """Put the choice of a region on the page."""
    options = [(key, region(key).name) for key in regions()]
    select(say("web-region"), options, chosen, on_pick, "region")


def put_more(on_pick: Callable[[str], Any], shop: Pantry | None = None) -> None:
    """Put the choice of one more ingredient on the page: of the handbook's, or of a pantry with a person's own."""
    shop = shop or pantry()
    options = sorted(((key, shop[key].name) for key in shop), key=lambda each: each[1])
    select(say("web-more-in"), [("", say("web-more-choose")), *options], "", on_pick, "more-in")


def tick(
    label: str, options: Sequence[tuple[str, str]], chosen: Collection[str], on_tick: Callable[[str, bool], Any]
) -> None:
    """Put words on the page of which any number can be chosen.

    Parameters
    ----------
    label : str
        What is chosen.
    options : sequence of (str, str)
        Key and words of each.
    chosen : collection of str
        Keys that are chosen at first.
    on_tick : callable
        Told the key, and whether it is chosen now.
    """
    with html.fieldset().classes("pick"):
        Words("legend", label)
        for key, words in options:
            with html.label().classes("tag"):
                one = Element("input").props("type=checkbox").mark(f"tick-{key}")
                one.props.update({"data-key": key} | ({"checked": True} if key in chosen else {}))
                one.on(
                    "change", lambda event, key=key: on_tick(key, bool(event.args)),
                    js_handler="(event) => emit(event.target.checked)",
                )  # fmt: skip
                Words("span", words)
