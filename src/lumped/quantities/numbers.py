"""Numbers as people write them: with a decimal point or a decimal comma.

A comma before three digits may part thousands as well, and Lumped itself writes 1,250 so: nobody knows which was meant,
so such a number is refused, not guessed.
"""

import math
import re

from lumped.errors import InputError

__all__ = ["read_number", "with_unit"]

_NUMBER = re.compile(r"[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][-+]?\d{1,3})?")
_EITHER = re.compile(r"[-+]?[1-9]\d{0,2},\d{3}")
_LONGEST, _SHOWN = 40, 40


def read_number(text: str) -> float:
    """Read a number.

    Parameters
    ----------
    text : str
        Digits, perhaps with a sign, one decimal point or comma, and a power of ten.

    Returns
    -------
    float
        It is finite.

    Raises
    ------
    InputError
        If it is no number, or its comma may part thousands.

    Examples
    --------
    >>> read_number("4,5"), read_number(" -0.125 "), read_number("0,125"), read_number("1e3")
    (4.5, -0.125, 0.125, 1000.0)
    """
    written = text.strip().replace("\N{MINUS SIGN}", "-")
    if len(written) > _LONGEST or not _NUMBER.fullmatch(written):
        raise InputError("number-unreadable", text=written[:_SHOWN])
    if _EITHER.fullmatch(written):
        raise InputError(
            "number-either", text=written, point=written.replace(",", "."), none=written.replace(",", "")
        )  # fmt: skip
    number = float(written.replace(",", "."))
    if not math.isfinite(number):
        raise InputError("number-unreadable", text=written)
    return number


def with_unit(text: str, unit: str) -> str:
    """Put the unit that a field asks for behind a bare number; all else stays as it was written.

    Examples
    --------
    >>> with_unit("12", "mm"), with_unit("2 cm", "mm"), with_unit("twelve", "mm")
    ('12 mm', '2 cm', 'twelve')
    """
    bare = text.strip()
    return f"{bare} {unit}" if _NUMBER.fullmatch(bare.replace("\N{MINUS SIGN}", "-")) else text
