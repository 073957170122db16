"""Text that must stand in one line and do nothing: titles, names, units, notes."""

import unicodedata

from lumped.errors import InputError

__all__ = ["plain_line"]

_DOING = {"Cc", "Cf", "Cs", "Zl", "Zp"}  # controls, invisible marks and turns of direction, half letters, line ends
_JOINERS = "\u200c\u200d"  # some scripts and pictures need them


def plain_line(text: str, limit: int) -> str:
    """Give a text without spaces round it.

    Parameters
    ----------
    text : str
        What somebody wrote.
    limit : int
        Most characters.

    Raises
    ------
    InputError
        If it is too long, or holds signs that steer a screen instead of being read.

    Examples
    --------
    >>> plain_line(" East quay ", 200)
    'East quay'
    """
    plain = text.strip()
    if len(plain) > limit:
        raise InputError("line-too-long", text=plain[:40] + "…", limit=limit, length=len(plain))
    steering = [letter for letter in plain if unicodedata.category(letter) in _DOING and letter not in _JOINERS]
    if steering:
        raise InputError("line-steers", text=ascii(plain[:60]), sign=f"U+{ord(steering[0]):04X}")
    return plain
