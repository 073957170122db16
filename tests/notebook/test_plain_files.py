"""A folder of plain files, or one archive of it: what was written comes back as it was."""

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from tests.notebook.making import all_bodies, contents

from lumped.notebook.bundle import read_contents, write_contents
from lumped.notebook.records import Contents


def carried(before: Contents, name: str) -> Contents:
    with TemporaryDirectory() as folder:
        write_contents(before, Path(folder, name))
        return read_contents(Path(folder, name))


@pytest.mark.parametrize("name", ["folder", "archive.zip", "bundle.json"])
@settings(max_examples=100)
@given(before=contents())
def test_a_notebook_comes_back_identical(name, before):
    after = carried(before, name)
    assert (after.id, after.fingerprint) == (before.id, before.fingerprint)
    assert all_bodies(after) == all_bodies(before)
