"""Choices that the pages of a dough have in common: where it is bought, and what else could go in."""

from collections.abc import Callable
from typing import Any

from lumped.pantry import pantry, region, regions
from lumped.texts import say
from lumped.web.fields import select

__all__ = ["put_more", "put_region"]


def put_region(chosen: str, on_pick: Callable[[str], Any]) -> None:
    """Put the choice of a region on the page."""
    options = [(key, region(key).name) for key in regions()]
    select(say("web-region"), options, chosen, on_pick, "region")


def put_more(on_pick: Callable[[str], Any]) -> None:
    """Put the choice of one more ingredient on the page."""
    shop = pantry()
    options = sorted(((key, shop[key].name) for key in shop), key=lambda each: each[1])
    select(say("web-more-in"), [("", say("web-more-choose")), *options], "", on_pick, "more-in")
