"""A file that somebody asks for is written where its folder is, and nowhere else."""

import pytest

from lumped.app import ready_to_write
from lumped.errors import InputError
from lumped.notebook.placing import whole_file, whole_folder


def test_a_missing_folder_is_named_and_not_made(tmp_path):
    with pytest.raises(InputError, match=r"There is no folder “.*/typo”.*card.pdf"):
        ready_to_write(tmp_path / "typo" / "card.pdf", (".pdf",))
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("whole", [whole_file, whole_folder])
def test_a_notebook_is_written_into_no_missing_folder(whole, tmp_path):
    with pytest.raises(InputError, match=r"There is no folder “.*/typo”"), whole(tmp_path / "typo" / "deeper" / "all"):
        pass
    assert not list(tmp_path.iterdir())


def test_a_folder_that_is_there_is_written_into_and_left_clean(tmp_path):
    ready_to_write(tmp_path / "card.pdf", (".pdf",))
    assert not list(tmp_path.iterdir())
