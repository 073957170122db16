"""The notebook as the app uses it: sculptures with their recipes go in and come back, and what really happened."""

import re
import tomllib
from contextlib import suppress
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import tomli_w

from lumped.app.given import Given, along, plain_name, references
from lumped.app.settings import Settings, load_settings
from lumped.documents import read_document
from lumped.errors import InputError
from lumped.notebook import Body, Kind, Notebook, Place, Reference, Revision, Taken
from lumped.notebook import open_notebook as opened
from lumped.notebook.backing_up import copied
from lumped.notebook.store import PATIENCE
from lumped.notebook.words import folded

__all__ = [
    "bring_in",
    "export",
    "file_text",
    "given_from",
    "given_of",
    "kind_of",
    "kinds",
    "open_notebook",
    "place_of",
    "save_file",
    "save_given",
    "save_recipe",
]


def kinds() -> tuple[Kind, ...]:
    """Give the kinds of documents that the rooms register."""
    from lumped.dough.kind import RECIPE
    from lumped.sculpt.kind import SCULPTURE
    from lumped.verdict.outcomes import OUTCOME

    return (RECIPE, SCULPTURE, OUTCOME)


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


def given_of(path: Path) -> Given:
    """Read a sculpture file with the recipe files beside it, as texts.

    Raises
    ------
    SculptureError, InputError
        If a file can't be read.
    """
    read_document(path, "sculpture")
    text = path.read_text("utf-8-sig")
    recipes = {}
    for name in references(text):
        for place in (path.parent / name, path.parent / plain_name(name)):
            if place.is_file():
                read_document(place, "recipe")
                recipes[name] = place.read_text("utf-8-sig")
                break
    return Given(name=path.name, text=text, recipes=recipes)


def save_file(
    notebook: Notebook,
    path: Path,
    *,
    document: str | None = None,
    new: bool = False,
    note: str = "",
    derived_from: Reference | None = None,
) -> Revision:
    """Save a sculpture or recipe file in the notebook.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    path : Path
        The file; recipes that a sculpture names lie beside it, or come with Lumped.
    document : str, optional
        Id of the document that goes on with it; the one of that kind and title if left out, else a new one.
    new : bool
        Begin a new document even if there is one of that title.
    note : str
        Why.
    derived_from : Reference, optional
        What it was made from.

    Raises
    ------
    InputError
        If the file can't be read, or is of a kind that has no place here.
    """
    kind = kind_of(path)
    given = given_of(path) if kind == "sculpture" else Given(name=path.name, text=path.read_text("utf-8-sig"))
    if document is None and not new:
        document = _titled(notebook, kind, _body_of(given.text))
    save = save_given if kind == "sculpture" else save_recipe
    return save(notebook, given, document=document, note=note, derived_from=derived_from)


def kind_of(path: Path) -> str:
    """Tell whether a file is a recipe or a sculpture.

    Raises
    ------
    InputError
        If it can't be read; one that is neither is refused as the sculpture that it fails to be.
    """
    try:
        kind = str(tomllib.loads(path.read_text("utf-8-sig")).get("kind"))
    except (OSError, ValueError, RecursionError):
        kind = ""
    return str(read_document(path, "recipe" if kind == "recipe" else "sculpture")["kind"])


def save_given(
    notebook: Notebook,
    given: Given,
    *,
    document: str | None = None,
    title: str = "",
    note: str = "",
    derived_from: Reference | None = None,
    after: int | None = None,
) -> Revision:
    """Save a sculpture and the recipes that it names; its links tell which revision of each.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    given : Given
        The sculpture's text, with its recipes'.
    document : str, optional
        Id of the document that goes on; a new one begins if left out.
    title : str
        Another title than the one in the text.
    note : str
        Why.
    derived_from : Reference, optional
        What it was made from.
    after : int, optional
        Save only if this is still the number of the newest revision.

    Raises
    ------
    InputError
        If it can't be read, a recipe did not come along, or somebody has saved a newer revision.
    """
    body = _body_of(given.text) | ({"title": title} if title else {})
    links = {}
    for name in references(given.text):
        text = along(given, name)
        if text is None:
            raise InputError("recipe-not-along", file=given.name, recipe=name)
        links[name] = _recipe_as_it_is(notebook, Given(name=plain_name(name), text=text)).reference
    return notebook.save(
        "sculpture", body, document=document, note=note, links=links, derived_from=derived_from, after=after
    )


def save_recipe(
    notebook: Notebook,
    given: Given,
    *,
    document: str | None = None,
    title: str = "",
    note: str = "",
    derived_from: Reference | None = None,
    after: int | None = None,
) -> Revision:
    """Save a recipe; the arguments are those of `save_given`."""
    body = _body_of(given.text) | ({"title": title} if title else {})
    return notebook.save("recipe", body, document=document, note=note, derived_from=derived_from, after=after)


def _recipe_as_it_is(notebook: Notebook, given: Given) -> Revision:
    """Give the revision that says just this; if there is none, save it as the next of that title."""
    body = _body_of(given.text)
    found = notebook.holding("recipe", body)
    return found or save_recipe(notebook, given, document=_titled(notebook, "recipe", body))


def _titled(notebook: Notebook, kind: str, body: Body) -> str | None:
    """Give the id of the one document of a kind and title; None if there is none, or more than one."""
    title = str(body.get("title", "")).strip()  # as the notebook keeps it
    found = [each.document for each in notebook.entries(kind=kind) if folded(each.title) == folded(title)]
    return found[0] if len(found) == 1 else None


def _body_of(text: str) -> dict[str, Any]:
    document = tomllib.loads(text)
    return {key: each for key, each in document.items() if key not in ("kind", "schema")}


def file_text(notebook: Notebook, revision: Revision) -> str:
    """Give a document as the file that a person could have written (TOML), in the newest form of its kind.

    Raises
    ------
    InputError
        If the revision is a removal.
    """
    body = {key: each for key, each in notebook.body(revision).items() if key not in ("kind", "schema")}
    document = {"kind": revision.kind, "schema": notebook.form(revision), **body}
    text = tomli_w.dumps(document, multiline_strings=True)
    return text if tomllib.loads(text) == document else tomli_w.dumps(document)  # some line ends need their escapes


def given_from(notebook: Notebook, revision: Revision) -> Given:
    """Give a sculpture of the notebook as the pages ask about it, with the very recipes that it was saved with."""
    recipes = {
        name: file_text(notebook, notebook.referred(target))
        for name, target in revision.links.items()
        if name in references(file_text(notebook, revision))
    }
    return Given(name=f"{plain_name(revision.title)}.toml", text=file_text(notebook, revision), recipes=recipes)
