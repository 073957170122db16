"""Solids, each by its signed distance: negative inside, positive outside.

The distance is exact outside and at the surface, and nowhere changes faster than the point moves, so one look at a
cell's centre tells whether the surface can pass the cell at all.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol, runtime_checkable

import numpy as np
from numpy.typing import NDArray

from lumped.errors import InputError

__all__ = ["Ball", "Block", "Disc", "PathRoll", "Ring", "Roll", "Solid"]

Points = NDArray[np.float64]
Triple = tuple[float, float, float]


@runtime_checkable
class Solid(Protocol):
    """What any solid can tell."""

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points (n, 3) to the surface, negative inside, shape (n,). [m]"""

    def bounds(self) -> Points:
        """Least and greatest corner of a box that holds the solid, shape (2, 3). [m]"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ball:
    """A ball.

    Parameters
    ----------
    centre : (3,) float
        Its middle. [m]
    radius : float
        Its radius. [m]

    Examples
    --------
    >>> Ball(centre=(0, 0, 0), radius=0.02).distance([[0.05, 0, 0]]).round(3).tolist()
    [0.03]
    """

    centre: Triple
    radius: float

    def __post_init__(self) -> None:
        _positive("ball", self.radius)

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points. [m]"""
        return np.asarray(np.linalg.norm(np.asarray(points) - self.centre, axis=-1) - self.radius)

    def bounds(self) -> Points:
        """Box around it. [m]"""
        return np.asarray(np.array([self.centre, self.centre]) + np.array([[-self.radius], [self.radius]]))


@dataclass(frozen=True, slots=True, kw_only=True)
class Roll:
    """A straight roll with flat ends.

    Parameters
    ----------
    start, end : (3,) float
        Middles of the end faces. [m]
    radius : float
        Radius. [m]

    Examples
    --------
    >>> Roll(start=(0, 0, 0), end=(0.1, 0, 0), radius=0.01).distance([[0.05, 0, 0], [0.12, 0, 0]]).round(3).tolist()
    [-0.01, 0.02]
    """

    start: Triple
    end: Triple
    radius: float

    def __post_init__(self) -> None:
        _positive("roll", self.radius, float(np.linalg.norm(np.subtract(self.end, self.start))))

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points. [m]"""
        axis = np.subtract(self.end, self.start)
        length = float(np.linalg.norm(axis))
        along, across = _along_and_across(np.asarray(points) - self.start, axis / length)
        return _corner_distance(across - self.radius, np.abs(along - length / 2) - length / 2)

    def bounds(self) -> Points:
        """Box around it. [m]"""
        axis = np.subtract(self.end, self.start)
        reach = self.radius * np.sqrt(np.maximum(0, 1 - (axis / np.linalg.norm(axis)) ** 2))
        ends = np.array([self.start, self.end], dtype=float)
        return np.array([ends.min(axis=0) - reach, ends.max(axis=0) + reach])


@dataclass(frozen=True, slots=True, kw_only=True)
class PathRoll:
    """A roll along a path: round at the bends, flat at both ends.

    Parameters
    ----------
    points : (p, 3) float
        Corners of the path. [m]
    radius : float
        Radius. [m]

    Examples
    --------
    >>> bent = PathRoll(points=((0, 0, 0), (0.1, 0, 0), (0.1, 0.1, 0)), radius=0.01)
    >>> bent.distance([[0.05, 0.05, 0]]).round(3).tolist()
    [0.04]
    """

    points: tuple[Triple, ...]
    radius: float

    def __post_init__(self) -> None:
        if len(self.points) < 2:
            raise InputError("path-too-short")
        for roll in self._rolls():
            _positive("roll along a path", roll.radius)

    def _rolls(self) -> list[Roll]:
        pairs = zip(self.points[:-1], self.points[1:], strict=True)
        return [Roll(start=start, end=end, radius=self.radius) for start, end in pairs]

    def parts(self) -> "list[Roll | Ball]":
        """Give the convex parts that it is the union of."""
        joints = [Ball(centre=point, radius=self.radius) for point in self.points[1:-1]]
        return [*self._rolls(), *joints]

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points; inside near a bend it may be too small, by less than the radius. [m]"""
        return np.asarray(np.min([part.distance(points) for part in self.parts()], axis=0))

    def bounds(self) -> Points:
        """Box around it. [m]"""
        boxes = np.array([part.bounds() for part in self.parts()])
        return np.array([boxes[:, 0].min(axis=0), boxes[:, 1].max(axis=0)])


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """A box, turned about the vertical; a slab is a flat one.

    Parameters
    ----------
    centre : (3,) float
        Its middle. [m]
    size : (3,) float
        Lengths along its own axes. [m]
    turn : float
        Angle from the table's first axis to the block's, seen from above, anticlockwise. [rad]

    Examples
    --------
    >>> Block(centre=(0, 0, 0), size=(0.02, 0.02, 0.01)).distance([[0, 0, 0], [0, 0, 0.01]]).tolist()
    [-0.005, 0.005]
    """

    centre: Triple
    size: Triple
    turn: float = 0.0

    def __post_init__(self) -> None:
        _positive("block", *self.size)

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points. [m]"""
        x, y, z = np.moveaxis(np.asarray(points, dtype=float) - self.centre, -1, 0)
        cos, sin = np.cos(self.turn), np.sin(self.turn)
        local = np.stack([cos * x + sin * y, cos * y - sin * x, z], axis=-1)
        over = np.abs(local) - np.asarray(self.size) / 2
        return np.asarray(np.linalg.norm(np.maximum(over, 0), axis=-1) + np.minimum(over.max(axis=-1), 0))

    def bounds(self) -> Points:
        """Box around it. [m]"""
        cos, sin = abs(np.cos(self.turn)), abs(np.sin(self.turn))
        length, width, height = self.size
        half = 0.5 * np.array([cos * length + sin * width, sin * length + cos * width, height])
        return np.array([self.centre - half, self.centre + half])


@dataclass(frozen=True, slots=True, kw_only=True)
class Disc:
    """An upright cylinder.

    Parameters
    ----------
    centre : (3,) float
        Its middle. [m]
    radius : float
        Radius. [m]
    height : float
        Height. [m]

    Examples
    --------
    >>> Disc(centre=(0, 0, 0), radius=0.03, height=0.01).distance([[0.04, 0, 0]]).round(3).tolist()
    [0.01]
    """

    centre: Triple
    radius: float
    height: float

    def __post_init__(self) -> None:
        _positive("disc", self.radius, self.height)

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points. [m]"""
        x, y, z = np.moveaxis(np.asarray(points, dtype=float) - self.centre, -1, 0)
        return _corner_distance(np.hypot(x, y) - self.radius, np.abs(z) - self.height / 2)

    def bounds(self) -> Points:
        """Box around it. [m]"""
        half = np.array([self.radius, self.radius, self.height / 2])
        return np.array([self.centre - half, self.centre + half])


