"""How far apart two solids are, or how deep they overlap.

The point x that makes max(d_a(x), d_b(x)) least lies halfway between the surfaces; twice that least value is the gap
when it is positive (for distances d that are exact outside) and minus the depth of overlap when it is negative. For
convex solids the function is convex, so the nearest place is the only one; a roll along a path is taken apart into
convex parts, and others are searched from several starts.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize

from lumped.shape.solids import Solid

__all__ = ["Gap", "gap_between"]

Floats = NDArray[np.float64]
_GRID = 9  # points along each edge of the first search box
_STARTS = 3
_PULL = 1e-4  # slope with which a tie (two parallel faces) is drawn to the middle of what faces each other
_FINEST = 1e-6  # m


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """The place where two solids are nearest.

    Parameters
    ----------
    distance : float
        Gap between the surfaces; negative: how deep they overlap. [m]
    point : (3,) float
        The middle of it. [m]
    point_a, point_b : (3,) float
        The nearest points of the two surfaces. [m]
    """

    distance: float
    point: Floats
    point_a: Floats
    point_b: Floats


def gap_between(a: Solid, b: Solid) -> Gap:
    """Find where two solids are nearest.

    Parameters
    ----------
    a, b : Solid
        The solids.

    Returns
    -------
    Gap
        Distance and place, to about 0.01 mm.

    Examples
    --------
    >>> from lumped.shape.solids import Ball
    >>> gap = gap_between(Ball(centre=(0, 0, 0), radius=0.01), Ball(centre=(0.03, 0, 0), radius=0.01))
    >>> round(gap.distance, 5), gap.point.round(4).tolist()
    (0.01, [0.015, 0.0, 0.0])
    """
    pairs = sorted(
        ((_box_gap(one, other), k, one, other) for k, (one, other) in enumerate(_part_pairs(a, b))),
        key=lambda each: each[:2],
    )
    best, where = np.inf, np.zeros(3)
    for least, _, one, other in pairs:
        if least >= max(best, 0.0) and np.isfinite(best):
            break
        value, point = _nearest(one, other)
        if value < best:
            best, where = value, point
    return Gap(distance=best, point=where, point_a=_foot(a, where), point_b=_foot(b, where))


def _part_pairs(a: Solid, b: Solid) -> list[tuple[Solid, Solid]]:
    return [(one, other) for one in _parts(a) for other in _parts(b)]


def _parts(solid: Solid) -> list[Solid]:
    return list(solid.parts()) if hasattr(solid, "parts") else [solid]


def _box_gap(a: Solid, b: Solid) -> float:
    """Distance of the boxes around two solids: never more than that of the solids. [m]"""
    (low_a, high_a), (low_b, high_b) = a.bounds(), b.bounds()
    return float(np.linalg.norm(np.maximum(0, np.maximum(low_a - high_b, low_b - high_a))))


def _nearest(a: Solid, b: Solid) -> tuple[float, Floats]:
    """Gap of two solids and its middle, from a few starts."""
    low, high = _between(a, b)
    centre, size = (low + high) / 2, float(np.linalg.norm(high - low)) + 1e-9

    def worst(points: Floats) -> Floats:
        pull = _PULL * np.sum((points - centre) ** 2, axis=-1) / size
        return np.asarray(np.maximum(a.distance(points), b.distance(points)) + pull)

    axes = [np.linspace(low[k], high[k], _GRID) for k in range(3)]
    grid = np.stack(np.meshgrid(*axes, indexing="ij"), axis=-1).reshape(-1, 3)
    order = np.argsort(worst(grid))
    starts = grid[order[:: max(1, len(order) // 40)][:_STARTS]]
    found = [_slid_down(a, b, start, size) for start in starts]
    point = min([*found, grid[order[0]]], key=lambda each: float(worst(each[None])[0]))
    point = _polished(worst, point, size / _GRID)
    return 2 * float(np.maximum(a.distance(point[None]), b.distance(point[None]))[0]), point


def _between(a: Solid, b: Solid) -> tuple[Floats, Floats]:
    """Box in which the middle of the gap lies: along each axis where both overlap, else what is between them."""
    (low_a, high_a), (low_b, high_b) = a.bounds(), b.bounds()
    low, high = np.maximum(low_a, low_b), np.minimum(high_a, high_b)
    return np.minimum(low, high), np.maximum(low, high)


def _slid_down(a: Solid, b: Solid, start: Floats, size: float) -> Floats:
    """Minimise t subject to d_a ≤ t and d_b ≤ t, in units of the box."""

    def slack(x: Floats) -> Floats:
        point = (start + size * x[:3])[None]
        return np.array([x[3] - a.distance(point)[0] / size, x[3] - b.distance(point)[0] / size])

    def slopes(x: Floats) -> Floats:
        point = start + size * x[:3]
        return np.array([[*-_gradient(a, point), 1.0], [*-_gradient(b, point), 1.0]])

    first = np.append(np.zeros(3), -float(np.min(slack(np.zeros(4)))))
    result: Any = minimize(  # type: ignore[call-overload]
        lambda x: x[3] + _PULL * np.sum(x[:3] ** 2),
        first,
        jac=lambda x: np.append(2 * _PULL * x[:3], 1.0),
        constraints={"type": "ineq", "fun": slack, "jac": slopes},
        method="SLSQP",
        options={"maxiter": 60, "ftol": 1e-9},
    )
    return np.asarray(start + size * result.x[:3])


def _polished(worst: Callable[[Floats], Floats], point: Floats, step: float) -> Floats:
    """Walk on ever finer stencils, so that an edge of a solid can't hold the search up."""
    stencil = np.stack(np.meshgrid(*[[-1.0, -0.5, 0.0, 0.5, 1.0]] * 3, indexing="ij"), axis=-1).reshape(-1, 3)
    while step > _FINEST:
        around = point + step * stencil
        values = worst(around)
        best = int(np.argmin(values))
        still = bool(values[best] >= values[62])  # 62: the stencil's middle
        point = point if still else around[best]
        step *= 0.4 if still else 1.0
    return point


def _gradient(solid: Solid, point: Floats) -> Floats:
    step = 1e-6
    ends = point + step * np.concatenate([np.eye(3), -np.eye(3)])
    values = solid.distance(ends)
    return np.asarray((values[:3] - values[3:]) / (2 * step))


def _foot(solid: Solid, point: Floats) -> Floats:
    """Nearest point of a surface."""
    return np.asarray(point - solid.distance(point[None])[0] * _gradient(solid, point))
