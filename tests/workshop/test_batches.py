"""Scaling to a mass of finished dough, pots, kitchen measures."""

from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as some
from tests.bowls import recipe_of

from lumped.dough import Portion, Recipe, read_recipe
from lumped.dough.kneading import knead_middle, kneading
from lumped.errors import InputError, RecipeError
from lumped.pantry import pantry, regions
from lumped.quantities import Value
from lumped.workshop import batches_of, make_dough, scaled_to
from lumped.workshop.kitchen import in_kitchen, measures_of

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = (read_recipe(RECIPES / f"ropewalk-{name}.toml") for name in ("salt", "sugar"))
SHOP = pantry()


@settings(max_examples=15, deadline=None)
@given(
    flour=some.floats(50, 500), water=some.floats(50, 900), salt=some.floats(0, 300), mass=some.floats(0.05, 900),
    cooked=some.sampled_from(["pot", "kettle", "microwave", "not cooked"]),
)  # fmt: skip
def test_scaling_conserves_mass_water_and_the_dough(flour, water, salt, mass, cooked):
    recipe = recipe_of(
        {"plain-flour": flour, "tap-water": water} | ({"table-salt": salt} if salt else {}), cooked=cooked
    )
    larger = scaled_to(recipe, mass, SHOP)
    factor = larger.mass_of("plain-flour") / recipe.mass_of("plain-flour")
    assert all(larger.mass_of(key) == pytest.approx(factor * recipe.mass_of(key)) for key in recipe.ingredients)
    assert np.median(kneading(larger, SHOP).chain.mass) == pytest.approx(mass)
    before, after = knead_middle(recipe, SHOP), knead_middle(larger, SHOP)
    assert after.mass + after.water_lost == pytest.approx(after.went_in)  # what went in is dough or steam
    assert after.resistivity == pytest.approx(before.resistivity, rel=1e-6)


@pytest.mark.parametrize("recipe", [SALT, SUGAR], ids=["salt", "sugar"])
@pytest.mark.parametrize("pot", [5e-4, 2e-3, 3e-3, 2e-2])
def test_batches_are_equal_fit_the_pot_and_make_the_whole(recipe, pot):
    found = batches_of(recipe, 1.7, pot=pot, shop=SHOP)
    assert found.count * found.each.mean == pytest.approx(1.7, rel=2e-3)  # median of the draws
    assert found.full <= 0.6 + 1e-9
    assert found.each.mean <= 2.5 * 1.01  # as much as arms stir
    fewer = (found.count - 1) or 1
    assert found.count == 1 or 1.7 / fewer * found.room / pot > 0.5 or 1.7 / fewer > 2.5


def test_a_recipe_is_made_as_it_is_where_nothing_is_said():
    found = make_dough(SALT, SHOP)
    assert found.batches.count == 1
    assert found.batches.whole.mass_of("table-salt") == pytest.approx(SALT.mass_of("table-salt"))


@pytest.mark.parametrize(
    ("mass", "pot", "says"),
    [
        (0.0, None, "0 kg of dough can’t be planned here. Give a mass from 20 g to 1,000 kg"),
        (float("nan"), None, "can’t be planned here"),
        (1e9, None, "can’t be planned here"),
        (1.0, 0.0, "A pot of 0 L is none that Lumped knows"),
        (1.0, 1.0, "Give one from 0.2 to 100 L"),
    ],
)
def test_what_nobody_makes_is_refused(mass, pot, says):
    with pytest.raises(InputError, match=says):
        batches_of(SALT, mass, pot=pot, shop=SHOP)


def test_every_region_has_measures_in_which_both_recipes_can_be_written():
    for where in regions():
        system = measures_of(where, SALT)
        for recipe in (SALT, SUGAR):
            lines, shifts = in_kitchen(recipe.scaled(3.7), system, SHOP)
            assert all(line.measures and line.mass > 0 for line in lines)
            assert abs(shifts["resistivity"]) < 0.06
            assert abs(shifts["hydration"]) < 0.04
    assert measures_of("japan", SALT) == "japanese"


def test_rounding_all_together_moves_a_dough_less_than_rounding_each_alone():
    one = scaled_to(SALT, 0.777, SHOP)
    aim = knead_middle(one, SHOP)
    lines, shifts = in_kitchen(one, "us", SHOP)
    masses = {line.ingredient: line.rounded + sum(line.as_needed or (0, 0)) / 2 for line in lines}
    rounded = recipe_of({key: 1e3 * mass for key, mass in masses.items()})
    moved = float(knead_middle(rounded, SHOP).resistivity[0] / aim.resistivity[0]) - 1
    assert shifts["resistivity"] == pytest.approx(moved, abs=1e-6)  # the shift shown is the shift there is


def test_unknown_measures_are_told_with_those_that_there_are():
    with pytest.raises(RecipeError, match=r"There are no furlong measures here\. Choose one of: us"):
        in_kitchen(SALT, "furlong", SHOP)


def test_what_is_only_added_by_feel_is_not_measured():
    feel = Portion(ingredient="plain-flour", written="as needed", mass=Value.exact(0.0, "kg"), as_needed=(0.1, 0.3))
    water = Portion(ingredient="tap-water", written="", mass=Value.exact(0.1, "kg"))
    recipe = Recipe(title="", kind="insulating", portions=(feel, water), cooked="not cooked")
    flour, _ = in_kitchen(recipe, "metric", SHOP)[0]
    assert (flour.measures, flour.mass, flour.as_needed) == ("", 0.0, (0.1, 0.3))
