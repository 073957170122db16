"""Series in the store, and the readings in them: added in stretches, never changed."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from sqlalchemy import ColumnElement, Connection, Row, func, select

from lumped.errors import InputError
from lumped.notebook.documents import refuse_dead_links
from lumped.notebook.records import Readings, Series, Stretch, sealed_series, sealed_stretch
from lumped.notebook.reference import Reference
from lumped.notebook.tables import readings, series, stretches

__all__ = [
    "add_readings",
    "add_series",
    "all_series",
    "end_of",
    "insert_series",
    "readings_between",
    "readings_of",
    "series_number",
    "stretches_of",
    "write_readings",
    "written_since",
]  # fmt: skip


def add_series(connection: Connection, new: Series) -> Series:
    """Begin a series; give it with its seal.

    Raises
    ------
    InputError
        If it is about a document that is not in this notebook.
    """
    if new.about is not None:
        refuse_dead_links(connection, {"about": new.about})
    saved = sealed_series(new)
    insert_series(connection, saved)
    return saved


def insert_series(connection: Connection, saved: Series) -> None:
    """Write a sealed series as it is."""
    connection.execute(series.insert().values(
        id=saved.id, title=saved.title, unit=saved.unit, instrument=saved.instrument, method=saved.method,
        made_by=saved.made_by, at=saved.at, about_document=saved.about and saved.about.document,
        about_hash=saved.about and saved.about.hash, seal=saved.seal,
    ))  # fmt: skip


def add_readings(connection: Connection, to: str, new: Readings) -> Stretch:
    """Add readings at the end of a series, as one stretch.

    Parameters
    ----------
    connection : Connection
        In a transaction that writes.
    to : str
        Id of the series.
    new : Readings
        At least one; their numbers are given here, the remarks count from 1.

    Returns
    -------
    Stretch
        What was added.
    """
    number = series_number(connection, to, lock=True)
    newest = _newest_stretch(connection, number)
    if newest is None:
        first = 1
        before = connection.execute(select(series.c.seal).where(series.c.number == number)).scalar_one()
    else:
        first, before = newest.first + newest.size, newest.seal
    numbered = Readings(
        number=np.arange(first, first + len(new), dtype=np.int64), at=new.at, value=new.value,
        remarks={first - 1 + k: text for k, text in new.remarks.items()},
    )  # fmt: skip
    stretch = sealed_stretch(numbered, before)
    write_readings(connection, number, numbered)
    connection.execute(
        stretches.insert().values(series=number, first=stretch.first, size=stretch.count, seal=stretch.seal)
    )
    return stretch


def _newest_stretch(connection: Connection, number: int) -> Row[Any] | None:
    return connection.execute(
        select(stretches).where(stretches.c.series == number).order_by(stretches.c.first.desc()).limit(1)
    ).first()


def end_of(connection: Connection, id: str) -> int:
    """Give the number that the next reading of a series will have."""
    newest = _newest_stretch(connection, series_number(connection, id))
    return newest.first + newest.size if newest else 1


def written_since(connection: Connection, to: str, new: Readings, since: int) -> Stretch | None:
    """Give the stretch that holds just these readings, if it is there; an attempt may have failed at its very end.

    Parameters
    ----------
    connection : Connection
        In a transaction that writes.
    to : str
        Id of the series.
    new : Readings
        As for `add_readings`.
    since : int
        Number from which on they must be.
    """
    series_number(connection, to, lock=True)  # waits for the end of an attempt that a server still works on
    for stretch in stretches_of(connection, to, since=since):
        there = readings_between(connection, to, stretch.first, stretch.first + stretch.count - 1)
        remarks = {stretch.first - 1 + k: text for k, text in new.remarks.items()}
        same = np.array_equal(there.at, new.at) and np.array_equal(there.value, new.value, equal_nan=True)
        if same and dict(there.remarks) == remarks:
            return stretch
    return None


def write_readings(connection: Connection, number: int, new: Readings) -> None:
    """Write readings as they are, in the fastest way that each database has."""
    values: list[float | None] = list(new.value.tolist())
    for k in np.flatnonzero(np.isnan(new.value)).tolist():
        values[k] = None
    numbers, remarks = new.number.tolist(), new.remarks
    rows = zip([number] * len(new), numbers, new.at.tolist(), values, map(remarks.get, numbers), strict=True)
    if connection.dialect.name == "sqlite":
        connection.exec_driver_sql(f"INSERT INTO readings ({_COLUMNS}) VALUES (?, ?, ?, ?, ?)", [*rows])
        return
    cursor: Any = connection.connection.cursor()
    with cursor.copy(f"COPY readings ({_COLUMNS}) FROM STDIN") as copy:
        for row in rows:
            copy.write_row(row)


_COLUMNS = "series, number, at, value, remark"


def series_number(connection: Connection, id: str, *, lock: bool = False) -> int:
    """Give the number by which readings name their series.

    Raises
    ------
    InputError
        If there is no such series.
    """
    wanted = select(series.c.number).where(series.c.id == id)
    found: int | None = connection.execute(wanted.with_for_update() if lock else wanted).scalar()
    if found is None:
        raise InputError("series-unknown", series=id)
    return found


def all_series(connection: Connection, about: str | None = None) -> tuple[Series, ...]:
    """Give the series, the newest first; `about` is the document they must be about."""
    wanted = select(series).order_by(series.c.at.desc(), series.c.id.desc())
    if about is not None:
        wanted = wanted.where(series.c.about_document == about)
    return tuple(map(_as_series, connection.execute(wanted)))


def _as_series(row: Row[Any]) -> Series:
    about = Reference(row.about_document, row.about_hash) if row.about_document else None
    return Series(
        id=row.id, title=row.title, unit=row.unit, instrument=row.instrument, method=row.method,
        made_by=row.made_by, at=row.at, about=about, seal=row.seal,
    )  # fmt: skip


def readings_of(connection: Connection, id: str, *, start: int | None = None, end: int | None = None) -> Readings:
    """Give the readings of a series in the order in which they were written down.

    Parameters
    ----------
    connection : Connection
        Open for reading.
    id : str
        The series.
    start, end : int, optional
        Only from this moment on, and before that one. [µs since 1970, UTC]
    """
    number = series_number(connection, id)
    within = [readings.c.series == number]
    if start is not None:
        within.append(readings.c.at >= start)
    if end is not None:
        within.append(readings.c.at < end)
    return _selected(connection, within)


def _selected(connection: Connection, within: Sequence[ColumnElement[bool]]) -> Readings:
    """Read columns straight from the driver: a million rows in a second."""
    r = readings.c
    wanted = select(r.number, r.at, func.coalesce(r.value, 0.0)).where(*within).order_by(r.number)
    cursor: Any = connection.execute(wanted).cursor
    table = np.fromiter(cursor, dtype=[("number", np.int64), ("at", np.int64), ("value", np.float64)])
    remarked = connection.execute(select(r.number, r.remark, r.value).where(*within, r.remark.is_not(None))).all()
    value = table["value"].copy()
    value[np.searchsorted(table["number"], [row.number for row in remarked if row.value is None])] = np.nan
    return Readings(
        number=table["number"].copy(), at=table["at"].copy(), value=value,
        remarks={row.number: row.remark for row in remarked},
    )  # fmt: skip


def readings_between(connection: Connection, id: str, first: int, last: int) -> Readings:
    """Give the readings of a series from one number to another, both included."""
    number = series_number(connection, id)
    return _selected(connection, [readings.c.series == number, readings.c.number >= first, readings.c.number <= last])


def stretches_of(connection: Connection, id: str, *, since: int = 1) -> tuple[Stretch, ...]:
    """Give the stretches of a series in order; `since` is the least number of a first reading."""
    within = (stretches.c.series == series_number(connection, id), stretches.c.first >= since)
    wanted = select(stretches).where(*within).order_by(stretches.c.first)
    return tuple(Stretch(first=row.first, count=row.size, seal=row.seal) for row in connection.execute(wanted))
