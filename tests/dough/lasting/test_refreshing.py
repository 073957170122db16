import numpy as np
import pytest

from lumped.dough.lasting.refreshing import refresh, resting_time, water_lost
from lumped.errors import InputError


def test_a_bag_that_lost_25_grams_gets_them_back():
    again = refresh(0.512, 0.487, water=0.20)
    assert again.water == pytest.approx(0.025)
    assert again.of_its_water == pytest.approx(0.125)
    assert again.words[0] == "Knead in 25 g of water, a spoonful at a time."
    assert "Throw it away" in again.words[-1]
    assert again.rest.low < 1800 < again.rest.high  # the trade's half an hour lies inside


def test_streaks_even_out_as_the_whole_series_says():
    # a square wave of unit height: Σ over odd n of 4/(π n) (-1)^((n-1)/2) exp(-(n π)² D t/s²) in the middle of a streak
    n = np.arange(1, 41, 2)
    time = resting_time(1e-3, 1.5e-10, 0.05)
    left = np.sum(4 / (np.pi * n) * (-1.0) ** ((n - 1) // 2) * np.exp(-((n * np.pi) ** 2) * 1.5e-10 * time / 1e-6))
    assert left == pytest.approx(0.05, rel=1e-6)


def test_a_dough_that_lost_nothing_is_only_kneaded():
    assert "lost no water" in refresh(0.5, 0.5).words[0]


def test_many_bags_at_once():
    assert water_lost([0.5, 0.6], [0.4, 0.55]) == pytest.approx([0.1, 0.05])


@pytest.mark.parametrize(("before", "now", "water", "match"), [
    (0.5, 0.52, None, r"20 g heavier than the 500 g"),
    (0.5, 0.2, 0.25, r"lost 300 g, but held only 250 g of water"),
    (0.0, 0.2, None, r"0 g is no weight of a dough"),
    (0.5, -0.1, None, r"-100 g is no weight"),
])  # fmt: skip
def test_weights_that_can_not_be_are_refused(before, now, water, match):
    with pytest.raises(InputError, match=match):
        refresh(before, now, water=water)
