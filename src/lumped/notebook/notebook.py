"""A notebook: what its owners and programs do with it."""

import getpass
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from types import TracebackType

import numpy as np
from numpy.typing import ArrayLike

from lumped.errors import InputError, NotebookError
from lumped.notebook import documents as stored
from lumped.notebook import series as measured
from lumped.notebook.canonical import Body, hash_of
from lumped.notebook.comparing import Difference, differences
from lumped.notebook.identity import new_id
from lumped.notebook.kinds import Kind, Kinds
from lumped.notebook.layout import bring_up_to_date
from lumped.notebook.lines import plain_line
from lumped.notebook.moments import as_microseconds, now
from lumped.notebook.place import Place
from lumped.notebook.recording import Recorder, Waiting
from lumped.notebook.records import DERIVED, Batch, Entry, Readings, Revision, Series
from lumped.notebook.reference import Reference
from lumped.notebook.store import PATIENCE, Store
from lumped.notebook.thinning import thinned

__all__ = ["Notebook", "open_notebook"]

LINE = 200  # characters of a title, name, unit, instrument or method
NOTE = 2_000


def open_notebook(
    place: str | Path | None = None,
    *,
    kinds: Iterable[Kind] = (),
    who: str = "",
    begin: bool = True,
    clock: Callable[[], datetime] = now,
    patience: float = PATIENCE,
) -> "Notebook":
    """Open a notebook, and begin it if there is none.

    A notebook of an older Lumped is backed up, then brought up to date.

    Parameters
    ----------
    place : str or Path, optional
        A file, a folder, or a PostgreSQL address; the usual file if left out.
    kinds : iterable of Kind
        What the rooms register: how their documents are checked and migrated.
    who : str
        Who writes; the name of the user of this computer if left out.
    begin : bool
        Whether to begin one if there is none.
    clock : callable
        Gives the present moment.
    patience : float
        How long to wait for another program that is writing. [s]

    Returns
    -------
    Notebook

    Raises
    ------
    NotebookError
        If it can't be opened, or there is none and none was to be begun.

    Examples
    --------
    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder, open_notebook(folder) as notebook:
    ...     first = notebook.save("note", {"title": "Salt", "text": "Coarse salt takes longer."})
    ...     second = notebook.save("note", {"title": "Salt", "text": "Twice as long."}, document=first.document)
    ...     [each.number for each in notebook.history(first.document)]
    [1, 2]
    """
    where = Place.read(place)
    if where.file is not None and not where.file.exists():
        if not begin:
            raise NotebookError("notebook-not-there", place=where.shown)
        _make_file(where)
    store = Store(where, patience=patience)
    try:
        backup = bring_up_to_date(store, clock())
    except BaseException:
        store.close()
        raise
    return Notebook(store, kinds=Kinds(kinds), who=who or _user(), clock=clock, backup=backup)


def _make_file(place: Place) -> None:
    assert place.file is not None
    try:
        place.file.parent.mkdir(parents=True, exist_ok=True)
        place.file.touch()
    except OSError as error:
        raise NotebookError("notebook-no-room", place=place.shown, problem=error.strerror or str(error)) from None


def _user() -> str:
    try:
        return getpass.getuser()
    except (KeyError, OSError):
        return "somebody"


