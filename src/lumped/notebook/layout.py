"""The layout of the tables: is this a notebook, which layout has it, and from an older one to the newest.

An older notebook is backed up before it is changed; one of a newer Lumped is refused. All steps happen in one
transaction, and only one program takes them.
"""

from datetime import UTC, datetime
from itertools import count
from pathlib import Path
from threading import Lock

from sqlalchemy import Connection, inspect, text

from lumped.errors import NotebookError
from lumped.notebook.backing_up import copy_file, free_name
from lumped.notebook.identity import new_id
from lumped.notebook.moments import as_microseconds
from lumped.notebook.place import Place
from lumped.notebook.store import APPLICATION_ID, Store
from lumped.notebook.tables import about, metadata

__all__ = ["LAYOUTS", "VERSION_TABLE", "bring_up_to_date"]

LAYOUTS = ("0001", "0002", "0003", "0004")
"""All layouts there were, the newest last; each is a step in `migrations/versions`."""
VERSION_TABLE = "layout"
_LOCK = 0x4C554D50  # PostgreSQL's advisory lock for taking the steps
_STEPPING = Lock()  # Alembic keeps the connection that it works on for the whole program, not for the thread


def bring_up_to_date(store: Store, moment: datetime, *, begin: bool = True) -> Path | str | None:
    """Give a notebook the newest layout.

    Parameters
    ----------
    store : Store
        Where it lies; it may be empty.
    moment : datetime
        Now, for the name of the backup.
    begin : bool
        Whether to begin a notebook where there is nothing yet.

    Returns
    -------
    Path, str or None
        The backup that was made of an older notebook: a file, or a schema on the server.

    Raises
    ------
    NotebookError
        If it is no notebook, there is none and none was to be begun, it was written by a newer Lumped, or it can't be
        written and is not up to date.
    """
    with store.reading() as connection:
        found = _layout_of(connection, store.place)
    if found == LAYOUTS[-1]:
        return None
    if found is None and not begin:
        raise NotebookError("notebook-not-there", place=store.place.shown)
    if store.read_only:
        raise NotebookError("notebook-read-only-old" if found else "notebook-read-only", place=store.place.shown)
    with store.writing() as connection:
        if store.on_server:
            connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": _LOCK})
        found = _layout_of(connection, store.place)  # another program may have been quicker
        if found == LAYOUTS[-1]:
            return None
        backup = None if found is None else _back_up(connection, store, found, moment)
        _take_steps(connection)
        if found is None:
            _begin(connection, store, moment)
    store.settle()  # so that the file by itself, without its log, is a notebook
    return backup


def _layout_of(connection: Connection, place: Place) -> str | None:
    """Give the layout; None if there is nothing yet."""
    names = set(inspect(connection).get_table_names())
    if place.file is not None:
        mark = connection.exec_driver_sql("PRAGMA application_id").scalar()
        if mark != APPLICATION_ID and (names or mark):
            raise NotebookError("notebook-not-one", place=place.shown)
    if VERSION_TABLE not in names:
        if names & set(metadata.tables):
            raise NotebookError("notebook-not-one", place=place.shown)
        return None
    found = connection.execute(text(f"SELECT version_num FROM {VERSION_TABLE}")).scalar()
    if not found:
        raise NotebookError("notebook-damaged", place=place.shown)
    if found not in LAYOUTS:
        raise NotebookError("notebook-newer", place=place.shown, layout=str(found), known=LAYOUTS[-1])
    return str(found)


def _take_steps(connection: Connection) -> None:
    from alembic import command
    from alembic.config import Config

    steps = Config()
    steps.set_main_option("script_location", str(Path(__file__).with_name("migrations")).replace("%", "%%"))
    steps.set_main_option("path_separator", "os")
    steps.attributes["connection"] = connection
    with _STEPPING:
        command.upgrade(steps, LAYOUTS[-1])


def _begin(connection: Connection, store: Store, moment: datetime) -> None:
    if not store.on_server:
        connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
    connection.execute(about.insert().values(id=new_id(), at=as_microseconds(moment)))


def _back_up(connection: Connection, store: Store, layout: str, moment: datetime) -> Path | str:
    """Back up to a new name: an attempt that was cut off, in the same second, may have left a backup behind."""
    if store.place.file is not None:
        target = free_name(store.place.file, moment, f"layout-{layout}")
        copy_file(store, target, make_folder=True)
        return target
    there = set(inspect(connection).get_schema_names())
    stem = f"lumped_{layout}_{moment.astimezone(UTC):%Y%m%d_%H%M%S}"
    schemas = (stem if n == 1 else f"{stem}_{n}" for n in count(1))
    schema = next(each for each in schemas if each not in there)
    connection.exec_driver_sql(f"CREATE SCHEMA {schema}")
    for name in inspect(connection).get_table_names():
        connection.exec_driver_sql(f'CREATE TABLE {schema}."{name}" AS TABLE "{name}"')
    return schema
