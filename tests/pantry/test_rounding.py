from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from lumped.errors import RecipeError
from lumped.pantry import pantry
from lumped.pantry.choosing import as_measures, ways_to_measure
from lumped.pantry.measures import kitchen, kitchens
from lumped.pantry.rounding import Wanted, rounded_to_kitchen
from lumped.pantry.wording import measures_text

SHOP = pantry()
FLOUR, SALT, WATER, OIL = (SHOP[key] for key in ("plain-flour", "table-salt", "tap-water", "vegetable-oil"))


@pytest.mark.parametrize(
    ("grams", "ingredient", "system", "words"),
    [
        (187.5, "plain-flour", "us", "1½ cups"),
        (140, "plain-flour", "us", "1 cup + 2 tbsp"),
        (146, "table-salt", "us", "½ cup"),
        (1.5, "table-salt", "us", "¼ tsp"),
        (0.4, "table-salt", "us", "1 pinch"),
        (4.5, "table-salt", "us", "¾ tsp"),
        (0.75, "table-salt", "us", "⅛ tsp"),
        (3.8, "table-salt", "us", "¾ tsp"),
        (12.9, "table-salt", "us", "2¼ tsp"),
        (1500, "plain-flour", "us", "12 cups"),
        (24.35, "table-salt", "australian", "1 tbsp"),
        (125, "plain-flour", "scale", "125 g"),
        (0.44, "table-salt", "scale", "0.4 g"),
        (12.6, "table-salt", "scale", "13 g"),
        (4.96, "table-salt", "scale", "5.0 g"),
    ],
)
def test_masses_are_said_in_measures_of_the_kitchen(grams, ingredient, system, words):
    assert as_measures(grams * 1e-3, SHOP[ingredient], system).words == words


def test_a_measure_agrees_with_its_noun():
    half, one, more = (measures_text([("cup", Fraction(n, 2))]) for n in (1, 2, 3))
    assert (half, one, more) == ("½ cup", "1 cup", "1½ cups")
    assert measures_text([("cup", Fraction(5, 4)), ("tbsp", Fraction(2))]) == "1¼ cups + 2 tbsp"


@settings(max_examples=60, deadline=None)
@given(st.floats(2e-3, 5.0), st.sampled_from(kitchens()), st.sampled_from(["plain-flour", "table-salt", "tap-water"]))
def test_measures_are_those_of_the_drawer_few_and_near(mass, system, key):
    found = as_measures(mass, SHOP[key], system)
    shares = {}
    for scoop in kitchen(system).scoops:
        shares.setdefault(scoop.measure, []).append(scoop.share)
    for measure, amount in found.terms:
        assert amount % min(shares[measure]) == 0 or amount % Fraction(1, 3) == 0
    assert len(found.terms) <= 3
    assert found.mass.low < found.mass.mean < found.mass.high
    assert found.shift == pytest.approx(found.mass.mean / mass - 1)
    assert abs(found.shift) < 0.12  # half of the smallest step: an eighth or a quarter of a spoon of 2 g and more


@settings(max_examples=150, deadline=None)
@given(st.floats(1e-4, 0.5), st.sampled_from(kitchens()), st.sampled_from(["plain-flour", "table-salt", "citric-acid"]))
def test_an_eighth_of_a_spoon_is_only_ever_one_scoop(mass, system, key):
    """Drawers hold ⅛, ¼, ½ and 1 tsp: ⅝ or 2⅛ tsp is what nobody fills."""
    for way in ways_to_measure(mass, SHOP[key], system):
        parts = [amount for _, amount in way.terms if amount.denominator == 8]
        assert not parts or (parts == [Fraction(1, 8)] and len(way.terms) == 1)


def test_no_further_scoop_is_asked_for_unless_it_brings_the_mass_nearer():
    best, *others = ways_to_measure(0.150, FLOUR, "us", ways=6)
    for other in others:
        if other.scoops < best.scoops:
            assert abs(other.shift) > abs(best.shift)


def test_ways_to_measure_lie_on_both_sides():
    for mass in (0.150, 0.1875):  # the second is just 1½ cups
        shifts = [way.shift for way in ways_to_measure(mass, FLOUR, "us")]
        assert min(shifts) < 0 < max(shifts)


@pytest.mark.parametrize(
    ("mass", "sentence"),
    [(0.0, r"0 g of plain wheat flour can't be measured out"), (-0.1, r"-100 g of plain"), (float("nan"), r"nan g of"),
     (1e3, r"1,000 kg, more than any bowl holds")],
)  # fmt: skip
def test_masses_that_are_none_are_refused(mass, sentence):
    with pytest.raises(RecipeError, match=sentence):
        as_measures(mass, FLOUR, "us")


