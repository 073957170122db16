"""How the command line looks: one console, one table, notes with a bullet."""

import json
import sys
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from typing import Any

from rich.console import Console
from rich.padding import Padding
from rich.progress import BarColumn, Progress, TextColumn
from rich.table import Table
from rich.text import Text

__all__ = ["console", "print_error", "print_json", "print_notes", "print_table", "progress"]

_WIDEST = 110


def console(*, errors: bool = False) -> Console:
    """Give the console, no wider than reads well."""
    made = Console(stderr=errors, highlight=False, soft_wrap=False)
    made.width = min(made.width, _WIDEST)
    return made


def print_error(sentence: str) -> None:
    """Say on stderr what went wrong."""
    console(errors=True).print(Text(sentence))


def print_json(content: Any) -> None:
    """Print JSON: SI, no NaN."""
    json.dump(content, sys.stdout, indent=2, ensure_ascii=False, allow_nan=False)
    print()


def print_table(headings: Sequence[str], rows: Iterable[Sequence[str]], *, numbers: Sequence[int] = ()) -> None:
    """Print a table without lines, columns of numbers to the right."""
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), header_style="bold")
    for k, heading in enumerate(headings):
        table.add_column(heading, justify="right" if k in numbers else "left", overflow="fold")
    for row in rows:
        table.add_row(*(Text(cell) for cell in row))
    console().print(Padding(table, (0, 0, 1, 2)))


def print_notes(heading: str, notes: Sequence[str]) -> None:
    """Print a heading with a bulleted list; nothing if the list is empty."""
    if not notes:
        return
    out = console()
    out.print(Text(heading, style="bold"))
    bullets = Table.grid(padding=(0, 1, 0, 0))
    for note in notes:
        bullets.add_row(Text("  •"), Text(note))
    out.print(Padding(bullets, (0, 0, 1, 0)))


@contextmanager
def progress(what: str, *, shown: bool) -> Iterator[Any]:
    """Show a bar on stderr while something computes; give the function that moves it."""
    out = console(errors=True)
    if not shown or not out.is_terminal:
        yield lambda share: None
        return
    with Progress(TextColumn("{task.description}"), BarColumn(), console=out, transient=True) as bar:
        task = bar.add_task(what, total=1.0)
        yield lambda share: bar.update(task, completed=share)
