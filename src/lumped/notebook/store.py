"""The store below a notebook: one transaction at a time, whole or not at all, on a file or on a server.

On a file every commit is on the disk before it is acknowledged (write-ahead log, `synchronous=FULL`), and no
acknowledgement is given when the file is no longer where it was opened: a program may write for days into a file that
somebody has removed.
"""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import quote

from sqlalchemy import Connection, Engine, QueuePool, create_engine, event

from lumped.errors import NotebookError
from lumped.notebook.place import Place
from lumped.notebook.troubles import in_words

__all__ = ["APPLICATION_ID", "Store"]

APPLICATION_ID = 0x4C554D50  # "LUMP" in the head of an SQLite file, so that no other program's file is taken for ours
PATIENCE = 20.0  # s to wait for another program that writes


class Store:
    """A place that can be read and written.

    Parameters
    ----------
    place : Place
        Where it lies; the file is there already.
    patience : float
        How long to wait for another program that is writing. [s]
    """

    def __init__(self, place: Place, *, patience: float = PATIENCE) -> None:
        self.place = place
        self.read_only = place.file is not None and not _can_write(place.file)
        self._file_id = _file_id(place.file) if place.file is not None else None
        self._engine = (
            _file_engine(place.file, patience, self.read_only) if place.file else _server_engine(place, patience)
        )

    @property
    def on_server(self) -> bool:
        """Whether it is a database server's."""
        return self.place.file is None

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """Open a transaction that writes; when the block ends without an error, all of it is on the disk.

        Raises
        ------
        NotebookError
            If it can't be written; then nothing of it is.
        """
        if self.read_only:
            raise NotebookError("notebook-read-only", place=self.place.shown)
        self._see_it_is_there()
        with (
            in_words(self.place),
            self._engine.connect().execution_options(lumped_writes=True) as connection,
            connection.begin(),
        ):
            yield connection
        self._see_it_is_there()

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Open a transaction that reads: it sees one moment of the notebook, whoever writes meanwhile.

        Raises
        ------
        NotebookError
            If it can't be read.
        """
        self._see_it_is_there()
        with in_words(self.place), self._engine.connect() as connection:
            if self.on_server:
                connection.execution_options(isolation_level="REPEATABLE READ")
            with connection.begin():
                yield connection

    def close(self) -> None:
        """Let go of the file or the server."""
        self._engine.dispose()

    def _see_it_is_there(self) -> None:
        if self.place.file is not None and _file_id(self.place.file) != self._file_id:
            raise NotebookError("notebook-gone", place=self.place.shown)


def _file_engine(path: Path, patience: float, read_only: bool) -> Engine:
    def connect() -> sqlite3.Connection:
        connection = sqlite3.connect(
            _uri(path, read_only), uri=True, timeout=patience, isolation_level=None, check_same_thread=False
        )
        if not read_only:
            connection.execute("PRAGMA journal_mode = WAL")
            connection.execute("PRAGMA synchronous = FULL")
        connection.execute("PRAGMA foreign_keys = ON")
        return connection

    engine = create_engine("sqlite://", creator=connect, poolclass=QueuePool)

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        writes = connection.get_execution_options().get("lumped_writes", False)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")

    return engine


def _uri(path: Path, read_only: bool) -> str:
    """The file must be there: a notebook whose folder is gone is not begun anew in silence."""
    log = path.with_name(path.name + "-wal")
    still = read_only and not (log.exists() and log.stat().st_size)
    mode = "immutable=1" if still else "mode=ro" if read_only else "mode=rw"
    return f"file:{quote(str(path.absolute()))}?{mode}"


def _server_engine(place: Place, patience: float) -> Engine:
    from sqlalchemy.engine import make_url

    options = f"-c lock_timeout={int(1000 * patience)} -c timezone=UTC"
    return create_engine(
        make_url(str(place.address)), pool_pre_ping=True, connect_args={"connect_timeout": 10, "options": options}
    )


def _can_write(path: Path) -> bool:
    """Whether file and folder can be written; the log lies beside the file."""
    read_only_disk = hasattr(os, "statvfs") and bool(os.statvfs(path).f_flag & os.ST_RDONLY)
    return os.access(path, os.W_OK) and os.access(path.parent, os.W_OK) and not read_only_disk


def _file_id(path: Path) -> tuple[int, int] | None:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino
