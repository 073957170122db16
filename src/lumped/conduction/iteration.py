"""Conjugate gradients for all ports in step, until the port matrix is known well enough.

The preconditioner works in single precision, and so do the search directions; potentials are summed in double, and
what is left over of Kirchhoff's law is worked out anew in double at the end of each *stage*, from the potentials
themselves. A stage ends when the port error seems reached; if the law says otherwise, another begins.
"""

from collections.abc import Callable
from contextlib import nullcontext
from dataclasses import dataclass
from threading import Lock

import numpy as np
from numpy.typing import NDArray
from scipy import linalg, sparse

from lumped.conduction.hierarchy import Hierarchy
from lumped.conduction.kernels import COLUMNS, PARALLEL
from lumped.conduction.network import Network

__all__ = ["Answer", "Grounded", "iterated"]

Singles = NDArray[np.float32]
Doubles = NDArray[np.float64]
Watch = Callable[[int, float], None]
_ROUNDS = 60
_STAGE = 12  # rounds of a stage at most
_FAR = 1e-4  # of what was left over when a stage began: beyond, single precision loses touch with the law
_DRIFT = 0.1  # how far what is left over may be from what the rounds believed
_LEAST_RITZ = 0.5  # of a K-cycle; what the rounds see of the smallest eigenvalue is never taken to be larger
_TINY = 1e-290
_TURN = Lock()  # loops on all threads take turns: not every way in which numba runs threads bears two at once


@dataclass(frozen=True, kw_only=True)
class Grounded:
    """A piece of dough with its leads: `A = L + Wᵀ G W`, W each lead piece's weights, G their conductances.

    Parameters
    ----------
    network : Network
        L, with the row sums of `Wᵀ G W` as leak: what stands for it in the preconditioner.
    touched : (t,) int
        Unknowns that leads touch.
    weights : (k, t) sparse float
        W, on those.
    conductance : (k,) float
        G. [S]
    currents : (t, p) float
        Current into the touched unknowns for one volt on a port, B. [S]
    own : (p,) float
        Summed conductance of each port, D. [S]
    """

    network: Network
    touched: NDArray[np.int64]
    weights: sparse.csr_array
    conductance: Doubles
    currents: Doubles
    own: Doubles

    def by_leads(self, x: NDArray[np.floating]) -> Doubles:
        """What A does on touched unknowns beyond the network's own: (t, c)."""
        there = x[self.touched].astype(float)
        spread = self.weights.T @ (self.conductance[:, None] * (self.weights @ there))
        return np.asarray(spread - self.network.leak[self.touched, None] * there)


@dataclass(frozen=True, kw_only=True)
class Answer:
    """Potentials and what they tell.

    Parameters
    ----------
    matrix : (p, p) float
        Port matrix in the energy form. [S]
    potentials : (n, p) float
        Potential of each unknown for one volt on a port. [1]
    error : float
        Estimated relative error of any two-terminal conductance. [1]
    residual : float
        Largest norm of what is left over of Kirchhoff's law, relative to the ports' currents. [1]
    rounds : int
        How many it took.
    """

    matrix: Doubles
    potentials: Doubles
    error: float
    residual: float
    rounds: int


def iterated(
    grounded: Grounded, *, port_rtol: float, start: NDArray[np.floating] | None = None, watch: Watch | None = None
) -> Answer:
    """Iterate until the port error is below `port_rtol`, or as long as it is worth while.

    Parameters
    ----------
    grounded : Grounded
        What is solved.
    port_rtol : float
        Relative error wanted. [1]
    start : (n, p) float, optional
        Potentials to begin from, such as those of nearly the same dough; zero if left out. [1]
    watch : callable, optional
        Told rounds and port error after every round; what it raises ends the work.

    Returns
    -------
    Answer
        Its error says whether the accuracy was reached.
    """
    with _TURN if grounded.network.loops is PARALLEL else nullcontext():
        run = _Run(grounded, port_rtol, start, watch)
        while not run.is_done:
            run.stage()
        return run.answer()


