"""Outlines against what a ruler would say of the solids."""

import numpy as np
import pytest
from tests.laid_tables import ALL_SHAPES, sculpture

from lumped.picture import lump_outlines, outline
from lumped.picture.outlines import rounded_outline
from lumped.shape import Ball, Block, Disc, PathRoll, Ring, Roll


def area(loop):
    x, y = loop.T
    return 0.5 * float(x @ np.roll(y, -1) - y @ np.roll(x, -1))


@pytest.mark.parametrize(
    ("solid", "width", "depth", "square"),
    [
        (Ball(centre=(0, 0, 0.01), radius=0.015), 30, 30, np.pi * 15**2),
        (Disc(centre=(0, 0, 0.01), radius=0.02, height=0.01), 40, 40, np.pi * 20**2),
        (Roll(start=(0, 0, 0.01), end=(0.05, 0, 0.01), radius=0.009), 50, 18, 900),
        (Roll(start=(0, 0, 0.01), end=(0.03, 0.04, 0.01), radius=0.01), 30 + 16, 40 + 12, 1000),
        (Roll(start=(0, 0, 0), end=(0, 0, 0.05), radius=0.009), 18, 18, np.pi * 9**2),
        (Block(centre=(0, 0, 0.01), size=(0.06, 0.04, 0.02), turn=np.pi / 2), 40, 60, 2400),
    ],
)
def test_outlines_have_the_size_of_the_solid(solid, width, depth, square):
    (loop,) = outline(solid)
    assert np.ptp(loop, axis=0) == pytest.approx([width, depth], rel=2e-3)  # circles have 72 corners
    assert abs(area(loop)) == pytest.approx(square, rel=2e-3)


def test_a_bent_path_covers_its_rolls_and_a_quarter_disc_at_the_bend():
    bent = PathRoll(points=((0, 0, 0.01), (0.06, 0, 0.01), (0.06, 0.05, 0.01)), radius=0.01)
    (loop,) = outline(bent)
    # Two rectangles 60×20 and 50×20 share a 10×10 square at the inner corner; outside the bend is a quarter disc.
    expected = 60 * 20 + 50 * 20 - 100 + np.pi * 100 / 4
    assert area(loop) == pytest.approx(expected, rel=3e-3)  # traced on a grid of 1/14 of the radius
    assert np.ptp(loop, axis=0) == pytest.approx([70, 60], rel=3e-3)


def test_a_ring_has_a_hole():
    outer, inner = outline(Ring(centre=(0, 0, 0), inner=0.02, outer=0.04, height=0.01))
    assert area(outer) > 0 > area(inner)


def test_rounded_corners_stay_inside_the_true_outline():
    for lump in sculpture(ALL_SHAPES).lumps:
        for loop in rounded_outline(lump.solid, 3.0):
            height = np.full((len(loop), 1), lump.solid.bounds()[:, 2].mean())
            beyond = lump.solid.distance(np.hstack([1e-3 * loop, height]))
            assert beyond.max() < 0.1e-3, lump.name
            assert beyond.min() > -3e-3, lump.name


def test_every_lump_has_an_outline():
    found = lump_outlines(sculpture(ALL_SHAPES))
    assert list(found) == ["ball", "turned roll", "lane", "slab", "disc", "block"]
