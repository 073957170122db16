"""Cells of pieces: volumes, edges between doughs and bodies, mirror images."""

import numpy as np
import pytest

from lumped.errors import InputError
from lumped.shape import Ball, Block, Disc, PathRoll, Piece, Roll, cells_of

from ..outside.fields import cut, faces, held


def piece(solid, conductivity=1.0):
    return Piece(name="lump", solid=solid, conductivity=conductivity)


@pytest.mark.parametrize(
    ("solid", "volume"),
    [
        (Ball(centre=(0, 0, 0), radius=1.0), 4 / 3 * np.pi),
        (Disc(centre=(0, 0, 0), radius=1.0, height=0.8), 0.8 * np.pi),
        (Block(centre=(0, 0, 0), size=(2.0, 1.1, 0.9), turn=0.4), 1.98),
        (Roll(start=(0, 0, 0), end=(2.0, 1.0, 0.5), radius=0.5), np.pi * 0.25 * np.sqrt(5.25)),
    ],
)
def test_a_cut_solid_keeps_its_volume(solid, volume):
    assert cells_of([piece(solid)], [0], pitch=0.11, offset=(0.3, 0.6, 0.1)).volume(0) == pytest.approx(
        volume, rel=0.01
    )


def test_two_bodies_nearer_than_one_cell_share_cells_but_no_edge():
    left = piece(Block(centre=(-1.05, 0, 0), size=(2, 1, 1)))
    right = piece(Block(centre=(1.05, 0, 0), size=(2, 1, 1)))
    cells = cells_of([left, right], [0, 1], pitch=0.4, offset=(0.5, 0, 0))
    here, there = (set(map(tuple, cells.index[cells.body == body])) for body in (0, 1))
    assert here & there
    assert np.all(cells.body[cells.edges[:, 0]] == cells.body[cells.edges[:, 1]])


def test_the_same_two_lumps_as_one_body_and_overlapping_do_share_edges():
    left = piece(Block(centre=(-0.95, 0, 0), size=(2, 1, 1)))
    right = piece(Block(centre=(0.95, 0, 0), size=(2, 1, 1)))
    system = faces(cells_of([left, right], [0, 0], pitch=0.2))
    x = system.centres[:, 0]
    _, current = held(system.laplacian(), np.abs(x) > 1.0, x)
    assert current[x > 1.0].sum() == pytest.approx(1.0, rel=1e-3)


def test_the_later_piece_has_the_space_where_two_bodies_overlap():
    first, second = piece(Block(centre=(0, 0, 0), size=(2, 1, 1))), piece(Block(centre=(1, 0, 0), size=(1, 1, 1)))
    cells = cells_of([first, second], [0, 1], pitch=0.125)
    assert cells.volume(0) == pytest.approx(1.5, rel=1e-3)
    assert cells.volume(1) == pytest.approx(1.0, rel=1e-3)


@pytest.mark.parametrize("place", [0.0, 0.13, 0.31])
@pytest.mark.parametrize("ratio", [3.0, 1e4])
def test_two_doughs_end_to_end_are_resistances_in_series(place, ratio):
    bar = piece(Block(centre=(0, 0, 0), size=(4, 1, 1)))
    end = piece(Block(centre=(1 + place / 2, 0, 0), size=(2 - place, 1, 1)), ratio)  # from x = place to the end
    system = faces(cells_of([bar, end], [0, 0], pitch=0.25))
    x = system.centres[:, 0]
    exact = np.where(x < place, x - place, (x - place) / ratio)
    fixed = np.abs(x) > 1
    _, current = held(system.laplacian(), fixed, np.where(fixed, exact, 0.0))
    assert current[x > 1].sum() == pytest.approx(1.0, rel=2e-3)


def test_doubling_conductivity_and_doubling_size_each_double_conductances():
    plain = cut(Ball(centre=(0, 0, 0), radius=1.0), 0.3)
    salty = cut(Ball(centre=(0, 0, 0), radius=1.0), 0.3, conductivity=2.0)
    big = cut(Ball(centre=(0, 0, 0), radius=2.0), 0.6)
    np.testing.assert_allclose(salty.conductance, 2 * plain.conductance, rtol=1e-12)
    np.testing.assert_allclose(big.conductance, 2 * plain.conductance, rtol=1e-9)


def test_a_mirrored_shape_on_a_mirrored_grid_has_mirrored_conductances():
    there, back = (Block(centre=(0, 0, 0), size=(3.0, 1.0, 0.8), turn=turn) for turn in (0.4, -0.4))
    pitch = np.ptp(there.bounds()[:, 1]) / 9  # the grid is its own mirror image
    one, other = cut(there, pitch), cut(back, pitch)
    np.testing.assert_allclose(np.sort(one.conductance), np.sort(other.conductance), rtol=1e-6, atol=1e-9)


def test_lumps_of_one_body_that_lie_face_to_face_conduct_wherever_the_grid_lies():
    left, right = (piece(Block(centre=(x, 0, 0), size=(2, 1, 1))) for x in (-1, 1))
    for offset in (0.0, 0.4):
        system = faces(cells_of([left, right], [0, 0], pitch=0.25, offset=(offset, 0, 0)))
        x = system.centres[:, 0]
        _, current = held(system.laplacian(), np.abs(x) > 1.0, x)
        assert current[x > 1.0].sum() == pytest.approx(1.0, rel=1e-4)


def test_too_fine_a_grid_is_refused_with_the_pitch_that_fits():
    with pytest.raises(InputError, match="mm fits"):
        cells_of([piece(Ball(centre=(0, 0, 0), radius=1.0))], [0], pitch=1e-4)


@pytest.mark.parametrize("conductivity", [0.0, -1.0, float("nan")])
def test_a_dough_without_conductivity_is_refused(conductivity):
    with pytest.raises(InputError, match="conductivity"):
        piece(Ball(centre=(0, 0, 0), radius=1.0), conductivity)


def test_a_solid_without_size_is_refused():
    with pytest.raises(InputError, match="above zero"):
        Ball(centre=(0, 0, 0), radius=0.0)
    with pytest.raises(InputError, match="two points"):
        PathRoll(points=((0, 0, 0),), radius=1.0)


def test_no_pieces_and_no_pitch_are_refused():
    with pytest.raises(InputError, match="no lump"):
        cells_of([], [], pitch=1.0)
    with pytest.raises(InputError, match="above zero"):
        cells_of([piece(Ball(centre=(0, 0, 0), radius=1.0))], [0], pitch=0.0)
