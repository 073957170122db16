"""Numbers, days and names as a card says them in its language; a card never mixes languages."""

from collections.abc import Iterable, Sequence
from datetime import date
from functools import reduce
from typing import TYPE_CHECKING

from lumped.quantities import Value, rounded_text
from lumped.reference import handbook
from lumped.texts import has, language, say

if TYPE_CHECKING:
    from lumped.pantry import Pantry

__all__ = ["allergen_name", "day_text", "days", "grams", "ingredient_name", "interval", "listed", "local", "unread"]

_DECIMAL_COMMA = ("fr", "es")
_THIN = "\u202f"  # a narrow space that does not break
_FINE_BELOW = 5e-3  # kg; below it a scale for spices shows tenths of a gram
_DAY = 86400.0


def local(number: str) -> str:
    """Write a number as the language does.

    Parameters
    ----------
    number : str
        With a decimal point.

    Examples
    --------
    >>> from lumped.texts import speaking
    >>> with speaking("fr"):
    ...     local("1,230.5") == "1\u202f230,5"
    True
    """
    if language() not in _DECIMAL_COMMA:
        return number
    return number.replace(",", _THIN).replace(".", ",")


def interval(value: Value) -> str:
    """Write a value and its ends with the digits that every face gives them, without its unit."""
    ends = {end: local(rounded_text(getattr(value, end))) for end in ("mean", "low", "high")}
    return say("card-interval", **ends)


def grams(mass: float) -> str:
    """Write a mass in grams as a kitchen scale shows it, the number alone. [kg]

    Examples
    --------
    >>> grams(0.125), grams(0.0034)
    ('125', '3.4')
    """
    return local(f"{1e3 * mass:.1f}" if 0 < mass < _FINE_BELOW else f"{1e3 * mass:.0f}")


def day_text(day: date) -> str:
    """Write a day.

    Examples
    --------
    >>> day_text(date(2026, 5, 8))
    '8 May 2026'
    """
    return say("card-date", day=str(day.day), month=say(f"card-month-{day.month}"), year=str(day.year))


def ingredient_name(key: str, shop: "Pantry") -> str:
    """Give what an ingredient is called; one from a user's label keeps the name that it has there.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> from lumped.texts import speaking
    >>> with speaking("es"):
    ...     ingredient_name("plain-flour", pantry())
    'harina de trigo'
    """
    if language() == "en" or key not in handbook().keys("names"):
        return shop[key].name
    return str(handbook().entry("names", key).facts[language()])


def allergen_name(name: str) -> str:
    """Give what an allergen is called; a word of a user's own label stays as it is.

    Examples
    --------
    >>> allergen_name("tree nuts")
    'tree nuts'
    """
    key = f"card-allergen-{name.replace(' ', '-')}"
    return say(key) if has(key) else name


def listed(words: Iterable[str]) -> str:
    """Put words in a row, each once.

    Examples
    --------
    >>> listed(["salt", "flour", "salt"])
    'salt, flour'
    """
    return reduce(lambda left, right: say("card-list", left=left, right=right), dict.fromkeys(words))


def unread() -> Sequence[str]:
    """Say that no native speaker has read this language yet; nothing in English."""
    key = f"card-unread-{language()}"
    return [say(key)] if has(key) else []


def days(time: Value) -> tuple[str, str]:
    """Give the ends of a time in whole days. [s]"""
    return f"{time.low / _DAY:.0f}", f"{time.high / _DAY:.0f}"
