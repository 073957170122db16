"""Level lines against what must hold between two leads."""

import re

import numpy as np
import pytest
from tests.laid_tables import ALL_SHAPES, ONE_ROLL, sculpture, verdict

from lumped.picture import sculpture_svg
from lumped.picture.levels import level_lines, level_step


@pytest.fixture(scope="module")
def roll_levels():
    return level_lines(sculpture(ONE_ROLL), verdict(ONE_ROLL).readings.drawn)["roll"]


def test_volts_fall_from_the_red_wire_to_the_black_one(roll_levels):
    crossing = [(float(level.points[np.argmin(np.abs(level.points[:, 1]))][0]), level.volts) for level in roll_levels]
    volts = [volt for _, volt in sorted(crossing)]
    assert len(volts) >= 6
    assert volts == sorted(volts, reverse=True)


def test_lines_between_the_leads_are_straight_across(roll_levels):
    middle = [level for level in roll_levels if abs(level.points[:, 0].mean()) < 12]
    assert middle
    for level in middle:
        assert np.ptp(level.points[:, 0]) < 1.5  # mm, far from both leads the field runs along the roll


def test_lines_in_the_middle_are_evenly_spaced(roll_levels):
    where = sorted(float(level.points[:, 0].mean()) for level in roll_levels if abs(level.points[:, 0].mean()) < 15)
    assert len(where) >= 3
    assert np.diff(where) == pytest.approx(np.mean(np.diff(where)), rel=0.1)  # uniform field: equal steps


def test_lines_lie_on_multiples_of_one_step(roll_levels):
    volts = np.array([level.volts for level in roll_levels])
    step = level_step(float(np.ptp(volts)) / 12)
    assert np.abs(volts / step - np.round(volts / step)).max() < 1e-6


def test_insulating_and_idle_lumps_stay_plain():
    found = level_lines(sculpture(ALL_SHAPES), verdict(ALL_SHAPES).readings.drawn)
    assert "disc" not in found
    assert "turned roll" not in found


def test_the_second_view_shows_lines_with_their_volts():
    plain, pressed = (sculpture_svg(verdict(ONE_ROLL), view=view) for view in ("dough", "potential"))
    assert 'class="level"' not in plain
    volts = [float(each) for each in re.findall(r'data-volts="([-\d.]+)"', pressed)]
    assert len(volts) >= 6
    assert 'class="word-level"' in pressed
