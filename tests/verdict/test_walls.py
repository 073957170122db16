"""Whether a wall insulates enough; leaks worked by hand: a wall of 3 mm and 4 cm² at 3.2 V."""

import pytest

from lumped.quantities import Value
from lumped.verdict.walls import Wall, judge_wall

WALL = Wall(thickness=3e-3, area=4e-4)


def dough(low, mean, high):
    return Value(mean=mean, low=low, high=high, unit="Ω·m", spread="lognormal")


@pytest.mark.parametrize(("resistivity", "milliamperes"), [(13, 33), (118, 3.6), (300, 1.4), (900, 0.5)])
def test_the_resistance_of_a_wall_is_that_of_a_slab(resistivity, milliamperes):
    assert 1e3 * 3.2 / WALL.resistance(resistivity) == pytest.approx(
        milliamperes, rel=0.06
    )  # one or two digits by hand


def test_with_a_perfect_wall_the_red_lamp_gets_about_19_milliamperes():
    found = judge_wall(WALL, Value.exact(1e9, "Ω·m"))
    assert 1e3 * found.without.mean == pytest.approx(19, rel=0.05)  # hand estimate: 6.2 V, 1.2 V a lump, 100 Ω
    assert found.current.mean == pytest.approx(found.without.mean, rel=1e-6)
    assert found.enough == "yes"


def test_current_that_passes_the_wall_is_missing_in_the_lamp():
    found = judge_wall(WALL, Value.exact(3.0, "Ω·m"))
    volts = found.leak.mean * WALL.resistance(3.0)
    assert 3.8 - volts == pytest.approx(100 * (found.leak.mean + found.current.mean), rel=1e-6)


def test_an_interval_that_spans_good_and_bad_is_told_as_such():
    found = judge_wall(WALL, dough(0.5, 30, 900))
    assert found.enough == "perhaps"
    assert "measure the dough" in found.words


def test_a_poor_wall_puts_the_lamp_out():
    found = judge_wall(WALL, Value.exact(0.2, "Ω·m"), "lamp-white")
    assert found.enough == "no"
    assert found.states[1] == "dark"
    assert "Not insulating enough" in found.words


def test_a_white_lamp_asks_for_a_better_wall_than_a_red_one():
    rho = Value.exact(20.0, "Ω·m")
    red, white = (judge_wall(WALL, rho, key) for key in ("lamp-red", "lamp-white"))
    assert white.current.mean / white.without.mean < red.current.mean / red.without.mean
