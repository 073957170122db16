"""Water vapour and damp air, against tables and other programs' results.

Sources: IAPWS-95 by CoolProp 8.0.0 (saturation pressure); PsychroLib 2.5.0 (humidity ratio, wet bulb, dew point);
ASHRAE Fundamentals, chapter 1, example 1; CRC Handbook, "Constant humidity solutions"; Clausius and Clapeyron; textbook figures of heat transfer from memory.
"""

import numpy as np
import pytest

from lumped.chemistry.density import water_density
from lumped.chemistry.draught import evaporation_rate, heat_transfer, vapour_transfer
from lumped.chemistry.humidity import dew_point, humidity_from_wet_bulb, humidity_ratio, wet_bulb
from lumped.chemistry.vapour import (
    VAPOUR_CONSTANT,
    evaporation_heat,
    saturated_humidity,
    saturation_pressure,
    saturation_slope,
    vapour_density,
    vapour_diffusivity,
)

T0 = 273.15
PRESSURE = {0.01: 611.65, 5: 872.58, 10: 1228.20, 15: 1705.79, 20: 2339.32, 25: 3169.93, 30: 4246.97, 40: 7384.94,
            50: 12351.95, 100: 101418}  # fmt: skip


@pytest.mark.parametrize(("celsius", "pascals"), PRESSURE.items())
def test_vapour_over_water_has_the_pressure_of_the_standard(celsius, pascals):
    assert saturation_pressure(celsius + T0) == pytest.approx(pascals, rel=1e-4)  # an auxiliary equation, ±0.01 %


@pytest.mark.parametrize(("celsius", "percent", "ratio", "wet", "dew"), [
    (20, 50, 0.007262, 13.783, 9.272), (25, 50, 0.009881, 17.889, 13.864), (30, 30, 0.007918, 17.972, 10.548),
])  # fmt: skip
def test_damp_air_meets_psychrolib(celsius, percent, ratio, wet, dew):
    kelvins, humidity = celsius + T0, percent / 100
    assert humidity_ratio(kelvins, humidity) == pytest.approx(ratio, rel=1e-3)
    assert wet_bulb(kelvins, humidity) - T0 == pytest.approx(wet, abs=0.02)
    assert dew_point(kelvins, humidity) - T0 == pytest.approx(dew, abs=0.02)


def test_the_example_of_the_engineers_handbook():
    # 40 °C dry, 20 °C wet, 101.325 kPa: RH 14 %, humidity ratio 0.0065, dew point 7 °C, each to its last digit
    humidity = humidity_from_wet_bulb(40 + T0, 20 + T0)
    assert humidity == pytest.approx(0.14, abs=0.005)
    assert humidity_ratio(40 + T0, humidity) == pytest.approx(0.0065, abs=1.5e-4)
    assert dew_point(40 + T0, humidity) - T0 == pytest.approx(7, abs=0.5)


@pytest.mark.parametrize("celsius", [0, 20, 40, 60])
def test_heat_of_evaporation_agrees_with_clausius_and_clapeyron(celsius):
    kelvins = celsius + T0
    ideal = VAPOUR_CONSTANT * kelvins / saturation_pressure(kelvins) - 1 / water_density(kelvins)
    # real vapour takes 0.06 % less room than the ideal at 0 °C, 0.7 % less at 60 °C
    assert evaporation_heat(kelvins) == pytest.approx(kelvins * ideal * saturation_slope(kelvins), rel=0.008)


@pytest.mark.parametrize(("celsius", "diffusivity"), [(0, 2.2e-5), (20, 2.42e-5), (25, 2.5e-5), (40, 2.8e-5)])
def test_vapour_creeps_through_air_as_tables_say(celsius, diffusivity):
    assert vapour_diffusivity(celsius + T0) == pytest.approx(diffusivity, rel=0.04)  # from memory; tables differ by 5 %


