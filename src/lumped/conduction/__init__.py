"""The field solver: from cells of dough and leads pushed in to conductances between the leads.

It takes arrays and gives arrays, and knows nothing of lumps or parts. It solves ∇·(σ∇V) = 0 with one unknown for
each (cell, body) pair, and gives the port matrix in the energy form Y = D − (BᵀX + XᵀB − XᵀAX), whose error is the
square of the potentials'.
"""

from lumped.conduction.equivalent_radius import equivalent_radius
from lumped.conduction.fields import Fields, Flows, fields, flows
from lumped.conduction.leads import Lead, Terminal
from lumped.conduction.ports import Ports, cell_potential, port_spread
from lumped.conduction.sensitivities import sensitivities
from lumped.conduction.solver import carried_over, solve_ports
from lumped.conduction.system import FaceSystem

__all__ = [
    "FaceSystem", "Fields", "Flows", "Lead", "Ports", "Terminal", "carried_over", "cell_potential",
    "equivalent_radius", "fields", "flows", "port_spread", "sensitivities", "solve_ports",
]  # fmt: skip
