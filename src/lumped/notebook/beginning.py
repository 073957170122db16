"""Opening a notebook, and beginning one where there is none."""

import getpass
from collections.abc import Callable, Iterable
from datetime import datetime
from pathlib import Path

from lumped.errors import NotebookError
from lumped.notebook.kinds import Kind, Kinds
from lumped.notebook.layout import bring_up_to_date
from lumped.notebook.moments import now
from lumped.notebook.notebook import Notebook
from lumped.notebook.place import Place, usual_place
from lumped.notebook.store import PATIENCE, Store

__all__ = ["open_notebook"]


def open_notebook(
    place: str | Path | None = None,
    *,
    kinds: Iterable[Kind] = (),
    who: str = "",
    begin: bool = True,
    clock: Callable[[], datetime] = now,
    patience: float = PATIENCE,
) -> Notebook:
    """Open a notebook, and begin it if there is none.

    A notebook of an older Lumped is backed up, then brought up to date.

    Parameters
    ----------
    place : str or Path, optional
        A file, a folder, or a PostgreSQL address; the usual file if left out.
    kinds : iterable of Kind
        What the rooms register: how their documents are checked and migrated.
    who : str
        Who writes; the name of the user of this computer if left out.
    begin : bool
        Whether to begin one if there is none.
    clock : callable
        Gives the present moment.
    patience : float
        How long to wait for another program that is writing. [s]

    Returns
    -------
    Notebook

    Raises
    ------
    NotebookError
        If it can't be opened, or there is none and none was to be begun.
    InputError
        If the folder that was named for it is missing.

    Examples
    --------
    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder, open_notebook(folder) as notebook:
    ...     first = notebook.save("note", {"title": "Salt", "text": "Coarse salt takes longer."})
    ...     second = notebook.save("note", {"title": "Salt", "text": "Twice as long."}, document=first.document)
    ...     [each.number for each in notebook.history(first.document)]
    [1, 2]
    """
    where = Place.read(place)
    if where.file is not None and not _is_there(where):
        if not begin:
            raise NotebookError("notebook-not-there", place=where.shown)
        _make_file(where)
    store = Store(where, patience=patience)
    try:
        backup = bring_up_to_date(store, clock(), begin=begin)
    except BaseException:
        store.close()
        raise
    return Notebook(store, kinds=Kinds(kinds), who=who or _user(), clock=clock, backup=backup)


def _is_there(place: Place) -> bool:
    assert place.file is not None
    try:
        return place.file.exists()
    except OSError:  # its folder may not be entered
        raise NotebookError("notebook-closed", place=place.shown) from None


def _make_file(place: Place) -> None:
    """Begin an empty file; the folder of the usual one is Lumped's own and made, one that a person named is not."""
    from lumped.documents import refuse_missing_folder

    assert place.file is not None
    try:
        if place.file == usual_place():
            place.file.parent.mkdir(parents=True, exist_ok=True)
        refuse_missing_folder(place.file)
        place.file.touch()
    except OSError as error:
        raise NotebookError("notebook-no-room", place=place.shown, problem=error.strerror or str(error)) from None


def _user() -> str:
    try:
        return getpass.getuser()
    except (KeyError, OSError):
        return "somebody"
