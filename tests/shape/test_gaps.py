"""Gaps between solids against plane geometry and against alternating projection."""

import numpy as np
import pytest

from lumped.shape import Ball, Block, Disc, PathRoll, Roll, gap_between

MM = 1e-3


@pytest.mark.parametrize("gap", [20 * MM, 0.3 * MM, -2 * MM])
def test_two_balls(gap):
    a = Ball(centre=(0, 0, 0), radius=10 * MM)
    b = Ball(centre=tuple((25 * MM + gap) * np.array([2, 1, 2]) / 3), radius=15 * MM)
    assert gap_between(a, b).distance == pytest.approx(gap, abs=0.01 * MM)


@pytest.mark.parametrize("gap", [4 * MM, -1 * MM])
def test_two_crossed_rolls(gap):
    a = Roll(start=(-50 * MM, 0, 0), end=(50 * MM, 0, 0), radius=6 * MM)
    b = Roll(start=(10 * MM, -40 * MM, 14 * MM + gap), end=(20 * MM, 40 * MM, 14 * MM + gap), radius=8 * MM)
    found = gap_between(a, b)
    assert found.distance == pytest.approx(gap, abs=0.01 * MM)
    assert found.point[:2] == pytest.approx([15 * MM, 0], abs=0.5 * MM)


def test_two_parallel_faces_are_nearest_in_the_middle_of_what_faces():
    a = Block(centre=(0, 0, 0), size=(40 * MM, 20 * MM, 10 * MM))
    b = Block(centre=(50 * MM, 5 * MM, 0), size=(40 * MM, 20 * MM, 10 * MM))
    found = gap_between(a, b)
    assert found.distance == pytest.approx(10 * MM, abs=0.01 * MM)
    assert found.point == pytest.approx([25 * MM, 2.5 * MM, 0], abs=0.5 * MM)
    assert found.point_b - found.point_a == pytest.approx([10 * MM, 0, 0], abs=0.05 * MM)


def test_a_path_meets_what_its_bend_is_nearest_to():
    bent = PathRoll(points=((-30 * MM, 30 * MM, 0), (0, 0, 0), (30 * MM, 30 * MM, 0)), radius=5 * MM)
    wall = Block(centre=(0, -20 * MM, 0), size=(80 * MM, 10 * MM, 30 * MM))
    assert gap_between(bent, wall).distance == pytest.approx(10 * MM, abs=0.01 * MM)


def projected(solid, points):
    for _ in range(2):
        ahead = np.stack(
            [solid.distance(points + step) - solid.distance(points - step) for step in 1e-7 * np.eye(3)], axis=-1
        )
        points = points - np.maximum(solid.distance(points), 0)[:, None] * ahead / 2e-7
    return points


@pytest.mark.parametrize("seed", range(12))
def test_random_solids_agree_with_alternating_projection(seed):
    rng = np.random.default_rng(seed)

    def place(reach=0.05):
        return tuple(rng.uniform(-reach, reach, 3))

    def solid():
        return [
            Ball(centre=place(), radius=0.01),
            Roll(start=place(), end=place(), radius=0.008),
            Block(centre=place(), size=tuple(rng.uniform(0.005, 0.04, 3)), turn=rng.uniform(0, 3)),
            Disc(centre=place(), radius=0.02, height=0.006),
            PathRoll(points=(place(), place(), place()), radius=0.006),
        ][rng.integers(5)]

    a, b = solid(), solid()
    points = rng.uniform(-0.05, 0.05, (100, 3))
    for _ in range(150):
        other = projected(a, points)
        points = projected(b, other)
    found = gap_between(a, b).distance
    assert max(found, 0.0) == pytest.approx(np.linalg.norm(points - other, axis=1).min(), abs=0.05 * MM)
