import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some

from lumped.chemistry.draught import evaporation_rate, heat_transfer, vapour_transfer
from lumped.chemistry.humidity import dew_point, humidity_from_wet_bulb, humidity_ratio, wet_bulb
from lumped.chemistry.vapour import saturated_humidity, saturation_pressure, vapour_density, vapour_diffusivity

celsius, humidity = some.floats(0, 50), some.floats(0.1, 1)


@given(celsius, humidity)
def test_dew_point_and_wet_bulb_lie_below_the_air(warmth, damp):
    kelvins = warmth + 273.15
    dew, wet = dew_point(kelvins, damp), wet_bulb(kelvins, damp)
    assert dew <= wet + 0.02 <= kelvins + 0.04
    assert damp * saturation_pressure(kelvins) == pytest.approx(saturation_pressure(dew), rel=1e-9)


@given(celsius, humidity)
def test_a_wet_bulb_gives_its_humidity_back(warmth, damp):
    kelvins = warmth + 273.15
    assert humidity_from_wet_bulb(kelvins, wet_bulb(kelvins, damp)) == pytest.approx(damp, abs=1e-6)


def test_saturated_air_has_one_temperature():
    np.testing.assert_allclose(wet_bulb([283.15, 303.15], 1.0), [283.15, 303.15], atol=1e-6)


def test_damp_air_broadcasts():
    assert humidity_ratio(np.full(3, 293.15), np.array([[0.3], [0.5]])).shape == (2, 3)
    assert wet_bulb(np.full(3, 293.15), np.array([[0.3], [0.5]])).shape == (2, 3)


def test_air_over_salt_is_damper_than_over_magnesium_chloride():
    salts = [float(saturated_humidity(f"{each}-chloride", 293.15)) for each in ("magnesium", "sodium", "potassium")]
    assert salts == sorted(salts)


def test_thin_air_lets_vapour_through_faster():
    assert vapour_diffusivity(293.15, 50662.5) == pytest.approx(2 * vapour_diffusivity(293.15), rel=1e-12)


@pytest.mark.parametrize("shape", ["slab", "roll"])
def test_a_draught_and_a_warm_surface_both_carry_more(shape):
    def carried(speed, lighter):
        return float(heat_transfer(0.05, air_speed=speed, lighter=lighter, temperature=293.15, shape=shape))

    assert carried(0.0, 0.01) < carried(0.1, 0.01) < carried(0.5, 0.01)
    assert carried(0.1, 0.001) < carried(0.1, 0.05)


def test_without_buoyancy_a_slab_loses_twice_as_much_at_four_times_the_speed():
    slow, fast = heat_transfer(0.1, air_speed=[0.5, 2.0], lighter=0.0, temperature=293.15)
    assert fast / slow == pytest.approx(2, rel=2e-3)


def test_lewis_number_of_air_makes_vapour_a_little_quicker_than_heat():
    heat = vapour_transfer(1.0, 293.15) * 1.204 * 1006
    assert heat == pytest.approx(0.86 ** (-2 / 3), rel=0.02)  # Le of water vapour in air, 0.85 to 0.87 (from memory)
    assert vapour_density(293.15, 0.0) == 0


def test_a_saturated_salt_surface_dries_below_its_humidity_and_gets_wet_above():
    dry, still, wet = evaporation_rate(0.005, surface=293.15, activity=0.753, air=293.15, humidity=[0.45, 0.753, 0.85])
    assert dry > 0 > wet
    assert still == pytest.approx(0, abs=1e-12)
