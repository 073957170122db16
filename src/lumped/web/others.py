"""Other doughs that a question can be about besides the page's own: the examples and the notebook's newest recipes."""

import asyncio
from collections.abc import Iterable, Sequence

from lumped.app.examples import example_recipe, example_recipes
from lumped.app.given import Given
from lumped.app.shelf import title_in
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked, asked_recipe
from lumped.web.kitchen import Kitchen

__all__ = ["RECENT", "offered", "recipes_at", "told_apart"]

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


def told_apart(sides: Sequence[Asked]) -> list[str]:
    """Name the sides: by title, with the revision of one that has gone on, and with changes said."""
    names = []
    for each in sides:
        old = each.kept is not None and each.kept.old
        name = say("beside-revision", title=each.title, number=each.kept.revision.number) if old and each.kept else ""
        name = name or each.title
        names.append(say("web-beside-changed", title=name) if each.changes and "title" not in each.changes else name)
    return [name if names.count(name) == 1 else f"{name} ({number})" for number, name in enumerate(names, 1)]
