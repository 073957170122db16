"""The mix map: a triangle of three ingredients, shaded in bands of one property, with its value along each ridge.

What is not worth mixing lies under a veil, hatched by the reason; shade, figures and hatching say the same thing, so
that it reads without colour.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.maps import REASONS, MixMap
from lumped.picture.charts import (
    LETTERS,
    WIDTH,
    figure,
    hatch,
    lettering,
    line,
    on_cloth,
    sheet,
    slip,
    slip_box,
    wrapped,
)  # fmt: skip
from lumped.picture.labels import Box
from lumped.picture.ridges import level_lines_on, nice_levels, regions_on
from lumped.picture.shades import shades
from lumped.picture.svg import closed_path, element
from lumped.picture.theme import THEMES, Theme, ThemeName
from lumped.texts import say

__all__ = ["Ridge", "levels_of", "map_svg", "ridges_of"]

Floats = NDArray[np.float64]
_PAPER = 5.5  # mm of cloth round the paper
_SIDE = 86.0  # mm
_CORNERS = np.array([[0.0, 0.0], [1.0, 0.0], [0.5, np.sqrt(3) / 2]])  # of a side of 1
_ORDER = (2, 0, 1)  # where the corners stand: the first at the top, the second left, the third right
_LINES = 8
_TICKS = 4
_CRUST, _CREAM = "#3a2418", "#fff3e0"  # lines on light shades, and on dark ones
_DARK = 0.6  # share of the levels from which shades are dark


@dataclass(frozen=True, slots=True, kw_only=True)
class Ridge:
    """A level line of a map.

    Parameters
    ----------
    level : float
        Its value. [unit of the property]
    shares : (m, 3) float
        Shares of the corners along it. [1]
    """

    level: float
    shares: Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class _Ground:
    """Where on the table the triangle lies."""

    map: MixMap
    left: float
    near: float

    def at(self, shares: ArrayLike) -> Floats:
        """Give places of (..., 3) shares, (..., 2). [mm]"""
        parts = (np.asarray(shares, float) - self.map.least) / self.map.size
        return np.asarray(np.array([self.left, self.near]) + _SIDE * parts @ _CORNERS[list(_ORDER)])

    @property
    def corners(self) -> Floats:
        """The corners, (3, 2), in the order of the map. [mm]"""
        return self.at(self.map.least + self.map.size * np.eye(3))


def levels_of(found: MixMap) -> tuple[float, ...]:
    """Give round levels for a map: those among the doughs worth mixing, if they differ. [unit of the property]"""
    wet = found.values[found.reasons["no-free-water"] <= 0]
    good = found.values[found.feasible]
    every = wet if len(wet) else found.values
    values = good if len(good) and np.ptp(_field(found, good)) > 0.1 * np.ptp(_field(found, every)) else every
    low, high, factor = float(values.min()), float(values.max()), found.shown.factor
    levels = nice_levels(factor * low, factor * high, ratios=found.shown.steps == "ratio" and low > 0, most=_LINES)
    return tuple(each / factor for each in levels)


def ridges_of(found: MixMap, levels: Sequence[float] | None = None) -> tuple[Ridge, ...]:
    """Give the level lines of a map.

    Parameters
    ----------
    found : MixMap
        The map.
    levels : sequence of float, optional
        Which; round ones by default. [unit of the property]
    """
    field = _field(found, found.values)
    corners = found.shares[:, :2]  # the third share follows from the others
    ridges = []
    for level in levels_of(found) if levels is None else levels:
        for points in level_lines_on(corners, found.triangles, field, float(_field(found, np.array(level)))):
            ridges.append(Ridge(level=level, shares=np.column_stack([points, 1 - points.sum(axis=1)])))
    return tuple(ridges)


def map_svg(found: MixMap, *, theme: ThemeName = "light", scale: float = 6.0, prefix: str = "") -> str:
    """Draw a mix map.

    Parameters
    ----------
    found : MixMap
        The map.
    theme : {"light", "dark", "print"}
        Colours.
    scale : float
        Pixels of the picture's own size for each millimetre. [1/mm]
    prefix : str
        Put before each id, so that several pictures can stand on one page.

    Returns
    -------
    str
        An SVG document, 124 mm wide. Bands carry `data-from`, ridges `data-level`, hatched parts `data-reason`.
    """
    looks = THEMES[theme]
    reasons = _exclusive(found)
    key = [(reason, wrapped(found.words(reason), WIDTH - 2 * _PAPER - 24)) for reason in REASONS if reason in reasons]
    foot = sum(1.35 * LETTERS * len(lines) + 1.6 for _, lines in key)
    rows = max(len(_halved(each)) for each in _corner_words(found)[1:])
    near = _PAPER + foot + 22.8 + 5.2 * rows
    ground = _Ground(map=found, left=(WIDTH - _SIDE) / 2, near=near)
    title = _title(found)
    height = near + _SIDE * 0.866 + 14.0 + 1.8 * LETTERS * len(title) + _PAPER
    layers = [
        sheet(Box(_PAPER, _PAPER, WIDTH - _PAPER, height - _PAPER), looks),
        *(lettering(each, (_PAPER + 4, height - _PAPER - 7.2 - 1.8 * LETTERS * k), looks, size=1.2 * LETTERS, bold=True)
          for k, each in enumerate(title)),
        *_bands(found, ground), *_lines(found, ground), *_hatched(found, reasons, ground, looks, prefix),
        *_frame(found, ground, looks), *_figures(found, ground, looks), *_key(key, _PAPER + foot + 3.0, looks, prefix),
    ]  # fmt: skip
    return on_cloth(layers, height=height, title=_spoken(found), theme=looks, scale=scale, prefix=prefix,
                    patterns=[hatch(reason, looks, prefix) for reason in reasons])  # fmt: skip


def _field(found: MixMap, values: Floats) -> Floats:
    """What goes evenly: the logarithm where steps are ratios."""
    return np.log(np.maximum(values, 1e-12)) if found.shown.steps == "ratio" else values


def _exclusive(found: MixMap) -> dict[str, Floats]:
    """Reasons by gravity, each only where no graver one holds; those that hold nowhere left out."""
    kept: dict[str, Floats] = {}
    graver = np.full(len(found.values), -np.inf)
    for reason in REASONS:
        if reason in found.reasons:
            margin = found.reasons[reason] / (np.abs(found.reasons[reason]).max() or 1.0)
            here = np.minimum(margin, -graver)
            if np.any(here > 0):
                kept[reason] = here
            graver = np.maximum(graver, margin)
    return kept


def _bands(found: MixMap, ground: _Ground) -> Iterator[str]:
    """The triangle in its lightest shade, and on it, level by level, what lies higher."""
    levels = levels_of(found)
    places, field = ground.at(found.shares), _field(found, found.values)
    colours = shades(len(levels) + 1)
    yield element("path", d=closed_path([ground.corners]), fill=colours[0])
    for level, colour in zip(levels, colours[1:], strict=True):
        loops = regions_on(places, found.triangles, field, float(_field(found, np.array(level))))
        if loops:
            yield element("path", d=closed_path(loops), fill=colour, fill_rule="evenodd", data_from=level)


def _hatched(
    found: MixMap, reasons: dict[str, Floats], ground: _Ground, theme: Theme, prefix: str
) -> Iterator[str]:  # fmt: skip
    places = ground.at(found.shares)
    for reason, margin in reasons.items():
        loops = regions_on(places, found.triangles, margin, 1e-9)
        path = closed_path(loops) if loops else ""
        yield element("path", d=path, fill=theme.slip, opacity=0.55, fill_rule="evenodd")
        yield element("path", d=path, fill=f"url(#{prefix}hatch-{reason})", fill_rule="evenodd", stroke=theme.ink,
                      stroke_width=0.25, data_reason=reason)  # fmt: skip


def _lines(found: MixMap, ground: _Ground) -> Iterator[str]:
    levels = levels_of(found)
    for ridge in ridges_of(found):
        dark = levels.index(ridge.level) >= _DARK * len(levels)
        yield line(ground.at(ridge.shares), _CREAM if dark else _CRUST, 0.45, data_level=ridge.level)


def _frame(found: MixMap, ground: _Ground, theme: Theme) -> Iterator[str]:
    """The border, grams along each side, and what stands at the corners."""
    yield element("path", d=closed_path([ground.corners]), fill="none", stroke=theme.ink, stroke_width=0.6,
                  stroke_linejoin="round")  # fmt: skip
    for k, ((x, y), text) in enumerate(zip(ground.corners, _corner_words(found), strict=True)):
        if k == 0:
            yield lettering(text, (x, y + 4.0), theme, anchor="middle", bold=True)
        else:
            for row, part in enumerate(_halved(text)):
                yield lettering(part, (_PAPER + 3 if k == 1 else WIDTH - _PAPER - 3, y - 16.0 - 5.2 * row), theme,
                                anchor="start" if k == 1 else "end", bold=True)  # fmt: skip
    for k, key in enumerate(found.corners):
        yield from _ticks(found, ground, k, theme)
        yield _along_side(ground, k, say("map-side", name=found.shop[key].name), theme)


def _corner_words(found: MixMap) -> list[str]:
    most = 1e3 * found.total * (found.least + found.size)
    return [say("map-corner", name=found.shop[key].name, grams=f"{grams:.0f}")
            for key, grams in zip(found.corners, most, strict=True)]  # fmt: skip


def _along_side(ground: _Ground, k: int, text: str, theme: Theme) -> str:
    """Name what the figures along a side count."""
    start, end = ground.corners[(k - 1) % 3], ground.corners[k]
    along = (end - start) / _SIDE
    off = np.array([along[1], -along[0]])
    outward = -off if np.dot(off, ground.corners.mean(axis=0) - start) > 0 else off
    turn = float(np.degrees(np.arctan2(along[1], along[0])))
    turn -= 180.0 * round(turn / 180.0)
    below = 0.7 * LETTERS if outward[1] < 0 else 0.0
    middle = (start + end) / 2 + outward * ((6.4 if k == 2 else 11.0) + below)
    return lettering(text, middle, theme, size=0.92 * LETTERS, anchor="middle", turn=turn)


def _halved(text: str) -> list[str]:
    return wrapped(text, 48.0, 1.08 * LETTERS)


def _ticks(found: MixMap, ground: _Ground, k: int, theme: Theme) -> Iterator[str]:
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


def _figures(found: MixMap, ground: _Ground, theme: Theme) -> Iterator[str]:
    """The recipe's own point and figure, then a slip on each ridge, where there is room."""
    here = ground.at(found.point)
    own = say("map-recipe", value=found.shown.text(found.here, found.money))
    box = slip_box(own, (0.0, 0.0))
    half = box.right
    place = np.array([np.clip(here[0], _PAPER + half + 2, WIDTH - _PAPER - half - 2), here[1] + 6.5])
    taken = [slip_box(own, place), Box.round(here, 5.0, 5.0)]
    for ridge in sorted(ridges_of(found), key=lambda each: -len(each.shares)):
        text = figure(ridge.level * found.shown.factor)
        spot = _free_spot(ground.at(ridge.shares), text, taken, ground)
        if spot is not None:
            taken.append(slip_box(text, spot, 0.86 * LETTERS).widened(0.8))
            yield slip(text, spot, theme, size=0.86 * LETTERS)
    yield element("circle", cx=here[0], cy=-here[1], r=2.0, fill=theme.slip, stroke=theme.red, stroke_width=0.9)
    yield element("circle", cx=here[0], cy=-here[1], r=0.6, fill=theme.red)
    yield slip(own, place, theme)


