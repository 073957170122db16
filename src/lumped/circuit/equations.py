"""The equations of a network: Kirchhoff's current law at each node, and Ohm's law of each straight-line branch.

Unknown are the potentials and, of each straight-line branch, its current. To have those currents as unknowns costs
little and keeps a current of nanoamperes exact beside a contact of milliohms, where (v − emf)/R would be noise.
Potentials are kept as a coarse and a fine part, so that small differences of large potentials are exact too.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.circuit.law import Law, StraightLine
from lumped.circuit.network import Network

__all__ = ["Equations", "State"]

Array = NDArray[np.float64]
LEAK = 1e-12  # S; only in the Jacobian, where a law may be flatter than floating point can invert


@dataclass(frozen=True, slots=True, kw_only=True)
class State:
    """Potentials (coarse + fine) of the nodes and currents of the straight-line branches."""

    coarse: Array
    fine: Array
    flows: Array

    def moved(self, potentials: Array, flows: Array, share: float) -> "State":
        """Give the state a share of a step further; what rounding cuts off the coarse part goes to the fine part."""
        step = share * potentials
        coarse = self.coarse + step
        taken = coarse - self.coarse
        lost = (self.coarse - (coarse - taken)) + (step - taken)
        return State(coarse=coarse, fine=self.fine + lost, flows=self.flows + share * flows)


class Equations:
    """The equations of one network with one law a branch; a branch with both legs on one node concerns no node.

    Parameters
    ----------
    network : Network
        Branches and conductors.
    laws : mapping of str to Law
        The law of each branch now, by the branch's name.
    grounds : tuple of str
        One node of each piece, whose potential is zero.
    """

    def __init__(self, network: Network, laws: Mapping[str, Law], grounds: tuple[str, ...]) -> None:
        self.nodes = network.nodes
        index = {node: k for k, node in enumerate(self.nodes)}
        self.free = np.array([k for k, node in enumerate(self.nodes) if node not in grounds], dtype=int)
        self.branches = tuple(branch for branch in network.branches if branch.plus != branch.minus)
        self.plus = np.array([index[branch.plus] for branch in self.branches], dtype=int)
        self.minus = np.array([index[branch.minus] for branch in self.branches], dtype=int)
        self.laws = tuple(laws[branch.name] for branch in self.branches)
        straight = np.array([isinstance(law, StraightLine) for law in self.laws], dtype=bool)
        self.straight, self.curved = np.flatnonzero(straight), np.flatnonzero(~straight)
        lines = [law for law in self.laws if isinstance(law, StraightLine)]
        self.resistance = np.array([line.resistance for line in lines])
        self.emf = np.array([line.emf for line in lines])
        self.conductors = tuple(
            (np.array([index[node] for node in body.nodes], dtype=int), body.matrix)
            for conductor in network.conductors
            for body in conductor.bodies()
        )
        self._fixed = self._fixed_part()

    def start(self, potentials: Array) -> State:
        """Give the state at these potentials with Ohm's law fulfilled. [V]"""
        state = State(coarse=potentials, fine=np.zeros_like(potentials), flows=np.zeros(len(self.straight)))
        flows = (self.drops(state)[self.straight] - self.emf) / self.resistance
        return State(coarse=state.coarse, fine=state.fine, flows=flows)

    def drops(self, state: State) -> Array:
        """Give the voltage across each branch, shape (branches,). [V]"""
        plus, minus = self.plus, self.minus
        return np.asarray(
            (state.coarse[plus] - state.coarse[minus]) + (state.fine[plus] - state.fine[minus]), dtype=np.float64
        )

    def currents(self, state: State) -> Array:
        """Give the current through each branch, shape (branches,). [A]"""
        currents = np.empty(len(self.laws))
        currents[self.straight] = state.flows
        drops = self.drops(state)
        for k in self.curved:
            currents[k] = self.laws[k].current(float(drops[k]))
        return currents

    def into_conductors(self, state: State) -> Array:
        """Give the current from each node into conductors, shape (nodes,). [A]"""
        into = np.zeros(len(self.nodes))
        for ports, matrix in self.conductors:
            first = ports[0]
            above = (state.coarse[ports] - state.coarse[first]) + (state.fine[ports] - state.fine[first])
            np.add.at(into, ports, matrix @ above)
        return into

    def imbalance(self, state: State) -> Array:
        """Give the sum of currents that leave each node, shape (nodes,); zero at the operating point. [A]"""
        balance = self.into_conductors(state)
        currents = self.currents(state)
        np.add.at(balance, self.plus, currents)
        np.subtract.at(balance, self.minus, currents)
        return balance

    def mismatch(self, state: State) -> Array:
        """Give what Ohm's law lacks on each straight-line branch, shape (straight,). [V]"""
        return np.asarray(self.drops(state)[self.straight] - self.emf - self.resistance * state.flows)

    def step(self, state: State, imbalance: Array) -> tuple[Array, Array]:
        """Give Newton's step for potentials, shape (nodes,), and flows, shape (straight,). [V, A]"""
        count = len(self.free)
        matrix = self._fixed.copy()
        matrix[:count, :count] += self._curved_slopes(state)[np.ix_(self.free, self.free)]
        weight = 1 / (1 + self.resistance)
        right = np.concatenate([-imbalance[self.free], -self.mismatch(state) * weight])
        solution = np.linalg.solve(matrix, right)
        potentials = np.zeros(len(self.nodes))
        potentials[self.free] = solution[:count]
        return potentials, solution[count:]

    def _curved_slopes(self, state: State) -> Array:
        slopes = np.zeros((len(self.nodes), len(self.nodes)))
        drops = self.drops(state)
        for k in self.curved:
            slope = max(self.laws[k].slope(float(drops[k])), LEAK)
            plus, minus = self.plus[k], self.minus[k]
            slopes[plus, plus] += slope
            slopes[minus, minus] += slope
            slopes[plus, minus] -= slope
            slopes[minus, plus] -= slope
        return slopes

    def _fixed_part(self) -> Array:
        """Conductors, and the rows and columns of the straight lines; Ohm's rows are scaled by 1/(1 + R)."""
        count, lines = len(self.free), len(self.straight)
        body = np.zeros((len(self.nodes), len(self.nodes)))
        for ports, matrix in self.conductors:
            np.add.at(body, np.ix_(ports, ports), matrix)
        ends = np.zeros((len(self.nodes), lines))
        np.add.at(ends, (self.plus[self.straight], np.arange(lines)), 1.0)
        np.subtract.at(ends, (self.minus[self.straight], np.arange(lines)), 1.0)
        ends = ends[self.free]
        weight = 1 / (1 + self.resistance)
        fixed = np.zeros((count + lines, count + lines))
        fixed[:count, :count] = body[np.ix_(self.free, self.free)]
        fixed[:count, count:] = ends
        fixed[count:, :count] = (ends * weight).T
        fixed[count:, count:] = -np.diag(self.resistance * weight)
        return fixed
