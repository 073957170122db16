"""Sources: CRC Handbook, "Ionic conductivity and diffusion at infinite dilution" (25 °C, column of D); KCl standards."""

import numpy as np
import pytest

from lumped.chemistry.diffusion import ion_diffusivity, salt_diffusivity, water_in_dough
from lumped.quantities import Status

T25 = 298.15


@pytest.mark.parametrize(("ion", "diffusivity"), [
    ("sodium", 1.334e-9), ("chloride", 2.032e-9), ("potassium", 1.957e-9), ("hydrogen", 9.311e-9),
    ("calcium", 0.792e-9), ("magnesium", 0.706e-9),
])  # fmt: skip
def test_nernst_and_einstein_give_the_diffusivities_of_the_table(ion, diffusivity):
    assert ion_diffusivity(ion, T25) == pytest.approx(diffusivity, rel=1e-3)  # its last digit


@pytest.mark.parametrize(("celsius", "conductivity"), [
    (0, 772.92), (10, 1013.95), (20, 1273.03), (35, 1687.79), (50, 2123.43),
])  # fmt: skip
def test_ions_creep_in_the_cold_and_the_warm_as_they_conduct(celsius, conductivity):
    """0.01 mol/kg KCl, µS/cm: CRC p. 5-73, after Wu, Koch and Pratt 1991. D goes as T λ; 1.2 % was seen, at 0 °C."""
    kelvins = celsius + 273.15
    rise = kelvins / T25 * conductivity / 1408.23
    assert ion_diffusivity("potassium", kelvins) / ion_diffusivity("potassium", T25) == pytest.approx(rise, rel=0.02)


def test_salt_creeps_between_its_ions():
    # 1.61e-9 m²/s at infinite dilution, 1.48e-9 at 0.1 to 1 mol/L (from memory)
    assert salt_diffusivity(T25) == pytest.approx(1.61e-9, rel=2e-3)
    assert ion_diffusivity("sodium", T25) < salt_diffusivity(T25) < ion_diffusivity("chloride", T25)


def test_a_symmetrical_salt_is_twice_the_product_over_the_sum():
    fast, slow = ion_diffusivity("chloride", T25), ion_diffusivity("sodium", T25)
    assert salt_diffusivity(T25) == pytest.approx(2 * fast * slow / (fast + slow), rel=1e-12)


def test_ions_are_some_two_per_cent_a_kelvin_quicker_in_warmer_water():
    cold, warm = salt_diffusivity([293.15, 303.15])
    assert 1.2 < warm / cold < 1.35
    assert np.all(np.diff(salt_diffusivity(np.linspace(273.15, 373.15, 50))) > 0)


def test_water_in_dough_is_a_belief():
    believed = water_in_dough()
    assert believed.provenance.status is Status.FROM_MEMORY
    assert believed.high < ion_diffusivity("sodium", T25)
    assert believed.high / believed.low > 10
