"""Documents as plain files: a folder each, with its history and one file for each revision.

`history.toml` tells who saved what and when, with the seals; `0001.toml` is the body as a person would write it, with
its kind and schema at the top. A body that has keys of these names, or would make an entangled TOML, is `0001.json`.
"""

from collections.abc import Iterator, Sequence
from typing import Any

from lumped.errors import InputError
from lumped.notebook.canonical import Body, canonical_text
from lumped.notebook.files.forms import HistoryForm, RevisionForm, as_revision, fitted, revision_table
from lumped.notebook.files.json_pieces import json_value
from lumped.notebook.files.limits import PIECE_LIMIT, refuse_heavy
from lumped.notebook.files.toml_text import SIZE_LIMIT, read_toml, toml_of
from lumped.notebook.files.trees import Sink, Source, folder_name, slug_of
from lumped.notebook.lines import shown
from lumped.notebook.records import Revision

__all__ = ["read_documents", "write_document"]

TOGETHER = 100  # revisions of a history that are read at once
BEGINNING = "[[revisions]]"


def write_document(history: Sequence[Revision], sink: Sink, taken: set[str]) -> None:
    """Write a document with all its revisions.

    Parameters
    ----------
    history : sequence of Revision
        The first first.
    sink : Sink
        Where to.
    taken : set of str
        Names of folders that are there; the new one is added.
    """
    newest = history[-1]
    folder = f"documents/{slug_of(newest.kind)}/{folder_name(newest.title, newest.document, taken)}"
    with sink.file(f"{folder}/history.toml") as file:
        file.write(_toml({"document": newest.document, "kind": newest.kind}))
        for each in history:
            table = revision_table(each)
            links = {"revisions": {"links": table.pop("links")}} if "links" in table else {}
            file.write(f"\n{BEGINNING}\n".encode() + _toml(table) + (b"\n" + _toml(links) if links else b""))
    for each in history:
        if each.body is not None:
            _write_body(each, each.body, f"{folder}/{each.number:04d}", sink)


def _write_body(revision: Revision, body: Body, name: str, sink: Sink) -> None:
    text = None
    if not {"kind", "schema"} & set(body):
        text = toml_of({"kind": revision.kind, "schema": revision.schema, **body})
    if text is None:
        sink.put(f"{name}.json", canonical_text(body).encode())
    else:
        sink.put(f"{name}.toml", text)


def _toml(table: dict[str, Any]) -> bytes:
    text = toml_of(table)
    if text is None:
        raise InputError("plain-toml-heavy", file="history.toml")
    return text


def read_documents(source: Source) -> Iterator[tuple[str, tuple[Revision, ...], set[str]]]:
    """Read all documents: the id of each, its revisions, and the files that it took."""
    for name in sorted(source.names):
        if name.endswith("/history.toml"):
            yield _read_document(source, name.removesuffix("/history.toml"))


def _read_document(source: Source, folder: str) -> tuple[str, tuple[Revision, ...], set[str]]:
    name = f"{folder}/history.toml"
    blocks = _blocks(source, name)
    head = fitted(HistoryForm, read_toml(next(blocks), name), name)
    revisions, used = list[Revision](), {name}
    for form in _forms(blocks, name):
        body = None
        if form.hash:
            file, body = _read_body(source, f"{folder}/{form.number:04d}", head.kind, form.form)
            used.add(file)
        source.budget.hold([form.title, form.note, form.made_by, form.hash, form.seal, form.links, body])
        revisions.append(as_revision(form, document=head.document, kind=head.kind, body=body))
    return head.document, tuple(revisions), used


def _blocks(source: Source, name: str) -> Iterator[bytes]:
    """Cut a history into its head and some revisions at a time: it may be long."""
    block, size, count = list[str](), 0, 0
    for line in source.lines(name):
        if line.rstrip("\r\n") == BEGINNING:
            if count % TOGETHER == 0 or size > SIZE_LIMIT // 8:
                yield "".join(block).encode()
                block, size = [], 0
            count += 1
        block.append(line)
        size += len(line)
        if size > SIZE_LIMIT:
            raise InputError("plain-toml-heavy", file=shown(name, 120))
    yield "".join(block).encode()


def _forms(blocks: Iterator[bytes], name: str) -> Iterator[RevisionForm]:
    for block in blocks:
        found = read_toml(block, name)
        if list(found) != ["revisions"] or not isinstance(found["revisions"], list):
            raise InputError("bundle-table", where=shown(name, 120), keys="document, kind, [[revisions]]")
        for each in found["revisions"]:
            yield fitted(RevisionForm, each, name)


def _read_body(source: Source, stem: str, kind: str, schema: int) -> tuple[str, dict[str, Any]]:
    """Read a body, from whichever of its two forms is there."""
    if f"{stem}.json" in source.names:
        name = f"{stem}.json"
        text = source.whole(name, PIECE_LIMIT)
        refuse_heavy(text, name)
        body = json_value(text)
        if not isinstance(body, dict):
            raise InputError("bundle-table", where=shown(name, 120), keys="{ … }")
        return name, body
    name = f"{stem}.toml"
    table = read_toml(source.whole(name, SIZE_LIMIT), name)
    found = (table.pop("kind", None), table.pop("schema", None))
    if found != (kind, schema) or isinstance(found[1], bool | float):
        raise InputError("plain-body-marks", file=shown(name, 120), kind=shown(kind), schema=str(schema))
    return name, table
