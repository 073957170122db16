import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from lumped.chemistry import mixture_conductivity, mixture_width, salt_water_conductivity
from lumped.chemistry.braking import braking_curves, onsager_slope, salts
from lumped.chemistry.brine import concentration_of
from lumped.chemistry.mixture import mixed, plan_of
from lumped.errors import InputError

T20, T25 = 293.15, 298.15
IONS = ("sodium", "potassium", "magnesium", "hydrogen", "chloride", "sulphate", "acetate", "citrate")


def test_doubling_both_ions_does_not_double_conductivity():
    once, twice = (mixture_conductivity({"sodium": c, "chloride": c}, T20) for c in (1000, 2000))
    assert 1.6 < twice / once < 1.9


def test_no_ions_no_conductivity():
    assert mixture_conductivity({"sodium": 0.0, "chloride": 0.0}, T20) == 0
    assert mixture_conductivity({}, T20) == 0


@pytest.mark.parametrize("share", [0.001, 0.03, 0.12, 0.26])
def test_as_a_mixture_salt_water_is_what_it_is_alone(share):
    c = concentration_of(share)
    assert mixture_conductivity({"sodium": c, "chloride": c}, T20) == pytest.approx(
        salt_water_conductivity(share, T20), rel=1e-12
    )


@settings(deadline=None)
@given(some.lists(some.floats(1e-3, 2000), min_size=8, max_size=8), some.floats(273.15, 373.15))
def test_pairs_share_the_whole_conductivity(amounts, kelvins):
    found = mixed(dict(zip(IONS, amounts, strict=True)), kelvins)
    assert found.pairs.sum() == pytest.approx(1, rel=1e-9)
    assert np.isfinite(found.conductivity)


def test_one_sheaf_reads_what_each_curve_reads():
    keys, sheaf = braking_curves()
    x = np.linspace(0, 130, 500)
    for row, key in enumerate(keys):
        np.testing.assert_allclose(sheaf(x)[row], salts()[key].number(x), atol=1e-9)
        np.testing.assert_allclose(sheaf(x)[len(keys) + row], salts()[key].bend(x), atol=1e-9)


@pytest.mark.parametrize("key", ["sodium-chloride", "calcium-chloride", "magnesium-chloride", "sodium-sulphate"])
def test_thin_salts_are_braked_by_onsager_s_limiting_law(key):
    """Slope of the tables at half a thousandth of a mole, whose curve lies above the straight line by some per cent."""
    salt = salts()[key]
    slope = salt.number.y[1] / (salt.number.x[1] / 1e3**0.5)
    assert slope == pytest.approx(onsager_slope(salt.cation, salt.anion), rel=0.25)


def test_arrays_and_numbers_go_together():
    found = mixture_conductivity({"sodium": np.full((2, 3), 50.0), "chloride": 50.0}, np.array([280.0, 290.0, 300.0]))
    assert found.shape == (2, 3)
    assert np.all(np.diff(found, axis=1) > 0)


def test_acid_makes_a_liquid_warm_less():
    salt, sour = ({ion: 100.0, "chloride": 100.0} for ion in ("sodium", "hydrogen"))
    rise = [float(mixture_conductivity(each, T25) / mixture_conductivity(each, T20)) for each in (salt, sour)]
    assert 1.10 < rise[0] < 1.12
    assert 1.07 < rise[1] < 1.09


def test_a_temperature_that_no_liquid_has_is_refused():
    with pytest.raises(InputError, match=r"liquids from 0 to 100 °C, not at 120 °C"):
        mixture_conductivity({"sodium": 1.0, "chloride": 1.0}, 393.15)
    with pytest.raises(InputError, match=r"not at -10 °C"):
        mixture_width({"sodium": 1.0, "chloride": 1.0}, np.array([T20, 263.15]))


def test_past_the_end_of_its_table_a_salt_is_braked_ever_more():
    end = salts()["calcium-chloride"].number.x[-1] ** 2 / 1.5  # moles of charge; ionic strength is half as much again
    at, past = (float(mixture_conductivity({"calcium": c, "chloride": c}, T20)) / c for c in (end, 1.2 * end))
    assert past < 0.97 * at


def test_no_pair_without_a_table_is_braked_more_than_half_again_as_the_salt_that_stands_for_it():
    plan = plan_of(("aluminium", "hydrogen", "citrate", "chloride"))
    assert plan.scale.max() == 1.5  # three charges against three: Onsager's limit alone would say more
    assert plan.scale.min() > 0.4


@pytest.mark.parametrize("key", sorted(salts()))
def test_the_braking_of_a_salt_bends_nowhere_sharply(key):
    """What its own table says joins what thin liquids, or its likes, say: no step where one takes over."""
    number = salts()[key].number
    slopes = np.diff(number.y) / np.diff(number.x)
    assert np.all(slopes > 0)
    assert np.all(slopes[1:] / slopes[:-1] < 4)
    assert np.all(slopes[1:] / slopes[:-1] > 0.25)
