"""Resistances with a closed form.

Bar ρL/A; quarter ring θρ/(t ln(b/a)); coaxial shell ρ ln(b/a)/2πL; two rods ρ acosh(w/D)/πL. Textbook closed forms
(shape factors: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table 4.1), edges by the method of images.
"""

import numpy as np
import pytest
from scipy import sparse
from scipy.sparse.linalg import spsolve

from lumped.conduction import Lead, Terminal, solve_ports
from lumped.conduction.leads import couple
from lumped.shape import Block, Disc, Ring, Roll

from .fields import cut, held, rods_in_sheet, tray


def upright(name, x, y, height, radius):
    return Lead(name=name, body=0, points=np.array([[x, y, 0.0], [x, y, height]]), radius=radius)


def test_a_bar_of_0_3_ohm_m_has_75_ohm():
    bar = cut(Block(centre=(0, 0, 0), size=(0.1, 0.02, 0.02)), 0.005, conductivity=1 / 0.3)
    x = bar.index[:, 0]
    plates = [
        Terminal(name=name, cells=np.flatnonzero(x == end), conductance=np.full(16, 2 * 0.005 / 0.3))
        for name, end in (("left", x.min()), ("right", x.max()))
    ]
    assert solve_ports(bar, plates, port_rtol=1e-8).resistance("left", "right") == pytest.approx(75.0, rel=1e-5)


@pytest.mark.parametrize("direction", [(1, 0, 0), (1, 1, 0), (1, 1, 1), (1, 0.3, 0), (3, 2, 1)])
@pytest.mark.parametrize(("across", "rtol"), [(12, 1e-4), (8, 3e-4), (6, 8e-4)])
def test_a_roll_in_any_direction_has_its_own_resistance(direction, across, rtol):
    t = np.array(direction) / np.linalg.norm(direction)
    radius, half = 0.01, 0.03
    roll = cut(Roll(start=tuple(-half * t), end=tuple(half * t), radius=radius), 2 * radius / across, (0.3, 0.8, 0.55))
    along = roll.centres @ t
    end = along > 0.6 * half
    _, current = held(roll.laplacian(), end | (along < -0.6 * half), along)
    assert current[end].sum() == pytest.approx(np.pi * radius**2, rel=rtol)


@pytest.mark.parametrize(("across", "rtol"), [(6, 9e-4), (8, 9e-4), (12, 4e-4)])
def test_a_quarter_ring_has_its_own_resistance(across, rtol):
    ring = cut(Ring(centre=(0, 0, 0), inner=0.02, outer=0.032, height=0.005), 0.012 / across, (0.2, 0.6, 0.4))
    angle = np.arctan2(ring.centres[:, 1], ring.centres[:, 0])
    kept = np.flatnonzero((angle > -np.pi / 8) & (angle < 5 * np.pi / 8))
    L = ring.laplacian()[kept][:, kept]
    L = L - sparse.diags_array(np.asarray(L.sum(axis=1)).ravel())  # cut off from the rest of the ring
    angle = angle[kept]
    end = angle > np.pi / 2
    _, current = held(sparse.csr_array(L), end | (angle < 0), angle)
    assert current[end].sum() == pytest.approx(0.005 * np.log(0.032 / 0.02), rel=rtol)


def potential_of_one_ampere(system, lead, fixed, values):
    """Potential of a lead that feeds one ampere, some cells held at given potentials."""
    W, g = lead.weights, lead.conductance
    out = (W.T @ g)[:, None]
    G = sparse.block_array(
        [[system.laplacian() + W.T @ sparse.diags_array(g) @ W, -out], [-out.T, [[g.sum()]]]]
    ).tocsr()
    unknown = np.append(~fixed, True)
    drive = np.append(np.zeros((~fixed).sum()), 1.0) - G[unknown][:, ~unknown] @ values
    return spsolve(G[unknown][:, unknown].tocsc(), drive)[-1]


@pytest.mark.parametrize("place", [(0.0, 0.0), (0.5, 0.5), (0.2, 0.45)])
def test_a_rod_in_a_coaxial_shell_has_its_own_resistance(place):
    a, b, height = 1.0, 10.0, 30.0
    disc = cut(Disc(centre=(0, 0, height / 2), radius=12.0, height=height), 2.0, (*place, 0.3), conductivity=1 / 0.3)
    lead = couple(disc, [upright("rod", 0.0, 0.0, height, a)])
    radius = np.hypot(*disc.centres[:, :2].T)
    shell = radius > 8.0
    exact = 0.3 * np.log(b / radius[shell]) / (2 * np.pi * height)  # volts of 1 A, outer shell at 0 V
    rod = potential_of_one_ampere(disc, lead, shell, exact)
    assert rod == pytest.approx(3.66468e-3, rel=1e-3)  # lengths in mm; 5 cells from rod to shell


