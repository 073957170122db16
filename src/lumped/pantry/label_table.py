"""Ingredients from a CSV table: a line of headings, then a packet a line.

Commas, semicolons or tabs part the cells; where semicolons do, a decimal comma is read too. Lists in a cell are parted
by a vertical bar: `wheat|soya`. Texts that a spreadsheet would take for a formula are refused, so that nothing of this
table can come to life when it is exported again.
"""

import csv
import io
from difflib import get_close_matches
from pathlib import Path
from typing import Any

from lumped.documents.reading import SIZE_LIMIT
from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label_file import LabelFile, labelled_from
from lumped.pantry.pantry import Pantry

__all__ = ["read_labels_csv"]

_MOST = 500
_CELL = 2000
_LISTS = {"allergens", "may_contain", "contains", "roles"}
_TEXTS = {"title", "like", "per", "sodium_from", "serving"}
_COLUMNS = [field.alias or name for name, field in LabelFile.model_fields.items() if name not in ("kind", "schema_")]


def read_labels_csv(path: Path, shop: Pantry | None = None) -> tuple[Ingredient, ...]:
    """Read ingredients from a CSV file.

    Parameters
    ----------
    path : Path
        The file; its headings are keys of the ingredient file.
    shop : Pantry, optional
        Where similar ingredients are looked up; the handbook's.

    Returns
    -------
    tuple of Ingredient

    Raises
    ------
    InputError
        If something can't be read or can't be, with file, line and remedy.
    """
    name = str(path)
    lines, decimal_comma = _lines(_text_of(path), name)
    headings = _headings(lines[0][1], name)
    if len(lines) == 1:
        raise InputError("label-csv-none", file=name)
    if len(lines) - 1 > _MOST:
        raise InputError("label-csv-long", file=name, limit=_MOST)
    found: dict[str, Ingredient] = {}
    for number, cells in lines[1:]:
        if len(cells) != len(headings):
            raise InputError("label-csv-width", file=name, line=number, found=len(cells), wanted=len(headings))
        document = _document(dict(zip(headings, cells, strict=True)), decimal_comma)
        each = labelled_from(document, f"{name}, line {number}", shop)
        if each.key in found:
            raise InputError("label-twice", file=name, name=each.name)
        found[each.key] = each
    return tuple(found.values())


def _text_of(path: Path) -> str:
    """The file's text within the limit on size; other encodings than UTF-8 are refused, not guessed."""
    try:
        if path.is_dir():
            raise InputError("document-is-folder", file=str(path))
        if path.stat().st_size > SIZE_LIMIT:
            raise InputError("document-too-large", file=str(path), limit="2 MB")
        return path.read_text(encoding="utf-8-sig")
    except InputError:
        raise
    except FileNotFoundError:
        raise InputError("document-missing", file=str(path)) from None
    except UnicodeDecodeError:
        raise InputError("label-csv-encoding", file=str(path)) from None
    except (OSError, ValueError) as error:
        problem = getattr(error, "strerror", None) or str(error)
        raise InputError("document-unreadable", file=repr(str(path)), problem=problem) from None


def _lines(text: str, name: str) -> tuple[list[tuple[int, list[str]]], bool]:
    """Lines that hold something, with their numbers, and whether numbers may have a decimal comma."""
    if "\0" in text:
        raise InputError("label-csv-broken", file=name, problem="it holds characters that are no text")
    first = next((line for line in text.splitlines() if line.strip()), "")
    parting = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=parting, strict=True)
    try:
        lines = [(reader.line_num, [cell.strip() for cell in cells]) for cells in reader if any(map(str.strip, cells))]
    except csv.Error as problem:
        raise InputError("label-csv-broken", file=name, problem=str(problem)) from None
    if not lines:
        raise InputError("label-csv-none", file=name)
    if any(len(cell) > _CELL for _, cells in lines for cell in cells):
        raise InputError("label-csv-broken", file=name, problem=f"a cell has more than {_CELL} characters")
    return lines, parting == ";"


def _headings(cells: list[str], name: str) -> list[str]:
    for column in cells:
        if column not in _COLUMNS:
            near = get_close_matches(column, _COLUMNS, n=1, cutoff=0.0) or ["title"]
            raise InputError("label-csv-column", file=name, column=column[:40], near=near[0])
        if cells.count(column) > 1:
            raise InputError("label-csv-column-twice", file=name, column=column)
    if "title" not in cells:
        raise InputError("label-csv-headings", file=name)
    return cells


def _document(cells: dict[str, str], decimal_comma: bool) -> dict[str, Any]:
    """A line as a document: empty cells are left out, lists parted, decimal commas turned to points."""
    document: dict[str, Any] = {"kind": "ingredient", "schema": 1}
    for key, cell in cells.items():
        if cell in ("none", "–", "-") and key in _LISTS:
            document[key] = []
        elif cell and key in _LISTS:
            document[key] = [each.strip() for each in cell.split("|")]
        elif cell and key in _TEXTS:
            document[key] = cell
        elif cell:
            document[key] = cell.replace(",", ".") if decimal_comma else cell
    return document
