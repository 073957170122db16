"""A copy of a notebook's file while others write in it, whole or not at all."""

import os
import sqlite3
from contextlib import closing, suppress
from datetime import UTC, datetime
from pathlib import Path

from lumped.errors import InputError, NotebookError
from lumped.notebook.place import Place
from lumped.notebook.troubles import in_words

__all__ = ["backup_name", "copy_file", "finished", "settle_name"]


def backup_name(file: Path, moment: datetime, word: str = "") -> Path:
    """Give the usual name of a backup: in the folder `backups` beside the notebook, by the moment.

    Examples
    --------
    >>> backup_name(Path("a/notebook.sqlite"), datetime(2026, 5, 9, 14, 30, tzinfo=UTC)).as_posix()
    'a/backups/notebook-20260509T143000Z.sqlite'
    """
    stamp = f"{moment.astimezone(UTC):%Y%m%dT%H%M%SZ}"
    return file.parent / "backups" / f"{'-'.join(filter(None, (file.stem, stamp, word)))}.sqlite"


def copy_file(place: Place, target: Path) -> None:
    """Copy a notebook's file as it is at one moment, and see that the copy is sound.

    Parameters
    ----------
    place : Place
        A notebook in a file; others may be writing in it.
    target : Path
        A file that is not there yet.

    Raises
    ------
    InputError
        If there is something already.
    NotebookError
        If it can't be read or written; then no file is left.
    """
    part = settle_name(target)
    try:
        with (
            in_words(place),
            closing(sqlite3.connect(f"{Path(str(place.file)).absolute().as_uri()}?mode=ro", uri=True)) as source,
            closing(sqlite3.connect(part)) as copy,
        ):
            source.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, without a log beside it
            if copy.execute("PRAGMA quick_check").fetchone() != ("ok",):
                raise NotebookError("notebook-damaged", place=place.shown)
        finished(part, target)
    except BaseException:
        with suppress(OSError):
            part.unlink()
        raise


def settle_name(target: Path) -> Path:
    """Make the folder of a new file, and give the name under which it grows.

    Raises
    ------
    InputError
        If there is something of that name already, or its folder can't be made.
    """
    if target.exists():
        raise InputError("file-exists", file=str(target))
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise InputError("file-unwritable", file=str(target), problem=error.strerror or str(error)) from None
    part = target.with_name(target.name + ".part")
    with suppress(OSError):
        part.unlink()
    return part


def finished(part: Path, target: Path) -> None:
    """Give a file its name once all of it is on the disk."""
    _sync(part)
    part.replace(target)
    _sync(target.parent)


def _sync(path: Path) -> None:
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
