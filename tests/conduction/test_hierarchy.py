"""Groups, coarser networks, and how well a cycle solves."""

import numpy as np
import pytest

from lumped.conduction.grouping import coarser, grouped
from lumped.conduction.hierarchy import Hierarchy
from lumped.conduction.kernels import COLUMNS
from lumped.conduction.network import laid_out

from .bodies import grounded


@pytest.mark.parametrize("seed", range(3))
def test_a_coarser_network_is_the_sum_over_groups(seed):
    fine = grounded(seed, 1e4)
    coarse, to = coarser(fine, grouped(fine))
    belongs = np.eye(coarse.size)[to]
    np.testing.assert_allclose(coarse.dense(), belongs.T @ fine.dense() @ belongs, rtol=1e-9, atol=1e-12)


def test_insulator_beside_conductor_is_its_guest_and_two_bodies_stay_apart():
    """Cells 0 to 3 in a row, the last an insulator; 4 and 5 another body in the same cells as 0 and 1."""
    edges, conductance = np.array([[0, 1], [1, 2], [2, 3], [4, 5]]), np.array([1.0, 1.0, 1e-4, 1.0])
    cell = np.array([[0, 0, 0], [1, 0, 0], [2, 0, 0], [3, 0, 0], [0, 0, 0], [1, 0, 0]])
    network = laid_out(edges, conductance, np.full(6, 1e-9), cell)
    group = np.empty(6, int)
    group[network.order] = grouped(network)
    assert group[3] == group[2]
    assert group[0] == group[1] != group[2]
    assert group[4] == group[5] != group[0]


@pytest.mark.parametrize("contrast", [1.0, 1e3, 1e7])
@pytest.mark.parametrize("seed", range(3))
def test_a_cycle_takes_most_of_the_energy_away(seed, contrast):
    network = grounded(seed, contrast, extent=16)
    random = np.random.default_rng(seed)
    exact = random.standard_normal((network.size, COLUMNS))
    matrix = network.dense()
    found = np.zeros(exact.shape, np.float32)
    hierarchy = Hierarchy(network)
    assert len(hierarchy.sizes) > 1
    hierarchy.precondition((matrix @ exact).astype(np.float32), found)
    error = exact - found
    left = np.einsum("ic,ij,jc->c", error, matrix, error) / np.einsum("ic,ij,jc->c", exact, matrix, exact)
    assert left.max() < 0.5
