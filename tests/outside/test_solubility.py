"""How much water holds, against tables.

Sources: Salt Institute (NaCl in saturated brine); The Merck Index (cream of tartar); hundred-gram figures of other
salts, acids and sugars from memory, each held to the interval that its table states.
"""

import numpy as np
import pytest

from lumped.chemistry.solubility import parted, solubility, solubility_value, sugar_solubility
from lumped.reference import handbook

SALT = {0.1: 26.31, 4.44: 26.33, 10: 26.36, 15.56: 26.395, 21.11: 26.45, 26.67: 26.52, 37.78: 26.68, 51.67: 26.92,
        65.56: 27.21, 79.44: 27.62, 93.33: 27.91, 100: 28.12}  # fmt: skip
MOLALITY = {0.1: 6.109, 21.1: 6.153, 37.8: 6.226, 65.6: 6.396, 100: 6.694}


@pytest.mark.parametrize(("celsius", "percent"), SALT.items())
def test_brine_saturates_at_the_points_of_the_table(celsius, percent):
    held = solubility("sodium-chloride", celsius + 273.15)
    assert held / (1 + held) == pytest.approx(percent / 100, rel=2e-4)  # the temperatures are rounded


@pytest.mark.parametrize(("celsius", "molality"), MOLALITY.items())
def test_a_kilogram_of_water_holds_these_moles_of_salt(celsius, molality):
    assert solubility("sodium-chloride", celsius + 273.15) / 0.058443 == pytest.approx(molality, abs=0.005)


def test_the_interval_of_brine_is_that_of_the_printed_share():
    """The table prints per cent of the brine; its tolerance counts there, not in grams to a hundred grams of water."""
    found, curve = solubility_value("sodium-chloride", 293.15), handbook().curve("nacl-solubility")
    low, mean, high = (each / (1 + each) for each in (found.low, found.mean, found.high))
    assert (high - low) / 2 / mean == pytest.approx(curve.tolerances["salt"], rel=1e-3)


@pytest.mark.parametrize(("celsius", "molality"), [(20, 6.112), (25, 6.129), (40, 6.211), (60, 6.362)])
def test_brine_in_balance_with_rock_salt_by_another_program(celsius, molality):
    # PHREEQC with pitzer.dat, by phreeqpython 1.6.2: halite equilibrium, an equation of state against a table
    assert solubility("sodium-chloride", celsius + 273.15) / 0.058443 == pytest.approx(molality, rel=0.01)


def test_cream_of_tartar_dissolves_as_merck_says():
    cold, warm, boiling = solubility("potassium-hydrogen-tartrate", [283.15, 298.15, 373.15])
    assert warm == pytest.approx(1 / 162, rel=1e-3)
    assert boiling == pytest.approx(1 / 16, rel=1e-3)
    assert cold == pytest.approx(0.004, rel=0.01)
    assert 0.0052 < solubility_value("potassium-hydrogen-tartrate", 293.15).mean < 0.0062  # another table: 0.57 g


def test_sugar_saturates_at_67_and_a_half_per_cent():
    assert sugar_solubility(298.15) == pytest.approx(0.6747, abs=2e-4)  # tables of sugar, from memory


@pytest.mark.parametrize(("compound", "celsius", "grams"), [
    ("potassium-chloride", 25, 35.5), ("magnesium-sulphate", 25, 36.0), ("sodium-hydrogen-carbonate", 25, 10.3),
    ("alum", 25, 7.2), ("citric-acid", 25, 163.0), ("tartaric-acid", 25, 147.0), ("borax", 25, 3.2),
    ("glucose", 25, 104.0), ("fructose", 25, 405.0), ("sodium-benzoate", 25, 63.0), ("potassium-sorbate", 25, 140.0),
])  # fmt: skip
def test_figures_at_25_degrees_that_made_no_table_lie_inside_the_interval(compound, celsius, grams):
    found = solubility_value(compound, celsius + 273.15)  # other handbooks' figures of 25 °C, from memory
    assert found.low <= grams / 100 <= found.high


def test_the_two_chlorides_crowd_each_other_out():
    # water saturated with both at 25 °C holds 20.4 % NaCl and 11.1 % KCl (from memory)
    dissolved, solid = parted({"sodium-chloride": 1.0, "potassium-chloride": 1.0}, 1.0, 298.15)
    whole = 1 + dissolved["sodium-chloride"] + dissolved["potassium-chloride"]
    assert dissolved["sodium-chloride"] / whole == pytest.approx(0.204, abs=0.003)
    assert dissolved["potassium-chloride"] / whole == pytest.approx(0.111, abs=0.003)
    assert solid["sodium-chloride"] + dissolved["sodium-chloride"] == pytest.approx(1.0, rel=1e-12)


def test_alum_with_its_crystal_water_is_the_twelve_grams_of_the_old_tables():
    # 11.4 to 12 g of the twelve-hydrate in 100 g of water at 20 °C (from memory); 258.19 and 474.39 g/mol
    dry = float(solubility("alum", 293.15))
    crystals = dry * 474.388 / 258.192
    added = 100 * crystals / (1 - (crystals - dry))
    assert added == pytest.approx(11.7, abs=0.8)
    assert np.all(np.diff(solubility("alum", np.linspace(273.15, 363.15, 50))) > 0)
