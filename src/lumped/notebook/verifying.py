"""Is everything still there as it was written? Hashes, seals, numbers, references, and the file itself."""

import hashlib
from collections.abc import Iterable, Iterator
from dataclasses import asdict, dataclass
from itertools import pairwise
from typing import Any

from sqlalchemy import Connection, func, select

from lumped.errors import LumpedError, NotebookError
from lumped.notebook.canonical import canonical_text, read_canonical
from lumped.notebook.documents import history_of
from lumped.notebook.lines import shown
from lumped.notebook.records import Readings, Series, sealed, sealed_series, sealed_stretch
from lumped.notebook.series import all_series, readings_between, series_number, stretches_of
from lumped.notebook.store import Store
from lumped.notebook.tables import about, documents, links, readings, revisions, search, series
from lumped.notebook.words import words_of
from lumped.texts import say

__all__ = ["Soundness", "verify"]

CHUNK = 200_000  # readings looked at together
MOST = 50  # problems told


@dataclass(frozen=True, slots=True, kw_only=True)
class Soundness:
    """What `verify` found.

    Parameters
    ----------
    documents, revisions, series, readings : int
        How many there are.
    problems : tuple of str
        What is wrong, in sentences; the first fifty.
    """

    documents: int
    revisions: int
    series: int
    readings: int
    problems: tuple[str, ...]

    @property
    def sound(self) -> bool:
        """Whether nothing is wrong."""
        return not self.problems

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"kind": "soundness", "schema": 1, "sound": self.sound, **asdict(self), "problems": list(self.problems)}


def verify(store: Store) -> Soundness:
    """Look at everything in a store, as it is at one moment.

    Raises
    ------
    NotebookError
        If it can't be read at all.
    """
    problems: list[str] = []
    counts = dict.fromkeys(("documents", "revisions", "series", "readings"), 0)
    try:
        with store.reading() as connection:
            for problem in _problems(connection, counts):
                problems.append(problem)
                if len(problems) == MOST:
                    break
    except NotebookError as error:
        problems.append(str(error))
    return Soundness(**counts, problems=tuple(problems))


def _problems(connection: Connection, counts: dict[str, int]) -> Iterator[str]:
    if connection.dialect.name == "sqlite":
        yield from _of_the_file(connection)
    for table in (documents, revisions, series, readings):
        counts[table.name] = connection.execute(select(func.count()).select_from(table)).scalar_one()
    for document in connection.execute(select(documents.c.id).order_by(documents.c.id)).scalars().all():
        yield from _as_far_as_readable(_of_document(connection, document), document)
    yield from _of_links(connection)
    for each in all_series(connection):
        yield from _as_far_as_readable(_of_series(connection, each), each.id)
    if (own := connection.execute(select(func.count()).select_from(about)).scalar_one()) != 1:
        yield say("unsound-id", count=own)


def _as_far_as_readable(problems: Iterable[str], where: object) -> Iterator[str]:
    """Go on to the next thing where something is not even of the type that it should be."""
    try:
        yield from problems
    except (TypeError, ValueError, AttributeError, OverflowError) as error:
        yield say("unsound-unreadable", where=shown(where), problem=shown(error, 120))


def _of_the_file(connection: Connection) -> Iterator[str]:
    for (found,) in connection.exec_driver_sql("PRAGMA integrity_check(20)").all():
        if found != "ok":
            yield say("unsound-file", problem=str(found))
    for row in connection.exec_driver_sql("PRAGMA foreign_key_check").all():
        yield say("unsound-file", problem=f"{row[0]} → {row[2]}")


def _of_document(connection: Connection, document: str) -> Iterator[str]:
    """Look at the stored texts first: what can't be read can't be sealed anew."""
    wanted = select(revisions.c.number, revisions.c.body, revisions.c.hash).where(revisions.c.document == document)
    rows = connection.execute(wanted.order_by(revisions.c.number)).all()
    if [row.number for row in rows] != list(range(1, len(rows) + 1)) or not rows:
        yield say("unsound-numbers", document=document)
    unreadable = [row.number for row in rows if not _is_sound(row.body, row.hash)]
    for number in unreadable:
        yield say("unsound-hash", document=document, number=number)
    if unreadable:
        return
    history = history_of(connection, document)
    for before, revision in zip(("", *(each.seal for each in history)), history, strict=False):
        if sealed(revision, before).seal != revision.seal:
            yield say("unsound-seal", title=revision.title, number=revision.number, document=document)
    if history:
        told = connection.execute(select(search.c.words).where(search.c.document == document)).scalar()
        if told != words_of(history[-1].title, rows[-1].body):
            yield say("unsound-search", document=document)


def _is_sound(body: str | None, hash: str) -> bool:
    if body is None:
        return hash == ""
    if hashlib.sha256(body.encode()).hexdigest() != hash:
        return False
    try:
        return canonical_text(read_canonical(body)) == body
    except (ValueError, RecursionError, LumpedError):
        return False


def _of_links(connection: Connection) -> Iterator[str]:
    target = revisions.alias()
    for table, name in ((links, links.c.name), (series, series.c.title)):
        document, hash = (table.c.to_document, table.c.to_hash) if table is links else (
            table.c.about_document, table.c.about_hash
        )  # fmt: skip
        dead = (
            select(name, document, hash)
            .outerjoin(target, (target.c.document == document) & (target.c.hash == hash))
            .where(document.is_not(None), target.c.number.is_(None))
        )
        for word, to, what in connection.execute(dead).all():
            yield say("unsound-link", name=word, reference=f"{to}@{what}")


def _of_series(connection: Connection, its: Series) -> Iterator[str]:
    if sealed_series(its).seal != its.seal:
        yield say("unsound-series", title=its.title, id=its.id)
    yield from _of_readings(connection, its.id, its.title, its.seal)


def _of_readings(connection: Connection, id: str, title: str, seal: str) -> Iterator[str]:
    number, stretches = series_number(connection, id), stretches_of(connection, id)
    there = connection.execute(
        select(func.count(), func.max(readings.c.number)).where(readings.c.series == number)
    ).one()
    told = stretches[-1].first + stretches[-1].count - 1 if stretches else 0
    gaps = any(a.first + a.count != b.first for a, b in pairwise(stretches)) or (stretches and stretches[0].first != 1)
    if gaps:
        yield say("unsound-stretches", title=title, id=id)
        return
    if there[0] != told or (there[1] or 0) != told:
        yield say("unsound-count", title=title, id=id, there=there[0], told=told)
        return
    before, chunk = seal, Readings.none()
    for stretch in stretches:
        if not len(chunk) or stretch.first + stretch.count - 1 > chunk.number[-1]:
            chunk = readings_between(connection, id, stretch.first, stretch.first + max(stretch.count, CHUNK) - 1)
        start = int(stretch.first - chunk.number[0])
        if sealed_stretch(chunk.chosen(slice(start, start + stretch.count)), before).seal != stretch.seal:
            yield say(
                "unsound-stretch", title=title, id=id, first=stretch.first, last=stretch.first + stretch.count - 1
            )
        before = stretch.seal
