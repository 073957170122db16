"""Reading the tables, and refusing what is unsound.

Each file `data/SUBJECT.toml` is the table SUBJECT, and `data/SUBJECT-PART.toml` adds to it; `sources.toml` is the
bibliography. A table is read entry by entry, when a lesson asks for it.
"""

import math
from collections.abc import Mapping
from functools import partial
from importlib.resources.abc import Traversable
from pathlib import Path
from types import MappingProxyType
from typing import Any

import numpy as np

from lumped.errors import HandbookError
from lumped.quantities import Provenance, Status, Value
from lumped.reference.handbook import Handbook
from lumped.reference.pieces import Piece, Shelf, cut
from lumped.reference.rows import Curve, Entry, Row, Source
from lumped.reference.units import known_units, to_si

__all__ = ["opened_handbook", "read_handbook"]

_STATUSES = {status.value: status for status in Status if status is not Status.MEASURED}
_ROW_KEYS = {"quantity", "value", "low", "high", "spread", "unit", "source", "page", "status", "note"}
_ORIGIN_KEYS = {"source", "page", "status", "note"}


def opened_handbook(folder: Traversable | Path) -> Handbook:
    """Open the tables in a folder: what lies there is seen, and read and checked when it is first asked for.

    Parameters
    ----------
    folder : path
        Where the TOML files lie, `sources.toml` among them.

    Raises
    ------
    HandbookError
        If a file is no text or a key is used twice; when asked for a row, if that is unsound.

    Examples
    --------
    >>> from importlib.resources import files
    >>> opened_handbook(files("lumped.reference") / "data").name("ingredients", "table-salt")
    'table salt'
    """
    files = {file.name: file for file in folder.iterdir() if file.name.endswith(".toml")}
    pieces = {name: cut(files[name]) for name in sorted(files, key=lambda name: name.removesuffix(".toml"))}
    sources = Shelf(_by_key(pieces.pop("sources.toml", []), "sources", {}), _source)
    entries: dict[str, dict[str, Piece]] = {}
    curves: dict[str, Piece] = {}
    about: dict[str, str] = {}
    for name, found in pieces.items():
        table = name.removesuffix(".toml").partition("-")[0]
        _by_key(found, "entries", entries.setdefault(table, {}))
        _by_key(found, "curves", curves)
        about[table] = "; ".join(filter(None, (about.get(table), str(found[0].read().get("about", "")))))
    return Handbook(
        tables=MappingProxyType(
            {table: Shelf(each, partial(_entry, sources=sources)) for table, each in entries.items()}
        ),
        about=MappingProxyType(about),
        curves=Shelf(curves, partial(_curve, sources=sources)),
        sources=sources,
    )


def read_handbook(folder: Traversable | Path) -> Handbook:
    """Read every table in a folder, whole.

    Parameters
    ----------
    folder : path
        Where the TOML files lie, `sources.toml` among them.

    Returns
    -------
    Handbook
        All tables, checked.

    Raises
    ------
    HandbookError
        If a file can't be read or a row is unsound; the sentence names file, entry and row.
    """
    book = opened_handbook(folder)
    for shelf in (book.sources, book.curves, *book.tables.values()):
        for key in shelf:
            shelf[key]
    return book


def _by_key(pieces: list[Piece], kind: str, found: dict[str, Piece]) -> dict[str, Piece]:
    """Add the pieces of a kind to those found before, each under its key."""
    for piece in pieces:
        if piece.kind == kind:
            key = piece.key
            _refuse(key in found, piece.file, key, "", "the key is used twice")
            found[key] = piece
    return found


def _source(piece: Piece) -> Source:
    paper, key = piece.read(), piece.key
    unknown = set(paper) - set(Source.__dataclass_fields__)
    _refuse(bool(unknown), piece.file, key, "", f"unknown field {', '.join(sorted(unknown))}")
    for needed in ("title", "short"):
        _refuse(not paper.get(needed), piece.file, key, "", f"no {needed}")
    return Source(**{name: str(text) for name, text in paper.items()})


def _entry(piece: Piece, sources: Mapping[str, Source]) -> Entry:
    paper, key = piece.read(), piece.key
    _refuse(not paper.get("name"), piece.file, key, "", "no name")
    rows: dict[str, Row] = {}
    for row in paper.get("rows", []):
        quantity = str(row.get("quantity", "?"))
        _refuse(quantity in rows, piece.file, key, quantity, "the quantity is given twice")
        rows[quantity] = _row(piece.file, key, row, sources)
    facts = {name: fact for name, fact in paper.items() if name not in ("key", "name", "rows")}
    return Entry(key=key, name=paper["name"], rows=MappingProxyType(rows), facts=MappingProxyType(facts))


