"""Doughs against estimates worked by hand from first principles, none measured; each must lie inside the interval."""

import pytest
from tests.bowls import CONDUCTING, INSULATING, insulating, kneaded


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
