"""Kill -9 at any moment: whatever was acknowledged is there, as it was written, once."""

import signal
from collections.abc import Iterator
from pathlib import Path
from random import Random

import pytest
from tests.notebook.looking import look
from tests.notebook.nursery import shared
from tests.notebook.trials import Ground, ground, kill_once

from lumped.notebook import open_notebook

KILLS = 40  # `make long` kills 500


@pytest.fixture(scope="module")
def at(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Ground]:
    with ground(tmp_path_factory.mktemp("ground")) as made:
        yield made


@pytest.mark.parametrize("seed", range(KILLS))
def test_a_killed_program_loses_nothing_it_was_acknowledged(seed: int, at: Ground, tmp_path: Path) -> None:
    outcome = kill_once(seed, tmp_path, at)
    assert outcome.problems == ()


@pytest.mark.parametrize("seed", range(6))
def test_a_server_keeps_what_a_killed_client_was_acknowledged(
    seed: int, at: Ground, server_address: str, tmp_path: Path
) -> None:
    with open_notebook(server_address) as notebook:
        document, series = shared(notebook, "", "")
    task = {"place": server_address, "document": document, "series": series}
    child = at.nursery.start(tmp_path, "work", seed=seed + 1, **task)
    other = at.nursery.start(tmp_path, "work", seed=500_000 + seed, steps=30, **task)
    child.run_for(Random(seed).uniform(0, 0.5))
    assert child.kill() == -signal.SIGKILL
    other.finish()
    with open_notebook(server_address) as notebook:
        _, problems = look([child.acknowledged, other.acknowledged], notebook, killed=1)
    assert problems == []


def test_every_commit_into_a_file_waits_for_the_disk(tmp_path: Path) -> None:
    with open_notebook(tmp_path) as notebook, notebook._store.writing() as connection:
        settings = ("journal_mode", "synchronous", "fullfsync", "foreign_keys")
        assert {name: connection.exec_driver_sql(f"PRAGMA {name}").scalar() for name in settings} == {
            "journal_mode": "wal", "synchronous": 2, "fullfsync": 1, "foreign_keys": 1,  # 2 is FULL
        }  # fmt: skip


def test_a_program_that_does_not_close_its_recorder_keeps_what_was_acknowledged(at: Ground, tmp_path: Path) -> None:
    """The child says what is committed; it is killed when much more is waiting."""
    with open_notebook(tmp_path) as notebook:
        document, series = shared(notebook, "", "")
    child = at.nursery.start(tmp_path, "work", place=str(tmp_path), seed=1, document=document, series=series)
    child.run_until("recorded")
    child.kill()
    with open_notebook(tmp_path) as notebook:
        counts, problems = look([child.acknowledged], notebook, killed=1)
    assert problems == []
    assert counts["readings"] > 0
