"""How the command line looks: one console, one table, notes with a bullet; and nothing printed steers a terminal."""

import json
import sys
import unicodedata
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from typing import Any

from rich.console import Console
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from lumped.cli.folding import folded

__all__ = [
    "console", "plain", "print_error", "print_json", "print_line", "print_notes", "print_table", "print_title",
    "print_toml", "progress", "visible",
]  # fmt: skip

_WIDEST = 110
_BULLET = 4  # columns before a note
_GAP, _INDENT = 2, 2  # columns between the columns of a table, and before it
_ROOM = 72  # columns; on a narrower terminal all of a table's columns give way alike
_STEERING = {"Cc", "Cf", "Cs", "Zl", "Zp"}  # controls, invisible marks and turns of direction, half letters, line ends
_JOINERS = "\u200c\u200d"  # some scripts and pictures need them


def visible(text: str) -> str:
    r"""Give a text whose control characters, line ends and invisible marks are written out, so that they do nothing.

    Examples
    --------
    >>> print(visible("quay\x1b[2J \u202eleft"))
    quay\x1b[2J \u202eleft
    """
    return _written_out(text, lambda letter: ascii(letter)[1:-1])


def _written_out(text: str, written: Callable[[str], str], *, but: str = "") -> str:
    steering = {letter for letter in set(text) if unicodedata.category(letter) in _STEERING}
    return text.translate({ord(letter): written(letter) for letter in steering.difference(_JOINERS, but)})


def plain(text: str, style: str = "") -> Text:
    """Give a text as the console takes it: no markup is read in it, and nothing in it steers a terminal."""
    return Text(visible(text), style=style)


def _fitting(text: str, width: int) -> Text:
    """Give a text whose wide letters are folded into lines of so many columns; other texts the console wraps."""
    return Text("\n").join(plain(line) for line in folded(text, width).split("\n"))


def console(*, errors: bool = False) -> Console:
    """Give the console, no wider than reads well."""
    made = Console(stderr=errors, highlight=False, soft_wrap=False)
    made.width = min(made.width, _WIDEST)
    return made


def print_error(sentence: str) -> None:
    """Say on stderr what went wrong."""
    console(errors=True).print(plain(sentence))


def print_line(sentence: str) -> None:
    """Print a sentence."""
    out = console()
    out.print(_fitting(sentence, out.width))


def print_title(title: str, *, invented: bool = False) -> None:
    """Print a title between empty lines, with a mark if what it names is invented."""
    from lumped.app.titles import marked

    console().print(Padding(plain(marked(title, invented=invented), style="bold"), (1, 0, 1, 0)))


def print_json(content: Any) -> None:
    """Print JSON: SI, no NaN; what could steer a terminal is escaped, and reads back the same."""
    text = json.dumps(content, indent=2, ensure_ascii=False, allow_nan=False)
    print(_written_out(text, lambda letter: json.dumps(letter)[1:-1], but="\n"))


def print_toml(text: str) -> None:
    """Print a TOML file as it is; what could steer a terminal is escaped in its strings, and reads back the same."""
    sys.stdout.write(_written_out(text, _in_toml, but="\n\t"))


def _in_toml(letter: str) -> str:
    return f"\\u{ord(letter):04x}" if ord(letter) < 0x10000 else f"\\U{ord(letter):08x}"


def print_table(
    headings: Sequence[str],
    rows: Iterable[Sequence[str]],
    *,
    numbers: Sequence[int] = (),
    whole: Sequence[int] = (),
) -> None:
    """Print a table without lines, columns of numbers to the right, those of `whole` unbroken where there is room.

    Where it is too wide, columns give way, the widest first; words stay whole as long as there is room, those of
    headings the longest.
    """
    out = console()
    unbroken = set(whole) if out.width >= _ROOM else set()
    cells = [list(map(plain, row)) for row in rows]
    columns = [[plain(heading), *(row[k] for row in cells)] for k, heading in enumerate(headings)]
    table = Table(box=None, pad_edge=False, padding=(0, _GAP, 0, 0), header_style="bold", show_header=any(headings))
    widths = _widths(columns, out.width - _INDENT - _GAP * (len(columns) - 1), unbroken)
    for k, heading in enumerate(headings):
        table.add_column(
            plain(heading), justify="right" if k in numbers else "left", overflow="fold", no_wrap=k in unbroken,
            width=widths[k] if widths else None,
        )  # fmt: skip
    for row in cells:
        table.add_row(*row)
    out.print(Padding(table, (0, 0, 1, 2)))


def _widths(columns: Sequence[Sequence[Text]], room: int, unbroken: set[int]) -> list[int]:
    """Widths of columns that are too wide together; none where they are not, or not even their headings have room."""
    widths = [max(cell.cell_len for cell in column) for column in columns]
    if sum(widths) <= room:
        return []
    headings = [_longest_word(column[:1]) for column in columns]
    words = [_longest_word(column) for column in columns]
    least = words if sum(_kept(words, widths, unbroken)) <= room else headings
    least = _kept(least, widths, unbroken)
    if sum(least) > room:
        return []
    while sum(widths) > room:
        widest = max((k for k in range(len(widths)) if widths[k] > least[k]), key=lambda k: widths[k])
        widths[widest] -= 1
    return widths


def _kept(least: Sequence[int], widths: Sequence[int], unbroken: set[int]) -> list[int]:
    return [width if k in unbroken else each for k, (each, width) in enumerate(zip(least, widths, strict=True))]


def _longest_word(cells: Sequence[Text]) -> int:
    return max(Text(word).cell_len for cell in cells for word in cell.plain.split() or [""])


def print_notes(heading: str, notes: Sequence[str], *, numbered: bool = False) -> None:
    """Print a heading with a bulleted or numbered list; nothing if the list is empty."""
    if not notes:
        return
    out = console()
    out.print(plain(heading, style="bold"))
    bullets = Table.grid(padding=(0, 1, 0, 0))
    bullets.add_column()
    bullets.add_column(overflow="fold")
    for number, note in enumerate(notes, 1):
        bullets.add_row(Text(f"{number:>2}." if numbered else "  •"), _fitting(note, out.width - _BULLET))
    out.print(Padding(bullets, (0, 0, 1, 0)))


@contextmanager
def progress(what: str, *, shown: bool) -> Iterator[Any]:
    """Show a bar on stderr while something computes; give the function that moves it."""
    out = console(errors=True)
    if not shown or not out.is_terminal:
        yield lambda share: None
        return
    from rich.progress import BarColumn, Progress, TextColumn

    with Progress(TextColumn("{task.description}"), BarColumn(), console=out, transient=True) as bar:
        task = bar.add_task(what, total=1.0)
        yield lambda share: bar.update(task, completed=share)
