"""Sentences and tables of the pages tell where their numbers come from, too."""

import pytest

from lumped.app.asking import Question, wall_lasts
from lumped.app.asking_trial import trialled
from lumped.app.beside import besides
from lumped.app.examples import example_recipe
from lumped.app.given import Given

SALT, SUGAR = (Given(name=name, text=example_recipe(name)) for name in ("ropewalk-salt.toml", "ropewalk-sugar.toml"))


def nothing(share):
    assert 0 <= share <= 1


def test_amounts_side_by_side_tell_how_they_were_written():
    told = besides(Question(given=SALT, others=(SUGAR,), said={"names": ["a", "b"], "region": ""}), nothing)
    there = [(key, number) for key, _, cells in told["amounts"] for number, cell in enumerate(cells) if "g" in cell]
    assert len(there) >= 9
    assert all(f"{key}-{number}" in told["sources"] for key, number in there)
    assert "The recipe says 1/4 cup" in told["sources"]["table-salt-0"]["note"]


def test_how_long_a_wall_lasts_and_what_a_trial_shows_tell_their_sources():
    said = {"thick": 3.0, "touch": 4.0, "lamp": "lamp-red"}
    lasts = wall_lasts(Question(given=SUGAR, said=said), nothing)["sources"]["wall-lasts"]
    assert "Salt creeps by diffusion" in lasts["note"]
    line = trialled(SALT, {})["sources"]["trial-line"]
    assert line["made_of"]
    assert line["status"]


@pytest.mark.parametrize("key", ["trial-good", "trial-line"])
def test_every_key_that_the_trials_page_asks_for_is_told(key):
    assert key in trialled(SALT, {})["sources"]
