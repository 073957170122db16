"""Networks of unit resistors whose resistance is known.

Source: classical results (cube 7/12, 3/4, 5/6; complete graphs 2/n; Platonic solids; Petersen's graph), checked against
networkx's resistance_distance; Foster's theorem gives (n − 1)/m for an edge of an edge-transitive graph.
"""

import networkx as nx
import numpy as np
import pytest

from lumped.circuit import Branch, Conductor, Network, StraightLine, operating_point, pack_of_cells

KNOWN = [
    (nx.hypercube_graph(3), (0, 0, 0), (0, 0, 1), 7 / 12),
    (nx.hypercube_graph(3), (0, 0, 0), (0, 1, 1), 3 / 4),
    (nx.hypercube_graph(3), (0, 0, 0), (1, 1, 1), 5 / 6),
    (nx.complete_graph(4), 0, 1, 1 / 2),
    (nx.complete_graph(5), 0, 1, 2 / 5),
    (nx.octahedral_graph(), 0, 1, 5 / 12),
    (nx.icosahedral_graph(), 0, 1, 11 / 30),
    (nx.dodecahedral_graph(), 0, 1, 19 / 30),
    (nx.petersen_graph(), 0, 1, 3 / 5),
]
NAMES = ["cube edge", "cube face", "cube body", "K4", "K5", "octahedron", "icosahedron", "dodecahedron", "Petersen"]


def resistance(start, end, branches=(), conductors=()):
    pack = Branch(name="pack", law=pack_of_cells(1, voltage=1.0, resistance=1.0), plus=str(start), minus=str(end))
    point = operating_point(Network(branches=(pack, *branches), conductors=conductors))
    return -point.voltages["pack"] / point.currents["pack"]


def as_branches(graph):
    return tuple(
        Branch(name=f"{one}-{other}", law=StraightLine(resistance=1.0), plus=str(one), minus=str(other))
        for one, other in graph.edges
    )


def as_conductor(graph):
    laplacian = nx.laplacian_matrix(graph).toarray().astype(float)
    return (Conductor(nodes=tuple(str(node) for node in graph.nodes), matrix=laplacian),)


@pytest.mark.parametrize(("graph", "start", "end", "ohms"), KNOWN, ids=NAMES)
def test_known_networks_through_branches_and_through_a_port_matrix(graph, start, end, ohms):
    assert nx.resistance_distance(graph, start, end) == pytest.approx(ohms, rel=1e-12)
    assert resistance(start, end, as_branches(graph)) == pytest.approx(ohms, rel=1e-12)
    assert resistance(start, end, conductors=as_conductor(graph)) == pytest.approx(ohms, rel=1e-12)


def test_a_long_ladder_of_unit_resistors_has_the_golden_ratio():
    graph = nx.Graph()
    for rung in range(40):
        graph.add_edges_from([(("top", rung), ("top", rung + 1)), (("top", rung + 1), ("bottom", 0))])
    assert resistance(("top", 0), ("bottom", 0), as_branches(graph)) == pytest.approx((1 + np.sqrt(5)) / 2, rel=1e-12)


def test_random_networks_agree_with_the_graph_library():
    rng = np.random.default_rng(5)
    graph = nx.gnm_random_graph(30, 90, seed=5)
    ohms = 10 ** rng.uniform(-2, 4, graph.number_of_edges())
    branches = tuple(
        Branch(name=f"{one}-{other}", law=StraightLine(resistance=r), plus=str(one), minus=str(other))
        for (one, other), r in zip(graph.edges, ohms, strict=True)
    )
    for (one, other), r in zip(graph.edges, ohms, strict=True):
        graph.edges[one, other]["ohm"] = r
    told = nx.resistance_distance(graph, 3, 17, weight="ohm", invert_weight=True)
    assert resistance(3, 17, branches) == pytest.approx(told, rel=1e-8)  # the library inverts a singular matrix
