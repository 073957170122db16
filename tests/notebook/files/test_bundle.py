"""One JSON file: what was written comes back as it was, and fits the schema."""

import json
from dataclasses import replace

import jsonschema
import pytest
from tests.notebook.fuzzing import small_notebook

from lumped.errors import InputError
from lumped.notebook.canonical import hash_of
from lumped.notebook.files.bundle import bundle_schema, read_bundle, write_bundle
from lumped.notebook.records import Contents, sealed


@pytest.fixture
def bundle(tmp_path):
    write_bundle(small_notebook(), tmp_path / "a.json")
    return tmp_path / "a.json"


def written_with(body: dict, path) -> Contents:
    """A notebook with one document of this body, written."""
    first = next(iter(small_notebook().documents.values()))[0]
    document = (sealed(replace(first, body=body, hash=hash_of(body)), ""),)
    contents = Contents(id=first.document, documents={first.document: document}, series={})
    write_bundle(contents, path)
    return contents


def test_a_bundle_fits_its_schema(bundle):
    jsonschema.Draft202012Validator.check_schema(bundle_schema())
    jsonschema.validate(json.loads(bundle.read_text("utf-8")), bundle_schema(), jsonschema.Draft202012Validator)


@pytest.mark.parametrize("key", ["kind", "schema", "id", "fingerprint", "documents", "series"])
def test_a_bundle_without_a_key_fits_neither_schema_nor_reader(bundle, key):
    table = json.loads(bundle.read_text("utf-8"))
    del table[key]
    assert not jsonschema.Draft202012Validator(bundle_schema()).is_valid(table)
    bundle.write_text(json.dumps(table))
    with pytest.raises(InputError):
        read_bundle(bundle)


@pytest.mark.parametrize(
    "style", [{"indent": 2}, {"sort_keys": True}, {"ensure_ascii": True, "separators": (" , ", " : ")}]
)
def test_another_layout_of_the_same_json_is_the_same_notebook(bundle, style):
    bundle.write_text(json.dumps(json.loads(bundle.read_text("utf-8")), **style), "utf-8")
    assert read_bundle(bundle).fingerprint == small_notebook().fingerprint


def test_large_floats_come_back_as_floats(tmp_path):
    before = written_with({"a": 2.0**53, "b": [1e20, -1e17, 3.0]}, tmp_path / "a.json")
    (history,) = read_bundle(tmp_path / "a.json").documents.values()
    assert history[0].body == {"a": 2.0**53, "b": [1e20, -1e17, 3]}
    assert type(history[0].body["a"]) is float
    assert history[0].seal == next(iter(before.documents.values()))[0].seal


def test_what_is_there_is_never_overwritten(bundle):
    before = bundle.read_bytes()
    with pytest.raises(InputError, match="nothing is overwritten"):
        write_bundle(small_notebook(), bundle)
    assert bundle.read_bytes() == before


def test_a_bundle_that_can_not_be_written_leaves_nothing(tmp_path, monkeypatch):
    monkeypatch.setattr("lumped.notebook.files.bundle.canonical_text", lambda body: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        write_bundle(small_notebook(), tmp_path / "a.json")
    assert list(tmp_path.iterdir()) == []
