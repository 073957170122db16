"""What the trade is told about dough, worked by hand from first principles by others, against the engine.

Source: estimates that circulate for an everyday cooked dough (125 g flour, 237 g water of which 15 % boils off, 0.3 g of
water held by a gram of dry flour, Archie's exponent 2), from memory and never measured: whoever measures one replaces it.
docs/dough.md has the same rows; where the engine disagrees the row is called corrected there, and the test says how.
"""

from dataclasses import replace

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.chemistry import salt_dissolving_time
from lumped.dough import knead
from lumped.dough.beliefs import middle
from lumped.dough.kneading import followed, knead_middle, kneading
from lumped.dough.properties import PROPERTIES
from lumped.dough.what_if import ratio, what_if
from lumped.pantry import pantry

SALTED = [(18, 23.7, 0.94), (36, 14.6, 0.88), (73, 11.3, 0.75), (146, 13.7, 0.75)]  # g, Ω·cm, water activity


def salted(grams):
    return recipe_of({**CONDUCTING, "table-salt": grams})


def changes(recipe):
    return {each.key: each.factor for each in what_if(recipe)}


@pytest.fixture(scope="module")
def sugar_changes():
    return changes(recipe_of(INSULATING, "insulating", "not cooked"))


@pytest.mark.parametrize(("grams", "resistivity", "activity"), SALTED)
def test_salt_by_the_gram_carries_and_keeps_as_estimated(grams, resistivity, activity):
    recipe = salted(grams)
    given = middle(recipe, pantry())
    theirs = {"archie_exponent": 2.0, "picture": 0.0, "bound_water": 0.3, "air": 0.0}
    grains = replace(given.unknowns, **{name: np.array([value]) for name, value in theirs.items()})
    ours = followed(recipe, replace(given, unknowns=grains), pantry())
    assert 100 * ours.resistivity[0] == pytest.approx(
        resistivity, rel=0.1
    )  # with the oil ours is 4 to 8 % above, without it 3 to 7 % below
    assert ours.water_activity[0] == pytest.approx(activity, abs=0.012)  # theirs has two digits
    low, high = np.quantile(100 * kneading(recipe).chain.resistivity, [0.025, 0.975])
    assert low < resistivity < high


def test_from_about_66_g_on_salt_stays_solid():
    solid = [float(np.median(kneading(salted(grams)).chain.solid("sodium-chloride"))) for grams in (55, 80)]
    assert solid[0] == 0 < solid[1]


def test_a_quarter_of_the_salt_carries_as_well_with_a_third_of_the_sodium():
    less, more = knead_middle(salted(36)), knead_middle(salted(146))
    assert float(less.resistivity[0] / more.resistivity[0]) == pytest.approx(1, abs=0.1)
    sodium = PROPERTIES["sodium"].given
    assert float(sodium(less)[0] / sodium(more)[0]) == pytest.approx(1 / 3, abs=0.03)


def test_acid_adds_one_or_two_per_cent_to_what_the_liquid_carries():
    sour, plain = (
        knead_middle(salted(73)),
        knead_middle(recipe_of({**CONDUCTING, "table-salt": 73, "cream-of-tartar": 0})),
    )
    assert abs(float(sour.liquid_conductivity[0] / plain.liquid_conductivity[0]) - 1) < 0.02


def test_at_60_degrees_a_dough_carries_about_twice_as_well_and_not_1_8_times():
    carries = 1 / changes(salted(73))["hot"].mean
    assert 1.8 < carries < 2.3  # corrected: saturated brine alone gains 2.0, and more of the salt dissolves


def test_a_sugar_dough_blocks_thousands_of_times_better():
    sugar, salt = kneading(recipe_of(INSULATING, "insulating", "not cooked")), kneading(salted(73))
    found = ratio(sugar, salt)
    assert 2000 < found.mean < 10_000
    assert 400 < sugar.value(sugar.chain.resistivity, "Ω·m", "resistivity").mean < 2000


@pytest.mark.parametrize(("change", "factor"), [("pinch", 2.5), ("gram", 5.0)])
def test_salt_spoils_a_sugar_dough_as_estimated(change, factor, sugar_changes):
    found = sugar_changes[change]
    assert found.low < 1 / factor < found.high


@pytest.mark.parametrize(("exponent", "resistivity"), [(1.5, 8.9), (3.0, 18.0)])
def test_archies_exponent_moves_it_as_far_as_estimated(exponent, resistivity):
    recipe = salted(73)
    given = middle(recipe, pantry())
    theirs = {"archie_exponent": exponent, "picture": 0.0, "bound_water": 0.3, "air": 0.0}
    grains = replace(given.unknowns, **{name: np.array([value]) for name, value in theirs.items()})
    ours = followed(recipe, replace(given, unknowns=grains), pantry())
    assert 100 * ours.resistivity[0] == pytest.approx(resistivity, rel=0.13)  # theirs has no oil


def test_two_grams_of_cream_of_tartar_dissolve_and_not_one():
    dissolved = 1e3 * kneading(salted(73)).chain.in_liquid("potassium-hydrogen-tartrate")
    assert np.quantile(dissolved, [0.025, 0.5, 0.975]) == pytest.approx([1.5, 2.0, 3.0], abs=0.1)  # corrected


def test_a_wetter_sugar_dough_blocks_less_than_estimated():
    found = knead(recipe_of({**INSULATING, "distilled-water": 120}, "insulating", "not cooked")).resistivity
    assert found.mean < 400 < found.high  # corrected: 400 to 900 was estimated


def test_without_sugar_it_is_as_estimated():
    bare = {key: mass for key, mass in INSULATING.items() if key != "granulated-sugar"}
    found = knead(recipe_of(bare, "insulating", "not cooked")).resistivity
    assert found.low < 85 < found.high


def test_in_starch_tap_water_costs_what_is_estimated():
    starch = {("cornstarch" if key == "plain-flour" else key): mass for key, mass in INSULATING.items()}
    tap = {("tap-water" if key == "distilled-water" else key): mass for key, mass in starch.items()}
    distilled, other = (kneading(recipe_of(each, "insulating", "not cooked")) for each in (starch, tap))
    found = ratio(distilled, other)
    assert found.low < 1.28 < found.high


def test_a_lone_coarse_grain_is_gone_in_half_an_hour_and_not_one_among_many():
    alone, among = (
        float(salt_dissolving_time(1e-3, salt=salt, water=0.237, temperature=293.15, obstruction=0.3))
        for salt in (0.0, 0.073)
    )
    assert alone / 60 == pytest.approx(33, abs=1)
    assert among / 3600 == pytest.approx(1.7, abs=0.1)  # corrected: the liquid nearly fills


def test_tap_water_for_distilled_costs_some_per_cent(sugar_changes):
    low, high = 1 / sugar_changes["tap"].high, 1 / sugar_changes["tap"].low
    assert low < 1.07 < high  # the least of 7 to 13 %


def test_starch_for_flour_gains_more_than_the_factor_4_that_is_estimated(sugar_changes):
    assert sugar_changes["starch"].low > 4  # corrected: its own water is less too, and the syrup thicker
