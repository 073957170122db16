"""The curve through a table's points; scipy's PCHIP is the reference."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator

from lumped.quantities.interpolation import Monotone

POINTS = st.lists(st.tuples(st.floats(0.01, 10), st.floats(-100, 100)), min_size=2, max_size=12)


@given(POINTS)
def test_the_curve_is_that_of_scipy(points):
    x, y = np.cumsum([step for step, _ in points]), np.array([height for _, height in points])
    inside = np.linspace(x[0], x[-1], 101)
    scale = np.abs(y).max() + 1e-9
    assert np.allclose(Monotone(x, y)(inside), PchipInterpolator(x, y)(inside), rtol=0, atol=1e-9 * scale)


@given(POINTS)
def test_it_never_leaves_the_span_of_the_two_points_beside_it(points):
    x, y = np.cumsum([step for step, _ in points]), np.array([height for _, height in points])
    for k in range(len(x) - 1):
        between = Monotone(x, y)(np.linspace(x[k], x[k + 1], 21))
        slack = 1e-9 * (1 + np.abs(y).max())
        assert min(y[k], y[k + 1]) - slack <= between.min()
        assert between.max() <= max(y[k], y[k + 1]) + slack


def test_x_must_rise():
    with pytest.raises(ValueError, match=r"x strictly rising"):
        Monotone([0, 0], [1, 2])