def _free_spot(points: Floats, text: str, taken: Sequence[Box], ground: _Ground) -> Floats | None:
    """Give the point of a line, the nearest to its middle, where a slip meets no other and stays inside. [mm]"""
    if len(points) < 4:
        return None
    order = np.argsort(np.abs(np.arange(len(points)) - len(points) / 2))
    for k in order:
        box = slip_box(text, points[k], 0.86 * LETTERS)
        inside = _within(ground, np.array([[box.left, box.near], [box.right, box.near], [box.left, box.far],
                                           [box.right, box.far]]))  # fmt: skip
        if inside and not any(box.meets(other) for other in taken):
            return np.asarray(points[k])
    return None


def _within(ground: _Ground, points: Floats) -> bool:
    a, b, c = ground.corners
    for start, end in ((a, b), (b, c), (c, a)):
        side, to = end - start, points - start
        if np.any(side[0] * to[:, 1] - side[1] * to[:, 0] < 0):
            return False
    return True


def _key(key: Sequence[tuple[str, list[str]]], top: float, theme: Theme, prefix: str) -> Iterator[str]:
    """What each hatching means."""
    y = top
    for reason, lines in key:
        yield element("rect", x=_PAPER + 4, y=-y - 0.2, width=11, height=1.2 * LETTERS, rx=0.6,
                      fill=f"url(#{prefix}hatch-{reason})", stroke=theme.quiet, stroke_width=0.25)  # fmt: skip
        for each in lines:
            yield lettering(each, (_PAPER + 18, y - LETTERS), theme)
            y -= 1.35 * LETTERS
        y -= 1.6


def _title(found: MixMap) -> list[str]:
    unit = found.shown.shown.replace("money", found.money)
    words = say("map-title-unit" if unit else "map-title", title=found.recipe.title, shown=found.shown.words, unit=unit)
    return wrapped(words, WIDTH - 2 * _PAPER - 8, 1.26 * LETTERS, bold=True)


def _spoken(found: MixMap) -> str:
    names = ", ".join(found.shop[key].name for key in found.corners)
    share = f"{100 * float(np.mean(found.feasible)):.0f}"
    return say("map-spoken", title=found.recipe.title, shown=found.shown.words, names=names,
               value=found.shown.text(found.here, found.money), share=share)  # fmt: skip