def test_a_cubic_metre_of_room_air_holds_at_most_seventeen_grams():
    assert 1e3 * vapour_density(293.15) == pytest.approx(17.3, rel=2e-3)  # meteorologists' tables, from memory


def test_a_draught_of_one_metre_a_second_carries_some_ten_watts():
    # laminar plate by hand: Re = 6600, Nu = 0.664 · 81.2 · 0.89 = 48, h = 48 · 0.0257 / 0.1
    found = heat_transfer(0.1, air_speed=1.0, lighter=0.0, temperature=293.15)
    assert found == pytest.approx(12.3, rel=0.02)


def test_a_roll_in_a_draught_meets_hilpert():
    # Hilpert: Nu = 0.683 Re^0.466 Pr^⅓ for Re from 40 to 4000; textbooks give both to ±20 % (from memory)
    reynolds = 1.0 * 0.02 / (1.82e-5 / 1.204)
    hilpert = 0.683 * reynolds**0.466 * 0.71 ** (1 / 3) * 0.0257 / 0.02
    found = heat_transfer(0.02, air_speed=1.0, lighter=0.0, temperature=293.15, shape="roll")
    assert found == pytest.approx(hilpert, rel=0.2)


@pytest.mark.parametrize(("compound", "percent"), [
    ("sodium-chloride", 75.25), ("potassium-chloride", 84.17), ("magnesium-chloride", 32.79),
])  # fmt: skip
def test_air_over_saturated_salts_at_25_degrees_is_as_damp_as_the_crc_prints(compound, percent):
    assert 100 * saturated_humidity(compound, 298.15) == pytest.approx(percent, abs=0.01)


def test_still_air_over_a_warm_plate_meets_mcadams():
    # 0.54 Ra^¼ with area over perimeter, a quarter of a square's side: 10 cm, 20 K warmer, by hand (from memory)
    side, warmer = 0.1, 20 / 303.15
    rayleigh = 9.81 * warmer * (side / 4) ** 3 / (1.61e-5 * 2.27e-5)
    wanted = 0.54 * rayleigh**0.25 * 0.0264 / (side / 4)
    found = heat_transfer(side, air_speed=0.0, lighter=warmer, temperature=303.15)
    assert found == pytest.approx(wanted, rel=0.03)


def test_still_air_round_a_warm_roll_carries_some_five_to_ten_watts():
    found = heat_transfer(0.02, air_speed=0.0, lighter=20 / 300, temperature=303.15, shape="roll")
    assert 5 < found < 10  # kitchens' rule of thumb, common practice


def test_an_open_dish_in_a_quiet_room_loses_a_tenth_of_a_kilogram_a_square_metre_and_hour():
    # evaporation of still water indoors, 20 °C and half humidity: 0.05 to 0.15 kg/(m² h) (common practice)
    heat = heat_transfer(0.2, air_speed=0.1, lighter=0.005, temperature=293.15)
    transfer = vapour_transfer(heat, 293.15)
    away = evaporation_rate(transfer, surface=291.15, activity=1.0, air=293.15, humidity=0.5)
    assert 0.05 < 3600 * away < 0.15


def test_the_wet_bulb_is_where_heat_in_pays_for_vapour_out():
    # Lewis' analogy is not used by the wet-bulb formula; both must agree within the analogy's 10 % of the depression
    air, humidity = 298.15, 0.5
    wet = float(wet_bulb(air, humidity))
    lost = evaporation_rate(vapour_transfer(10.0, air), surface=wet, activity=1.0, air=air, humidity=humidity)
    assert lost * evaporation_heat(wet) == pytest.approx(10.0 * (air - wet), rel=0.12)


def test_pressure_s_slope_is_the_difference_quotient():
    kelvins = np.array([280.0, 300.0, 330.0])
    quotient = (saturation_pressure(kelvins + 1e-3) - saturation_pressure(kelvins - 1e-3)) / 2e-3
    np.testing.assert_allclose(saturation_slope(kelvins), quotient, rtol=1e-7)
