"""Who may touch a dough, who must not eat it, and what to mind."""

from collections.abc import Mapping
from datetime import date
from typing import Any

from nicegui import PageArguments, html
from nicegui.element import Element

from lumped.app.asking import Question, cared
from lumped.texts import say
from lumped.web.asked import Asked
from lumped.web.fields import field
from lumped.web.kitchen import Kitchen
from lumped.web.later import Later
from lumped.web.question import answer_page, tell_address
from lumped.web.sources import Sources
from lumped.web.words import Words

__all__ = ["care_page"]


async def care_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of what to mind."""
    await answer_page(kitchen, "care", asked.query_parameters, _CarePage)


class _CarePage:
    def __init__(self, kitchen: Kitchen, asked: Asked) -> None:
        self._asked = asked
        self._age, self._dog = asked.options.get("age", "2"), asked.options.get("dog", "")
        self._told: Mapping[str, Any] = {}
        self._sources = Sources(lambda what: self._told[what])
        with html.section().classes("slip wishes"):
            self._put("age", say("web-care-age"), self._age)
            self._put("dog", say("web-care-dog"), self._dog)
        self._later = Later(kitchen, cared, self._show)
        self._found: Element = html.div().classes("proposals").mark("care-found").props("aria-live=polite")
        self._ask()

    def _put(self, name: str, label: str, value: str) -> None:
        place = field(name, label, value, maxlength=6, inputmode="decimal")
        written = next(each for each in place.descendants() if each.tag == "input")
        written.on("input", lambda event: self._say(name, str(event.args)), throttle=0.4, leading_events=False,
                   js_handler="(event) => emit(event.target.value)")  # fmt: skip

    def _say(self, name: str, value: str) -> None:
        if name == "age":
            self._age = value
        else:
            self._dog = value
        self._ask()

    def _ask(self) -> None:
        tell_address("care", self._asked, age=self._age, dog=self._dog)
        said = {"on": date.today().isoformat(), "age": self._age, "dog": self._dog}
        self._later.ask(Question(given=self._asked.given, said=said))

    def _show(self, found: Mapping[str, Any]) -> None:
        self._told = found["sources"]
        self._found.clear()
        with self._found:
            with html.section().classes("slip"):
                Words("h2", say("web-care-allergens"))
                for words, named in found["allergens"]:
                    Words("h3", words)
                    _list(named or [say("web-care-none")])
            with html.section().classes("slip"):
                Words("h2", say("web-care-diets"))
                with html.dl().classes("numbers diets"):
                    for diet, fits, words in found["diets"]:
                        Words("dt", diet)
                        Words("dd", words, "" if fits else "not-fit")
                if found["remarks"]:
                    Words("h3", say("heading-remarks"))
                    _list(found["remarks"])
            with html.section().classes("slip wide").mark("cautions"):
                Words("h2", say("heading-cautions"))
                with html.ul().classes("cautions"):
                    for key, severity, words in found["cautions"]:
                        with html.li().classes(f"caution {severity.replace(' ', '-')}"):
                            Words("span", words)
                            self._sources.figure(key, say("web-source-ask"))


def _list(words: list[str]) -> None:
    with html.ul().classes("notes"):
        for each in words:
            Words("li", each)
