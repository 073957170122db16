"""The recipe that an address asks about: an example, one that was brought, or one of the notebook, with its changes."""

import asyncio
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from lumped.app.changing import changed
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.app.kept import Kept
from lumped.app.readings import home_region
from lumped.app.titles import title_in
from lumped.errors import LumpedError
from lumped.web import paths
from lumped.web.kitchen import Kitchen

__all__ = ["Asked", "asked_recipe", "sorted_query", "with_own"]


@dataclass(frozen=True, kw_only=True)
class Asked:
    """A recipe that is asked about.

    Parameters
    ----------
    page : str
        Address of the recipe's own page, without changes.
    written : Given
        The recipe as it is written.
    changes : mapping of str to str
        What was changed, as `app.changing.changed` takes it.
    options : mapping of str to str
        What else the address says.
    kept : Kept, optional
        The revision of the notebook that it is.
    """

    page: str
    written: Given
    changes: Mapping[str, str]
    options: Mapping[str, str]
    kept: Kept | None = None

    @property
    def given(self) -> Given:
        """The recipe with its changes."""
        return changed(self.written, self.changes)

    @property
    def title(self) -> str:
        """What it is called."""
        return self.changes.get("title") or title_in(self.written)

    @property
    def region(self) -> str:
        """Where its ingredients are bought."""
        return self.options.get("region") or home_region()

    @property
    def address(self) -> str:
        """Address of the recipe's own page, with its changes."""
        return paths.changed(self.page, self.changes)

    def ask(self, what: str, **more: str) -> str:
        """Address of a question about it."""
        chosen = {"region": self.options["region"]} if "region" in self.options else {}
        return paths.ask(what, self.page, self.changes, **chosen | more)

    def with_changes(self, changes: Mapping[str, str]) -> "Asked":
        """Give the same with other changes."""
        return replace(self, changes=dict(changes))


def sorted_query(query: Mapping[str, Any]) -> tuple[dict[str, str], dict[str, str]]:
    """Tell the options of an address from the changes of its recipe; a point before a name says that it is none."""
    options = {name: str(each) for name, each in query.items() if name in paths.OPTIONS}
    changes = {name.removeprefix("."): str(each) for name, each in query.items() if name not in paths.OPTIONS}
    return options, changes


async def asked_recipe(kitchen: Kitchen, query: Mapping[str, Any]) -> Asked | None:
    """Find the recipe that an address asks about; None if it is not here."""
    options, changes = sorted_query(query)
    parts = options.get("of", "").strip("/").split("/")
    page = "/" + "/".join(parts)
    written, kept = None, None
    if len(parts) == 2 and parts[0] == "dough":
        text = example_recipe(parts[1])
        written = None if text is None else Given(name=parts[1], text=text)
    elif len(parts) == 2 and parts[0] == "brought":
        written = kitchen.brought(parts[1])
    elif len(parts) in (2, 3) and parts[0] == "notebook":
        kept = await _kept(kitchen, parts[1], parts[2] if len(parts) == 3 else "")
        written = kept.given if kept is not None and kept.revision.kind == "recipe" else None
    if written is None:
        return None
    if kept is None:
        written = await with_own(kitchen, written)
    return Asked(page=page, written=written, changes=changes, options=options, kept=kept)


async def with_own(kitchen: Kitchen, given: Given) -> Given:
    """Give a recipe or sculpture with the ingredients of the notebook; without them if it can't be read."""
    if not kitchen.shelf.begun:
        return given  # at once
    try:
        return await asyncio.to_thread(kitchen.shelf.with_own, given)
    except LumpedError:
        return given


async def _kept(kitchen: Kitchen, document: str, number: str) -> Kept | None:
    wanted = paths.number_in(number)
    if number and wanted is None:
        return None
    try:
        return await asyncio.to_thread(kitchen.shelf.kept, document, wanted)
    except LumpedError:
        return None
