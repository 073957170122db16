"""The notebook as the app uses it: files go in with what they name, and come back.

A sculpture and a batch name recipes, a recipe names ingredients; for each a link tells the very revision that is meant.
"""

import re
import tomllib
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import tomli_w

from lumped.app.given import Given, along, names_file, plain_name, references
from lumped.app.own import batch_of, foreign_words, left_out_words, recipe_of, sound_labels, usable_labels
from lumped.app.settings import Settings, load_settings
from lumped.documents import read_document, text_of
from lumped.errors import InputError
from lumped.notebook import DERIVED, Body, Kind, Notebook, Place, Reference, Revision, Taken
from lumped.notebook import open_notebook as opened
from lumped.notebook.backing_up import copied
from lumped.notebook.store import PATIENCE
from lumped.texts.folding import folded, plain_word

__all__ = [
    "batches_of",
    "bring_in",
    "export",
    "file_text",
    "gathered",
    "given_from",
    "given_of",
    "kind_of",
    "kinds",
    "open_notebook",
    "own_labels",
    "place_of",
    "save_file",
    "save_given",
    "save_labels",
    "titled_document",
    "with_batches",
]


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
    """Read a file with the recipe files beside it that it names, as texts.

    Raises
    ------
    SculptureError, InputError
        If a file can't be read.
    """
    read_document(path, kind_of(path))
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
    """Save a sculpture, recipe, batch or ingredient file in the notebook.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    path : Path
        The file; recipes that it names lie beside it, or come with Lumped. Ingredients that the handbook lacks are
        in the notebook already.
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
    given = given_of(path)
    if document is None and not new:
        document = titled_document(notebook, given)
    return save_given(notebook, given, document=document, note=note, derived_from=derived_from)


def titled_document(notebook: Notebook, given: Given) -> str | None:
    """Give the id of the one document of a file's kind and title; None if there is none, or more than one."""
    return _titled(notebook, _kind_in(given.text), _body_of(given.text))


def save_labels(notebook: Notebook, text: str, name: str, *, note: str = "") -> tuple[Revision, ...]:
    """Save all ingredients of a CSV table; each goes on with the document of its title, and one that is there stays.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    text, name : str
        The table, and its file for messages.
    note : str
        Why.

    Raises
    ------
    InputError
        If one of them can't be read; then none is saved.
    """
    from lumped.pantry.label_table import labels_in

    documents = [document for document, _ in labels_in(text, name)]
    return tuple(
        _as_it_is(notebook, Given(name=f"{plain_name(each['title'])}.toml", text=tomli_w.dumps(each)), note)
        for each in documents
    )


def kind_of(path: Path) -> str:
    """Tell whether a file is a sculpture, recipe, batch or ingredient.

    Raises
    ------
    InputError
        If it can't be read; one that is none of them is refused as the sculpture that it fails to be.
    """
    try:
        kind = _kind_in(path.read_text("utf-8-sig"))
    except (OSError, ValueError):
        kind = "sculpture"
    return str(read_document(path, kind)["kind"])


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
    """Save a file with what it names; its links tell which revision of each.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    given : Given
        The text, with that of recipes and ingredients that it names.
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
        If it can't be read, what it names did not come along, or somebody has saved a newer revision.
    """
    kind, body = _kind_in(given.text), _body_of(given.text) | ({"title": title} if title else {})
    links = _named_by(notebook, given, kind)
    return notebook.save(kind, body, document=document, note=note, links=links, derived_from=derived_from, after=after)


def _named_by(notebook: Notebook, given: Given, kind: str) -> dict[str, Reference]:
    """See that a file holds together with what it names; save that and give the links."""
    named = {}
    for name in references(given.text):
        text = along(given, name)
        if text is None:
            raise InputError("recipe-not-along", file=given.name, recipe=name)
        named[name] = replace(given, name=plain_name(name), text=text, recipes={})
    if kind in ("recipe", "batch"):
        labels = _labels_for(notebook, given)
        _see(notebook, given, labels, kind, named)
        named |= {title: Given(name=title, text=text) for title, text in labels.items()}
    return {name: _as_it_is(notebook, each).reference for name, each in named.items()}


def _see(notebook: Notebook, given: Given, labels: Mapping[str, str], kind: str, named: Mapping[str, Given]) -> None:
    """See that a recipe or batch can be, with all own ingredients that it or its recipe names."""
    if kind == "recipe":
        recipe_of(replace(given, labels=labels))
    else:
        theirs = [_labels_for(notebook, each) for each in named.values()]
        batch_of(replace(given, labels={title: text for each in (*theirs, labels) for title, text in each.items()}))


def _as_it_is(notebook: Notebook, given: Given, note: str = "") -> Revision:
    """Give the revision that says just this and means the same; if there is none, save it as the next of that title."""
    kind, body = _kind_in(given.text), _body_of(given.text)
    found = notebook.holding(kind, body)
    if found is not None and (kind != "recipe" or _means_the_same(notebook, found, given)):
        return found
    return save_given(notebook, given, document=_titled(notebook, kind, body), note=note)


def _means_the_same(notebook: Notebook, recipe: Revision, given: Given) -> bool:
    """Whether a recipe refers to just the ingredients that came along with its text."""
    there = {name: notebook.body(notebook.referred(target)) for name, target in _uses(recipe).items()}
    return all(there.get(name) == _body_of(text) for name, text in _labels_for(notebook, given).items())


def _labels_for(notebook: Notebook, given: Given) -> dict[str, str]:
    """Give the texts of own ingredients that a recipe or batch names: those that came along, or the newest."""
    words = {plain_word(each) for each in foreign_words(given.text)}
    if not words:
        return {}
    there = {**own_labels(notebook), **given.labels}
    return {title: text for title, text in there.items() if plain_word(title) in words}


