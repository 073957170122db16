"""The table as a field of small squares: where dough lies, and what is taken already; and soft ways across it."""

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.ndimage import distance_transform_edt, gaussian_filter1d
from scipy.sparse import csr_array
from scipy.sparse.csgraph import dijkstra

from lumped.shape import Solid

__all__ = ["Ground"]

Floats = NDArray[np.float64]
_SQUARES = 150  # along the longer side of the table
_DOUGH, _NEAR_DOUGH, _TAKEN = 7.0, 1.5, 9.0  # price of a step there, beside 1 for a step on the cloth
_STEPS = ((0, 1), (1, 0), (1, 1), (1, -1))


class Ground:
    """The table round a sculpture.

    Parameters
    ----------
    solids : sequence of Solid
        The lumps.
    margin : float
        Free cloth around them. [mm]
    """

    def __init__(self, solids: "list[Solid]", margin: float) -> None:
        boxes = 1e3 * np.array([solid.bounds()[:, :2] for solid in solids])
        self.low, self.high = boxes[:, 0].min(axis=0), boxes[:, 1].max(axis=0)
        self.origin = self.low - margin
        self.step = max(1.0, float(np.max(self.high - self.low + 2 * margin)) / _SQUARES)
        self.shape = tuple(np.ceil((self.high + margin - self.origin) / self.step).astype(int) + 1)
        self.dough = np.zeros(self.shape, dtype=bool)
        for solid, box in zip(solids, boxes, strict=True):
            self._cover(solid, box)
        apart = distance_transform_edt(~self.dough) * self.step
        self.price: Floats = 1 + _DOUGH * self.dough + _NEAR_DOUGH * (~self.dough & (apart < 3.0))

    def _cover(self, solid: Solid, box: Floats) -> None:
        first, last = self._square(box[0]) - 1, self._square(box[1]) + 2
        first, last = np.maximum(first, 0), np.minimum(last, self.shape)
        i, j = np.meshgrid(np.arange(first[0], last[0]), np.arange(first[1], last[1]), indexing="ij")
        xy = 1e-3 * (self.origin + self.step * np.stack([i, j], axis=-1))
        height = np.full((*i.shape, 1), solid.bounds()[:, 2].mean())
        points = np.concatenate([xy, height], axis=-1).reshape(-1, 3)
        self.dough[first[0] : last[0], first[1] : last[1]] |= (solid.distance(points) < 0).reshape(i.shape)

    def _square(self, points: ArrayLike) -> NDArray[np.int64]:
        places = np.round((np.asarray(points) - self.origin) / self.step).astype(np.int64)
        return np.asarray(np.clip(places, 0, np.array(self.shape) - 1))

    def share_of_dough(self, points: ArrayLike) -> float:
        """Give the share of points, (n, 2) mm, that lie on dough."""
        places = self._square(points)
        return float(self.dough[places[:, 0], places[:, 1]].mean())

    def mean_price(self, points: ArrayLike) -> float:
        """Give the mean price of lying at points, (n, 2) mm: 1 on bare cloth."""
        places = self._square(points)
        return float(self.price[places[:, 0], places[:, 1]].mean())

    def take(self, points: ArrayLike, *, reach: float = 1.5) -> None:
        """Make squares near points, (n, 2) mm, dear, so that later ways keep off."""
        for x, y in self._square(points):
            r = max(1, round(reach / self.step))
            patch = self.price[max(0, x - r) : x + r + 1, max(0, y - r) : y + r + 1]
            np.maximum(patch, _TAKEN, out=patch)

    def way(self, start: ArrayLike, end: ArrayLike, *, then: ArrayLike | None = None) -> Floats:
        """Find a soft way between two points that crosses no more dough than it must.

        Parameters
        ----------
        start, end : (2,) float
            Where from and where to. [mm]
        then : (2,) float, optional
            Where it goes on to, straight. [mm]

        Returns
        -------
        (n, 2) float
            Points of the way. [mm]
        """
        first, last = (int(np.ravel_multi_index(tuple(self._square(each)), self.shape)) for each in (start, end))
        before = dijkstra(self._graph(), directed=False, indices=[first], return_predecessors=True)[1][0]
        steps = [last]
        while steps[-1] != first and before[steps[-1]] >= 0:
            steps.append(int(before[steps[-1]]))
        squares = np.column_stack(np.unravel_index(steps[::-1], self.shape))
        points = np.vstack([np.asarray(start, dtype=float), self.origin + self.step * squares[1:-1], end])
        if then is not None:
            points = np.vstack([points, np.linspace(points[-1], np.asarray(then), 6)[1:]])
        return _smooth(points)

    def _graph(self) -> csr_array:
        number = np.arange(np.prod(self.shape)).reshape(self.shape)
        pairs, costs = [], []
        for di, dj in _STEPS:
            here = number[: self.shape[0] - di, max(0, -dj) : self.shape[1] - max(0, dj)]
            there = number[di:, max(0, dj) : self.shape[1] + min(0, dj)]
            flat = self.price.ravel()
            pairs.append(np.column_stack([here.ravel(), there.ravel()]))
            costs.append(np.hypot(di, dj) * (flat[here.ravel()] + flat[there.ravel()]) / 2)
        joined = np.concatenate(pairs)
        return csr_array((np.concatenate(costs), (joined[:, 0], joined[:, 1])), shape=(number.size, number.size))


def _smooth(points: Floats) -> Floats:
    """Draw a way softly: even steps, and each point a mean of its neighbours; both ends stay."""
    reached = np.r_[0.0, np.cumsum(np.linalg.norm(np.diff(points, axis=0), axis=1))]
    if reached[-1] < 1e-6:
        return points
    count = max(8, int(reached[-1] / 1.5))
    even = np.linspace(0, reached[-1], count)
    xy = np.column_stack([np.interp(even, reached, points[:, k]) for k in (0, 1)])
    pad = count - 1
    padded = np.pad(xy, ((pad, pad), (0, 0)), mode="reflect", reflect_type="odd")
    return np.asarray(gaussian_filter1d(padded, sigma=min(4.0, count / 6), axis=0)[pad:-pad])
