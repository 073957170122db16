"""Molar masses, as a library of chemical data (chemicals 1.5.2, `molecular_weight`) computes them from formulas."""

import pytest

from lumped.chemistry.compounds import compound, molar_mass_of

WATER = 18.015
PRINTED = {
    # compound: (molar mass in g/mol, molecules of water in its crystals)
    "sodium-chloride": (58.443, 0),
    "potassium-hydrogen-tartrate": (188.177, 0),
    "alum": (474.388, 12),
    "citric-acid": (192.124, 0),
    "sodium-hydrogen-carbonate": (84.007, 0),
    "glycerol": (92.094, 0),
    "sucrose": (342.296, 0),
    "acetic-acid": (60.052, 0),
    "tartaric-acid": (150.087, 0),
    "borax": (381.372, 10),
}


@pytest.mark.parametrize(("key", "printed"), PRINTED.items())
def test_molar_masses_are_those_of_the_library(key, printed):
    mass, water = printed
    assert 1e3 * compound(key).molar_mass + water * WATER == pytest.approx(
        mass, abs=0.02
    )  # five-digit atomic weights, twelve waters


def test_alum_is_a_sixteenth_aluminium_and_almost_half_water():
    """Of 474.388 g/mol: aluminium 5.6876 %, water 45.571 % (computed from formulas by the same library)."""
    whole = molar_mass_of("KAl(SO4)2") + 12 * molar_mass_of("H2O")
    assert molar_mass_of("Al") / whole == pytest.approx(0.056876, rel=1e-4)
    assert 12 * molar_mass_of("H2O") / whole == pytest.approx(0.45571, rel=1e-4)


def test_cream_of_tartar_is_a_fifth_potassium():
    """The Merck Index prints C 25.53, H 2.68, K 20.78, O 51.01 %."""
    atoms = compound("potassium-hydrogen-tartrate").atoms
    whole = compound("potassium-hydrogen-tartrate").molar_mass
    printed = {"C": 25.53, "H": 2.68, "K": 20.78, "O": 51.01}
    for element, percent in printed.items():
        assert 100 * atoms[element] * molar_mass_of(element) / whole == pytest.approx(percent, abs=0.01)
