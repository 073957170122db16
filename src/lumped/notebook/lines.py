"""Lines of text that a notebook takes: titles, names, units, notes. Nothing in them moves letters or steers a screen.

A body may hold any text. A line is shown in lists, terminals and file names, so it is refused if it holds control
characters (an escape can repaint a terminal) or marks that turn the order of letters round (what is read would not be
what is there).
"""

import unicodedata

from lumped.errors import InputError

__all__ = ["LINE_LIMIT", "NOTE_LIMIT", "TITLE_LIMIT", "UNIT_LIMIT", "plain_line", "shown"]

LINE_LIMIT = 500  # kinds, names, instruments, methods
TITLE_LIMIT = 500
UNIT_LIMIT = 60
NOTE_LIMIT = 2_000  # notes and remarks

_TURNING = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"  # embeddings, overrides and isolates (UAX 9)
_UNSEEN = {"Cc", "Cs", "Zl", "Zp"}  # general categories: control, half of a pair, line and paragraph separator


def plain_line(text: str, limit: int = LINE_LIMIT) -> str:
    r"""Give a line back if it is one.

    Parameters
    ----------
    text : str
        What a person or a file gave.
    limit : int
        How many characters it may have.

    Returns
    -------
    str
        The same text.

    Raises
    ------
    InputError
        If it is too long, or holds a control character (a line end, too) or a mark that turns the order of letters.

    Examples
    --------
    >>> plain_line("Quay, <b>left</b> ½")
    'Quay, <b>left</b> ½'
    >>> plain_line("Quay\x1b[2J")
    Traceback (most recent call last):
    lumped.errors.InputError: “Quay�[2J” holds a character that can't stand in a line (no. 5, U+001B). Take it out.
    """
    if len(text) > limit:
        raise InputError("line-too-long", text=shown(text), length=len(text), limit=limit)
    if text.isascii() and text.isprintable():
        return text
    for place, letter in enumerate(text, 1):
        if letter in _TURNING or unicodedata.category(letter) in _UNSEEN:
            raise InputError("line-character", text=shown(text), place=place, code=f"U+{ord(letter):04X}")
    return text


def shown(text: object, limit: int = 60) -> str:
    """Give any text so that a message can show it: short, and with a mark for what can't be printed.

    Examples
    --------
    >>> shown("a" + chr(27) + "[2J"), shown(100 * "x", 5)
    ('a�[2J', 'xxxx…')
    """
    seen = "".join(letter if letter.isprintable() else "�" for letter in str(text)[: limit + 1])
    return seen if len(seen) <= limit else seen[: limit - 1] + "…"
