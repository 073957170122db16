"""The readings of a notebook: series, added to and never changed."""

from collections.abc import Mapping, Sequence
from datetime import datetime

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.errors import InputError
from lumped.notebook import series as measured
from lumped.notebook.identity import new_id
from lumped.notebook.keeper import Keeper
from lumped.notebook.lines import NOTE_LIMIT, UNIT_LIMIT, plain_line, shown
from lumped.notebook.moments import FIRST_MOMENT, LAST_MOMENT, as_microseconds
from lumped.notebook.recording import Recorder, Waiting
from lumped.notebook.records import Readings, Series, Stretch
from lumped.notebook.reference import Reference
from lumped.notebook.thinning import thinned

__all__ = ["Log"]


class Log(Keeper):
    """Series of readings; a `Notebook` is one."""

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
            id=new_id(), unit=self._line(unit, UNIT_LIMIT), made_by=self.who, at=self._moment(), about=about,
            **{name: self._line(text) for name, text in said.items()},
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
    ) -> Stretch:
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
            If there are none, lengths differ, a value is infinite, one is missing without a remark, or there is no
            such series.
        NotebookError
            If they can't be written; then none is.
        """
        readings = _as_readings(values, at, dict(remarks or {}), self._moment())
        with self._store.writing() as connection:
            return measured.add_readings(connection, series, readings)

    def record(self, series: str) -> Recorder:
        """Take readings as they come, and commit them together every quarter of a second.

        Raises
        ------
        InputError
            If there is no such series.
        """
        with self._store.reading() as connection:
            done = measured.end_of(connection, series)

        def write(waiting: list[Waiting], again: bool) -> None:
            nonlocal done
            moments, values, remarks = zip(*waiting, strict=True)
            said = {k: text for k, text in enumerate(remarks) if text}
            new = _as_readings([np.nan if each is None else each for each in values], moments, said, 0)
            with self._store.writing() as connection:
                stretch = measured.written_since(connection, series, new, done) if again else None
                stretch = stretch or measured.add_readings(connection, series, new)
            done = stretch.first + stretch.count

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
            Give no more than this many (at least 4), chosen so that no extreme is lost.

        Raises
        ------
        InputError
            If there is no such series.
        """
        limits = [None if each is None else as_microseconds(each) for each in (start, end)]
        with self._store.reading() as connection:
            found = measured.readings_of(connection, series, start=limits[0], end=limits[1])
        return found if most is None else found.chosen(thinned(found.at, found.value, most))


def _as_readings(values: ArrayLike, at: object, remarks: dict[int, str], moment: int) -> Readings:
    read = _as_numbers(values)
    if not len(read):
        raise InputError("readings-none")
    moments = np.full(len(read), moment, dtype=np.int64) if at is None else _as_moments(at)
    outside = moments[(moments < FIRST_MOMENT) | (moments > LAST_MOMENT)]
    if len(outside):
        raise InputError("moment-unreadable", text=str(outside[0]))
    if len(moments) != len(read):
        raise InputError("readings-lengths", values=len(read), moments=len(moments))
    said = _as_remarks(remarks, len(read))
    if np.isinf(read).any():
        raise InputError("readings-infinite", number=int(np.flatnonzero(np.isinf(read))[0]) + 1)
    unsaid = [k + 1 for k in np.flatnonzero(np.isnan(read)).tolist() if k + 1 not in said]
    if unsaid:
        raise InputError("readings-unsaid", number=unsaid[0])
    read[np.isnan(read)] = np.nan  # one bit pattern for all of them
    return Readings(number=np.arange(1, len(read) + 1, dtype=np.int64), at=moments, value=read, remarks=said)


def _as_numbers(values: ArrayLike) -> NDArray[np.float64]:
    try:
        given = np.ma.filled(np.ma.asarray(values, dtype=np.float64), np.nan)
    except (TypeError, ValueError, OverflowError) as error:
        raise InputError("readings-unreadable", problem=shown(error, 120)) from None
    return np.array(given).reshape(-1) + 0.0  # minus zero is zero: not every database keeps it


def _as_remarks(remarks: Mapping[int, str], count: int) -> dict[int, str]:
    """Number remarks from 1; one that would be dropped, or break a seal later, is refused."""
    said = {}
    for place, text in remarks.items():
        if not isinstance(place, int | np.integer) or isinstance(place, bool) or not 0 <= place < count:
            raise InputError("readings-remark", place=repr(place)[:60], count=count)
        said[int(place) + 1] = plain_line(text.strip(), NOTE_LIMIT)
    return {number: text for number, text in said.items() if text}


def _as_moments(at: object) -> NDArray[np.int64]:
    """Count microseconds; whatever could be misread (seconds as floats, texts, spans) is refused."""
    try:
        given = np.asarray(at).reshape(-1)
        if given.dtype.kind == "M":
            return given.astype("datetime64[us]").astype(np.int64)
        if given.dtype.kind == "O" and all(isinstance(each, datetime) for each in given):
            return np.array([as_microseconds(each) for each in given], dtype=np.int64)
        if given.dtype.kind not in "iu" and len(given):
            raise TypeError(str(given[0]))
        if given.dtype.kind == "u":
            given = np.minimum(given, LAST_MOMENT + 1)  # beyond all moments, and so refused, but not turned round
        return given.astype(np.int64)
    except (TypeError, ValueError, OverflowError) as error:
        raise InputError("readings-moments", problem=shown(error, 120)) from None
