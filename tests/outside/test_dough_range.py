"""A dough of usual proportions lies where a porous body filled with brine must lie.

The range: saturated brine has 1/22.6 S/m = 0.044 Ω·m at 20 °C (conductivity standards, meter manual 11.2). A body of
which a share φ is that liquid can't be better than the bound of Hashin & Shtrikman, (3 - φ)/(2φ) times it, and with
Archie's exponent of well-cemented bodies, up to 3 (from memory), it is φ^-3 times it. A cooked dough of a cup of
flour and a cup of water is about 0.5 to 0.7 liquid.
"""

from tests.bowls import CONDUCTING, INSULATING, insulating, kneaded

BRINE = 1 / 22.6  # Ω·m, saturated, 20 °C


def test_a_salt_dough_of_usual_proportions_lies_between_the_best_body_and_the_best_cemented_one():
    found = kneaded({**CONDUCTING, "table-salt": 73}).resistivity
    best = BRINE * (3 - 0.75) / (2 * 0.75)
    worst = BRINE / 0.5**3
    assert best < found.low < found.mean < found.high < worst
    assert found.high / found.low > 2  # nobody measured it


def test_each_dough_is_worse_than_the_bound_of_its_own_liquid():
    for dough in (kneaded({**CONDUCTING, "table-salt": 36}), insulating(INSULATING)):
        bound, found = dough.reason("best_possible").value, dough.resistivity
        assert bound.low < found.low
        assert bound.mean < found.mean
        assert bound.high < found.high
