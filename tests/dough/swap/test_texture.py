"""What is proposed can be kneaded: the window that a search keeps is the one that `lumped dough` tells of."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.bowls import INSULATING, recipe_of

from lumped.dough.kneading import knead_middle
from lumped.dough.swap import read_wish, swapped
from lumped.dough.swap.figures import WAYS, figures_of, table_of
from lumped.dough.texture import features_of
from lumped.pantry import pantry

SALT = {"plain-flour": 130, "tap-water": 237, "table-salt": 55, "vegetable-oil": 13.6, "cream-of-tartar": 9}
WISHES = ({"without": ["gluten"]}, {"without": ["sugar"]}, {"without": ["gluten", "sugar"]}, {"without": ["fat"]},
          {"target": "keeps-longer"}, {"diets": ["coeliac"], "without": ["corn"]})  # fmt: skip


@settings(max_examples=6, deadline=None, derandomize=True)
@given(st.sampled_from(WISHES), st.booleans(), st.sampled_from(["scale", "us"]), st.floats(0.8, 1.25))
def test_what_hands_could_knead_they_can_knead_afterwards(wish, conducts, measures, water):
    recipe = recipe_of({**SALT, "tap-water": 237 * water}) if conducts else \
        recipe_of({**INSULATING, "distilled-water": 70 * water}, "insulating", "not cooked")  # fmt: skip
    found = swapped(recipe, read_wish(recipe, pantry(), **wish), measures=measures)
    assert found.feel.fits
    assert [each.feel.hydration.mean for each in found.proposals if not each.feel.fits] == []


@pytest.mark.parametrize("without", [["sugar"], ["gluten", "sugar"]])
def test_without_sugar_the_dough_does_not_crumble(without):
    sweet = recipe_of(INSULATING, "insulating", "not cooked")
    found = swapped(sweet, read_wish(sweet, pantry(), without=without), measures="scale")
    assert found.proposals
    assert all(each.feel.fits and each.beyond["texture"] == 0 for each in found.proposals)


@pytest.mark.parametrize("flour", ["plain-flour", "cornstarch", "rice-flour", "almond-flour"])
@pytest.mark.parametrize("cooked", ["pot", "not cooked"])
def test_where_water_to_flour_lies_is_one_thing_for_a_search_and_for_a_dough(flour, cooked):
    recipe = recipe_of({flour: 130, "tap-water": 150, "table-salt": 40, "xanthan-gum": 2}, "conducting", cooked)
    table = table_of(recipe, recipe.ingredients, pantry())
    masses = np.array([[recipe.mass_of(key)] for key in recipe.ingredients])
    place = figures_of(table, masses, np.array([WAYS.index(cooked)])).place[0]
    assert place == pytest.approx(features_of(recipe, knead_middle(recipe))[1], rel=1e-9)


def test_no_dough_is_made_of_gum_or_husk():
    """A binder takes so much water that nothing would leak: an aim at blocking must not end there."""
    sweet = recipe_of(INSULATING, "insulating", "not cooked")
    found = swapped(sweet, read_wish(sweet, pantry(), target="blocks-better"), measures="scale")
    most = {key: mass for each in found.proposals for key, mass in each.recipe.masses.items()
            if "binder" in pantry()[key].roles}  # fmt: skip
    assert found.proposals
    assert all(mass < 0.01 for mass in most.values())
