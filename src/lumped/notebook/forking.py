"""A program that forks while it has a notebook open.

A connection must not be used on both sides of a fork: SQLite and a server's driver take the two programs for one, and
what the second is acknowledged can go into a log that the first has removed. So connections that rest are closed just
before a fork, and each side opens its own. One that is in use just then, by another thread, can't be closed: then the
new program is told that it can't use this notebook.
"""

import os
from weakref import WeakKeyDictionary

from sqlalchemy import Engine, QueuePool

from lumped.errors import NotebookError
from lumped.notebook.place import Place

__all__ = ["refuse_inherited", "watch_for_forks"]

_FileId = tuple[int, int] | None

_open: WeakKeyDictionary[Engine, _FileId] = WeakKeyDictionary()
_in_use: list[tuple[Engine, _FileId]] = []
_inherited: list[tuple[Engine, _FileId]] = []


def watch_for_forks(engine: Engine, place: Place, file: _FileId) -> None:
    """See that no program that is forked from this one shares a connection of `engine`."""
    refuse_inherited(engine, place, file)
    _open[engine] = file


def refuse_inherited(engine: Engine, place: Place, file: _FileId) -> None:
    """See that no connection to this place was in use when this program was forked.

    Raises
    ------
    NotebookError
        If one was, and it is the same engine, or another one to the same file.
    """
    if any(each is engine or (id is not None and id == file) for each, id in _inherited):
        raise NotebookError("notebook-forked", place=place.shown)


def _before() -> None:
    _in_use.clear()
    for engine, file in list(_open.items()):
        if isinstance(engine.pool, QueuePool) and engine.pool.checkedout():
            _in_use.append((engine, file))
        else:
            engine.dispose()


def _in_parent() -> None:
    _in_use.clear()


def _in_child() -> None:
    _inherited.extend(_in_use)
    _in_use.clear()


if hasattr(os, "register_at_fork"):
    os.register_at_fork(before=_before, after_in_parent=_in_parent, after_in_child=_in_child)
