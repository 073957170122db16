"""One sculpture on the page: its drawing, to look at in three ways, and what it does; for all pages that show one."""

import asyncio
from collections.abc import Callable, Mapping
from contextlib import suppress
from typing import Any

from nicegui import html, ui

from lumped.app.answers import printed
from lumped.app.given import Given, needed_recipes
from lumped.app.kept import Kept
from lumped.app.outcomes import Outcome
from lumped.app.titles import title_in, titled
from lumped.errors import LumpedError
from lumped.notebook import Revision
from lumped.texts import say
from lumped.web import paths
from lumped.web.asking import Asking
from lumped.web.controls import choose
from lumped.web.drawing import Drawing
from lumped.web.keeping import Keeping
from lumped.web.kitchen import Kitchen
from lumped.web.looks import hand_out, reveal
from lumped.web.past import Past, kept_words, put_old
from lumped.web.slips import Slips
from lumped.web.turntable import Turntable
from lumped.web.words import Words

__all__ = ["SculptureView"]

_VIEWS = ("dough", "potential", "turn")
_HINTS = {"dough": "", "potential": "web-level-hint", "turn": "web-turn-hint"}
_BEAT = 0.15  # s


def _go_on(document: str) -> None:
    ui.navigate.history.replace(paths.kept(document))


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
    kept : Kept, optional
        The revision of the notebook that it is.
    remark : callable, optional
        Gives what is noted beside each revision that is written.
    on_kept : callable, optional
        Told the id when it is written into the notebook, to go on under another address.
    on_changed : callable, optional
        Called when another revision was brought back, or the sculpture was taken out of the notebook.
    """

    def __init__(
        self,
        kitchen: Kitchen,
        title: str,
        below: Callable[[], None] | None = None,
        *,
        kept: Kept | None = None,
        remark: Callable[[], str] = lambda: "",
        on_kept: Callable[[str], None] = _go_on,
        on_changed: Callable[[], Any] | None = None,
    ) -> None:
        self._kitchen, self._title = kitchen, title
        self._kept, self._remark, self._on_kept, self._on_changed = kept, remark, on_kept, on_changed
        self._document = kept.revision.document if kept is not None else None
        self._keeping: Keeping | None = None
        self._past: Past | None = None
        self._given: Given | None = None
        self._judged: Given | None = None
        self._effort = "quick"
        self._answer: dict[str, Any] | None = None
        self._view = "dough"
        self._turntable: Turntable | None = None
        with html.main():
            with html.div().classes("sheet-width sculpture").mark("sculpture") as self._page:
                self._put_top()
                self._put_drawing()
                with html.section().classes("says") as says:
                    says.props.update({"aria-label": say("web-says")})
                    slips = html.div().style("display: contents")
                    self._slips = Slips(slips, on_tap=self._tapped, on_take_back=self._taken_back)
                    self._keep_place = html.div().style("display: contents")
                    self._takes = html.div().classes("takes")
                if below is not None:
                    with html.section().classes("knead"):
                        below()
                else:
                    self._past_place = html.div().classes("past-place")
            if below is not None:
                self._past_place = html.div().classes("sheet-width past-place")
        self._asking = Asking(
            kitchen.jobs,
            on_sketch=self._sketched, on_answer=self._answered, on_failure=self._failed, on_share=self._move_thread,
        )  # fmt: skip

        if kept is not None:
            self._show_past(kept)
        ui.timer(0.01, self._learn, once=True)

    @property
    def document(self) -> str | None:
        """Its id in the notebook; None if it is not there."""
        return self._document

    def ask(self, given: Given) -> None:
        """Show another sculpture."""
        self._given = titled(given, self._keeping.title) if self._keeping is not None and self._document else given
        if self._keeping is None and not (self._kept is not None and self._kept.old):
            self._put_keeping()
        self._asking.ask(self._given, self._kitchen.settings.effort)

    def _put_keeping(self) -> None:
        with self._keep_place:
            self._keeping = Keeping(
                self._kitchen, given=self._asked_for, title=title_in(self._asked_for()),
                kept=self._kept.newest if self._kept is not None else None, on_kept=self._written, remark=self._remark,
            )  # fmt: skip

    def _asked_for(self) -> Given:
        assert self._given is not None
        return self._given

    def _written(self, revision: Revision) -> None:
        """Go on as the page of what was written."""
        if self._document is not None and revision.document != self._document:
            ui.navigate.to(paths.kept(revision.document))
            return
        self._document = revision.document
        self._given = titled(self._asked_for(), revision.title)
        if self._judged is not None:
            self._judged = titled(self._judged, revision.title)
        self._heading.tell(revision.title)
        ui.page_title(say("web-page-title", title=revision.title))
        self._put_takes()
        self._on_kept(revision.document)
        ui.timer(0.01, self._look_up, once=True)

    async def _look_up(self) -> None:
        """Read from the notebook what has become of it."""
        if self._document is None:
            return
        with suppress(LumpedError):
            self._show_past(await asyncio.to_thread(self._kitchen.shelf.kept, self._document))

    def _show_past(self, kept: Kept) -> None:
        self._kept_line.tell(kept_words(kept))
        reveal(self._kept_line, True)
        self._past_place.clear()
        with self._past_place:
            self._past = Past(self._kitchen, kept, on_changed=self._changed)
        self._slips.show_outcomes(kept.outcomes)

    def _changed(self) -> Any:
        if self._on_changed is not None:
            return self._on_changed()
        assert self._document is not None
        return ui.navigate.to(paths.kept(self._document))

    async def _learn(self) -> None:
        """Learn what parts can be seen to do; the rooms that know it take a moment to open."""
        self._slips.know_choices(await asyncio.to_thread(self._kitchen.shelf.choices))

    async def _tapped(self, part: Mapping[str, Any], happened: str) -> None:
        """Note what a part really did; what is judged is written down first if it isn't yet."""
        assert self._judged is not None
        keeping, shelf = self._keeping, self._kitchen.shelf
        kept = keeping.kept if keeping is not None else None
        try:
            sculpture, note = await asyncio.to_thread(
                shelf.note, self._judged, part, happened, effort=self._effort, document=self._document,
                after=kept.number if kept is not None else None, note=self._remark(),
            )  # fmt: skip
            outcomes = await asyncio.to_thread(shelf.outcomes, sculpture.document)
        except LumpedError as error:
            self._slips.tell(part["part"], str(error))
            if error.code == "document-moved-on" and keeping is not None:
                keeping.trouble(error)
            return
        written = keeping is not None and (kept is None or sculpture.number > kept.number)
        self._slips.show_outcomes(outcomes)
        self._slips.tell(
            part["part"], say("web-seen-written", number=sculpture.number) if written else "", note.document
        )
        if keeping is not None and written:
            keeping.keep(sculpture)

    async def _taken_back(self, outcome: Outcome) -> None:
        shelf = self._kitchen.shelf
        try:
            await asyncio.to_thread(shelf.remove, outcome.document)
            outcomes = await asyncio.to_thread(shelf.outcomes, self._document)
        except LumpedError as error:
            self._slips.tell(outcome.part, str(error), outcome.document)
            return
        self._slips.show_outcomes(outcomes)
        self._slips.tell(outcome.part, say("web-seen-taken-back"))

    def _put_top(self) -> None:
        with html.header().classes("top"):
            html.a(say("web-back"), href=paths.TABLE).classes("back")
            self._heading = Words("h1", self._title)
            self._invented = Words("p", say("web-invented"), "soft invented hidden-now")
            self._kept_line = Words("p", "", "kept-line hidden-now").mark("kept-line")
            if self._kept is not None and self._kept.old:
                put_old(self._kitchen, self._kept, self._changed)
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
        self._answer, self._judged = answer, self._given
        self._effort = "full" if last and self._kitchen.settings.effort == "full" else "quick"
        verdict = answer["verdict"]
        self._clear_failure()
        self._drawing.classes(remove="waiting")
        self._heading.tell(verdict["title"])
        ui.page_title(say("web-page-title", title=verdict["title"]))
        self._story.tell(answer["story"])
        reveal(self._story, bool(answer["story"]))
        reveal(self._invented, verdict["invented"])
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
        reveal(self._keep_place, False)
        self._slips.clear()
        self._takes.clear()
        self._gist.clear()
        self._page.classes("failing")
        reveal(self._drawing, False)
        reveal(self._stand, False)
        reveal(self._sorry, True)
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
        reveal(self._keep_place, True)
        reveal(self._sorry, False)
        reveal(self._drawing, self._view != "turn")
        reveal(self._stand, self._view == "turn")

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
        reveal(self._drawing, not turned)
        reveal(self._stand, turned)
        self._hint.tell(say(hint) if hint else "")
        reveal(self._hint, bool(hint))
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
        reveal(self._hint, True)

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
            hand_out(say("web-take-file"), given.text, given.name, "take-file")
            for name, text in needed_recipes(given).items():
                hand_out(say("web-take-recipe", file=name), text, name, f"take-{name}")

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
