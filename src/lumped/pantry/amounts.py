"""Amounts as recipes write them: "125 g", "1 1/2 cups", "1 cup scooped", "0–60 g as needed"."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from difflib import get_close_matches
from fractions import Fraction
from functools import cache

from lumped.errors import InputError, RecipeError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.measures import FILLINGS, scaled, together, weight_of, weight_of_volume
from lumped.quantities import Provenance, Status, Value, read_number
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Amount", "is_weight", "mass_of", "read_amount", "weighed"]

_KILOGRAMS = {"g": 1e-3, "mg": 1e-6, "kg": 1.0, "oz": 0.028349523125, "lb": 0.45359237}
_CUBIC_METRES = {"mL": 1e-6, "L": 1e-3}
_MEASURES = ("cup", "tbsp", "tsp", "fl_oz", "dessertspoon", "go", "dash")
_SHOWN = "g, kg, oz, mL, L, cup, tbsp, tsp, fl oz, pinch"
_ELSEWHERE = re.compile(
    r"(s|sec|seconds?|min|minutes?|h|hours?|days?|(?:mm|cm|m)[²³23]?|metres?|meters?|in|inch|inches|ft|k|°c|°f|degc|v|volts?|ma|a|w"
    r"|ω|ohms?|%|percent|mol|j)"
)
_SIGNS = {"½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_NUMBER = r"(?:\d+(?:[.,]\d+)?(?:e[-+]?\d+)?(?:\s+(?:and\s+)?\d+\s*/\s*\d+|\s*/\s*\d+)?)"
_LONGEST = 80  # letters of an amount
_MEMORY = Provenance(status=Status.FROM_MEMORY)


@dataclass(frozen=True, slots=True, kw_only=True)
class Amount:
    """What the words of an amount say.

    Parameters
    ----------
    low, high : float
        How much it is at least and at most; equal unless it is a range. [unit]
    unit : str
        "g", "kg", "mL", "cup", "tbsp", …
    method : str or None
        How the measure is filled, if the words say it.
    """

    low: float
    high: float
    unit: str
    method: str | None = None


def mass_of(text: str, ingredient: Ingredient, system: str, method: str | None = None) -> Value:
    """Read an amount of an ingredient.

    Parameters
    ----------
    text : str
        A number, fraction, mixed number or range, a unit, and how the measure is filled, if that is said; or several
        such amounts with "+" between them.
    ingredient : Ingredient
        What is measured.
    system : str
        Whose measures: a key of `measures.kitchens()`.
    method : str, optional
        How measures are filled where the text does not say it.

    Returns
    -------
    Value
        The mass, with how exactly such a measure is kept; a range is uniform between its ends. [kg]

    Raises
    ------
    RecipeError
        If the words are no amount, or nobody knows what this ingredient weighs by this measure.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> mass_of("1/4 cup", pantry()["table-salt"], "us").text()
    '0.073 kg (0.070 to 0.076)'
    >>> mass_of("1 cup + 2 tbsp", pantry()["tap-water"], "us").text()
    '0.267 kg (0.258 to 0.275)'
    >>> mass_of("0–60 g as needed", pantry()["plain-flour"], "us").text()
    '0.030 kg (0 to 0.060)'
    """
    terms = text.split("+")
    if len(terms) > 1:
        return together([_mass_of_term(term.strip(), ingredient, system, method, text) for term in terms])
    amount = read_amount(text)
    if amount.method and amount.unit in _KILOGRAMS:
        raise RecipeError("filling-weighed", text=text, method=amount.method)
    one = _one(amount, ingredient, system, amount.method or method, text)
    most, limit = one(amount.high), handbook().value("measures", "handling", "most").mean
    if most.mean > limit:
        raise RecipeError("amount-too-much", text=text, mass=f"{most.mean:,.0f}", most=f"{limit:g}")
    if amount.low == amount.high:
        return most
    return _between(one(amount.low) if amount.low else Value.exact(0.0, "kg"), most, amount.unit in _KILOGRAMS)


def _mass_of_term(term: str, ingredient: Ingredient, system: str, method: str | None, text: str) -> Value:
    """One of the measures that an amount adds."""
    if not term or len(text) > _LONGEST:
        raise RecipeError("recipe-amount", text=f"{text[:20]}…" if len(text) > _LONGEST else text, units=_SHOWN)
    amount = read_amount(term)
    if amount.low != amount.high:
        raise RecipeError("amount-range-added", text=text)
    return mass_of(term, ingredient, system, method)


def is_weight(text: str) -> bool:
    """Tell whether an amount in words is a weight.

    Examples
    --------
    >>> is_weight("125 g"), is_weight("1 cup")
    (True, False)
    """
    return read_amount(text).unit in _KILOGRAMS


def weighed(mass: float) -> Value:
    """Give a mass from a kitchen scale: ±2 %, at least half a gram. [kg]

    Examples
    --------
    >>> weighed(0.1).text()
    '0.10 kg (0.098 to 0.102)'
    """
    share, least = _scale()
    half = min(mass, max(share * mass, least))
    return Value(mean=mass, low=mass - half, high=mass + half, unit="kg", provenance=_MEMORY)


def read_amount(text: str) -> Amount:
    """Read the words of an amount, whatever the ingredient.

    Parameters
    ----------
    text : str
        The words.

    Returns
    -------
    Amount

    Raises
    ------
    RecipeError
        If they are no amount: no number, no unit, a unit of something else, nothing at all or less.

    Examples
    --------
    >>> read_amount("1½ heaped tsp")
    Amount(low=1.5, high=1.5, unit='tsp', method='heaped')
    """
    if len(text) > _LONGEST:
        raise RecipeError("recipe-amount", text=f"{text[:20]}…", units=_SHOWN)
    words, needed = _without(" ".join(_plain(text).split()).strip(" ,."), "amount-read-as-needed")
    words, up_to = _without(words, "amount-read-up-to", start=True)
    if not words and needed:
        raise RecipeError("amount-how-much", text=text)
    first, last, rest = _numbers(words, text)
    unit, method = _unit(rest, text)
    if last <= 0:
        raise RecipeError("amount-zero", text=text)
    if first is not None and first >= last:
        raise RecipeError("amount-backwards", text=text)
    if first is None and needed and not up_to:
        raise RecipeError("amount-how-much", text=text)
    low = first if first is not None else 0.0 if up_to else last
    return Amount(low=low, high=last, unit=unit, method=method)


def _one(
    amount: Amount, ingredient: Ingredient, system: str, method: str | None, text: str
) -> Callable[[float], Value]:
    """How a number of the amount's unit is weighed."""
    unit = amount.unit
    if unit in _KILOGRAMS:
        return lambda number: weighed(number * _KILOGRAMS[unit])
    if unit in _CUBIC_METRES:
        return lambda number: weight_of_volume(number * _CUBIC_METRES[unit], ingredient, method, text=text)
    each = weight_of(unit, ingredient, system, method, text=text)
    return lambda number: scaled(each, number)


