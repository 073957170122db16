"""The notebook of the running app: opened when it is first needed, and what a page asks of it.

The app starts and goes on without a notebook; each use says in words what keeps it away. Reading never begins one.
"""

import threading
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from dataclasses import replace
from typing import Any

from lumped.app.gathering import given_from, own_labels, says_just
from lumped.app.given import Given, file_name_of
from lumped.app.kept import Kept, Leaf, Where, kept_in
from lumped.app.labels import sound_labels, usable_labels
from lumped.app.notebooks import open_notebook, place_of
from lumped.app.outcomes import Outcome, note_outcome, outcomes_of
from lumped.app.own import batch_of
from lumped.app.saving import save_given, save_labels, titled_document
from lumped.app.settings import Settings
from lumped.app.titles import titled
from lumped.errors import LumpedError, NotebookError
from lumped.notebook import Entry, Notebook, Reference, Revision

__all__ = ["Shelf"]

PATIENCE = 5.0  # s that a page waits for another program that writes


class Shelf:
    """The notebook that the settings name; several threads may use it at once.

    Parameters
    ----------
    settings : Settings
        Place of the notebook, and who writes.
    """

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._lock = threading.Lock()
        self._notebook: Notebook | None = None
        self._seen = False

    def close(self) -> None:
        """Let go of the notebook."""
        with self._lock:
            if self._notebook is not None:
                self._notebook.close()
            self._notebook = None

    @contextmanager
    def opened(self, *, begin: bool = False) -> Iterator[Notebook]:
        """Give the notebook; after a trouble with its place it is opened anew the next time.

        Parameters
        ----------
        begin : bool
            Whether to begin one if there is none and there was none before.

        Raises
        ------
        NotebookError
            If it can't be opened.
        """
        notebook = self._open(begin)
        try:
            yield notebook
        except NotebookError:
            self._let_go(notebook)
            raise

    def _open(self, begin: bool) -> Notebook:
        with self._lock:
            if self._notebook is None:
                try:
                    self._notebook = open_notebook(
                        settings=self._settings, begin=begin and not self._seen, patience=PATIENCE
                    )
                except NotebookError as error:
                    if self._seen and error.code == "notebook-not-there":
                        raise NotebookError("notebook-gone", **error.data) from None
                    raise
                self._seen = True
            return self._notebook

    def _let_go(self, notebook: Notebook) -> None:
        with self._lock:
            if self._notebook is notebook:
                self._notebook = None
        notebook.close()

    def where(self) -> Where:
        """Tell where the notebook lies; opens it if there is one."""
        place = place_of(self._settings)
        folder = str(place.file.absolute().parent) if place.file is not None else ""
        if not self.begun:
            return Where(place=place.shown, folder=folder, who=self._settings.who, there=False, read_only=False)
        with self.opened() as notebook:
            shown = str(place.file.absolute()) if place.file is not None else place.shown
            return Where(place=shown, folder=folder, who=notebook.who, there=True, read_only=notebook.read_only)

    @property
    def begun(self) -> bool:
        """Whether there is a notebook, as far as a glance can tell."""
        file = place_of(self._settings).file
        return self._seen or file is None or file.exists()

    def leaves(
        self, *, kind: str | None = None, words: str = "", removed: bool = False, drawn: int = 0
    ) -> tuple[Leaf, ...]:
        """List what is in the notebook, the newest first; nothing if there is none yet.

        Parameters
        ----------
        kind : str, optional
            Only this kind.
        words : str
            Only what holds all of these words.
        removed : bool
            What was removed, instead.
        drawn : int
            How many sculptures to give with their texts.
        """
        if not self.begun:
            return ()
        with self.opened() as notebook:
            entries = notebook.entries(kind=kind, words=words, removed=removed)
            first = [each.document for each in entries if each.kind == "sculpture" and not removed][:drawn]
            return tuple(Leaf(entry=each, given=self._readable(notebook, each, first)) for each in entries)

    def _readable(self, notebook: Notebook, entry: Entry, wanted: list[str]) -> Given | None:
        if entry.document in wanted:
            with suppress(LumpedError):
                return given_from(notebook, notebook.revision(entry.document))
        return None

    def kept(self, document: str, number: int | None = None) -> Kept:
        """Give a document, as its newest revision or an older one says.

        Raises
        ------
        InputError
            If there is no such document or revision.
        NotebookError
            If the notebook can't be read, or a newer Lumped wrote it.
        """
        with self.opened() as notebook:
            return kept_in(notebook, document, number)

    def keep(
        self,
        given: Given,
        *,
        title: str = "",
        document: str | None = None,
        after: int | None = None,
        note: str = "",
        derived_from: Reference | None = None,
    ) -> Revision:
        """Save a sculpture, recipe, batch or ingredient; the arguments are those of `save_given`.

        Returns
        -------
        Revision
            The one that says so: a new one, or the newest if it says just this.
        """
        with self.opened(begin=True) as notebook:
            if document is not None:
                newest = notebook.revision(document)
                if after in (None, newest.number) and says_just(notebook, newest, titled(given, title)):
                    return newest
            return save_given(
                notebook, given, document=document, title=title, note=note, derived_from=derived_from, after=after
            )

    def keep_titled(self, given: Given) -> Revision:
        """Save a file as the next revision of the one document of its kind and title, else as a new one."""
        with self.opened(begin=True) as notebook:
            document = titled_document(notebook, given)
        return self.keep(given, document=document)

    def keep_labels(self, text: str, name: str) -> tuple[Revision, ...]:
        """Save all ingredients of a CSV table; the arguments are those of `save_labels`."""
        with self.opened(begin=True) as notebook:
            return save_labels(notebook, text, name)

    def take_in(self, labels: Mapping[str, str], batches: Sequence[Given]) -> tuple[Revision, ...]:
        """Save ingredients and batches: all of them, or none if one can't be.

        Parameters
        ----------
        labels : mapping of str to str
            Texts of ingredient files by their titles.
        batches : sequence of Given
            Batches with the recipes that they name.

        Raises
        ------
        InputError
            If one of them can't be read, or a recipe did not come along.
        """
        there = {**sound_labels(self.own_labels()), **labels}
        for each in batches:
            batch_of(replace(each, labels=there))
        named = [Given(name=file_name_of(title), text=text) for title, text in labels.items()]
        return tuple(self.keep_titled(each) for each in (*named, *(replace(each, labels=there) for each in batches)))

    def with_own(self, given: Given) -> Given:
        """Give a recipe with the ingredients of the notebook; those that came along go before them.

        One that can't be read comes along only where it is named, and says there why.
        """
        return replace(given, labels={**usable_labels(self.own_labels(), given.text), **given.labels})

    def own_labels(self) -> dict[str, str]:
        """Give the texts of all ingredients in the notebook by their titles; of those with one title the newest."""
        if not self.begun:
            return {}
        with self.opened() as notebook:
            return own_labels(notebook)

    def own_documents(self) -> dict[str, str]:
        """Give the documents of all ingredients in the notebook by their titles; of those with one title the newest."""
        return {each.entry.title: each.entry.document for each in reversed(self.leaves(kind="ingredient"))}

    def note(
        self,
        given: Given,
        part: Mapping[str, Any],
        happened: str,
        *,
        effort: str,
        document: str | None = None,
        after: int | None = None,
        note: str = "",
    ) -> tuple[Revision, Revision]:
        """Note what a part really did; a sculpture that is not in the notebook as it was judged is saved first.

        Returns
        -------
        (Revision, Revision)
            The sculpture, and the note.
        """
        with self.opened(begin=True) as notebook:
            history = notebook.history(document) if document is not None else ()
            there = [each for each in reversed(history) if says_just(notebook, each, given)]
            sculpture = there[0] if there else save_given(notebook, given, document=document, after=after, note=note)
            return sculpture, note_outcome(notebook, sculpture, part, happened, effort=effort)

    def choices(self) -> dict[str, tuple[str, ...]]:
        """Give what parts can be seen to do, by kind."""
        from lumped.verdict.outcomes import SEEN

        return {str(kind): seen for kind, seen in SEEN.items()}

    def outcomes(self, document: str | None) -> tuple[Outcome, ...]:
        """Give what was noted of a sculpture, the newest first."""
        if document is None or not self.begun:
            return ()
        with self.opened() as notebook:
            return outcomes_of(notebook, document)

    def changes(self, document: str, before: int, after: int) -> tuple[str, ...]:
        """Tell in lines how two revisions of a document differ."""
        with self.opened() as notebook:
            pair = notebook.revision(document, before), notebook.revision(document, after)
            return tuple(each.text for each in notebook.compare(*pair))

    def remove(self, document: str, *, note: str = "") -> Revision:
        """Take a document out; that is a revision too."""
        with self.opened() as notebook:
            return notebook.remove(document, note=note)

    def bring_back(self, document: str, number: int | None = None) -> Revision:
        """Save a revision again as the newest; of a removed document the last that is none."""
        with self.opened() as notebook:
            if number is None:
                number = next(each.number for each in reversed(notebook.history(document)) if not each.removed)
            return notebook.restore(document, number)