def _row(file: str, entry: str, row: dict[str, Any], sources: Mapping[str, Source]) -> Row:
    quantity = str(row.get("quantity", "?"))

    def refuse(wrong: bool, why: str) -> None:
        _refuse(wrong, file, entry, quantity, why)

    unknown = set(row) - _ROW_KEYS
    refuse(bool(unknown), f"unknown field {', '.join(sorted(unknown))}")
    refuse("quantity" not in row, "no quantity")
    refuse("unit" not in row, "no unit; a plain number has the unit “”")
    refuse(not known_units(row["unit"]), f"the unit “{row['unit']}” is not on the list")
    refuse(("low" in row) != ("high" in row), "an interval needs both low and high")
    figures: list[Any] = [row.get("value"), row.get("low", row.get("value")), row.get("high", row.get("value"))]
    refuse(not all(_is_number(each) for each in figures), "value, low and high are numbers")
    mean, low, high = (float(each) for each in figures)
    refuse(not low <= mean <= high, f"low {low}, value {mean} and high {high} are not in order")
    provenance = _provenance(file, entry, quantity, row, sources)
    (si, unit), (si_low, _), (si_high, _) = (to_si(each, row["unit"]) for each in (mean, low, high))
    try:
        value = Value(
            mean=si, low=si_low, high=si_high, unit=unit, provenance=provenance, spread=row.get("spread", "normal")
        )
    except ValueError as problem:
        raise HandbookError("handbook-unsound", file=file, entry=entry, row=quantity, why=str(problem)) from None
    return Row(
        quantity=quantity, printed=mean, low=low, high=high, unit=row["unit"], page=row.get("page", ""),
        note=row.get("note", ""), value=value,
    )  # fmt: skip


def _provenance(file: str, entry: str, row: str, fields: dict[str, Any], sources: Mapping[str, Source]) -> Provenance:
    source, status = fields.get("source", ""), fields.get("status", "")
    _refuse(status not in _STATUSES, file, entry, row, f"the status “{status}” is none of {', '.join(_STATUSES)}")
    _refuse(bool(source) and source not in sources, file, entry, row, f"the source “{source}” is not in sources.toml")
    if status == Status.PUBLISHED.value:
        _refuse(not source, file, entry, row, "a published figure names its source")
        _refuse(not fields.get("page"), file, entry, row, "a published figure names table or page")
    if status == Status.COMPUTED.value:
        _refuse(not fields.get("note"), file, entry, row, "a computed figure says in its note from what")
    return Provenance(status=_STATUSES[status], sources=(source,) if source else (), note=str(fields.get("note", "")))


def _curve(piece: Piece, sources: Mapping[str, Source]) -> Curve:
    paper, file, key = piece.read(), piece.file, piece.key
    units, points = paper.get("units", {}), paper.get("rows", [])
    axes = tuple(paper.get("axes", ()))
    _refuse(not paper.get("name"), file, key, "", "no name")
    _refuse(not points, file, key, "", "a curve has rows")
    _refuse(not axes or not set(axes) <= set(units), file, key, "", "axes are among the columns that units lists")
    for column, unit in units.items():
        _refuse(not known_units(unit), file, key, column, f"the unit “{unit}” is not on the list")
    origins = []
    for number, point in enumerate(points, 1):
        where = f"row {number}"
        _refuse(set(point) - _ORIGIN_KEYS != set(units), file, key, where, f"the columns are {', '.join(units)}")
        _refuse(not all(_is_number(point[column]) for column in units), file, key, where, "each column is a number")
        origins.append(_provenance(file, key, where, point, sources))
    columns = {column: np.array([to_si(point[column], unit)[0] for point in points]) for column, unit in units.items()}
    for column in columns.values():
        column.flags.writeable = False
    weakest = max((origin.status for origin in origins), key=lambda status: status.rank)
    named = tuple(dict.fromkeys(source for origin in origins for source in origin.sources))
    return Curve(
        key=key, name=paper["name"], axes=axes, columns=MappingProxyType(columns),
        units=MappingProxyType({column: to_si(0, unit)[1] for column, unit in units.items()}),
        tolerances=MappingProxyType(dict(paper.get("tolerances", {}))),
        pages=tuple(str(point.get("page", "")) for point in points),
        provenance=Provenance(status=weakest, sources=named, note=str(paper.get("note", ""))),
    )  # fmt: skip


def _is_number(figure: object) -> bool:
    return isinstance(figure, int | float) and not isinstance(figure, bool) and math.isfinite(figure)


def _refuse(wrong: bool, file: str, entry: str, row: str, why: str) -> None:
    if wrong:
        raise HandbookError("handbook-unsound", file=file, entry=entry, row=row or "-", why=why)
