"""What a recipe could be: all amounts of its salt, and all mixes of three of its ingredients, as pictures to touch."""

from collections.abc import Mapping, Sequence
from typing import Any

from nicegui import PageArguments, html
from nicegui.element import Element

from lumped.app.asking import Question, mixed, salted
from lumped.app.changing import changed, names_of_keys
from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import recipe_of
from lumped.app.readings import readings
from lumped.app.sources import source_of
from lumped.dough.mainly import main_three
from lumped.dough.properties import PROPERTIES
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked
from lumped.web.choosing import put_region
from lumped.web.fields import select
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import lead_to, sorry
from lumped.web.question import answer_page, tell_address
from lumped.web.quick import Quick
from lumped.web.scales import Readings
from lumped.web.sources import Sources
from lumped.web.touching import Touching
from lumped.web.words import Words

__all__ = ["mix_page", "salt_page"]


async def salt_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of the salt picture."""
    await answer_page(kitchen, "salt", asked.query_parameters, _SaltPage)


async def mix_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of the mix map."""
    await answer_page(kitchen, "mix", asked.query_parameters, _MixPage)


class _Touched:
    """A picture, and beside it what the dough of the touched place does."""

    what: str
    work: Any

    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked, self._region = asked, asked.region
        self._names = names_of_keys(asked.written)
        self._changes: dict[str, str] = {}
        self._found: Mapping[str, Any] = {}
        try:
            recipe = recipe_of(asked.given)
        except LumpedError as error:
            sorry(str(error))
            return
        shop = shop_of(asked.given)
        self._main = main_three(recipe, shop)
        self._there = [(key, shop[key].name) for key in recipe.ingredients]
        self._sources = Sources(lambda what: source_of(self._touched, what, self._region))
        self._quick = Quick(readings, self._show_place)
        with html.div().classes("atlas"):
            with html.section().classes("picture-place"):
                self._picture = Touching(say(f"web-way-{self.what}"), self._touch).mark("picture")
                self._later = Later(kitchen, type(self).work, self._show)
                Words("p", say("web-touch-hint"), "soft")
            with html.section().classes("slip wishes"):
                self._put_choices()
                put_region(self._region, self._move)
            with html.section().classes("slip does").mark("touched"):
                Words("h2", say("web-touched"))
                self._mix = Words("p", "", "soft")
                self._does = Words("p", "", "state").props("role=status")
                self._readings_place: Element = html.div().style("display: contents")
                with html.div().classes("takes"):
                    self._take = lead_to(say("web-take-mix"), asked.address, "take-mix", "take ink")
            self._sentences = html.ul().classes("notes slip wide")
        self._ask()

    @property
    def _touched(self) -> Given:
        return changed(self._asked.written, {**self._asked.changes, **self._changes})

    def _put_choices(self) -> None:
        raise NotImplementedError

    def _said(self) -> dict[str, Any]:
        raise NotImplementedError

    def _options(self) -> dict[str, str]:
        raise NotImplementedError

    def _begin(self) -> list[float]:
        raise NotImplementedError

    def _grams(self, place: Sequence[float]) -> dict[str, float]:
        raise NotImplementedError

    def _move(self, region: str) -> None:
        self._region = region
        self._ask()

    def _ask(self) -> None:
        tell_address(self.what, self._asked, region=self._region, **self._options())
        self._readings_place.clear()
        with self._readings_place:
            self._readings = Readings(self._sources, self._region)
        self._later.ask(Question(given=self._asked.given, said={**self._said(), "region": self._region}))

    async def _show_first(self) -> None:
        await self._quick.ask(self._asked.given, self._region)

    def _show(self, found: Mapping[str, Any]) -> None:
        self._found = found
        self._changes = {}
        self._picture.show(found["drawings"], self._begin())
        self._sentences.clear()
        with self._sentences:
            for each in found["sentences"]:
                Words("li", each)
        with self._readings_place:
            from nicegui import ui

            ui.timer(0.01, self._show_first, once=True)

    async def _touch(self, place: Sequence[float]) -> None:
        if not self._found:
            return
        grams = self._grams(place)
        self._changes = {self._names.get(key, key): f"{round(each, 1):g} g;" for key, each in grams.items()}
        shop = shop_of(self._asked.given)
        self._mix.tell(", ".join(f"{each:.0f} g {shop[key].name}" for key, each in grams.items()))
        self._take.props.update({"href": paths.changed(self._asked.page, {**self._asked.changes, **self._changes})})
        await self._quick.ask(self._touched, self._region)

    def _show_place(self, found: Mapping[str, Any] | None, failure: Mapping[str, Any] | None) -> None:
        if found is None:
            self._does.tell(failure["message"] if failure else "")
            return
        self._does.tell(found["headline"])
        self._readings.show(found["readings"])
        self._picture.tell(f"{self._mix.text}: {found['readings']['resistivity']['figure']}")


class _SaltPage(_Touched):
    what, work = "salt", staticmethod(salted)

    def _put_choices(self) -> None:
        self._vary = self._asked.options.get("vary", "")
        options = [("", say("web-vary-salt")), *self._there]
        select(say("web-vary"), options, self._vary, self._choose, "vary")

    def _choose(self, vary: str) -> None:
        self._vary = vary
        self._ask()

    def _said(self) -> dict[str, Any]:
        return {"vary": self._vary}

    def _options(self) -> dict[str, str]:
        return {"vary": self._vary}

    def _begin(self) -> list[float]:
        return [self._found["amount"] / self._found["most"]]

    def _grams(self, place: Sequence[float]) -> dict[str, float]:
        return {self._found["salt"]: place[0] * self._found["most"]}


class _MixPage(_Touched):
    what, work = "mix", staticmethod(mixed)

    def _put_choices(self) -> None:
        keys = [key for key, _ in self._there]
        chosen = [self._asked.options.get(name, "") for name in ("first", "second", "third")]
        self._corners = [each if each in keys else self._main[k % len(self._main)] for k, each in enumerate(chosen)]
        self._shown = self._asked.options.get("show", "resistivity")
        for k, name in enumerate(("first", "second", "third")):
            select(say(f"web-corner-{name}"), self._there, self._corners[k], self._choose(k), f"corner-{k}")
        shown = [(key, each.words) for key, each in PROPERTIES.items()]
        select(say("web-show"), shown, self._shown, self._show_other, "show")

    def _choose(self, k: int) -> Any:
        def chosen(key: str) -> None:
            self._corners[k] = key
            self._ask()

        return chosen

    def _show_other(self, shown: str) -> None:
        self._shown = shown
        self._ask()

    def _said(self) -> dict[str, Any]:
        return {"corners": self._corners, "show": self._shown}

    def _options(self) -> dict[str, str]:
        return {**dict(zip(("first", "second", "third"), self._corners, strict=True)), "show": self._shown}

    def _begin(self) -> list[float]:
        least, size = self._found["least"], self._found["size"]
        return [(each - low) / size for each, low in zip(self._found["point"], least, strict=True)]

    def _grams(self, place: Sequence[float]) -> dict[str, float]:
        found = self._found
        shares = (low + found["size"] * each for low, each in zip(found["least"], place, strict=True))
        return {key: share * found["total"] for key, share in zip(found["corners"], shares, strict=True)}
