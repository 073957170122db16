"""Opening a file that somebody gave: only a plain file, never a link inside a folder, a pipe or a device."""

import os
import stat
from pathlib import Path
from typing import BinaryIO

from lumped.errors import InputError
from lumped.notebook.files.limits import Budget
from lumped.notebook.lines import shown

__all__ = ["bytes_of", "is_folder", "open_plain"]


def open_plain(path: Path, *, follow: bool = True) -> BinaryIO:
    """Open a plain file for reading.

    Parameters
    ----------
    path : Path
        The file.
    follow : bool
        Whether a link is followed: yes for what a person named, no for what was found in a folder.

    Raises
    ------
    InputError
        If it is not there, no plain file, or can't be read.
    """
    flags = os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)
    try:
        handle = os.open(path, flags | (0 if follow else getattr(os, "O_NOFOLLOW", 0)))
    except FileNotFoundError:
        raise InputError("document-missing", file=shown(path, 200)) from None
    except (OSError, ValueError) as error:
        problem = getattr(error, "strerror", None) or str(error)
        raise InputError("plain-unreadable", file=shown(path, 200), problem=shown(problem, 120)) from None
    if not stat.S_ISREG(os.fstat(handle).st_mode):
        os.close(handle)
        raise InputError("plain-special", file=shown(path, 200))
    return os.fdopen(handle, "rb")


def bytes_of(path: Path, budget: Budget) -> bytes:
    """Read a whole file that a person named, if the budget allows."""
    with open_plain(path) as file:
        budget.take(os.fstat(file.fileno()).st_size)
        try:
            return file.read(budget.memory)
        except OSError as error:
            raise InputError("plain-unreadable", file=shown(path, 200), problem=shown(error.strerror, 120)) from None


def is_folder(path: Path) -> bool:
    """Tell whether there is such a folder; a name that can't be one is none.

    Examples
    --------
    >>> is_folder(Path()), is_folder(Path("no" + chr(0)))
    (True, False)
    """
    try:
        return path.is_dir()
    except (OSError, ValueError):
        return False
