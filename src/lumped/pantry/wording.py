"""Measures in words: "1½ cups", "¾ tsp", "1¼ cups + 2 tbsp"; nouns and plurals come from `texts`."""

import math
from collections.abc import Iterable
from fractions import Fraction

from lumped.texts import say

__all__ = ["fraction_text", "grams_text", "measures_text"]

_SIGNS = {
    Fraction(1, 2): "½", Fraction(1, 3): "⅓", Fraction(2, 3): "⅔", Fraction(1, 4): "¼", Fraction(3, 4): "¾",
    Fraction(1, 8): "⅛", Fraction(3, 8): "⅜", Fraction(5, 8): "⅝", Fraction(7, 8): "⅞", Fraction(5, 6): "⅚",
}  # fmt: skip


def fraction_text(amount: Fraction) -> str:
    """Write a number of measures as a cook does.

    Parameters
    ----------
    amount : Fraction
        How many. [1]

    Examples
    --------
    >>> [fraction_text(Fraction(each)) for each in ("3/2", "3/4", "2", "7/12")]
    ['1½', '¾', '2', '7/12']
    """
    whole, rest = divmod(amount, 1)
    if not rest:
        return str(whole)
    if rest in _SIGNS:
        return f"{whole or ''}{_SIGNS[rest]}"
    return f"{whole} {rest}" if whole else str(rest)


def measures_text(terms: Iterable[tuple[str, Fraction]]) -> str:
    """Write measures that are added.

    Parameters
    ----------
    terms : iterable of (str, Fraction)
        Measure ("cup", "tbsp", …) and how many of it.

    Examples
    --------
    >>> measures_text([("cup", Fraction(5, 4)), ("tbsp", Fraction(2))])
    '1¼ cups + 2 tbsp'
    >>> measures_text([("cup", Fraction(1, 2))])
    '½ cup'
    """
    text = ""
    for measure, amount in terms:
        count = 1 if amount <= 1 else float(amount)
        term = say(f"measure-{measure}", amount=fraction_text(amount), count=count)
        text = say("measure-sum", left=text, right=term) if text else term
    return text


def grams_text(mass: float, step: float = 1e-3) -> str:
    """Write a weight as a scale shows it that shows steps of `step`. [kg]

    Examples
    --------
    >>> grams_text(0.125), grams_text(0.0004, 1e-4)
    ('125 g', '0.4 g')
    """
    places = max(0, -math.floor(math.log10(step * 1e3) + 1e-9))
    return say("measure-grams", amount=f"{mass * 1e3:.{places}f}")
