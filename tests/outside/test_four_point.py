"""A collinear four-point probe on a sheet and on a slab.

L. B. Valdes, Proc. IRE 42 (1954) 420: V/I = ρ ln 2/(π t) on a thin sheet. On a slab of thickness w over an insulating
base, by images: V/I = ρ/(2πs) · G with G = 1 + 4 Σ [1/√(1 + (2nw/s)²) − 1/√(4 + (2nw/s)²)]. Edges: method of images.
"""

import numpy as np
import pytest

from lumped.conduction import Lead, Terminal, solve_ports

from .fields import sheet_potential, tray


def transfer_resistance(ports):
    """Volts between the inner electrodes for one ampere through the outer ones."""
    volts = np.linalg.lstsq(ports.matrix, np.array([1.0, 0.0, 0.0, -1.0]), rcond=1e-12)[0]
    return volts[1] - volts[2]


def in_sheet(length, width, places):
    """The same in a sheet of unit conductance with insulating edges."""
    places = np.array(places)
    inner = places[1:3]
    volts = sheet_potential(length, width, places[0], inner) - sheet_potential(length, width, places[3], inner)
    return volts[0] - volts[1]


def test_the_reference_is_valdes_on_a_wide_sheet():
    wide = in_sheet(3000.0, 3000.0, [(1500.0 + x, 1500.0) for x in (-15, -5, 5, 15)])
    assert wide == pytest.approx(np.log(2) / np.pi, rel=1e-3)


def test_four_needles_through_a_sheet():
    places = [(20.3 + x, 15.2) for x in (-9, -3, 3, 9)]
    sheet = tray(40.0, 30.0, 2.0, offset=(0.3, 0.1, 0.6))
    needles = [
        Lead(name=f"n{k}", body=0, points=np.array([[*place, 0], [*place, 2.0]]), radius=0.1)
        for k, place in enumerate(places)
    ]
    found = 2.0 * transfer_resistance(solve_ports(sheet, needles))
    assert found == pytest.approx(in_sheet(40.0, 30.0, places), rel=4e-3)  # 6 cells apart


@pytest.mark.parametrize(("thickness", "factor"), [(0.5, 0.9974), (1.0, 0.9215), (2.0, 0.6337)])
def test_four_points_on_a_slab_need_the_thickness_factor(thickness, factor):
    spacing, width = 6, 73  # cells
    n = np.arange(1, 20000)
    depth = 2 * n * thickness
    G = 1 + 4 * np.sum(1 / np.sqrt(1 + depth**2) - 1 / np.sqrt(4 + depth**2))
    assert 2 * np.log(2) / (G * thickness) == pytest.approx(factor, abs=1e-4)  # four digits
    height = int(spacing * thickness)
    slab = tray(float(width), float(width), float(height))
    middle = width // 2
    columns = [middle + each for each in (-9, -3, 3, 9)]
    top = slab.index[:, 2].max()
    corner = slab.index.min(axis=0)
    points = [
        Terminal(name=f"p{k}", cells=slab.find(np.array([[x + corner[0], middle + corner[1], top]]), 0),
                 conductance=[1.0])
        for k, x in enumerate(columns)
    ]  # fmt: skip
    places = [(x + 0.5, middle + 0.5) for x in columns]
    edges = in_sheet(width, width, places) - np.log(2) / np.pi  # the images are far: for them the slab is a sheet
    exact = G / (2 * np.pi * spacing) + edges / height
    found = transfer_resistance(solve_ports(slab, points, port_rtol=1e-6))
    assert found == pytest.approx(exact, rel=1e-2)  # a point source is one cell, its middle half a cell deep
