"""Series as plain files: a folder each, with `series.toml`, `readings.csv` and `stretches.csv`.

A spreadsheet takes a cell that begins with = + - @ for a formula. So a remark that begins so, or with an apostrophe,
or is empty, gets an apostrophe in front, which reading takes away again; a cell with nothing in it is no remark.
"""

import csv
import io
import re
from collections.abc import Callable, Iterator, Sequence
from itertools import islice
from math import isnan
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.errors import InputError
from lumped.notebook.files.forms import SEAL, SeriesForm, as_series, fitted, series_table
from lumped.notebook.files.limits import READING_BYTES, STRETCH_BYTES
from lumped.notebook.files.toml_text import SIZE_LIMIT, read_toml, toml_of
from lumped.notebook.files.trees import Sink, Source, folder_name
from lumped.notebook.lines import shown
from lumped.notebook.records import Readings, Series, Stretch
from lumped.texts import say

__all__ = ["as_cell", "read_all_series", "read_cell", "write_series"]

READINGS = ("number", "at", "value", "remark")
STRETCHES = ("first", "count", "seal")
ROWS = 20_000  # read and written at once
FORMULA = "=+-@\t\r\n＝＋－＠'"  # what spreadsheets take for the beginning of a formula; some also the wide forms

_MOMENT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{6}Z", re.ASCII)
_Whole = tuple[Series, Readings, tuple[Stretch, ...]]


def as_cell(text: str | None) -> str:
    """Write a remark so that no spreadsheet computes it.

    Examples
    --------
    >>> as_cell("=1+1"), as_cell("'"), as_cell(""), as_cell(None), as_cell("wet")
    ("'=1+1", "''", "'", '', 'wet')
    """
    if text is None:
        return ""
    return "'" + text if not text or text[0] in FORMULA else text


def read_cell(cell: str) -> str | None:
    """Read a remark: the other way round.

    Raises
    ------
    ValueError
        If the cell could be taken for a formula.

    Examples
    --------
    >>> [read_cell(as_cell(text)) for text in ("=1+1", "'", "", None, "wet")]
    ['=1+1', "'", '', None, 'wet']
    """
    if not cell:
        return None
    if cell[0] == "'":
        return cell[1:]
    if cell[0] in FORMULA:
        raise ValueError(say("plain-csv-formula"))
    return cell


def write_series(series: Series, readings: Readings, stretches: Sequence[Stretch], sink: Sink, taken: set[str]) -> None:
    """Write a series with all its readings.

    Parameters
    ----------
    series, readings, stretches : Series, Readings, sequence of Stretch
        What to write.
    sink : Sink
        Where to.
    taken : set of str
        Names of folders that are there; the new one is added.
    """
    if np.isinf(readings.value).any():
        raise InputError("proof-not-finite", where=f"series {series.id}")
    folder = f"readings/{folder_name(series.title, series.id, taken)}"
    sink.put(f"{folder}/series.toml", toml_of(series_table(series)) or b"")
    _write_table(sink, f"{folder}/readings.csv", READINGS, len(readings), lambda rows: _reading_rows(readings, rows))
    _write_table(
        sink, f"{folder}/stretches.csv", STRETCHES, len(stretches), lambda rows: _stretch_rows(stretches, rows)
    )


def _write_table(sink: Sink, name: str, columns: Sequence[str], length: int, rows: Any) -> None:
    with sink.file(name) as file:
        file.write((",".join(columns) + "\n").encode())
        for start in range(0, length, ROWS):
            text = io.StringIO(newline="")
            csv.writer(text, lineterminator="\n").writerows(rows(slice(start, start + ROWS)))
            file.write(text.getvalue().encode())


def _reading_rows(readings: Readings, rows: slice) -> Iterator[tuple[str, ...]]:
    numbers = readings.number[rows].tolist()
    at = np.datetime_as_string(readings.at[rows].astype("datetime64[us]"), unit="us").tolist()
    values = ["" if isnan(each) else repr(each) for each in readings.value[rows].tolist()]
    remarks = (as_cell(readings.remarks.get(number)) for number in numbers)
    return zip(map(str, numbers), (f"{each}Z" for each in at), values, remarks, strict=True)


def _stretch_rows(stretches: Sequence[Stretch], rows: slice) -> Iterator[tuple[str, ...]]:
    return ((str(each.first), str(each.count), each.seal) for each in stretches[rows])


def read_all_series(source: Source) -> Iterator[tuple[str, _Whole, set[str]]]:
    """Read all series: the id of each, the series with its readings, and the files that it took."""
    for name in sorted(source.names):
        if name.endswith("/series.toml"):
            folder = name.removesuffix("/series.toml")
            series = as_series(fitted(SeriesForm, read_toml(source.whole(name, SIZE_LIMIT), name), name))
            readings = _read_readings(source, f"{folder}/readings.csv")
            stretches = tuple(_read_stretches(source, f"{folder}/stretches.csv"))
            used = {name, f"{folder}/readings.csv", f"{folder}/stretches.csv"}
            yield series.id, (series, readings, stretches), used


