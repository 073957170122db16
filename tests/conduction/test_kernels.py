"""Each loop against numpy, for one thread and for all."""

import numpy as np
import pytest

from lumped.conduction.kernels import COLUMNS, PARALLEL, SERIAL

from .bodies import grounded

NETWORK = grounded(5, 100.0)
MATRIX = NETWORK.dense()
RANDOM = np.random.default_rng(7)
X, B = (RANDOM.standard_normal((NETWORK.size, COLUMNS)).astype(np.float32) for _ in range(2))
ROWS = (NETWORK.starts, NETWORK.columns, NETWORK.links)
EACH = pytest.mark.parametrize("loops", [SERIAL, PARALLEL], ids=["one thread", "all threads"])


@EACH
def test_multiplying_and_what_is_left(loops):
    out = np.empty_like(X)
    loops.multiply(*ROWS, NETWORK.drain, X, out)
    np.testing.assert_allclose(out, MATRIX @ X, rtol=1e-4, atol=1e-5)
    loops.residual(*ROWS, NETWORK.drain, X, B, out, NETWORK.size - 5)
    np.testing.assert_allclose(out[:-5], (B - MATRIX @ X)[:-5], rtol=1e-4, atol=1e-5)
    assert not out[-5:].any()


@EACH
def test_the_law_in_double(loops):
    out = np.empty(X.shape)
    loops.imbalance(NETWORK.starts, NETWORK.columns, NETWORK.conductance, NETWORK.leak, X.astype(float), out)
    np.testing.assert_allclose(out, MATRIX @ X.astype(float), rtol=1e-11, atol=1e-13)


@EACH
def test_a_sweep_balances_every_unknown_of_a_colour(loops):
    first, last = NETWORK.colours[:2].tolist()
    x, out = X.copy(), np.empty_like(X)
    loops.relax(*ROWS, NETWORK.inverse, x, B, first, last)
    loops.residual(*ROWS, NETWORK.drain, x, B, out, NETWORK.size)
    assert np.abs(out[first:last]).max() < 1e-5
    np.testing.assert_array_equal(x[last:], X[last:])
    x.fill(0)
    loops.scale(NETWORK.inverse, x, B, first, last)
    again = np.zeros_like(x)
    loops.relax(*ROWS, NETWORK.inverse, again, B, first, last)
    np.testing.assert_allclose(x, again, rtol=1e-6)


@EACH
def test_sums_over_groups_and_back(loops):
    group = (np.arange(NETWORK.size) // 7).astype(np.int32)
    starts = np.concatenate([[0], np.cumsum(np.bincount(group))]).astype(np.int32)
    coarse = np.empty((len(starts) - 1, COLUMNS), np.float32)
    loops.gathered(starts, np.argsort(group, kind="stable").astype(np.int32), X, coarse)
    expected = np.add.reduceat(X, starts[:-1], axis=0)
    np.testing.assert_allclose(coarse, expected, rtol=1e-4, atol=1e-5)
    x = X.copy()
    loops.handed_down(group, coarse, x)
    np.testing.assert_allclose(x, X + coarse[group], rtol=1e-6)


@EACH
def test_products_and_steps(loops):
    np.testing.assert_allclose(
        loops.dots(X, B, X, B), [(X * B).sum(0), (X * X).sum(0), (X * B).sum(0)], rtol=1e-3, atol=1e-3
    )
    np.testing.assert_allclose(loops.products(X, B), X.astype(float).T @ B, rtol=1e-4, atol=1e-3)
    factor = np.arange(COLUMNS, dtype=np.float32)
    x = X.copy()
    loops.stepped(x, factor, B)
    np.testing.assert_allclose(x, X + factor * B, rtol=1e-5, atol=1e-5)
    loops.combined(x, factor, X, -factor, B)
    np.testing.assert_allclose(x, factor * (X - B), rtol=1e-5, atol=1e-5)


def test_sums_do_not_depend_on_threads():
    assert np.array_equal(SERIAL.dots(X, B, B, B), PARALLEL.dots(X, B, B, B))
    assert np.array_equal(SERIAL.products(X, B), PARALLEL.products(X, B))


def test_the_two_kinds_are_compiled_apart():
    """numba keeps what it compiled by name: one name for both would give the one back for the other."""
    assert SERIAL.dots.py_func.__qualname__ != PARALLEL.dots.py_func.__qualname__
    assert not SERIAL.dots.targetoptions["parallel"]
    assert PARALLEL.dots.targetoptions["parallel"]
