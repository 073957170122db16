"""Cups and spoons by country, and the weights of measures against each other.

Sources: US customary gallon of 231 cubic inches; 21 CFR 101.9(b)(5)(viii); imperial gallon of 4.54609 L (UK Weights
and Measures Act 1985); the package pint; USDA National Nutrient Database for Standard Reference (file WEIGHT).
"""

import pint
import pytest

from lumped.pantry import pantry
from lumped.pantry.amounts import mass_of
from lumped.pantry.measures import kitchen, weight_of

UNITS = pint.UnitRegistry()


def grams(text, ingredient, system="us"):
    return 1e3 * mass_of(text, pantry()[ingredient], system).mean


@pytest.mark.parametrize(
    ("system", "measure", "millilitres"),
    [
        ("us", "cup", 231 * 2.54**3 / 16),
        ("us", "tbsp", 231 * 2.54**3 / 256),
        ("us", "tsp", 231 * 2.54**3 / 768),
        ("us-label", "cup", 240),
        ("us-label", "tbsp", 15),
        ("us-label", "tsp", 5),
        ("us-label", "fl_oz", 30),
        ("metric", "cup", 250),
        ("australian", "tbsp", 20),
        ("imperial", "cup", 4546.09 / 16),
        ("imperial", "fl_oz", 4546.09 / 160),
        ("imperial", "dessertspoon", 10),
        ("japanese", "cup", 200),
        ("japanese", "go", 2401 / 13310 * 1e3),  # a shō is 2401/1331 L by the law of 1891 (from memory); a gō a tenth
    ],
)
def test_cups_and_spoons_by_country(system, measure, millilitres):
    rtol = 1e-4 if measure == "go" else 1e-7  # the gō is printed with four digits
    assert 1e6 * kitchen(system).volumes[measure].mean == pytest.approx(millilitres, rel=rtol)


@pytest.mark.parametrize(
    ("system", "measure", "unit"),
    [("us", "cup", "cup"), ("us", "tbsp", "tablespoon"), ("us", "tsp", "teaspoon"), ("us", "fl_oz", "fluid_ounce"),
     ("imperial", "cup", "imperial_cup"), ("imperial", "fl_oz", "imperial_fluid_ounce")],
)  # fmt: skip
def test_a_library_of_units_knows_the_same_measures(system, measure, unit):
    assert kitchen(system).volumes[measure].mean == pytest.approx((1 * UNITS(unit)).to("m³").magnitude, rel=1e-9)


def test_ounces_and_pounds_are_those_of_the_library_of_units():
    for unit, name in (("oz", "ounce"), ("lb", "pound")):
        assert grams(f"1 {unit}", "table-salt") == pytest.approx((1 * UNITS(name)).to("g").magnitude, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "ingredient", "weight"),
    [
        ("1 cup", "plain-flour", 125),  # NDB 20081
        ("1/2 cup", "table-salt", 146),  # NDB 02047
        ("2 tbsp", "table-salt", 36),
        ("1 tsp", "table-salt", 6),
        ("a pinch", "table-salt", 0.4),
        ("1 1/2 cups", "granulated-sugar", 300),  # NDB 19335
        ("3 tbsp", "vegetable-oil", 40.8),  # NDB 04044
        ("1 tsp", "cream-of-tartar", 3),  # NDB 18373
    ],
)
def test_measures_weigh_what_the_usda_table_says(text, ingredient, weight):
    assert grams(text, ingredient) == pytest.approx(weight, rel=1e-9)


def test_the_usda_weights_agree_with_each_other_within_two_per_cent():
    assert grams("1 cup", "table-salt") / grams("1 tbsp", "table-salt") == pytest.approx(16, rel=0.02)  # 292 / 18
    assert grams("48 tsp", "table-salt") == pytest.approx(grams("1 cup", "table-salt"), rel=0.02)  # 6.0 · 48 = 288
    assert grams("16 tbsp", "vegetable-oil") == pytest.approx(grams("1 cup", "vegetable-oil"), rel=0.02)


@pytest.mark.parametrize(
    ("ingredient", "density"),
    [("table-salt", 1.234), ("plain-flour", 0.528), ("granulated-sugar", 0.845), ("vegetable-oil", 0.92),
     ("tap-water", 0.998)],
)  # fmt: skip
def test_a_millilitre_weighs_the_bulk_density(ingredient, density):
    # g/mL: cup weight over 236.59 mL; of oil and water at 20 °C the true density. 0.5 %: cups are printed in whole grams
    assert grams("1 mL", ingredient) == pytest.approx(density, rel=0.005)


def test_what_sifting_does_to_icing_sugar_lies_in_the_spread_of_sifting():
    # NDB 19336: a cup of 120 g unsifted, 100 g sifted; our factor, from memory, is for powders in general
    spooned, sifted = (weight_of("cup", pantry()["plain-flour"], "us", method) for method in ("spooned", "sifted"))
    assert sifted.low / spooned.mean <= 100 / 120 <= sifted.high / spooned.mean
