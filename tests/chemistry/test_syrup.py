import numpy as np
import pytest

from lumped.chemistry import liquid_viscosity_ratio, mobility_left, sugar_solubility, syrup_viscosity
from lumped.chemistry.syrup import walden_exponent

T20 = 293.15


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


def test_the_walden_exponent_is_a_distribution():
    believed = walden_exponent()
    assert (believed.low, believed.high) == (0.6, 0.9)  # small ions in syrup, from memory


def test_saturated_syrup_is_as_strong_as_the_water_activity_table_took_it():
    assert float(sugar_solubility(298.15)) == pytest.approx(0.6747, abs=0.003)  # from memory, 25 °C
