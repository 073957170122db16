"""A smooth curve through the points of a table, which never swings above or below its neighbours."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = ["Monotone"]

Array = NDArray[np.float64]


class Monotone:
    """A piecewise cubic through points that rises where they rise and falls where they fall.

    Parameters
    ----------
    x : (n,) float
        Where the points lie, strictly rising; at least two. [any]
    y : (n,) float
        The points. [any]

    Notes
    -----
    Slopes at the points are weighted harmonic means of the slopes beside them, 0 at a peak; at the ends a parabola
    through three points, kept from swinging. Beyond the ends the curve stays at the end's value: whoever goes on from
    there says how.

    References
    ----------
    F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5, 300 (1984).

    Examples
    --------
    >>> curve = Monotone([0.0, 1.0, 2.0], [0.0, 1.0, 1.0])
    >>> curve([-1.0, 1.0, 1.5, 9.0]).tolist()
    [0.0, 1.0, 1.0, 1.0]
    """

    __slots__ = ("_cubic", "_slope", "_square", "x", "y")

    def __init__(self, x: ArrayLike, y: ArrayLike) -> None:
        self.x, self.y = np.asarray(x, float), np.asarray(y, float)
        if self.x.ndim != 1 or self.x.shape != self.y.shape or len(self.x) < 2 or np.any(np.diff(self.x) <= 0):
            raise ValueError("a curve needs two points at least, with x strictly rising")
        width, rise = np.diff(self.x), np.diff(self.y) / np.diff(self.x)
        slope = _slopes(width, rise)
        self._slope = slope[:-1]
        self._square = (3 * rise - 2 * slope[:-1] - slope[1:]) / width
        self._cubic = (slope[:-1] + slope[1:] - 2 * rise) / width**2

    def __call__(self, x: ArrayLike) -> Array:
        """Give the curve at (...) places. [unit of y]"""
        inside = np.minimum(np.maximum(x, self.x[0]), self.x[-1])
        k = np.minimum(self.x.searchsorted(inside, "right") - 1, len(self.x) - 2)
        step = inside - self.x[k]
        return np.asarray(self.y[k] + step * (self._slope[k] + step * (self._square[k] + step * self._cubic[k])))


def _slopes(width: Array, rise: Array) -> Array:
    if len(rise) == 1:
        return np.repeat(rise, 2)
    left, right = 2 * width[1:] + width[:-1], width[1:] + 2 * width[:-1]
    same_way = rise[:-1] * rise[1:] > 0
    safe = np.where(same_way, rise[:-1], 1.0), np.where(same_way, rise[1:], 1.0)
    inner = np.where(same_way, (left + right) / (left / safe[0] + right / safe[1]), 0.0)
    first = _end_slope(width[0], width[1], rise[0], rise[1])
    last = _end_slope(width[-1], width[-2], rise[-1], rise[-2])
    return np.concatenate([[first], inner, [last]])


def _end_slope(width: float, next_width: float, rise: float, next_rise: float) -> float:
    slope = ((2 * width + next_width) * rise - width * next_rise) / (width + next_width)
    if slope * rise <= 0:
        return 0.0
    if rise * next_rise <= 0 and abs(slope) > 3 * abs(rise):
        return 3 * rise
    return float(slope)
