"""Tables: a row a line on a desk; on a phone each row is a small block, its cells beside or under their headings."""

from collections.abc import Callable, Iterable, Sequence
from itertools import zip_longest
from typing import Literal

from nicegui import html
from nicegui.element import Element

from lumped.web.words import Figure, Words

__all__ = ["Cell", "tally"]

Cell = str | Callable[[], object]
"""What stands in a table: words, or a function that lays out what stands there, such as a number with its source."""


def tally(
    headings: Sequence[str], rows: Iterable[Sequence[Cell]], *, numbers: Sequence[int] = (),
    on_phone: Literal["", "sides", "packed"] = "", marks: Sequence[str] = (),
) -> Element:  # fmt: skip
    """Put a table on the page; the first cell of a row is its heading.

    Parameters
    ----------
    headings : sequence of str
        Of each column; "" for none.
    rows : iterable of sequence of Cell
        What stands in each row.
    numbers : sequence of int
        Columns that stand to the right.
    on_phone : {"", "sides", "packed"}
        What becomes of a row where a phone is too narrow: it stays as it is; its cells stand one under the other, each
        beside its heading; or they stand side by side, each under its heading.
    marks : sequence of str
        Names of the rows for tests.

    Returns
    -------
    Element
    """
    # The roles are said, since a table that is laid out as blocks is none to screen readers.
    made: Element = html.table().classes(f"tally {on_phone}").props("role=table")
    with made:
        with html.thead().props("role=rowgroup"), html.tr().props("role=row"):
            for column, heading in enumerate(headings):
                Words("th", heading, _side(column, numbers)).props("scope=col role=columnheader")
        with html.tbody().props("role=rowgroup"):
            for row, mark in zip_longest(rows, marks, fillvalue=""):
                with html.tr().mark(mark or "row").props("role=row"):
                    _lay_row(row, headings, numbers)
    return made


def _lay_row(row: Sequence[Cell], headings: Sequence[str], numbers: Sequence[int]) -> None:
    for column, (cell, heading) in enumerate(zip(row, headings, strict=True)):
        with Element("td" if column else "th").classes(_side(column, numbers)) as there:
            there.props("role=cell" if column else "scope=row role=rowheader").props.update({"data-of": heading})
            if not isinstance(cell, str):
                cell()
            elif cell:
                Figure("span", cell)


def _side(column: int, numbers: Sequence[int]) -> str:
    return "number" if column in numbers else ""
