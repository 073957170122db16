"""The triangle of a mix map on the table: where shares stand, grams along its sides, and what its corners are."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.maps import MixMap
from lumped.picture.charts import LETTERS, WIDTH, figure, lettering, line, wrapped
from lumped.picture.labels import Box
from lumped.picture.ridges import nice_levels
from lumped.picture.svg import closed_path, element
from lumped.picture.theme import Theme
from lumped.texts import say

__all__ = ["PAPER", "SIDE", "Ground", "corner_rows", "draw_frame"]

Floats = NDArray[np.float64]
PAPER = 5.5  # mm of cloth round the paper
SIDE = 86.0  # mm
_CORNERS = np.array([[0.0, 0.0], [1.0, 0.0], [0.5, np.sqrt(3) / 2]])  # of a side of 1
_ORDER = (2, 0, 1)  # where the corners stand: the first at the top, the second left, the third right
_TICKS = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """Where on the table the triangle lies."""

    map: MixMap
    left: float
    near: float

    def at(self, shares: ArrayLike) -> Floats:
        """Give places of (..., 3) shares, (..., 2). [mm]"""
        parts = (np.asarray(shares, float) - self.map.least) / self.map.size
        return np.asarray(np.array([self.left, self.near]) + SIDE * parts @ _CORNERS[list(_ORDER)])

    @property
    def corners(self) -> Floats:
        """The corners, (3, 2), in the order of the map. [mm]"""
        return self.at(self.map.least + self.map.size * np.eye(3))

    def holds(self, box: Box) -> bool:
        """Tell whether a box lies inside the triangle."""
        points = np.array([[box.left, box.near], [box.right, box.near], [box.left, box.far], [box.right, box.far]])
        a, b, c = self.corners
        for start, end in ((a, b), (b, c), (c, a)):
            side, to = end - start, points - start
            if np.any(side[0] * to[:, 1] - side[1] * to[:, 0] < 0):
                return False
        return True


def draw_frame(found: MixMap, ground: Ground, theme: Theme) -> Iterator[str]:
    """Draw the border, grams along each side, and what stands at the corners."""
    yield element("path", d=closed_path([ground.corners]), fill="none", stroke=theme.ink, stroke_width=0.6,
                  stroke_linejoin="round", data_frame="mix")  # fmt: skip
    for k, ((x, y), text) in enumerate(zip(ground.corners, _corner_words(found), strict=True)):
        if k == 0:
            yield lettering(text, (x, y + 4.0), theme, anchor="middle", bold=True)
        else:
            for row, part in enumerate(_halved(text)):
                yield lettering(part, (PAPER + 3 if k == 1 else WIDTH - PAPER - 3, y - 16.0 - 5.2 * row), theme,
                                anchor="start" if k == 1 else "end", bold=True)  # fmt: skip
    for k, key in enumerate(found.corners):
        yield from _ticks(found, ground, k, theme)
        yield _along_side(ground, k, say("map-side", name=found.shop[key].name), theme)


def _corner_words(found: MixMap) -> list[str]:
    most = 1e3 * found.total * (found.least + found.size)
    return [say("map-corner", name=found.shop[key].name, grams=f"{grams:.0f}")
            for key, grams in zip(found.corners, most, strict=True)]  # fmt: skip


def _along_side(ground: Ground, k: int, text: str, theme: Theme) -> str:
    """Name what the figures along a side count."""
    start, end = ground.corners[(k - 1) % 3], ground.corners[k]
    along = (end - start) / SIDE
    off = np.array([along[1], -along[0]])
    outward = -off if np.dot(off, ground.corners.mean(axis=0) - start) > 0 else off
    turn = float(np.degrees(np.arctan2(along[1], along[0])))
    turn -= 180.0 * round(turn / 180.0)
    below = 0.7 * LETTERS if outward[1] < 0 else 0.0
    middle = (start + end) / 2 + outward * ((6.4 if k == 2 else 11.0) + below)
    return lettering(text, middle, theme, size=0.92 * LETTERS, anchor="middle", turn=turn)


def _halved(text: str) -> list[str]:
    return wrapped(text, 48.0, 1.08 * LETTERS)


def _ticks(found: MixMap, ground: Ground, k: int, theme: Theme) -> Iterator[str]:
    """Grams of one ingredient, along the side that leads from the corner before it to its own."""
    before = (k - 1) % 3
    most = 1e3 * found.total
    inward = ground.at(found.least + found.size * np.eye(3)[(k + 1) % 3]) - ground.corners[before]
    outward = -inward / np.linalg.norm(inward)
    for grams in nice_levels(most * found.least[k] * 1.0001, most * (found.least[k] + 0.97 * found.size), most=_TICKS):
        share = (grams / most - found.least[k]) / found.size
        parts = np.zeros(3)
        parts[k], parts[before] = share, 1 - share
        at = ground.at(found.least + found.size * parts)
        yield line([at, at + 1.6 * outward], theme.quiet, 0.35)
        opposite = parts.copy()
        opposite[before], opposite[(k + 1) % 3] = 0.0, 1 - share
        yield line([at, ground.at(found.least + found.size * opposite)], theme.ink, 0.15, opacity=0.35)
        anchor = "end" if outward[0] < -0.3 else "start" if outward[0] > 0.3 else "middle"
        place = at + 2.4 * outward - [0, 0.35 * LETTERS]
        yield lettering(figure(grams), place, theme, size=0.86 * LETTERS, anchor=anchor, quiet=True)


def corner_rows(found: MixMap) -> int:
    """Give how many lines the words at the lower corners take."""
    return max(len(_halved(each)) for each in _corner_words(found)[1:])
