"""From potentials that are nearly right the answer comes sooner, and is the same."""

from dataclasses import replace

import numpy as np
import pytest

from lumped.conduction import FaceSystem, Lead, carried_over, solve_ports
from lumped.shape import Block, PathRoll, Piece, cells_of

from ..outside.fields import faces


def scene(moved):
    pieces = [
        Piece(name="path", solid=PathRoll(points=((0, 0, 0), (0.06, 0.01, 0), (0.06 + moved, 0.05, 0)), radius=0.009),
              conductivity=3.0),
        Piece(name="block", solid=Block(centre=(0.03, 0.02, 0), size=(0.06, 0.03, 0.012)), conductivity=3e-3),
    ]  # fmt: skip
    return faces(cells_of(pieces, [0, 0], pitch=1.5e-3))


def leads(moved):
    places = [(0.002, 0, 0), (0.058 + moved, 0.045, 0), (0.03, 0.03, 0)]
    return [
        Lead(name=f"{k}", body=0, points=np.array([(x, y, 0.009), (x, y, -0.003)]), radius=3e-4)
        for k, (x, y, z) in enumerate(places)
    ]


def test_from_the_answer_itself_it_takes_a_single_round():
    system = scene(0.0)
    first = solve_ports(system, leads(0.0), port_rtol=1e-8)
    again = solve_ports(system, leads(0.0), port_rtol=1e-4, start=first.potentials)
    assert again.iterations == 1
    np.testing.assert_allclose(again.matrix, first.matrix, rtol=1e-6)


@pytest.mark.parametrize("moved", [2e-4, 2e-3])
def test_a_lump_moved_a_little_takes_fewer_rounds_and_gives_the_same(moved):
    before, system = scene(0.0), scene(moved)
    known = solve_ports(before, leads(0.0), port_rtol=1e-4)
    cold = solve_ports(system, leads(moved), port_rtol=1e-4)
    warm = solve_ports(system, leads(moved), port_rtol=1e-4, start=carried_over(before, known.potentials, system))
    exact = solve_ports(system, leads(moved), port_rtol=1e-9)
    assert warm.iterations <= cold.iterations / 2
    np.testing.assert_allclose(warm.matrix, exact.matrix, atol=1e-4 * np.abs(exact.matrix).max())


def test_a_start_far_off_is_made_good():
    system = scene(0.0)
    wild = np.random.default_rng(3).normal(0, 100, (system.size, 3))
    found = solve_ports(system, leads(0.0), port_rtol=1e-4, start=wild)
    exact = solve_ports(system, leads(0.0), port_rtol=1e-9)
    np.testing.assert_allclose(found.matrix, exact.matrix, atol=1e-4 * np.abs(exact.matrix).max())


def test_cells_take_over_what_lay_in_their_place_whatever_the_origin():
    before = scene(0.0)
    step = np.array([2, -1, 3])
    row = replace(before, index=before.index + step, origin=before.origin - before.pitch * step)
    known = np.arange(2.0 * before.size).reshape(-1, 2)
    np.testing.assert_array_equal(carried_over(before, known, row), known)


def test_a_cell_beside_dough_takes_over_its_neighbours_and_one_far_off_the_mean():
    one = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[1.0],
                     conductivity=[1.0, 1.0], origin=[0, 0, 0], pitch=1.0)  # fmt: skip
    other = FaceSystem(index=[[1, 1, 0], [9, 9, 9]], body=[0, 0], edges=[], conductance=[],
                       conductivity=[1.0, 1.0], origin=[0, 0, 0], pitch=1.0)  # fmt: skip
    assert carried_over(one, np.array([[1.0], [3.0]]), other).tolist() == [[3.0], [2.0]]
