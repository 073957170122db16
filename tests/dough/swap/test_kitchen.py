"""What is proposed can be measured: no specks."""

import pytest
from tests.bowls import recipe_of

from lumped.dough.swap import read_wish, swapped
from lumped.pantry import pantry

ALUM = {"plain-flour": 250, "tap-water": 250, "table-salt": 100, "alum": 40, "vegetable-oil": 15}


@pytest.mark.parametrize("measures", ["us", "scale"])
def test_no_speck_of_fat_stands_for_all_of_it(measures):
    recipe = recipe_of(ALUM)
    found = swapped(recipe, read_wish(recipe, pantry(), target="carries-better"), measures=measures, count=5)
    assert found.proposals
    specks = [(each.ingredient, each.written) for one in found.proposals for each in one.changes
              if 0 < each.after < 5e-4]  # fmt: skip
    assert specks == []


def test_a_strong_acid_stays_however_little_it_is():
    recipe = recipe_of({"plain-flour": 130, "tap-water": 237, "table-salt": 55, "cream-of-tartar": 9})
    found = swapped(recipe, read_wish(recipe, pantry(), without=["cream-of-tartar"]), measures="us", count=3)
    assert any("citric-acid" in each.recipe.ingredients for each in found.proposals)


def test_proposals_are_never_twice_the_same():
    recipe = recipe_of(ALUM)
    found = swapped(recipe, read_wish(recipe, pantry(), target="carries-better"), measures="scale", count=8)
    made = [(each.recipe.cooked, frozenset(each.recipe.ingredients)) for each in found.proposals]
    assert len(made) == len(set(made))


@pytest.mark.parametrize("target", ["carries-better", "keeps-longer"])
def test_where_less_oil_does_it_is_less_of_the_oil_that_was_in_it(target):
    recipe = recipe_of({"plain-flour": 130, "tap-water": 237, "table-salt": 55, "vegetable-oil": 13.6,
                        "cream-of-tartar": 9})  # fmt: skip
    found = swapped(recipe, read_wish(recipe, pantry(), target=target), measures="us", count=5)
    oils = {key for each in found.proposals for key in each.recipe.ingredients
            if pantry()[key].composition.get("fat", 0.0) > 0.3}  # fmt: skip
    assert oils <= {"vegetable-oil"}
