"""A backup of a notebook that lies on a server: a notebook in a file, with the same seals."""

import sqlite3
from contextlib import closing
from datetime import datetime
from pathlib import Path

from lumped.notebook.layout import bring_up_to_date
from lumped.notebook.place import Place
from lumped.notebook.placing import whole_file
from lumped.notebook.records import Contents
from lumped.notebook.store import Store
from lumped.notebook.taking import take_in

__all__ = ["copy_contents"]


def copy_contents(contents: Contents, target: Path, moment: datetime, *, make_folder: bool = False) -> None:
    """Write everything into a new notebook file, whole or not at all.

    Parameters
    ----------
    contents : Contents
        What to write.
    target : Path
        A file that is not there yet.
    moment : datetime
        When the copy is begun.
    make_folder : bool
        Whether its folder is made if need be.

    Raises
    ------
    InputError
        If there is something already, or its folder is missing.
    NotebookError
        If it can't be written; then no file is left.
    """
    with whole_file(target, make_folder=make_folder) as part:
        store = Store(Place(file=part))
        try:
            bring_up_to_date(store, moment)
            with store.writing() as connection:
                take_in(connection, contents)
        finally:
            store.close()
        with closing(sqlite3.connect(part)) as copy:
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, without a log beside it