class Notebook:
    """One person's or lab's store; `open_notebook` gives one.

    Use it in a `with` block, or call `close`. It may be used by several threads at once.
    """

    def __init__(
        self, store: Store, *, kinds: Kinds, who: str, clock: Callable[[], datetime], backup: Path | str | None
    ) -> None:
        self._store, self._kinds, self._clock = store, kinds, clock
        self.who = plain_line(who, LINE)
        self.migrated_from = backup
        """The backup that was made because the notebook was an older one; None if it was not."""

    @property
    def place(self) -> Place:
        """Where it lies."""
        return self._store.place

    @property
    def read_only(self) -> bool:
        """Whether it can only be read."""
        return self._store.read_only

    def close(self) -> None:
        """Let go of the file or the server."""
        self._store.close()

    def __enter__(self) -> "Notebook":
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    # -- documents

    def save(
        self,
        kind: str,
        body: Body,
        *,
        document: str | None = None,
        title: str | None = None,
        note: str = "",
        links: Mapping[str, Reference] | None = None,
        derived_from: Reference | None = None,
        after: int | None = None,
        schema: int | None = None,
    ) -> Revision:
        """Save a document: a revision is added, and nothing is overwritten.

        Parameters
        ----------
        kind : str
            Its kind.
        body : mapping
            What it holds.
        document : str, optional
            Id of the document that goes on; a new one begins if left out.
        title : str, optional
            Its title; the one in the body if left out.
        note : str
            Why.
        links : mapping of str to Reference, optional
            What it refers to, by the name it uses for it.
        derived_from : Reference, optional
            What it was made from.
        after : int, optional
            Save only if this is still the number of the newest revision.
        schema : int, optional
            Form of the body; the newest of its kind if left out.

        Returns
        -------
        Revision
            As it was saved; it is on the disk.

        Raises
        ------
        InputError
            If the body can't be read as its kind, a link leads nowhere, or somebody has saved a newer revision.
        NotebookError
            If it can't be written; then nothing was.
        """
        reserved = sorted({"kind", "schema"} & set(body))
        if reserved:
            raise InputError("body-reserved", key=reserved[0])
        known = self._kinds[kind]
        form = known.schema if schema is None else schema
        titled = plain_line(known.title(body) if title is None else title, LINE)
        if form == known.schema:
            known.check(body, titled)
        hash_ = hash_of(body)
        targets = {plain_line(name, LINE): target for name, target in (links or {}).items()}
        if derived_from is not None:
            targets[DERIVED] = derived_from
        return self._add(
            Revision(
                document=document or new_id(), kind=plain_line(kind, LINE), number=0, schema=form, title=titled,
                body=body, hash=hash_, made_by=self.who, at=self._moment(), note=plain_line(note, NOTE), links=targets,
            ),
            after=after, new=document is None,
        )  # fmt: skip

    def remove(self, document: str, *, note: str = "") -> Revision:
        """Remove a document: that is a revision too, and `restore` brings back any before it."""
        newest = self.revision(document)
        return self._add(replace(
            newest, body=None, hash="", made_by=self.who, at=self._moment(), note=plain_line(note, NOTE),
            links={}, restored=None,
        ))  # fmt: skip

    def restore(self, document: str, number: int, *, note: str = "") -> Revision:
        """Bring back a revision: it is saved again as the newest."""
        old = self.revision(document, number)
        if old.removed:
            raise InputError("restore-removal", title=old.title, number=number)
        return self._add(replace(
            old, made_by=self.who, at=self._moment(), note=plain_line(note, NOTE), restored=number,
        ))  # fmt: skip

    def _add(self, revision: Revision, *, after: int | None = None, new: bool = False) -> Revision:
        with self._store.writing() as connection:
            newest = None if new else stored.newest_of(connection, revision.document)
            if not new and newest is None:
                raise InputError("document-unknown", name=revision.document)
            if after is not None and newest is not None and newest.number != after:
                raise InputError("document-moved-on", title=newest.title, number=newest.number, who=newest.made_by)
            return stored.add_revision(connection, revision)

    def revision(self, document: str, number: int | None = None) -> Revision:
        """Give a revision of a document, the newest if no number is named, as it was saved.

        Raises
        ------
        InputError
            If there is no such document or revision.
        """
        with self._store.reading() as connection:
            if number is None:
                found = stored.newest_of(connection, document)
            else:
                found = stored.revision_of(connection, document, number)
        if found is None and number is not None:
            raise InputError("revision-unknown", name=document, number=number)
        if found is None:
            raise InputError("document-unknown", name=document)
        return found

    def body(self, revision: Revision) -> Body:
        """Give the body of a revision in the newest form of its kind; what is stored stays as it is.

        Raises
        ------
        InputError
            If the revision is a removal.
        NotebookError
            If it was written by a newer Lumped.
        """
        if revision.body is None:
            raise InputError("revision-removed", title=revision.title, number=revision.number)
        if revision.kind not in self._kinds:
            return revision.body
        return self._kinds[revision.kind].migrated(revision.body, revision.schema)

    def referred(self, reference: Reference) -> Revision:
        """Give the revision that a reference means: the first of its document with that body.

        Raises
        ------
        InputError
            If it is not in this notebook.
        """
        found = [each for each in self.history(reference.document) if each.hash == reference.hash]
        if not found:
            raise InputError("link-dead", name=str(reference)[:13], reference=str(reference))
        return found[0]

    def holding(self, kind: str, body: Body) -> Revision | None:
        """Give the newest revision of a kind that says just this; None if there is none."""
        with self._store.reading() as connection:
            return stored.revision_with(connection, kind, hash_of(body))

    def linking_to(self, document: str, *, kind: str | None = None) -> tuple[Revision, ...]:
        """Give the documents (of a kind) whose newest revision refers to a document, the newest first."""
        with self._store.reading() as connection:
            return stored.linking_to(connection, document, kind)

    def form(self, revision: Revision) -> int:
        """Tell the form in which `body` gives a revision: the newest of its kind."""
        return self._kinds.newest_form(revision.kind, revision.schema)

    def history(self, document: str) -> tuple[Revision, ...]:
        """Give all revisions of a document, the first first.

        Raises
        ------
        InputError
            If there is no such document.
        """
        with self._store.reading() as connection:
            found = stored.history_of(connection, document)
        if not found:
            raise InputError("document-unknown", name=document)
        return found

    def entries(self, *, kind: str | None = None, words: str = "", removed: bool = False) -> tuple[Entry, ...]:
        """List documents, the newest first: of a kind, with all of these words, or those that were removed."""
        with self._store.reading() as connection:
            return stored.entries(connection, kind=kind, words=words, removed=removed)

    def find(self, name: str) -> Revision:
        """Give the revision that a person means.

        Parameters
        ----------
        name : str
            A title, an id or its beginning; then, if not the newest is meant, `@` with a number or the beginning of
            a hash.

        Raises
        ------
        InputError
            If there is none, or it could be several.

        Examples
        --------
        >>> from tempfile import TemporaryDirectory
        >>> with TemporaryDirectory() as folder, open_notebook(folder) as notebook:
        ...     saved = notebook.save("note", {"title": "Salt"})
        ...     notebook.find("salt@1") == notebook.find(saved.document)
        True
        """
        with self._store.reading() as connection:
            found, which = stored.find_documents(connection, name), ""
            if not found and "@" in name:
                name, which = name.rsplit("@", 1)
                found = stored.find_documents(connection, name)
        if not found:
            raise InputError("document-unknown", name=name)
        if len(found) > 1:
            raise InputError(
                "document-ambiguous", name=name, count=len(found), ids=", ".join(each[:13] for each in found[:5])
            )
        if not which:
            return self.revision(found[0])
        if which.isdecimal() and len(which) < 9:
            return self.revision(found[0], int(which))
        matching = [each for each in self.history(found[0]) if each.hash.startswith(which.lower()) and each.hash]
        if not matching or len(which) < 4:
            raise InputError("revision-unknown", name=name, number=which)
        return matching[-1]

    def compare(self, before: Revision, after: Revision) -> tuple[Difference, ...]:
        """Tell how two revisions differ, of one document or of two, in their newest form.

        Raises
        ------
        InputError
            If they are of different kinds.
        """
        if before.kind != after.kind:
            raise InputError("compare-kinds", one=before.kind, other=after.kind)
        bodies = [{} if each.removed else self.body(each) for each in (before, after)]
        return differences(bodies[0], bodies[1], keyed_by=self._kinds[after.kind].keyed_by)

    # -- readings

    def begin_series(
        self, title: str, *, unit: str, instrument: str, method: str, about: Reference | None = None
    ) -> Series:
        """Begin a series of readings: one thing, one instrument, one unit, one method.

        Parameters
        ----------
        title : str
            What is measured.
        unit : str
            Unit of the values.
        instrument : str
            What it is measured with.
        method : str
            How.
        about : Reference, optional
            The document whose thing it is.

        Raises
        ------
        InputError
            If a name is empty or no single line.
        NotebookError
            If it can't be written.
        """
        said = {"title": title, "instrument": instrument, "method": method}
        for name, text in said.items():
            if not text.strip():
                raise InputError("series-unsaid", what=name)
        new = Series(
            id=new_id(), unit=plain_line(unit, LINE), made_by=self.who, at=self._moment(), about=about,
            **{name: plain_line(text, LINE) for name, text in said.items()},
        )  # fmt: skip
        with self._store.writing() as connection:
            return measured.add_series(connection, new)

    def append(
        self,
        series: str,
        values: ArrayLike,
        *,
        at: Sequence[datetime] | ArrayLike | None = None,
        remarks: Mapping[int, str] | None = None,
    ) -> Batch:
        """Add readings to a series; when this returns, all of them are on the disk.

        Parameters
        ----------
        series : str
            Id of the series.
        values : (n,) float
            What was read; not a number where a remark says why. [unit of the series]
        at : (n,) datetime, datetime64 or int, optional
            When; integers count microseconds since 1970 (UTC). Now if left out.
        remarks : mapping of int to str, optional
            Remarks by the position of their reading, from 0.

        Raises
        ------
        InputError
            If there are none, lengths differ, a value is infinite, or one is missing without a remark.
        NotebookError
            If they can't be written; then none is.
        """
        readings = _as_readings(values, at, dict(remarks or {}), self._moment())
        with self._store.writing() as connection:
            return measured.add_readings(connection, series, readings)

    def record(self, series: str) -> Recorder:
        """Take readings as they come, and commit them together every quarter of a second."""
        with self._store.reading() as connection:
            measured.series_number(connection, series)

        def write(waiting: list[Waiting]) -> None:
            moments, values, remarks = zip(*waiting, strict=True)
            said = {k: text for k, text in enumerate(remarks) if text}
            self.append(series, [np.nan if each is None else each for each in values], at=moments, remarks=said)

        return Recorder(write, clock=self._clock)

    def series(self, *, about: str | None = None) -> tuple[Series, ...]:
        """List series, the newest first; `about` names the document they must be about."""
        with self._store.reading() as connection:
            return measured.all_series(connection, about)

    def readings(
        self, series: str, *, start: datetime | None = None, end: datetime | None = None, most: int | None = None
    ) -> Readings:
        """Give readings of a series.

        Parameters
        ----------
        series : str
            Id of the series.
        start, end : datetime, optional
            Only from this moment on, and before that one.
        most : int, optional
            Give no more than this many, chosen so that no extreme is lost.
        """
        limits = [None if each is None else as_microseconds(each) for each in (start, end)]
        with self._store.reading() as connection:
            found = measured.readings_of(connection, series, start=limits[0], end=limits[1])
        return found if most is None else found.chosen(thinned(found.at, found.value, most))

    def _moment(self) -> int:
        return as_microseconds(self._clock())


