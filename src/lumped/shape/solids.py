"""Solids: what people make of dough, each as one simple form or a union of some.

A solid's signed distance, negative inside, is exact outside and at the surface, and nowhere changes faster than the
point moves, so one look at a cell's centre tells whether the surface can pass the cell at all.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Protocol, runtime_checkable

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.errors import InputError
from lumped.shape.forms import BALL, BARREL, BLOCK, BOX, PLANE, TAPER, distances, row

__all__ = ["Ball", "Block", "Cut", "Disc", "PathRoll", "Ring", "Roll", "Solid", "Taper", "bounds_of"]

Points = NDArray[np.float64]
Triple = tuple[float, float, float]


@runtime_checkable
class Solid(Protocol):
    """What any solid can tell."""

    @property
    def forms(self) -> Points:
        """The simple forms that it is the union of, each a row of numbers (see `lumped.shape.forms`)."""

    def distance(self, points: ArrayLike) -> NDArray[np.float64]:
        """Signed distance of points (…, 3) to the surface, negative inside, shape (…). [m]"""

    def bounds(self) -> Points:
        """Least and greatest corner of a box that holds the solid, shape (2, 3). [m]"""


class _Formed:
    """What all solids can tell from their forms."""

    @cached_property
    def forms(self) -> Points:
        """The simple forms that it is the union of."""
        raise NotImplementedError

    def distance(self, points: ArrayLike) -> NDArray[np.float64]:
        """Signed distance of points. [m]"""
        where = np.ascontiguousarray(points, dtype=float)
        return np.asarray(distances(self.forms, where.reshape(-1, 3)).reshape(where.shape[:-1]))

    def bounds(self) -> Points:
        """Box around it. [m]"""
        boxes = self.forms[:, BOX]
        return np.array([boxes[:, :3].min(axis=0), boxes[:, 3:].max(axis=0)])


@dataclass(frozen=True, kw_only=True)
class Ball(_Formed):
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

    @cached_property
    def forms(self) -> Points:
        """One ball."""
        box = np.array([self.centre, self.centre]) + np.array([[-self.radius], [self.radius]])
        return row(BALL, box, *self.centre, self.radius)


@dataclass(frozen=True, kw_only=True)
class Roll(_Formed):
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

    @cached_property
    def forms(self) -> Points:
        """One barrel."""
        return _barrel(self.start, self.end, -self.radius, self.radius)


@dataclass(frozen=True, kw_only=True)
class Taper(_Formed):
    """A straight roll that is thicker at one end; a cone where it comes to a point.

    Parameters
    ----------
    start, end : (3,) float
        Middles of the end faces. [m]
    radius_start, radius_end : float
        Radii there; one of them may be zero. [m]

    Examples
    --------
    >>> cone = Taper(start=(0, 0, 0), end=(0, 0, 0.03), radius_start=0.02, radius_end=0.0)
    >>> cone.distance([[0, 0, 0.04], [0, 0, 0.001], [0.03, 0, 0]]).round(4).tolist()
    [0.01, -0.001, 0.01]
    """

    start: Triple
    end: Triple
    radius_start: float
    radius_end: float

    def __post_init__(self) -> None:
        thin, thick = sorted((self.radius_start, self.radius_end))
        _positive("taper", thick, float(np.linalg.norm(np.subtract(self.end, self.start))))
        if thin != 0:
            _positive("taper", thin)

    @cached_property
    def forms(self) -> Points:
        """One taper."""
        axis = np.subtract(self.end, self.start)
        length = float(np.linalg.norm(axis))
        ends = [
            _round_box(self.start, axis / length, self.radius_start),
            _round_box(self.end, axis / length, self.radius_end),
        ]
        box = np.array([np.min(ends, axis=0)[0], np.max(ends, axis=0)[1]])
        return row(TAPER, box, *self.start, *(axis / length), length, self.radius_start, self.radius_end)


@dataclass(frozen=True, kw_only=True)
class PathRoll(_Formed):
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

    @cached_property
    def forms(self) -> Points:
        """A barrel for each stretch and a ball for each bend: inside, near a bend, the distance is too small."""
        return np.concatenate([part.forms for part in self.parts()])


@dataclass(frozen=True, kw_only=True)
class Block(_Formed):
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

    @cached_property
    def forms(self) -> Points:
        """One block."""
        cos, sin = float(np.cos(self.turn)), float(np.sin(self.turn))
        half = np.asarray(self.size) / 2
        reach = np.array([abs(cos) * half[0] + abs(sin) * half[1], abs(sin) * half[0] + abs(cos) * half[1], half[2]])
        box = [self.centre - reach, self.centre + reach]
        return row(BLOCK, box, *self.centre, *half, cos, sin, 0.0, -sin, cos, 0.0, 0.0, 0.0, 1.0)


@dataclass(frozen=True, kw_only=True)
class Disc(_Formed):
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

    @cached_property
    def forms(self) -> Points:
        """One upright barrel."""
        return _upright(self.centre, self.height, -self.radius, self.radius)


@dataclass(frozen=True, kw_only=True)
class Ring(_Formed):
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

    @cached_property
    def forms(self) -> Points:
        """One upright barrel with two walls."""
        return _upright(self.centre, self.height, self.inner, self.outer)


@dataclass(frozen=True, kw_only=True)
class Cut(_Formed):
    """What is left of a solid that a knife went through, straight.

    Parameters
    ----------
    solid : Solid
        What was cut; itself not cut before.
    point : (3,) float
        A point that the knife went through. [m]
    away : (3,) float
        Direction, at right angles to the knife, of the side that is taken away; any length.

    Examples
    --------
    >>> half = Cut(solid=Ball(centre=(0, 0, 0), radius=0.02), point=(0, 0, 0), away=(0, 0, 1))
    >>> half.distance([[0, 0, 0.005], [0, 0, -0.03]]).round(3).tolist()
    [0.005, 0.01]
    """

    solid: Solid
    point: Triple
    away: Triple

    def __post_init__(self) -> None:
        _positive("cut", float(np.linalg.norm(self.away)))

    @cached_property
    def forms(self) -> Points:
        """The solid's forms, each cut by the plane."""
        normal = np.asarray(self.away, dtype=float) / np.linalg.norm(self.away)
        forms = self.solid.forms.copy()
        forms[:, PLANE] = [*normal, float(normal @ self.point)]
        return forms


