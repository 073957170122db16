"""Where words stand: tried in rings round what they name, off other words, bodies and, where it can be, dough."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.picture.ground import Ground
from lumped.picture.svg import text_width

__all__ = ["Box", "Label", "free_place", "slip_size"]

Floats = NDArray[np.float64]
_DIRECTIONS = 16
_RINGS = 16
_ROUND_WIRES = 10.0  # mm
_BOLD = 1.12  # width of bold letters, beside 1 for others
_AIR = 0.5  # mm between words


@dataclass(frozen=True, slots=True)
class Box:
    """An upright rectangle on the table. [mm]"""

    left: float
    near: float
    right: float
    far: float

    @classmethod
    def round(cls, centre: Floats, width: float, height: float) -> "Box":
        """Give the box of some size round a point."""
        x, y = map(float, centre)
        return cls(x - width / 2, y - height / 2, x + width / 2, y + height / 2)

    @classmethod
    def of(cls, points: Floats) -> "Box":
        """Give the box that holds points."""
        (left, near), (right, far) = points.min(axis=0), points.max(axis=0)
        return cls(float(left), float(near), float(right), float(far))

    def meets(self, other: "Box") -> bool:
        """Tell whether two boxes overlap."""
        return self.left < other.right and other.left < self.right and self.near < other.far and other.near < self.far

    def widened(self, by: float) -> "Box":
        """Give the box, larger on all sides."""
        return Box(self.left - by, self.near - by, self.right + by, self.far + by)

    @property
    def samples(self) -> Floats:
        """Points spread over the box, (15, 2)."""
        x, y = np.meshgrid(np.linspace(self.left, self.right, 5), np.linspace(self.near, self.far, 3))
        return np.column_stack([x.ravel(), y.ravel()])


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """Words in their place.

    Parameters
    ----------
    lines : tuple of str
        What is written.
    box : Box
        What they cover. [mm]
    anchor : (2,) float
        What they name. [mm]
    size : float
        Size of the letters. [mm]
    turn : float
        Angle of the writing, anticlockwise. [deg]
    kind : str
        "part", "lump", "leg" or "gap".
    """

    lines: tuple[str, ...]
    box: Box
    anchor: Floats
    size: float
    kind: str
    turn: float = 0.0


def slip_size(lines: Sequence[str], size: float) -> tuple[float, float]:
    """Give width and height of a slip with lines of words. [mm]"""
    widths = [_BOLD * text_width(lines[0], size), *(text_width(line, size) for line in lines[1:])]
    return max(widths) + 1.2 * size, (1.28 * len(lines) + 0.5) * size


def free_place(anchor: Box, width: float, height: float, taken: Iterable[Box], ground: Ground, *, start: float) -> Box:
    """Find a free place for words.

    Parameters
    ----------
    anchor : Box
        What they name.
    width, height : float
        Their size. [mm]
    taken : iterable of Box
        What they may not cover.
    ground : Ground
        The table.
    start : float
        Least distance from the anchor to the words. [mm]

    Returns
    -------
    Box
        The cheapest place; it meets none of what is taken as long as there is such a place in reach.
    """
    taken = [box.widened(_AIR) for box in taken]
    middle = np.array([anchor.left + anchor.right, anchor.near + anchor.far]) / 2
    half = np.array([anchor.right - anchor.left + width, anchor.far - anchor.near + height]) / 2
    best, least = Box.round(middle, width, height), np.inf
    for ring in range(_RINGS):
        distance = start + 0.6 * ring * height
        for k in range(_DIRECTIONS):
            angle = 2 * np.pi * (k + 0.5 * (ring % 2)) / _DIRECTIONS
            towards = np.array([np.cos(angle), np.sin(angle)])
            box = Box.round(middle + towards / np.abs(towards).max() * (half + distance), width, height)
            price = 0.6 * distance + 5.0 * (ground.mean_price(box.samples) - 1) + 1.5 * min(np.abs(towards))
            price += 0.4 * _beyond(box, ground)
            price += 300.0 * sum(box.meets(other) for other in taken)
            if price < least - 1e-9:
                best, least = box, price
        if least < 0.6 * (distance + 0.6 * height):
            break
    return best


def _beyond(box: Box, ground: Ground) -> float:
    """How far words would widen the picture to the left or right of the dough and the wires round it. [mm]"""
    left, right = ground.low[0] - _ROUND_WIRES, ground.high[0] + _ROUND_WIRES
    return float(max(0.0, left - box.left) + max(0.0, box.right - right))
