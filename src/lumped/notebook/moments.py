"""Moments: inside and in the store whole microseconds since 1970 in UTC, in files ISO 8601."""

from datetime import UTC, datetime, timedelta

from lumped.errors import InputError

__all__ = ["FIRST_MOMENT", "LAST_MOMENT", "as_iso", "as_microseconds", "now", "read_iso"]

_START = datetime(1970, 1, 1, tzinfo=UTC)
_MICROSECOND = timedelta(microseconds=1)
FIRST_MOMENT = (datetime(1, 1, 1, tzinfo=UTC) - _START) // _MICROSECOND
LAST_MOMENT = (datetime(9999, 12, 31, 23, 59, 59, 999_999, tzinfo=UTC) - _START) // _MICROSECOND


def now() -> datetime:
    """Give the present moment in UTC; the clock of a notebook unless it is given another."""
    return datetime.now(UTC)


def as_microseconds(moment: datetime) -> int:
    """Count the microseconds since 1970; a moment without a zone is taken as UTC.

    Examples
    --------
    >>> as_microseconds(datetime(1970, 1, 2, tzinfo=UTC))
    86400000000
    """
    return ((moment if moment.tzinfo else moment.replace(tzinfo=UTC)) - _START) // _MICROSECOND


def as_iso(microseconds: int) -> str:
    """Write a moment for files and screens.

    Examples
    --------
    >>> as_iso(86_400_000_000), as_iso(1)
    ('1970-01-02T00:00:00Z', '1970-01-01T00:00:00.000001Z')
    """
    return (_START + timedelta(microseconds=microseconds)).isoformat().replace("+00:00", "Z")


def read_iso(text: str) -> int:
    """Read a moment; without a zone it is taken as UTC.

    Raises
    ------
    InputError
        If the text is no moment.

    Examples
    --------
    >>> read_iso("1970-01-02T00:00:00Z"), read_iso("1970-01-02")
    (86400000000, 86400000000)
    """
    try:
        return as_microseconds(datetime.fromisoformat(text))
    except (ValueError, OverflowError):
        raise InputError("moment-unreadable", text=text[:60]) from None
