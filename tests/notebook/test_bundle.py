"""One JSON file: what was written comes back as it was."""

from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import given, settings
from tests.notebook.making import contents

from lumped.notebook.bundle import read_bundle, write_bundle
from lumped.notebook.canonical import canonical_text
from lumped.notebook.records import Contents


def all_bodies(them: Contents) -> list[str]:
    return [
        canonical_text(each.body) for history in them.documents.values() for each in history if each.body is not None
    ]


@settings(max_examples=150)
@given(contents())
def test_a_notebook_comes_back_from_a_bundle_identical(before):
    with TemporaryDirectory() as folder:
        write_bundle(before, Path(folder, "a.json"))
        after = read_bundle(Path(folder, "a.json"))
    assert (after.id, after.fingerprint) == (before.id, before.fingerprint)
    assert all_bodies(after) == all_bodies(before)
