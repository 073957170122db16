"""Reading a large JSON text piece by piece, so that what it holds is weighed before it is built.

The walker goes through the text once, from left to right: into tables and lists where it is told to, and over whole
values where not. Depth, double keys, numbers out of range and text that breaks off are refused on the way.
"""

import json
import re
from collections.abc import Iterator
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from lumped.errors import InputError
from lumped.notebook.canonical import whole_number
from lumped.notebook.files.limits import READING_BYTES, Budget, refuse_heavy
from lumped.notebook.lines import shown
from lumped.texts import say

__all__ = ["Pieces", "json_value"]

DEPTH_LIMIT = 40  # a body may have 32 levels, and lies in a revision
CHUNK = 500_000  # bytes of a long list that are built at once
KEY_LIMIT = 200  # bytes of a key in the bundle's own tables

_STRING = rb'"[^"\\]*+(?:\\.[^"\\]*+)*+("?)'
_BRACKETS = re.compile(_STRING + rb"|[\[\]{}]", re.DOTALL)
_BRACKETS_AND_COMMAS = re.compile(_STRING + rb"|[\[\]{},]", re.DOTALL)
_SCALAR = re.compile(rb"[^\s,\]}\[{\"]+")
_COLUMN = re.compile(rb"[-+0-9.eEnul, \t\r\n]*")
_SPACE = re.compile(rb"[ \t\r\n]*")


