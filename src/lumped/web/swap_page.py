"""Something else instead: choose what is missing or who is at the table, and take what is proposed."""

from collections.abc import Mapping
from typing import Any

from nicegui import PageArguments, html
from nicegui.element import Element

from lumped.app.asking import Question, swapped
from lumped.app.labels import shop_of
from lumped.app.own import recipe_of
from lumped.dough.safety import DIETS
from lumped.dough.safety.needs import listed_allergens
from lumped.dough.swap import CLASSES, TARGETS
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked
from lumped.web.choosing import put_region, tick
from lumped.web.controls import choose
from lumped.web.fold import Fold
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.looks import lead_to, listed, sorry
from lumped.web.question import answer_page, tell_address
from lumped.web.sources import Sources
from lumped.web.words import Words

__all__ = ["swap_page"]

_AGAINST = {"conducting": "blocks-better", "insulating": "carries-better"}
_STOVE = "stove"
_TWICE = "crustacean shellfish"  # crustaceans, as the American list calls them


async def swap_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of a swap."""
    await answer_page(kitchen, "swap", asked.query_parameters, _SwapPage)


class _SwapPage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked = asked
        self._said = {name: {each for each in asked.options.get(name, "").split(",") if each}
                      for name in ("without", "diet")}  # fmt: skip
        self._target, self._region = asked.options.get("target", ""), asked.region
        self._told: Mapping[str, Any] = {}
        try:
            recipe = recipe_of(asked.given)
        except LumpedError as error:
            sorry(str(error))
            return
        shop = shop_of(asked.given)
        there = [(key, shop[key].name) for key in recipe.ingredients]
        classes = [
            (key, say(f"web-class-{key}")) for key, holds in CLASSES.items()
            if sum(holds(shop[each]) for each in recipe.ingredients) > 1 or key in self._said["without"]
        ]  # fmt: skip
        stove = [(_STOVE, say("web-class-stove"))] if recipe.cooked == "pot" else []
        self._sources = Sources(lambda what: self._told[what])
        with html.section().classes("slip wishes"):
            tick(say("web-swap-without"), [*there, *classes, *stove], self._said["without"], self._tick("without"))
            self._put_allergens({key for key, _ in (*there, *classes)})
            tick(say("web-swap-diet"), [(each.replace(" ", "-"), each) for each in DIETS], self._said["diet"],
                 self._tick("diet"))  # fmt: skip
            targets = [each for each in TARGETS if each != _AGAINST[recipe.kind]]
            choose(say("web-swap-target"), [("", say("web-target-none")),
                   *((each, say(f"web-target-{each}")) for each in targets)], self._target, self._aim,
                   classes="pick", marker="target")  # fmt: skip
            put_region(self._region, self._move)
        self._later = Later(kitchen, swapped, self._show)
        self._found: Element = html.div().classes("proposals").mark("proposals").props("aria-live=polite")
        self._ask()

    def _put_allergens(self, named: set[str]) -> None:
        """Offer the allergens of both lists, apart from those that stand among the ingredients already."""
        offered = [each for each in listed_allergens() if each not in named and each != _TWICE]
        with html.details().classes("more-needs").mark("allergens") as more:
            more.props.update({"open": True} if set(offered) & self._said["without"] else {})
            Words("summary", say("web-swap-allergens"))
            tick(say("web-swap-allergens-legend"), [(each, each) for each in offered], self._said["without"],
                 self._tick("without"))  # fmt: skip

    def _tick(self, what: str) -> Any:
        def ticked(key: str, chosen: bool) -> None:
            (self._said[what].add if chosen else self._said[what].discard)(key)
            self._ask()

        return ticked

    def _aim(self, target: str) -> None:
        self._target = target
        self._ask()

    def _move(self, region: str) -> None:
        self._region = region
        self._ask()

    def _ask(self) -> None:
        without, diets = sorted(self._said["without"]), sorted(self._said["diet"])
        tell_address("swap", self._asked, without=",".join(without), diet=",".join(diets), target=self._target,
                     region=self._region)  # fmt: skip
        self._found.clear()
        if not (without or diets or self._target):
            with self._found:
                Words("p", say("web-swap-begin"), "soft")
            return
        said = {"without": without, "diets": diets, "region": self._region, "target": self._target}
        self._later.ask(Question(given=self._asked.given, said=said))

    def _show(self, found: Mapping[str, Any]) -> None:
        self._told = found["sources"]
        self._found.clear()
        with self._found:
            if found["unchanged"]:
                with html.section().classes("slip wide"):
                    Words("p", say("swap-as-it-is"))
                    self._put_traces(found["traces"])
            if found["blockers"]:
                self._put_blockers(found["blockers"])
            for number, each in enumerate(found["proposals"], 1):
                self._put_proposal(number, each)
            if found["notes"]:
                with html.section().classes("slip wide"):
                    listed(found["notes"])

    def _put_amount(self, key: str, words: str) -> Words:
        """An amount is a number with its source; that there is none of it is words."""
        return self._sources.figure(key, words) if key in self._told else Words("span", words)

    def _put_traces(self, traces: list[str]) -> None:
        for words in traces:
            Words("p", words, "not-fit").mark("traces")

    def _put_blockers(self, blockers: list[str]) -> None:
        with html.section().classes("slip wide").mark("blockers"):
            Words("p", say("swap-none"), "state")
            Words("h3", say("heading-blockers"))
            listed(blockers)

    def _put_proposal(self, number: int, each: Mapping[str, Any]) -> None:
        with html.section().classes("slip proposal").mark(f"proposal-{number}"):
            Words("h2", each["heading"])
            with html.dl().classes("numbers amounts-then"):
                for key, name, before, after in each["amounts"]:
                    Words("dt", name)
                    with html.dd().classes("" if before == after else "moved-amount"):
                        self._put_amount(f"no-{number}-amount-{key}", after or say("web-left-out"))
                        if before != after:
                            words = say("web-instead-of", before=before) if before else say("web-new")
                            self._put_amount(f"no-{number}-amount-before-{key}", words).classes("soft then")
            self._put_traces(each["traces"])
            if each["cautions"]:
                Words("h3", say("heading-cautions"))
                listed(each["cautions"]).mark(f"cautions-{number}")
            listed(each["reasons"])
            with Fold(f"figures-{number}", say("web-proposal-figures"), "h3"), html.dl().classes("numbers"):
                for key, words, before, now in each["figures"]:
                    Words("dt", words)
                    with html.dd():
                        self._sources.figure(key, now)
                        if before and before != now:
                            self._sources.figure(f"{key}-before", say("web-before", figure=before)).classes("soft then")
            with html.details():
                Words("summary", say("web-to-know"))
                listed(each["notes"])
            with html.div().classes("takes"):
                changes = {**self._asked.changes, **each["changes"]}
                lead_to(say("web-take-this"), paths.changed(self._asked.page, changes), f"take-{number}", "take ink")
