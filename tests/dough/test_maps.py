"""Three ingredients in all proportions: each point is the dough that a recipe of those amounts would give."""

from dataclasses import replace

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of
from tests.till import PRICES

from lumped.dough import knead
from lumped.dough.beliefs import middle
from lumped.dough.kneading import followed, typical
from lumped.dough.maps import REASONS, hydration_window, mix_map
from lumped.dough.properties import PROPERTIES, find_property
from lumped.errors import InputError, RecipeError
from lumped.pantry import pantry

SALTED = recipe_of({**CONDUCTING, "table-salt": 73})
SWEET = recipe_of(INSULATING, "insulating", "not cooked")
THREE = ("plain-flour", "tap-water", "table-salt")


@pytest.fixture(scope="module")
def plain():
    return mix_map(SALTED, THREE)


def test_shares_sum_to_one_and_triangles_tile_the_triangle(plain):
    assert plain.shares.sum(axis=1) == pytest.approx(1.0, abs=1e-12)
    a, b, c = (plain.shares[plain.triangles[:, k], :2] for k in range(3))
    areas = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    assert np.all(areas > 0)  # all turn the same way
    assert areas.sum() == pytest.approx(plain.size**2, rel=1e-9)
    assert len(plain.shares) == 2016


@pytest.mark.parametrize("key", [key for key in PROPERTIES if key != "cost"])
def test_a_point_is_the_recipe_with_those_amounts_on_its_own(key):
    found = mix_map(SALTED, THREE, key, divisions=12)
    grams = dict(CONDUCTING)
    for k in (0, 33, 77):
        alone = recipe_of(grams | dict(zip(THREE, 1e3 * found.total * found.shares[k], strict=True)))
        batch = replace(middle(alone, pantry()), unknowns=typical(SALTED).unknowns)
        expected = PROPERTIES[key].given(followed(alone, batch, pantry()))[0]
        assert found.values[k] == pytest.approx(expected, rel=1e-9)


def test_the_recipe_has_its_own_point(plain):
    masses = np.array([0.125, 0.237, 0.073])
    assert plain.point == pytest.approx(masses / masses.sum(), rel=1e-12)
    assert plain.here == pytest.approx(knead(SALTED).resistivity.mean, rel=1e-9)


def test_the_part_that_is_shown_holds_the_recipe_and_every_dough_worth_mixing(plain):
    whole = mix_map(SALTED, THREE, whole=True)
    assert whole.size == 1
    assert np.all(whole.shares[whole.feasible] >= plain.least)
    assert np.all(plain.point >= plain.least)
    assert plain.feasible.mean() > 3 * whole.feasible.mean()


def test_reasons_say_what_stands_against_a_mix():
    found = mix_map(SALTED, THREE, whole=True)
    margins, flour, water, salt = found.reasons, *found.shares.T
    dry, stiff = margins["no-free-water"] > 0, margins["too-stiff"] > 0
    assert np.all(dry[water < 0.1 * flour])  # starch and protein hold about 0.3 of their weight
    oily = flour * found.total < 0.02  # so little flour is wetted by the recipe's oil alone
    there = ~oily & (np.abs(water / np.maximum(flour, 1e-9) - 1.1) > 0.01)
    assert np.all((stiff == (water < 1.1 * flour))[there])  # the window's 110 %
    solid = margins["salt-stays-solid"] > 0
    assert np.all(solid[salt > 0.36 * water])  # CRC: 0.359 kg of salt in a kilogram of water at 20 °C
    assert not np.any(solid[(salt < 0.2 * (water - 0.5 * flour))])
    assert np.all((margins["does-not-conduct"] > 0)[salt == 0][water[salt == 0] < 0.6])


def test_a_heap_of_sugar_is_no_good_mix():
    """Of the sugar dough's flour, water and sugar 5, 5 and 324 g were called the best."""
    found = mix_map(recipe_of(INSULATING, "insulating", "not cooked"))
    best = dict(zip(found.corners, found.total * found.shares[found.extremes[1]], strict=True))
    body = 0.9 * best["plain-flour"] / sum(recipe_of(INSULATING).masses.values())  # a tenth of flour is water
    assert body > 0.08
    assert np.all((found.reasons["no-body"] > 0)[found.shares[:, 0] < 0.1])


