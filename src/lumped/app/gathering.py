"""What comes back from the notebook: a document as a file, with the very recipes and ingredients that it names.

A recipe brings the batches that were made of it, too.
"""

import tomllib
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import tomli_w

from lumped.app.as_files import body_of, given_of, label_files
from lumped.app.given import Given, along, file_name_of, names_file, references
from lumped.app.labels import left_out_words, sound_labels, usable_labels
from lumped.documents import read_document
from lumped.errors import InputError
from lumped.notebook import DERIVED, Notebook, Reference, Revision

__all__ = [
    "batches_of", "file_text", "gathered", "given_from", "named_batch", "own_labels", "recipe_kept", "says_just",
    "uses_of", "with_batches",
]  # fmt: skip


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
    for name, used in ((name, notebook.referred(target)) for name, target in uses_of(revision).items()):
        if used.kind == "ingredient":
            labels[name] = file_text(notebook, used)
        elif used.kind == "recipe" and name in references(text):
            recipes[name] = file_text(notebook, used)
            labels = {**given_from(notebook, used).labels, **labels}
    return Given(name=file_name_of(revision.title), text=text, recipes=recipes, labels=labels)


def uses_of(revision: Revision) -> dict[str, Reference]:
    """Give what a revision refers to, by the name that it uses for it; what it was made from is no use."""
    return {name: target for name, target in revision.links.items() if name != DERIVED}


def own_labels(notebook: Notebook) -> dict[str, str]:
    """Give the texts of all ingredients in the notebook by their titles; of those with one title the newest."""
    entries = reversed(notebook.entries(kind="ingredient"))
    return {each.title: file_text(notebook, notebook.revision(each.document)) for each in entries}


def batches_of(notebook: Notebook, recipe: str) -> tuple[Given, ...]:
    """Give the batches that were made of a recipe, by its id: of any of its revisions, the first made first."""
    found = [each for each in notebook.linking_to(recipe, kind="batch") if not each.removed]
    made = sorted(found, key=lambda each: (str(notebook.body(each).get("made_on", "")), each.document))
    return tuple(given_from(notebook, each) for each in made)


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
    theirs = {str(body_of(text)["title"]): text for each in labels for text in label_files(each)}
    named = [named_batch(notebook, each) for each in batches]
    known = {*(each.key for each in found)}
    own = own_labels(notebook)
    taken = {**usable_labels(own, recipe.text), **recipe.labels, **theirs}
    teaching = (*found, *(each for each in named if each.key not in known))
    return replace(recipe, labels=taken, batches=teaching), left_out_words(own, taken)


def named_batch(notebook: Notebook, place: str) -> Given:
    """Give a batch that somebody names: a file, or one of the notebook."""
    return given_of(Path(place)) if names_file(place) else given_from(notebook, notebook.find(place))


def _recipe_at(notebook: Notebook, place: str) -> Given:
    if names_file(place):
        read_document(Path(place), "recipe")
        return given_of(Path(place))
    return given_from(notebook, recipe_kept(notebook, place))


def recipe_kept(notebook: Notebook, place: str) -> Revision:
    """Find a recipe of the notebook by its title or id.

    Raises
    ------
    InputError
        If something else is called that; of a batch, the sentence names its recipe.
    NotebookError
        If there is none.
    """
    revision = notebook.find(place)
    if revision.kind == "batch":
        used = (notebook.referred(target) for target in uses_of(revision).values())
        recipe = next((each.title for each in used if each.kind == "recipe"), "?")
        raise InputError("kept-is-batch", title=revision.title, recipe=recipe)
    if revision.kind != "recipe":
        raise InputError("kept-other-kind", title=revision.title, found=revision.kind)
    return revision


def says_just(notebook: Notebook, revision: Revision, given: Given) -> bool:
    """Whether a revision says just this, with the same recipes."""
    if revision.removed:
        return False
    kept = given_from(notebook, revision) if revision.kind != "outcome" else None
    if kept is None or tomllib.loads(kept.text) != tomllib.loads(given.text):
        return False
    if any(_parsed(given.labels.get(name, text)) != _parsed(text) for name, text in kept.labels.items()):
        return False
    names = references(given.text)
    return all(_parsed(along(kept, name)) == _parsed(along(given, name)) for name in names)


def _parsed(text: str | None) -> dict[str, Any]:
    return tomllib.loads(text or "")
