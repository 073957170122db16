"""Densities of salt water, syrup and water, against tables.

Sources: Poradnik fizykochemiczny 1974 (NaCl, 15 and 20 °C); Laliberté 2009 by the package thermo 0.6.1 (25 °C);
densities of water, of NaCl at 60 °C and of sugar at 20 °C from memory.
"""

import numpy as np
import pytest

from lumped.chemistry.density import brine_density, liquid_volume, water_density

T10, T15, T20, T25, T60 = 283.15, 288.15, 293.15, 298.15, 333.15
TABLE = {1: 1005.3, 2: 1012.2, 4: 1026.8, 6: 1041.3, 8: 1055.9, 10: 1070.7, 12: 1085.7, 16: 1116.2, 20: 1147.8,
         24: 1180.4, 26: 1197.2}  # fmt: skip


@pytest.mark.parametrize(("percent", "density"), TABLE.items())
def test_brine_at_20_degrees_meets_the_table(percent, density):
    assert brine_density(percent / 100, T20) == pytest.approx(density, rel=1e-6)


@pytest.mark.parametrize(("percent", "density"), [(10, 1074.2), (20, 1152.5), (26, 1202.5)])
def test_the_column_for_15_degrees_is_that_for_10(percent, density):
    # Printed for 15 °C; another table, from memory, has 1074.1, 1152.5 and 1202.5 at 10 °C, and a liquid that expands
    # by 0.035 % a kelvin between 20 and 25 °C does not by 0.07 % below.
    assert brine_density(percent / 100, T10) == pytest.approx(density, rel=1e-3)
    assert brine_density(percent / 100, T15) == pytest.approx(density, rel=2.1e-3)


@pytest.mark.parametrize(("percent", "density"), [(10, 1068.910), (20, 1145.596), (26, 1193.786)])
def test_brine_at_25_degrees_meets_laliberte(percent, density):
    assert brine_density(percent / 100, T25) == pytest.approx(density, rel=6e-4)  # as far as the tables differ at 20 °C


@pytest.mark.parametrize(("percent", "density"), [(8, 1038.1), (20, 1126.8), (26, 1174.7)])
def test_brine_at_60_degrees_is_within_a_thousandth(percent, density):
    assert brine_density(percent / 100, T60) == pytest.approx(density, rel=1e-3)  # engineers' handbook, from memory


@pytest.mark.parametrize(("percent", "molarity"), [(10, 1.8317), (20, 3.9272), (26, 5.3251)])
def test_the_litre_of_brine_holds_the_moles_of_the_table(percent, molarity):
    volume = liquid_volume(1 - percent / 100, {"sodium-chloride": percent / 100}, T20)
    assert percent / 100 / 0.058443 / volume / 1e3 == pytest.approx(molarity, rel=1e-3)


@pytest.mark.parametrize(
    ("celsius", "density"), [(0, 999.84), (4, 999.97), (20, 998.20), (25, 997.05), (60, 983.2), (100, 958.4)]
)
def test_water_is_as_dense_as_the_tables_say(celsius, density):
    assert water_density(celsius + 273.15) == pytest.approx(density, rel=5e-5)  # from memory, last digit


@pytest.mark.parametrize(("percent", "density"), [(10, 1038.1), (30, 1127.0), (50, 1229.6), (60, 1286.5), (70, 1347.2)])
def test_syrup_is_as_dense_as_the_sugar_tables_say(percent, density):
    volume = liquid_volume(1 - percent / 100, {"sucrose": percent / 100}, T20)
    assert 1 / volume == pytest.approx(density, rel=2e-3)  # sugar tables from memory; the fit ends at 51 %


@pytest.mark.parametrize(("compound", "percent", "density"), [
    ("potassium-chloride", 10, 1063.3), ("magnesium-sulphate", 10, 1103.4), ("glycerol", 50, 1126.3),
    ("sodium-hydrogen-carbonate", 5, 1035.4),
])  # fmt: skip
def test_other_solutions_at_20_degrees(compound, percent, density):
    volume = liquid_volume(1 - percent / 100, {compound: percent / 100}, T20)
    assert 1 / volume == pytest.approx(density, rel=2e-3)  # from memory


def test_thermo_gives_the_same_density_for_very_thin_brine_at_freezing():
    # thermo 0.6.1, its own example: 1002.62501201; the tables of 20 °C differ by up to 0.02 % there
    assert brine_density(0.0037838838, 273.15) == pytest.approx(1002.62501201, rel=2e-4)


def test_water_is_heaviest_at_four_degrees():
    kelvins = np.linspace(273.15, 283.15, 101)
    assert kelvins[np.argmax(water_density(kelvins))] == pytest.approx(277.13, abs=0.1)
