"""A copy of a notebook's file while others write in it, whole or not at all."""

import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from itertools import count
from pathlib import Path

from lumped.errors import InputError, NotebookError
from lumped.notebook.place import FILE_NAME, Place
from lumped.notebook.placing import whole_file
from lumped.notebook.store import Store

__all__ = ["backup_name", "copied", "copy_file", "free_name"]

_DAMAGE = ("SQLITE_CORRUPT", "SQLITE_NOTADB")


def backup_name(file: Path, moment: datetime, word: str = "") -> Path:
    """Give the usual name of a backup: in the folder `backups` beside the notebook, by the moment.

    Examples
    --------
    >>> backup_name(Path("a/notebook.sqlite"), datetime(2026, 5, 9, 14, 30, tzinfo=UTC)).as_posix()
    'a/backups/notebook-20260509T143000Z.sqlite'
    """
    stamp = f"{moment.astimezone(UTC):%Y%m%dT%H%M%SZ}"
    return file.parent / "backups" / f"{'-'.join(filter(None, (file.stem, stamp, word)))}.sqlite"


def free_name(file: Path, moment: datetime, word: str = "") -> Path:
    """Give the usual name of a backup, or one after it if there is one of that name: nothing is overwritten."""
    words = (word if n == 1 else f"{word}-{n}".lstrip("-") for n in count(1))
    return next(name for name in (backup_name(file, moment, each) for each in words) if not name.exists())


def copy_file(store: Store, target: Path, *, make_folder: bool = False) -> None:
    """Copy a notebook's file as it is at one moment, and see that the copy is sound.

    Parameters
    ----------
    store : Store
        A notebook in a file; others may be writing in it.
    target : Path
        A file that is not there yet.
    make_folder : bool
        Whether its folder is made if need be.

    Raises
    ------
    InputError
        If there is something already, its folder is missing, or it can't be written; then no file is left.
    NotebookError
        If the notebook can't be read.
    """
    placed = whole_file(target, make_folder=make_folder)
    with placed as part, store.file() as source, closing(sqlite3.connect(part)) as copy:
        try:
            source.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, without a log beside it
            sound = copy.execute("PRAGMA quick_check").fetchone() == ("ok",)
        except sqlite3.Error as error:
            if not error.sqlite_errorname.startswith(_DAMAGE):
                raise InputError("file-unwritable", file=str(target), problem=str(error)) from error
            sound = False
        if not sound:
            raise NotebookError("notebook-damaged", place=store.place.shown)


def copied(file: Path, folder: Path) -> Path:
    """Copy a notebook's file into a folder, and leave the file as it is; give the copy.

    Raises
    ------
    NotebookError
        If it can't be read.
    """
    store = Store(Place(file=file), look_only=True)
    try:
        copy_file(store, folder / FILE_NAME)
    finally:
        store.close()
    return folder / FILE_NAME
