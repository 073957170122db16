"""A whole notebook as plain files that a person can read: TOML and CSV, in a folder or in one zip archive.

notebook.toml
documents/recipe/slipway-dough-0a1b2c3d/history.toml, 0001.toml, 0002.toml …
readings/slipway-dough-at-noon-4e5f6a7b/series.toml, readings.csv, stretches.csv
"""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TypeVar

from lumped.errors import InputError
from lumped.notebook.files.archives import ArchiveSink, ArchiveSource
from lumped.notebook.files.document_files import read_documents, write_document
from lumped.notebook.files.folders import FolderSink, FolderSource
from lumped.notebook.files.forms import FORM, TopForm, fitted, refuse_other_form
from lumped.notebook.files.limits import MEMORY_LIMIT, Budget
from lumped.notebook.files.opening import is_folder, open_plain
from lumped.notebook.files.reading_files import read_all_series, write_series
from lumped.notebook.files.toml_text import read_toml, toml_of
from lumped.notebook.files.trees import Sink, Source
from lumped.notebook.lines import shown
from lumped.notebook.placing import whole_file, whole_folder
from lumped.notebook.proving import prove
from lumped.notebook.records import Contents
from lumped.texts import say

__all__ = ["read_files", "write_files"]

Whole = TypeVar("Whole")

TOP = "notebook.toml"
TOP_LIMIT = 20_000  # bytes


def write_files(contents: Contents, path: Path) -> None:
    """Write a notebook as plain files.

    Parameters
    ----------
    contents : Contents
        Everything in it.
    path : Path
        A folder that is not there yet or empty; or, if it ends in .zip, a file that is not there yet.

    Raises
    ------
    InputError
        If there is something already, or the disk refuses; then nothing is left.
    """
    if path.suffix.lower() == ".zip":
        with whole_file(path) as part, part.open("wb") as file, ArchiveSink(file) as archive:
            _write(contents, archive)
    else:
        with whole_folder(path) as part:
            _write(contents, FolderSink(part))


def read_files(path: Path, *, memory: int = MEMORY_LIMIT) -> Contents:
    """Read a notebook from plain files.

    Parameters
    ----------
    path : Path
        A folder, or a zip archive of one.
    memory : int
        Most memory that it may take. [bytes]

    Returns
    -------
    Contents
        Everything in it, proven.

    Raises
    ------
    InputError
        If it is no notebook, or not whole, or would do harm.
    """
    with _source(path, Budget(memory=memory)) as source:
        return _read(source, path.name)


@contextmanager
def _source(path: Path, budget: Budget) -> Iterator[Source]:
    if is_folder(path):
        yield FolderSource(path, budget)
    else:
        with open_plain(path) as file:
            yield ArchiveSource(file, budget)


def _write(contents: Contents, sink: Sink) -> None:
    head = {"kind": "notebook", "schema": FORM, "id": contents.id, "fingerprint": contents.fingerprint}
    sink.put(TOP, toml_of({**head, "about": say("plain-about")}) or b"")
    folders = set[str]()
    for history in contents.documents.values():
        write_document(history, sink, folders)
    for each in contents.series.values():
        write_series(*each, sink, folders)


def _read(source: Source, name: str) -> Contents:
    table = read_toml(source.whole(TOP, TOP_LIMIT), TOP)
    refuse_other_form(table, TOP)
    top = fitted(TopForm, table, TOP)
    used = {TOP}
    documents = _gathered(read_documents(source), used)
    series = _gathered(read_all_series(source), used)
    for stranger in sorted(source.names - used)[:1]:
        raise InputError("plain-stranger", file=shown(stranger, 120))
    contents = Contents(id=top.id, documents=documents, series=series)
    prove(contents)
    if contents.fingerprint != top.fingerprint:
        raise InputError("bundle-incomplete", file=shown(name))
    return contents


def _gathered(found: Iterator[tuple[str, Whole, set[str]]], used: set[str]) -> dict[str, Whole]:
    gathered: dict[str, Whole] = {}
    for id, each, files in found:
        if id in gathered:
            raise InputError("proof-id-twice", id=id)
        gathered[id] = each
        used |= files
    return gathered
