"""Mass, elements and charge of random recipes from the whole pantry: nothing comes of nothing.

Source: conservation of mass, of each element and of charge. The middle of what is believed is followed, whose sums must
close to the last digits; where minerals are drawn, they take the room of starch, and only mass and charge close.
"""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.bowls import recipe_of

from lumped.chemistry.compounds import compounds, molar_mass_of
from lumped.dough.kneading import knead_middle, kneading
from lumped.pantry import pantry
from lumped.reference import handbook

SHOP = pantry()
RECIPES = st.dictionaries(st.sampled_from(sorted(SHOP)), st.floats(0.5, 500), min_size=1, max_size=9)
WAYS = st.sampled_from(["pot", "kettle", "microwave", "not cooked"])
ELEMENTS = sorted({element for each in compounds() for element in each.atoms})
MOLES = {  # of each element in a kilogram of each compound
    element: np.array([each.atoms.get(element, 0) / (each.molar_mass or np.inf) for each in compounds()])
    for element in ELEMENTS
}


def moles_given(grams, element):
    """Moles of an element in what is weighed in."""
    masses = np.array([mass / 1e3 for mass in grams.values()])
    return float(MOLES[element] @ (SHOP.matrix(tuple(grams)) @ masses))


@settings(max_examples=100, deadline=None)
@given(RECIPES, WAYS)
def test_every_element_that_went_in_is_in_the_dough_or_in_the_steam(grams, cooked):
    chain = knead_middle(recipe_of(grams, cooked=cooked))
    steam = float(chain.water_lost[0]) / molar_mass_of("H2O")
    for element in ELEMENTS:
        left = {"H": 2 * steam, "O": steam}.get(element, 0.0)
        there = float(MOLES[element] @ chain.components[:, 0])
        assert there + left == pytest.approx(moles_given(grams, element), rel=1e-9, abs=1e-12)


@settings(max_examples=60, deadline=None)
@given(RECIPES)
def test_the_ions_of_the_liquid_are_those_of_what_dissolved(grams):
    """Metals and chloride to the last digits; acids' ions at most as much as there is of the acid."""
    chain = knead_middle(recipe_of(grams))
    volume, book = float(chain.liquid_share[0] * chain.volume[0]), handbook()
    for ion in ("sodium", "potassium", "magnesium", "calcium", "chloride", "sulphate"):
        valence = abs(book.value("ions", ion, "charge").mean)
        given_off = sum(
            each.ions.get(ion, 0) * chain.dissolved[row, 0] / each.molar_mass
            for row, each in enumerate(compounds()) if each.molar_mass and each.ions.get(ion)
        )  # fmt: skip
        held = float(np.ravel(chain.charges.get(ion, 0.0))[0]) * volume / valence
        assert held == pytest.approx(given_off, rel=1e-9, abs=1e-12)


@settings(max_examples=60, deadline=None)
@given(RECIPES, WAYS)
def test_mass_and_charge_close_in_every_draw(grams, cooked):
    chain = kneading(recipe_of(grams, cooked=cooked)).chain
    np.testing.assert_allclose(chain.mass + chain.water_lost, chain.went_in, rtol=1e-9)
    np.testing.assert_allclose(chain.components.sum(axis=0), chain.mass, rtol=1e-9)
    assert np.all((chain.dissolved >= 0) & (chain.dissolved <= chain.components * (1 + 1e-12)))
    signs = {ion: np.sign(handbook().value("ions", ion, "charge").mean) for ion in chain.charges}
    mobile = sum(signs[ion] * each for ion, each in chain.charges.items())
    total = sum(np.abs(each) for each in chain.charges.values())
    assert np.all(np.abs(mobile + chain.fixed_charge) <= 1e-6 * total + 1e-6)  # a nanomole a litre
