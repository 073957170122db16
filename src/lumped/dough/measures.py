"""Amounts as recipes write them: "125 g", "1 1/2 cups", "2 tbsp"; and how exactly people measure so."""

import re

from lumped.errors import RecipeError
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook

__all__ = ["mass_of", "weighed"]

_WORDS = {
    "cup": "cup", "cups": "cup", "tbsp": "tbsp", "tablespoon": "tbsp", "tablespoons": "tbsp", "tsp": "tsp",
    "teaspoon": "tsp", "teaspoons": "tsp", "fl oz": "fl_oz", "dessertspoon": "dessertspoon", "dash": "dash",
    "pinch": "dash", "pinches": "dash", "dashes": "dash",
}  # fmt: skip
_GRAMS = {"g": 1e-3, "gram": 1e-3, "grams": 1e-3, "kg": 1.0, "oz": 0.028349523125}
_MILLILITRES = {"mL": 1e-6, "ml": 1e-6, "L": 1e-3, "l": 1e-3}
_FRACTIONS = {"½": 0.5, "⅓": 1 / 3, "⅔": 2 / 3, "¼": 0.25, "¾": 0.75, "⅛": 0.125}
_AMOUNT = re.compile(r"\s*(\d+(?:[.,]\d+)?)?\s*(?:(\d+)\s*/\s*([1-9]\d*)|([½⅓⅔¼¾⅛]))?\s*([a-zA-Z ]+?)\s*")
_SPOON_SPREAD = 0.10  # a spoon or cup of something whose table gives no interval, from memory
_MEMORY = Provenance(status=Status.FROM_MEMORY)


def mass_of(text: str, ingredient: str, system: str) -> Value:
    """Read an amount of an ingredient.

    Parameters
    ----------
    text : str
        A number, fraction or mixed number, and a unit: g, kg, oz, mL, L, cup, tbsp, tsp, fl oz, pinch.
    ingredient : str
        Key of the ingredient, for what its measures weigh.
    system : str
        Key of the measures' system in the handbook.

    Returns
    -------
    Value
        The mass, with how exactly such a measure is kept. [kg]

    Raises
    ------
    RecipeError
        If the words are no amount, or the handbook can't weigh this ingredient by this measure.

    Examples
    --------
    >>> mass_of("1/4 cup", "table-salt", "us").text()
    '0.073 kg (0.070 to 0.076)'
    """
    number, unit = _number_and_unit(text)
    if unit in _GRAMS:
        return weighed(number * _GRAMS[unit])
    if unit in _MILLILITRES:
        return _by_volume(number * _MILLILITRES[unit], ingredient, text)
    measure = _WORDS[unit]
    if measure == "dash":
        return _scaled(_row_of(ingredient, "g_per_dash", text), number)
    if not handbook().has("measures", system, measure):
        raise RecipeError("recipe-measure-system", text=text, system=handbook().name("measures", system))
    volume = number * handbook().value("measures", system, measure).mean
    us_volume = handbook().value("measures", "us", measure).mean if measure != "dessertspoon" else volume
    if handbook().has("ingredients", ingredient, f"g_per_{measure}"):
        return _scaled(_row_of(ingredient, f"g_per_{measure}", text), volume / us_volume)
    return _by_volume(volume, ingredient, text)


def weighed(mass: float) -> Value:
    """Give a mass from a kitchen scale: ±2 %, at least half a gram. [kg]

    Examples
    --------
    >>> weighed(0.1).text()
    '0.10 kg (0.098 to 0.102)'
    """
    book = handbook()
    share = book.value("measures", "handling", "by_weight").high
    least = book.value("measures", "handling", "by_weight_least").high
    half = min(mass, max(share * mass, least))
    return Value(mean=mass, low=mass - half, high=mass + half, unit="kg", provenance=_MEMORY)


def _number_and_unit(text: str) -> tuple[float, str]:
    match = _AMOUNT.fullmatch(text)
    number = 0.0
    if match:
        whole, over, under, sign = match[1], match[2], match[3], match[4]
        if whole and over is None and sign is None and "/" in text:
            match = None
        number = float((whole or "0").replace(",", "."))
        number += int(over) / int(under) if over else _FRACTIONS.get(sign or "", 0.0)
    units = (*_GRAMS, *_MILLILITRES, *_WORDS)
    if not match or number <= 0 or match[5] not in units:
        raise RecipeError("recipe-amount", text=text, units="g, kg, oz, mL, L, cup, tbsp, tsp, fl oz, pinch")
    return number, match[5]


def _by_volume(volume: float, ingredient: str, text: str) -> Value:
    """Weigh a volume by the ingredient's largest known measure."""
    for measure in ("cup", "tbsp", "tsp"):
        if handbook().has("ingredients", ingredient, f"g_per_{measure}"):
            per = _row_of(ingredient, f"g_per_{measure}", text)
            return _scaled(per, volume / handbook().value("measures", "us", measure).mean)
    raise RecipeError("recipe-no-weight", text=text, ingredient=handbook().name("ingredients", ingredient))


def _row_of(ingredient: str, quantity: str, text: str) -> Value:
    if not handbook().has("ingredients", ingredient, quantity):
        raise RecipeError("recipe-no-weight", text=text, ingredient=handbook().name("ingredients", ingredient))
    return handbook().value("ingredients", ingredient, quantity)


def _scaled(value: Value, factor: float) -> Value:
    spread = _SPOON_SPREAD if value.is_exact else 0.0
    low, high = value.low * (1 - spread), value.high * (1 + spread)
    return Value(mean=factor * value.mean, low=factor * low, high=factor * high, unit="kg", provenance=value.provenance)
