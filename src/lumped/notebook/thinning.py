"""Fewer points for a chart, and no extreme lost."""

import numpy as np
from numpy.typing import NDArray

__all__ = ["thinned"]


def thinned(at: NDArray[np.int64], value: NDArray[np.float64], most: int) -> NDArray[np.intp]:
    """Choose points so that a line through them has all extremes of the line through all.

    Time is cut into equal spans; of each the first, last, lowest and highest point stay.

    Parameters
    ----------
    at : (n,) int64
        Moments, in any order. [µs]
    value : (n,) float64
        Values; not a number where there is none: such a point stays if it is the first or last of its span.
    most : int
        Give no more than this many, at least 4.

    Returns
    -------
    (m,) int
        Indices of the points that stay, in ascending order, m ≤ max(most, 4).

    Examples
    --------
    >>> value = np.zeros(1000)
    >>> value[617] = 9.0
    >>> chosen = thinned(np.arange(1000), value, 40)
    >>> len(chosen) <= 40, bool(617 in chosen)
    (True, True)
    """
    if len(at) <= most or len(at) <= 4:
        return np.arange(len(at))
    spans = max(1, most // 4)
    width = max(1, -(-(int(at.max()) - int(at.min()) + 1) // spans))
    span = (at - at.min()) // width
    order = np.lexsort((np.arange(len(at)), span))
    starts = np.flatnonzero(np.r_[True, np.diff(span[order]) > 0])
    ends = np.r_[starts[1:], len(at)] - 1
    chosen = [order[starts], order[ends]]
    low = np.lexsort((np.where(np.isnan(value), np.inf, value), span))
    high = np.lexsort((np.where(np.isnan(value), np.inf, -value), span))
    return np.unique(np.concatenate([*chosen, low[starts], high[starts]]))
