"""The same dough from the kettle, in a microwave oven, or kneaded cold."""

from pathlib import Path

import pytest
from tests.bowls import recipe_of

from lumped.dough import read_recipe
from lumped.dough.kneading import knead_middle
from lumped.dough.other_ways import cold_version, kettle_version, made_otherwise
from lumped.dough.swap import Wish, swapped
from lumped.pantry import pantry
from lumped.workshop import make_dough

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = (read_recipe(RECIPES / f"ropewalk-{name}.toml") for name in ("salt", "sugar"))
SHOP = pantry()


def test_a_kettle_dough_takes_less_water_and_holds_as_much():
    other = kettle_version(SALT, SHOP)
    before, after = (float(knead_middle(each, SHOP).of("water")[0]) for each in (SALT, other))
    assert other.mass_of("tap-water") < SALT.mass_of("tap-water")
    assert after == pytest.approx(before, rel=1e-6)
    assert kettle_version(SUGAR, SHOP) is None


def test_a_cold_dough_is_as_much_dough_and_as_wet_as_hands_can_knead():
    other = cold_version(SALT, SHOP)
    before, after = (knead_middle(each, SHOP) for each in (SALT, other))
    assert after.mass[0] == pytest.approx(before.mass[0], rel=5e-3)  # a little dries off in the hands
    assert 0.96 < after.hydration[0] < 1.0  # the window kneaded cold ends at 100 %
    assert {key for key in SALT.ingredients if other.mass_of(key) != SALT.mass_of(key)} == {"plain-flour", "tap-water"}


def test_what_is_kneaded_cold_or_dry_enough_stays_as_it_is():
    assert cold_version(SUGAR, SHOP) is SUGAR
    dry = recipe_of({"plain-flour": 100, "honey": 50})
    assert cold_version(dry, SHOP).masses == dry.masses
    assert made_otherwise(SUGAR, "microwave", SHOP) is None
    assert made_otherwise(SALT, "microwave", SHOP).masses == SALT.masses


def test_a_dough_boiled_down_never_loses_flour():
    boiled = recipe_of({"plain-flour": 100, "tap-water": 300, "table-salt": 20}, weighed_after=0.2)
    other = cold_version(boiled, SHOP)
    assert other.mass_of("plain-flour") == pytest.approx(0.1)
    assert 0.96 < knead_middle(other, SHOP).hydration[0] < 1.0


@pytest.mark.parametrize("way", ["kettle", "not cooked"])
def test_a_plan_and_a_swap_make_it_the_same_other_way(way):
    plan = next(each.recipe for each in make_dough(SALT, within=2400.0).options if each.way == way)
    found = swapped(SALT, Wish(stove=False), measures="scale").proposals
    swap = next(each.recipe for each in found if each.recipe.cooked == way)
    assert swap.masses == pytest.approx(plan.masses, abs=3e-3)  # rounded to grams
