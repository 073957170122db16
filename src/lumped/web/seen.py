"""What a part really did: one tap beside what was predicted, and how often it came as it was said."""

from collections.abc import Awaitable, Callable, Mapping, Sequence
from dataclasses import asdict
from typing import Any

from nicegui import html, ui

from lumped.app.outcomes import Outcome
from lumped.texts import say
from lumped.web.looks import reveal
from lumped.web.words import Words

__all__ = ["Seen", "outcome_words"]

OnTap = Callable[[Mapping[str, Any], str], Awaitable[None]]
OnTakeBack = Callable[[Outcome], Awaitable[None]]


def outcome_words(body: Mapping[str, Any]) -> str:
    """Say what was noted of a part, and whether it was as predicted."""
    what = say(f"state-{body['part_kind']}-{body['happened']}")
    return say("web-seen-as-said" if body["came_true"] else "web-seen-otherwise", what=what, said=body["said"])


class Seen:
    """The question at the foot of one part's slip.

    Parameters
    ----------
    part, kind : str
        The part and what kind it is.
    choices : sequence of str
        What it can be seen to do.
    on_tap : callable
        Told the part as the verdict shows it and what it was seen to do.
    on_take_back : callable
        Told the note that is taken back.
    """

    def __init__(
        self, part: str, kind: str, choices: Sequence[str], *, on_tap: OnTap, on_take_back: OnTakeBack
    ) -> None:
        self._part, self._on_tap, self._on_take_back = part, on_tap, on_take_back
        self._each: Mapping[str, Any] = {}
        self._outcomes: Sequence[Outcome] = ()
        self._said = ""
        self._noted_id: str | None = None
        with html.div().classes("seen").props("role=group") as self._place:
            self._question = Words("p", say("web-seen"), "question")
            self._place.props.update({"aria-label": say("web-seen-of", part=part)})
            with html.div().classes("taps"):
                self._taps = {choice: self._tap(choice, say(f"state-{kind}-{choice}")) for choice in choices}
            with html.div().classes("noted"):
                self._words = Words("p").props("role=status").mark(f"noted-{part}")
                self._back = html.button(say("web-seen-back")).classes("take hidden-now").props("type=button")
                self._back.mark(f"take-back-{part}").on("click", self._take_back)
            self._count = Words("p", "", "soft hidden-now").mark(f"tables-{part}")

    def _tap(self, choice: str, words: str) -> html.button:
        tap = html.button(words).classes("tap").props("type=button").mark(f"tap-{self._part}-{choice}")
        tap.props.update({"data-seen": choice})
        return tap.on("click", lambda: self._note(choice))

    def ask(self, each: Mapping[str, Any]) -> None:
        """Ask beside a prediction: the part as the verdict shows it."""
        self._each = each

    async def _note(self, choice: str) -> None:
        self._wait(True)
        try:
            await self._on_tap(self._each, choice)
        finally:
            self._wait(False)

    async def _take_back(self) -> None:
        last = self._last()
        if last is None:
            return
        self._wait(True)
        try:
            await self._on_take_back(last)
        finally:
            self._wait(False)
        if self._last() is None:  # the button goes; whoever pressed it by keyboard goes on at what was tapped
            ui.run_javascript(f"getHtmlElement({self._taps[last.happened].id})?.focus()")

    def _wait(self, waits: bool) -> None:
        """Take no second tap while one is being written; a disabled button would lose the focus."""
        for each in (*self._taps.values(), self._back):
            each.props.update({"aria-disabled": "true" if waits else "false"})
            each.style("pointer-events: none" if waits else "pointer-events: auto")

    def show(self, outcomes: Sequence[Outcome]) -> None:
        """Show what was noted of this part, the newest first."""
        self._outcomes = outcomes
        self._tell()

    def tell(self, words: str, noted: str | None = None) -> None:
        """Say what came of the last tap; `noted` is the id of the note that it made."""
        self._said, self._noted_id = words, noted
        self._tell()

    def _tell(self) -> None:
        last = self._last()
        words = self._said
        if last is not None:
            body = {"part_kind": self._each["kind"], **asdict(last)}
            words = " ".join(filter(None, (outcome_words(body), self._said)))
        self._words.tell(words)
        reveal(self._back, last is not None)
        for choice, tap in self._taps.items():
            tap.props.update({"aria-pressed": "true" if last is not None and last.happened == choice else "false"})
        count, true = len(self._outcomes), sum(each.came_true for each in self._outcomes)
        self._question.tell(say("web-seen-next" if count else "web-seen"))
        self._count.tell(say("web-seen-tables", count=count, true=true) if count else "")
        reveal(self._count, bool(count))

    def _last(self) -> Outcome | None:
        return next((each for each in self._outcomes if each.document == self._noted_id), None)
