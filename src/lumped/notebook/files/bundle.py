"""A whole notebook as one JSON file.

One object: `kind`, `schema`, `id`, `fingerprint`, `documents` with their revisions and bodies, `series` with their
readings as columns. Moments of readings are whole microseconds (`at_us`); a value that is missing is null.
"""

import json
from collections.abc import Iterator, Mapping, Sequence
from functools import partial
from math import isnan
from pathlib import Path
from typing import Any

import numpy as np

from lumped.errors import InputError
from lumped.notebook.canonical import canonical_text
from lumped.notebook.files.forms import (
    FORM,
    BundleForm,
    SavedForm,
    SeriesForm,
    StretchForm,
    as_revision,
    as_series,
    fitted,
    refuse_other_form,
    revision_table,
    series_table,
)
from lumped.notebook.files.json_pieces import Pieces
from lumped.notebook.files.limits import MEMORY_LIMIT, Budget
from lumped.notebook.files.opening import bytes_of, is_folder
from lumped.notebook.files.plain_files import read_files, write_files
from lumped.notebook.lines import shown
from lumped.notebook.placing import whole_file
from lumped.notebook.proving import prove
from lumped.notebook.records import Contents, Readings, Revision, Series, Stretch
from lumped.notebook.reference import is_id

__all__ = ["bundle_schema", "read_bundle", "read_contents", "write_bundle", "write_contents"]

ROWS = 100_000  # numbers of a column written at once


def write_contents(contents: Contents, path: Path) -> None:
    """Write a notebook in the form that the name asks for: .json a bundle, .zip an archive, else a folder.

    Parameters
    ----------
    contents : Contents
        Everything in it.
    path : Path
        What is not there yet.

    Raises
    ------
    InputError
        If there is something already, or the disk refuses; then nothing is left.
    """
    (write_bundle if path.suffix.lower() == ".json" else write_files)(contents, path)


def read_contents(path: Path, *, memory: int = MEMORY_LIMIT) -> Contents:
    """Read a notebook that was written so, and prove it.

    Parameters
    ----------
    path : Path
        A bundle (.json), or else a folder of plain files or an archive of one.
    memory : int
        Most memory that it may take. [bytes]

    Raises
    ------
    InputError
        If it is none, or not whole, or would do harm.
    """
    is_bundle = path.suffix.lower() == ".json" and not is_folder(path)
    return read_bundle(path, memory=memory) if is_bundle else read_files(path, memory=memory)


def bundle_schema() -> dict[str, Any]:
    """Give the JSON Schema of a bundle (draft 2020-12).

    Examples
    --------
    >>> bundle_schema()["required"]
    ['kind', 'schema', 'id', 'fingerprint', 'documents', 'series']
    """
    schema = BundleForm.model_json_schema(by_alias=True)
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema}


def write_bundle(contents: Contents, path: Path) -> None:
    """Write a notebook to one JSON file.

    Parameters
    ----------
    contents : Contents
        Everything in it.
    path : Path
        A file that is not there yet.

    Raises
    ------
    InputError
        If there is something already, or the disk refuses; then no file is left.
    """
    with whole_file(path) as part, part.open("wb") as file:
        for text in _text_of(contents):
            file.write(text.encode())


def read_bundle(path: Path, *, memory: int = MEMORY_LIMIT) -> Contents:
    """Read a notebook from a JSON file.

    Parameters
    ----------
    path : Path
        The file.
    memory : int
        Most memory that it may take. [bytes]

    Returns
    -------
    Contents
        Everything in it, proven.

    Raises
    ------
    InputError
        If it is no bundle, or not whole, or would do harm.
    """
    budget = Budget(memory=memory)
    text = bytes_of(path, budget)
    _refuse_other_bundle(Pieces(text, Budget(memory=memory)), path.name)
    pieces = Pieces(text, budget)
    contents, fingerprint = _read(pieces)
    pieces.end()
    prove(contents)
    if contents.fingerprint != fingerprint:
        raise InputError("bundle-incomplete", file=shown(path.name))
    return contents


def _refuse_other_bundle(pieces: Pieces, name: str) -> None:
    """Look at kind and schema first: a newer form may have keys that are unknown here."""
    head: dict[str, Any] = {}
    for key in pieces.members():
        if key in ("kind", "schema"):
            head[key] = pieces.value(key)
        else:
            pieces.skip()
        if len(head) == 2:
            break
    refuse_other_form(head, name)


def _read(pieces: Pieces) -> tuple[Contents, str]:
    table: dict[str, Any] = {"documents": {}, "series": {}}
    for key in pieces.members():
        if key == "documents":
            table[key] = dict(_once(_documents(pieces)))
        elif key == "series":
            table[key] = dict(_once(_all_series(pieces)))
        else:
            table[key] = pieces.value(key)
    head = fitted(BundleForm, {**table, "documents": [], "series": []}, "bundle")
    return Contents(id=head.id, documents=table["documents"], series=table["series"]), head.fingerprint


def _once(pairs: Iterator[tuple[str, Any]]) -> Iterator[tuple[str, Any]]:
    seen: set[str] = set()
    for id, each in pairs:
        if id in seen:
            raise InputError("proof-id-twice", id=id)
        seen.add(id)
        yield id, each


