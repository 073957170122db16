"""Is this batch good? A lamp, two screws and one minute, and how much the answer is worth."""

from collections.abc import Mapping
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.asking_trial import THINGS, trial_choices, trialled
from lumped.texts import say
from lumped.web.asked import Asked
from lumped.web.controls import choose
from lumped.web.fields import select
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, listed, reveal, sorry
from lumped.web.marks import mark
from lumped.web.question import answer_page, tell_address
from lumped.web.quick import Quick
from lumped.web.sources import Sources
from lumped.web.trial_drawing import trial_drawing
from lumped.web.words import Words

__all__ = ["trial_page"]

_MARKS = {"bright": "bright", "faint": "barely-lit", "dark": "dark"}


async def trial_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of the one-minute trial."""
    await answer_page(kitchen, "trial", asked.query_parameters, _TrialPage)


class _TrialPage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked = asked
        self._things = {name: asked.options.get(name, first) or first for name, first in THINGS.items()}
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        self._quick = Quick(trialled, self._show)
        self._trouble: Element = html.div()
        with html.div().classes("atlas"):
            with html.section().classes("slip does hidden-now").mark("trial-found").props("aria-live=polite") as answer:
                self._answer = answer
                self._go = Words("p", "", "state")
                self._weak = Words("p", "", "weak hidden-now").mark("trial-weak")
                self._drawing = ui.html("", sanitize=False).classes("trial-drawing")
                self._expected = Words("p", "")
                self._sources.where("trial-good")
            with html.section().classes("slip wishes"):
                self._put_choices()
        self._found: Element = html.div().classes("proposals").mark("trial-says")
        ui.timer(0.01, self._ask, once=True)

    def _put_choices(self) -> None:
        there = trial_choices()
        moulds = [("", say("web-trial-most")), *there["mould"]]
        choose(say("web-trial-mould"), moulds, self._things["mould"], self._take("mould"), classes="pick",
               marker="mould")  # fmt: skip
        choose(say("web-trial-lamp"), there["lamp"], self._things["lamp"], self._take("lamp"), classes="pick",
               marker="lamp")  # fmt: skip
        select(say("web-trial-pack"), there["pack"], self._things["pack"], self._take("pack"), "pack")
        select(say("web-trial-screws"), there["screws"], self._things["screws"], self._take("screws"), "screws")

    def _take(self, name: str) -> Any:
        async def taken(key: str) -> None:
            self._things[name] = key
            await self._ask()

        return taken

    async def _ask(self) -> None:
        tell_address("trial", self._asked, **self._things)
        await self._quick.ask(self._asked.given, dict(self._things))

    def _show(self, found: Mapping[str, Any] | None, failure: Mapping[str, Any] | None) -> None:
        self._trouble.clear()
        if found is None:
            with self._trouble:
                sorry(failure["message"] if failure else "")
            return
        self._told = found["sources"]
        reveal(self._answer, True)
        self._go.tell(say(f"web-trial-go-{found['go']}"))
        self._weak.tell(say("web-trial-weak"))
        reveal(self._weak, not found["tells"])
        self._drawing.set_content(trial_drawing(found["line"], found["go"]))
        self._expected.tell(found["expected"])
        self._found.clear()
        with self._found:
            self._lay(found)

    def _lay(self, found: Mapping[str, Any]) -> None:
        with html.section().classes("slip").mark("trial-steps"):
            Words("h2", say("heading-trial-steps"))
            listed(found["steps"], "ol", "notes steps")
            self._sources.where("trial-line")
        with html.section().classes("slip").mark("trial-lights"):
            Words("h2", say("web-trial-lights"))
            with html.ul().classes("lights"):
                for state, words in found["lights"]:
                    with html.li():
                        ui.html(mark("lamp", found["line"]["lamp"], _MARKS.get(state, "dark")), sanitize=False)
                        Words("p", words)
            Words("p", found["spread"], "soft")
            self._sources.where("trial-line")
        with html.section().classes("slip").mark("trial-worth"):
            self._lay_worth(found)
        with html.section().classes("slip wide").mark("trial-cautions"):
            Words("h2", say("heading-cautions"))
            listed(found["cautions"])

    def _lay_worth(self, found: Mapping[str, Any]) -> None:
        Words("h2", say("web-trial-worth"))
        for words, shares in found["batches"]:
            Words("p", words, "soft")
            _put_bar(shares)
        listed(found["worth"])
        self._sources.where("trial-good")
        if found["better"]:
            with html.div().classes("takes"):
                lead_to(say("web-trial-take-better"), self._asked.ask("trial", **found["better"]), "take-better",
                        "take ink")  # fmt: skip
        Words("h3", say("web-trial-numbers"))
        with html.dl().classes("numbers open-numbers"):
            for key, words, figure in found["figures"]:
                Words("dt", words)
                with html.dd():
                    self._sources.figure(key, figure)


def _put_bar(shares: Mapping[str, int]) -> None:
    """Batches of a hundred by what they look like, as one bar."""
    with html.div().classes("shares"):
        for state, count in shares.items():
            if count:
                with html.span().classes(f"share {state}").style(f"--count: {count}"):
                    Words("span", say(f"web-trial-share-{state}", count=count))
