"""A recipe's dough as the clocks take it."""

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.beliefs import draws, middle
from lumped.dough.kneading import followed, knead_middle, kneading
from lumped.dough.lasting import Piece, Room, dry, isotherm_from, moist_from, warm_from
from lumped.dough.lasting.kneaded import isotherm_of_parts
from lumped.errors import InputError
from lumped.pantry import pantry

SALT = recipe_of(CONDUCTING | {"table-salt": 73})
SUGAR = recipe_of(INSULATING, "insulating", "not cooked")


@pytest.mark.parametrize("recipe", [SALT, SUGAR])
def test_a_fresh_dough_has_the_resistivity_of_its_recipe_in_every_draw(recipe):
    given = draws(recipe, pantry())[0].first(16)
    dough, chain = moist_from(recipe, given=given), followed(recipe, given, pantry())
    found = dough.resistivity(np.asarray(dough.content)[:, None])[:, 0]
    assert found == pytest.approx(chain.resistivity, rel=1e-9)


def test_water_that_left_in_the_air_counts_as_water_that_left_in_the_pot():
    dough = moist_from(SALT)
    fresh, drier = (
        knead_middle(recipe_of(CONDUCTING | {"table-salt": 73}, weighed_after=mass)) for mass in (0.42, 0.36)
    )
    content = float((drier.of("water") / (drier.mass - drier.of("water")))[0])
    ours = dough.resistivity(np.array([[content]]))[0, 0] / dough.resistivity(np.asarray(dough.content)[:, None])[0, 0]
    of_middle = knead_middle(SALT).resistivity
    assert ours == pytest.approx(drier.resistivity[0] / of_middle[0], rel=0.02)  # straight lines between 41 levels
    assert drier.resistivity > fresh.resistivity


def test_a_weighed_dough_holds_the_water_that_its_weight_says():
    dough = moist_from(recipe_of(CONDUCTING | {"table-salt": 73}, weighed_after=0.40))
    chain = knead_middle(recipe_of(CONDUCTING | {"table-salt": 73}, weighed_after=0.40))
    assert chain.mass == pytest.approx(0.40)
    assert dough.content == pytest.approx(chain.of("water") / (0.40 - chain.of("water")))


def test_resistivity_never_falls_as_a_dough_dries():
    dough = moist_from(SUGAR, given=draws(SUGAR, pantry())[0].first(16))
    contents = np.asarray(dough.content)[:, None] * np.linspace(0.02, 1.0, 60)
    falls = np.diff(np.log(dough.resistivity(contents)), axis=1)
    assert np.all(falls < 1e-9)  # level only where no free water is left
    assert np.all(falls[:, -10:] < 0)


def test_the_air_of_a_salt_dough_is_that_of_saturated_brine_and_of_a_dough_without_salt_that_of_water():
    chain = knead_middle(SALT)
    content = chain.of("water") / (chain.mass - chain.of("water"))
    assert isotherm_from(chain, most=3.0).activity_at(content) == pytest.approx(0.753, abs=0.005)  # Greenspan: 75.3 %
    plain = knead_middle(recipe_of(CONDUCTING))
    content = plain.of("water") / (plain.mass - plain.of("water"))
    assert isotherm_from(plain, most=4.0).activity_at(content) > 0.98


def test_the_two_ways_to_a_water_activity_agree_at_fresh_doughs():
    for recipe in (SALT, recipe_of(CONDUCTING | {"table-salt": 36}), SUGAR):
        chain = followed(recipe, middle(recipe, pantry()), pantry())
        content = chain.of("water") / (chain.mass - chain.of("water"))
        apart = isotherm_of_parts(chain, most=2.5 * float(content.max()))
        assert apart.activity_at(content) == pytest.approx(chain.water_activity, abs=0.025)


def test_a_recipe_dries_case_by_case_and_becomes_a_worse_conductor():
    dough = moist_from(SALT, given=draws(SALT, pantry())[0].first(8))
    done = dry(dough, Piece(shape="roll", thickness=0.012, extent=0.1), Room(humidity=0.45), duration=7200.0)
    assert done.loss.shape == (8, 65)
    assert np.all(done.along[:, -1] > done.along[:, 0])


def test_the_warmth_of_a_recipe_is_that_of_its_parts():
    dough = warm_from(knead_middle(SALT), pores=0.0)
    chain = knead_middle(SALT)
    water = float((chain.of("water") / chain.mass)[0])
    assert 4176 * water < dough.capacity[0] < 4176 * water + 2054 * (1 - water)
    assert dough.density == pytest.approx(chain.density / 0.97, rel=0.04)  # two tables of densities, and 3 % air


@pytest.mark.parametrize("grams", [{"vegetable-oil": 100}, {"table-salt": 100}, {"tap-water": 100}])
def test_what_is_no_dough_is_not_dried(grams):
    with pytest.raises(InputError, match=r"g of water to 100 g of all the rest"):
        moist_from(recipe_of(grams, cooked="not cooked"))


@pytest.mark.parametrize("recipe", [SALT, SUGAR])
def test_a_fresh_dough_is_in_balance_with_the_air_of_its_own_water_activity(recipe):
    chain = kneading(recipe).chain
    content = chain.of("water") / (chain.mass - chain.of("water"))
    law = isotherm_from(chain, most=2.5 * float(content.max()))
    np.testing.assert_allclose(law.activity_at(content), chain.water_activity, atol=0.003)  # straight lines of a table
