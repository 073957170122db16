"""The square lattice's resistances, and what they say about current that enters a grid.

D. Atkinson and F. J. van Steenwijk, Infinite resistive lattices, Am. J. Phys. 67 (1999) 486: R(1,0) = 1/2,
R(1,1) = 2/π, R(2,0) = 2 − 4/π, R(2,1) = 4/π − 1/2, R(2,2) = 8/3π; R(n,0) → (ln n + γ + ln(8)/2)/π. Peaceman,
SPE J. 18 (1978) 183: a well in one cell acts at 0.1985 pitches, which is e^(−γ)/√8.
"""

import numpy as np
import pytest

from lumped.conduction import FaceSystem, Terminal, equivalent_radius, solve_ports

R = {(0, 0): 0.0, (1, 0): 0.5, (1, 1): 2 / np.pi, (2, 0): 2 - 4 / np.pi, (2, 1): 4 / np.pi - 0.5,
     (2, 2): 8 / (3 * np.pi)}  # fmt: skip
WELL = 0.1985059


def lattice(size):
    """A sheet of size × size cells, 1 S from cell to cell."""
    number = np.arange(size**2).reshape(size, size)
    edges = np.concatenate([
        np.column_stack([number[:-1].ravel(), number[1:].ravel()]),
        np.column_stack([number[:, :-1].ravel(), number[:, 1:].ravel()]),
    ])  # fmt: skip
    index = np.column_stack([*np.divmod(np.arange(size**2), size), np.zeros(size**2, dtype=int)])
    return FaceSystem(index=index, body=np.zeros(size**2), edges=edges, conductance=np.ones(len(edges)),
                      conductivity=np.ones(size**2), origin=np.zeros(3), pitch=1.0)  # fmt: skip


def between(size, step):
    middle = size // 2
    cells = [middle * size + middle, (middle + step[0]) * size + middle + step[1]]
    nodes = [Terminal(name=name, cells=[cell], conductance=[1.0]) for name, cell in zip("ab", cells, strict=True)]
    return solve_ports(lattice(size), nodes, port_rtol=1e-9).resistance("a", "b") - 2.0  # less the terminals' own


@pytest.mark.parametrize(("step", "exact"), [((1, 0), 0.500326), ((1, 1), 0.637273)])
def test_a_lattice_of_41_cells_has_its_known_resistances(step, exact):
    assert between(41, step) == pytest.approx(exact, abs=2e-6)  # computed once by an independent graph library


@pytest.mark.parametrize("step", [(1, 0), (1, 1), (2, 0), (2, 1), (2, 2)])
def test_a_wide_lattice_tends_to_the_infinite_one(step):
    assert between(121, step) == pytest.approx(R[step], rel=5e-4)  # the edge is 60 cells away


def test_a_source_in_one_cell_acts_at_peacemans_radius():
    radius = 10 * np.exp(-np.pi * between(401, (10, 0)))
    assert radius == pytest.approx(WELL, rel=2e-3)  # R(10, 0) is 2e-4 from its asymptote, and the edge is near


@pytest.mark.parametrize("place", [(0, 0), (0.5, 0.5), (0.5, 0), (0.25, 0.1), (-0.3, 0.45)])
def test_the_radius_of_a_smeared_lead_follows_from_the_lattices_own_resistances(place):
    weights = np.outer(*(spline(u) for u in place))
    pairs = [
        weights[i, j] * weights[k, m] * R[tuple(sorted((abs(i - k), abs(j - m)), reverse=True))]
        for i in range(3) for j in range(3) for k in range(3) for m in range(3)
    ]  # fmt: skip
    exact = WELL * np.exp(np.pi * sum(pairs))
    found = equivalent_radius([0, 0, 1], pitch=1.0, offsets=[[*place, 0]])[0]
    assert found == pytest.approx(exact, rel=5e-4)  # 63 waves of the ripple are kept


def spline(u):
    return np.array([0.5 * (0.5 - u) ** 2, 0.75 - u**2, 0.5 * (0.5 + u) ** 2])
