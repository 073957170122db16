"""Ports of random bodies against the dense solution of the same law, and what must hold of any of them."""

from itertools import combinations

import numpy as np
import pytest

from lumped.conduction import FaceSystem, Terminal, solve_ports

from .bodies import blob


def body(seed, contrast, scale=1.0, better=None):
    edges, conductance, cell = blob(seed, contrast)
    if better is not None:
        conductance = np.where(np.isin(edges, better).any(axis=1), 3 * conductance, conductance)
    n = len(cell)
    return FaceSystem(index=cell, body=np.zeros(n, int), edges=edges, conductance=scale * conductance,
                      conductivity=np.ones(n), origin=np.zeros(3), pitch=1e-3)  # fmt: skip


def pads(system, count, seed):
    cells = np.random.default_rng(seed).choice(system.size, size=3 * count, replace=False).reshape(count, 3)
    return [Terminal(name=f"{k}", cells=each, conductance=[2.0, 1.0, 0.5]) for k, each in enumerate(cells)]


def exact(system, leads):
    """Schur's complement of the whole matrix, cells that no lead reaches left out."""
    n, count = system.size, len(leads)
    whole = np.zeros((n + count, n + count))
    whole[:n, :n] = system.laplacian().toarray()
    for k, lead in enumerate(leads):
        for cell, g in zip(lead.cells, lead.conductance, strict=True):
            whole[[cell, n + k], [cell, n + k]] += g
            whole[[cell, n + k], [n + k, cell]] -= g
    reached = np.linalg.matrix_power((whole[:n, :n] != 0).astype(float) > 0, 1)
    seen = np.zeros(n, bool)
    seen[np.concatenate([lead.cells for lead in leads])] = True
    while True:
        more = seen | (reached @ seen)
        if np.array_equal(more, seen):
            break
        seen = more
    kept = np.flatnonzero(seen)
    inner = whole[np.ix_(kept, kept)]
    return whole[n:, n:] - whole[n:, kept] @ np.linalg.solve(inner, whole[kept, n:])


@pytest.mark.parametrize("count", [2, 5, 8, 9, 12])
@pytest.mark.parametrize("contrast", [1.0, 1e4, 1e7])
def test_ports_of_a_random_body_are_those_of_the_dense_solution(count, contrast):
    system = body(count, contrast)
    leads = pads(system, count, count)
    found, expected = solve_ports(system, leads, port_rtol=1e-6), exact(system, leads)
    np.testing.assert_allclose(found.matrix, expected, rtol=0, atol=1e-6 * expected.max())
    for i, j in combinations(range(count), 2):
        held = found.resistance(str(i), str(j))
        if held == np.inf:
            continue
        others = [k for k in range(count) if k != j and found.resistance(str(k), str(j)) < np.inf]
        volts = np.linalg.solve(expected[np.ix_(others, others)], np.array(others) == i)
        assert held == pytest.approx(volts[others.index(i)], rel=1e-5)
    assert found.port_error <= 1e-6
    np.testing.assert_allclose(found.matrix, found.matrix.T, rtol=0, atol=1e-12 * found.matrix.max())
    assert np.abs(found.matrix.sum(axis=1)).max() < 1e-12 * found.matrix.max()
    assert np.linalg.eigvalsh(found.matrix).min() > -1e-9 * found.matrix.max()


@pytest.mark.parametrize("seed", range(3))
def test_conductances_scale_and_more_conductance_anywhere_never_raises_a_resistance(seed):
    plain = body(seed, 100.0)
    leads = pads(plain, 4, seed)
    ports = solve_ports(plain, leads, port_rtol=1e-8)
    tenfold = [
        Terminal(name=each.name, cells=each.cells, conductance=10 * np.array(each.conductance)) for each in leads
    ]
    np.testing.assert_allclose(solve_ports(body(seed, 100.0, scale=10.0), tenfold, port_rtol=1e-8).matrix, 10 * ports.matrix,
                               rtol=1e-6, atol=1e-7 * ports.matrix.max())  # fmt: skip
    better = solve_ports(body(seed, 100.0, better=np.arange(0, plain.size, 5)), leads, port_rtol=1e-8)
    for i in "0123":
        for j in "0123":
            if i < j and ports.resistance(i, j) < np.inf:
                assert better.resistance(i, j) <= ports.resistance(i, j) * (1 + 1e-7)


@pytest.mark.parametrize("rtol", [1e-2, 1e-3, 1e-5])
def test_the_stated_error_covers_the_true_one(rtol):
    for seed in range(4):
        system = body(seed, 1e3)
        leads = pads(system, 3, seed)
        found, sharp = (solve_ports(system, leads, port_rtol=each) for each in (rtol, 1e-10))
        for i, j in ("01", "02", "12"):
            if sharp.resistance(i, j) < np.inf:
                assert abs(found.resistance(i, j) / sharp.resistance(i, j) - 1) <= found.port_error + 1e-9


def test_who_watches_can_end_the_work():
    seen = []

    def watch(rounds, error):
        seen.append((rounds, error))
        if rounds == 2:
            raise KeyboardInterrupt

    system = body(3, 1e4)
    with pytest.raises(KeyboardInterrupt):
        solve_ports(system, pads(system, 3, 3), port_rtol=1e-9, watch=watch)
    assert [rounds for rounds, _ in seen] == [1, 2]
