"""Sensitivities against the answers for doughs that conduct a little better, cut and solved anew."""

from dataclasses import replace

import numpy as np
import pytest

from lumped.conduction import Lead, sensitivities, solve_ports
from lumped.shape import Ball, Block, Piece, Roll, cells_of

from ..outside.fields import faces

PIECES = [
    Piece(name="roll", solid=Roll(start=(0, 0, 0), end=(0.08, 0.01, 0), radius=0.01), conductivity=3.0),
    Piece(name="ball", solid=Ball(centre=(0.04, 0, 0), radius=0.013), conductivity=0.5),
    Piece(name="block", solid=Block(centre=(0.04, 0.02, 0), size=(0.08, 0.024, 0.01), turn=0.2), conductivity=0.03),
    Piece(name="alone", solid=Ball(centre=(0.2, 0, 0), radius=0.01), conductivity=3.0),
]
PLACES = [(0.01, 0, 0), (0.07, 0.01, 0), (0.04, 0.028, 0), (0.03, 0.008, 0)]  # the last where doughs meet
LEADS = [
    Lead(name=f"{k}", body=0, points=np.array([(x, y, 0.012), (x, y, -0.004)]), radius=3e-4)
    for k, (x, y, z) in enumerate(PLACES)
]


def solved(pieces, **more):
    cells = cells_of(pieces, [0, 0, 0, 1], pitch=2e-3, **more)
    system = faces(cells)
    return cells, system, solve_ports(system, LEADS, port_rtol=1e-10)


@pytest.fixture(scope="module")
def found():
    cells, system, ports = solved(PIECES, leaning=True)
    return ports, sensitivities(system, LEADS, ports, cells.leaning, cells.piece)


def test_they_sum_to_the_port_matrix(found):
    ports, by_lump = found
    np.testing.assert_allclose(by_lump.sum(axis=0), ports.matrix, atol=1e-4 * np.abs(ports.matrix).max())


@pytest.mark.parametrize("lump", [0, 1, 2])
def test_they_are_what_a_better_dough_changes(found, lump):
    _, by_lump = found
    step = 1e-3
    moved = []
    for sign in (1, -1):
        better = replace(PIECES[lump], conductivity=PIECES[lump].conductivity * np.exp(sign * step))
        moved.append(solved([*PIECES[:lump], better, *PIECES[lump + 1 :]])[2].matrix)
    change = (moved[0] - moved[1]) / (2 * step)
    np.testing.assert_allclose(by_lump[lump], change, atol=2e-3 * np.abs(change).max())


def test_a_lump_without_a_lead_changes_nothing(found):
    assert not found[1][3].any()


def test_a_face_leans_on_pieces_whose_shares_sum_to_one():
    cells = cells_of(PIECES, [0, 0, 0, 1], pitch=2e-3, leaning=True)
    assert cells.leaning.shape == (len(cells.edges), len(PIECES))
    np.testing.assert_allclose(np.asarray(cells.leaning.sum(axis=1)).ravel(), 1.0, rtol=1e-12)
    np.testing.assert_array_equal(cells.conductance, cells_of(PIECES, [0, 0, 0, 1], pitch=2e-3).conductance)
