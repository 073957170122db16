"""Proof that what was read is a notebook, whole and unchanged: hashes, seals, numbers, references.

Whoever changes one letter of a body, an author, a moment or a value breaks a seal. (Somebody who computes all seals
anew can still write another history: seals show accidents and careless hands, not a forger.)
"""

from bisect import bisect_left
from collections.abc import Mapping, Sequence

import numpy as np

from lumped.errors import InputError
from lumped.notebook.canonical import hash_of
from lumped.notebook.lines import LINE_LIMIT, NOTE_LIMIT, TITLE_LIMIT, UNIT_LIMIT, plain_line, shown
from lumped.notebook.moments import FIRST_MOMENT, LAST_MOMENT
from lumped.notebook.records import Contents, Readings, Revision, Series, Stretch, sealed, sealed_series, sealed_stretch
from lumped.notebook.reference import Reference, is_id

__all__ = ["prove"]


def prove(contents: Contents) -> None:
    """See that a notebook is whole and unchanged.

    Parameters
    ----------
    contents : Contents
        Everything in it.

    Raises
    ------
    InputError
        Naming the first thing that is wrong.
    """
    _refuse_no_id(contents.id, "notebook")
    states = {(key, each.hash) for key, history in contents.documents.items() for each in history}
    for document, history in contents.documents.items():
        _refuse_no_id(document, "document")
        _prove_history(document, history, states)
    for id, (series, readings, stretches) in contents.series.items():
        _refuse_no_id(id, "series")
        where = f"series {id}"
        if id in contents.documents or series.id != id:
            raise InputError("proof-id-twice", id=id)
        _prove_series(series, where, states)
        _prove_readings(readings, where)
        _prove_stretches(series.seal, readings, stretches, where)


_States = set[tuple[str, str]]


def _prove_history(document: str, history: Sequence[Revision], states: _States) -> None:
    if not history:
        raise InputError("proof-empty", document=document)
    before = ""
    for number, each in enumerate(history, 1):
        where = f"document {document}, revision {number}"
        if each.number != number:
            raise InputError("proof-gap", where=where, found=str(each.number))
        if each.document != document or each.kind != history[0].kind or not each.kind:
            raise InputError("proof-stray", where=where, found=shown(each.kind))
        _prove_envelope(each, where)
        _prove_body(each, where)
        for name, target in each.links.items():
            _refuse_dead(target, name, states)
        if sealed(each, before).seal != each.seal:
            raise InputError("proof-seal", where=where)
        before = each.seal


def _prove_envelope(revision: Revision, where: str) -> None:
    plain_line(revision.kind)
    plain_line(revision.title, TITLE_LIMIT)
    plain_line(revision.made_by)
    plain_line(revision.note, NOTE_LIMIT)
    for name in revision.links:
        plain_line(name, LINE_LIMIT)
    _refuse_no_moment(revision.at, where)
    if revision.restored is not None and not 1 <= revision.restored < revision.number:
        raise InputError("proof-restored", where=where, found=str(revision.restored))


def _prove_body(revision: Revision, where: str) -> None:
    if revision.body is None:
        if revision.hash:
            raise InputError("proof-body-missing", where=where)
        return
    if not revision.hash:
        raise InputError("proof-body-in-removal", where=where)
    if hash_of(revision.body) != revision.hash:
        raise InputError("proof-hash", where=where)


def _prove_series(series: Series, where: str, states: _States) -> None:
    plain_line(series.title, TITLE_LIMIT)
    plain_line(series.unit, UNIT_LIMIT)
    for text in (series.instrument, series.method, series.made_by):
        plain_line(text)
    _refuse_no_moment(series.at, where)
    if series.about is not None:
        _refuse_dead(series.about, "about", states)
    if sealed_series(series).seal != series.seal:
        raise InputError("proof-seal", where=where)


def _prove_readings(readings: Readings, where: str) -> None:
    count = len(readings)
    if not len(readings.number) == len(readings.value) == count:
        raise InputError("proof-columns", where=where)
    if not np.array_equal(readings.number, np.arange(1, count + 1)):
        wrong = int(np.flatnonzero(readings.number != np.arange(1, count + 1))[0])
        raise InputError("proof-gap", where=f"{where}, reading {wrong + 1}", found=str(readings.number[wrong]))
    if count and not FIRST_MOMENT <= int(readings.at.min()) <= int(readings.at.max()) <= LAST_MOMENT:
        raise InputError("proof-moment", where=where)
    if np.isinf(readings.value).any():
        raise InputError("proof-not-finite", where=where)
    unsaid = [
        number for number in (np.flatnonzero(np.isnan(readings.value)) + 1).tolist() if number not in readings.remarks
    ]
    if unsaid:
        raise InputError("proof-unsaid", where=where, number=str(unsaid[0]))
    for number, text in readings.remarks.items():
        if not 1 <= number <= count:
            raise InputError("proof-remark-stray", where=where, found=str(number))
        plain_line(text, NOTE_LIMIT)


def _prove_stretches(before: str, readings: Readings, stretches: Sequence[Stretch], where: str) -> None:
    remarked, done = sorted(readings.remarks), 0
    for each in stretches:
        if each.first != done + 1 or each.count < 1 or each.count > len(readings) - done:
            raise InputError("proof-stretches", where=where, first=str(each.first), expected=str(done + 1))
        if sealed_stretch(_cut(readings, remarked, done, each.count), before).seal != each.seal:
            raise InputError("proof-seal", where=f"{where}, readings {each.first} to {done + each.count}")
        before, done = each.seal, done + each.count
    if done != len(readings):
        raise InputError("proof-stretches", where=where, first="–", expected=str(done + 1))


def _cut(readings: Readings, remarked: Sequence[int], first: int, count: int) -> Readings:
    """Give some readings; only their remarks are looked at, for there can be many stretches."""
    cut = slice(first, first + count)
    numbers = remarked[bisect_left(remarked, first + 1) : bisect_left(remarked, first + count + 1)]
    remarks: Mapping[int, str] = {number: readings.remarks[number] for number in numbers}
    return Readings(number=readings.number[cut], at=readings.at[cut], value=readings.value[cut], remarks=remarks)


def _refuse_no_id(id: str, what: str) -> None:
    if not is_id(id):
        raise InputError("proof-no-id", what=what, id=shown(id))


def _refuse_no_moment(at: int, where: str) -> None:
    if not FIRST_MOMENT <= at <= LAST_MOMENT:
        raise InputError("proof-moment", where=where)


def _refuse_dead(target: Reference, name: str, states: _States) -> None:
    if not target.hash or (target.document, target.hash) not in states:
        raise InputError("link-dead", name=shown(name), reference=shown(target, 120))
