"""The canonical text of a body, and its hash: two bodies that say the same have the same hash on every machine.

The text is that of the JSON Canonicalization Scheme (RFC 8785): keys in order, numbers in their shortest form. A body
is what TOML and JSON both can hold: tables, lists, text, numbers, true and false.
"""

import hashlib
import json
import math
from collections.abc import Mapping
from typing import Any, TypeAlias

import rfc8785

from lumped.errors import InputError

__all__ = ["Body", "canonical_text", "hash_of", "read_canonical", "whole_number"]

Body: TypeAlias = Mapping[str, Any]
"""What a document holds; the notebook does not know what it means."""

SIZE_LIMIT = 2_000_000
DEPTH_LIMIT = 32
LARGEST_INTEGER = 2**53 - 1  # beyond it a JSON number is no longer exact


def canonical_text(body: Body) -> str:
    """Write a body in its canonical form.

    Parameters
    ----------
    body : mapping
        Tables, lists, text, numbers, true and false, at most 32 deep and 2 MB long.

    Returns
    -------
    str
        One line of JSON.

    Raises
    ------
    InputError
        If it holds something that TOML and JSON don't both have, or is too large or too deep.

    References
    ----------
    RFC 8785, JSON Canonicalization Scheme (JCS), 2020.

    Examples
    --------
    >>> canonical_text({"b": 6.0, "a": [True, "½"]})
    '{"a":[true,"½"],"b":6}'
    """
    _refuse_what_files_cannot_hold(body)
    text = rfc8785.dumps(_plain(body)).decode()
    if len(text) > SIZE_LIMIT:
        raise InputError("body-too-large", limit="2 MB")
    return text


def hash_of(body: Body) -> str:
    """Give the SHA-256 of a body's canonical text, as 64 hexadecimal digits.

    Examples
    --------
    >>> hash_of({"title": "Quay"})[:8] == hash_of({"title": "Quay"})[:8]
    True
    """
    return hashlib.sha256(canonical_text(body).encode()).hexdigest()


def read_canonical(text: str) -> dict[str, Any]:
    """Read a canonical text back.

    A whole number too large to be exact was a float when it was written, and becomes one again.

    Examples
    --------
    >>> read_canonical('{"a":100000000000000000}')
    {'a': 1e+17}
    """
    content: dict[str, Any] = json.loads(text, parse_int=whole_number)
    return content


def whole_number(digits: str) -> int | float:
    """Read the digits of a whole number; one too large to be exact becomes a float.

    Examples
    --------
    >>> whole_number("7"), whole_number("100000000000000000")
    (7, 1e+17)
    """
    return float(digits) if len(digits) > 15 and abs(float(digits)) > LARGEST_INTEGER else int(digits)


def _refuse_what_files_cannot_hold(body: Body) -> None:
    """Look at every value once, without recursion."""
    waiting: list[tuple[Any, int, str]] = [(body, 1, "")]
    while waiting:
        value, depth, where = waiting.pop()
        if depth > DEPTH_LIMIT:
            raise InputError("body-too-deep", limit=DEPTH_LIMIT)
        if isinstance(value, Mapping):
            for key, each in value.items():
                if not isinstance(key, str) or not _encodable(key):
                    raise InputError("body-holds", where=where or "(the whole)", value=repr(key)[:60])
                waiting.append((each, depth + 1, f"{where} › {key}" if where else key))
        elif isinstance(value, list | tuple):
            waiting.extend((each, depth + 1, f"{where} › no. {k + 1}") for k, each in enumerate(value))
        elif not _is_plain(value):
            raise InputError("body-holds", where=where or "(the whole)", value=repr(value)[:60])
    if not isinstance(body, Mapping):
        raise InputError("body-holds", where="(the whole)", value=repr(body)[:60])


def _is_plain(value: Any) -> bool:
    if isinstance(value, bool):
        return True
    if isinstance(value, int):
        return abs(value) <= LARGEST_INTEGER
    if isinstance(value, float):
        return math.isfinite(value)
    return isinstance(value, str) and _encodable(value)


def _encodable(text: str) -> bool:
    return not any("\ud800" <= letter <= "\udfff" for letter in text)


def _plain(value: Any) -> Any:
    """Turn mappings and tuples into what the canonical writer knows."""
    if isinstance(value, Mapping):
        return {key: _plain(each) for key, each in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(each) for each in value]
    return value