def _documents(pieces: Pieces) -> Iterator[tuple[str, tuple[Revision, ...]]]:
    for place in pieces.items():
        where, table = f"documents no. {place + 1}", dict[str, Any]()
        for key in pieces.members():
            if key == "revisions":
                table[key] = [_saved(pieces, f"{where}, revision {k + 1}") for k in pieces.items()]
            else:
                table[key] = pieces.value(where)
        id, kind, revisions = (table.pop(key, None) for key in ("id", "kind", "revisions"))
        if not is_id(id) or not isinstance(kind, str) or revisions is None or table:
            raise InputError("bundle-table", where=where, keys="id, kind, revisions")
        yield id, tuple(as_revision(each, document=id, kind=kind, body=each.body) for each in revisions)


def _saved(pieces: Pieces, where: str) -> SavedForm:
    return fitted(SavedForm, pieces.value(where), where)


def _all_series(pieces: Pieces) -> Iterator[tuple[str, tuple[Series, Readings, tuple[Stretch, ...]]]]:
    for place in pieces.items():
        where, table = f"series no. {place + 1}", dict[str, Any]()
        for key in pieces.members():
            if key == "readings":
                table[key] = _readings(pieces, where)
            elif key == "stretches":
                table[key] = tuple(_stretches(pieces, where))
            else:
                table[key] = pieces.value(where)
        readings, stretches = table.pop("readings", None), table.pop("stretches", None)
        if readings is None or stretches is None:
            raise InputError("bundle-table", where=where, keys="readings, stretches")
        series = as_series(fitted(SeriesForm, table, where))
        yield series.id, (series, readings, stretches)


def _readings(pieces: Pieces, where: str) -> Readings:
    table: dict[str, Any] = {"remarks": {}}
    for key in pieces.members():
        if key in ("at_us", "value"):
            table[key] = pieces.numbers(key, whole=key == "at_us")
        elif key == "remarks":
            table[key] = pieces.value(where)
        else:
            pieces.skip()
            table[shown(key)] = None
    if set(table) != {"at_us", "value", "remarks"} or len(table["at_us"]) != len(table["value"]):
        raise InputError("bundle-table", where=where, keys="at_us, value, remarks")
    numbers = np.arange(1, len(table["at_us"]) + 1, dtype=np.int64)
    remarks = _remarks(table["remarks"], where)
    return Readings(number=numbers, at=table["at_us"], value=table["value"], remarks=remarks)


def _remarks(table: Any, where: str) -> Mapping[int, str]:
    if not isinstance(table, dict):
        raise InputError("bundle-table", where=where, keys="at_us, value, remarks")
    for key, text in table.items():
        if not (len(key) <= 15 and key.isascii() and key.isdecimal() and key[0] != "0" and isinstance(text, str)):
            raise InputError("bundle-remark", where=where, key=shown(key))
    return {int(key): text for key, text in table.items()}


def _stretches(pieces: Pieces, where: str) -> Iterator[Stretch]:
    for tables in pieces.chunks(where):
        for form in map(partial(fitted, StretchForm, where=where), tables):
            yield Stretch(first=form.first, count=form.count, seal=form.seal)


def _text_of(contents: Contents) -> Iterator[str]:
    """Write by hand what is large, line by line, so that it need not fit into memory twice."""
    head = {"kind": "notebook", "schema": FORM, "id": contents.id, "fingerprint": contents.fingerprint}
    yield _json(head)[:-1] + ',"documents":['
    for place, (id, revisions) in enumerate(contents.documents.items()):
        head = {"id": id, "kind": revisions[0].kind}
        yield ("," if place else "") + "\n" + _json(head)[:-1] + ',"revisions":['
        for each in revisions:
            body = "null" if each.body is None else canonical_text(each.body)
            yield ("," if each.number > 1 else "") + "\n" + _json(revision_table(each))[:-1] + f',"body":{body}}}'
        yield "]}"
    yield '],\n"series":['
    for place, (series, readings, stretches) in enumerate(contents.series.values()):
        yield ("," if place else "") + "\n"
        yield from _series_text(series, readings, stretches)
    yield "]}\n"


def _series_text(series: Series, readings: Readings, stretches: Sequence[Stretch]) -> Iterator[str]:
    if np.isinf(readings.value).any():
        raise InputError("proof-not-finite", where=f"series {series.id}")
    yield _json(series_table(series))[:-1] + ',"readings":{"at_us":['
    yield from _rows(readings.at.tolist())
    yield '],\n"value":['
    yield from _rows([None if isnan(each) else each for each in readings.value.tolist()])
    yield '],\n"remarks":' + _json({str(number): text for number, text in sorted(readings.remarks.items())})
    yield '},\n"stretches":['
    yield from _rows([{"first": each.first, "count": each.count, "seal": each.seal} for each in stretches])
    yield "]}"


def _rows(values: Sequence[Any]) -> Iterator[str]:
    for start in range(0, len(values), ROWS):
        yield ("," if start else "") + "\n" + _json(values[start : start + ROWS])[1:-1]


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, allow_nan=False, separators=(",", ":"))
