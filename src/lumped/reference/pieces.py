"""A table's file, cut into pieces that are read one by one: of two thousand figures a lesson asks for a few hundred.

A piece is an entry, a curve or a source: what stands from its `[[…]]` to the next. Its key is seen without reading it.
"""

import re
import tomllib
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from importlib.resources.abc import Traversable
from pathlib import Path
from typing import Any, Generic, TypeVar

from lumped.errors import HandbookError

__all__ = ["Piece", "Shelf", "cut"]

_HEAD = re.compile(r"^\[\[(\w+)\]\]", re.MULTILINE)
_KEY = re.compile(r"^\[\[\w+\]\]\nkey = \"([^\"\\\n]+)\"$", re.MULTILINE)
S = TypeVar("S")
T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """One entry, curve or source of a file, as it is written there.

    Parameters
    ----------
    file : str
        Name of the file.
    kind : {"entries", "curves", "sources", ""}
        What it is; "" for what stands above the first.
    text : str
        Its lines, the head among them.
    """

    file: str
    kind: str
    text: str

    @property
    def key(self) -> str:
        """Its key, seen without reading it where that can be; "?" if it has none."""
        seen = _KEY.search(self.text)
        return seen[1] if seen else str(self.read().get("key", "?"))

    def read(self) -> dict[str, Any]:
        """Read it.

        Raises
        ------
        HandbookError
            If it is no TOML; the sentence names the file.
        """
        try:
            paper = tomllib.loads(self.text)
        except tomllib.TOMLDecodeError as problem:
            raise HandbookError("handbook-unreadable", file=self.file, why=str(problem)) from None
        found: dict[str, Any] = paper[self.kind][0] if self.kind else paper
        return found


def cut(file: Traversable | Path) -> list[Piece]:
    """Cut a file into its pieces; the first is what stands above the others.

    Parameters
    ----------
    file : path
        A TOML file in which no text has a line that begins as a head does.

    Raises
    ------
    HandbookError
        If it is no text.

    Examples
    --------
    >>> from importlib.resources import files
    >>> [each.key for each in cut(files("lumped.reference") / "data" / "ions.toml")[1:4]]
    ['hydrogen', 'sodium', 'potassium']
    """
    try:
        text = file.read_text(encoding="utf-8")
    except UnicodeDecodeError as problem:
        raise HandbookError("handbook-unreadable", file=file.name, why=str(problem)) from None
    heads = list(_HEAD.finditer(text))
    starts = [head.start() for head in heads]
    above = Piece(file=file.name, kind="", text=text[: starts[0]] if starts else text)
    ends = [*starts[1:], len(text)]
    return [above] + [
        Piece(file=file.name, kind=head[1], text=text[start:end])
        for head, start, end in zip(heads, starts, ends, strict=False)
    ]


class Shelf(Mapping[str, T], Generic[S, T]):
    """Pieces by key, each read and checked when it is first asked for.

    Parameters
    ----------
    pieces : mapping of str to Piece
        The pieces by key, in order; or whatever else `understood` understands.
    understood : callable
        Gives what a piece says, or refuses it.

    Examples
    --------
    >>> from importlib.resources import files
    >>> pieces = cut(files("lumped.reference") / "data" / "ions.toml")[1:3]
    >>> shelf = Shelf({each.key: each for each in pieces}, Piece.read)
    >>> list(shelf), shelf["sodium"]["name"]
    (['hydrogen', 'sodium'], 'Na+')
    """

    __slots__ = ("_known", "_pieces", "_understood")

    def __init__(self, pieces: Mapping[str, S], understood: Callable[[S], T]) -> None:
        self._pieces, self._understood = pieces, understood
        self._known: dict[str, T] = {}

    def __getitem__(self, key: str) -> T:
        if key not in self._known:
            self._known[key] = self._understood(self._pieces[key])
        return self._known[key]

    def __contains__(self, key: object) -> bool:
        return key in self._pieces

    def __iter__(self) -> Iterator[str]:
        return iter(self._pieces)

    def __len__(self) -> int:
        return len(self._pieces)
