"""Numbers as people read them: few digits, no exponents, no false precision."""

import math

__all__ = ["rounded_text", "significant"]


def significant(number: float, digits: int = 3) -> float:
    """Round to significant digits.

    Examples
    --------
    >>> significant(0.123456), significant(98765.0, 2)
    (0.123, 99000.0)
    """
    if number == 0 or not math.isfinite(number):
        return number
    return round(number, digits - 1 - math.floor(math.log10(abs(number))))


def rounded_text(number: float, digits: int = 2) -> str:
    """Write a number with two significant digits, three where the first is a 1 to 4 below a thousand.

    Parameters
    ----------
    number : float
        What to write. [any]
    digits : int
        Significant digits at least kept.

    Examples
    --------
    >>> [rounded_text(each) for each in (0.2, 4.0, 12.34, 1234.0, 0.00312, 98765.0, 0.0)]
    ['0.20', '4.00', '12.3', '1,230', '0.00312', '99,000', '0']
    """
    if number == 0:
        return "0"
    lead = abs(number) / 10 ** math.floor(math.log10(abs(number)))
    kept = digits + 1 if lead < 5 and not math.isclose(significant(number, 1), number) else digits
    kept = digits + 1 if abs(number) >= 1 and lead < 5 else kept
    shown = significant(number, kept)
    places = max(0, kept - 1 - math.floor(math.log10(abs(shown))))
    return f"{shown:,.{places}f}"
