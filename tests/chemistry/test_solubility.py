import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some

from lumped.chemistry.compounds import compounds
from lumped.chemistry.solubility import bitartrate_solubility, is_limited, parted, solubility, solubility_value
from lumped.quantities import Status

T20 = 293.15
LIMITED = [each.key for each in compounds() if each.dissolves and is_limited(each.key)]
mass = some.floats(0, 2)


@given(mass, mass, mass, some.floats(0, 1), some.floats(273.15, 333.15))
def test_what_dissolves_and_what_stays_is_what_went_in(salt, potash, sugar, water, warmth):
    masses = {"sodium-chloride": salt, "potassium-chloride": potash, "sucrose": sugar, "glycerol": 0.1}
    dissolved, solid = parted(masses, water, warmth)
    for each, amount in masses.items():
        assert dissolved[each] + solid[each] == pytest.approx(amount, abs=1e-12)
        assert -1e-12 <= dissolved[each] <= min(amount, float(solubility(each, warmth)) * water) + 1e-12


def test_liquids_have_no_limit():
    assert np.all(np.isinf(solubility("acetic-acid", [273.15, 353.15])))
    assert {"glycerol", "ethanol", "acetic-acid", "lactic-acid"}.isdisjoint(LIMITED)


@pytest.mark.parametrize("compound", LIMITED)
def test_a_limit_says_how_sure_it_is_and_where_it_is_from(compound):
    found = solubility_value(compound, T20)
    assert 0 < found.low < found.mean < found.high
    assert found.provenance.status in (Status.PUBLISHED, Status.FROM_MEMORY)


def test_no_water_dissolves_nothing():
    dissolved, solid = parted({"sodium-chloride": [0.1, 0.0], "sucrose": 0.2}, 0.0, T20)
    np.testing.assert_array_equal(dissolved["sodium-chloride"], [0.0, 0.0])
    np.testing.assert_array_equal(solid["sucrose"], [0.2])


def test_a_little_potassium_chloride_dissolves_whole_and_leaves_less_room_for_salt():
    alone, _ = parted({"sodium-chloride": 1.0}, 1.0, T20)
    both, solid = parted({"sodium-chloride": 1.0, "potassium-chloride": 0.05}, 1.0, T20)
    assert solid["potassium-chloride"] == pytest.approx(0, abs=1e-12)
    assert both["sodium-chloride"] < alone["sodium-chloride"] - 0.01


def test_a_solubility_beyond_the_table_stays_at_its_end():
    assert solubility("sodium-hydrogen-carbonate", 353.15) == solubility("sodium-hydrogen-carbonate", 333.15)


def test_cream_of_tartar_at_room_temperature_is_merck_s_figure():
    assert bitartrate_solubility() == pytest.approx(1 / 162, rel=1e-4)
