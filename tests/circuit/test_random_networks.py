"""Any network of any parts has one operating point, found from any start, and loses no power."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from lumped.chemistry.electrodes import electrode
from lumped.circuit import Branch, Conductor, Network, StraightLine, contact, lamp, motor, operating_point, pack, switch

METALS = st.sampled_from(["iron", "tin", "copper", "nickel", "zinc", "stainless", "graphite"])
PRICES = st.floats(-1, 1)
DECADES = st.floats(-2, 6)
laws = st.one_of(
    DECADES.map(lambda decade: StraightLine(resistance=10**decade)),
    st.sampled_from(["lamp-red", "lamp-green", "lamp-white"]).map(lamp),
    st.sampled_from(["motor-ordinary", "motor-low-current"]).map(motor),
    st.builds(pack, st.sampled_from(["pack-4aa-alkaline", "pack-2aa-nimh"]), fuse=st.booleans()),
    st.builds(switch, closed=st.booleans()),
    st.builds(contact),
    st.builds(electrode, METALS, st.floats(1e-6, 3e-4), price=PRICES),
    st.builds(electrode, METALS, st.floats(1e-6, 3e-4), price=PRICES),
)


@st.composite
def networks(draw, largest=12):
    nodes = [f"n{k}" for k in range(draw(st.integers(2, largest)))]
    node = st.sampled_from(nodes)
    drawn = draw(st.lists(st.tuples(laws, node, node), min_size=1, max_size=2 * largest))
    branches = tuple(
        Branch(name=f"b{k}", law=law, plus=plus, minus=minus) for k, (law, plus, minus) in enumerate(drawn)
    )
    ports = draw(st.lists(node, min_size=2, max_size=6, unique=True))
    links = np.zeros((len(ports), len(ports)))
    for row in range(len(ports)):
        for column in range(row):
            links[row, column] = links[column, row] = 10 ** draw(st.floats(-6, 0))
    body = Conductor(nodes=tuple(ports), matrix=np.diag(links.sum(axis=0)) - links)
    return Network(branches=branches, conductors=(body,))


@settings(max_examples=150, deadline=None, derandomize=True)
@given(networks(), st.lists(st.floats(-10, 10), min_size=12, max_size=12))
def test_any_network_has_one_operating_point_whatever_the_start(network, start):
    point = operating_point(network)
    other = operating_point(network, start=dict(zip(network.nodes, start, strict=False)))
    largest = max(abs(current) for current in point.currents.values())
    assert point.power_error <= 1e-9
    assert other.power_error <= 1e-9
    assert (point.running, point.tripped) == (other.running, other.tripped)
    for name, current in point.currents.items():
        assert other.currents[name] == pytest.approx(
            current, rel=1e-9, abs=1e-10 * largest + 1e-13
        )  # dark currents are rounding below this


@settings(max_examples=100, deadline=None, derandomize=True)
@given(networks())
def test_currents_follow_the_laws_and_balance_at_each_node(network):
    point = operating_point(network)
    balance = dict.fromkeys(network.nodes, 0.0)
    for branch in network.branches:
        current = point.currents[branch.name]
        told = point.laws[branch.name].current(point.voltages[branch.name])
        assert told == pytest.approx(current, rel=1e-6, abs=1e-12)  # (v − emf)/R of a contact is noise below this
        balance[branch.plus] += current
        balance[branch.minus] -= current
    for body in network.conductors:
        into = body.matrix @ np.array([point.potentials[node] for node in body.nodes])
        for node, current in zip(body.nodes, into, strict=True):
            balance[node] += current
    largest = max(abs(current) for current in point.currents.values())
    assert max(map(abs, balance.values())) <= 1e-11 * largest + 1e-13
