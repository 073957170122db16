"""Weights of measures and molar masses, against tables and each other.

Sources: USDA National Nutrient Database for Standard Reference (weights); US customary measures;
21 CFR 101.9(b)(5)(viii); standard atomic weights.
"""

import pytest

from lumped.dough.measures import mass_of
from lumped.reference import handbook

BOOK = handbook()
ATOMS = {"H": 1.008, "C": 12.011, "O": 15.999, "Na": 22.990, "Cl": 35.453, "K": 39.098}


def grams(text, ingredient, system="us"):
    return 1e3 * mass_of(text, ingredient, system).mean


@pytest.mark.parametrize(
    ("text", "ingredient", "weight"),
    [
        ("1 cup", "plain-flour", 125),
        ("1/2 cup", "table-salt", 146),
        ("2 tbsp", "table-salt", 36),
        ("1 tsp", "table-salt", 6),
        ("1 1/2 cups", "granulated-sugar", 300),
        ("3 tbsp", "vegetable-oil", 40.8),
        ("1 tsp", "cream-of-tartar", 3),
        ("1 pinch", "table-salt", 0.4),
    ],
)
def test_measures_weigh_what_the_usda_table_says(text, ingredient, weight):
    assert grams(text, ingredient) == pytest.approx(weight, rel=1e-9)


def test_the_usda_weights_agree_with_each_other():
    assert grams("48 tsp", "table-salt") == pytest.approx(grams("1 cup", "table-salt"), rel=0.02)
    assert grams("1 mL", "plain-flour") == pytest.approx(0.528, rel=0.005)
    assert grams("1 mL", "vegetable-oil") == pytest.approx(0.92, rel=0.005)  # true density of oil
    assert grams("1 mL", "tap-water") == pytest.approx(1.0, rel=0.005)


@pytest.mark.parametrize(
    ("system", "measure", "millilitres"),
    [
        ("us", "cup", 231 * 2.54**3 / 16),  # a gallon of 231 cubic inches has 16 cups
        ("us", "tbsp", 231 * 2.54**3 / 256),
        ("us", "tsp", 231 * 2.54**3 / 768),
        ("us-label", "cup", 240),
        ("metric", "cup", 250),
        ("australian", "tbsp", 20),
        ("imperial", "cup", 4546.09 / 16),  # half of an eighth of a gallon
        ("japanese", "cup", 200),
    ],
)
def test_cups_and_spoons_by_country(system, measure, millilitres):
    assert BOOK.row("measures", system, measure).printed == pytest.approx(millilitres, rel=1e-7)


def test_an_australian_tablespoon_holds_a_third_more():
    assert grams("1 tbsp", "table-salt", "australian") / grams("1 tbsp", "table-salt", "metric") == pytest.approx(4 / 3)


@pytest.mark.parametrize(
    ("substance", "formula"),
    [
        ("salt", {"Na": 1, "Cl": 1}),
        ("sucrose", {"C": 12, "H": 22, "O": 11}),
        ("bitartrate", {"K": 1, "H": 5, "C": 4, "O": 6}),
        ("citric_acid", {"C": 6, "H": 8, "O": 7}),
        ("acetic_acid", {"C": 2, "H": 4, "O": 2}),
        ("bicarbonate", {"Na": 1, "H": 1, "C": 1, "O": 3}),
        ("glycerol", {"C": 3, "H": 8, "O": 3}),
    ],
)
def test_molar_masses_are_sums_of_atomic_weights(substance, formula):
    wanted = sum(count * ATOMS[atom] for atom, count in formula.items())
    assert BOOK.row("substances", substance, "molar_mass").printed == pytest.approx(wanted, abs=0.01)
