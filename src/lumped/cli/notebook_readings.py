"""`lumped notebook list --series` and `readings`: what was measured."""

import argparse
from math import isnan
from typing import TYPE_CHECKING, Any

from lumped.cli.moments import local_time, read_moment
from lumped.cli.notebook_opening import add_verb, opened, shortened
from lumped.cli.show import print_json, print_line, print_table, print_title
from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.notebook import Notebook, Readings, Series

__all__ = ["add_to", "list_series"]

_ROWS = 40  # of a table, unless another number is asked for


def add_to(verbs: Any) -> None:
    """Add the verbs to the group."""
    verb = add_verb(verbs, "readings", run_readings)
    verb.add_argument("series", metavar="SERIES", help=say("cli-notebook-series-name"))
    verb.add_argument("--most", type=_count, metavar="N", help=say("cli-notebook-most", rows=_ROWS))
    verb.add_argument("--from", dest="start", type=read_moment, metavar="WHEN", help=say("cli-notebook-from"))
    verb.add_argument("--until", dest="end", type=read_moment, metavar="WHEN", help=say("cli-notebook-until"))


def _count(text: str) -> int:
    if not text.isdecimal() or int(text) < 4:
        raise argparse.ArgumentTypeError(say("notebook-most", text=text))
    return int(text)


def list_series(said: argparse.Namespace) -> int:
    """List series of readings, those with all words that were said."""
    with opened(said) as notebook:
        found = [each for each in notebook.series() if _has_words(each, said.words)]
    if said.json:
        print_json({"kind": "series", "schema": 1, "series": [_as_json(each) for each in found]})
        return 0
    if not found:
        print_line(say("notebook-list-none-found" if said.words else "notebook-no-series"))
        return 0
    ids = shortened([each.id for each in found])
    headings = [say(f"column-{key}") for key in ("measured", "unit", "instrument", "begun", "id")]
    rows = [
        (each.title, each.unit, each.instrument, local_time(each.at), id) for each, id in zip(found, ids, strict=True)
    ]
    print_table(headings, rows, whole=(3, 4))
    return 0


def _has_words(series: "Series", words: list[str]) -> bool:
    text = " ".join((series.title, series.instrument, series.method)).casefold()
    return all(word.casefold() in text for word in words)


def run_readings(said: argparse.Namespace) -> int:
    """Print readings of a series."""
    with opened(said) as notebook:
        series = _meant(notebook, said.series)
        every = notebook.readings(series.id, start=said.start, end=said.end)
        most = said.most if said.json else said.most or _ROWS
        few = every if most is None else notebook.readings(series.id, start=said.start, end=said.end, most=most)
    if said.json:
        print_json({"kind": "readings", "schema": 1, "series": _as_json(series), "of": len(every), **_columns(few)})
        return 0
    print_title(say("notebook-series", title=series.title, instrument=series.instrument, method=series.method))
    if not len(every):
        print_line(say("notebook-no-readings"))
        return 0
    print_table(
        [say("column-number"), say("column-when"), series.unit or say("column-value"), say("column-remark")],
        [
            (str(number), local_time(at, to="milliseconds"), _value(value), few.remarks.get(number, ""))
            for number, at, value in zip(few.number.tolist(), few.at.tolist(), few.value.tolist(), strict=True)
        ],
        numbers=(0, 2),
        whole=(0, 1, 2),
    )
    if len(few) < len(every):
        print_line(say("notebook-thinned", shown=str(len(few)), of=str(len(every))))
    return 0


def _meant(notebook: "Notebook", name: str) -> "Series":
    """Give the series that a person means: by its id, the beginning of it, or what is measured."""
    listed = notebook.series()
    found = [each for each in listed if each.id == name] or [
        each
        for each in listed
        if each.title.casefold() == name.casefold() or (len(name) > 3 and each.id.startswith(name.lower()))
    ]
    if not found:
        raise InputError("notebook-series-unknown", name=name)
    if len(found) > 1:
        ids = ", ".join(shortened([each.id for each in found])[:5])
        raise InputError("notebook-series-ambiguous", name=name, count=len(found), ids=ids)
    return found[0]


def _as_json(series: "Series") -> dict[str, Any]:
    return {**series.envelope(), "seal": series.seal}


def _columns(readings: "Readings") -> dict[str, Any]:
    """Give readings as JSON shows them: one list a column; a value is null where its remark says why."""
    from lumped.notebook.moments import as_iso

    return {
        "number": readings.number.tolist(),
        "at": [as_iso(at) for at in readings.at.tolist()],
        "value": [None if isnan(value) else value for value in readings.value.tolist()],
        "remarks": {str(number): text for number, text in readings.remarks.items()},
    }


def _value(value: float) -> str:
    return "" if isnan(value) else f"{value:.15g}"
