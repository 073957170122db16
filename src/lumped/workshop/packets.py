"""Whole packets that cover a need: the cheapest, or those that leave least over.

Prices are known for small packets; a larger one costs `p · m · (m/m₀)^log₂(1 - d)`: each doubling takes the share d off
the price of a kilogram.
"""

from collections.abc import Sequence
from math import ceil

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.reference import handbook

__all__ = ["covering", "packet_price"]

Array = NDArray[np.float64]
_AT_ONCE = 200_000  # combinations that are all tried
_SLACK = 1e-9


def packet_price(size: ArrayLike, smallest: float, per_mass: ArrayLike, cheaper: ArrayLike | None = None) -> Array:
    """Give what a packet costs.

    Parameters
    ----------
    size, smallest : float
        What it holds, and what the smallest packet holds. [kg]
    per_mass : (n,) float
        Price by mass in the smallest packet. [money/kg]
    cheaper : (n,) float, optional
        By how much a kilogram is cheaper in a packet twice as large; the handbook's middle. [1]

    Returns
    -------
    (n,) float
        Money.

    Examples
    --------
    >>> packet_price(2.0, 1.0, 1.5, 0.1).round(3).tolist()
    2.7
    """
    off = handbook().value("workshop", "packets", "cheaper").mean if cheaper is None else cheaper
    doublings = np.log2(np.asarray(size, float) / smallest)
    return np.asarray(np.asarray(per_mass) * size * (1 - np.asarray(off, float)) ** doublings)


def covering(
    need: float, sizes: Sequence[float], costs: Sequence[float], *, little_over: bool = False
) -> tuple[int, ...]:
    """Choose packets that hold at least what is needed.

    Parameters
    ----------
    need : float
        What is needed. [kg]
    sizes, costs : sequence of float
        What each sort of packet holds and costs. [kg], [money]
    little_over : bool
        Whether as little as can be is left over, instead of the least money spent.

    Returns
    -------
    tuple of int
        How many of each; none where nothing is needed. Of equals the one with fewer packets.

    Examples
    --------
    >>> covering(2.3, [1.0, 2.5], [1.2, 2.4])
    (0, 1)
    >>> covering(1.1, [0.5, 1.0, 2.5], [0.9, 1.2, 2.0], little_over=True)
    (1, 1, 0)
    """
    if need <= _SLACK:
        return (0,) * len(sizes)
    room, price = np.array(sizes, float), np.array(costs, float)
    first = int(np.argmin(room) if little_over else np.argmin(price / room))
    others = [number for number in range(len(sizes)) if number != first]
    rows = np.zeros((1, len(sizes)), np.int64)
    for number in others:
        rows = _with_counts(rows, number, _most(need, room, number, first))
    rest = need - rows @ room
    rows[:, first] = np.maximum(np.ceil(rest / room[first] - _SLACK), 0)
    over, paid, count = rows @ room - need, rows @ price, rows.sum(axis=1)
    keys = (paid, over) if little_over else (over, paid)
    best = np.lexsort((count, *(np.round(each, 9) for each in keys)))[0]
    return tuple(rows[best].tolist())


def _with_counts(rows: NDArray[np.int64], number: int, most: int) -> NDArray[np.int64]:
    """All rows with each count of one sort."""
    grown = np.repeat(rows, most + 1, axis=0)
    grown[:, number] = np.tile(np.arange(most + 1), len(rows))
    return grown


def _most(need: float, room: Array, number: int, first: int) -> int:
    """How many of one sort are worth trying: all that could be needed, or what a few of the best sort would replace."""
    limit = ceil(need / room[number])
    few = 4 * ceil(max(room[first] / room[number], 1.0)) + 4
    return int(limit if (limit + 1) ** (len(room) - 1) <= _AT_ONCE else min(limit, few))
