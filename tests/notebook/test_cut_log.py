"""The log cut at any byte, or overwritten from any byte on: every commit before it is there, and nothing half."""

import shutil
from pathlib import Path
from random import Random

import pytest
from tests.notebook.cutting import HEAD, Commits, commit_many, damage, half_moved, log_of

from lumped.errors import NotebookError
from lumped.notebook import open_notebook

CUTS = 200


@pytest.fixture(scope="module")
def commits(tmp_path_factory: pytest.TempPathFactory) -> Commits:
    return commit_many(tmp_path_factory.mktemp("commits"))


@pytest.mark.parametrize("tenth", range(10))
def test_a_log_cut_at_any_byte_loses_no_commit_before_it(tenth: int, commits: Commits, tmp_path: Path) -> None:
    chance = Random(tenth)
    cuts = [chance.randrange(len(commits.log) + 1) for _ in range(CUTS // 10)]
    found = {cut: damage(commits, tmp_path / str(cut), cut) for cut in cuts}
    assert {cut: problems for cut, problems in found.items() if problems} == {}


@pytest.mark.parametrize("tenth", range(10))
def test_a_log_overwritten_from_any_byte_on_loses_no_commit_before_it(
    tenth: int, commits: Commits, tmp_path: Path
) -> None:
    chance = Random(100 + tenth)
    found = {}
    for cut in (chance.randrange(len(commits.log)) for _ in range(CUTS // 20)):
        rubbish = bytes([commits.log[cut] ^ 0xFF]) + chance.randbytes(len(commits.log) - cut - 1)
        found[cut] = damage(commits, tmp_path / str(cut), cut, rubbish)
    assert {cut: problems for cut, problems in found.items() if problems} == {}


def test_a_log_cut_just_at_and_before_the_end_of_a_commit(commits: Commits, tmp_path: Path) -> None:
    assert commits.whole(commits.ends[5]) == 5
    assert commits.whole(commits.ends[5] - 1) == 4
    for cut in (0, HEAD, commits.ends[5] - 1, commits.ends[5], len(commits.log)):
        assert damage(commits, tmp_path / str(cut), cut) == []


def test_power_that_fails_while_the_log_is_moved_into_the_file_loses_nothing(commits: Commits, tmp_path: Path) -> None:
    found = {seed: half_moved(commits, tmp_path / str(seed), Random(seed)) for seed in range(40)}
    assert {seed: problems for seed, problems in found.items() if problems} == {}


def test_a_log_beside_an_empty_file_is_damage_and_not_a_new_notebook(commits: Commits, tmp_path: Path) -> None:
    file = tmp_path / "notebook.sqlite"
    file.touch()
    shutil.copyfile(log_of(commits.file), log_of(file))
    with pytest.raises(NotebookError, match=r"is damaged.*Keep the file as it is"):
        open_notebook(file)
    assert log_of(file).read_bytes() == commits.log
