"""The modes in which a piece of dough gives its warmth away, and the implicit step that is nothing but a sum of them.

Slab, roll and ball of any size and dough share the modes of their layers, so `dT/dt = -rate · K T - flux` falls apart
into one equation a mode, `dy/dt = -rate · λ y - flux · at_face`: nothing is solved from step to step.
"""

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.dough.lasting.layers import layer_shares

__all__ = ["Modes", "modes_of"]

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Modes:
    """The modes of a piece in which heat or water creeps from layer to layer, with as many modes as layers.

    Parameters
    ----------
    decay : (m,) float
        How fast each dies away where nothing passes the face, over the piece's rate; the first is 0. [1]
    even : (m,) float
        Amplitudes of a piece that is 1 throughout. [1]
    face, middle : (m,) float
        What an amplitude of 1 adds to the outermost layer, and to the middle of the piece. [1]
    gap : float
        From the middle of the outermost layer to the face, over the depth of the piece. [1]
    """

    decay: Array
    even: Array
    face: Array
    middle: Array
    gap: float

    def mean(self, amplitudes: Array) -> Array:
        """Give the mean over the piece of amplitudes (..., m)."""
        return np.asarray(amplitudes @ self.even)


@cache
def modes_of(layers: int, power: int) -> Modes:
    """Give the modes of a piece cut into layers.

    Parameters
    ----------
    layers : int
        How many.
    power : int
        1 for a slab, 2 for a roll, 3 for a ball.

    Returns
    -------
    Modes
        For a piece whose rate is `power · diffusivity / depth²`. [1/s]

    Examples
    --------
    >>> found = modes_of(16, 1)
    >>> float(found.decay[1].round(1))  # π² in a slab of very many layers
    9.8
    """
    shares = layer_shares(layers, power)
    within = np.cumsum(shares)
    middles = (within - shares / 2) ** (1 / power)
    ties = within[:-1] ** (1 - 1 / power) / np.diff(middles)
    body = np.diag(np.append(ties, 0.0) + np.append(0.0, ties)) - np.diag(ties, 1) - np.diag(ties, -1)
    root = np.sqrt(shares)
    decay, vectors = np.linalg.eigh(body / root[:, None] / root)
    layer = vectors / root[:, None]  # content of each layer for an amplitude of 1 of each mode
    ahead = middles[0] ** 2 / (middles[1] ** 2 - middles[0] ** 2)
    return Modes(
        decay=np.maximum(decay, 0.0), even=root @ vectors, face=layer[-1],
        middle=layer[0] + ahead * (layer[0] - layer[1]), gap=float(1 - middles[-1]),
    )  # fmt: skip
