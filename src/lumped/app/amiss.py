"""What is amiss with a recipe, as its page says it: by the name of the ingredient, not by the place in a file."""

import re
from collections.abc import Mapping
from typing import Any

from lumped.texts import say

__all__ = ["amiss"]

_BY_FEEL = re.compile(r"ingredients › “(.+)” › as_needed_g")
_PLACE = re.compile(r"^.{1,200}?: ingredients › no\. \d+: ")
_LONG = re.compile(r"(?<![\d.,])\d{5,}(?![\d.,]\d)")


def amiss(failure: Mapping[str, Any]) -> str:
    """Say what is amiss.

    Parameters
    ----------
    failure : mapping
        An error as `LumpedError.as_dict` gives it.

    Examples
    --------
    >>> said = {"file": "a.toml", "key": "…", "ingredient": "table salt", "problem": "“-3 g” is less than nothing."}
    >>> amiss({"code": "recipe-portion", "message": "", "data": said})
    'table salt: “-3 g” is less than nothing.'
    """
    data = failure.get("data") or {}
    if failure.get("code") == "recipe-portion":
        return say("web-amiss-amount", name=data["ingredient"], problem=data["problem"])
    if failure.get("code") == "document-key":
        value, remedy = (_LONG.sub(lambda found: f"{int(found[0]):,}", data[key]) for key in ("value", "remedy"))
        if data["key"] == "temperature_degC":
            return say("web-amiss-degrees", value=value.strip("'"), remedy=remedy)
        if feel := _BY_FEEL.match(data["key"]):
            problem = remedy if value.startswith("'") else say("web-amiss-grams", value=value, remedy=remedy)
            return say("web-amiss-feel", name=feel[1].replace("-", " "), problem=problem)
        if data["key"] == "method › cooked":
            return say("web-amiss-cooked", value=value.strip("'"), remedy=remedy)
    if failure.get("code") == "document-part" and data["remedy"] == say("recipe-no-amount"):
        name = data["key"].split("“")[-1].rstrip("”").replace("-", " ")
        return say("web-amiss-amount", name=name, problem=say("web-amiss-nothing"))
    return _PLACE.sub("", str(failure["message"]))
