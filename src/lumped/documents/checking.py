"""Holding a document against its model; the first problem becomes one sentence with a remedy."""

import re
from difflib import get_close_matches
from pathlib import Path
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from lumped.documents.numbers_wanted import number_wanted
from lumped.errors import InputError
from lumped.texts import say

__all__ = ["checked"]

Model = TypeVar("Model", bound=BaseModel)


def checked(model: type[Model], document: dict[str, Any], path: Path, *, failure: type[InputError]) -> Model:
    """Hold a document against its model.

    Parameters
    ----------
    model : type
        The pydantic model.
    document : dict
        What was read.
    path : Path
        Its file, for the message.
    failure : type of InputError
        Which error to raise.

    Returns
    -------
    Model
        The document as the model's own object.

    Raises
    ------
    InputError
        With file, key, value and remedy of the first thing that is wrong.
    """
    try:
        return model.model_validate(document)
    except ValidationError as error:
        first = min(error.errors(), key=_urgency)
        said = {"file": str(path), "remedy": _remedy(first, model)}
        if not first["loc"]:
            raise failure("document-whole", **said) from None
        key = _key_text(first["loc"], document)
        if isinstance(first["input"], (dict, list)) and first["type"] not in _OF_THE_WHOLE:
            raise failure("document-part", key=key, **said) from None
        raise failure("document-key", key=key, value=_value_text(first), **said) from None


_OF_THE_WHOLE = ("missing", "union_tag_invalid", "union_tag_not_found")
"""Troubles whose sentence names one key, though the whole table comes with them."""


def _own_sentence(problem: Any) -> str:
    """The sentence of a rule of ours; nothing if another rule is broken."""
    error = (problem.get("ctx") or {}).get("error")
    return str(error) if isinstance(error, InputError) else ""


def _urgency(problem: Any) -> int:
    """Misspelt keys first: they often cause the missing ones; "no text" last: often a table was meant."""
    return {"extra_forbidden": 0, "missing": 2, "string_type": 3}.get(problem["type"], 1)


def _key_text(location: tuple[str | int, ...], document: dict[str, Any]) -> str:
    """Write a place in the document as a person finds it: lumps › “left roll” › length_mm."""
    words, node = [], document
    for step in location:
        if isinstance(step, int):
            node = node[step] if isinstance(node, list) and step < len(node) else {}
            name = (node.get("name") or node.get("ingredient")) if isinstance(node, dict) else None
            words.append(f"“{name}”" if name else f"no. {step + 1}")
        elif isinstance(node, dict) and (step in node or step == location[-1]):
            node = node.get(step, {})
            words.append(str(step))
        # else: the name of a union's branch, which is no key of the file
    return " › ".join(words)


def _value_text(problem: Any) -> str:
    if problem["type"] == "missing":
        return say("document-value-none")
    tag = (problem.get("ctx") or {}).get("tag")
    shown = repr(tag if tag is not None else problem["input"])
    return shown if len(shown) <= 60 else shown[:57] + "…"


def _remedy(problem: Any, model: type[BaseModel]) -> str:  # noqa: PLR0911 - one line for each kind of trouble
    context, kind = problem.get("ctx") or {}, problem["type"]
    key = str(problem["loc"][-1]) if problem["loc"] else ""
    if own := _own_sentence(problem):
        return own
    if kind == "extra_forbidden":
        if len(problem["loc"]) > 1 and key in model.model_json_schema().get("properties", {}):
            return say("document-remedy-top")
        if tables := _tables_with(key, model):
            return say("document-remedy-elsewhere", tables=", ".join(tables))
        near = get_close_matches(key, sorted(_keys_of(model)), n=1)
        return say("document-remedy-near", near=near[0]) if near else say("document-remedy-extra")
    if kind in _LIMITS:
        sentence, limit = _LIMITS[kind]
        return say(sentence, limit=f"{context[limit]:g}")
    if kind in ("literal_error", "union_tag_invalid"):
        return say("document-remedy-choice", choices=context.get("expected") or context.get("expected_tags", ""))
    if kind in ("missing", "union_tag_not_found"):
        return say("document-remedy-missing", key=str(context.get("discriminator", key)).strip("'"))
    if kind in _NUMBERS:
        whole = kind.startswith("int_")
        return number_wanted(key, problem["input"], model.model_json_schema(), whole=whole)
    if kind in _PLAIN:
        return say(_PLAIN[kind])
    return str(problem["msg"]).removeprefix("Value error, ").rstrip(".") + "."


_LIMITS = {
    "greater_than": ("document-remedy-more", "gt"),
    "greater_than_equal": ("document-remedy-least", "ge"),
    "less_than_equal": ("document-remedy-most", "le"),
    "too_long": ("document-remedy-count", "max_length"),
    "too_short": ("document-remedy-some", "min_length"),
    "string_too_long": ("document-remedy-long", "max_length"),
}
_NUMBERS = ("float_parsing", "float_type", "int_type", "int_parsing", "int_from_float", "finite_number")
_PLAIN = {
    "string_type": "document-remedy-text",
    **dict.fromkeys(("list_type", "tuple_type"), "document-remedy-list"),
    **dict.fromkeys(("model_type", "dict_type", "model_attributes_type"), "document-remedy-table"),
    **dict.fromkeys(("bool_type", "bool_parsing"), "document-remedy-truth"),
    "string_too_short": "document-remedy-short",
    "string_pattern_mismatch": "document-remedy-characters",
}


def _tables_with(key: str, model: type[BaseModel]) -> list[str]:
    """Tables of a file that know a key, by their names."""
    schema = model.model_json_schema()
    parts = schema.get("$defs", {})
    return [
        name for name, place in schema.get("properties", {}).items()
        if any(key in parts.get(part, {}).get("properties", {}) for part in re.findall(r"#/\$defs/(\w+)", str(place)))
    ]  # fmt: skip


def _keys_of(model: type[BaseModel]) -> set[str]:
    """All keys that the model and the models inside it know."""
    schema = model.model_json_schema()
    tables = [schema, *schema.get("$defs", {}).values()]
    return {key for table in tables for key in table.get("properties", {})}
