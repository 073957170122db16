"""A dough of usual proportions lies where a porous body filled with brine must lie.

The range: saturated brine has 1/22.6 S/m = 0.044 Ω·m at 20 °C (conductivity standards, meter manual 11.2). A body of
which a share φ is that liquid can't be better than the bound of Hashin & Shtrikman, (3 - φ)/(2φ) times it, and with
Archie's exponent of well-cemented bodies, up to 3 (from memory), it is φ^-3 times it. A cooked dough of a cup of
flour and a cup of water is about 0.5 to 0.7 liquid. The estimates of other doughs below are first-principles figures
made independently of this program, none measured; each must lie inside the interval.
"""

import pytest

from lumped.dough import Portion, Recipe, knead
from lumped.quantities import Value

BRINE = 1 / 22.6  # Ω·m, saturated, 20 °C
CONDUCTING = {"plain-flour": 125, "tap-water": 237, "vegetable-oil": 13.6, "cream-of-tartar": 9}
INSULATING = {"plain-flour": 150, "granulated-sugar": 100, "distilled-water": 70, "vegetable-oil": 41}


def kneaded(grams, kind="conducting", cooked="pot", **more):
    portions = tuple(
        Portion(ingredient=key, written=f"{amount} g", mass=Value.exact(amount / 1e3, "kg"))
        for key, amount in grams.items()
    )
    return knead(Recipe(title="dough", kind=kind, portions=portions, cooked=cooked, **more))


def insulating(grams):
    return kneaded(grams, "insulating", "not cooked")


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


@pytest.mark.parametrize(("salt", "ohm_cm"), [(18, 23.7), (36, 14.6), (73, 11.3), (146, 13.7)])
def test_a_pack_of_grains_with_exponent_two_lies_inside_the_interval(salt, ohm_cm):
    # the same recipe worked by hand: 15 % boils off, 0.3 g bound water per g of dry flour, Archie with m = 2
    found = kneaded({**CONDUCTING, "table-salt": salt}).resistivity
    assert found.low < ohm_cm / 100 < found.mean


def test_more_salt_than_dissolves_makes_it_worse():
    quarter_cup, half_cup = (kneaded({**CONDUCTING, "table-salt": salt}) for salt in (73, 146))
    assert half_cup.resistivity.mean > 1.1 * quarter_cup.resistivity.mean
    assert half_cup.reason("salt_solid").value.mean > 50
    assert any("stay solid" in note for note in half_cup.notes)


def test_doubling_salt_does_not_double_conductivity():
    some, twice = (kneaded({**CONDUCTING, "table-salt": salt}).resistivity.mean for salt in (18, 36))
    assert 1.3 < some / twice < 1.9


def test_a_stiff_sugar_dough_insulates_thousands_of_times_better_than_a_salt_dough():
    stiff = insulating(INSULATING).resistivity
    assert stiff.low < 400 < 2000 < stiff.high  # hand estimate 400 to 2000 Ω·m, by the Walden exponent
    assert 1000 < stiff.mean / kneaded({**CONDUCTING, "table-salt": 73}).resistivity.mean < 12000


def test_without_sugar_the_same_dough_lets_ten_times_as_much_through():
    plain = {key: grams for key, grams in INSULATING.items() if key != "granulated-sugar"}
    found = insulating(plain).resistivity
    assert found.low < 85 < found.high  # hand estimate 85 Ω·m
    assert 4 < insulating(INSULATING).resistivity.mean / found.mean < 20


def test_a_pinch_of_salt_ruins_an_insulating_dough():
    clean = insulating(INSULATING).resistivity.mean
    pinch, gram = (insulating({**INSULATING, "table-salt": salt}) for salt in (0.4, 1.0))
    assert clean / pinch.resistivity.mean == pytest.approx(2.5, rel=0.2)  # hand estimate
    assert clean / gram.resistivity.mean == pytest.approx(5, rel=0.2)
    assert any("clean hands" in note for note in pinch.notes)


def test_tap_water_costs_a_flour_dough_little_because_flours_own_ions_dominate():
    tap = {**INSULATING, "tap-water": 70}
    del tap["distilled-water"]
    loss = insulating(INSULATING).resistivity.mean / insulating(tap).resistivity.mean
    assert 1.03 < loss < 1.15  # hand estimate 7 to 13 %


def test_acid_does_not_change_the_brine_by_more_than_two_per_cent():
    plain = {key: grams for key, grams in CONDUCTING.items() if key != "cream-of-tartar"}
    with_acid, without = (
        kneaded({**each, "table-salt": 73}).reason("liquid_conductivity").value.mean for each in (CONDUCTING, plain)
    )
    assert with_acid == pytest.approx(without, rel=0.02)


def test_a_warm_dough_reads_too_conducting_and_says_so():
    cool, hot = (kneaded({**CONDUCTING, "table-salt": 73}, temperature=273.15 + t) for t in (25, 60))
    assert cool.resistivity.mean / hot.resistivity.mean == pytest.approx(1.8, rel=0.06)  # fluidity of water
    assert any("extrapolated" in note for note in hot.notes)
