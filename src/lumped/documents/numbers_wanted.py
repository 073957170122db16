"""Which number a key wants, said to somebody who wrote something else: in its unit, with an example."""

import re
from typing import Any

from lumped.quantities import suffix_of
from lumped.texts import say

__all__ = ["number_wanted"]

_TEXT_TOO = {"length": "6 cm", "angle": "30 deg", "share": "6 %"}  # kinds that `amounts` reads from text as well
_WORDS = {
    # suffix of a key, longest first: sentence that names its unit
    "_kcal": "document-unit-kcal", "_degC": "document-unit-degC", "_percent": "document-unit-percent",
    "_ohm_m": "document-unit-ohm-m", "_ohm": "document-unit-ohm", "_deg": "document-unit-deg",
    "_kJ": "document-unit-kJ", "_mg": "document-unit-mg", "_mm": "document-unit-mm", "_g": "document-unit-g",
    "_V": "document-unit-V",
}  # fmt: skip
_NUMBER = re.compile(r"[-+]?(\d+(?:[.,]\d+)?)")


def number_wanted(key: str, given: object, schema: dict[str, Any], *, whole: bool = False) -> str:
    """Say which number a key wants.

    Parameters
    ----------
    key : str
        The key; its end tells the unit.
    given : object
        What was written; a number in it is taken for the example.
    schema : dict
        The JSON Schema of the file, which tells whether there is a key for text with a unit beside it.
    whole : bool
        Whether it must be a whole number.

    Examples
    --------
    >>> number_wanted("fat_g", "3 g", {})
    'Write a number of grams alone, such as 3.'
    """
    suffix = next((each for each in _WORDS if key.endswith(each)), "")
    example = _example(given)
    if not suffix:
        return say("document-remedy-whole-number" if whole else "document-remedy-number", example=example)
    unit, kind = say(_WORDS[suffix]), suffix_of(key)
    if kind is not None and kind[0] in _TEXT_TOO:
        return say("document-remedy-with-unit", unit=unit, example=_TEXT_TOO[kind[0]])
    other = key.removesuffix(suffix)
    if _stand_together(key, other, schema):
        symbol = suffix.removeprefix("_")
        return say("document-remedy-unit-or", unit=unit, key=key, other=other, symbol=symbol, example=example)
    return say("document-remedy-unit", unit=unit, example=example)


def _example(given: object) -> str:
    found = _NUMBER.match(given.strip()) if isinstance(given, str) else None
    return found[1].replace(",", ".") if found and len(found[1]) < 8 else "3"


def _stand_together(key: str, other: str, schema: dict[str, Any]) -> bool:
    tables = (schema, *schema.get("$defs", {}).values())
    return any({key, other} <= set(table.get("properties", {})) for table in tables)
