"""A recipe's own text, compact, for the code on its card: read back it is the same recipe."""

import json
from datetime import date
from typing import Any

__all__ = ["compact", "recipe_texts"]


def recipe_texts(document: dict[str, Any]) -> tuple[tuple[str, str], ...]:
    """Give the text of a recipe, whole, without its story, and without its steps too.

    Parameters
    ----------
    document : dict
        What its file says.

    Returns
    -------
    tuple of (str, str)
        What each lacks ("", "no-story", "no-steps") and the text, the longest first; only those that differ.
    """
    found: dict[str, str] = {compact(document): ""}
    for lacks, gone in (("no-story", ("story",)), ("no-steps", ("story", "steps"))):
        left = {key: each for key, each in document.items() if key not in gone}
        found.setdefault(compact(left), lacks)
    return tuple((lacks, text) for text, lacks in found.items())


def compact(document: dict[str, Any]) -> str:
    r"""Write a document as TOML in the fewest letters, one key a line.

    Parameters
    ----------
    document : dict
        Tables, lists, text, numbers, days, true and false.

    Examples
    --------
    >>> compact({"title": "Mine", "method": {"cooked": "pot"}, "at": [1, 2.5]})
    'title="Mine"\nmethod={cooked="pot"}\nat=[1,2.5]\n'
    """
    return "".join(f"{_key(key)}={_written(value)}\n" for key, value in document.items())


def _written(value: Any) -> str:
    match value:
        case dict():
            return "{" + ",".join(f"{_key(key)}={_written(each)}" for key, each in value.items()) + "}"
        case list():
            return "[" + ",".join(map(_written, value)) + "]"
        case date():
            return value.isoformat()
        case str():
            return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
    return json.dumps(value)


def _key(key: str) -> str:
    return key if key.isascii() and key.replace("-", "").replace("_", "").isalnum() else json.dumps(key)
