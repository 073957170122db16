"""Proof of a notebook: any change is noticed, and so is what was sealed but can't be."""

from dataclasses import replace

import numpy as np
import pytest
from tests.notebook.fuzzing import small_notebook

from lumped.errors import InputError
from lumped.notebook.canonical import hash_of
from lumped.notebook.proving import prove
from lumped.notebook.records import Contents, Readings, Revision, sealed, sealed_series, sealed_stretch
from lumped.notebook.reference import Reference

NOWHERE = Reference("01890a5d-ac96-774b-bcce-b302099a80ff", 64 * "0")


def document(*revisions: Revision) -> Contents:
    """A notebook with one document, sealed anew."""
    history, before = [], ""
    for each in revisions:
        history.append(sealed(each, before))
        before = history[-1].seal
    return Contents(id=small_notebook().id, documents={history[0].document: tuple(history)}, series={})


def first_two() -> tuple[Revision, Revision]:
    return next(iter(small_notebook().documents.values()))


def measured(**change: object) -> Contents:
    """A notebook with one series of three readings, sealed anew."""
    series = next(iter(small_notebook().series.values()))[0]
    of_series = {key: each for key, each in change.items() if key in ("about", "unit", "id")}
    series = sealed_series(replace(series, **{"about": None, **of_series}))
    columns = {"number": np.arange(1, 4), "at": np.arange(3), "value": np.array([1.0, 2.0, 3.0]), "remarks": {}}
    readings = Readings(**{key: change.get(key, each) for key, each in columns.items()})
    stretch = sealed_stretch(readings, series.seal)
    return Contents(id=small_notebook().id, documents={}, series={series.id: (series, readings, (stretch,))})


def test_a_sound_notebook_is_proven():
    for contents in (
        small_notebook(),
        document(*first_two()),
        measured(),
        Contents(id=small_notebook().id, documents={}, series={}),
    ):
        assert prove(contents) is None


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"links": {"uses": NOWHERE}}, "link-dead"),
        ({"number": 3}, "proof-gap"),
        ({"kind": "recipe"}, "proof-stray"),
        ({"restored": 2}, "proof-restored"),
        ({"hash": 64 * "0"}, "proof-body-missing"),
        ({"body": {}}, "proof-body-in-removal"),
        ({"body": {}, "hash": hash_of({"a": 1})}, "proof-hash"),
        ({"body": {"a": None}, "hash": 64 * "0"}, "body-holds"),
        ({"title": "Quay\x1b"}, "line-character"),
        ({"title": 501 * "Q"}, "line-too-long"),
        ({"made_by": "me\u202e"}, "line-character"),
        ({"note": "one\ntwo"}, "line-character"),
    ],
)
def test_what_was_sealed_but_can_not_be_is_refused(change, code):
    first, second = first_two()
    with pytest.raises(InputError) as caught:
        prove(document(first, replace(second, **change)))
    assert caught.value.code == code


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"about": NOWHERE}, "link-dead"),
        ({"unit": "ohm\u2066"}, "line-character"),
        ({"unit": 61 * "m"}, "line-too-long"),
        ({"value": np.array([1, np.nan, 2])}, "proof-unsaid"),
        ({"value": np.array([1, np.inf, 2])}, "proof-not-finite"),
        ({"value": np.array([1.0, 2.0])}, "proof-columns"),
        ({"number": np.array([1, 3, 2])}, "proof-gap"),
        ({"at": np.array([0, 1, 2**62])}, "proof-moment"),
        ({"remarks": {4: "x"}}, "proof-remark-stray"),
        ({"remarks": {1: "\x1b"}}, "line-character"),
        ({"id": "x"}, "proof-no-id"),
    ],
)
def test_readings_that_can_not_be_are_refused(change, code):
    with pytest.raises(InputError) as caught:
        prove(measured(**change))
    assert caught.value.code == code


def test_an_id_stands_for_one_thing():
    contents = document(*first_two())
    twin = measured(id=first_two()[0].document)
    with pytest.raises(InputError, match="there twice"):
        prove(replace(contents, series=twin.series))


def test_a_document_without_a_revision_is_refused():
    with pytest.raises(InputError, match="no revision"):
        prove(replace(document(*first_two()), documents={first_two()[0].document: ()}))


@pytest.mark.parametrize(
    "change",
    [{"made_by": "you"}, {"at": 5}, {"note": "x"}, {"title": "Key"}, {"schema": 2}, {"restored": 1}, {"number": 7}],
)
def test_any_change_of_a_revision_is_noticed(change):
    before = small_notebook()
    (id, (first, second)), *others = before.documents.items()
    with pytest.raises(InputError):
        prove(replace(before, documents=dict([(id, (first, replace(second, **change))), *others])))


@pytest.mark.parametrize("column", ["at", "value", "number"])
def test_any_change_of_a_reading_is_noticed(column):
    before = small_notebook()
    ((id, (series, readings, stretches)),) = before.series.items()
    changed = getattr(readings, column).copy()
    changed[4] += 1
    with pytest.raises(InputError):
        prove(replace(before, series={id: (series, replace(readings, **{column: changed}), stretches)}))
