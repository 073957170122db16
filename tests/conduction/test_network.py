"""Colours and rows of a network."""

import numpy as np
import pytest

from .bodies import blob, grounded


@pytest.mark.parametrize("seed", range(4))
def test_no_two_of_a_colour_are_linked(seed):
    found = grounded(seed, 1e3)
    colour = np.repeat(np.arange(len(found.colours) - 1), np.diff(found.colours))
    rows = np.repeat(np.arange(found.size), np.diff(found.starts))
    assert np.all(colour[rows] != colour[found.columns])


def test_the_matrix_is_kirchhoffs_law_in_the_new_order():
    edges, conductance, _ = blob(1, 10.0)
    found = grounded(1, 10.0)
    plain = np.zeros((found.size, found.size))
    for (i, j), g in zip(edges, conductance, strict=True):
        plain[[i, j], [i, j]] += g
        plain[[i, j], [j, i]] -= g
    expected = plain[np.ix_(found.order, found.order)] + np.diag(found.leak)
    np.testing.assert_allclose(found.dense(), expected, rtol=1e-12, atol=1e-15)


def test_a_network_without_links_has_one_colour():
    from lumped.conduction.network import laid_out

    found = laid_out(np.zeros((0, 2), int), np.zeros(0), np.ones(3), np.zeros((3, 3), int))
    assert found.colours.tolist() == [0, 3]
    assert found.dense().tolist() == np.eye(3).tolist()
