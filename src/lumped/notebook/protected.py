"""A notebook's file that can be read and not written: on a write-protected disk, or somebody else's.

SQLite wants to write even to read: beside the file it keeps a log and an index of the log. Where it can't, there are
three cases. No log: the file is complete, and is read as something that does not change. Log and index: others have it
open, or a program was killed; both are read where they are. A log without its index: file and log are copied to a
temporary folder and read there, for the newest commits are in the log alone.
"""

import shutil
import sqlite3
from pathlib import Path
from tempfile import TemporaryDirectory
from urllib.parse import quote

from lumped.notebook.place import Place

__all__ = ["ProtectedFile", "file_uri", "log_of"]


def file_uri(path: Path, mode: str) -> str:
    """Give the address of a file as SQLite takes it.

    Examples
    --------
    >>> file_uri(Path("/quay/a b?.sqlite"), "mode=ro")
    'file:/quay/a%20b%3F.sqlite?mode=ro'
    """
    return f"file:{quote(path.absolute().as_posix())}?{mode}"


def log_of(path: Path) -> Path:
    """Give the write-ahead log of a file."""
    return path.with_name(path.name + "-wal")


class ProtectedFile:
    """Opens a file for reading, the way that fits what lies beside it now.

    Parameters
    ----------
    place : Place
        The file.
    patience : float
        How long to wait for another program. [s]
    """

    def __init__(self, place: Place, *, patience: float) -> None:
        assert place.file is not None
        self._file, self._patience = place.file, patience
        self._copy: TemporaryDirectory[str] | None = None
        self._copied_state: object = None

    def connect(self) -> sqlite3.Connection:
        """Open it once more, for one transaction."""
        if self.still() is not None:
            return self._open(self._file, "immutable=1")
        if _index_of(self._file).exists():
            return self._open(self._file, "mode=ro")
        return self._open(self._copied(), "mode=rw")

    def still(self) -> object:
        """Give what changes as soon as somebody writes; None if there is a log, which tells it by itself."""
        log = log_of(self._file)
        if log.exists() and log.stat().st_size:
            return None
        return _state(self._file)

    def close(self) -> None:
        """Remove the copy, if one was made."""
        if self._copy is not None:
            self._copy.cleanup()

    def _open(self, path: Path, mode: str) -> sqlite3.Connection:
        return sqlite3.connect(
            file_uri(path, mode), uri=True, timeout=self._patience, isolation_level=None, check_same_thread=False
        )

    def _copied(self) -> Path:
        """Copy file and log, anew if they have changed."""
        log = log_of(self._file)
        now = (_state(self._file), _state(log))
        if self._copy is None or self._copied_state != now:
            self.close()
            self._copy, self._copied_state = TemporaryDirectory(prefix="lumped-"), now
            for path in (self._file, log):
                shutil.copyfile(path, Path(self._copy.name) / path.name)
        return Path(self._copy.name) / self._file.name


def _index_of(path: Path) -> Path:
    return path.with_name(path.name + "-shm")


def _state(path: Path) -> tuple[int, int]:
    found = path.stat()
    return found.st_mtime_ns, found.st_size
