"""A folder of plain files, or one archive of it: what was written comes back as it was, and people can read it."""

import csv
import tomllib
import tracemalloc
from dataclasses import replace
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
import pytest
from hypothesis import given, settings
from tests.notebook.fuzzing import small_notebook
from tests.notebook.making import all_bodies, bodies, contents

from lumped.errors import InputError
from lumped.notebook.canonical import hash_of
from lumped.notebook.files.bundle import read_contents, write_contents
from lumped.notebook.files.toml_text import read_toml, toml_of
from lumped.notebook.records import Contents, sealed

QUAY = "documents/sculpture/quay-099a8050"
NOON = "readings/noon-099a8052"


def carried(before: Contents, name: str) -> Contents:
    with TemporaryDirectory() as folder:
        write_contents(before, Path(folder, name))
        return read_contents(Path(folder, name))


def one_document(body: dict) -> Contents:
    first = next(iter(small_notebook().documents.values()))[0]
    document = (sealed(replace(first, body=body, hash=hash_of(body)), ""),)
    return Contents(id=first.document, documents={first.document: document}, series={})


@pytest.mark.parametrize("name", ["folder", "archive.zip", "bundle.json"])
@settings(max_examples=100)
@given(before=contents())
def test_a_notebook_comes_back_identical(name, before):
    after = carried(before, name)
    assert (after.id, after.fingerprint) == (before.id, before.fingerprint)
    assert all_bodies(after) == all_bodies(before)
    for key, (series, readings, stretches) in before.series.items():
        assert after.series[key][::2] == (series, stretches)
        assert after.series[key][1].remarks == readings.remarks
        np.testing.assert_array_equal(after.series[key][1].at, readings.at)
        np.testing.assert_array_equal(after.series[key][1].value, readings.value)


@settings(max_examples=300)
@given(body=bodies(leaves=40))
def test_every_body_is_the_same_in_toml(body):
    assert hash_of(read_toml(toml_of(body), "a.toml")) == hash_of(body)


def test_a_body_is_a_file_that_a_person_could_have_written(tmp_path):
    write_contents(small_notebook(), tmp_path / "a")
    found = tomllib.loads((tmp_path / "a" / QUAY / "0001.toml").read_text("utf-8"))
    assert [*found][:3] == ["kind", "schema", "title"]
    assert found["lumps"] == [{"name": "East", "at_mm": [1.5, 0, -2e-7]}]
    assert not (tmp_path / "a" / QUAY / "0002.toml").exists()  # the second revision is a removal


def test_readings_are_a_table_that_a_spreadsheet_opens(tmp_path):
    write_contents(small_notebook(), tmp_path / "a")
    with (tmp_path / "a" / NOON / "readings.csv").open(encoding="utf-8", newline="") as file:
        rows = [*csv.DictReader(file)]
    assert rows[0] == {"number": "1", "at": "1970-01-01T00:00:00.000000Z", "value": "1.5", "remark": ""}
    assert (rows[1]["value"], rows[1]["remark"]) == ("", "''=wet")
    assert rows[3]["remark"] == "'-"


@pytest.mark.parametrize(
    "body", [{"kind": 1}, {"schema": "x", "a": {}}, {"x" * 10_000: [{"a": "b" * 150}] * 2_000}, {"a": [[]] * 250_000}]
)
def test_a_body_that_makes_no_good_toml_is_kept_as_json(tmp_path, body):
    write_contents(one_document(body), tmp_path / "a")
    assert [path.name for path in sorted(tmp_path.glob("a/documents/*/*/*"))] == ["0001.json", "history.toml"]
    assert next(iter(read_contents(tmp_path / "a").documents.values()))[0].body == body


def test_a_body_that_would_make_a_huge_toml_is_given_up_early():
    tracemalloc.start()
    try:
        assert toml_of({"x" * 20_000: [{"a": "b" * 150}] * 5_000}) is None  # 100 MB of headers
        assert tracemalloc.get_traced_memory()[1] < 30_000_000
    finally:
        tracemalloc.stop()


def test_the_same_notebook_makes_the_same_archive(tmp_path):
    for name in ("a.zip", "b.zip"):
        write_contents(small_notebook(), tmp_path / name)
    assert (tmp_path / "a.zip").read_bytes() == (tmp_path / "b.zip").read_bytes()


def test_a_body_that_packs_very_well_still_comes_back(tmp_path, monkeypatch):
    monkeypatch.setattr("lumped.notebook.files.limits.PACKED_FREE", 1_000_000)
    before = one_document({"text": 900_000 * " "})
    history = [next(iter(before.documents.values()))[0]]
    for number in range(2, 5):
        history.append(sealed(replace(history[-1], number=number), history[-1].seal))
    write_contents(replace(before, documents={history[0].document: tuple(history)}), tmp_path / "a.zip")
    assert len(read_contents(tmp_path / "a.zip").documents[history[0].document]) == 4


def test_only_an_empty_folder_is_taken(tmp_path):
    (tmp_path / "empty").mkdir()
    write_contents(small_notebook(), tmp_path / "empty")
    assert read_contents(tmp_path / "empty").fingerprint == small_notebook().fingerprint
    for name in ("empty", "file", "file.zip"):
        (tmp_path / name).touch()
        with pytest.raises(InputError, match="nothing is overwritten"):
            write_contents(small_notebook(), tmp_path / name)
    assert sorted(path.name for path in tmp_path.iterdir()) == ["empty", "file", "file.zip"]


def test_what_file_managers_leave_in_folders_does_no_harm(tmp_path):
    write_contents(small_notebook(), tmp_path / "a")
    (tmp_path / "a" / QUAY / ".DS_Store").write_bytes(b"x")
    assert read_contents(tmp_path / "a").fingerprint == small_notebook().fingerprint


def test_a_folder_that_lost_a_document_is_refused(tmp_path):
    write_contents(small_notebook(), tmp_path / "a")
    for path in (tmp_path / "a" / NOON).iterdir():
        path.unlink()
    with pytest.raises(InputError, match="not whole"):
        read_contents(tmp_path / "a")
