"""What a file calls itself: its title and its kind, and the same under another title."""

import tomllib
from contextlib import suppress
from dataclasses import replace

import tomli_w

from lumped.app.given import Given, plain_name
from lumped.texts import say

__all__ = ["kind_in", "marked", "same_but_title", "title_in", "titled"]


def title_in(given: Given) -> str:
    """Give the title that a file says; its name if it says none or can't be read.

    Examples
    --------
    >>> title_in(Given(name="a.toml", text="title = 'Quay'")), title_in(Given(name="a.toml", text="?"))
    ('Quay', 'a')
    """
    with suppress(ValueError, RecursionError):
        title = tomllib.loads(given.text).get("title")
        if isinstance(title, str) and title:
            return title
    return given.name.removesuffix(".toml")


def marked(title: str, *, invented: bool) -> str:
    """Give a title as it is shown: with a mark behind it if what it names is invented.

    Examples
    --------
    >>> marked("Quay", invented=True), marked("Quay", invented=False)
    ('Quay  (invented)', 'Quay')
    """
    return title + (say("invented-mark") if invented else "")


def kind_in(text: str) -> str:
    """Give the kind that a file says; nothing if it can't be read.

    Examples
    --------
    >>> kind_in("kind = 'recipe'"), kind_in("?")
    ('recipe', '')
    """
    try:
        return str(tomllib.loads(text).get("kind", ""))
    except (ValueError, RecursionError):
        return ""


def titled(given: Given, title: str) -> Given:
    """Give the same under another title; as it is if that is empty or already its title."""
    try:
        document = tomllib.loads(given.text)
    except (ValueError, RecursionError):
        return given
    if not title or document.get("title") == title:
        return given
    return replace(given, name=f"{plain_name(title)}.toml", text=tomli_w.dumps(document | {"title": title}))


def same_but_title(one: str, other: str) -> bool:
    """Tell whether two files say the same, whatever their titles.

    Examples
    --------
    >>> same_but_title("title = 'a'", "title = 'b'"), same_but_title("b = 1", "b = 2")
    (True, False)
    """
    first, second = (tomllib.loads(text) | {"title": ""} for text in (one, other))
    return first == second
