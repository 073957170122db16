"""A close look at what killed children left: all they were acknowledged is there, once, as it was written."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from tests.notebook.nursery import body_of, recorded_value, values_of

from lumped.notebook import Notebook
from lumped.notebook.series import stretches_of

__all__ = ["every", "fingerprint", "look", "stretches"]


def look(
    acknowledged: Sequence[list[list[Any]]], notebook: Notebook, *, killed: int
) -> tuple[dict[str, int], list[str]]:
    """Look whether all that was acknowledged is there as it was written, and nothing twice or half.

    Parameters
    ----------
    acknowledged : sequence of list
        What each child was acknowledged.
    notebook : Notebook
        What they left.
    killed : int
        How many were killed: each may have had one commit done that it was not told of.
    """
    problems = list(notebook.verify().problems)
    counts = {"revisions": 0, "readings": 0, "beyond": 0}
    for check in (_look_at_documents, _look_at_readings, _look_at_recorded):
        found, told = check([each for one in acknowledged for each in one], notebook)
        problems += told
        for key, count in found.items():
            counts[key] += count
    if counts["beyond"] > killed:
        problems.append(f"{counts['beyond']} commits that nobody was told of")
    return counts, problems


def _look_at_documents(said: list[list[Any]], notebook: Notebook) -> tuple[dict[str, int], list[str]]:
    there: dict[tuple[int, int], tuple[str, int]] = {}
    problems = []
    for document in every(notebook):
        history = [each for each in notebook.history(document) if each.kind == "trial"]
        if [each.number for each in history] != list(range(1, len(history) + 1)):
            problems.append(f"gaps in the numbers of {document}")
        for each in history:
            body = each.body or {}
            name = (body["seed"], body["step"])
            if name in there:
                problems.append(f"{name} is there twice")
            there[name] = (document, each.number)
            if body != body_of(*name):
                problems.append(f"{name} is not what was written")
    promised = {(seed, step): (document, number) for _, seed, step, document, number in _only(said, "save")}
    problems += [f"lost: {name}" for name, where in promised.items() if there.get(name) != where]
    beyond = {name for name in there if name[0] not in (0, 10**6)} - set(promised)
    return {"revisions": len(promised), "beyond": len(beyond)}, problems


def _look_at_readings(said: list[list[Any]], notebook: Notebook) -> tuple[dict[str, int], list[str]]:
    problems, beyond, count = [], 0, 0
    promised = {(series, first): (seed, step) for _, seed, step, series, first in _only(said, "append")}
    for each in notebook.series():
        if each.title != "shared":
            continue
        readings, there = notebook.readings(each.id), stretches(notebook, each.id)
        if readings.number.tolist() != list(range(1, len(readings) + 1)):
            problems.append("gaps in the numbers of readings")
        beyond += len({stretch.first for stretch in there} - {first for series, first in promised if series == each.id})
        for (series, first), name in promised.items():
            expected = values_of(*name)
            if series == each.id:
                count += len(expected)
                if not np.array_equal(readings.value[first - 1 : first - 1 + len(expected)], expected):
                    problems.append(f"lost: readings of {name}")
    if promised and not any(each.title == "shared" for each in notebook.series()):
        problems.append("lost: the shared series")
    return {"readings": count, "beyond": beyond}, problems


def _look_at_recorded(said: list[list[Any]], notebook: Notebook) -> tuple[dict[str, int], list[str]]:
    promised: dict[str, tuple[int, int]] = {}
    for _, seed, series, committed in _only(said, "recorded"):
        promised[series] = (seed, committed)
    problems = []
    for series, (seed, committed) in promised.items():
        values = notebook.readings(series).value
        if len(values) < committed:
            problems.append(f"lost: {committed - len(values)} recorded readings")
        if values.tolist() != [recorded_value(seed, place + 1) for place in range(len(values))]:
            problems.append("recorded readings are not those that were taken, each once and in order")
    return {"readings": sum(committed for _, committed in promised.values())}, problems


def _only(said: list[list[Any]], word: str) -> list[list[Any]]:
    return [each for each in said if each[0] == word]


def every(notebook: Notebook) -> list[str]:
    """Give the ids of all documents, removed ones too."""
    return [each.document for gone in (False, True) for each in notebook.entries(removed=gone)]


def stretches(notebook: Notebook, series: str) -> Sequence[Any]:
    with notebook._store.reading() as connection:
        return stretches_of(connection, series)


def fingerprint(notebook: Notebook) -> str:
    """Give the hash over all newest seals."""
    return notebook.contents().fingerprint
