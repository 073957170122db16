"""TOML of one revision or one series, read so that no file can keep the reader busy for long.

A reader of TOML takes time with the square of a dotted key's length, and much memory for each table. So the marks
outside of text are counted first; what a notebook writes has few, and a body that would have more is written as JSON.
"""

import io
import re
import tomllib
from collections.abc import Mapping
from typing import Any

import tomli_w

from lumped.errors import InputError
from lumped.notebook.lines import shown
from lumped.texts import say

__all__ = ["SIZE_LIMIT", "read_toml", "toml_of"]

SIZE_LIMIT = 8_000_000  # bytes
MARK_LIMIT = 200_000  # of = , [ { and .
DOT_LIMIT = 60  # in one line: a key of a body has at most 32 parts
DEPTH_LIMIT = 40

_OPENS = re.compile("\"\"\"|'''|[\"'#]")
_LINE_OF_TEXT = re.compile(r'[^"\\\n]*+(?:\\.[^"\\\n]*+)*+')


def toml_of(table: Mapping[str, Any]) -> bytes | None:
    r"""Write a table as TOML; None if it is so entangled that it would not be read back.

    Examples
    --------
    >>> toml_of({"title": "Quay"})
    b'title = "Quay"\n'
    """
    file = _Limited()
    try:
        tomli_w.dump(table, file)
        text = file.getvalue()
        _refuse_heavy(text.decode(), "")
    except (InputError, OverflowError):
        return None
    return text


def read_toml(text: bytes, name: str) -> dict[str, Any]:
    """Read a table from TOML.

    Raises
    ------
    InputError
        If it is no TOML in UTF-8, or larger or more entangled than a notebook writes.

    Examples
    --------
    >>> read_toml(b'title = "Quay"', "a.toml")
    {'title': 'Quay'}
    """
    try:
        letters = text.decode()
        _refuse_heavy(letters, name)
        table = tomllib.loads(letters)
    except InputError:
        raise
    except UnicodeDecodeError:
        raise InputError("plain-toml", file=shown(name), problem=say("bundle-not-utf8")) from None
    except RecursionError:
        raise InputError("bundle-too-deep", limit=DEPTH_LIMIT) from None
    except ValueError as error:  # TOMLDecodeError, or more digits than Python takes
        raise InputError("plain-toml", file=shown(name), problem=shown(error, 120)) from None
    _refuse_odd(table, name)
    return table


def _refuse_heavy(text: str, name: str) -> None:
    if len(text) > SIZE_LIMIT:
        raise InputError("plain-toml-heavy", file=shown(name))
    bare = _bare(text)
    if sum(map(bare.count, "=,[{.")) > MARK_LIMIT or any(line.count(".") >= DOT_LIMIT for line in bare.split("\n")):
        raise InputError("plain-toml-heavy", file=shown(name))


def _bare(text: str) -> str:
    """Give a text without what stands in quotation marks and remarks; an open end reaches to the end of its line.

    A walk and no regular expression: no text keeps it busy for longer than its length allows.
    """
    kept, at = list[str](), 0
    while opening := _OPENS.search(text, at):
        kept.append(text[at : opening.start()])
        at = _end_of(text, opening[0], opening.end())
    return "".join([*kept, text[at:]])


def _end_of(text: str, opening: str, start: int) -> int:
    """Give where a text or a remark ends that was opened just before `start`."""
    if opening == "#":
        return _found(text, "\n", start)
    if opening == "'":
        end = _found(text, "'", start)
        return min(_found(text, "\n", start, end), end + 1)
    if opening == '"':
        within = _LINE_OF_TEXT.match(text, start)
        return min((within.end() if within else start) + 1, len(text))
    end = text.find(opening, start)
    while opening[0] == '"' and end >= 0 and _is_escaped(text, end):
        end = text.find(opening, end + 1)
    if end < 0:
        return len(text)
    end += 3
    return end + len(text[end : end + 2]) - len(text[end : end + 2].lstrip(opening[0]))  # two more may belong to it


def _found(text: str, mark: str, start: int, end: int | None = None) -> int:
    """Give where a mark stands; the end of the text, if nowhere."""
    at = text.find(mark, start, end)
    return at if at >= 0 else len(text)


def _is_escaped(text: str, at: int) -> bool:
    """Whether an odd number of backslashes stands before."""
    first = at
    while text[first - 1 : first] == "\\":
        first -= 1
    return (at - first) % 2 == 1


def _refuse_odd(table: dict[str, Any], name: str) -> None:
    """Look at every value: nothing too deep, no whole number that is not exact in JSON (those in 0x… know no limit)."""
    waiting: list[tuple[Any, int]] = [(table, 1)]
    while waiting:
        value, depth = waiting.pop()
        if depth > DEPTH_LIMIT:
            raise InputError("bundle-too-deep", limit=DEPTH_LIMIT)
        if isinstance(value, dict | list):
            waiting.extend((each, depth + 1) for each in (value.values() if isinstance(value, dict) else value))
        elif isinstance(value, int) and value.bit_length() > 63:
            raise InputError("plain-toml", file=shown(name), problem=say("document-number-too-long"))


class _Limited(io.BytesIO):
    """A file that does not grow beyond what is read: headers of tables in tables repeat all names above them."""

    def write(self, text: Any) -> int:
        if self.tell() + len(text) > SIZE_LIMIT:
            raise OverflowError
        return super().write(text)
