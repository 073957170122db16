import numpy as np
import pytest
from scipy import integrate, special

from lumped.dough.lasting.creep import (
    creep_depth,
    creep_diffusivity,
    erfc,
    joint_share,
    salt_at,
    wall_left,
    wall_lifetime,
)

DAY = 86400.0


def test_the_error_function_is_scipys():
    x = np.linspace(0.0, 10.0, 301)
    np.testing.assert_allclose(erfc(x), special.erfc(x), rtol=1.3e-7)  # the fit's own word


def test_depth_and_saltiness_are_inverse():
    limits = np.array([1e-4, 0.01, 0.1, 0.4])
    depth = creep_depth(limits, DAY, 1e-10)
    np.testing.assert_allclose(salt_at(depth, DAY, 1e-10), limits, rtol=1e-9)
    assert creep_depth(0.6, DAY, 1e-10) == pytest.approx(0.0, abs=1e-9)  # a nanometre


def test_four_times_the_time_is_twice_the_depth():
    assert creep_depth(0.01, 4 * DAY, 1e-10) == pytest.approx(2 * creep_depth(0.01, DAY, 1e-10), rel=1e-12)


def test_what_one_dough_gives_the_other_takes():
    # Crank 3.3: mass through the joint from either side, φ √(D t/π) times the fall or rise of saltiness
    for salty, wall, salty_liquid, wall_liquid in ((6e-10, 5e-11, 0.6, 0.4), (1e-10, 1e-9, 0.3, 0.7)):
        joint = joint_share(salty, wall, salty_liquid=salty_liquid, wall_liquid=wall_liquid)
        given, taken = salty_liquid * np.sqrt(salty) * (1 - joint), wall_liquid * np.sqrt(wall) * joint
        assert given == pytest.approx(taken, rel=1e-12)


def test_salt_creeps_by_the_law_that_current_obeys():
    # a gel of nothing but liquid lets salt creep as in liquid
    assert creep_diffusivity(1.5e-9, 1.0, 1.0) == pytest.approx(1.5e-9)


def test_only_the_liquid_fills_with_salt():
    """φ ∂c/∂t = G D ∂²c/∂x², c in the liquid: half the liquid at the same obstruction fills twice as fast."""
    assert creep_diffusivity(1.5e-9, 0.2, [0.8, 0.4]).tolist() == pytest.approx([3.75e-10, 7.5e-10])


@pytest.mark.parametrize("hours", [0.2, 1.0, 5.0])
@pytest.mark.parametrize("contrast", [30.0, 500.0, 5000.0])
def test_the_wall_s_resistance_is_the_integral_over_its_thickness(hours, contrast):
    thickness, speed, time = 0.006, 1e-10, 3600 * hours

    def salt(x):
        reach = 2 * np.sqrt(speed * time)
        return 0.5 * sum((-1) ** n * (special.erfc((n * thickness + x) / reach)
                                      + special.erfc(((n + 1) * thickness - x) / reach)) for n in range(20))  # fmt: skip

    exact = integrate.quad(lambda x: 1 / (1 + (contrast - 1) * salt(x)), 0, thickness / 2, limit=200)[0] / (
        thickness / 2
    )
    found = wall_left(time, thickness, speed, contrast=contrast)
    assert found == pytest.approx(exact, rel=1e-3)  # forty places


def test_a_lifetime_is_when_the_factor_is_used_up():
    thickness, factor = np.array([0.003, 0.006, 0.012]), 10.0
    lives = wall_lifetime(thickness, 1e-10, factor=factor, contrast=500.0)
    np.testing.assert_allclose(wall_left(lives, thickness, 1e-10, contrast=500.0), 1 / factor, rtol=1e-6)
    np.testing.assert_allclose(lives[1:] / lives[:-1], 4.0, rtol=1e-9)  # by the square of the thickness


def test_a_wall_on_one_lump_lasts_four_times_as_long():
    one, two = (wall_lifetime(0.004, 1e-10, factor=5.0, contrast=300.0, sides=sides) for sides in (1, 2))
    assert one == pytest.approx(4 * two, rel=1e-9)


def test_a_wall_that_is_enough_when_salty_lasts_and_one_that_never_was_enough_does_not():
    assert wall_lifetime(0.004, 1e-10, factor=5.0, contrast=5.0) == np.inf
    assert wall_lifetime(0.004, 1e-10, factor=0.5, contrast=500.0) == 0.0
