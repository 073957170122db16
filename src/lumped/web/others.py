"""Other doughs that a question can be about besides the page's own: the examples and the notebook's newest recipes."""

import asyncio
from collections.abc import Iterable, Sequence

from lumped.app.examples import example_recipe, example_recipes
from lumped.app.given import Given
from lumped.app.titles import title_in
from lumped.dough.naming import told_apart
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked, asked_recipe
from lumped.web.kitchen import Kitchen

__all__ = ["RECENT", "offered", "recipes_at", "side_names"]

RECENT = 12  # documents of the notebook, and revisions of one


async def offered(kitchen: Kitchen) -> dict[str, str]:
    """Give addresses and titles of the recipes that are at hand."""
    return _examples() | await asyncio.to_thread(_kept, kitchen)


async def recipes_at(kitchen: Kitchen, addresses: Iterable[str]) -> list[Asked]:
    """Give the recipes of some addresses; those that are not here are left out."""
    return [each for address in addresses if (each := await asked_recipe(kitchen, {"of": address}))]


def _kept(kitchen: Kitchen) -> dict[str, str]:
    try:
        leaves = kitchen.shelf.leaves(kind="recipe")[:RECENT]
    except LumpedError:
        return {}
    return {paths.kept(each.entry.document): each.entry.title for each in leaves}


def _examples() -> dict[str, str]:
    there = {name: example_recipe(name) for name in example_recipes()}
    return {paths.dough(name): title_in(Given(name=name, text=text)) for name, text in there.items() if text}


def side_names(sides: Sequence[Asked]) -> list[str]:
    """Name the sides: by title, with the revision of one that has gone on, and with changes said."""
    return told_apart([_name(each) for each in sides])


def _name(side: Asked) -> str:
    name = side.title
    if side.kept is not None and side.kept.old:
        name = say("beside-revision", title=name, number=side.kept.revision.number)
    return say("web-beside-changed", title=name) if side.changes and "title" not in side.changes else name
