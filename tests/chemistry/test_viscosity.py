import numpy as np
import pytest

from lumped.chemistry.compounds import compounds
from lumped.chemistry.syrup import liquid_thickening, liquid_viscosity_ratio, mobility_left, walden_exponent
from lumped.chemistry.viscosity import salt_thickening, water_viscosity

T20 = 293.15


@pytest.mark.parametrize("compound", [each.key for each in compounds() if each.dissolves])
def test_whatever_dissolves_has_a_thickening(compound):
    ratio = liquid_thickening(1.0, {compound: [0.0, 0.01, 0.1]}, [278.15, T20, 313.15])
    assert ratio[0] == pytest.approx(1.0)
    assert np.all((ratio > 0.9) & (ratio < 3))


def test_salt_and_sugar_thicken_independently():
    both = liquid_thickening(1.0, {"sodium-chloride": 0.2, "sucrose": 0.8}, T20)
    salt = salt_thickening("sodium-chloride", 0.2 / 1.2, T20)
    assert both == pytest.approx(salt * liquid_viscosity_ratio(0.8 / 1.8, 0.0, T20), rel=1e-12)


def test_two_sugars_count_as_one():
    both = liquid_thickening(1.0, {"sucrose": 0.5, "maltose": 0.5}, T20)
    assert both == pytest.approx(liquid_viscosity_ratio(0.5, 0.0, T20), rel=1e-12)


def test_syrup_keeps_thickening_beyond_its_table():
    ratio = liquid_viscosity_ratio([0.65, 0.70, 0.75, 0.78], 0.0, T20)
    assert np.all(np.diff(np.log(ratio)) > 0.5)


def test_no_water_and_no_solute_is_water():
    assert liquid_thickening(0.0, {"sucrose": 0.0, "glycerol": 0.0}, T20) == pytest.approx(1.0)


def test_ions_lose_less_than_the_liquid_thickens():
    believed = walden_exponent()
    kept = [float(mobility_left(50.0, each)) for each in (believed.low, believed.mean, believed.high)]
    assert 1 / 50 < kept[2] < kept[1] < kept[0] < 1
    assert believed.spread == "uniform"


def test_warm_water_is_thin():
    assert np.all(np.diff(water_viscosity(np.linspace(273.15, 373.15, 200))) < 0)