def _upright(centre: Triple, height: float, inner: float, outer: float) -> Points:
    x, y, z = centre
    return _barrel((x, y, z - height / 2), (x, y, z + height / 2), inner, outer)


def _barrel(start: Triple, end: Triple, inner: float, outer: float) -> Points:
    """What stands between two walls round an axis; without a hole the inner one is the outer one's mirror image."""
    axis = np.subtract(end, start)
    length = float(np.linalg.norm(axis))
    unit = axis / length
    ends = [_round_box(start, unit, outer), _round_box(end, unit, outer)]
    box = np.array([np.min(ends, axis=0)[0], np.max(ends, axis=0)[1]])
    return row(BARREL, box, *start, *unit, length, (inner + outer) / 2, (outer - inner) / 2)


def _round_box(middle: Triple, unit: Points, radius: float) -> Points:
    """Box around a flat round face."""
    reach = radius * np.sqrt(np.maximum(0, 1 - unit**2))
    return np.array([middle - reach, middle + reach])


def _positive(what: str, *lengths: float) -> None:
    for length in lengths:
        if not (np.isfinite(length) and length > 0):
            raise InputError("solid-not-positive", solid=what, length_mm=f"{1e3 * length:g}")


def bounds_of(solids: Sequence[Solid]) -> Points:
    """Box around several solids, (2, 3). [m]"""
    boxes = np.array([solid.bounds() for solid in solids])
    return np.array([boxes[:, 0].min(axis=0), boxes[:, 1].max(axis=0)])