def ratios(masses):
    """Water to flour, salt to water, oil to flour, against the recipe below; what a dough feels and carries."""
    flour, water, salt, oil = masses
    wanted = np.array([0.131, 0.088, 0.047, 0.013])
    hydration, brine, fat = wanted[1] / wanted[0], wanted[2] / wanted[1], wanted[3] / wanted[0]
    return {
        "hydration": water / flour / hydration - 1,
        "salinity": salt / water / brine - 1,
        "fat": oil / flour / fat - 1,
    }


RECIPE = [Wanted(ingredient=each, mass=mass)
          for each, mass in zip((FLOUR, WATER, SALT, OIL), (0.131, 0.088, 0.047, 0.013), strict=True)]  # fmt: skip
WEIGHTS = {"hydration": 3.0, "salinity": 1.0, "fat": 0.2}


def cost(masses):
    return np.sqrt(sum((WEIGHTS[name] * change) ** 2 for name, change in ratios(np.array(masses)).items()))


@pytest.mark.parametrize("system", kitchens())
def test_the_chosen_measures_are_the_best_of_all_combinations(system):
    found = rounded_to_kitchen(RECIPE, system, ratios, weights=WEIGHTS, ways=4, fuss=0.0)
    table = [ways_to_measure(each.mass, each.ingredient, system, ways=4) for each in RECIPE]
    brute = min(cost([way.mass.mean for way in ways]) for ways in product(*table))
    assert found.complete
    assert found.moved == pytest.approx(brute, abs=2e-9)
    assert found.moved == pytest.approx(cost([way.mass.mean for way in found.portions]))


@pytest.mark.parametrize("system", [*kitchens(), "scale"])
def test_rounding_together_is_never_worse_than_each_to_its_nearest(system):
    found = rounded_to_kitchen(RECIPE, system, ratios, weights=WEIGHTS)
    alone = cost([as_measures(each.mass, each.ingredient, system).mass.mean for each in RECIPE])
    assert found.each_alone == pytest.approx(alone)
    assert found.moved <= found.each_alone


def test_rounding_together_moves_this_dough_less_than_half_as_far():
    found = rounded_to_kitchen(RECIPE, "imperial", ratios, weights=WEIGHTS, ways=5)
    assert found.moved < 0.5 * found.each_alone


def test_an_odd_way_of_measuring_must_be_worth_its_fuss():
    best = rounded_to_kitchen(RECIPE, "us", ratios, weights=WEIGHTS, ways=5, fuss=0.0)
    usual = rounded_to_kitchen(RECIPE, "us", ratios, weights=WEIGHTS, ways=5)
    plain = rounded_to_kitchen(RECIPE, "us", ratios, weights=WEIGHTS, ways=5, fuss=10.0)
    assert best.moved <= usual.moved <= plain.moved == pytest.approx(plain.each_alone)
    assert usual.moved < best.moved + len(RECIPE) ** 0.5 * 0.005


def test_the_shift_of_each_property_is_shown():
    found = rounded_to_kitchen(RECIPE, "us", ratios, weights=WEIGHTS)
    again = ratios(np.array([way.mass.mean for way in found.portions]))
    assert found.shifts == pytest.approx({name: float(change) for name, change in again.items()})


def test_a_long_recipe_is_searched_in_few_tries_and_still_never_worse():
    keys = ("plain-flour", "tap-water", "table-salt", "vegetable-oil", "cornstarch", "rice-flour", "baking-soda",
            "granulated-sugar", "cream-of-tartar", "white-vinegar")  # fmt: skip
    masses = np.linspace(0.017, 0.31, len(keys))
    wanted = [Wanted(ingredient=SHOP[key], mass=mass) for key, mass in zip(keys, masses, strict=True)]
    found = rounded_to_kitchen(wanted, "us", lambda m: {"sum": m.sum(0) / masses.sum() - 1, "first": m[0] / m[1]})
    assert not found.complete
    assert found.tried < 4000
    assert found.moved <= found.each_alone


def test_what_no_measure_weighs_goes_on_the_scale():
    dust = type(SALT)(key="dust", name="dust", composition={}, moisture=SALT.moisture, minerals=SALT.minerals)
    found = rounded_to_kitchen([Wanted(ingredient=dust, mass=0.0123)], "us", lambda m: {"mass": m[0] / 0.0123 - 1})
    assert found.portions[0].words == "12 g"
