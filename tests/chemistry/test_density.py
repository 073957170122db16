import numpy as np
import pytest

from lumped.chemistry.compounds import compounds
from lumped.chemistry.density import apparent_volume, brine_density, liquid_volume, water_density

T20 = 293.15


def test_every_compound_that_dissolves_has_an_apparent_volume():
    for each in (each for each in compounds() if each.dissolves):
        volume = float(apparent_volume(each.key, 0.05, T20))
        assert -0.1e-3 < volume < 1.3e-3, each.key
        assert volume < 1.05 / each.density, each.key  # water draws close to salts: hardly ever more room than when dry


def test_nothing_dissolved_is_water():
    assert liquid_volume(1.0, {}, T20) == pytest.approx(1 / water_density(T20), rel=1e-5)


def test_salt_alone_is_the_table_of_brine_also_with_others_at_nought():
    volume = liquid_volume([0.8, 0.9], {"sodium-chloride": [0.2, 0.1], "sucrose": 0.0}, T20)
    np.testing.assert_allclose(1 / volume, brine_density([0.2, 0.1], T20), rtol=1e-12)


def test_salt_and_sugar_add_their_own_room():
    both = liquid_volume(1.0, {"sodium-chloride": 0.2, "sucrose": 0.5}, T20)
    salt, sugar = liquid_volume(1.0, {"sodium-chloride": 0.2}, T20), liquid_volume(1.0, {"sucrose": 0.5}, T20)
    water = liquid_volume(1.0, {}, T20)
    assert both == pytest.approx(salt + sugar - water, rel=1e-5)


def test_no_liquid_takes_no_room():
    assert liquid_volume(0.0, {"sodium-chloride": 0.0, "glycerol": 0.0}, T20) == 0.0


def test_volumes_broadcast_over_batches_and_temperatures():
    volume = liquid_volume(np.ones(3), {"sodium-chloride": np.full((2, 1), 0.1)}, [280.0, 290.0, 300.0])
    assert volume.shape == (2, 3)
    assert np.all(np.diff(volume, axis=1) > 0)


def test_brine_grows_denser_with_salt_all_the_way():
    assert np.all(np.diff(brine_density(np.linspace(0, 0.2645, 300), T20)) > 0)
