"""What dominates the uncertainty, and what a measurement would shrink."""

from dataclasses import replace

import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough import knead
from lumped.dough.influence import MEASUREMENTS
from lumped.dough.notes import narrowing_words

SALT = recipe_of({**CONDUCTING, "table-salt": 73})


def shares(recipe):
    return {each.measurement: each.share for each in knead(recipe).influences}


def test_of_a_weighed_salt_dough_the_obstruction_dominates():
    found = knead(SALT).influences
    assert found[0].measurement == "resistivity"
    assert found[0].share > 0.6
    assert [each.share for each in found] == sorted((each.share for each in found), reverse=True)


def test_of_a_sugar_dough_the_syrup_counts_too():
    found = shares(recipe_of(INSULATING, "insulating", "not cooked"))
    assert {"resistivity", "syrup"} <= set(found)


@pytest.mark.parametrize("recipe", [
    SALT, replace(SALT, portions=(replace(SALT.portions[0], as_needed=(0.0, 0.3)), *SALT.portions[1:])),
    recipe_of(INSULATING, "insulating", "not cooked"),
    recipe_of({**INSULATING, "granulated-sugar": 140}, "insulating", "not cooked"),
    recipe_of({"cornstarch": 150, "tap-water": 90}, "insulating"),
])  # fmt: skip
def test_what_would_narrow_most_stands_first(recipe):
    found = [each.share for each in knead(recipe).influences]
    assert found == sorted(found, reverse=True)


def test_the_ranking_is_not_the_order_of_the_list():
    """Else the test above would hold without any ranking."""
    starch = recipe_of({"cornstarch": 150, "tap-water": 90}, "insulating")
    ranked = [MEASUREMENTS.index(each.measurement) for each in knead(starch).influences]
    assert ranked != sorted(ranked)


def test_flour_by_feel_makes_the_scale_worth_while():
    loose = replace(SALT.portions[0], as_needed=(0.0, 0.08))
    assert shares(replace(SALT, portions=(loose, *SALT.portions[1:]))).get("scale", 0) > shares(SALT).get("scale", 0)


def test_what_is_left_after_a_measurement_is_less_than_before():
    dough = knead(SALT)
    whole = dough.resistivity.high / dough.resistivity.low
    assert all(1 <= each.factor_left <= whole * 1.001 for each in dough.influences)


def test_weighing_the_finished_dough_takes_the_steam_out_of_the_ranking():
    assert "finished" in shares(SALT)
    assert "finished" not in shares(replace(SALT, weighed_after=0.42))


def test_the_shares_of_groups_that_hardly_work_together_sum_to_about_one():
    assert sum(shares(SALT).values()) == pytest.approx(1.0, abs=0.25)


@pytest.mark.parametrize("grams", [
    {"plain-flour": 250, "tap-water": 120, "coarse-salt": 60}, {"plain-flour": 100, "tap-water": 60, "table-salt": 20},
    {"cornstarch": 150, "vegetable-oil": 60, "distilled-water": 50}, {"rice-flour": 200, "tap-water": 180, "table-salt": 40},
])  # fmt: skip
def test_nothing_is_advised_that_leaves_the_ends_as_far_apart(grams):
    dough = knead(recipe_of(grams, "conducting", "not cooked"))
    whole = dough.resistivity.high / dough.resistivity.low
    assert dough.influences
    assert all(each.factor_left < whole for each in dough.influences)


def test_where_no_measurement_of_a_part_helps_that_is_said():
    powder = knead(recipe_of({"cornstarch": 150, "vegetable-oil": 60}, "insulating", "not cooked"))
    assert not powder.influences
    assert "Only measuring a specimen would" in narrowing_words(powder)[0]
