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

from lumped.documents import checked, text_of
from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label_file import LabelFile, labelled_from
from lumped.pantry.pantry import Pantry
from lumped.texts import say
from lumped.texts.folding import plain_word

__all__ = ["labels_in", "read_labels_csv"]

_MOST = 500
_CELL = 2000
_LISTS = {"allergens", "may_contain", "contains", "roles"}
_TEXTS = {"title", "like", "per", "sodium_from", "serving", "filled", "bought_in"}
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
    found = labels_in(text_of(path, no_text="label-csv-encoding"), str(path), shop)
    return tuple(ingredient for _, ingredient in found)


def labels_in(text: str, name: str, shop: Pantry | None = None) -> tuple[tuple[dict[str, Any], Ingredient], ...]:
    r"""Read each line of a CSV table.

    Parameters
    ----------
    text : str
        The table.
    name : str
        Its file, for messages.
    shop : Pantry, optional
        Where similar ingredients are looked up; the handbook's.

    Returns
    -------
    tuple of (dict, Ingredient)
        Each line as the document that an ingredient file would be, and the ingredient.

    Raises
    ------
    InputError
        If something can't be read or can't be, with file, line and remedy.

    Examples
    --------
    >>> labels_in("title;salt_g\nour salt;99,8", "a.csv")[0][0]["salt_g"]
    99.8
    """
    lines, decimal_comma = _lines(text, name)
    headings = _headings(lines[0][1], name)
    if len(lines) == 1:
        raise InputError("label-csv-none", file=name)
    if len(lines) - 1 > _MOST:
        raise InputError("label-csv-long", file=name, limit=_MOST)
    found: dict[str, tuple[dict[str, Any], Ingredient]] = {}
    for number, cells in lines[1:]:
        document, where = _in_line(number, cells, headings, decimal_comma, name)
        each = labelled_from(document, where, shop)
        if plain_word(each.name) in found:
            raise InputError("label-twice", file=name, name=each.name)
        found[plain_word(each.name)] = (document, each)
    return tuple(found.values())


def _in_line(
    number: int, cells: list[str], headings: list[str], decimal_comma: bool, name: str
) -> tuple[dict[str, Any], str]:
    if len(cells) != len(headings):
        raise InputError("label-csv-width", file=name, line=number, found=len(cells), wanted=len(headings))
    where = f"{name}, line {number}"
    document = _document(dict(zip(headings, cells, strict=True)), decimal_comma)
    file = checked(LabelFile, document, Path(where), failure=InputError)
    return file.model_dump(exclude_unset=True, by_alias=True), where


def _lines(text: str, name: str) -> tuple[list[tuple[int, list[str]]], bool]:
    """Lines that hold something, with their numbers, and whether numbers may have a decimal comma."""
    if "\0" in text:
        raise InputError("label-csv-broken", file=name, problem=say("label-csv-signs"))
    first = next((line for line in text.splitlines() if line.strip()), "")
    parting = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=parting, strict=True)
    try:
        lines = [(reader.line_num, [cell.strip() for cell in cells]) for cells in reader if any(map(str.strip, cells))]
    except csv.Error as problem:
        raise InputError("label-csv-broken", file=name, problem=_told(problem, reader.line_num)) from None
    if not lines:
        raise InputError("label-csv-none", file=name)
    if any(len(cell) > _CELL for _, cells in lines for cell in cells):
        raise InputError("label-csv-broken", file=name, problem=say("label-csv-cell", limit=_CELL))
    return lines, parting == ";"


def _told(problem: csv.Error, line: int) -> str:
    """Say in words what Python's reader of tables stumbled over: a cell without end, or a quotation mark."""
    if "field limit" in str(problem):
        return say("label-csv-cell", limit=_CELL)
    return say("label-csv-quotes", line=line)


def _headings(cells: list[str], name: str) -> list[str]:
    for column in cells:
        if column not in _COLUMNS:
            near = get_close_matches(column[:80], _COLUMNS, n=1, cutoff=0.6)
            hint = say("label-csv-near", near=near[0]) if near else say("label-csv-columns", known=", ".join(_COLUMNS))
            raise InputError("label-csv-column", file=name, column=column[:40], hint=hint)
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
