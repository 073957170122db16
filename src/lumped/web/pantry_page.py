"""The pantry: all ingredients, found by name in four languages, by what they do, and by who must not touch them."""

import asyncio
from collections.abc import Mapping, Sequence
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.larder import allergens_there, choices, shop_with_own
from lumped.app.pantry import Found, listed
from lumped.errors import LumpedError
from lumped.pantry import Ingredient, Pantry, region
from lumped.texts import say
from lumped.web import paths
from lumped.web.choosing import tick
from lumped.web.fields import search_field, select
from lumped.web.fold import Fold
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, sorry
from lumped.web.words import Words

__all__ = ["own_shop", "pantry_page", "role_words"]

_OPTIONS = ("words", "role", "free", "region")


async def pantry_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of the pantry."""
    ui.page_title(say("web-page-title", title=say("web-pantry")))
    page = _PantryPage(asked.query_parameters)
    shop, troubles, documents = await own_shop(kitchen)
    await page.fill(shop, troubles, documents)


async def own_shop(kitchen: Kitchen) -> tuple[Pantry, tuple[str, ...], dict[str, str]]:
    """Give the ingredients with a person's own, what is wrong with some, and the documents of own ones by title."""
    try:
        labels = await asyncio.to_thread(kitchen.shelf.own_labels)
        documents = await asyncio.to_thread(kitchen.shelf.own_documents)
    except LumpedError as error:
        return (await asyncio.to_thread(shop_with_own, {}))[0], (str(error),), {}
    shop, troubles = await asyncio.to_thread(shop_with_own, labels)
    return shop, troubles, documents


class _PantryPage:
    def __init__(self, query: Mapping[str, Any]) -> None:
        self._said = {name: str(query.get(name, ""))[:100] for name in _OPTIONS}
        known = choices()
        self._diets = [each for each in str(query.get("diet", "")).split(",") if each in known["diet"]]
        self._asked = 0
        with html.main().classes("sheet-width larder").mark("pantry") as self._page:
            lead_to(say("web-back"), paths.TABLE, "to-table", "back")
            with html.header().classes("top"):
                Words("h1", say("web-pantry"))
                Words("p", say("web-pantry-lure"), "soft")
            with html.div().classes("takes"):
                lead_to(say("web-packet-begin"), paths.PACKET, "to-packet", "take")
            self._trouble: Element = html.div()
            self._wishes: Element = html.section().classes("slip wishes larder-wishes hidden-now")
            self._count = Words("p", "", "soft").props("role=status").mark("pantry-count")
            self._list: Element = html.div().mark("pantry-list")

    async def fill(self, shop: Pantry, troubles: Sequence[str], documents: Mapping[str, str]) -> None:
        """Show the ingredients, and what they can be narrowed by."""
        self._shop, self._documents = shop, documents
        with self._trouble:
            for words in troubles:
                sorry(words, "pantry-trouble")
        self._put_wishes(choices())
        await self._show()

    def _put_wishes(self, known: Mapping[str, Sequence[str]]) -> None:
        with self._wishes.classes(remove="hidden-now"):
            search_field(lambda words: self._say("words", words), say("web-pantry-search"), self._said["words"])
            with html.details().classes("larder-narrow") as fold:
                Words("summary", say("web-pantry-narrow"))
                self._put_choices(known)
            if self._diets or any(self._said[name] for name in _OPTIONS if name != "words"):
                fold.props("open")

    def _put_choices(self, known: Mapping[str, Sequence[str]]) -> None:
        anything = [("", say("web-pantry-any"))]
        free = [(each, each) for each in allergens_there(self._shop)]
        roles = [(each, role_words(each)) for each in known["role"]]
        with html.div().classes("larder-choices"):
            select(say("web-pantry-role"), anything + roles, self._said["role"], lambda role: self._say("role", role),
                   "role")  # fmt: skip
            select(say("web-pantry-free"), anything + free, self._said["free"], lambda word: self._say("free", word),
                   "free")  # fmt: skip
            places = [(each, region(each).name) for each in known["region"]]
            select(say("web-pantry-region"), [("", say("web-pantry-anywhere")), *places], self._said["region"],
                   lambda place: self._say("region", place), "region")  # fmt: skip
            tick(say("web-pantry-diet"), [(each, each) for each in known["diet"]], self._diets, self._tick)

    async def _say(self, name: str, value: str) -> None:
        self._said[name] = value[:100]
        await self._show()

    async def _tick(self, diet: str, chosen: bool) -> None:
        self._diets = [each for each in choices()["diet"] if (each in self._diets or each == diet) and
                       (each != diet or chosen)]  # fmt: skip
        await self._show()

    async def _show(self) -> None:
        self._asked += 1
        asked, said = self._asked, dict(self._said)
        ui.navigate.history.replace(paths.pantry(**said, diet=",".join(self._diets)))
        try:
            found = await asyncio.to_thread(
                listed, role=said["role"] or None, region=said["region"] or None, diets=self._diets,
                free_of=[said["free"]] if said["free"] else [], words=said["words"], shop=self._shop,
            )  # fmt: skip
        except LumpedError as error:
            self._count.tell("")
            self._list.clear()
            with self._list:
                sorry(str(error), "pantry-failure")
            return
        if asked == self._asked:
            self._lay(found)

    def _lay(self, found: Found) -> None:
        count = len(found.ingredients)
        self._count.tell(say("web-pantry-count", count=count) if count else say("larder-none"))
        rows = dict(zip((each.key for each in found.ingredients), found.rows, strict=True))
        self._list.clear()
        with self._list:
            for does, group in _by_role(found.ingredients).items():
                if self._diets or any(self._said.values()):  # all that was found is shown at once
                    Words("h2", does, "heading")
                    self._put_group(group, rows)
                else:
                    with Fold(f"pantry-{does}", does):
                        self._put_group(group, rows)

    def _put_group(self, group: Sequence[Ingredient], rows: Mapping[str, tuple[str, ...]]) -> None:
        with html.ul().classes("larder-list"):
            for each in group:
                with html.li():
                    self._row(each, rows[each.key])

    def _row(self, each: Ingredient, row: tuple[str, ...]) -> None:
        document = self._documents.get(each.name) if each.assumed else None
        address = paths.ingredient(each.key) if document is None else paths.kept(document)
        with html.a(href=address).classes("larder-row").mark(f"ingredient-{each.key}"):
            with html.span().classes("larder-name"):
                Words("b", each.name)
                if document is not None:
                    Words("span", say("web-pantry-own"), "kind")
            Words("span", ", ".join(each.roles[1:]), "soft larder-does")
            with html.span().classes("larder-holds"):
                if row[3] != "–":
                    Words("span", say("web-pantry-holds", names=row[3]))
                if row[4] != "–":
                    Words("span", say("web-pantry-traces", names=row[4]), "soft")
            if len(row) > 5:
                Words("span", say("web-pantry-sold", price=row[5], sold=row[6]), "soft larder-sold")


def role_words(role: str) -> str:
    """Say what a role is, as a heading."""
    return say(f"web-role-{role.replace(' ', '-')}")


def _by_role(ingredients: Sequence[Ingredient]) -> dict[str, list[Ingredient]]:
    """Put ingredients together by what they do first of all, each group by name."""
    groups: dict[str, list[Ingredient]] = {}
    for role in choices()["role"]:
        there = [each for each in ingredients if each.roles[:1] == (role,)]
        if there:
            groups[role_words(role)] = sorted(there, key=lambda each: each.name.casefold())
    rest = [each for each in ingredients if not each.roles]
    return groups | ({say("web-pantry-nothing"): rest} if rest else {})
