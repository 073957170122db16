"""Files that people write, as texts: their kind, their body, and the files beside them that they name."""

import tomllib
from contextlib import suppress
from datetime import date
from pathlib import Path
from typing import Any

import tomli_w

from lumped.app.given import Given, plain_name, references
from lumped.documents import document_in, read_document, text_of
from lumped.errors import InputError

__all__ = ["KINDS", "body_of", "given_of", "kind_of", "kind_said", "label_files"]

KINDS = ("ingredient", "recipe", "batch", "sculpture")
"""What a file may be; each may name those before it."""


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


def kind_of(path: Path) -> str:
    """Tell whether a file is a sculpture, recipe, batch or ingredient.

    Raises
    ------
    InputError
        If it can't be read, or is none of them.
    """
    said = document_in(text_of(path), str(path)).get("kind", "nothing")
    if said not in KINDS:
        raise InputError("document-no-kind", file=str(path), found=str(said))
    return str(read_document(path, str(said))["kind"])


def kind_said(text: str) -> str:
    """Give the kind that a text says; of what is none that has files, or no TOML, the sculpture that it fails to be."""
    kind = ""
    with suppress(ValueError, RecursionError):
        kind = str(tomllib.loads(text).get("kind"))
    return kind if kind in KINDS else "sculpture"


def body_of(text: str, name: str = "") -> dict[str, Any]:
    """Give the body of a text; a day, which JSON does not have, as it is written.

    Raises
    ------
    InputError
        If it is no TOML; `name` is its file, for the message.
    """
    document = document_in(text, name)
    return {
        key: each.isoformat() if type(each) is date else each
        for key, each in document.items()
        if key not in ("kind", "schema")
    }


def label_files(path: Path) -> tuple[str, ...]:
    """Give the ingredient files that a file is, or that the lines of a table are.

    Raises
    ------
    InputError
        If it can't be read.
    """
    from lumped.pantry.label_table import labels_in

    text = text_of(path)
    if path.suffix.lower() != ".csv":
        read_document(path, "ingredient")
        return (text,)
    return tuple(tomli_w.dumps(document) for document, _ in labels_in(text, str(path)))
