"""What must hold for any system of cells and leads."""

import pickle

import numpy as np
import pytest

from lumped.conduction import FaceSystem, Lead, Terminal, cell_potential, iteration, port_spread, solve_ports
from lumped.conduction.leads import couple
from lumped.errors import InputError, SolverError
from lumped.shape import Ball, Block, Piece, Roll, cells_of

from ..outside.fields import cut, faces


def pin(name, x, y, radius=0.3, body=0):
    return Lead(name=name, body=body, points=np.array([[x, y, 10.0], [x, y, 4.0]]), radius=radius)


def slab(pitch=1.0, offset=(0, 0, 0), conductivity=1.0):
    return cut(Block(centre=(15, 10, 5), size=(30, 20, 10)), pitch, offset, conductivity)


PINS = [pin("a", 5, 6), pin("b", 24, 7), pin("c", 14, 15)]


def test_rows_sum_to_zero_and_ports_are_reciprocal():
    Y = solve_ports(slab(), PINS).matrix
    assert np.abs(Y.sum(axis=1)).max() < 1e-12 * Y.max()
    np.testing.assert_allclose(Y, Y.T, rtol=0, atol=1e-12 * Y.max())
    assert np.all(Y - np.diag(np.diag(Y)) <= 0)


@pytest.mark.parametrize("port_rtol", [1e-2, 1e-4])
def test_the_stated_port_error_covers_the_true_one(port_rtol):
    exact, rough = (solve_ports(slab(1.1), PINS, port_rtol=rtol) for rtol in (1e-10, port_rtol))
    errors = [rough.resistance(i, j) / exact.resistance(i, j) - 1 for i, j in ("ab", "ac", "bc")]
    assert 0 < np.max(np.abs(errors)) <= rough.port_error <= port_rtol


def test_the_raw_matrix_differs_from_the_energy_form_by_no_more_than_the_root_of_the_port_error():
    system = slab(1.1)
    ports = solve_ports(system, PINS, port_rtol=1e-3)
    coupled = couple(system, PINS)
    member = np.eye(3)[coupled.port] * coupled.conductance[:, None]
    raw = np.diag(member.sum(axis=0)) - (coupled.weights.T @ member).T @ ports.potentials
    scale = np.sqrt(np.outer(np.diag(ports.matrix), np.diag(ports.matrix)))
    assert np.max(np.abs(raw - ports.matrix) / scale) < np.sqrt(
        ports.port_error * np.max(member.sum(axis=0) / np.diag(ports.matrix))
    )


def test_doubling_conductivity_doubles_all_conductances():
    np.testing.assert_allclose(
        solve_ports(slab(conductivity=2.0), PINS).matrix, 2 * solve_ports(slab(), PINS).matrix, rtol=1e-9
    )


def test_better_dough_anywhere_never_raises_a_resistance():
    ball = Piece(name="core", solid=Ball(centre=(15, 8, 5), radius=4), conductivity=3.0)
    block = Piece(name="slab", solid=Block(centre=(15, 10, 5), size=(30, 20, 10)), conductivity=1.0)
    better = solve_ports(faces(cells_of([block, ball], [0, 0], pitch=1.0)), PINS)
    plain = solve_ports(slab(), PINS)
    for i, j in ("ab", "ac", "bc"):
        assert better.resistance(i, j) < plain.resistance(i, j)


def test_two_bodies_nearer_than_one_cell_exchange_no_current():
    left = Piece(name="left", solid=Block(centre=(7.4, 10, 5), size=(14.8, 20, 10)), conductivity=1.0)
    right = Piece(name="right", solid=Block(centre=(22.6, 10, 5), size=(14.8, 20, 10)), conductivity=1.0)
    system = faces(cells_of([left, right], [0, 1], pitch=1.0, offset=(0.5, 0, 0)))
    leads = [pin("a", 5, 6), pin("b", 10, 14), pin("c", 20, 7, body=1)]
    ports = solve_ports(system, leads)
    assert ports.floating == ("c",)
    assert ports.resistance("a", "c") == np.inf
    assert np.all(ports.matrix[2] == 0)
    assert np.all(ports.potentials[system.body == 1, 2] == 1)


