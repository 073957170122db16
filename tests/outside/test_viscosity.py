"""Viscosity of brine, syrup and glycerine, against formulas and tables that did not make them.

Sources: Laliberté 2009 by the package thermo 0.6.1 (NaCl, 20 °C) and his coefficients for sugar; Génotelle 1978,
Segur and Oberstar 1951 (glycerine), KCl and sugar tables: all from memory.
"""

import numpy as np
import pytest

from lumped.chemistry.syrup import glycerol_viscosity, liquid_thickening, syrup_viscosity
from lumped.chemistry.viscosity import brine_viscosity, salt_thickening, water_viscosity

T0, T20, T25 = 273.15, 293.15, 298.15


@pytest.mark.parametrize(("percent", "millipascals"), [(10, 1.1905), (20, 1.5612), (26, 1.9661)])
def test_brine_at_20_degrees_meets_laliberte(percent, millipascals):
    assert 1e3 * brine_viscosity(percent / 100, T20) == pytest.approx(millipascals, rel=2e-3)  # Laliberté's own water


@pytest.mark.parametrize(("percent", "celsius", "millipascals"), [(10, 0, 2.01), (10, 40, 0.79), (20, 40, 1.05)])
def test_brine_in_the_cold_and_in_the_warm(percent, celsius, millipascals):
    assert 1e3 * brine_viscosity(percent / 100, celsius + T0) == pytest.approx(millipascals, rel=0.05)  # from memory


def test_potassium_chloride_hardly_thickens_and_magnesium_sulphate_does():
    assert salt_thickening("potassium-chloride", 0.1, T20) == pytest.approx(0.99, abs=0.02)  # from memory
    assert salt_thickening("magnesium-sulphate", 0.2, T20) == pytest.approx(4.3, rel=0.1)  # from memory


@pytest.mark.parametrize("celsius", [0, 10, 25, 50, 80, 100])
def test_water_meets_vogel(celsius):
    # A 10^(B/(T - C)) with 24.14 µPa·s, 247.8 K, 140 K (from memory), good to 2.5 %
    kelvins = celsius + T0
    assert water_viscosity(kelvins) == pytest.approx(2.414e-5 * 10 ** (247.8 / (kelvins - 140)), rel=0.025)


@pytest.mark.parametrize(("percent", "millipascals"), [(20, 1.965), (40, 6.25), (50, 15.7)])
def test_syrup_at_20_degrees_is_as_laliberte_s_fit_within_three_per_cent(percent, millipascals):
    v1, v2, v3, v4, v5, v6 = (
        16.2391830818804,
        1.46930910938613,
        3.28485782809427,
        0.0102845759149181,
        33.9389495762169,
        2.28172425556793,
    )
    w, t = percent / 100, 20.0
    water = (t + 246) / ((0.05594 * t + 5.2842) * t + 137.37)
    sugar = np.exp((v1 * w**v2 + v3) / (v4 * t + 1)) / (v5 * w**v6 + 1)
    fitted = water ** (1 - w) * sugar**w
    assert fitted == pytest.approx(millipascals, rel=5e-3)
    assert 1e3 * syrup_viscosity(w, T20) == pytest.approx(fitted, rel=0.03)


@pytest.mark.parametrize(("percent", "celsius", "millipascals"), [
    (40, 40, 3.22), (60, 30, 33.8), (60, 40, 21.0), (65, 40, 45.0), (20, 0, 3.78),
])  # fmt: skip
def test_syrup_at_other_temperatures_meets_the_sugar_tables(percent, celsius, millipascals):
    assert 1e3 * syrup_viscosity(percent / 100, celsius + T0) == pytest.approx(millipascals, rel=0.06)  # from memory


@pytest.mark.parametrize(("percent", "celsius", "millipascals"), [
    (50, 0, 14.6), (50, 40, 3.10), (80, 0, 255.0), (80, 40, 20.8), (100, 10, 3900.0), (100, 30, 612.0), (100, 40, 284.0),
    (100, 60, 81.3),
])  # fmt: skip
def test_glycerine_meets_segur_and_oberstar(percent, celsius, millipascals):
    assert 1e3 * glycerol_viscosity(percent / 100, celsius + T0) == pytest.approx(millipascals, rel=0.06)  # from memory


def test_simple_sugars_thicken_less_than_sucrose():
    # 60 % at 20 °C: sucrose 58 mPa·s, glucose about 30 (from memory); sorbitol 70 % at 25 °C about 110
    assert liquid_thickening(0.4, {"glucose": 0.6}, T20) == pytest.approx(31, rel=0.25)
    found = 1e3 * water_viscosity(T25) * liquid_thickening(0.3, {"sorbitol": 0.7}, T25)
    assert found == pytest.approx(110, rel=0.25)
