"""How recipes move: all trials round one, its masses up or down by a step, some at a time."""

from functools import cache
from itertools import combinations, product

import numpy as np
from numpy.typing import NDArray

__all__ = ["trials_round"]

Array = NDArray[np.float64]
_FURTHER = np.array([1.0, 3.0, 8.0])


def trials_round(here: Array, begun: Array, old: Array, step: float, *, together: int) -> Array:
    """Recipes round one: masses times a step, further along the way they came, back as before, and none. (I, trials)"""
    active = here.nonzero()[0]
    now, was = here[active], begun[active]
    tried = now[:, None] * _factors(len(active), together, step)
    if (now != was).any():
        came = np.log(now / np.maximum(was, 1e-12))[:, None] * _FURTHER
        tried = np.concatenate([tried, now[:, None] * np.exp(np.clip(came, -1.0, 1.0))], axis=1)
    before = old[active]
    back = ((before > 0) & (now != before)).nonzero()[0]
    new = (before == 0).nonzero()[0] if together > 1 else back[:0]
    moved = tried.shape[1]
    all_tried = np.repeat(here[:, None], moved + len(back) + len(new), axis=1)
    all_tried[active, :moved] = tried
    all_tried[active[back], moved + np.arange(len(back))] = before[back]
    all_tried[active[new], moved + len(back) + np.arange(len(new))] = 0.0
    return all_tried


@cache
def _factors(count: int, together: int, step: float) -> Array:
    """By how much masses grow or shrink in each trial. (count, ways) [1]"""
    return np.exp(np.clip(step * _moves(count, together), -1.0, 1.0))


@cache
def _moves(count: int, together: int) -> Array:
    """All ways to move up to so many of some masses together, each up or down. (count, ways)"""
    one = np.eye(count)
    moves = [
        np.sum([sign * one[i] for i, sign in zip(chosen, signs, strict=True)], axis=0)
        for size in range(1, together + 1)
        for chosen in combinations(range(count), size)
        for signs in product((1, -1), repeat=size)
    ]
    return np.stack(moves, axis=1) if moves else np.zeros((0, 0))