def test_a_weak_link_between_strong_lumps_is_known_as_well_as_the_strong_ones():
    salty = [Piece(name=str(x), solid=Block(centre=(x, 10, 5), size=(12, 20, 10)), conductivity=1.0) for x in (6, 24)]
    sugar = Piece(name="wall", solid=Block(centre=(15, 10, 5), size=(6, 20, 10)), conductivity=1e-5)
    system = faces(cells_of([*salty, sugar], [0, 0, 0], pitch=1.0))
    leads = [pin("a", 3, 6), pin("b", 9, 14), pin("c", 22, 7), pin("d", 28, 14)]
    rough, exact = solve_ports(system, leads, port_rtol=1e-3), solve_ports(system, leads, port_rtol=1e-9)
    assert exact.resistance("a", "c") > 1e3 * exact.resistance("a", "b")
    assert rough.resistance("a", "c") == pytest.approx(exact.resistance("a", "c"), rel=1e-3)
    assert exact.resistance("a", "c") == pytest.approx(6 / (1e-5 * 200), rel=2e-3)  # the wall alone


def test_potentials_lie_between_those_of_the_leads():
    ports = solve_ports(slab(), PINS)
    volts = cell_potential(ports, [3.0, 0.0, 1.0])
    assert volts.min() > -0.01
    assert volts.max() < 3.01


@pytest.mark.parametrize("pitch", [2.0, 1.25])
def test_two_shifted_grids_agree_within_one_per_cent(pitch):
    shifted = [solve_ports(slab(pitch, offset), PINS) for offset in ((0, 0, 0), (0.5, 0.5, 0.5))]
    assert 0 < port_spread(*shifted) < 0.01


def test_finer_grids_converge():
    roll = Roll(start=(0, 0, 0), end=(60, 20, 10), radius=6)
    leads = [
        Lead(name=name, body=0, points=np.array([[x, x / 3, x / 6 + 6], [x, x / 3, x / 6 - 2]]), radius=0.4)
        for name, x in (("a", 10.0), ("b", 50.0))
    ]
    found = [
        np.mean([solve_ports(cut(roll, pitch, offset), leads).resistance("a", "b")
                 for offset in ((0.1, 0.2, 0.7), (0.6, 0.4, 0.2))])
        for pitch in (4.0, 2.8, 2.0, 1.0)
    ]  # fmt: skip
    errors = np.abs(np.array(found[:3]) / found[3] - 1)
    assert np.polyfit(np.log([4.0, 2.8, 2.0]), np.log(errors), 1)[0] > 1.0
    assert errors[2] < 0.01


def test_an_answer_that_is_not_reached_is_an_error_with_grid_error_and_remedy(monkeypatch):
    monkeypatch.setattr(iteration, "_ROUNDS", 2)
    with pytest.raises(SolverError, match=r"1.1e\+03 mm.*effort full") as caught:
        solve_ports(slab(1.1), PINS, port_rtol=1e-9)
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)


def test_no_leads_give_an_empty_matrix():
    assert solve_ports(slab(2.0), []).matrix.shape == (0, 0)


def test_bad_leads_are_refused():
    with pytest.raises(InputError, match="has no dough around it"):
        solve_ports(slab(2.0), [pin("far", 80, 80), pin("a", 5, 6)])
    with pytest.raises(InputError, match="Two leads"):
        solve_ports(slab(2.0), [pin("a", 5, 6), pin("a", 9, 6)])
    with pytest.raises(InputError, match="above zero"):
        solve_ports(slab(2.0), [pin("a", 5, 6, radius=0.0)])
    with pytest.raises(InputError, match="not above zero"):
        solve_ports(slab(2.0), [Terminal(name="t", cells=[0], conductance=[-1.0])])


@pytest.mark.parametrize(("change", "match"), [({"conductance": [-1.0]}, "must be a positive"),
                                               ({"conductivity": [1.0, np.nan]}, "must be a positive"),
                                               ({"edges": [[0, 7]]}, "does not exist")])  # fmt: skip
def test_a_bad_system_is_refused(change, match):
    good = {"index": [[0, 0, 0], [1, 0, 0]], "body": [0, 0], "edges": [[0, 1]], "conductance": [1.0],
            "conductivity": [1.0, 1.0], "origin": [0, 0, 0], "pitch": 1.0}  # fmt: skip
    with pytest.raises(InputError, match=match):
        FaceSystem(**(good | change))
