"""Balances that hold in every dough, and the chain as one pass over arrays."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.bowls import CONDUCTING, recipe_of

from lumped.chemistry.compounds import compounds
from lumped.dough.beliefs import middle
from lumped.dough.bowl import INDEX, Bowl, is_body, is_wet, natural_salts
from lumped.dough.chain import follow
from lumped.dough.kneading import kneading
from lumped.dough.obstruction import hashin_shtrikman
from lumped.pantry import pantry
from lumped.reference import handbook

SOLID = ["plain-flour", "cornstarch", "table-salt", "granulated-sugar", "cream-of-tartar", "baking-soda", "citric-acid"]
WET = ["tap-water", "distilled-water", "lemon-juice", "white-vinegar", "glycerine", "vegetable-oil"]
RECIPES = st.dictionaries(st.sampled_from(SOLID + WET), st.floats(0.5, 500), min_size=1, max_size=7)
WAYS = st.sampled_from(["pot", "kettle", "microwave", "not cooked"])


@settings(max_examples=60, deadline=None)
@given(RECIPES, WAYS)
def test_mass_is_conserved(grams, cooked):
    chain = kneading(recipe_of(grams, cooked=cooked)).chain
    np.testing.assert_allclose(chain.mass + chain.water_lost, chain.went_in, rtol=1e-12)
    np.testing.assert_allclose(chain.components.sum(axis=0), chain.mass, rtol=1e-12)
    assert np.all((chain.dissolved >= 0) & (chain.dissolved <= chain.components * (1 + 1e-12)))


@settings(max_examples=40, deadline=None)
@given(RECIPES)
def test_the_liquid_is_neutral(grams):
    chain = kneading(recipe_of(grams)).chain
    signs = {ion: np.sign(handbook().value("ions", ion, "charge").mean) for ion in chain.charges}
    total = sum(np.abs(each) for each in chain.charges.values())
    mobile = sum(signs[ion] * each for ion, each in chain.charges.items())
    assert np.all(np.abs(mobile + chain.fixed_charge) <= 1e-6 * total + 1e-6)  # a nanomole a litre


@settings(max_examples=40, deadline=None)
@given(RECIPES)
def test_no_element_appears_or_vanishes_but_with_the_steam(grams):
    recipe = recipe_of(grams)
    chain = kneading(recipe).chain
    given_in = pantry().matrix(recipe.ingredients) @ np.array([recipe.mass_of(key) for key in recipe.ingredients])
    for metal in ("Na", "K", "Cl", "Al"):
        share = np.array([each.atoms.get(metal, 0) / (each.molar_mass or 1.0) for each in compounds()])
        there = np.median(share @ chain.components)
        assert there == pytest.approx(share @ given_in, rel=0.1, abs=1e-9)  # minerals are drawn round the table's


def test_many_recipes_at_once_are_each_as_it_is_alone():
    recipe = recipe_of({**CONDUCTING, "table-salt": 40})
    one = middle(recipe, pantry())
    bowl = Bowl.of(one.keys, pantry())
    factors = np.linspace(0.2, 3, 9)
    row = one.keys.index("table-salt")
    many = np.repeat(one.masses, 9, axis=1)
    many[row] *= factors
    options = {"lost_share": one.lost_share, "temperature": 293.15, "unknowns": one.unknowns}
    together = follow(bowl, many, **options)
    for k in range(9):
        alone = follow(bowl, many[:, k : k + 1], **options)
        assert together.resistivity[k] == pytest.approx(alone.resistivity[0], rel=1e-9)
        assert together.water_activity[k] == pytest.approx(alone.water_activity[0], rel=1e-9)


@settings(max_examples=40, deadline=None)
@given(RECIPES, WAYS)
def test_no_dough_is_better_than_the_bound_of_its_liquid(grams, cooked):
    """Hashin and Shtrikman (1962) for a liquid of conductivity 1 with parts of conductivity 0: 2φ/(3 - φ)."""
    chain = kneading(recipe_of(grams, cooked=cooked)).chain
    best = [hashin_shtrikman(1.0, 0.0, 1 - share)[1] for share in chain.liquid_share[:50]]
    assert np.all(chain.obstruction[:50] <= np.array(best) * (1 + 1e-9))


def test_a_weighed_dough_has_lost_what_the_scale_says():
    recipe = replace(recipe_of(CONDUCTING), weighed_after=0.380)
    went_in = sum(CONDUCTING.values()) / 1e3
    chain = kneading(recipe).chain
    assert np.median(chain.water_lost) == pytest.approx(went_in - 0.380, rel=0.02)


def test_an_ingredient_with_more_of_its_minerals_weighs_no_more():
    bowl = Bowl.of(["plain-flour"], pantry())
    masses = np.array([[0.1, 0.1]])
    found = bowl.compounds(masses, {0: np.array([0.119, 0.14])}, {0: np.array([1.0, 1.25])})
    np.testing.assert_allclose(found.sum(axis=0), masses[0], rtol=1e-12)
    potassium = INDEX["potassium-dihydrogen-phosphate"]
    assert found[potassium, 1] > 1.2 * found[potassium, 0]


@pytest.mark.parametrize("ingredient", pantry())
@pytest.mark.parametrize("end", ["low", "high"])
def test_no_ingredient_weighs_more_at_either_end_of_its_minerals(ingredient, end):
    """A dry dye is stretched with more salt and holds less dye, not less water than it has."""
    bowl, factor = Bowl.of([ingredient], pantry()), getattr(pantry()[ingredient].minerals, end)
    found = bowl.compounds(np.array([[0.1]]), {}, {0: np.array([factor])})
    assert found.sum() == pytest.approx(0.1, rel=1e-9)


@pytest.mark.parametrize("ingredient", [key for key in pantry() if natural_salts(pantry()[key])])
def test_minerals_never_take_more_room_than_what_gives_way_to_them(ingredient):
    """Seven of 4096 draws of a dry dye's salt were more than the whole dye, and made it heavier than it is."""
    bowl, masses = Bowl.of([ingredient], pantry()), np.full((1, 3), 0.1)
    found = bowl.compounds(masses, {}, {0: np.array([0.0, 1.0, 1e4])})
    np.testing.assert_allclose(found.sum(axis=0), masses[0], rtol=1e-12)
    assert np.all(found >= 0)


def test_salts_that_nature_or_a_maker_puts_in_vary_and_what_is_sold_as_a_salt_does_not():
    """Cider vinegar holds 73 mg of potassium in 100 g (USDA SR 02048, from memory), with an interval in its row."""
    shop = pantry()
    assert natural_salts(shop["cider-vinegar"]) == ("potassium-chloride",)
    assert natural_salts(shop["food-colour"]) == ("sodium-chloride",)
    assert not any(natural_salts(each) for each in shop.values() if set(each.composition) == {"sodium-chloride"})
    assert not any(set(natural_salts(shop[key])) & {"sodium-chloride"} for key in ("table-salt", "coarse-salt"))


def test_a_baker_s_hydration_counts_what_is_poured_and_what_is_flour():
    """Half the weight of Epsom salt is water in its crystals; almond flour is flour though it has little starch."""
    shop = pantry()
    assert is_wet(shop["tap-water"])
    assert is_wet(shop["lemon-juice"])
    assert not any(is_wet(shop[key]) for key in ("epsom-salt", "washing-soda", "honey", "food-colour-gel"))
    assert all(is_body(shop[key]) for key in ("plain-flour", "almond-flour", "cornstarch"))
    assert not any(is_body(shop[key]) for key in ("xanthan-gum", "psyllium-husk", "gelatine", "table-salt"))
