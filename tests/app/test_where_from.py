"""Sentences and tables of the pages tell where their numbers come from, too."""

import pytest

from lumped.app.asking import Question, swapped, wall_lasts
from lumped.app.asking_trial import trialled
from lumped.app.beside import besides
from lumped.app.examples import example_recipe
from lumped.app.for_class import classed
from lumped.app.given import Given
from lumped.texts import say

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


def test_each_amount_and_each_figure_of_before_in_a_swap_tells_its_own_source():
    said = {"without": ["cream-of-tartar"], "diets": [], "region": None, "target": ""}
    told = swapped(Question(given=SALT, said=said), nothing)
    for number, each in enumerate(told["proposals"], 1):
        assert len(each["figures"]) > 5
        for key, _, before, _ in each["figures"]:
            assert not before or told["sources"][f"{key}-before"]["status"]
        amounts = {
            key: (after, told["sources"][f"no-{number}-amount-{key}"]) for key, _, _, after in each["amounts"] if after
        }
        assert "The recipe says 1/4 cup" in amounts["table-salt"][1]["note"]
        new = next(key for key, _, before, after in each["amounts"] if after and not before)
        assert amounts[new][1]["note"] == say("web-source-swap-amount")
    before = told["sources"]["no-1-resistivity-before"]
    assert before["note"].startswith(say("web-source-chain"))
    assert len(before["made_of"]) > 5


def test_amounts_of_all_batches_and_what_is_bought_tell_their_own_sources():
    said = {"by": "people", "people": "28", "age": "9", "group": "two", "mass": "", "pot": "3", "minutes": "40",
            "region": "europe", "little_over": False}  # fmt: skip
    told = classed(Question(given=SALT, said=said), nothing)
    for key in told["batch"]["keys"]:
        assert told["sources"][f"all-{key}"]["note"] == say("web-make-source-all", count=2)
    for table in ("cooling", "in_time"):
        assert all(f"{key}-more" in told["sources"] for key in told[table]["keys"])
        assert len(told[table]["keys"]) > 3
    bought = [key for _, _, keys in told["shops"] for key in keys]
    assert "table-salt" in bought
    for key in bought:
        assert told["sources"][f"need-{key}"]["status"]
        assert told["sources"][f"over-{key}"]["made_of"] == told["sources"][f"money-{key}"]["made_of"]
