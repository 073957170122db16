"""How sour doughs are: flour holds its own pH against acid and soda.

Sources, all from memory of cereal laboratories: flour of wheat stirred into ten times its weight of water reads 5.8 to
6.3 (bleached cake flour less), an unsalted dough 5.5 to 6.2; a sour dough of white flour reads 3.7 to 4.2 once 100 g of
its flour hold 8 mmol of acids as weak as those of vinegar (7 to 8 mL of 0.1 mol/L soda lye for 10 g of dough).
"""

import numpy as np
import pytest
from tests.bowls import CONDUCTING, kneaded, recipe_of

from lumped.chemistry.acidity import Buffer, dissociated, shielding
from lumped.dough.kneading import knead_middle, kneading
from lumped.reference import handbook


def ph_of(grams, **more):
    return float(knead_middle(recipe_of(grams, cooked="not cooked", **more)).ph[0])


@pytest.mark.parametrize("flour", ["plain-flour", "bread-flour", "wholemeal-flour"])
def test_flour_in_much_water_reads_about_six(flour):
    assert 5.7 < ph_of({flour: 10, "distilled-water": 100}) < 6.3


def test_an_unsalted_dough_is_hardly_sour_and_no_acid_keeps_bacteria_from_it():
    found = kneaded({"plain-flour": 100, "distilled-water": 60}, cooked="not cooked").reason("ph").value
    assert 5.5 < found.mean < 6.2
    assert found.low > 4.8  # the hardiest limit of the table of bacteria
    assert found.high - found.low > 0.5  # nobody measured this flour


def test_a_sour_dough_s_acids_bring_flour_to_about_four():
    """100 g of flour with 10.3 g of protein and 3 mmol of phosphate in 70 mL; lactic and acetic acid 4 to 1."""
    volume, binding = 70e-6, handbook().value("doughs", "unmeasured", "flour_binding")
    acids = {"lactic": 6.4e-3 / volume, "acetic": 1.6e-3 / volume, "phosphoric": 3e-3 / volume}
    low, middle, high = (
        float(dissociated(acids, 3e-3 / volume, buffer=Buffer(rest=6.0, capacity=each * 0.0103 / volume)).ph)
        for each in (binding.low, binding.mean, binding.high)
    )
    assert 3.7 < middle < 4.2
    assert low < 3.95 < high  # the middle of what is reported


def test_soda_meets_less_acid_in_starch_than_in_flour():
    flour, starch = (
        ph_of({key: 100, "distilled-water": 80, "baking-soda": 1.0}) for key in ("plain-flour", "cornstarch")
    )
    assert 6.5 < flour < starch < 8.5


def test_flour_moves_an_acid_towards_its_own_ph():
    sour = ph_of({"distilled-water": 100, "citric-acid": 0.5})
    assert sour + 0.5 < ph_of({"plain-flour": 50, "distilled-water": 100, "citric-acid": 0.5}) < 6.0


def test_a_dough_with_cream_of_tartar_to_spare_is_as_sour_as_its_solid_keeps_it():
    """Solubility product and second constant by hand: 7 mmol saturate 0.2 L, flour takes 5.2 on the way to pH 4.

    [K][HT] = 35²; every tartrate brought a potassium, so K = HT + T, and what flour took is T: HT (HT + 26) = 35².
    """
    tartrate = np.roots([1, 26.0, -(35.0**2)]).max()
    by_hand = 4.37 - 3 * float(shielding(6000.0)) + np.log10(26.0 / tartrate)  # ions shield by Davies, at his peak
    found = kneaded({**CONDUCTING, "table-salt": 73}).reason("ph").value
    assert by_hand == pytest.approx(4.0, abs=0.1)
    assert found.mean == pytest.approx(by_hand, abs=0.3)
    assert found.low < by_hand < found.high


def test_what_the_flour_holds_closes_the_charge():
    chain = kneading(recipe_of({"plain-flour": 100, "distilled-water": 80, "citric-acid": 1, "table-salt": 5})).chain
    signs = {ion: np.sign(handbook().value("ions", ion, "charge").mean) for ion in chain.charges}
    mobile = sum(signs[ion] * each for ion, each in chain.charges.items())
    total = sum(np.abs(each) for each in chain.charges.values())
    assert np.all(np.abs(mobile + chain.fixed_charge) <= 1e-6 * total + 1e-6)  # a nanomole a litre
    assert np.all(chain.fixed_charge > 0)  # it took hydrogen up
