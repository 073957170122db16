"""Outlines of lumps from above, as closed polygons in millimetres."""

from functools import lru_cache

import numpy as np
from contourpy import contour_generator
from numpy.typing import NDArray
from scipy.spatial import ConvexHull

from lumped.sculpt import Sculpture
from lumped.shape import Ball, Block, Disc, PathRoll, Ring, Roll, Solid

__all__ = ["lump_outlines", "outline", "rounded_outline", "softened"]

Loop = NDArray[np.float64]
_ROUND = 72  # corners of a circle: 0.1 % of its radius off at most
_FINE = 14  # steps across the radius of a path, where its outline is traced


def outline(solid: Solid) -> tuple[Loop, ...]:
    """Give the outline of a solid from above.

    Parameters
    ----------
    solid : Solid
        The lump's shape.

    Returns
    -------
    tuple of (n, 2) float
        Closed loops, the outer one first; the last corner is not repeated. [mm]

    Examples
    --------
    >>> roll = Roll(start=(0, 0, 0.01), end=(0.05, 0, 0.01), radius=0.009)
    >>> np.ptp(outline(roll)[0], axis=0).round(6).tolist()
    [50.0, 18.0]
    """
    match solid:
        case Ball() | Disc():
            return (_circle(solid.centre, solid.radius),)
        case Ring():
            return (_circle(solid.centre, solid.outer), _circle(solid.centre, solid.inner)[::-1])
        case Block():
            return (_rectangle(solid),)
        case Roll():
            return (_hull(_end_circles(solid)),)
        case PathRoll():
            return _traced(solid)
    raise TypeError(f"no outline for {type(solid).__name__}")


def rounded_outline(solid: Solid, bend: float) -> tuple[Loop, ...]:
    """Give the outline with its corners rounded, as fingers do.

    Parameters
    ----------
    solid : Solid
        The lump's shape.
    bend : float
        Radius of the rounding, about. [mm]

    Returns
    -------
    tuple of (n, 2) float
        Closed loops. [mm]
    """
    if isinstance(solid, PathRoll):
        return _traced(solid, bend=1e-3 * min(bend, 450 * solid.radius))
    return tuple(softened(loop, bend) for loop in outline(solid))


def lump_outlines(sculpture: Sculpture) -> dict[str, tuple[Loop, ...]]:
    """Give the outline of each lump by name. [mm]

    Examples
    --------
    >>> from pathlib import Path
    >>> from lumped.sculpt import Lump
    >>> ball = Lump(name="ball", dough="salt", shape="ball", solid=Ball(centre=(0, 0, 0.01), radius=0.01))
    >>> table = Sculpture(title="One ball", story="", invented=True, path=Path(), doughs={}, looks={}, lumps=(ball,),
    ...                   parts=())
    >>> lump_outlines(table)["ball"][0].shape
    (72, 2)
    """
    return {lump.name: outline(lump.solid) for lump in sculpture.lumps}


def softened(loop: Loop, radius: float) -> Loop:
    """Round the sharp corners of a loop, as fingers do.

    Parameters
    ----------
    loop : (n, 2) float
        Closed polygon. [mm]
    radius : float
        How far from a corner the rounding begins. [mm]

    Returns
    -------
    (m, 2) float
        The loop with an arc of six points in place of each sharp corner. [mm]

    Examples
    --------
    >>> square = np.array([[0, 0], [10, 0], [10, 10], [0, 10]], dtype=float)
    >>> len(softened(square, 1.0))
    24
    """
    before, after = np.roll(loop, 1, axis=0) - loop, np.roll(loop, -1, axis=0) - loop
    sides = np.linalg.norm(before, axis=1), np.linalg.norm(after, axis=1)
    straightness = -np.sum(before * after, axis=1) / np.maximum(sides[0] * sides[1], 1e-12)
    corners = []
    for k, point in enumerate(loop):
        if straightness[k] > 0.8:
            corners.append(point[None])
            continue
        cut = min(radius, sides[0][k] / 2, sides[1][k] / 2)
        start, end = point + cut * before[k] / sides[0][k], point + cut * after[k] / sides[1][k]
        t = np.linspace(0, 1, 6)[:, None]
        corners.append((1 - t) ** 2 * start + 2 * t * (1 - t) * point + t**2 * end)
    return np.concatenate(corners)


def _circle(centre: tuple[float, float, float], radius: float) -> Loop:
    angle = 2 * np.pi * np.arange(_ROUND) / _ROUND
    circle = np.column_stack([np.cos(angle), np.sin(angle)])
    return np.asarray(1e3 * (np.array(centre[:2]) + radius * circle))


def _rectangle(block: Block) -> Loop:
    cos, sin = np.cos(block.turn), np.sin(block.turn)
    corners = np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) / 2 * np.array(block.size[:2])
    return np.asarray(1e3 * (np.array(block.centre[:2]) + corners @ np.array([[cos, sin], [-sin, cos]])))


def _end_circles(roll: Roll) -> Loop:
    """Points of both end faces, seen from above. [mm]"""
    axis = np.subtract(roll.end, roll.start)
    axis = axis / np.linalg.norm(axis)
    helper = np.array([0.0, 0.0, 1.0]) if abs(axis[2]) < 0.9 else np.array([1.0, 0.0, 0.0])
    first = np.cross(axis, helper)
    first /= np.linalg.norm(first)
    second = np.cross(axis, first)
    angle = 2 * np.pi * np.arange(_ROUND) / _ROUND
    ring = roll.radius * (np.cos(angle)[:, None] * first + np.sin(angle)[:, None] * second)
    return np.asarray(1e3 * np.concatenate([ring + roll.start, ring + roll.end])[:, :2])


def _hull(points: Loop) -> Loop:
    return np.asarray(points[ConvexHull(points).vertices])


@lru_cache(maxsize=64)
def _traced(path: PathRoll, bend: float = 0.0) -> tuple[Loop, ...]:
    """Trace a path from above, the outer loop first; rounded, it is what lies within a bend of a thinner path."""
    thin = _thinned(path, bend) if bend else path
    points = np.array(path.points)
    low, high = path.bounds()[:, :2]
    step = max(path.radius / _FINE, float(np.max(high - low)) / 1200)
    x, y = (np.arange(low[k] - 2.5 * step, high[k] + 3 * step, step) for k in (0, 1))
    grid = np.stack(np.meshgrid(x, y), axis=-1)
    here = np.concatenate([grid, np.full((*grid.shape[:2], 1), points[:, 2].mean())], axis=-1)
    lines = contour_generator(x=x, y=y, z=thin.distance(here)).lines(bend)
    loops = [1e3 * np.asarray(line)[-2::-1] for line in lines]  # the outer one anticlockwise
    return tuple(sorted(loops, key=lambda loop: -float(np.ptp(loop, axis=0).prod())))


def _thinned(path: PathRoll, by: float) -> PathRoll:
    """The path thinner all round, and shorter at both ends. [m]"""
    points = np.array(path.points)
    for end, inner in ((0, 1), (-1, -2)):
        step = points[inner] - points[end]
        length = float(np.linalg.norm(step))
        points[end] += step / length * min(by, 0.45 * length)
    return PathRoll(points=tuple((float(x), float(y), float(z)) for x, y, z in points), radius=path.radius - by)