def test_sugar_that_stays_solid_is_a_reason_as_salt_is():
    """39 g of flour, 16 g of water and 280 g of sugar counted as a good mix."""
    found = mix_map(recipe_of(INSULATING, "insulating", "not cooked"), whole=True)
    flour, water, sugar = (found.shares[:, found.corners.index(key)]
                           for key in ("plain-flour", "distilled-water", "granulated-sugar"))  # fmt: skip
    solid = found.reasons["sugar-stays-solid"] > 0
    assert np.all(solid[sugar > 2.05 * water + 0.03])  # a kilogram of water at 20 °C holds about 2 kg
    assert not np.any(solid[sugar < 1.9 * (water - 0.5 * flour)])
    assert np.all(solid[(flour < 0.13) & (water < 0.06)])
    assert not np.any(mix_map(SALTED, THREE).reasons["sugar-stays-solid"] > 0)


def test_an_insulating_dough_is_warned_where_it_carries_current():
    found = mix_map(recipe_of({**INSULATING, "table-salt": 1}, "insulating", "not cooked"),
                    ("table-salt", "plain-flour", "distilled-water"), whole=True)  # fmt: skip
    assert set(found.reasons) < set(REASONS)
    assert np.any(found.reasons["conducts"] > 0)


def test_the_window_of_hydration_is_stated_common_practice():
    for recipe, least, most in ((SALTED, 1.1, 2.4), (SWEET, 0.35, 1.0)):
        low, high = hydration_window(recipe)
        assert (low.mean, high.mean) == pytest.approx((least, most))
        assert low.provenance.status.value == high.provenance.status.value == "common practice"


def test_a_weighed_dough_keeps_its_loss_of_water():
    weighed = replace(SALTED, weighed_after=0.430)
    found = mix_map(weighed, THREE)
    assert found.here == pytest.approx(knead(weighed).resistivity.mean, rel=1e-6)


def test_ingredients_are_found_by_name_and_by_a_word_of_it():
    assert mix_map(SALTED, ["flour", "water", "salt"], divisions=4).corners == THREE


def test_cost_follows_prices():
    found = mix_map(SALTED, THREE, "cost", prices=PRICES, money="coins", divisions=6)
    masses = found.total * found.shares
    paid = masses @ [1.0, 0.0, 0.5] + 0.0136 * 2 + 0.009 * 20
    assert found.values * found.chain.mass[:-1] == pytest.approx(paid, rel=1e-9)


def test_json_names_every_point_and_what_stands_against_it():
    told = mix_map(SALTED, THREE, divisions=5).as_dict()
    assert len(told["points"]) == 21
    assert {reason for point in told["points"] for reason in point["reasons"]} <= set(told["reasons"])
    assert told["recipe"]["value"] == pytest.approx(0.195, rel=0.1)


def test_an_unknown_property_names_those_that_look_alike():
    with pytest.raises(InputError, match=r"“hydratoin” is nothing that Lumped can map. Did you mean: hydration\?"):
        mix_map(SALTED, THREE, "hydratoin")
    with pytest.raises(InputError, match=r"Choose one of: resistivity, water-activity, hydration"):
        find_property("loudness")


def test_an_ingredient_that_nobody_knows_names_those_that_look_alike():
    with pytest.raises(RecipeError, match=r"no ingredient “tabel salt”. Did you mean: table-salt"):
        mix_map(SALTED, ["flour", "water", "tabel salt"])
    with pytest.raises(RecipeError, match=r"no ingredient “gravel”. No name here looks like it"):
        mix_map(SALTED, ["flour", "water", "gravel"])


@pytest.mark.parametrize("words", [["flour", "water"], ["flour", "water", "plain-flour"], ["flour"] * 4])
def test_fewer_than_three_different_ingredients_are_refused(words):
    with pytest.raises(RecipeError, match=r"A map needs three different ingredients, and [12] came"):
        mix_map(SALTED, words)


def test_a_recipe_with_none_of_the_three_is_refused():
    nothing = replace(SALTED, portions=tuple(each.scaled(0.0) for each in SALTED.portions))
    with pytest.raises(RecipeError, match=r"The recipe has none of plain wheat flour, tap water, table salt yet"):
        mix_map(nothing, THREE)


def test_cost_without_prices_is_refused():
    with pytest.raises(InputError, match=r"Not all of these ingredients have a price here"):
        mix_map(SALTED, THREE, "cost", shop=pantry())