def own_labels(notebook: Notebook) -> dict[str, str]:
    """Give the texts of all ingredients in the notebook by their titles; of those with one title the newest."""
    entries = reversed(notebook.entries(kind="ingredient"))
    return {each.title: file_text(notebook, notebook.revision(each.document)) for each in entries}


def with_batches(notebook: Notebook, given: Given, recipe: str) -> Given:
    """Give a recipe with all batches that were made of it, by its id, and the own ingredients that can be read."""
    labels = {**sound_labels(own_labels(notebook)), **given.labels}
    return replace(given, labels=labels, batches=batches_of(notebook, recipe))


def gathered(
    notebook: Notebook, place: str, *, batches: Sequence[str] = (), labels: Sequence[Path] = ()
) -> tuple[Given, tuple[str, ...]]:
    """Gather a recipe with what it refers to, and one of the notebook with its batches; arguments of `named.named`.

    Returns
    -------
    (Given, tuple of str)
        The recipe; which ingredients of the notebook can't be read, and are left out, in words.
    """
    recipe = _recipe_at(notebook, place)
    found = () if names_file(place) else batches_of(notebook, notebook.find(place).document)
    theirs = {str(_body_of(text)["title"]): text for each in labels for text in _label_texts(each)}
    named = [
        given_of(Path(each)) if names_file(each) else given_from(notebook, notebook.find(each)) for each in batches
    ]
    known = {*(each.key for each in found)}
    own = own_labels(notebook)
    taken = {**usable_labels(own, recipe.text), **recipe.labels, **theirs}
    teaching = (*found, *(each for each in named if each.key not in known))
    return replace(recipe, labels=taken, batches=teaching), left_out_words(own, taken)


def _recipe_at(notebook: Notebook, place: str) -> Given:
    if names_file(place):
        read_document(Path(place), "recipe")
        return given_of(Path(place))
    revision = notebook.find(place)
    if revision.kind != "recipe":
        raise InputError("document-other-kind", file=place, kind="recipe", found=revision.kind)
    return given_from(notebook, revision)


def _label_texts(path: Path) -> tuple[str, ...]:
    from lumped.pantry.label_table import labels_in

    text = text_of(path)
    if path.suffix.lower() != ".csv":
        read_document(path, "ingredient")
        return (text,)
    return tuple(tomli_w.dumps(document) for document, _ in labels_in(text, str(path)))


def batches_of(notebook: Notebook, recipe: str) -> tuple[Given, ...]:
    """Give the batches that were made of a recipe, by its id: of any of its revisions, the first made first."""
    found = [each for each in notebook.linking_to(recipe, kind="batch") if not each.removed]
    made = sorted(found, key=lambda each: (str(notebook.body(each).get("made_on", "")), each.document))
    return tuple(given_from(notebook, each) for each in made)


def _titled(notebook: Notebook, kind: str, body: Body) -> str | None:
    """Give the id of the one document of a kind and title; None if there is none, or more than one."""
    title = str(body.get("title", "")).strip()  # as the notebook keeps it
    found = [each.document for each in notebook.entries(kind=kind) if folded(each.title) == folded(title)]
    return found[0] if len(found) == 1 else None


def _kind_in(text: str) -> str:
    """Give the kind that a text says; of what is none that has files, or no TOML, the sculpture that it fails to be."""
    kind = ""
    with suppress(ValueError, RecursionError):
        kind = str(tomllib.loads(text).get("kind"))
    return kind if kind in ("recipe", "batch", "ingredient") else "sculpture"


def _body_of(text: str) -> dict[str, Any]:
    """Give the body of a text; a day, which JSON does not have, as it is written."""
    document = tomllib.loads(text)
    return {
        key: each.isoformat() if type(each) is date else each
        for key, each in document.items()
        if key not in ("kind", "schema")
    }


def file_text(notebook: Notebook, revision: Revision) -> str:
    """Give a document as the file that a person could have written (TOML), in the newest form of its kind.

    Raises
    ------
    InputError
        If the revision is a removal.
    """
    body = {key: each for key, each in notebook.body(revision).items() if key not in ("kind", "schema")}
    document = {"kind": revision.kind, "schema": notebook.form(revision), **_with_day(revision.kind, body)}
    text = tomli_w.dumps(document, multiline_strings=True)
    return text if tomllib.loads(text) == document else tomli_w.dumps(document)  # some line ends need their escapes


def _with_day(kind: str, body: Mapping[str, Any]) -> dict[str, Any]:
    """Give a batch its day back, which a body holds as it is written."""
    if kind == "batch" and "made_on" in body:
        with suppress(ValueError, TypeError):
            return {**body, "made_on": date.fromisoformat(body["made_on"])}
    return dict(body)


def given_from(notebook: Notebook, revision: Revision) -> Given:
    """Give a document as the pages ask about it, with the very recipes and ingredients that it was saved with."""
    text = file_text(notebook, revision)
    recipes: dict[str, str] = {}
    labels: dict[str, str] = {}
    for name, used in ((name, notebook.referred(target)) for name, target in _uses(revision).items()):
        if used.kind == "ingredient":
            labels[name] = file_text(notebook, used)
        elif used.kind == "recipe" and name in references(text):
            recipes[name] = file_text(notebook, used)
            labels = {**given_from(notebook, used).labels, **labels}
    return Given(name=f"{plain_name(revision.title)}.toml", text=text, recipes=recipes, labels=labels)


def _uses(revision: Revision) -> dict[str, Reference]:
    return {name: target for name, target in revision.links.items() if name != DERIVED}