class _Block:
    """Eight columns of everything: potentials, what is left over, and the rounds' directions."""

    def __init__(self, grounded: Grounded, first: int, start: NDArray[np.floating] | None) -> None:
        self._of = grounded
        self.currents = np.zeros((len(grounded.touched), COLUMNS))
        there = grounded.currents[:, first : first + COLUMNS]
        self.currents[:, : there.shape[1]] = there
        n = grounded.network.size
        self.x = np.zeros((n, COLUMNS))
        self.left = np.zeros((n, COLUMNS))
        self.left[grounded.touched] = self.currents
        if start is not None:
            known = start[:, first : first + COLUMNS]
            self.x[:, : known.shape[1]] = known
            self._look_again()
        self.r, self.z, self.p, self.of_p, self.gained = (np.zeros((n, COLUMNS), np.float32) for _ in range(5))

    def begin(self, hierarchy: Hierarchy) -> None:
        """Begin a stage from what is left over, each column brought to one."""
        self.scale = np.maximum(np.linalg.norm(self.left, axis=0), _TINY)
        np.divide(self.left, self.scale, out=self.r, casting="same_kind")
        self.gained.fill(0)
        hierarchy.precondition(self.r, self.z)
        self.p[:] = self.z
        self.ahead = self._dots(self.r, self.z)

    def round(self, hierarchy: Hierarchy) -> tuple[Doubles, Doubles]:
        """One step of conjugate gradients; how far it went and how it turned."""
        self._multiply()
        loops = self._of.network.loops
        step = _quotient(self.ahead, self._dots(self.p, self.of_p))
        loops.stepped(self.gained, step.astype(np.float32), self.p)
        loops.stepped(self.r, (-step).astype(np.float32), self.of_p)
        before = self._dots(self.r, self.z)
        hierarchy.precondition(self.r, self.z)
        old, self.ahead = self.ahead, self._dots(self.r, self.z)
        turn = _quotient(self.ahead - before, old)
        loops.combined(self.p, turn.astype(np.float32), self.p, np.ones(COLUMNS, np.float32), self.z)
        return step, np.maximum(turn, 0.0)

    def end(self) -> tuple[float, float]:
        """Take what was gained; the norm of what is really left over, and how far that is from what was believed."""
        self.x += self.gained * self.scale
        believed = self.r * self.scale
        self._look_again()
        believed -= self.left
        return float(np.linalg.norm(self.left)), float(np.linalg.norm(believed))

    def _look_again(self) -> None:
        """Work out anew, in double, what is left over of Kirchhoff's law."""
        network = self._of.network
        network.loops.imbalance(network.starts, network.columns, network.conductance, network.leak, self.x, self.left)
        self.left[self._of.touched] += self._of.by_leads(self.x) - self.currents
        np.negative(self.left, out=self.left)

    @property
    def shrunk(self) -> float:
        """What is believed to be left over, of what was left over when the stage began; the slowest column."""
        return float(np.sqrt(self._dots(self.r, self.r).max()))

    def _multiply(self) -> None:
        network = self._of.network
        network.loops.multiply(network.starts, network.columns, network.links, network.drain, self.p, self.of_p)
        self.of_p[self._of.touched] += self._of.by_leads(self.p).astype(np.float32)

    def _dots(self, a: Singles, b: Singles) -> Doubles:
        return np.asarray(self._of.network.loops.dots(a, b, b, b)[0])


