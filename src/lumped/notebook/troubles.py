"""What goes wrong below the notebook, in words: a busy file, a full disk, a folder that is gone, a lost server."""

import os
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from sqlalchemy.exc import DBAPIError, SQLAlchemyError
from sqlalchemy.exc import TimeoutError as NoConnection

from lumped.errors import NotebookError
from lumped.notebook.place import Place

__all__ = ["in_words"]


@contextmanager
def in_words(place: Place) -> Iterator[None]:
    """Turn what a database or a disk says into a sentence about the notebook at `place`."""
    try:
        yield
    except DBAPIError as error:
        cause = error.orig
        raise (_of_file(cause, place) if isinstance(cause, sqlite3.Error) else _of_server(cause, place)) from error
    except (NoConnection, SQLAlchemyError) as error:
        raise NotebookError("notebook-trouble", place=place.shown, problem=_first_line(error)) from error
    except sqlite3.Error as error:
        raise _of_file(error, place) from error


_BY_NAME = (
    # beginning of SQLite's name of an error, and the sentence
    ("SQLITE_BUSY", "notebook-busy"),
    ("SQLITE_LOCKED", "notebook-busy"),
    ("SQLITE_PROTOCOL", "notebook-busy"),
    ("SQLITE_READONLY", "notebook-read-only"),
    ("SQLITE_PERM", "notebook-read-only"),
    ("SQLITE_FULL", "notebook-full"),
    ("SQLITE_CORRUPT", "notebook-damaged"),
    ("SQLITE_NOTADB", "notebook-not-one"),
)


def _of_file(error: sqlite3.Error, place: Place) -> NotebookError:
    name = getattr(error, "sqlite_errorname", None) or ""
    if place.file is not None and not place.file.exists():
        return NotebookError("notebook-gone", place=place.shown)
    for beginning, sentence in _BY_NAME:
        if name.startswith(beginning):
            return NotebookError(sentence, place=place.shown)
    if name.startswith(("SQLITE_IOERR", "SQLITE_CANTOPEN")) and place.file is not None:
        return NotebookError(_of_disk(place.file, name), place=place.shown, problem=_first_line(error))
    return NotebookError("notebook-trouble", place=place.shown, problem=_first_line(error))


_ROOM = 65_536  # bytes: the least that SQLite asks for at once, for the index of its log


def _of_disk(file: Path, name: str) -> str:
    """Find out why a file can't be opened, read or written; SQLite does not tell."""
    with suppress(OSError):
        if file.is_dir():
            return "notebook-not-one"
        if shutil.disk_usage(file.parent).free < _ROOM:
            return "notebook-full"
        if not os.access(file, os.R_OK):
            return "notebook-closed"
    return "notebook-disk" if name.startswith("SQLITE_IOERR") else "notebook-trouble"


_BY_STATE = (
    # beginning of PostgreSQL's SQLSTATE (its Appendix A), and the sentence
    ("25006", "notebook-no-rights"),  # a server that only repeats what another one writes
    ("42501", "notebook-no-rights"),
    ("53100", "notebook-full"),
    ("55P03", "notebook-busy"),
    ("40", "notebook-busy"),
    ("53300", "notebook-busy"),
    ("28", "notebook-no-entry"),
    ("3D000", "notebook-no-database"),
)


def _of_server(error: BaseException | None, place: Place) -> NotebookError:
    state = getattr(error, "sqlstate", None)
    if state is None:  # the server was not reached, or went away
        text = str(error)
        found = (sentence for sentence, words in _BY_WORDS if any(word in text for word in words))
        return NotebookError(next(found, "notebook-unreachable"), place=place.shown)
    for beginning, sentence in _BY_STATE:
        if state.startswith(beginning):
            return NotebookError(sentence, place=place.shown)
    if state.startswith(("08", "57")):
        return NotebookError("notebook-unreachable", place=place.shown)
    return NotebookError("notebook-trouble", place=place.shown, problem=_first_line(error))


_BY_WORDS = (
    # what the server says before it lets anybody in; it gives no SQLSTATE then
    ("notebook-no-entry", ("password", "authentication", "pg_hba.conf", "role ")),
    ("notebook-no-database", ("does not exist",)),
    ("notebook-busy", ("too many clients", "remaining connection slots")),
)


def _first_line(error: BaseException | None) -> str:
    return (str(error).strip().splitlines() or ["?"])[0][:200]
