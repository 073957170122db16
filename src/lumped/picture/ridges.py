"""Level lines and regions on a net of triangles: on each, a field is the plane through its three corners.

A region is traced by its border: each triangle gives the sides of what of it lies at or above the level, in its own
sense of turning; sides that two triangles share run both ways and cancel, and what is left closes to loops.
"""

from collections import defaultdict

import numpy as np
from numpy.typing import NDArray

__all__ = ["level_lines_on", "nice_levels", "regions_on"]

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
_RATIOS = (
    (1, 1.1, 1.2, 1.3, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9), (1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8),
    (1, 1.5, 2, 3, 5, 7), (1, 2, 5), (1, 3), (1,),
)  # fmt: skip
_WIDE = 2.5


def level_lines_on(points: Floats, triangles: Ints, field: Floats, level: float) -> tuple[Floats, ...]:
    """Give the lines along which a field has a level.

    Parameters
    ----------
    points : (n, 2) float
        Corners of the triangles. [any]
    triangles : (t, 3) int
        Corners of each, all turning the same way.
    field : (n,) float
        The field at each point. [any]
    level : float
        The level. [unit of the field]

    Returns
    -------
    tuple of (m, 2) float
        Lines; one that closes repeats its first point. Higher ground lies on the side towards which triangles turn.

    Examples
    --------
    >>> corners = np.array([[0.0, 0.0], [1.0, 0.0], [0.0, 1.0]])
    >>> level_lines_on(corners, np.array([[0, 1, 2]]), np.array([0.0, 1.0, 0.0]), 0.5)[0].tolist()
    [[0.5, 0.5], [0.5, 0.0]]
    """
    sides = _sides(triangles, field, level)
    across = sides[(sides >= len(points)).all(axis=1)]
    return tuple(_placed(chain, points, field, level) for chain in _chains(across))


def regions_on(points: Floats, triangles: Ints, field: Floats, level: float = 0.0) -> tuple[Floats, ...]:
    """Give the borders of where a field is at or above a level.

    Parameters
    ----------
    points, triangles, field, level
        As for `level_lines_on`.

    Returns
    -------
    tuple of (m, 2) float
        Closed loops without the first point repeated; holes turn the other way.

    Examples
    --------
    >>> corners = np.array([[0.0, 0.0], [1.0, 0.0], [0.0, 1.0]])
    >>> len(regions_on(corners, np.array([[0, 1, 2]]), np.array([0.0, 1.0, 1.0]), 0.5)[0])
    4
    """
    sides = _sides(triangles, field, level)
    count = int(sides.max(initial=0)) + 1
    there, back = sides[:, 0] * count + sides[:, 1], sides[:, 1] * count + sides[:, 0]
    border = sides[~np.isin(there, back)]
    return tuple(_placed(chain[:-1], points, field, level) for chain in _chains(border))


def nice_levels(low: float, high: float, *, ratios: bool = False, most: int = 8) -> tuple[float, ...]:
    """Give round levels strictly between two values, as many as there may be.

    Parameters
    ----------
    low, high : float
        The ends; positive where levels are ratios. [any]
    ratios : bool
        Whether steps are ratios rather than differences; where the ends are near each other, both are the same.
    most : int
        How many at most.

    Examples
    --------
    >>> nice_levels(0.73, 1.0), nice_levels(0.1, 3.0, ratios=True)
    ((0.75, 0.8, 0.85, 0.9, 0.95), (0.15, 0.2, 0.3, 0.5, 0.7, 1.0, 1.5, 2.0))
    """
    if not high > low:
        return ()
    if ratios and high > _WIDE * low:
        decades = range(int(np.floor(np.log10(low))) - 1, int(np.ceil(np.log10(high))) + 1)
        for digits in _RATIOS:
            found = [round(d * 10.0**k, 12 - k) for k in decades for d in digits if low < d * 10.0**k < high]
            if len(found) <= most:
                return tuple(found)
        return tuple(found[:: -(-len(found) // most)])
    raw = (high - low) / (most + 1)
    decade = 10.0 ** np.floor(np.log10(raw))
    step = next(each * decade for each in (1, 2, 5, 10, 20) if each * decade >= raw * (1 - 1e-9))
    first = int(np.floor(low / step)) + 1
    return tuple(float(f"{k * step:.9g}") for k in range(first, first + most + 1) if low < k * step < high)


def _sides(triangles: Ints, field: Floats, level: float) -> Ints:
    """Sides of what of each triangle lies at or above the level, (s, 2).

    A corner is its number; a crossing of the side from i to j (i < j) is n + i·n + j.
    """
    n, above = len(field), field >= level
    count = above[triangles].sum(axis=1)
    whole = triangles[count == 3]
    one, two = (_turned(triangles[count == k], above, k == 1) for k in (1, 2))
    parts = [whole[:, [k, (k + 1) % 3]] for k in range(3)]
    a, b, c = one.T
    ab, ca = _crossing(a, b, n), _crossing(c, a, n)
    parts += [np.column_stack(pair) for pair in ((a, ab), (ab, ca), (ca, a))]
    a, b, c = two.T
    bc, ca = _crossing(b, c, n), _crossing(c, a, n)
    parts += [np.column_stack(pair) for pair in ((a, b), (b, bc), (bc, ca), (ca, a))]
    return np.concatenate(parts)


def _turned(triangles: Ints, above: NDArray[np.bool_], one: bool) -> Ints:
    """Turn triangles until the one corner that is above comes first, or the one that is below last."""
    odd = np.argmax(above[triangles] if one else ~above[triangles], axis=1)
    first = odd if one else odd + 1
    return np.take_along_axis(triangles, (first[:, None] + np.arange(3)) % 3, axis=1)


def _crossing(i: Ints, j: Ints, n: int) -> Ints:
    return np.asarray(n + np.minimum(i, j) * n + np.maximum(i, j))


def _chains(sides: Ints) -> list[list[int]]:
    """Join sides end to end; open chains begin where no side ends."""
    after: dict[int, list[int]] = defaultdict(list)
    for start, end in sides.tolist():
        after[start].append(end)
    ends = set(sides[:, 1].tolist())
    chains = []
    for start in [*(key for key in after if key not in ends), *after]:
        while after[start]:
            chain = [start]
            while after.get(chain[-1]):
                chain.append(after[chain[-1]].pop())
                if chain[-1] == start:
                    break
            chains.append(chain)
    return chains


def _placed(chain: list[int], points: Floats, field: Floats, level: float) -> Floats:
    n, nodes = len(points), np.array(chain)
    crossing = nodes >= n
    i, j = np.divmod(np.where(crossing, nodes - n, 0), n)
    rise = field[j] - field[i]
    share = np.clip((level - field[i]) / np.where(rise == 0, 1.0, rise), 0.0, 1.0)[:, None]
    between = points[i] + share * (points[j] - points[i])
    return np.where(crossing[:, None], between, points[np.where(crossing, 0, nodes)])
