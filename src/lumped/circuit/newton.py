"""Newton's method with a line search that can't get lost.

Every law is a non-decreasing function, so the currents are the gradient of a convex function of the potentials (the
co-content), and its slope along any step only grows: wherever the search starts there is one lowest point to find.
"""

from dataclasses import dataclass

import numpy as np

from lumped.circuit.equations import Array, Equations, State
from lumped.errors import SolverError

__all__ = ["DARK", "Solution", "solve"]

STEPS = 400
FLATTENED = 0.3  # a step is good where the co-content's slope has shrunk to this share
BALANCED = 1e-12  # imbalance as a share of the largest current
STILL = 1e-6  # A, and
DARK = 1e-9  # W: smaller currents and powers are compared with these
CONSERVED = 1e-11  # power out of balance as a share of the largest branch's
ENOUGH = 1e-9  # the same, where rounding lets no step make it better


@dataclass(frozen=True, slots=True, kw_only=True)
class Solution:
    """Where the equations are fulfilled, after how many steps, and how well."""

    state: State
    iterations: int
    residual: float


def solve(equations: Equations, potentials: Array) -> Solution:
    """Find the potentials at which the currents balance.

    Parameters
    ----------
    equations : Equations
        The network.
    potentials : (nodes,) float
        Where to start; any start leads to the same end. [V]

    Returns
    -------
    Solution
        State, steps and residual (largest imbalance as a share of the largest current).

    Raises
    ------
    SolverError
        If the steps run out.
    """
    state, before = equations.start(potentials), np.inf
    for count in range(STEPS):
        imbalance = equations.imbalance(state)
        residual = _residual(equations, state, imbalance)
        lost = _power_error(equations, state, imbalance)
        if residual <= BALANCED and (lost <= CONSERVED or 0.5 * before <= lost <= ENOUGH):
            return _polished(equations, Solution(state=state, iterations=count, residual=residual))
        before = lost
        step, flows = equations.step(state, imbalance)
        state = state.moved(step, flows, _share(equations, state, step, flows, imbalance))
    raise SolverError("circuit-not-converged", steps=STEPS, residual=f"{residual:.1e}")


def _residual(equations: Equations, state: State, imbalance: Array) -> float:
    largest = np.abs(equations.currents(state)).max(initial=0.0)
    worst = np.abs(imbalance[equations.free]).max(initial=0.0)
    return float(worst / max(largest, STILL))


def _power_error(equations: Equations, state: State, imbalance: Array) -> float:
    largest = np.abs(equations.drops(state) * equations.currents(state)).max(initial=0.0)
    return float(np.abs(state.coarse * imbalance).sum() / max(largest, DARK))


def _share(equations: Equations, state: State, step: Array, flows: Array, imbalance: Array) -> float:
    """Find how far to go: where the co-content's slope along the step is nearly zero."""
    steep = float(step @ imbalance)
    if steep >= 0:
        return 1.0  # nothing but rounding is left
    low, high = 0.0, 1.0
    for _ in range(10):
        slope = float(step @ equations.imbalance(state.moved(step, flows, high)))
        if slope >= FLATTENED * steep:
            break
        low, high = high, 2 * high
    if abs(slope) <= FLATTENED * abs(steep):
        return high
    at_low, at_high = steep, slope
    for turn in range(60):
        middle = _between(low, high, at_low, at_high, turn)
        slope = float(step @ equations.imbalance(state.moved(step, flows, middle)))
        if abs(slope) <= FLATTENED * abs(steep):
            return middle
        if slope < 0:
            low, at_low = middle, slope
        else:
            high, at_high = middle, slope
    return low or high


def _between(low: float, high: float, at_low: float, at_high: float, turn: int) -> float:
    """Halve, or in every second turn cut where a straight line would be zero."""
    if turn % 2 or at_low == at_high:
        return 0.5 * (low + high)
    return low - at_low * (high - low) / (at_high - at_low)


def _polished(equations: Equations, solution: Solution) -> Solution:
    """Take whole steps while they make the balance better: from a good guess to what floating point can hold."""
    for _ in range(4):
        step, flows = equations.step(solution.state, equations.imbalance(solution.state))
        state = solution.state.moved(step, flows, 1.0)
        residual = _residual(equations, state, equations.imbalance(state))
        if residual >= solution.residual:
            break
        solution = Solution(state=state, iterations=solution.iterations + 1, residual=residual)
    return solution
