"""Potassium chloride as older standards count it: so many grams in a kilogram of solution (demal), not mol/kg of water.

Source: a meter's manual, section 11.2 (0.01, 0.1 and 1 D at 20, 25 and 35 °C). Grams after G. Jones and B. C. Bradshaw
(1933), from memory: 0.745263, 7.41913 and 71.1352 g of KCl in a kilogram of solution.
"""

import pytest

from lumped.chemistry.potash import potash_conductivity

GRAMS = {0.01: 0.745263, 0.1: 7.41913, 1.0: 71.1352}
MILLISIEMENS = {  # demal: mS/cm at 20, 25, 35 °C
    0.01: (1.2737, 1.4083, 1.6876), 0.1: (11.644, 12.852, 15.353), 1.0: (101.70, 111.31, 131.10),
}  # fmt: skip


def molality(demal):
    return GRAMS[demal] / (1000 - GRAMS[demal]) / 0.0745513


@pytest.mark.parametrize("demal", GRAMS)
@pytest.mark.parametrize(("column", "celsius"), list(enumerate((20, 25, 35))))
def test_the_older_standards_are_met_within_a_thousandth(demal, column, celsius):
    """None of them made a curve; 0.06 % was seen."""
    found = 10 * potash_conductivity(molality(demal), celsius + 273.15)
    assert found == pytest.approx(MILLISIEMENS[demal][column], rel=1e-3)


def test_a_demal_is_no_mole_in_a_kilogram_of_water():
    # 111.31 and 108.62 mS/cm at 25 °C: who confuses them is off by 2.5 %
    demal, molal = (float(potash_conductivity(each, 298.15)) for each in (molality(1.0), 1.0))
    assert demal / molal == pytest.approx(111.31 / 108.62, rel=1e-3)
