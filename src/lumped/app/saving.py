"""What goes into the notebook: files with what they name; a link tells the very revision of each that is meant."""

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

import tomli_w

from lumped.app.as_files import body_of, given_of, kind_said
from lumped.app.gathering import own_labels, uses_of
from lumped.app.given import Given, along, file_name_of, not_along, plain_name, references
from lumped.app.labels import foreign_words
from lumped.app.own import batch_of, recipe_of
from lumped.notebook import Body, Notebook, Reference, Revision
from lumped.texts.folding import folded, plain_word

__all__ = ["save_file", "save_given", "save_labels", "titled_document"]


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
    return _titled(notebook, kind_said(given.text), body_of(given.text, given.name))


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
        _as_it_is(notebook, Given(name=file_name_of(each["title"]), text=tomli_w.dumps(each)), note)
        for each in documents
    )


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
    kind, body = kind_said(given.text), body_of(given.text, given.name) | ({"title": title} if title else {})
    links = _named_by(notebook, given, kind)
    return notebook.save(kind, body, document=document, note=note, links=links, derived_from=derived_from, after=after)


def _named_by(notebook: Notebook, given: Given, kind: str) -> dict[str, Reference]:
    """See that a file holds together with what it names; save that and give the links."""
    named = {}
    for name in references(given.text):
        text = along(given, name)
        if text is None:
            raise not_along(given, name)
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
    kind, body = kind_said(given.text), body_of(given.text, given.name)
    found = notebook.holding(kind, body)
    if found is not None and (kind != "recipe" or _means_the_same(notebook, found, given)):
        return found
    return save_given(notebook, given, document=_titled(notebook, kind, body), note=note)


def _means_the_same(notebook: Notebook, recipe: Revision, given: Given) -> bool:
    """Whether a recipe refers to just the ingredients that came along with its text."""
    there = {name: notebook.body(notebook.referred(target)) for name, target in uses_of(recipe).items()}
    return all(there.get(name) == body_of(text) for name, text in _labels_for(notebook, given).items())


def _labels_for(notebook: Notebook, given: Given) -> dict[str, str]:
    """Give the texts of own ingredients that a recipe or batch names: those that came along, or the newest."""
    words = {plain_word(each) for each in foreign_words(given.text)}
    if not words:
        return {}
    there = {**own_labels(notebook), **given.labels}
    return {title: text for title, text in there.items() if plain_word(title) in words}


def _titled(notebook: Notebook, kind: str, body: Body) -> str | None:
    """Give the id of the one document of a kind and title; None if there is none, or more than one."""
    title = str(body.get("title", "")).strip()  # as the notebook keeps it
    found = [each.document for each in notebook.entries(kind=kind) if folded(each.title) == folded(title)]
    return found[0] if len(found) == 1 else None
