"""All of a notebook at once: read out at one moment, and taken into another, where what is there already stays.

A document or a series that both have must have gone on from the same beginning: the seals tell. Where both went on
differently, nothing is taken in, for a history has no branches.
"""

from collections.abc import Sequence
from dataclasses import asdict, dataclass
from typing import Any

from sqlalchemy import Connection, select

from lumped.errors import InputError
from lumped.notebook.canonical import canonical_text
from lumped.notebook.documents import every_history, history_of
from lumped.notebook.records import Contents, Readings, Revision, Series, Stretch
from lumped.notebook.series import all_series, insert_series, readings_of, series_number, stretches_of, write_readings
from lumped.notebook.tables import about, documents, links, revisions, search, stretches
from lumped.notebook.words import words_of

__all__ = ["Taken", "contents_of", "take_in"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Taken:
    """What was taken in.

    Parameters
    ----------
    documents, revisions, series, readings : int
        How many are new here.
    already : int
        How many revisions were here before.
    """

    documents: int = 0
    revisions: int = 0
    series: int = 0
    readings: int = 0
    already: int = 0

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"kind": "taken", "schema": 1, **asdict(self)}

    def __add__(self, other: "Taken") -> "Taken":
        mine, its = asdict(self), asdict(other)
        return Taken(**{name: mine[name] + its[name] for name in mine})


def contents_of(connection: Connection) -> Contents:
    """Read everything out, as it is at one moment."""
    return Contents(
        id=connection.execute(select(about.c.id)).scalar_one(),
        documents={revisions[0].document: revisions for revisions in every_history(connection)},
        series={
            each.id: (each, readings_of(connection, each.id), stretches_of(connection, each.id))
            for each in sorted(all_series(connection), key=lambda each: each.id)
        },
    )


def take_in(connection: Connection, contents: Contents) -> Taken:
    """Add everything that is not here yet.

    Parameters
    ----------
    connection : Connection
        In a transaction that writes.
    contents : Contents
        Proven: its hashes, seals, numbers and references hold.

    Raises
    ------
    InputError
        If a document or a series has gone on differently here.
    """
    fresh = {key: _beyond(connection, history) for key, history in contents.documents.items()}
    known = set(connection.execute(select(documents.c.id)).scalars())
    new = [{"id": key, "kind": history[0].kind} for key, history in contents.documents.items() if key not in known]
    if new:
        connection.execute(documents.insert(), new)
    added = [revision for revisions in fresh.values() for revision in revisions]
    _add_revisions(connection, added)
    taken = Taken(
        documents=len(new), revisions=len(added),
        already=sum(map(len, contents.documents.values())) - len(added),
    )  # fmt: skip
    here = {each.id: each.seal for each in all_series(connection)}
    for series, readings, its_stretches in contents.series.values():
        taken += _take_series(connection, series, readings, its_stretches, seal=here.get(series.id))
    return taken


def _beyond(connection: Connection, theirs: Sequence[Revision]) -> Sequence[Revision]:
    """Give the revisions that follow those that are here."""
    ours = history_of(connection, theirs[0].document)
    for mine, its in zip(ours, theirs, strict=False):
        if mine.seal != its.seal:
            raise InputError("take-in-apart", title=its.title, number=its.number)
    return theirs[len(ours) :]


def _add_revisions(connection: Connection, added: Sequence[Revision]) -> None:
    if not added:
        return
    bodies = [None if each.body is None else canonical_text(each.body) for each in added]
    connection.execute(revisions.insert(), [
        {
            "document": each.document, "number": each.number, "schema": each.schema, "title": each.title, "body": body,
            "hash": each.hash, "made_by": each.made_by, "at": each.at, "note": each.note, "restored": each.restored,
            "seal": each.seal,
        }
        for each, body in zip(added, bodies, strict=True)
    ])  # fmt: skip
    targets = [
        {
            "document": each.document, "number": each.number, "name": name, "to_document": target.document,
            "to_hash": target.hash,
        }
        for each in added for name, target in each.links.items()
    ]  # fmt: skip
    if targets:
        connection.execute(links.insert(), targets)
    newest = {each.document: words_of(each.title, body) for each, body in zip(added, bodies, strict=True)}
    for document in newest:
        connection.execute(search.delete().where(search.c.document == document))
    connection.execute(search.insert(), [{"document": key, "words": words} for key, words in newest.items()])


def _take_series(
    connection: Connection, series: Series, readings: Readings, theirs: Sequence[Stretch], *, seal: str | None
) -> Taken:
    """Add what follows the readings that are here; `seal` is that of the series here, if it is."""
    if seal is None:
        insert_series(connection, series)
    number, ours = series_number(connection, series.id, lock=True), stretches_of(connection, series.id)
    if seal not in (None, series.seal) or any(a.seal != b.seal for a, b in zip(ours, theirs, strict=False)):
        raise InputError("take-in-apart-series", title=series.title)
    added = theirs[len(ours) :]
    if added:
        fresh = readings.chosen(slice(added[0].first - 1, None))
        write_readings(connection, number, fresh)
        connection.execute(
            stretches.insert(),
            [{"series": number, "first": each.first, "size": each.count, "seal": each.seal} for each in added],
        )
    return Taken(series=int(seal is None), readings=sum(each.count for each in added))
