"""Solids: distances against the nearest of many points of the surface, and volumes in closed form."""

import itertools

import numpy as np
import pytest

from lumped.errors import InputError
from lumped.shape import Ball, Block, Cut, PathRoll, Piece, Ring, Roll, Taper, cells_of

CONE = Taper(start=(0, 0, 0), end=(0, 0, 3.0), radius_start=1.5, radius_end=0.0)
TAPER = Taper(start=(0.2, 0.1, 0), end=(2.0, 1.0, 0.5), radius_start=0.4, radius_end=0.9)
HALF = Cut(solid=Ball(centre=(0, 0, 0), radius=1.0), point=(0, 0, 0), away=(0, 0, 1))


def profile(taper, points):
    """How far along the axis, and how far off it."""
    axis = np.subtract(taper.end, taper.start)
    along = (points - taper.start) @ axis / np.linalg.norm(axis)
    return along, np.sqrt(np.maximum(np.sum((points - taper.start) ** 2, axis=1) - along**2, 0))


@pytest.mark.parametrize("taper", [CONE, TAPER])
def test_distance_to_a_taper_is_that_to_the_nearest_point_of_its_outline(taper):
    rng = np.random.default_rng(1)
    length = float(np.linalg.norm(np.subtract(taper.end, taper.start)))
    corners = np.array([(0, 0), (0, taper.radius_start), (length, taper.radius_end), (length, 0)])
    steps = np.linspace(0, 1, 4001)[:, None]
    outline = np.concatenate([a + steps * (b - a) for a, b in itertools.pairwise(corners)])
    points = rng.uniform(-2, 4, (500, 3))
    found = taper.distance(points)
    along, across = profile(taper, points)
    nearest = np.min(np.hypot(along[:, None] - outline[:, 0], across[:, None] - outline[:, 1]), axis=1)
    inside = (along > 0) & (along < length) & (across < np.interp(along, [0, length], corners[1:3, 1]))
    np.testing.assert_allclose(found, np.where(inside, -nearest, nearest), atol=2e-3)
    low, high = taper.bounds()
    assert np.all(points[inside] >= low)
    assert np.all(points[inside] <= high)


@pytest.mark.parametrize(
    ("solid", "volume"),
    [
        (CONE, np.pi * 1.5**2 * 3.0 / 3),
        (TAPER, np.pi * np.linalg.norm([1.8, 0.9, 0.5]) * (0.4**2 + 0.4 * 0.9 + 0.9**2) / 3),
        (HALF, 2 / 3 * np.pi),
        (Ring(centre=(0, 0, 0), inner=0.5, outer=1.2, height=0.6), np.pi * (1.2**2 - 0.5**2) * 0.6),
    ],
)
def test_a_cut_solid_keeps_its_volume(solid, volume):
    cells = cells_of([Piece(name="lump", solid=solid, conductivity=1.0)], [0], pitch=0.09, offset=(0.3, 0.6, 0.1))
    assert cells.volume(0) == pytest.approx(volume, rel=0.01)


@pytest.mark.parametrize("solid", [CONE, TAPER, HALF, PathRoll(points=((0, 0, 0), (1, 0, 0), (1, 1, 0)), radius=0.3)])
def test_distance_never_changes_faster_than_the_point_moves(solid):
    rng = np.random.default_rng(2)
    here = rng.uniform(-2, 4, (2000, 3))
    there = here + rng.normal(0, 0.1, here.shape)
    change = np.abs(solid.distance(here) - solid.distance(there))
    assert np.all(change <= np.linalg.norm(here - there, axis=1) + 1e-12)


def test_distances_come_in_the_shape_of_the_points():
    assert Roll(start=(0, 0, 0), end=(1, 0, 0), radius=0.2).distance(np.zeros((4, 5, 3))).shape == (4, 5)


def test_a_taper_of_no_thickness_or_below_is_refused():
    with pytest.raises(InputError, match="above zero"):
        Taper(start=(0, 0, 0), end=(0, 0, 1), radius_start=0.0, radius_end=0.0)
    with pytest.raises(InputError, match="above zero"):
        Taper(start=(0, 0, 0), end=(0, 0, 1), radius_start=0.5, radius_end=-0.1)


def test_many_bins_give_what_one_at_a_time_gives(monkeypatch):
    pieces = [
        Piece(name="bar", solid=Block(centre=(0, 0, 0), size=(4, 1, 1), turn=0.3), conductivity=1.0),
        Piece(name="end", solid=Ball(centre=(1.5, 0.4, 0), radius=0.8), conductivity=30.0),
    ]
    shared = cells_of(pieces, [0, 0], pitch=0.05)
    monkeypatch.setattr("lumped.shape.cells._SHARED_FROM", 10**9)
    alone = cells_of(pieces, [0, 0], pitch=0.05)
    for name in ("index", "piece", "edges", "conductance", "share"):
        np.testing.assert_array_equal(getattr(shared, name), getattr(alone, name))
