"""On which straight piece of an isotherm a face lies, for many cases at once, sought where it lay before.

What is sought is where something that holds at low water content ceases to hold; it is looked for among the few nodes
round a guess, and from one end to the other only if it is not there.
"""

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from lumped.dough.lasting.isotherm import Isotherm

__all__ = ["Segments"]

Array = NDArray[np.float64]
Index = NDArray[np.int64]
_ROUND = 6  # nodes looked at round a guess
_BEFORE = 3  # of them below it
_EACH = 10  # if it is not there, every tenth node is looked at, and the ten between two of these


class Segments:
    """The straight pieces of an isotherm, of so many cases, which lie in one row here.

    Parameters
    ----------
    law : Isotherm
        The isotherm.
    cases : tuple of int
        Shape of the cases.

    Examples
    --------
    >>> law = Isotherm(content=np.linspace(0.0, 1.0, 11), activity=np.linspace(0.0, 1.0, 11))
    >>> pieces = Segments(law, (2,))
    >>> pieces.last_where(lambda activity, content: content < 0.55, near=np.array([0.5, 0.0])).tolist()
    [5, 5]
    """

    def __init__(self, law: Isotherm, cases: tuple[int, ...]) -> None:
        count = len(law.content)
        rows = np.broadcast_to(law.activity, (*cases, count)).reshape(-1, count)
        self._flat, self._content, self._case = rows.T.ravel(), law.content, np.arange(len(rows))
        self._window = np.arange(min(_ROUND, count))[:, None]
        self._between = np.arange(min(_EACH, count))[:, None]
        self._coarse = np.append(np.arange(0, count - len(self._between), _EACH), count - len(self._between))
        self._at_coarse = self.at(self._coarse[:, None] + np.zeros_like(self._case))

    def at(self, nodes: Index) -> tuple[Array, Array]:
        """Give activity and content at nodes (k, cases) of each case. [1]"""
        return self._flat.take(len(self._case) * nodes + self._case), self._content.take(nodes)

    def last_where(self, holds: Callable[[Array, Array], NDArray[np.bool_]], *, near: Array) -> Index:
        """Give the piece at whose end something ceases to hold.

        Parameters
        ----------
        holds : callable
            Of activity and content (k, cases); once it ceases to hold, it never holds at a greater content.
        near : (cases,) float
            Content where it may lie. [1]

        Returns
        -------
        (cases,) int
            The last node where it holds; the first and the last but one at the table's ends.
        """
        size, rest = len(self._window), len(self._content) - len(self._window)
        first = np.minimum(np.maximum(self._content.searchsorted(near) - _BEFORE, 0), rest)
        count = holds(*self.at(first + self._window)).sum(axis=0)
        missed = ((count == 0) & (first > 0)) | ((count == size) & (first < rest))
        if missed.any():
            first = self._coarse.take(np.maximum(holds(*self._at_coarse).sum(axis=0) - 1, 0))
            count = holds(*self.at(first + self._between)).sum(axis=0)
        return np.asarray(np.minimum(np.maximum(first + count - 1, 0), len(self._content) - 2))
