"""A piece of dough cut into layers, thin at its face and thicker inside, and what flows from layer to layer.

Slab, roll and ball are one family: `V = c r^g`, `A = dV/dr`, with g = 1, 2, 3. Every layer keeps its own dry matter;
its volume changes as water comes and goes, so a piece shrinks without losing a gram.
"""

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = ["Piece", "Shape", "layer_shares", "solve_layers"]

Array = NDArray[np.float64]
Shape = Literal["slab", "slab-both-sides", "roll", "ball"]
_POWER = {"slab": 1, "slab-both-sides": 1, "roll": 2, "ball": 3}
_FACTOR = {"slab": 1.0, "slab-both-sides": 2.0, "roll": np.pi, "ball": 4 / 3 * np.pi}
_FINER_OUTSIDE = 1.7
_FEW = 16


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A piece of dough that air touches.

    Parameters
    ----------
    shape : {"slab", "slab-both-sides", "roll", "ball"}
        A slab lies on something tight and meets the air with its upper face alone, or hangs or lies on a grid.
    thickness : (...) float
        Thickness of the slab, diameter of roll or ball. [m]
    extent : (...) float
        Area of one face of a slab, length of a roll, number of balls. [m², m, 1]

    Examples
    --------
    >>> roll = Piece(shape="roll", thickness=0.012, extent=0.2)
    >>> float((1e6 * roll.volume).round(1)), float((1e4 * roll.area_of(roll.volume)).round(1))
    (22.6, 75.4)
    """

    shape: Shape
    thickness: ArrayLike
    extent: ArrayLike = 1.0

    @property
    def power(self) -> int:
        """The power g of the distance in the volume. [1]"""
        return _POWER[self.shape]

    @property
    def depth(self) -> Array:
        """The way from the face to the middle, or through a slab that lies on a table. [m]"""
        thickness = np.asarray(self.thickness, float)
        return thickness if self.shape == "slab" else thickness / 2

    @property
    def volume(self) -> Array:
        """The piece's volume. [m³]"""
        return np.asarray(self._factor * self.depth**self.power)

    @property
    def area(self) -> Array:
        """The face that meets the air; the ends of a roll and the edge of a slab don't count. [m²]"""
        return self.area_of(self.volume)

    @property
    def _factor(self) -> Array:
        return np.asarray(_FACTOR[self.shape] * np.asarray(self.extent, float))

    def reach_of(self, volume: ArrayLike) -> Array:
        """Give the distance from the middle (or the table) within which a volume lies. [m]"""
        share = np.asarray(volume) / _beside(self._factor, volume)
        if self.power == 1:
            return share
        return np.asarray(np.sqrt(share) if self.power == 2 else np.cbrt(share))

    def area_of(self, volume: ArrayLike) -> Array:
        """Give the face round a volume of the middle. [m²]"""
        factor = _beside(self._factor, volume)
        if self.power == 1:
            return np.asarray(factor + 0 * np.asarray(volume))
        return np.asarray(self.power * factor * (np.asarray(volume) / factor) ** (1 - 1 / self.power))


def _beside(number: Array, other: ArrayLike) -> Array:
    """Add the axis of layers if `other` has it."""
    return number[..., None] if np.ndim(other) > number.ndim and number.ndim else number


def layer_shares(count: int, power: int = 1) -> Array:
    """Give the share of the piece that each layer holds, from the middle outward.

    Parameters
    ----------
    count : int
        Number of layers.
    power : int
        1 for a slab, 2 for a roll, 3 for a ball.

    Returns
    -------
    (count,) float
        Shares; they sum to 1. The outermost layer is `count^-1.7` of the depth thick. [1]

    Examples
    --------
    >>> layer_shares(4).round(3).tolist()
    [0.387, 0.305, 0.213, 0.095]
    """
    faces = 1 - (1 - np.arange(count + 1) / count) ** _FINER_OUTSIDE
    return np.diff(faces**power)


def solve_layers(between: Array, diagonal: Array, right: Array) -> Array:
    """Solve for one unknown a layer, each tied to its two neighbours.

    Parameters
    ----------
    between : (m - 1, n) float
        What ties a layer to the next, as it stands off the diagonal on both sides (the ties are mutual), of n cases.
        [any]
    diagonal : (m, n) float
        What ties each layer to itself. [any]
    right : (m, n) float
        Right-hand side. [any]

    Returns
    -------
    (m, n) float
        The unknowns.

    Notes
    -----
    Elimination from both ends at once for many cases, which halves the steps that wait for one another; a dense solve
    for a few, which numpy does sooner.

    Examples
    --------
    >>> solve_layers(np.array([[-1.0], [-1.0]]), 2 * np.ones((3, 1)), np.array([[1.0], [0.0], [1.0]])).round(9).tolist()
    [[1.0], [1.0], [1.0]]
    """
    count, cases = diagonal.shape
    if cases > _FEW:
        return _met_in_the_middle(between, diagonal, right)
    dense = np.zeros((cases, count * count))
    dense[:, :: count + 1] = diagonal.T
    dense[:, 1 :: count + 1] = dense[:, count :: count + 1] = between.T
    return np.asarray(np.linalg.solve(dense.reshape(cases, count, count), right.T[..., None])[..., 0].T)


def _met_in_the_middle(between: Array, diagonal: Array, right: Array) -> Array:
    """Eliminate from both ends: a row holds a layer of one end and, behind it, its like of the other."""
    count, cases = diagonal.shape
    half = count // 2
    off, pivot, rest = (
        np.concatenate([each[:rows], each[::-1][:rows]], axis=1)
        for each, rows in ((between, half - 1), (diagonal, half), (right, half))
    )
    offs, pivots, rests, slopes = list(off), list(pivot), list(rest), list(np.empty_like(off))
    for i in range(1, half):
        slope = np.divide(offs[i - 1], pivots[i - 1], out=slopes[i - 1])
        pivots[i] -= slope * offs[i - 1]
        rests[i] -= slope * rests[i - 1]
    found = np.empty((count, cases))
    rests[-1][:] = _joined(between, diagonal, right, (pivots[-1], rests[-1]), found)
    rest[:-1] /= pivot[:-1]
    for i in range(half - 2, -1, -1):
        rests[i] -= slopes[i] * rests[i + 1]
    found[:half], found[count - half :] = rest[:, :cases], rest[::-1, cases:]
    return found


def _joined(between: Array, diagonal: Array, right: Array, left: tuple[Array, Array], found: Array) -> Array:
    """Solve for the layers where both ends meet, and for the one between them, if there is one, into its row."""
    count, cases = diagonal.shape
    half = count // 2
    (p, q), (r, s) = (each.reshape(2, cases) for each in left)
    if count == 2 * half:
        tie = between[half - 1]
        whole = p * q - tie**2
        return np.concatenate([(q * r - tie * s) / whole, (p * s - tie * r) / whole])
    a, b = between[half - 1], between[half]
    found[half] = (right[half] - a * r / p - b * s / q) / (diagonal[half] - a**2 / p - b**2 / q)
    return np.concatenate([(r - a * found[half]) / p, (s - b * found[half]) / q])
