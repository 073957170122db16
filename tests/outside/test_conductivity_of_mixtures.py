"""Conductivity of other salts than table salt in water at 20 and 25 °C.

Sources: CRC Handbook of Chemistry and Physics, tables “Electrical conductivity of aqueous solutions” (20 °C) and, 97th
edition, “Equivalent conductivity of electrolytes” (25 °C); KCl standards after Wu, Koch and Pratt (1991), CRC p. 5-73.
"""

import numpy as np
import pytest

from lumped.chemistry.compounds import compound
from lumped.chemistry.density import liquid_volume
from lumped.chemistry.mixture import mixture_conductivity, mixture_width
from lumped.chemistry.potash import potash_conductivity
from lumped.reference import handbook

T20, T25 = 293.15, 298.15
SALTS = {
    # curve: (compound, cation, anion, equivalents in a mole)
    "cacl2": ("calcium-chloride", "calcium", "chloride", 2),
    "mgcl2": ("magnesium-chloride", "magnesium", "chloride", 2),
    "mgso4": ("magnesium-sulphate", "magnesium", "sulphate", 2),
    "na2so4": ("sodium-sulphate", "sodium", "sulphate", 2),
}
STANDARDS = {
    # °C: mS/m at 0.01, 0.1, 1 mol/kg
    0: (77.292, 711.685, 6348.8), 10: (101.395, 929.172, 8084.4), 20: (127.303, 1161.59, 9917.0),
    25: (140.823, 1282.46, 10862.0), 30: (154.663, 1405.9, 11824.0), 40: (183.127, 1659.1, 13781.0),
    50: (212.343, 1918.09, 15767.0),
}  # fmt: skip


def charges_of(key, share):
    name, cation, anion, count = SALTS[key]
    volume = liquid_volume(1.0, {name: share / (1 - share)}, T20)
    charge = count * share / (1 - share) / compound(name).molar_mass / volume
    return {cation: charge, anion: charge}


@pytest.mark.parametrize("celsius", STANDARDS)
def test_potassium_chloride_is_exact_at_the_standards(celsius):
    found = 1e3 * potash_conductivity([0.01, 0.1, 1.0], celsius + 273.15)
    np.testing.assert_allclose(found, STANDARDS[celsius], rtol=2e-5)  # the table prints five digits


@pytest.mark.parametrize("celsius", [5, 15, 35, 45])
def test_between_its_temperatures_the_standard_is_met_within_a_thousandth(celsius):
    table = handbook().curve("kcl-conductivity-standards")
    row = int(np.argmin(np.abs(table["temperature"] - celsius - 273.15)))
    around = [row - 1, row + 1]
    assert potash_conductivity(0.1, celsius + 273.15) == pytest.approx(table["middle"][row], rel=1e-6)
    assert table["middle"][around].mean() == pytest.approx(table["middle"][row], rel=3e-3)  # it bends that little


@pytest.mark.parametrize("molality", [0.01, 0.1, 1.0])
@pytest.mark.parametrize("kelvins", [273.15, 293.15, 323.15])
def test_as_a_mixture_potassium_chloride_is_what_it_is_alone(molality, kelvins):
    volume = liquid_volume(1.0, {"potassium-chloride": molality * compound("potassium-chloride").molar_mass}, T20)
    c = molality / volume
    found = mixture_conductivity({"potassium": c, "chloride": c}, kelvins)
    assert found == pytest.approx(potash_conductivity(molality, kelvins), rel=0.01)


@pytest.mark.parametrize("key", SALTS)
def test_the_interval_of_another_salt_holds_the_table(key):
    table = handbook().curve(f"{key}-conductivity-20degC")
    inside = []
    for share, printed in zip(table["salt"], table["conductivity"], strict=True):
        charges = charges_of(key, share)
        half = float(mixture_width(charges, T20).item())
        found = float(mixture_conductivity(charges, T20))
        inside.append(found * np.exp(-half) <= printed <= found * np.exp(half))
    assert np.mean(inside) >= 0.75, key  # magnesium sulphate is worst: it pairs, and is thick when strong


@pytest.mark.parametrize("key", ["cacl2", "mgcl2", "na2so4"])
def test_thin_salts_of_doubly_charged_ions_are_met_within_seven_per_cent(key):
    table = handbook().curve(f"{key}-conductivity-dilute-25degC")
    _, cation, anion, _ = SALTS[key]
    found = mixture_conductivity({cation: table["charge"], anion: table["charge"]}, T25)
    np.testing.assert_allclose(
        found, table["conductivity"], rtol=0.07
    )  # 6.2 % at most was seen, sodium sulphate at 0.1 mol/L


def test_potash_with_its_middle_standard_left_out_is_met_within_two_per_cent():
    """The molar conductivity at 0.1 mol/kg from its neighbours alone, along the root of concentration."""
    from lumped.quantities.interpolation import Monotone

    limit, thin, strong = 0.014979 / 1.1078, 0.127303, 9.9170
    c = np.array([9.97, 99.4, 968.0])
    curve = Monotone(np.sqrt([0.0, c[0], c[2]]), [limit, thin / c[0], strong / c[2]])
    assert curve(np.sqrt(c[1])) == pytest.approx(1.16159 / c[1], rel=0.02)
