"""Plain files in a folder."""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from lumped.errors import InputError
from lumped.notebook.files.limits import Budget
from lumped.notebook.files.opening import open_plain
from lumped.notebook.files.trees import FILES_LIMIT, IGNORED, Sink, Source, refuse_stranger
from lumped.notebook.lines import shown

__all__ = ["FolderSink", "FolderSource"]

DEPTH = 3  # folders below the top: documents / kind / document


class FolderSink(Sink):
    """A new folder to write plain files into."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    @contextmanager
    def file(self, name: str) -> Iterator[BinaryIO]:
        """Open a new file of the tree for writing."""
        path = self._folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("xb") as file:
            yield file


class FolderSource(Source):
    """A folder with plain files; links in it are never followed.

    Parameters
    ----------
    folder : Path
        The folder.
    budget : Budget
        Counts what is read.

    Raises
    ------
    InputError
        If there are links, pipes or strangers in it, or too many files.
    """

    def __init__(self, folder: Path, budget: Budget) -> None:
        self._folder = folder
        super().__init__(set(_names(folder)), budget)

    @contextmanager
    def opened(self, name: str) -> Iterator[BinaryIO]:
        """Open a file of the tree."""
        with _in_words(name), open_plain(self._folder / name, follow=False) as file:
            yield file


def _names(folder: Path) -> Iterator[str]:
    waiting, count = [""], 0
    while waiting:
        above = waiting.pop()
        with _in_words(above or str(folder)), os.scandir(folder / above) as entries:
            for entry in entries:
                count += 1
                if count > FILES_LIMIT:
                    raise InputError("plain-many", limit=FILES_LIMIT)
                name = f"{above}/{entry.name}" if above else entry.name
                if entry.is_symlink() or not (entry.is_file(follow_symlinks=False) or entry.is_dir()):
                    raise InputError("plain-special", file=shown(name, 120))
                if entry.is_dir():
                    if name.count("/") >= DEPTH:
                        refuse_stranger(name + "/")
                    waiting.append(name)
                elif entry.name not in IGNORED:
                    refuse_stranger(name)
                    yield name


@contextmanager
def _in_words(name: str) -> Iterator[None]:
    try:
        yield
    except InputError:
        raise
    except (OSError, ValueError) as error:
        problem = getattr(error, "strerror", None) or str(error)
        raise InputError("plain-unreadable", file=shown(name, 120), problem=shown(problem, 120)) from None
