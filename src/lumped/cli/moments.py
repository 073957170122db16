"""Moments at the command line: shown as a clock on the wall here shows them, with their distance from UTC."""

import argparse
from datetime import UTC, date, datetime, timedelta, tzinfo

from lumped.texts import say

__all__ = ["local_time", "read_day", "read_moment"]

_START = datetime(1970, 1, 1, tzinfo=UTC)


def local_time(microseconds: int, *, zone: tzinfo | None = None, to: str = "minutes") -> str:
    """Write a moment in local time.

    Parameters
    ----------
    microseconds : int
        The moment. [µs since 1970, UTC]
    zone : tzinfo, optional
        The zone; that of this computer if left out.
    to : {"minutes", "milliseconds"}
        How finely.

    Examples
    --------
    >>> local_time(1_778_336_999_500_000, zone=UTC)
    '2026-05-09 14:29 +00:00'
    >>> local_time(1_778_336_999_500_000, zone=UTC, to="milliseconds")
    '2026-05-09 14:29:59.500 +00:00'
    """
    try:
        moment = (_START + timedelta(microseconds=microseconds)).astimezone(zone)
    except OverflowError:
        return say("moment-far", count=str(microseconds))
    text = moment.isoformat(sep=" ", timespec=to)
    length = len("2026-05-09 14:29" if to == "minutes" else "2026-05-09 14:29:59.500")
    return f"{text[:length]} {text[length:]}"


def read_moment(text: str) -> datetime:
    """Read a moment from the command line: without a zone it is local time.

    Raises
    ------
    ArgumentTypeError
        If it is none; `argparse` makes wrong usage of it.
    """
    try:
        return datetime.fromisoformat(text.strip()).astimezone()
    except (ValueError, OverflowError):
        raise argparse.ArgumentTypeError(say("moment-said", text=text[:60])) from None


def read_day(text: str) -> date:
    """Read a day from the command line.

    Raises
    ------
    ArgumentTypeError
        If it is none; `argparse` makes wrong usage of it.

    Examples
    --------
    >>> read_day("2026-05-09")
    datetime.date(2026, 5, 9)
    """
    try:
        return datetime.strptime(text.strip(), "%Y-%m-%d").date()
    except ValueError:
        raise argparse.ArgumentTypeError(say("day-said", text=text[:60])) from None
