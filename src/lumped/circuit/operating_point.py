"""The operating point: the one set of potentials at which all currents balance, found from rest."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

import numpy as np

from lumped.circuit.equations import Array, Equations
from lumped.circuit.law import Law, StagedLaw
from lumped.circuit.motor import MotorTurning
from lumped.circuit.network import Network
from lumped.circuit.newton import DARK, Solution, solve
from lumped.circuit.pack import Pack, TrippedPack
from lumped.errors import SolverError

__all__ = ["OperatingPoint", "operating_point"]

POWER = 1e-9  # of the largest branch


@dataclass(frozen=True, slots=True, kw_only=True)
class OperatingPoint:
    """What flows where.

    Parameters
    ----------
    potentials : mapping of str to float
        Potential of each node above the minus of the first pack in its piece of the network. [V]
    currents : mapping of str to float
        Current through each branch from plus to minus; out of a pack it is negative. [A]
    voltages : mapping of str to float
        Voltage across each branch, plus minus minus. [V]
    laws : mapping of str to Law
        The law that holds at each branch, after motors started and fuses tripped.
    running : frozenset of str
        Motors that turn.
    tripped : frozenset of str
        Packs whose fuse has tripped.
    iterations : int
        Newton steps in all.
    residual : float
        Largest imbalance at a node as a share of the largest current.
    power_error : float
        Power in less power out as a share of the largest branch's power.
    """

    potentials: Mapping[str, float]
    currents: Mapping[str, float]
    voltages: Mapping[str, float]
    laws: Mapping[str, Law]
    running: frozenset[str]
    tripped: frozenset[str]
    iterations: int
    residual: float
    power_error: float

    def power(self, branch: str) -> float:
        """Give the power that a branch takes; negative where it gives. [W]"""
        return self.voltages[branch] * self.currents[branch]

    def speed(self, branch: str) -> float:
        """Give a motor's speed; 0 of any other part. [rad/s]"""
        law = self.laws[branch]
        return law.speed(self.voltages[branch]) if isinstance(law, MotorTurning) else 0.0


def operating_point(network: Network, *, start: Mapping[str, float] | None = None) -> OperatingPoint:
    """Find what flows in a network.

    Motors start from rest: first all stand; the quickest change that is due happens, and the network is solved again,
    until nothing is due.

    Parameters
    ----------
    network : Network
        Branches and conductors.
    start : mapping of str to float, optional
        Potentials to start from, where known; the result does not depend on them. [V]

    Returns
    -------
    OperatingPoint
        Potentials, currents, voltages, and how well they fulfil the laws.

    Raises
    ------
    SolverError
        If the currents don't balance, or power in does not equal power out.

    Examples
    --------
    >>> from lumped.circuit import Branch, StraightLine, pack_of_cells
    >>> cells = pack_of_cells(4, voltage=1.5, resistance=0.25)
    >>> pack = Branch(name="pack", law=cells, plus="red", minus="black")
    >>> load = Branch(name="load", law=StraightLine(resistance=99.0), plus="red", minus="black")
    >>> round(operating_point(Network(branches=(pack, load))).currents["load"], 9)
    0.06
    """
    laws = {branch.name: branch.law for branch in network.branches}
    grounds = _grounds(network)
    potentials = np.array([(start or {}).get(node, 0.0) for node in network.nodes])
    potentials -= _offsets(network, grounds, potentials)
    iterations = 0
    while True:
        equations = Equations(network, laws, grounds)
        solution = solve(equations, potentials)
        iterations += solution.iterations
        changed = _changed(network, laws, equations, solution)
        if not changed:
            return _point(network, laws, equations, solution, iterations)
        laws |= changed
        potentials = solution.state.coarse


def _grounds(network: Network) -> tuple[str, ...]:
    """Give one node of each piece: the minus of its first pack, else its first node."""
    minuses = [branch.minus for branch in network.branches if isinstance(branch.law, Pack | TrippedPack)]
    return tuple(next((node for node in minuses if node in piece), piece[0]) for piece in network.pieces())


def _offsets(network: Network, grounds: tuple[str, ...], potentials: Array) -> Array:
    known = dict(zip(network.nodes, potentials, strict=True))
    offset = {node: known[ground] for ground, piece in zip(grounds, network.pieces(), strict=True) for node in piece}
    return np.array([offset[node] for node in network.nodes])


def _changed(network: Network, laws: Mapping[str, Law], equations: Equations, solution: Solution) -> dict[str, Law]:
    """Give the new laws of the branches that change soonest."""
    voltages, currents = _flows(network, laws, equations, solution)
    due: list[tuple[float, str, Law]] = []
    for name, law in laws.items():
        if isinstance(law, StagedLaw) and (following := law.next(voltages[name], currents[name])) is not None:
            due.append((law.delay, name, following))
    soonest = min((delay for delay, _, _ in due), default=0.0)
    return {name: law for delay, name, law in due if delay == soonest}


def _flows(
    network: Network, laws: Mapping[str, Law], equations: Equations, solution: Solution
) -> tuple[dict[str, float], dict[str, float]]:
    """Give voltage and current of each branch, those that end where they start included. [V, A]"""
    voltages = {branch.name: 0.0 for branch in network.branches}
    currents = {branch.name: laws[branch.name].current(0.0) for branch in network.branches}
    names = [branch.name for branch in equations.branches]
    voltages |= zip(names, equations.drops(solution.state).tolist(), strict=True)
    currents |= zip(names, equations.currents(solution.state).tolist(), strict=True)
    return voltages, currents


def _point(
    network: Network, laws: Mapping[str, Law], equations: Equations, solution: Solution, iterations: int
) -> OperatingPoint:
    voltages, currents = _flows(network, laws, equations, solution)
    potentials = solution.state.coarse + solution.state.fine
    power = np.array([voltages[name] * currents[name] for name in voltages])
    into = float(power.sum() + potentials @ equations.into_conductors(solution.state))
    error = abs(into) / max(float(np.abs(power).max(initial=0.0)), DARK)
    if error > POWER:
        raise SolverError("circuit-power-lost", share=f"{error:.1e}", residual=f"{solution.residual:.1e}")
    turning = {name: law for name, law in laws.items() if isinstance(law, MotorTurning)}
    return OperatingPoint(
        potentials=MappingProxyType(dict(zip(equations.nodes, potentials.tolist(), strict=True))),
        currents=MappingProxyType(currents),
        voltages=MappingProxyType(voltages),
        laws=MappingProxyType(dict(laws)),
        running=frozenset(name for name, law in turning.items() if law.speed(voltages[name]) != 0),
        tripped=frozenset(name for name, law in laws.items() if isinstance(law, TrippedPack)),
        iterations=iterations,
        residual=solution.residual,
        power_error=error,
    )