class Pieces:
    """A walk through a JSON text.

    Parameters
    ----------
    text : bytes
        The whole text, in UTF-8.
    budget : Budget
        Counts what is built.
    """

    def __init__(self, text: bytes, budget: Budget) -> None:
        self._text: Final = text
        self._at = 0
        self._budget: Final = budget

    def members(self) -> Iterator[str]:
        """Go into a table: give each key, and stand before its value, which must be taken before the next."""
        self._expect(b"{")
        seen: set[str] = set()
        while not self._ends(b"}", first=not seen):
            key = self._key()
            if key in seen:
                raise InputError("bundle-key-twice", key=shown(key))
            seen.add(key)
            self._expect(b":")
            yield key

    def items(self) -> Iterator[int]:
        """Go into a list: give the index of each item, and stand before it; it must be taken before the next."""
        self._expect(b"[")
        count = 0
        while not self._ends(b"]", first=not count):
            yield count
            count += 1

    def value(self, name: str) -> Any:
        """Take a whole value; `name` tells messages what it is."""
        piece = self._span()
        refuse_heavy(piece, name)
        found = json_value(piece)
        self._budget.hold(found)
        return found

    def skip(self) -> None:
        """Go over a value without building it."""
        self._span()

    def chunks(self, name: str) -> Iterator[list[Any]]:
        """Take a list, some of its items at a time."""
        self._expect(b"[")
        more = not self._closes(b"]")
        while more:
            start = self._at
            more = self._cut()
            piece = self._text[start : self._at]
            refuse_heavy(piece, name)
            found = json_value(b"[" + piece + b"]")
            if not found:
                raise self._broken()
            self._budget.hold(found)
            self._at += 1
            yield found

    def numbers(self, name: str, *, whole: bool) -> NDArray[Any]:
        """Take a list of numbers as a column: whole numbers of 64 bits, or floats with null where there is none."""
        self._expect(b"[")
        inside = _COLUMN.match(self._text, self._at)
        end = inside.end() if inside else self._at
        if self._text[end : end + 1] != b"]":
            raise InputError("bundle-column", column=name)
        columns, more = [np.empty(0, dtype=np.int64 if whole else np.float64)], not self._closes(b"]")
        while more:
            comma = self._text.find(b",", min(self._at + CHUNK, end), end)
            more = comma >= 0
            piece = self._text[self._at : comma if more else end]
            columns.append(_column(b"[" + piece + b"]", name, whole))
            self._budget.take(READING_BYTES // 2 * len(columns[-1]))
            self._at = (comma if more else end) + 1
        return np.concatenate(columns)

    def end(self) -> None:
        """See that nothing follows."""
        self._skip_space()
        if self._at != len(self._text):
            raise self._broken()

    def _key(self) -> str:
        self._skip_space()
        match = _BRACKETS.match(self._text, self._at)
        if not match or not match[1] or len(match[0]) > KEY_LIMIT:
            raise self._broken()
        self._at = match.end()
        return str(json_value(match[0]))

    def _ends(self, closing: bytes, *, first: bool) -> bool:
        """Whether the table or list ends here; otherwise stands before its next item."""
        if self._closes(closing):
            return True
        if not first:
            self._expect(b",")
        return False

    def _closes(self, closing: bytes) -> bool:
        self._skip_space()
        there = self._text.startswith(closing, self._at)
        self._at += there
        return there

    def _expect(self, mark: bytes) -> None:
        if not self._closes(mark):
            raise self._broken()

    def _span(self) -> bytes:
        """Step over a value, and give its text."""
        self._skip_space()
        start = self._at
        scalar = _SCALAR.match(self._text, start)
        self._at = scalar.end() if scalar else self._end_of(start)
        return self._text[start : self._at]

    def _end_of(self, start: int) -> int:
        depth = 0
        for match in _BRACKETS.finditer(self._text, start):
            depth += _step(match, depth)
            if depth <= 0:
                return match.end()
        raise self._broken()

    def _cut(self) -> bool:
        """Go on for a chunk, to a comma of this list or to its end; say whether more follows."""
        depth, least = 0, self._at + CHUNK
        for match in _BRACKETS_AND_COMMAS.finditer(self._text, self._at):
            if depth == 0 and (match[0] == b"]" or (match[0] == b"," and match.start() >= least)):
                self._at = match.start()
                return match[0] == b","
            depth += _step(match, depth)
        raise self._broken()

    def _skip_space(self) -> None:
        match = _SPACE.match(self._text, self._at)
        self._at = match.end() if match else self._at

    def _broken(self) -> InputError:
        if self._at >= len(self._text):
            return InputError("bundle-json", problem=say("bundle-breaks-off"))
        line = self._text.count(b"\n", 0, self._at) + 1
        near = self._text[self._at : self._at + 20].decode("utf-8", "replace")
        return InputError("bundle-json", problem=say("bundle-near", line=str(line), text=shown(near)))


def _step(match: re.Match[bytes], depth: int) -> int:
    """By how much a mark changes the depth."""
    mark = match[0][:1]
    if mark == b'"' and not match[1]:
        raise InputError("bundle-json", problem=say("bundle-breaks-off"))
    if mark in (b"[", b"{"):
        if depth >= DEPTH_LIMIT:
            raise InputError("bundle-too-deep", limit=DEPTH_LIMIT)
        return 1
    return -1 if mark in (b"]", b"}") else 0


def json_value(text: bytes) -> Any:
    """Read a small JSON text as strictly as a notebook needs it.

    Raises
    ------
    InputError
        If it is no JSON in UTF-8, has a key twice in one table, or says NaN or Infinity.

    Examples
    --------
    >>> json_value(b'{"a": [1, 2.5, 100000000000000000]}')
    {'a': [1, 2.5, 1e+17]}
    """
    return _read(text, whole_number)


def _read(text: bytes, parse_int: Any) -> Any:
    try:
        return json.loads(
            text.decode("utf-8"), parse_int=parse_int, parse_constant=_refuse_constant, object_pairs_hook=_table
        )
    except InputError:
        raise
    except UnicodeDecodeError:
        raise InputError("bundle-json", problem=say("bundle-not-utf8")) from None
    except RecursionError:
        raise InputError("bundle-too-deep", limit=DEPTH_LIMIT) from None
    except ValueError as error:  # JSONDecodeError, or more digits than Python takes
        raise InputError("bundle-json", problem=shown(error, 120)) from None


def _column(text: bytes, name: str, whole: bool) -> NDArray[Any]:
    found = _read(text, int if whole else float)
    kinds = {int} if whole else {float, type(None)}
    if not found or not set(map(type, found)) <= kinds:
        raise InputError("bundle-column", column=name)
    try:
        column = np.array(found, dtype=np.int64 if whole else np.float64)
    except OverflowError:
        raise InputError("bundle-column", column=name) from None
    if not whole and np.isinf(column).any():
        raise InputError("bundle-column", column=name)
    return column


def _refuse_constant(text: str) -> None:
    raise InputError("bundle-constant", text=shown(text))


def _table(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    table = dict(pairs)
    if len(table) != len(pairs):
        seen: set[str] = set()
        twice = next(key for key, _ in pairs if key in seen or seen.add(key))  # type: ignore[func-returns-value]
        raise InputError("bundle-key-twice", key=shown(twice))
    return table
