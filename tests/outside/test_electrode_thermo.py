"""What the metals' figures must obey.

Sources: standard potentials, CRC Handbook of Chemistry and Physics, 54th edition, p. D-120; the same from the standard
free energies of formation of the ions in CRC's thermodynamic tables (Fe2+ −78.9, Cu2+ 65.5, Ni2+ −45.6, Zn2+ −147.1,
Cl− −131.2 kJ/mol), E° = −ΔG°/(zF); Nernst's slope; the ideal Tafel slope of a slow first electron, 2·ln10·RT/F;
Faraday's law.
"""

import math

import pytest
from scipy.constants import R, physical_constants

from lumped.chemistry.electrodes import dissolved_mass, electrode
from lumped.reference import handbook

F = physical_constants["Faraday constant"][0]
FREE_ENERGY = {"iron": -78.9e3, "copper": 65.5e3, "nickel": -45.6e3, "zinc": -147.1e3}
NERNST = 59.1593e-3  # V a decade at 25 °C


@pytest.mark.parametrize("metal", FREE_ENERGY)
def test_standard_potentials_close_with_free_energies(metal):
    printed = handbook().value("metals", metal, "standard_potential").mean
    assert printed == pytest.approx(FREE_ENERGY[metal] / (2 * F), abs=0.01)  # the tables agree to 7 mV


def test_chlorine_closes_with_its_free_energy():
    printed = handbook().value("metals", "graphite", "standard_potential").mean
    assert printed == pytest.approx(131.2e3 / F, abs=0.003)


def test_nernst_and_tafel_slopes_are_those_of_theory():
    assert math.log(10) * R * 298.15 / F == pytest.approx(NERNST, rel=1e-5)
    for metal in handbook().keys("metals"):
        slope = handbook().value("metals", metal, "cathodic_slope").mean
        assert slope == pytest.approx(2 * NERNST, abs=0.1e-3)


@pytest.mark.parametrize("metal", handbook().keys("metals"))
def test_the_law_has_the_tafel_slope_that_its_row_names(metal):
    lead = electrode(metal, 1e-4)
    decade = lead.potential(-1e-3) - lead.potential(-1e-2)
    assert decade == pytest.approx(2 * NERNST, rel=0.01)  # what else flows at rest is under 1 % of a milliampere


def test_the_cathode_is_the_hydrogen_line_at_ph_10():
    for metal in handbook().keys("metals"):
        row = handbook().row("metals", metal, "cathodic_potential")
        assert (row.low, row.printed, row.high) == pytest.approx((-11 * NERNST, -10 * NERNST, -9 * NERNST), abs=0.001)


@pytest.mark.parametrize("metal", ["iron", "tin", "zinc"])
def test_active_metals_dissolve_at_their_nernst_potential_of_a_hundredth_molar(metal):
    standard = handbook().value("metals", metal, "standard_potential").mean
    anodic = handbook().value("metals", metal, "anodic_potential").mean
    assert anodic == pytest.approx(standard - NERNST / 2 * 2, abs=0.002)


@pytest.mark.parametrize(
    ("metal", "milligrams"), [("iron", 20.8365), ("nickel", 21.8992), ("zinc", 24.3942), ("copper", 2 * 23.7099)]
)
def test_faraday_20_milliamperes_for_an_hour(metal, milligrams):
    # of copper the source counts two electrons; from salt dough it leaves with one
    assert dissolved_mass(metal, 72.0) * 1e6 == pytest.approx(milligrams, rel=1e-4)
