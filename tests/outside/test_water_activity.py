"""Water activity of brines and syrups, against tables and another program's results.

Sources: osmotic coefficients of NaCl after Hamer and Wu, Robinson and Stokes (from memory); pyEQL 1.7.0 (Pitzer);
CRC Handbook, "Constant humidity solutions", RH = A exp(B/T), and, 97th edition, "Mean activity coefficients"; Wexler and Hasegawa 1954; Greenspan 1977 (from memory);
Norrish's form after Baeza et al. 2010, its constants from memory; Robinson and Stokes for KCl (from memory).
"""

import numpy as np
import pytest
from scipy.integrate import quad

from lumped.chemistry.activity import norrish, water_activity, water_activity_interval
from lumped.chemistry.pitzer import debye_hueckel_slope, osmotic_coefficient
from lumped.chemistry.solubility import solubility
from lumped.chemistry.vapour import saturated_humidity

T25 = 298.15
MOLAL = [0.1, 0.5, 1, 2, 3, 4, 5, 6]
FREE = [0.99665, 0.98355, 0.96686, 0.93159, 0.89316, 0.85145, 0.80681, 0.75981]  # from osmotic coefficients
PYEQL = [0.99665, 0.98352, 0.96678, 0.93138, 0.89293, 0.85137, 0.80691, 0.75997]


def over(compound, molar_mass, kelvins):
    """Water activity over the saturated solution."""
    return water_activity({compound: solubility(compound, kelvins) / molar_mass}, kelvins)


def test_salt_water_at_25_degrees_meets_the_osmotic_coefficients():
    np.testing.assert_allclose(water_activity({"sodium-chloride": MOLAL}, T25), FREE, atol=5e-4)


def test_salt_water_at_25_degrees_meets_another_pitzer():
    np.testing.assert_allclose(water_activity({"sodium-chloride": MOLAL}, T25), PYEQL, atol=6e-4)


@pytest.mark.parametrize(("molality", "mean"), [
    (0.1, 0.778), (0.2, 0.735), (0.5, 0.681), (0.7, 0.667), (1.0, 0.657), (2.0, 0.668),
])  # fmt: skip
def test_what_water_feels_and_what_salt_feels_belong_together(molality, mean):
    """Gibbs and Duhem: ln γ = φ - 1 + ∫ (φ - 1)/m dm. CRC, 97th edition; 0.0035 was seen, the table prints 0.001."""

    def along(root):
        return 2 * (float(osmotic_coefficient("sodium-chloride", root**2, T25)) - 1) / root

    integral = quad(along, 1e-6, molality**0.5)[0]
    found = np.exp(osmotic_coefficient("sodium-chloride", molality, T25) - 1 + integral)
    assert found == pytest.approx(mean, abs=4e-3)


def test_the_slope_of_debye_and_hueckel_at_25_degrees():
    assert debye_hueckel_slope(T25) == pytest.approx(0.3915, rel=2e-3)  # 0.391 to 0.392 in the literature (memory)
    np.testing.assert_allclose(debye_hueckel_slope([273.15, 323.15]), [0.3767, 0.4103], rtol=3e-3)  # from memory


def test_saturated_brine_keeps_75_per_cent_of_its_water_s_pressure():
    assert over("sodium-chloride", 0.058443, T25) == pytest.approx(0.7528, abs=0.002)
    low, high = water_activity_interval({"sodium-chloride": 6.15}, T25)
    assert low < 0.7528 < high


@pytest.mark.parametrize("celsius", [0, 10, 20, 25, 30, 40, 50, 60])
def test_saturated_brine_follows_the_crc_formula_in_temperature(celsius):
    kelvins = celsius + 273.15
    wanted = 0.6920 * np.exp(25 / kelvins)  # written here once more: the table's A and B are checked by it
    assert over("sodium-chloride", 0.058443, kelvins) == pytest.approx(wanted, abs=0.002)
    assert saturated_humidity("sodium-chloride", kelvins) == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize(("celsius", "percent"), [(0, 74.9), (30, 75.6), (50, 74.7)])
def test_the_oldest_table_of_saturated_brine_lies_within_a_per_cent(celsius, percent):
    # Wexler and Hasegawa 1954 are 0.8 below the CRC formula at 0 °C and 0.5 above it at 30 °C
    assert over("sodium-chloride", 0.058443, celsius + 273.15) == pytest.approx(percent / 100, abs=0.008)


@pytest.mark.parametrize(("celsius", "percent"), [(0, 88.4), (10, 86.6), (20, 84.9), (25, 84.2), (40, 82.1)])
def test_saturated_potassium_chloride_follows_the_crc_formula(celsius, percent):
    assert over("potassium-chloride", 0.074551, celsius + 273.15) == pytest.approx(percent / 100, abs=0.005)


@pytest.mark.parametrize(("compound", "molar_mass", "factor", "warmth", "within"), [
    ("magnesium-chloride", 0.095211, 0.2926, 34, 0.01),
    ("calcium-chloride", 0.110984, 0.0011, 1653, 0.06),  # from memory; 15 to 25 °C
])  # fmt: skip
@pytest.mark.parametrize("celsius", [15, 20, 25])
def test_salts_that_dissolve_beyond_their_fit_follow_the_crc_formula_within_their_interval(
    compound, molar_mass, factor, warmth, within, celsius
):
    kelvins = celsius + 273.15
    wanted, found = factor * np.exp(warmth / kelvins), over(compound, molar_mass, kelvins)
    low, high = water_activity_interval({compound: solubility(compound, kelvins) / molar_mass}, kelvins)
    assert found == pytest.approx(wanted, abs=within)
    assert low < wanted < high


