"""Small things that several pages do with what lies on them: show, hide, hand out, and tell a moment."""

from collections.abc import Callable, Iterable
from datetime import datetime
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.texts import say
from lumped.web.words import Words

__all__ = ["hand_out", "lead_to", "listed", "moment", "press", "reveal", "sorry"]


def reveal(element: Element, shown: bool) -> None:
    """Show an element, or take it off the page for now."""
    element.classes(add="" if shown else "hidden-now", remove="hidden-now" if shown else "")


def hand_out(words: str, text: str, name: str, marker: str) -> None:
    """Put a button on the page that hands a file to the browser."""
    press(words, lambda: ui.download(text.encode(), name, "application/toml"), marker)


def press(words: str, on_press: Callable[[], Any], marker: str) -> html.button:
    """Put a button on the page."""
    return html.button(words).classes("take").props("type=button").mark(marker).on("click", on_press)


def lead_to(words: str, address: str, marker: str = "", classes: str = "") -> html.a:
    """Put a link on the page, whose words are never read as markup."""
    link = html.a(href=address).classes(classes).mark(marker or "link")
    with link:
        Words("span", words)
    return link


def listed(words: Iterable[str], tag: str = "ul", classes: str = "notes") -> Element:
    """Put sentences on the page, one under the other."""
    with Element(tag).classes(classes) as place:
        for each in words:
            Words("li", each)
    return place


def sorry(words: str, marker: str = "failure") -> Element:
    """Say that something did not go, for screen readers at once."""
    place: Element = html.div().classes("sorry").props("role=alert")
    with place:
        Words("p", words).mark(marker)
    return place


def moment(microseconds: int) -> str:
    """Tell a moment of the notebook in the time of this computer's place. [µs since 1970]"""
    return say("web-moment", moment=datetime.fromtimestamp(microseconds // 1_000_000))