class _Run:
    """Potentials as they grow, stage by stage."""

    def __init__(
        self, grounded: Grounded, port_rtol: float, start: NDArray[np.floating] | None, watch: Watch | None
    ) -> None:
        self._of, self._wanted, self._watch = grounded, port_rtol, watch
        self._hierarchy = Hierarchy(grounded.network)
        self._ports = grounded.currents.shape[1]
        self._blocks = [_Block(grounded, first, start) for first in range(0, self._ports, COLUMNS)]
        self._error, self._rounds, self._stuck = np.inf, 0, False
        self._moved = start is not None  # whether there are potentials from before this stage
        self._smallest = _LEAST_RITZ

    @property
    def is_done(self) -> bool:
        return self._error <= self._wanted or self._rounds >= _ROUNDS or self._stuck

    def answer(self) -> Answer:
        norms = np.linalg.norm(self._of.currents, axis=0)
        left = np.concatenate([np.linalg.norm(each.left, axis=0) for each in self._blocks])[: self._ports]
        x = self._blocks[0].x if len(self._blocks) == 1 else np.concatenate([each.x for each in self._blocks], axis=1)
        return Answer(
            matrix=self._energy(), potentials=x[:, : self._ports], error=self._error, rounds=self._rounds,
            residual=float(np.max(left / norms)),
        )  # fmt: skip

    def stage(self) -> None:
        """Rounds in single precision from what is left over, then what is left over anew."""
        before = float(np.linalg.norm([np.linalg.norm(each.left) for each in self._blocks]))
        for each in self._blocks:
            each.begin(self._hierarchy)
        steps: list[Doubles] = []
        turns: list[Doubles] = []
        for _ in range(_STAGE):
            moved = [each.round(self._hierarchy) for each in self._blocks]
            steps.append(np.concatenate([step for step, _ in moved]))
            turns.append(np.concatenate([turn for _, turn in moved]))
            self._rounds += 1
            self._error = self._estimated(np.array(steps), np.array(turns))
            if self._watch is not None:
                self._watch(self._rounds, self._error)
            if self.is_done or max(each.shrunk for each in self._blocks) < _FAR:
                break
        self._moved = True
        left, off = np.linalg.norm([each.end() for each in self._blocks], axis=0).tolist()
        if off > _DRIFT * left > 0:
            self._stuck = left > 0.5 * before
            self._error = self._error if self._stuck else np.inf

    def _estimated(self, steps: Doubles, turns: Doubles) -> float:
        """Port error, from what the rounds of this stage believe to be left over."""
        ahead = self._crossed(lambda a, b: self._products(a.r, b.z) * np.outer(a.scale, b.scale))
        self._smallest = min(self._smallest, _smallest_ritz(steps[:, : self._ports], turns[:, : self._ports]))
        return _port_error(ahead, self._believed()) / self._smallest

    def _believed(self) -> Doubles:
        """The port matrix in the energy form, as the rounds believe it to be."""
        touched = self._of.touched
        found = self._crossed(lambda a, b: (
            a.currents.T @ (b.x[touched] + b.scale * b.gained[touched])
            + self._products(a.gained, b.r) * np.outer(a.scale, b.scale)
            + (a.x.T @ b.r * b.scale if self._moved else 0.0)
        ))  # fmt: skip
        return np.asarray(np.diag(self._of.own) - found)

    def _energy(self) -> Doubles:
        touched = self._of.touched
        found = self._crossed(lambda a, b: a.currents.T @ b.x[touched] + a.x.T @ b.left)
        return np.asarray(np.diag(self._of.own) - (found + found.T) / 2)

    def _crossed(self, product: Callable[[_Block, _Block], Doubles]) -> Doubles:
        """A product of all pairs of blocks, as one matrix of ports."""
        found = np.block([[product(a, b) for b in self._blocks] for a in self._blocks])
        return np.asarray(found[: self._ports, : self._ports])

    def _products(self, a: Singles, b: Singles) -> Doubles:
        return np.asarray(self._of.network.loops.products(a, b))


def _quotient(above: Doubles, below: Doubles) -> Doubles:
    """Divide; a column that is solved already stays where it is."""
    return np.divide(above, below, out=np.zeros_like(above), where=below > _TINY)


def _port_error(left: Doubles, Y: Doubles) -> float:
    """Largest of vᵀ(EᵀAE)v / vᵀYv over all lead potentials v: no weak link between strong ones is overlooked."""
    left, Y = (left + left.T) / 2, (Y + Y.T) / 2
    scale = 1 / np.sqrt(np.maximum(np.diag(Y), 1e-300))
    try:
        lower = linalg.cholesky(Y * np.outer(scale, scale), lower=True)
    except linalg.LinAlgError:
        return np.inf
    half = linalg.solve_triangular(lower, left * np.outer(scale, scale), lower=True)
    return float(np.linalg.norm(linalg.solve_triangular(lower, half.T, lower=True), 2))


def _smallest_ritz(steps: Doubles, turns: Doubles) -> float:
    """Estimate the smallest eigenvalue of the preconditioned matrix from the iteration's own coefficients.

    RᵀMR, with M the preconditioner, is at most EᵀAE divided by it; so dividing by it makes the estimate safe.
    """
    smallest = _LEAST_RITZ
    for alpha, beta in zip(steps.T, turns.T, strict=True):
        used = int(np.argmin(alpha > 0)) if np.any(alpha <= 0) else len(alpha)
        if used == 0:
            continue
        a, b = alpha[:used], beta[: used - 1]
        main = 1 / a
        main[1:] += b / a[:-1]
        off = np.sqrt(b) / a[:-1]
        smallest = min(smallest, float(linalg.eigvalsh_tridiagonal(main, off, select="i", select_range=(0, 0))[0]))
    return max(smallest, 1e-6)
