"""Networks of one-ohm resistors with known answers, through the same code as dough.

Cube 7/12, 3/4, 5/6 over edge, face and body diagonal (textbook); edge-transitive graphs (n − 1)/m after Foster's
theorem (R. M. Foster 1949): tetrahedron 1/2, octahedron 5/12, icosahedron 11/30, dodecahedron 19/30, Petersen 3/5.
"""

import networkx as nx
import numpy as np
import pytest

from lumped.conduction import FaceSystem, Terminal, solve_ports


def resistance(graph, first, second):
    nodes = list(graph)
    edges = [[nodes.index(a), nodes.index(b)] for a, b in graph.edges]
    n = len(nodes)
    system = FaceSystem(index=np.arange(3 * n).reshape(n, 3), body=np.zeros(n), edges=edges,
                        conductance=np.ones(len(edges)), conductivity=np.ones(n), origin=np.zeros(3),
                        pitch=1.0)  # fmt: skip
    ends = [Terminal(name=str(node), cells=[nodes.index(node)], conductance=[1.0]) for node in (first, second)]
    return solve_ports(system, ends, port_rtol=1e-12).resistance(str(first), str(second)) - 2.0


@pytest.mark.parametrize(("steps", "exact"), [(1, 7 / 12), (2, 3 / 4), (3, 5 / 6)])
def test_the_cube(steps, exact):
    cube = nx.hypercube_graph(3)
    corner = (0, 0, 0)
    other = next(node for node in cube if sum(node) == steps)
    assert resistance(cube, corner, other) == pytest.approx(exact, rel=1e-9)


@pytest.mark.parametrize(
    ("graph", "exact"),
    [(nx.tetrahedral_graph(), 1 / 2), (nx.octahedral_graph(), 5 / 12), (nx.icosahedral_graph(), 11 / 30),
     (nx.dodecahedral_graph(), 19 / 30), (nx.petersen_graph(), 3 / 5)],
)  # fmt: skip
def test_edge_transitive_graphs(graph, exact):
    first, second = next(iter(graph.edges))
    assert resistance(graph, first, second) == pytest.approx(exact, rel=1e-9)


def test_a_long_ladder_tends_to_the_golden_ratio():
    ladder = nx.Graph()
    for k in range(24):
        nx.add_path(ladder, [f"top{k}", f"top{k + 1}"])
        ladder.add_edge(f"top{k + 1}", "rail")
    assert resistance(ladder, "top0", "rail") == pytest.approx((1 + np.sqrt(5)) / 2, rel=1e-9)
