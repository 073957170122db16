"""A notebook of the tests' own, opened as the app opens one."""

import pytest

from lumped.app.notebooks import open_notebook
from lumped.app.settings import Settings


@pytest.fixture
def notebook(tmp_path):
    with open_notebook(settings=Settings(notebook=str(tmp_path / "lab.sqlite"), who="Ines")) as notebook:
        yield notebook