def _read_readings(source: Source, name: str) -> Readings:
    columns: tuple[list[NDArray[Any]], ...] = ([np.empty(0, np.int64)], [np.empty(0, np.int64)], [np.empty(0)])
    remarks: dict[int, str] = {}
    for *parts, said in _tables(source, name, READINGS, _as_readings):
        source.budget.take(READING_BYTES * len(parts[0]))
        _refuse_gap(parts[0], sum(map(len, columns[0])), name)
        source.budget.hold(said)
        for column, part in zip(columns, parts, strict=True):
            column.append(part)
        remarks |= said
    number, at, value = map(_joined, columns)
    return Readings(number=number, at=at, value=value, remarks=remarks)


def _refuse_gap(numbers: NDArray[np.int64], before: int, name: str) -> None:
    wrong = np.flatnonzero(numbers != np.arange(before + 1, before + 1 + len(numbers)))
    if len(wrong):
        where = f"{shown(name, 120)}, reading {before + 1 + wrong[0]}"
        raise InputError("proof-gap", where=where, found=str(numbers[wrong[0]]))


def _joined(parts: list[NDArray[Any]]) -> NDArray[Any]:
    joined = np.concatenate(parts)
    parts.clear()  # the next column needs the room
    return joined


def _as_readings(numbers: Sequence[str], moments: Sequence[str], values: Sequence[str], cells: Sequence[str]) -> Any:
    number = _whole(numbers)
    said = {each: read_cell(cell) for each, cell in zip(number.tolist(), cells, strict=True) if cell}
    return number, _moments(moments), _floats(values), said


def _read_stretches(source: Source, name: str) -> Iterator[Stretch]:
    for stretches in _tables(source, name, STRETCHES, _as_stretches):
        source.budget.take(STRETCH_BYTES * len(stretches))
        yield from stretches


def _as_stretches(firsts: Sequence[str], counts: Sequence[str], seals: Sequence[str]) -> list[Stretch]:
    if not all(map(SEAL.fullmatch, seals)):
        raise ValueError(say("plain-csv-number"))
    rows = zip(_whole(firsts).tolist(), _whole(counts).tolist(), seals, strict=True)
    return [Stretch(first=first, count=count, seal=seal) for first, count, seal in rows]


def _tables(source: Source, name: str, columns: Sequence[str], read: Callable[..., Any]) -> Iterator[Any]:
    """Read a table some rows at a time; `read` is given their columns, and what it finds wrong gets its place."""
    reader = csv.reader(source.lines(name), strict=True)
    try:
        if next(reader, []) != list(columns):
            raise ValueError(say("plain-csv-columns", columns=", ".join(columns)))
        while rows := list(islice(reader, ROWS)):
            if set(map(len, rows)) != {len(columns)}:
                raise ValueError(say("plain-csv-columns", columns=", ".join(columns)))
            yield read(*zip(*rows, strict=True))
    except InputError:
        raise
    except (ValueError, csv.Error) as error:
        problem = say("plain-csv-quotes") if isinstance(error, csv.Error) else str(error)
        raise InputError("plain-csv", file=shown(name, 120), line=str(reader.line_num), problem=problem) from None


def _whole(cells: Sequence[str]) -> NDArray[np.int64]:
    joined = "".join(cells)
    if not (joined.isascii() and joined.isdecimal()) or not 1 <= min(map(len, cells)) <= max(map(len, cells)) <= 18:
        raise ValueError(say("plain-csv-number"))
    return np.array([*map(int, cells)], dtype=np.int64)


def _moments(cells: Sequence[str]) -> NDArray[np.int64]:
    if not all(map(_MOMENT.fullmatch, cells)):
        raise ValueError(say("plain-csv-number"))
    try:
        return np.array([cell[:-1] for cell in cells], dtype="datetime64[us]").astype(np.int64)
    except ValueError:  # a thirteenth month
        raise ValueError(say("plain-csv-number")) from None


def _floats(cells: Sequence[str]) -> NDArray[np.float64]:
    if max(map(len, cells)) > 30 or not set("".join(cells)) <= set("0123456789+-.e"):
        raise ValueError(say("plain-csv-number"))
    try:
        values = np.array([float(cell or "nan") for cell in cells])
    except ValueError:
        raise ValueError(say("plain-csv-number")) from None
    if np.isinf(values).any():
        raise ValueError(say("plain-csv-number"))
    return values
