"""Kill -9 at any moment: whatever was acknowledged is there, as it was written, once."""

import signal
from collections.abc import Iterator
from pathlib import Path
from random import Random

import pytest
from tests.notebook.trials import Ground, ground, kill_once, look, shared

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
