"""The notebook as the app opens it, where it lies, and how all of it goes out and comes in.

A sculpture and a batch name recipes, a recipe names ingredients: `saving` puts them in, `gathering` gives them back.
"""

import re
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path
from tempfile import TemporaryDirectory

from lumped.app.settings import Settings, load_settings
from lumped.errors import InputError, NotebookError
from lumped.notebook import Kind, Notebook, Place, Taken
from lumped.notebook import open_notebook as opened
from lumped.notebook.backing_up import copied
from lumped.notebook.store import PATIENCE

__all__ = ["bring_in", "export", "kinds", "open_notebook", "place_of"]


def kinds() -> tuple[Kind, ...]:
    """Give the kinds of documents that the rooms register."""
    from lumped.dough.kind import BATCH, RECIPE
    from lumped.pantry.kind import INGREDIENT
    from lumped.sculpt.kind import SCULPTURE
    from lumped.verdict.outcomes import OUTCOME

    return (INGREDIENT, RECIPE, BATCH, SCULPTURE, OUTCOME)


def open_notebook(
    place: str | Path | None = None,
    *,
    settings: Settings | None = None,
    begin: bool = True,
    patience: float = PATIENCE,
) -> Notebook:
    """Open the notebook that the settings name, or another.

    Parameters
    ----------
    place : str or Path, optional
        A file, a folder, or a PostgreSQL address.
    settings : Settings, optional
        The usual ones if left out.
    begin : bool
        Whether to begin one if there is none.
    patience : float
        How long to wait for another program that is writing. [s]

    Returns
    -------
    Notebook

    Raises
    ------
    NotebookError
        If it can't be opened, or there is none and none was to be begun.

    Examples
    --------
    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder, open_notebook(folder) as notebook:
    ...     notebook.entries()
    ()
    """
    said = settings or load_settings()
    return opened(place or said.notebook or None, kinds=kinds(), who=said.who, begin=begin, patience=patience)


def searched_for(words: Sequence[str], settings: Settings | None) -> Notebook:
    """Open the notebook in which something is looked for that is no file.

    Parameters
    ----------
    words : sequence of str
        What is looked for: titles, perhaps meant as files.
    settings : Settings, optional
        The usual ones if left out.

    Raises
    ------
    NotebookError
        If there is no notebook either: the sentence names what was looked for.
    """
    try:
        return open_notebook(settings=settings, begin=False)
    except NotebookError as error:
        if error.code != "notebook-not-there" or not words:
            raise
        raise NotebookError("nothing-called", names=" · ".join(words), place=error.data["place"]) from None


def place_of(settings: Settings) -> Place:
    """Give the place of the notebook that the settings name."""
    return Place.read(settings.notebook or None)


def export(notebook: Notebook, path: Path) -> None:
    """Write everything in a notebook out, as it is at one moment.

    Parameters
    ----------
    notebook : Notebook
        What to write.
    path : Path
        Something that is not there yet: a folder of plain files, one archive of them (.zip), or one bundle (.json).

    Raises
    ------
    InputError
        If there is something of that name, or it can't be written.
    """
    from lumped.notebook.files import write_contents

    if re.fullmatch(r"\.[A-Za-z]{1,6}", path.suffix) and path.suffix.lower() not in (".zip", ".json"):
        raise InputError("export-ending", file=str(path), ending=path.suffix)
    write_contents(notebook.contents(), path)


def bring_in(notebook: Notebook, path: Path) -> Taken:
    """Take in what another notebook was exported to; what is here already stays as it is.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    path : Path
        A folder of plain files, an archive of them (.zip), a bundle (.json), or another notebook's file.

    Raises
    ------
    InputError
        If it is no such thing, was changed, is hostile, or a document has gone on differently here; nothing is taken
        in then.
    """
    from lumped.notebook.files import read_contents

    if _is_database(path):
        with TemporaryDirectory(prefix="lumped-") as folder:  # theirs stays as it is, even if it is an older one
            with opened(copied(path, Path(folder)), begin=False) as other:
                contents = other.contents()
            return notebook.take_in(contents)
    return notebook.take_in(read_contents(path))


def _is_database(path: Path) -> bool:
    """Whether a file begins as all SQLite files do."""
    with suppress(OSError, ValueError):
        if path.is_file():
            with path.open("rb") as file:
                return file.read(16) == b"SQLite format 3\0"
    return False
