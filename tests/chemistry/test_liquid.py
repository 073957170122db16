import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some

from lumped.chemistry import (
    bitartrate_solubility,
    dissociated,
    liquid_viscosity_ratio,
    mixture_conductivity,
    mobility_left,
    sugar_solubility,
    syrup_viscosity,
)

T20 = 293.15


@given(some.floats(0.01, 1000), some.floats(0.01, 1000), some.floats(-50, 200))
def test_an_acid_liquid_is_neutral(acetic, citric, surplus):
    surplus = max(surplus, -200.0)
    found = dissociated({"acetic": acetic, "citric": citric}, surplus)
    anions = sum(amount for ion, amount in found.charges.items() if ion != "hydrogen")
    assert found.charges["hydrogen"] + surplus == pytest.approx(anions, rel=1e-6, abs=1e-6)


def test_pure_water_has_ph_seven():
    assert float(dissociated({}, np.zeros(1)).ph[0]) == pytest.approx(7, abs=1e-6)


def test_a_half_neutralised_acid_shows_its_constant():
    found = dissociated({"acetic": 100.0}, 50.0)
    assert float(found.ph) == pytest.approx(4.756, abs=1e-3)


def test_cream_of_tartar_gives_a_ph_of_three_and_a_half():
    # Merck Index: pH about 3.5 when saturated
    amount = 1e3 * bitartrate_solubility() * 1000 / 188.177
    assert float(dissociated({"tartaric": amount}, amount).ph) == pytest.approx(3.6, abs=0.15)


def test_doubling_both_ions_does_not_double_conductivity():
    once, twice = (mixture_conductivity({"sodium": c, "chloride": c}, T20) for c in (1000, 2000))
    assert 1.6 < twice / once < 1.9


def test_no_ions_no_conductivity():
    assert mixture_conductivity({"sodium": 0.0, "chloride": 0.0}, T20) == 0


def test_syrup_follows_genotelles_whole_formula_within_six_per_cent():
    # Génotelle 1978, all coefficients from memory: log10 of mPa·s
    s = np.array([20.0, 40.0, 50.0, 60.0, 65.0])
    for celsius in (20.0, 30.0, 40.0):
        n = s / (1900 - 18 * s)
        wanted = 22.46 * n - 0.114 + (30 - celsius) / (91 + celsius) * (1.1 + 43.1 * n**1.25)
        np.testing.assert_allclose(1e3 * syrup_viscosity(s / 100, celsius + 273.15), 10**wanted, rtol=0.06)


def test_warm_syrup_is_thinner_and_holds_more_sugar():
    assert syrup_viscosity(0.6, 313.15) < 0.5 * syrup_viscosity(0.6, T20)
    assert sugar_solubility(313.15) > sugar_solubility(T20)


def test_ions_in_saturated_syrup_keep_a_fiftieth_of_their_mobility():
    ratio = liquid_viscosity_ratio(0.666, 0.0, T20)
    assert 1 / 130 < mobility_left(ratio, 0.9) < mobility_left(ratio, 0.6) < 1 / 20


def test_saturated_syrup_is_as_strong_as_the_water_activity_table_took_it():
    assert float(sugar_solubility(298.15)) == pytest.approx(0.6747, abs=0.003)  # from memory, 25 °C