def _as_readings(values: ArrayLike, at: object, remarks: dict[int, str], moment: int) -> Readings:
    read = np.array(values, dtype=np.float64).reshape(-1) + 0.0  # minus zero is zero: not every database keeps it
    if not len(read):
        raise InputError("readings-none")
    moments = np.full(len(read), moment, dtype=np.int64) if at is None else _as_moments(at)
    if len(moments) != len(read):
        raise InputError("readings-lengths", values=len(read), moments=len(moments))
    said = {k + 1: plain_line(text, NOTE) for k, text in remarks.items() if 0 <= k < len(read) and text}
    if np.isinf(read).any():
        raise InputError("readings-infinite", number=int(np.flatnonzero(np.isinf(read))[0]) + 1)
    unsaid = [k + 1 for k in np.flatnonzero(np.isnan(read)).tolist() if k + 1 not in said]
    if unsaid:
        raise InputError("readings-unsaid", number=unsaid[0])
    read[np.isnan(read)] = np.nan  # one bit pattern for all of them
    return Readings(number=np.arange(1, len(read) + 1, dtype=np.int64), at=moments, value=read, remarks=said)


def _as_moments(at: object) -> "np.typing.NDArray[np.int64]":
    if isinstance(at, list | tuple) and at and isinstance(at[0], datetime):
        return np.array([as_microseconds(each) for each in at], dtype=np.int64)
    given = np.asarray(at)
    if given.dtype.kind == "M":
        given = given.astype("datetime64[us]").astype(np.int64)
    return given.astype(np.int64).reshape(-1)
