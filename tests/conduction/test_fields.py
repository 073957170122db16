"""Fields: what goes in as current times voltage comes out as heat, and what enters a lump leaves it."""

import numpy as np
import pytest

from lumped.conduction import FaceSystem, Lead, Terminal, fields, flows, solve_ports
from lumped.shape import Ball, Block, Piece, Roll, cells_of

from ..outside.fields import faces


@pytest.fixture(scope="module")
def scene():
    """A roll with a ball of another dough in it and an insulating block beside, three wires, one body of its own."""
    pieces = [
        Piece(name="roll", solid=Roll(start=(0, 0, 0), end=(0.08, 0, 0), radius=0.01), conductivity=3.0),
        Piece(name="ball", solid=Ball(centre=(0.04, 0, 0), radius=0.013), conductivity=0.5),
        Piece(name="block", solid=Block(centre=(0.04, 0.02, 0), size=(0.08, 0.024, 0.01)), conductivity=3e-3),
        Piece(name="alone", solid=Ball(centre=(0.2, 0, 0), radius=0.01), conductivity=3.0),
    ]
    cells = cells_of(pieces, [0, 0, 0, 1], pitch=1.5e-3)
    system = faces(cells)
    places = [(0.01, 0, 0), (0.07, 0, 0), (0.04, 0.028, 0)]
    leads = [
        Lead(name=f"{k}", body=0, points=np.array([(x, y, 0.012), (x, y, z - 0.004)]), radius=3e-4)
        for k, (x, y, z) in enumerate(places)
    ]
    ports = solve_ports(system, leads, port_rtol=1e-9)
    volts = np.array([3.0, -1.0, 2.0])
    return system, ports, volts, fields(system, leads, ports, volts), cells.piece


def test_heat_is_what_current_and_voltage_put_in(scene):
    _, ports, volts, found, _ = scene
    assert found.heat.sum() == pytest.approx(volts @ ports.matrix @ volts, rel=1e-4)
    assert np.all(found.heat >= 0)


def test_currents_from_the_leads_are_those_of_the_port_matrix(scene):
    _, ports, volts, found, _ = scene
    np.testing.assert_allclose(found.entering.sum(axis=0), ports.matrix @ volts, rtol=1e-3)


def test_what_enters_a_cell_leaves_it(scene):
    system, _, _, found, _ = scene
    out = np.bincount(system.edges[:, 0], found.crossing, system.size)
    out -= np.bincount(system.edges[:, 1], found.crossing, system.size)
    left = found.entering.sum(axis=1) - out
    assert np.abs(left).max() < 1e-4 * np.abs(found.entering.sum(axis=0)).max()


def test_what_enters_a_lump_leaves_it_and_a_lump_alone_takes_nothing(scene):
    system, _, _, found, piece = scene
    told = flows(system, found, piece)
    most = told.through.max()
    np.testing.assert_allclose(told.between, -told.between.T)
    np.testing.assert_allclose(told.entering.sum(axis=0) + told.between.sum(axis=0), 0, atol=1e-4 * most)
    assert told.through[3] == 0
    assert told.heat[3] == 0
    assert told.heat.sum() == pytest.approx(found.heat.sum())


def test_in_a_bar_between_plates_the_field_is_even_and_currents_divide_by_conductance():
    bars = [
        Piece(name="good", solid=Block(centre=(0.02, 0.005, 0), size=(0.04, 0.01, 0.01)), conductivity=3.0),
        Piece(name="poor", solid=Block(centre=(0.02, 0.015, 0), size=(0.04, 0.01, 0.01)), conductivity=1.0),
    ]
    cells = cells_of(bars, [0, 0], pitch=1e-3)
    system = faces(cells)
    x, g = system.index[:, 0], 2 * system.pitch * system.conductivity
    plates = [
        Terminal(name=f"{end}", cells=np.flatnonzero(x == end), conductance=g[x == end]) for end in (x.min(), x.max())
    ]
    ports = solve_ports(system, plates, port_rtol=1e-9)
    found = fields(system, plates, ports, [2.0, 0.0])
    inner = (x > x.min()) & (x < x.max())
    expected = np.column_stack([system.conductivity * 2.0 / 0.04, 0 * x, 0 * x])
    np.testing.assert_allclose(found.density[inner], expected[inner], rtol=1e-4, atol=1e-2)
    told = flows(system, found, cells.piece)
    area, length = 1e-4, 0.04  # σ·A/L of each bar, times 2 V
    np.testing.assert_allclose(told.through, [3.0 * area / length * 2, 1.0 * area / length * 2], rtol=1e-4)
    np.testing.assert_allclose(told.heat, [3.0 * area / length * 4, 1.0 * area / length * 4], rtol=1e-4)


def test_no_leads_no_currents():
    cell = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[1.0],
                      conductivity=[1.0, 1.0], origin=[0, 0, 0], pitch=1.0)  # fmt: skip
    found = fields(cell, [], solve_ports(cell, []), [])
    assert not found.heat.any()
    assert found.entering.shape == (2, 0)
    assert flows(cell, found, np.array([0, 1])).entering.shape == (0, 2)
