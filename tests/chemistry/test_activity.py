import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some

from lumped.chemistry.activity import ionic_strength, water_activity, water_activity_interval, water_activity_value
from lumped.chemistry.compounds import compounds
from lumped.quantities import Status

T25 = 298.15
SOME = ["sodium-chloride", "potassium-chloride", "sucrose", "glycerol", "citric-acid", "alum", "potassium-sorbate"]


@given(some.dictionaries(some.sampled_from(SOME), some.floats(0, 2)), some.floats(273.15, 333.15))
def test_water_activity_lies_in_its_interval_and_below_one(molalities, warmth):
    low, high = water_activity_interval(molalities, warmth)
    assert 0 < low <= water_activity(molalities, warmth) <= high <= 1


@pytest.mark.parametrize("compound", [each.key for each in compounds() if each.dissolves])
def test_every_compound_that_dissolves_takes_water(compound):
    thin, strong = water_activity({compound: [0.1, 0.5]}, T25)
    assert strong < thin < 1
    # thin liquids are ideal: one particle at least and six at most
    assert 0.9 * 0.1 * 0.018 < 1 - thin < 6 * 0.1 * 0.018


def test_nothing_dissolved_leaves_all_water_free():
    assert water_activity({}, T25) == 1.0


def test_many_batches_at_once_are_the_single_ones():
    salt, sugar = np.array([0.0, 1.0, 4.0]), np.array([2.0, 0.0, 1.0])
    together = water_activity({"sodium-chloride": salt, "sucrose": sugar}, T25)
    alone = [float(water_activity({"sodium-chloride": a, "sucrose": b}, T25)) for a, b in zip(salt, sugar, strict=True)]
    np.testing.assert_allclose(together, alone, rtol=1e-14)
    assert water_activity({"sodium-chloride": salt}, np.full((2, 1), T25)).shape == (2, 3)


def test_salt_and_sugar_multiply():
    both = water_activity({"sodium-chloride": 2.0, "sucrose": 2.0}, T25)
    assert both == pytest.approx(
        water_activity({"sodium-chloride": 2.0}, T25) * water_activity({"sucrose": 2.0}, T25), rel=1e-12
    )


def test_sharing_the_water_widens_the_interval():
    def width(molalities):
        low, high = water_activity_interval(molalities, T25)
        return float(high - low)

    assert width({"sodium-chloride": 3.0, "sucrose": 2.0}) > 2 * width({"sodium-chloride": 3.0})
    assert width({"sodium-chloride": 2.0, "potassium-chloride": 2.0}) > 2 * width({"sodium-chloride": 4.0})
    assert width({"alum": 0.2}) > width({"sodium-chloride": 0.4})


def test_a_salt_that_is_not_there_changes_nothing():
    plain = water_activity_interval({"sodium-chloride": 3.0}, T25)
    np.testing.assert_allclose(water_activity_interval({"sodium-chloride": 3.0, "alum": 0.0}, T25), plain, rtol=1e-12)


def test_ionic_strength_counts_charges_squared():
    assert ionic_strength({"calcium-chloride": 1.0}) == pytest.approx(3.0)
    assert ionic_strength({"alum": 1.0}) == pytest.approx((1 + 9 + 2 * 4) / 2)
    assert ionic_strength({"sucrose": 5.0}) == 0


def test_a_value_says_that_constants_are_from_memory():
    assert water_activity_value({"sucrose": 1.0}, T25).provenance.status is Status.FROM_MEMORY


def test_beyond_the_fit_of_a_salt_the_interval_widens_and_stays_above_nought():
    def width(molality):
        low, high = water_activity_interval({"calcium-chloride": molality}, T25)
        assert low >= 0
        return float(high - low)

    assert width(4.0) > 3 * width(2.5) > 0
    assert width(20.0) >= 0
    assert np.all(np.diff(water_activity({"calcium-chloride": np.linspace(2.3, 7.7, 50)}, T25)) < 0)


def test_away_from_25_degrees_the_interval_widens():
    def width(kelvins):
        low, high = water_activity_interval({"sucrose": 4.0}, kelvins)
        return float(high - low)

    assert min(width(T25 - 25), width(T25 + 25)) > 1.05 * width(T25)