@dataclass(frozen=True, slots=True, kw_only=True)
class Ring:
    """A flat ring with upright walls.

    Parameters
    ----------
    centre : (3,) float
        Its middle. [m]
    inner, outer : float
        Radii of its walls. [m]
    height : float
        Height. [m]

    Examples
    --------
    >>> Ring(centre=(0, 0, 0), inner=0.02, outer=0.04, height=0.01).distance([[0, 0, 0]]).round(3).tolist()
    [0.02]
    """

    centre: Triple
    inner: float
    outer: float
    height: float

    def __post_init__(self) -> None:
        _positive("ring", self.inner, self.outer - self.inner, self.height)

    def distance(self, points: Points) -> NDArray[np.float64]:
        """Signed distance of points. [m]"""
        x, y, z = np.moveaxis(np.asarray(points, dtype=float) - self.centre, -1, 0)
        middle, half = (self.inner + self.outer) / 2, (self.outer - self.inner) / 2
        return _corner_distance(np.abs(np.hypot(x, y) - middle) - half, np.abs(z) - self.height / 2)

    def bounds(self) -> Points:
        """Box around it. [m]"""
        half = np.array([self.outer, self.outer, self.height / 2])
        return np.array([self.centre - half, self.centre + half])


def _along_and_across(points: Points, unit: Points) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    along = points @ unit
    return along, np.sqrt(np.maximum(np.sum(points**2, axis=-1) - along**2, 0))


def _corner_distance(first: NDArray[np.float64], second: NDArray[np.float64]) -> NDArray[np.float64]:
    """Distance to what is inside two walls at right angles, from the distances to each wall."""
    outside = np.hypot(np.maximum(first, 0), np.maximum(second, 0))
    return np.asarray(outside + np.minimum(np.maximum(first, second), 0))


def _positive(what: str, *lengths: float) -> None:
    for length in lengths:
        if not (np.isfinite(length) and length > 0):
            raise InputError("solid-not-positive", solid=what, length_mm=f"{1e3 * length:g}")


def bounds_of(solids: Sequence[Solid]) -> Points:
    """Box around several solids, (2, 3). [m]"""
    boxes = np.array([solid.bounds() for solid in solids])
    return np.array([boxes[:, 0].min(axis=0), boxes[:, 1].max(axis=0)])
