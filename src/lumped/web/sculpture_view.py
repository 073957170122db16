"""One sculpture on the page: its drawing, to look at in three ways, and what it does; for all pages that show one."""

from collections.abc import Callable, Mapping
from typing import Any

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.answers import printed
from lumped.app.given import Given, needed_recipes
from lumped.texts import say
from lumped.web import paths
from lumped.web.asking import Asking
from lumped.web.controls import choose
from lumped.web.drawing import Drawing
from lumped.web.kitchen import Kitchen
from lumped.web.slips import Slips
from lumped.web.turntable import Turntable
from lumped.web.words import Words

__all__ = ["SculptureView"]

_VIEWS = ("dough", "potential", "turn")
_HINTS = {"dough": "", "potential": "web-level-hint", "turn": "web-turn-hint"}
_BEAT = 0.15  # s


class SculptureView:
    """A sculpture, looked at and judged.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    title : str
        Its title.
    below : callable, optional
        Puts on the page what stands below the drawing.
    """

    def __init__(self, kitchen: Kitchen, title: str, below: Callable[[], None] | None = None) -> None:
        self._kitchen, self._title = kitchen, title
        self._given: Given | None = None
        self._answer: dict[str, Any] | None = None
        self._view = "dough"
        self._turntable: Turntable | None = None
        with html.main().classes("sheet-width sculpture").mark("sculpture") as self._page:
            self._put_top()
            self._put_drawing()
            with html.section().classes("says") as says:
                says.props.update({"aria-label": say("web-says")})
                self._slips = Slips(html.div().style("display: contents"))
                self._takes = html.div().classes("takes")
            if below is not None:
                with html.section().classes("knead"):
                    below()
        self._asking = Asking(
            kitchen.jobs,
            on_sketch=self._sketched, on_answer=self._answered, on_failure=self._failed, on_share=self._move_thread,
        )  # fmt: skip

    def ask(self, given: Given) -> None:
        """Show another sculpture."""
        self._given = given
        self._asking.ask(given, self._kitchen.settings.effort)

    def _put_top(self) -> None:
        with html.header().classes("top"):
            html.a(say("web-back"), href=paths.TABLE).classes("back")
            self._heading = Words("h1", self._title)
            self._invented = Words("p", say("web-invented"), "soft invented hidden-now")
            self._story = Words("p", "", "soft story-text hidden-now")

    def _put_drawing(self) -> None:
        with html.div().classes("lies"):
            self._sorry = html.div().classes("sorry-place hidden-now")
            self._drawing = Drawing(self._title, self._touched)
            self._stand = html.div().classes("hidden-now")
            with html.div().classes("thread").mark("thread") as self._thread:
                html.i()
            self._thread.props.update({"role": "progressbar", "aria-label": say("web-working"), "aria-hidden": "true"})
            self._status = Words("p", "", "unseen").props("role=status aria-live=polite").mark("status")
            self._gist = html.ul().classes("gist").props("aria-hidden=true")
        with html.div().classes("looks"):
            options = [(view, say(f"web-look-{view}")) for view in _VIEWS]
            choose(say("web-look"), options, self._view, self._look_at, classes="ways", marker="look")
            self._hint = Words("p", "", "soft hidden-now")

    def _sketched(self, drawings: Mapping[str, str]) -> None:
        """Show how it looks before it is judged, unless another view is looked at."""
        self._clear_failure()
        if self._view == "dough":
            self._drawing.show(drawings)
        self._drawing.classes("waiting")

    def _answered(self, answer: dict[str, Any], last: bool) -> None:
        self._answer = answer
        verdict = answer["verdict"]
        self._clear_failure()
        self._drawing.classes(remove="waiting")
        self._heading.tell(verdict["title"])
        ui.page_title(say("web-page-title", title=verdict["title"]))
        self._story.tell(answer["story"])
        _reveal(self._story, bool(answer["story"]))
        _reveal(self._invented, verdict["invented"])
        self._show_view()
        self._slips.show(verdict, answer["keys"])
        words = " ".join(say("web-status", part=each["part"], state=each["headline"]) for each in verdict["parts"])
        self._status.tell(words)
        self._gist.clear()
        with self._gist:
            for each in verdict["parts"]:
                with html.li():
                    Words("b", each["part"])
                    Words("span", each["headline"])
        self._drawing.props["label"] = say("web-drawing", title=verdict["title"], words=words)
        self._page.props.update({"data-effort": "full" if last else "quick"})
        self._put_takes()

    def _failed(self, failure: Mapping[str, Any]) -> None:
        self._answer = None
        self._slips.clear()
        self._takes.clear()
        self._gist.clear()
        self._page.classes("failing")
        _reveal(self._drawing, False)
        _reveal(self._stand, False)
        _reveal(self._sorry, True)
        self._sorry.clear()
        with self._sorry, html.div().classes("sorry").props("role=alert"):
            Words("p", str(failure["message"])).mark("failure")
        if failure["code"] == "recipe-not-along":
            self._offer_unknown()

    def _offer_unknown(self) -> None:
        """Offer to go on without the recipes that are missing."""
        given = self._given
        assert given is not None
        with self._sorry:
            button = html.button(say("web-unknown-instead")).classes("take").mark("unknown-instead")
            button.props("type=button")
            button.on("click", lambda: self.ask(given.with_unknown_doughs()))

    def _clear_failure(self) -> None:
        self._page.classes(remove="failing")
        _reveal(self._sorry, False)
        _reveal(self._drawing, self._view != "turn")
        _reveal(self._stand, self._view == "turn")

    def _move_thread(self, share: float | None) -> None:
        self._thread.style(f"--share: {share or 0:.2f}")
        self._thread.props.update({"aria-hidden": "true" if share is None else "false"})
        if share is not None:
            self._thread.props.update({"aria-valuenow": round(100 * share)})

    def _look_at(self, view: str) -> None:
        self._view = view
        self._show_view()

    def _show_view(self) -> None:
        turned, hint = self._view == "turn", _HINTS[self._view]
        _reveal(self._drawing, not turned)
        _reveal(self._stand, turned)
        self._hint.tell(say(hint) if hint else "")
        _reveal(self._hint, bool(hint))
        if self._answer is None:
            return
        if turned:
            self._turn(self._answer["scene"])
        else:
            self._drawing.show(self._answer["drawings"], self._view)

    def _turn(self, scene: dict[str, Any]) -> None:
        if self._turntable is not None:
            self._turntable.show(scene)
            return
        with self._stand:
            self._turntable = Turntable(say("web-turning", title=self._title), scene, self._stay_flat)

    def _stay_flat(self) -> None:
        self._view = "dough"
        self._show_view()
        self._hint.tell(say("web-no-turning"))
        _reveal(self._hint, True)

    def _touched(self, part: str) -> None:
        self._slips.touch(part)

    def _put_takes(self) -> None:
        """Things to take along: the sheet, the file, and the recipes that the file names."""
        given = self._given
        assert given is not None
        self._takes.clear()
        with self._takes:
            sheet = html.button(say("web-take-sheet")).classes("take").props("type=button").mark("take-sheet")
            sheet.on("click", lambda: self._print(given, sheet))
            _take(say("web-take-file"), given.text, given.name, "take-file")
            for name, text in needed_recipes(given).items():
                _take(say("web-take-recipe", file=name), text, name, f"take-{name}")

    def _print(self, given: Given, button: html.button) -> None:
        """Have the sheet written, and hand it over."""
        paper = self._kitchen.settings.paper
        ticket = self._kitchen.jobs.submit(printed, (given, paper), f"{given.key} {paper}")
        button.props("disabled")

        def look() -> None:
            self._move_thread(None if ticket.done else ticket.share)
            if not ticket.done:
                return
            waiting.cancel()
            button.props(remove="disabled")
            answer = ticket.answer()
            if answer.failure is not None:
                self._failed(answer.failure)
            elif answer.content is not None:
                ui.download(answer.content, given.name.removesuffix(".toml") + ".pdf", "application/pdf")

        with self._page:
            waiting = ui.timer(_BEAT, look)


def _reveal(element: Element, shown: bool) -> None:
    """Show an element, or take it off the page for now."""
    element.classes(add="" if shown else "hidden-now", remove="hidden-now" if shown else "")


def _take(words: str, text: str, name: str, marker: str) -> None:
    button = html.button(words).classes("take").props("type=button").mark(marker)
    button.on("click", lambda: ui.download(text.encode(), name, "application/toml"))