def test_the_reference_for_two_rods_is_acosh_in_a_wide_sheet():
    found = rods_in_sheet(2000.0, 2000.0, (990.0, 1000.0), (1010.0, 1000.0), 1.0)
    assert 0.3 * found / 0.03 == pytest.approx(9.52772, rel=3e-4)  # D = 2, w = 20, L = 30 mm, 0.3 Ω·m


@pytest.mark.parametrize(
    ("radius", "apart", "rtol"),
    [(0.05, 4, 5e-3), (0.15, 4, 5e-3), (0.4, 4, 5e-3), (0.05, 8, 2e-3), (0.15, 8, 2e-3), (0.4, 8, 2e-3),
     (0.8, 4, 5e-3), (0.8, 8, 4e-3)],  # rods thicker than a pitch come out up to 0.3 % too conducting
)  # fmt: skip
def test_two_rods_in_a_tray_agree_with_acosh_and_images(radius, apart, rtol):
    rng, errors = np.random.default_rng(5), []
    for _ in range(3):
        length, width = 24 + rng.random(2)
        turn, middle = 2 * np.pi * rng.random(), np.array([12.0, 12.5]) + rng.random(2)
        half = apart / 2 * np.array([np.cos(turn), np.sin(turn)])
        sheet = tray(length, width, 3.0, offset=tuple(rng.random(3)))
        rods = [upright("a", *(middle - half), 3.0, radius), upright("b", *(middle + half), 3.0, radius)]
        found = 3.0 * solve_ports(sheet, rods).resistance("a", "b")
        errors.append(found / rods_in_sheet(length, width, middle - half, middle + half, radius) - 1)
    assert np.sqrt(np.mean(np.square(errors))) < rtol


def test_a_pin_that_ends_inside_converges_with_second_order_within_half_a_per_cent():
    def found(pitch, offset):
        block = cut(Block(centre=(20, 15, 7.5), size=(40, 30, 15)), pitch, offset)
        pins = [
            Lead(name=name, body=0, points=np.array([[x, 14.6, 15.0], [x, 14.6, 5.0]]), radius=0.3)
            for name, x in (("a", 10.3), ("b", 30.1))
        ]
        return solve_ports(block, pins).resistance("a", "b")

    fine = found(0.75, (0.1, 0.4, 0.7))
    coarse = [found(pitch, (0.6, 0.2, 0.3)) / fine - 1 for pitch in (4.0, 2.0)]
    assert abs(coarse[0]) < 0.015  # 5 cells between the pins, 2.5 deep
    assert abs(coarse[1]) < 0.005  # 10 cells between the pins, 5 deep


@pytest.mark.parametrize(("pitch", "radius"), [(2.0, 0.3), (3.0, 0.3), (2.0, 0.8)])
def test_a_rod_pushed_into_a_wide_block_agrees_with_dwight(pitch, radius):
    """H. B. Dwight, Trans. AIEE 55 (1936) 1319: R = ρ (ln(4L/a) − 1)/2πL (from memory). It takes the current as even along
    the rod, which overstates the resistance of rods of L/a = 15 to 40 by about two per cent.
    """
    depth, reach = 12.0, 27.0
    block = cut(Block(centre=(0, 0, -15), size=(60, 60, 30)), pitch, (0.2, 0.4, 0.3))
    rod = Lead(name="rod", body=0, points=np.array([[0.3, 0.1, 0], [0.3, 0.1, -depth]]), radius=radius)
    x, y, z = (block.centres - [0.3, 0.1, 0]).T
    far = np.sqrt(x**2 + y**2 + z**2) > reach
    span = (np.sqrt(x**2 + y**2 + (z - depth) ** 2) + np.sqrt(x**2 + y**2 + (z + depth) ** 2))[far]
    even = np.log((span + 2 * depth) / (span - 2 * depth)) / (4 * np.pi * depth)  # of one ampere, with its mirror image
    found = potential_of_one_ampere(block, couple(block, [rod]), far, even)
    dwight = (np.log(4 * depth / radius) - 1) / (2 * np.pi * depth)
    assert 0.96 < found / dwight < 1.005
