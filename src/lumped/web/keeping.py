"""Writing a sculpture or a recipe into the notebook: a name, a button, and what came of it."""

import asyncio
from collections.abc import Callable
from typing import Any

from nicegui import html
from nicegui.events import GenericEventArguments

from lumped.app.given import Given
from lumped.app.titles import titled
from lumped.errors import LumpedError
from lumped.notebook import Reference, Revision
from lumped.texts import say
from lumped.web import paths
from lumped.web.fields import field, sent
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, press, reveal, sorry
from lumped.web.words import Words

__all__ = ["Keeping"]


class Keeping:
    """The slip on which a page's thing is written down.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    given : callable
        Gives what is to be written.
    title : str
        The name that is suggested.
    kept : Revision, optional
        The newest revision, if it is in the notebook.
    on_kept : callable
        Told the revision that was written.
    remark : callable, optional
        Gives what is noted beside each revision.
    """

    def __init__(
        self,
        kitchen: Kitchen,
        *,
        given: Callable[[], Given],
        title: str,
        kept: Revision | None = None,
        on_kept: Callable[[Revision], None],
        remark: Callable[[], str] = lambda: "",
    ) -> None:
        self._kitchen, self._given, self._on_kept, self._remark = kitchen, given, on_kept, remark
        self.title, self.kept = title, kept
        with html.section().classes("slip leaf").mark("keeping") as self.place:
            self._heading = Words("h2", "")
            self._form = html.form().classes("keep").mark("keep")
            with self._form:
                field("title", say("web-keep-name"), title, required=True, maxlength=120)
                self._why = field("why", say("web-keep-why"), "", maxlength=300)
                with html.div().classes("takes"):
                    self._button = html.button().classes("take ink").props("type=submit").mark("keep-button")
                    with self._button:
                        self._words = Words("span")
                    self._anew = html.button().classes("take").props("type=submit data-way=anew").mark("keep-anew")
                    with self._anew:
                        Words("span", say("web-keep-anew"))
            sent(self._form, self._write)
            self._said = Words("p", "", "said").props("role=status").mark("kept")
            self._trouble = html.div()
        self._tell()

    def given(self) -> Given:
        """Give what is to be written, under the name that it has in the notebook."""
        return titled(self._given(), self.title) if self.kept is not None else self._given()

    def _tell(self) -> None:
        kept = self.kept
        self._heading.tell(say("web-keep-heading") if kept is None else say("web-kept-is", number=kept.number))
        self._words.tell(say("web-keep") if kept is None else say("web-keep-next"))
        reveal(self._why, kept is not None)
        reveal(self._anew, kept is not None)

    async def _write(self, event: GenericEventArguments) -> None:
        said: dict[str, Any] = event.args
        title, why = str(said.get("title", "")).strip(), str(said.get("why", "")).strip()
        derived = self.kept.reference if said.get("way") == "anew" and self.kept is not None else None
        await self.write(title, why, derived_from=derived)

    async def write(
        self, title: str, why: str = "", *, after: int | None = None, derived_from: Reference | None = None
    ) -> None:
        """Write it down.

        Parameters
        ----------
        title, why : str
            Its name, and a note.
        after : int, optional
            The newest revision that its writer knows of; the one that this page knows if left out.
        derived_from : Reference, optional
            Begin a document of its own that was made from this.
        """
        kept = None if derived_from is not None else self.kept
        if derived_from is not None and title == self.title:
            title = say("web-keep-copy", title=title)
        self._trouble.clear()
        self._button.props("disabled")
        try:
            revision = await asyncio.to_thread(
                self._kitchen.shelf.keep,
                self._given(),
                title=title,
                document=kept.document if kept else None,
                after=(after or kept.number) if kept else None,
                note=" – ".join(filter(None, (why, self._remark()))),
                derived_from=derived_from,
            )
        except LumpedError as error:
            self.trouble(error, lambda number: self.write(title, why, after=number))
            return
        finally:
            self._button.props(remove="disabled")
        same = kept is not None and revision.number == kept.number
        with self.place:  # the button that was pressed may be gone
            self.keep(revision)
        place = await asyncio.to_thread(self._place)
        words = "web-kept-already" if same else "web-kept-now"
        self._said.tell(say(words, number=revision.number, title=revision.title, place=place))

    def _place(self) -> str:
        try:
            return self._kitchen.shelf.where().place
        except LumpedError:
            return ""

    def keep(self, revision: Revision) -> None:
        """Go on as the page of a revision that was written."""
        self.kept, self.title = revision, revision.title
        self._tell()
        self._on_kept(revision)

    def trouble(self, error: LumpedError, anyway: Callable[[int], Any] | None = None) -> None:
        """Say why it was not written; if somebody else wrote meanwhile, offer to look and to write all the same."""
        self._said.tell("")
        self._trouble.clear()
        with self._trouble:
            sorry(str(error), "keep-failure")
            if error.code == "document-moved-on" and self.kept is not None:
                self._offer(self.kept.document, error.data["number"], anyway)

    def _offer(self, document: str, number: int, anyway: Callable[[int], Any] | None) -> None:
        with html.div().classes("takes"):
            look = lead_to(say("web-keep-look", number=number), paths.old(document, number), "keep-look", "take")
            look.props("target=_blank rel=noopener")
            if anyway is not None:
                again = anyway
                press(say("web-keep-anyway"), lambda: again(number), "keep-anyway")
