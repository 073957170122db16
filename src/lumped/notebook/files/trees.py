"""The fixed tree of a notebook's plain files, in a folder or an archive: which names there are, and how one is read.

Whatever else lies there is refused before anything is opened: no path leads out of the tree, no archive lies in it.
"""

import re
import unicodedata
from abc import ABC, abstractmethod
from collections.abc import Collection, Iterator
from contextlib import AbstractContextManager
from itertools import chain, count
from typing import BinaryIO, Final

from lumped.errors import InputError
from lumped.notebook.files.limits import Budget
from lumped.notebook.lines import shown
from lumped.texts import say

__all__ = ["FILES_LIMIT", "IGNORED", "Sink", "Source", "folder_name", "refuse_stranger", "slug_of"]

FILES_LIMIT = 250_000
LINE_BYTES = 100_000  # of a table; a remark of 2,000 letters takes at most 16,000
IGNORED = frozenset({".DS_Store", "Thumbs.db", "desktop.ini"})  # that file managers leave in folders

_SLUG = "[a-z0-9][a-z0-9-]{0,119}"
_LAYOUT = re.compile(
    rf"notebook\.toml|documents/{_SLUG}/{_SLUG}/(?:history\.toml|[0-9]{{4,9}}\.(?:toml|json))"
    rf"|readings/{_SLUG}/(?:series\.toml|readings\.csv|stretches\.csv)"
)


class Sink(ABC):
    """Where plain files are written."""

    @abstractmethod
    def file(self, name: str) -> AbstractContextManager[BinaryIO]:
        """Open a new file of the tree for writing."""

    def put(self, name: str, content: bytes) -> None:
        """Write a small file."""
        with self.file(name) as file:
            file.write(content)


class Source(ABC):
    """Where plain files are read from.

    Parameters
    ----------
    names : collection of str
        All files in it, each looked at with `refuse_stranger`.
    budget : Budget
        Counts what is read.
    """

    def __init__(self, names: Collection[str], budget: Budget) -> None:
        self.names: Final = frozenset(names)
        self.budget: Final = budget

    @abstractmethod
    def opened(self, name: str) -> AbstractContextManager[BinaryIO]:
        """Open a file of the tree; what goes wrong while it is open is an InputError."""

    def whole(self, name: str, limit: int) -> bytes:
        """Read a small file."""
        self._refuse_missing(name)
        with self.opened(name) as file:
            content = file.read(limit + 1)
        self.budget.unpack(len(content), name)
        if len(content) > limit:
            raise InputError("plain-toml-heavy", file=shown(name, 120))
        return content

    def lines(self, name: str) -> Iterator[str]:
        """Read a table line by line."""
        self._refuse_missing(name)
        with self.opened(name) as file:
            for number in count(1):
                line = file.readline(LINE_BYTES)
                if not line:
                    return
                self.budget.unpack(len(line), name)
                yield _decoded(line, name, number)

    def _refuse_missing(self, name: str) -> None:
        if name not in self.names:
            raise InputError("plain-missing", file=shown(name, 120))


def _decoded(line: bytes, name: str, number: int) -> str:
    if len(line) == LINE_BYTES:
        raise InputError("plain-csv", file=shown(name, 120), line=str(number), problem=say("plain-csv-long"))
    try:
        return line.decode()
    except UnicodeDecodeError:
        problem = say("bundle-not-utf8")
        raise InputError("plain-csv", file=shown(name, 120), line=str(number), problem=problem) from None


def refuse_stranger(name: str) -> None:
    """See that a name stands in the fixed tree.

    Raises
    ------
    InputError
        If it does not: another name, a path that leads elsewhere.

    Examples
    --------
    >>> refuse_stranger("documents/recipe/slipway-dough-0a1b2c3d/0001.toml")
    >>> refuse_stranger("../notebook.toml")  # doctest: +ELLIPSIS
    Traceback (most recent call last):
    lumped.errors.InputError: “../notebook.toml” does not belong to a notebook's plain files. Take it out...
    """
    if not _LAYOUT.fullmatch(name):
        raise InputError("plain-stranger", file=shown(name, 120))


def folder_name(title: str, id: str, taken: set[str]) -> str:
    """Name a folder so that a person finds it: the title in plain letters, and the end of the id.

    Examples
    --------
    >>> folder_name("Pâte à sel, No. 3", "01890a5d-ac96-774b-bcce-b302099a8057", set())
    'pate-a-sel-no-3-099a8057'
    """
    slug = slug_of(title)
    names = chain((f"{slug}-{id[-8:]}", f"{slug}-{id}"), (f"{slug}-{id}-{k}" for k in count(2)))
    name = next(each for each in names if each not in taken)
    taken.add(name)
    return name


def slug_of(text: str) -> str:
    """Give a text in small plain letters, digits and hyphens; “untitled” if nothing is left.

    Examples
    --------
    >>> slug_of("Field note"), slug_of("日本")
    ('field-note', 'untitled')
    """
    plain = unicodedata.normalize("NFKD", text[:200]).encode("ascii", "ignore").decode().lower()
    return re.sub("[^a-z0-9]+", "-", plain).strip("-")[:40].strip("-") or "untitled"