def _between(least: Value, most: Value, by_weight: bool) -> Value:
    low, high = (least.mean, most.mean) if by_weight else (least.low, most.high)
    provenance = Provenance.of([least.provenance, most.provenance])
    return Value(mean=(low + high) / 2, low=low, high=high, unit="kg", provenance=provenance, spread="uniform")


def _plain(text: str) -> str:
    """The words in small letters, signs of fractions written out."""
    text = text.casefold().replace("⁄", "/").replace("\u2212", "-")
    for sign, written in _SIGNS.items():
        text = text.replace(sign, f" {written}")
    for key, number in (("half", "1/2"), ("quarter", "1/4"), ("one", "1")):
        for word in _words(f"amount-read-{key}"):
            text = re.sub(rf"^\s*{re.escape(word)}\s+(?=\w)", f"{number} ", text)
    return text


def _without(words: str, key: str, *, start: bool = False) -> tuple[str, bool]:
    """The words without such an expression, and whether it was there."""
    for each in _words(key):
        pattern = rf"{'^' if start else ''}(?<!\w){re.escape(each)}(?!\w)"
        if re.search(pattern, words):
            return re.sub(pattern, " ", words).strip(" ,()"), True
    return words, False


def _numbers(words: str, text: str) -> tuple[float | None, float, str]:
    """The first number of a range, if it is one; the last number; and the words behind."""
    to = "|".join(re.escape(each) for each in _words("amount-read-range"))
    if re.match(r"-\s*\d", words):
        raise RecipeError("amount-negative", text=text)
    match = re.fullmatch(rf"(?:({_NUMBER})\s*([^\d\s]*?)\s*(?:{to})\s*)?({_NUMBER})\s*(\D*)", words)
    if not match or (match[2] and match[2] != match[4].split(" ")[0]):
        raise RecipeError("recipe-amount", text=text, units=_SHOWN)
    first = None if match[1] is None else _number(match[1], text)
    return first, _number(match[3], text), match[4].strip(" ,()")


def _number(written: str, text: str) -> float:
    parts = re.sub(r"\s*/\s*", "/", written.replace("and", " ")).split()
    try:
        return float(sum(Fraction(part) if "/" in part else Fraction(read_number(part)) for part in parts))
    except InputError as problem:
        if problem.code == "number-either":
            raise RecipeError(problem.code, **problem.data) from None
        raise RecipeError("recipe-amount", text=text, units=_SHOWN) from None
    except (ValueError, ZeroDivisionError, OverflowError):
        raise RecipeError("recipe-amount", text=text, units=_SHOWN) from None


def _unit(rest: str, text: str) -> tuple[str, str | None]:
    """The unit among the words behind the number, and the way of filling."""
    methods = []
    for method in FILLINGS:
        rest, said = _without(rest, f"filling-read-{method}")
        methods += [method] if said else []
    if len(methods) > 1:
        raise RecipeError("amount-two-fillings", text=text, one=methods[0], other=methods[1])
    if not rest:
        raise RecipeError("amount-no-unit", text=text)
    unit = _units().get(" ".join(rest.split()))
    if unit is None and _ELSEWHERE.fullmatch(rest):
        written = re.search(re.escape(rest), text, re.IGNORECASE)  # “°C”, not “°c”
        raise RecipeError("amount-wrong-kind", text=text, unit=written[0] if written else rest, units=_SHOWN)
    if unit is None and (near := get_close_matches(rest, _units(), n=1, cutoff=0.75)):
        raise RecipeError("amount-near-unit", text=text, word=rest, near=near[0])
    if unit is None:
        raise RecipeError("recipe-amount", text=text, units=_SHOWN)
    return unit, methods[0] if methods else None


@cache
def _units() -> dict[str, str]:
    """Unit by each word for it."""
    keys = (*_KILOGRAMS, *_CUBIC_METRES, *_MEASURES)
    return {word: key for key in keys for word in _words(f"measure-read-{key}")}


@cache
def _words(key: str) -> tuple[str, ...]:
    return tuple(sorted(say(key).split(", "), key=len, reverse=True))


@cache
def _scale() -> tuple[float, float]:
    """Share and least half-width of what a kitchen scale shows. [1], [kg]"""
    book = handbook()
    share, least = (book.value("measures", "handling", key).high for key in ("by_weight", "by_weight_least"))
    return share, least
