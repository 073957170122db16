"""Documents in the store: revisions are added and read, never changed."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import groupby
from typing import Any

from sqlalchemy import Connection, Row, func, select

from lumped.errors import InputError
from lumped.notebook.canonical import canonical_text, read_canonical
from lumped.notebook.records import Entry, Revision, sealed
from lumped.notebook.reference import Reference
from lumped.notebook.tables import documents, links, revisions, search
from lumped.notebook.words import words_of
from lumped.texts.folding import folded

__all__ = [
    "add_revision", "entries", "every_history", "find_documents", "history_of", "linking_to", "lock_document",
    "newest_of", "refuse_dead_links", "revision_of", "revision_with",
]  # fmt: skip


def add_revision(connection: Connection, revision: Revision) -> Revision:
    """Add a revision after the newest one of its document; a new document begins with it.

    Parameters
    ----------
    connection : Connection
        In a transaction that writes.
    revision : Revision
        What to save; its number and seal are given here.

    Returns
    -------
    Revision
        As it was saved.

    Raises
    ------
    InputError
        If the document is of another kind, or a link leads to nothing in this notebook.
    """
    newest = _lock_newest(connection, revision)
    number, before = (newest.number + 1, newest.seal) if newest else (1, "")
    refuse_dead_links(connection, revision.links)
    saved = sealed(replace(revision, number=number), before)
    body = None if saved.body is None else canonical_text(saved.body)
    connection.execute(revisions.insert().values(
        document=saved.document, number=saved.number, schema=saved.schema, title=saved.title, body=body,
        hash=saved.hash, made_by=saved.made_by, at=saved.at, note=saved.note, restored=saved.restored, seal=saved.seal,
    ))  # fmt: skip
    for name, target in saved.links.items():
        connection.execute(links.insert().values(
            document=saved.document, number=saved.number, name=name, to_document=target.document, to_hash=target.hash,
        ))  # fmt: skip
    connection.execute(search.delete().where(search.c.document == saved.document))
    connection.execute(search.insert().values(document=saved.document, words=words_of(saved.title, body)))
    return saved


def _lock_newest(connection: Connection, revision: Revision) -> Revision | None:
    """Give the newest revision, and keep other programs from adding one until this transaction ends."""
    found = lock_document(connection, revision.document)
    if found is None:
        connection.execute(documents.insert().values(id=revision.document, kind=revision.kind))
        return None
    if found != revision.kind:
        raise InputError("document-changes-kind", title=revision.title, kind=revision.kind, found=found)
    return newest_of(connection, revision.document)


def lock_document(connection: Connection, document: str) -> str | None:
    """Keep other programs from adding to a document until this transaction ends; give its kind, None if it is new."""
    kind: str | None = connection.execute(
        select(documents.c.kind).where(documents.c.id == document).with_for_update()
    ).scalar()
    return kind


def refuse_dead_links(connection: Connection, targets: Mapping[str, Reference]) -> None:
    """See that every link leads to a revision in this notebook.

    Raises
    ------
    InputError
        Naming the first that does not.
    """
    for name, target in targets.items():
        there = select(revisions.c.number).where(
            revisions.c.document == target.document, revisions.c.hash == target.hash
        )
        if not target.hash or connection.execute(there).first() is None:
            raise InputError("link-dead", name=name, reference=str(target))


def history_of(connection: Connection, document: str) -> tuple[Revision, ...]:
    """Give all revisions of a document, the first first; none if it is not here."""
    return _read(connection, document, ())


def newest_of(connection: Connection, document: str) -> Revision | None:
    """Give the newest revision of a document; None if it is not here."""
    newest = select(func.max(revisions.c.number)).where(revisions.c.document == document).scalar_subquery()
    found = _read(connection, document, (revisions.c.number == newest,))
    return found[0] if found else None


def revision_of(connection: Connection, document: str, number: int) -> Revision | None:
    """Give one revision of a document; None if there is no such one."""
    found = _read(connection, document, (revisions.c.number == number,))
    return found[0] if found else None


def revision_with(connection: Connection, kind: str, hash: str) -> Revision | None:
    """Give the newest revision of a kind whose body has a hash; None if there is none."""
    r = revisions.c
    found = connection.execute(
        select(r.document, r.number)
        .join(documents, documents.c.id == r.document)
        .where(r.hash == hash, documents.c.kind == kind)
        .order_by(r.at.desc(), r.number.desc())
    ).first()
    return revision_of(connection, found.document, found.number) if found else None


def linking_to(connection: Connection, document: str, kind: str | None) -> tuple[Revision, ...]:
    """Give the documents (of a kind) whose newest revision refers to a document, the newest first."""
    linked = connection.execute(select(links.c.document).where(links.c.to_document == document).distinct()).scalars()
    newest = [newest_of(connection, each) for each in linked]
    found = [
        each
        for each in newest
        if each is not None
        and kind in (None, each.kind)
        and any(target.document == document for target in each.links.values())
    ]
    return tuple(sorted(found, key=lambda each: (each.at, each.document), reverse=True))


def _read(connection: Connection, document: str, conditions: Sequence[Any]) -> tuple[Revision, ...]:
    wanted = (
        select(revisions, documents.c.kind)
        .join(documents, documents.c.id == revisions.c.document)
        .where(revisions.c.document == document, *conditions)
        .order_by(revisions.c.number)
    )
    rows = connection.execute(wanted).all()
    if not rows:
        return ()
    numbers = (links.c.number >= rows[0].number, links.c.number <= rows[-1].number)
    found = _links(connection, (links.c.document == document, *numbers))
    return tuple(_as_revision(row, found.get((document, row.number), {})) for row in rows)


def every_history(connection: Connection) -> Iterator[tuple[Revision, ...]]:
    """Give the revisions of each document, by id."""
    found = _links(connection, ())
    wanted = (
        select(revisions, documents.c.kind)
        .join(documents, documents.c.id == revisions.c.document)
        .order_by(revisions.c.document, revisions.c.number)
    )
    for _, rows in groupby(connection.execute(wanted), key=lambda row: row.document):
        yield tuple(_as_revision(row, found.get((row.document, row.number), {})) for row in rows)


def _links(connection: Connection, conditions: Sequence[Any]) -> dict[tuple[str, int], dict[str, Reference]]:
    """Give links by document and number of the revision that holds them."""
    found: dict[tuple[str, int], dict[str, Reference]] = {}
    for link in connection.execute(select(links).where(*conditions).order_by(links.c.name)):
        target = Reference(link.to_document, link.to_hash)
        found.setdefault((link.document, link.number), {})[link.name] = target
    return found


def _as_revision(row: Row[Any], its_links: dict[str, Reference]) -> Revision:
    return Revision(
        document=row.document, kind=row.kind, number=row.number, schema=row.schema, title=row.title,
        body=None if row.body is None else read_canonical(row.body), hash=row.hash, made_by=row.made_by, at=row.at,
        note=row.note, restored=row.restored, links=its_links, seal=row.seal,
    )  # fmt: skip


def entries(
    connection: Connection, *, kind: str | None = None, words: str = "", removed: bool = False
) -> tuple[Entry, ...]:
    """List documents by their newest revision, the newest first.

    Parameters
    ----------
    connection : Connection
        Open for reading.
    kind : str, optional
        Only this kind.
    words : str
        Only those that hold all of these words, wherever, in any case, with or without accents.
    removed : bool
        Those that were removed, instead of those that are there.
    """
    ends = (
        select(
            revisions.c.document, func.max(revisions.c.number).label("last"), func.min(revisions.c.at).label("begun")
        )
        .group_by(revisions.c.document)
        .subquery()
    )
    r = revisions.c
    wanted = (
        select(r.document, documents.c.kind, r.title, r.number, r.hash, r.made_by, r.at, ends.c.begun)
        .join(ends, (ends.c.document == r.document) & (ends.c.last == r.number))
        .join(documents, documents.c.id == r.document)
        .where((r.hash == "") if removed else (r.hash != ""))
        .order_by(r.at.desc(), r.document.desc())
    )
    if kind is not None:
        wanted = wanted.where(documents.c.kind == kind)
    if words.split():
        wanted = wanted.join(search, search.c.document == r.document)
        place_of = func.instr if connection.dialect.name == "sqlite" else func.strpos  # no pattern, so of any length
        for word in dict.fromkeys(words.encode(errors="replace").decode().split()):
            wanted = wanted.where(place_of(search.c.words, folded(word)) > 0)
    return tuple(Entry(**row._mapping) for row in connection.execute(wanted))


def find_documents(connection: Connection, name: str) -> tuple[str, ...]:
    """Give the ids of the documents that a person may mean: by id, by the beginning of one, or by title."""
    if connection.execute(select(documents.c.id).where(documents.c.id == name)).first():
        return (name,)
    listed = (*entries(connection), *entries(connection, removed=True))
    titled = [entry for entry in listed if folded(entry.title) == folded(name)]
    there = [entry for entry in titled if not entry.removed] or titled
    if there or len(name) < 4:
        return tuple(entry.document for entry in there)
    begins = documents.c.id.startswith(name.lower(), autoescape=True)
    return tuple(connection.execute(select(documents.c.id).where(begins)).scalars())
