"""The store below a notebook: one transaction at a time, whole or not at all, on a file or on a server.

On a file every commit is on the disk before it is acknowledged (write-ahead log, `synchronous=FULL`), and no
acknowledgement is given when the file is no longer where it was opened: a program may write for days into a file that
somebody has removed.
"""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from pathlib import Path
from time import monotonic, sleep

from sqlalchemy import Connection, Engine, NullPool, QueuePool, create_engine, event

from lumped.errors import NotebookError
from lumped.notebook.forking import refuse_inherited, watch_for_forks
from lumped.notebook.place import Place
from lumped.notebook.protected import ProtectedFile, file_uri, log_of
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
    look_only : bool
        Leave a file as it is even if it could be written.
    """

    def __init__(self, place: Place, *, patience: float = PATIENCE, look_only: bool = False) -> None:
        if place.file is not None:  # the log lies beside the file itself, and a program may change its folder
            place = replace(place, file=Path(os.path.realpath(place.file)))
        self.place = place
        self._protected: ProtectedFile | None = None
        self._file_id = None
        if place.file is None:
            self._engine = _server_engine(place, patience)
            watch_for_forks(self._engine, place, None)
            return
        _refuse_ruin(place, place.file)
        self._file_id = _file_id(place.file)
        if _can_write(place.file) and not look_only:
            self._engine = _file_engine(place.file, patience)
        else:
            self._protected = ProtectedFile(place, patience=patience)
            self._engine = _protected_engine(self._protected)
        watch_for_forks(self._engine, place, self._file_id)

    @property
    def read_only(self) -> bool:
        """Whether it can be read and not written."""
        return self._protected is not None

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
        self._see_it_is_there(written=True)

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Open a transaction that reads: it sees one moment of the notebook, whoever writes meanwhile.

        Raises
        ------
        NotebookError
            If it can't be read.
        """
        self._see_it_is_there()
        before = self._protected.still() if self._protected is not None else None
        with in_words(self.place), self._engine.connect() as connection:
            if self.on_server:
                connection.execution_options(isolation_level="REPEATABLE READ")
            with connection.begin():
                yield connection
        if before is not None and self._protected is not None and self._protected.still() != before:
            raise NotebookError("notebook-busy", place=self.place.shown)

    @contextmanager
    def file(self) -> Iterator[sqlite3.Connection]:
        """Open the file itself, to copy it; a notebook on a server has none."""
        self._see_it_is_there()
        with in_words(self.place), self._engine.connect() as connection:
            raw = connection.connection.driver_connection
            assert isinstance(raw, sqlite3.Connection)
            yield raw

    def settle(self) -> None:
        """Move what is in the log into the file, as far as nobody is in the way; on a server there is nothing to do."""
        if self.place.file is None or self.read_only:
            return
        with suppress(NotebookError), self.file() as connection:
            connection.execute("PRAGMA wal_checkpoint(PASSIVE)")

    def close(self) -> None:
        """Let go of the file or the server."""
        self._engine.dispose()
        if self._protected is not None:
            self._protected.close()

    def _see_it_is_there(self, *, written: bool = False) -> None:
        refuse_inherited(self._engine, self.place, self._file_id)
        file = self.place.file
        if file is None:
            return
        log_is_there = not written or log_of(file).exists() or not _logs_ahead(self._engine)
        if _file_id(file) != self._file_id or not log_is_there:
            raise NotebookError("notebook-gone", place=self.place.shown)


def _file_engine(path: Path, patience: float) -> Engine:
    def connect() -> sqlite3.Connection:
        # The file must be there (mode=rw): a notebook whose folder is gone is not begun anew in silence.
        connection = sqlite3.connect(
            file_uri(path, "mode=rw"), uri=True, timeout=patience, isolation_level=None, check_same_thread=False
        )
        try:
            if _is_ours(connection):
                _log_ahead(connection, patience)
            connection.execute("PRAGMA synchronous = FULL")
            connection.execute("PRAGMA fullfsync = ON")  # where an ordinary fsync does not wait for the disk (macOS)
            connection.execute("PRAGMA foreign_keys = ON")
        except BaseException:
            connection.close()
            raise
        return connection

    engine = create_engine("sqlite://", creator=connect, poolclass=QueuePool)

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        writes = connection.get_execution_options().get("lumped_writes", False)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")

    return engine


def _is_ours(connection: sqlite3.Connection) -> bool:
    """Whether it is a notebook, or nothing yet; another program's database is not turned to logging ahead."""
    (mark,) = connection.execute("PRAGMA application_id").fetchone()
    (tables,) = connection.execute("SELECT count(*) FROM sqlite_master").fetchone()
    return bool(mark == APPLICATION_ID or (not mark and not tables))


def _log_ahead(connection: sqlite3.Connection, patience: float) -> None:
    """Turn the write-ahead log on; SQLite does not wait by itself while another program does the same."""
    until = monotonic() + patience
    while True:
        try:
            connection.execute("PRAGMA journal_mode = WAL")
        except sqlite3.OperationalError as error:
            if not error.sqlite_errorname.startswith("SQLITE_BUSY") or monotonic() > until:
                raise
            sleep(0.01)
        else:
            return


def _logs_ahead(engine: Engine) -> bool:
    """Whether the write-ahead log is on; some drives can't, and then every commit goes into the file itself."""
    with engine.connect() as connection:
        return bool(connection.exec_driver_sql("PRAGMA journal_mode").scalar() == "wal")


def _protected_engine(file: ProtectedFile) -> Engine:
    engine = create_engine("sqlite://", creator=file.connect, poolclass=NullPool)

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        connection.exec_driver_sql("BEGIN")

    return engine


def _server_engine(place: Place, patience: float) -> Engine:
    from sqlalchemy.engine import make_url

    settings = {
        "lock_timeout": int(1000 * patience),
        "timezone": "UTC",
        "synchronous_commit": "on",  # acknowledged is on the server's disk, whatever its own default
        "default_transaction_isolation": "read\\ committed",
    }
    options = " ".join(f"-c {key}={value}" for key, value in settings.items())
    return create_engine(
        make_url(str(place.address)), pool_pre_ping=True, connect_args={"connect_timeout": 10, "options": options}
    )


def _refuse_ruin(place: Place, path: Path) -> None:
    """A log beside an empty file is what is left of a notebook; SQLite would begin anew and drop the log."""
    if path.is_dir():
        raise NotebookError("notebook-not-one", place=place.shown)
    in_log = _size(log_of(path))  # first: another program that just begins fills the file before the log
    if in_log and path.exists() and not _size(path):
        raise NotebookError("notebook-damaged", place=place.shown)


def _size(path: Path) -> int:
    """Give the size of a file; 0 if it can't be had."""
    try:
        return path.stat().st_size
    except OSError:
        return 0


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