@pytest.mark.parametrize(("molality", "coefficient"), [(0.1, 0.926), (1.0, 0.898), (2.0, 0.912), (4.0, 0.965)])
def test_potassium_chloride_meets_its_osmotic_coefficients(molality, coefficient):
    assert osmotic_coefficient("potassium-chloride", molality, T25) == pytest.approx(coefficient, abs=2e-3)


@pytest.mark.parametrize(("compound", "strength", "coefficient"), [
    ("magnesium-sulphate", 0.4, 0.606), ("magnesium-sulphate", 0.8, 0.562), ("magnesium-sulphate", 4.0, 0.525),
    ("magnesium-sulphate", 8.0, 0.669), ("calcium-chloride", 3.0, 1.046),
    ("magnesium-chloride", 3.0, 1.108), ("sodium-sulphate", 3.0, 0.642), ("sodium-hydrogen-carbonate", 1.0, 0.846),
])  # fmt: skip
def test_salts_of_double_charges_meet_robinson_and_stokes(compound, strength, coefficient):
    assert osmotic_coefficient(compound, strength, T25) == pytest.approx(coefficient, abs=0.02)  # from memory


@pytest.mark.parametrize(("percent", "free"), [(30, 0.9749), (50, 0.9348), (60, 0.8953), (67.47, 0.8468)])
def test_sugar_follows_norrish(percent, free):
    molality = percent / (100 - percent) / 0.342296
    assert norrish(molality, 6.47) == pytest.approx(free, abs=2e-4)  # the same formula, computed elsewhere
    assert water_activity({"sucrose": molality}, T25) == pytest.approx(free, abs=2e-4)


def test_saturated_sugar_lies_where_robinson_and_stokes_found_it():
    assert 0.843 - 0.005 < over("sucrose", 0.342296, T25) < 0.851 + 0.005  # from memory


@pytest.mark.parametrize(("percent", "free"), [(30, 0.9163), (50, 0.8108), (70, 0.6127)])
def test_glycerine_follows_norrish(percent, free):
    assert water_activity({"glycerol": percent / (100 - percent) / 0.092094}, T25) == pytest.approx(free, abs=3e-4)


def test_sea_water_keeps_98_per_cent():
    # 0.981 at 25 °C for salinity 35, from memory; composition per kilogram of water
    sea = {"sodium-chloride": 0.4275, "magnesium-chloride": 0.0547, "sodium-sulphate": 0.0282,
           "potassium-chloride": 0.0106, "calcium-chloride": 0.0107}  # fmt: skip
    assert water_activity(sea, T25) == pytest.approx(0.981, abs=5e-4)


def test_half_salt_half_potash_meets_the_mixed_brine():
    # 2 + 2 mol/kg at 25 °C: osmotic coefficient 1.026 by Pitzer's theta -0.012 and psi -0.0018 (pitzer.dat):
    # mean of the pure ones at this strength, and m y (1 - y) (theta + m psi) for one common ion
    pure = (osmotic_coefficient("sodium-chloride", 4.0, T25) + osmotic_coefficient("potassium-chloride", 4.0, T25)) / 2
    coefficient = pure + 4 * 0.25 * (-0.012 + 4 * -0.0018)
    found = water_activity({"sodium-chloride": 2.0, "potassium-chloride": 2.0}, T25)
    assert found == pytest.approx(np.exp(-0.0180153 * 8 * coefficient), abs=0.003)
    low, high = water_activity_interval({"sodium-chloride": 2.0, "potassium-chloride": 2.0}, T25)
    assert low < np.exp(-0.0180153 * 8 * coefficient) < high


@pytest.mark.parametrize(("compound", "molar_mass", "celsius", "percent"), [
    ("sodium-chloride", 0.058443, 20, 75.47), ("sodium-chloride", 0.058443, 25, 75.29),
    ("potassium-chloride", 0.074551, 25, 84.34), ("magnesium-chloride", 0.095211, 25, 32.78),
])  # fmt: skip
def test_saturated_salts_meet_greenspan(compound, molar_mass, celsius, percent):
    found = over(compound, molar_mass, celsius + 273.15)
    within = 0.01 if compound == "magnesium-chloride" else 0.003  # beyond the end of its fit
    assert found == pytest.approx(percent / 100, abs=within)  # his figures from memory, ±0.1 to 0.3 %


def test_a_food_table_s_hooks():
    # Beuchat 1981 and after: NaCl 0.95 for 7 %, 0.91 for 12, 0.87 for 15; sugar 0.91 for 55 %, 0.87 for 65; ±0.03
    assert water_activity({"sucrose": 65 / 35 / 0.342296}, T25) == pytest.approx(0.87, abs=0.03)
    for percent, free in ((7, 0.95), (12, 0.91), (15, 0.87)):
        assert water_activity({"sodium-chloride": percent / (100 - percent) / 0.058443}, T25) == pytest.approx(
            free, abs=0.03
        )
    assert water_activity({"sucrose": 55 / 45 / 0.342296}, T25) == pytest.approx(0.91, abs=0.03)
