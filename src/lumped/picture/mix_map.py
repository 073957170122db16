"""The mix map: a triangle of three ingredients, shaded in bands of one property, with its value along each ridge.

What is not worth mixing lies under a veil, hatched by the reason; shade, figures and hatching say the same thing, so
that it reads without colour.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

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
from lumped.picture.triangle import PAPER, SIDE, Ground, corner_rows, draw_frame
from lumped.texts import say

__all__ = ["Ridge", "levels_of", "map_svg", "ridges_of"]

Floats = NDArray[np.float64]
_OWN = 7.6  # mm; the line with the recipe's own figure
_LINES = 8
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


def levels_of(found: MixMap) -> tuple[float, ...]:
    """Give round levels for a map: those among the doughs worth mixing, if they differ. [unit of the property]"""
    shown = found.shown.drawn(found.values)
    wet, good = shown[found.reasons["no-free-water"] <= 0], shown[found.feasible]
    every = wet if len(wet) else shown
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
    field = _field(found, found.shown.drawn(found.values))
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
    key = [(reason, wrapped(found.words(reason), WIDTH - 2 * PAPER - 24)) for reason in REASONS if reason in reasons]
    foot = sum(1.35 * LETTERS * len(lines) + 1.6 for _, lines in key) + _OWN
    near = PAPER + foot + 22.8 + 5.2 * corner_rows(found)
    ground = Ground(map=found, left=(WIDTH - SIDE) / 2, near=near)
    title = _title(found)
    height = near + SIDE * 0.866 + 14.0 + 1.8 * LETTERS * len(title) + PAPER
    layers = [
        sheet(Box(PAPER, PAPER, WIDTH - PAPER, height - PAPER), looks),
        *(lettering(each, (PAPER + 4, height - PAPER - 7.2 - 1.8 * LETTERS * k), looks, size=1.2 * LETTERS, bold=True)
          for k, each in enumerate(title)),
        *_bands(found, ground), *_lines(found, ground), *_hatched(found, reasons, ground, looks, prefix),
        *draw_frame(found, ground, looks), *_figures(found, ground, looks), *_own(found, PAPER + foot + 3.0, looks),
        *_key(key, PAPER + foot + 3.0 - _OWN, looks, prefix),
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


def _bands(found: MixMap, ground: Ground) -> Iterator[str]:
    """The triangle in its lightest shade, and on it, level by level, what lies higher."""
    levels = levels_of(found)
    places, field = ground.at(found.shares), _field(found, found.shown.drawn(found.values))
    colours = shades(len(levels) + 1)
    yield element("path", d=closed_path([ground.corners]), fill=colours[0])
    for level, colour in zip(levels, colours[1:], strict=True):
        loops = regions_on(places, found.triangles, field, float(_field(found, np.array(level))))
        if loops:
            yield element("path", d=closed_path(loops), fill=colour, fill_rule="evenodd", data_from=level)


def _hatched(
    found: MixMap, reasons: dict[str, Floats], ground: Ground, theme: Theme, prefix: str
) -> Iterator[str]:  # fmt: skip
    places = ground.at(found.shares)
    for reason, margin in reasons.items():
        loops = regions_on(places, found.triangles, margin, 1e-9)
        path = closed_path(loops) if loops else ""
        yield element("path", d=path, fill=theme.slip, opacity=0.55, fill_rule="evenodd")
        yield element("path", d=path, fill=f"url(#{prefix}hatch-{reason})", fill_rule="evenodd", stroke=theme.ink,
                      stroke_width=0.25, data_reason=reason)  # fmt: skip


def _lines(found: MixMap, ground: Ground) -> Iterator[str]:
    levels = levels_of(found)
    for ridge in ridges_of(found):
        dark = levels.index(ridge.level) >= _DARK * len(levels)
        yield line(ground.at(ridge.shares), _CREAM if dark else _CRUST, 0.45, data_level=ridge.level)


def _figures(found: MixMap, ground: Ground, theme: Theme) -> Iterator[str]:
    """A slip with its figure on each ridge where there is room, and the recipe's own point."""
    here = ground.at(found.point)
    taken = [Box.round(here, 5.0, 5.0)]
    for ridge in sorted(ridges_of(found), key=lambda each: -len(each.shares)):
        text = figure(ridge.level * found.shown.factor)
        spot = _free_spot(ground.at(ridge.shares), text, taken, ground)
        if spot is not None:
            taken.append(slip_box(text, spot, 0.86 * LETTERS).widened(0.8))
            yield slip(text, spot, theme, size=0.86 * LETTERS)
    yield _mark(here, theme)


def _mark(at: Floats, theme: Theme) -> str:
    ring = element("circle", cx=float(at[0]), cy=-float(at[1]), r=2.0, fill=theme.slip, stroke=theme.red,
                   stroke_width=0.9)  # fmt: skip
    return ring + element("circle", cx=float(at[0]), cy=-float(at[1]), r=0.6, fill=theme.red)


def _own(found: MixMap, top: float, theme: Theme) -> Iterator[str]:
    """The recipe's own figure, beside its mark."""
    yield _mark(np.array([PAPER + 9.5, top - 0.42 * LETTERS]), theme)
    text = say("map-recipe", value=found.shown.text(found.here, found.money))
    yield lettering(text, (PAPER + 18, top - LETTERS), theme, bold=True)


def _free_spot(points: Floats, text: str, taken: Sequence[Box], ground: Ground) -> Floats | None:
    """Give the point of a line, the nearest to its middle, where a slip meets no other and stays inside. [mm]"""
    if len(points) < 4:
        return None
    order = np.argsort(np.abs(np.arange(len(points)) - len(points) / 2))
    for k in order:
        box = slip_box(text, points[k], 0.86 * LETTERS)
        if ground.holds(box) and not any(box.meets(other) for other in taken):
            return np.asarray(points[k])
    return None


def _key(key: Sequence[tuple[str, list[str]]], top: float, theme: Theme, prefix: str) -> Iterator[str]:
    """What each hatching means."""
    y = top
    for reason, lines in key:
        yield element("rect", x=PAPER + 4, y=-y - 0.2, width=11, height=1.2 * LETTERS, rx=0.6,
                      fill=f"url(#{prefix}hatch-{reason})", stroke=theme.quiet, stroke_width=0.25)  # fmt: skip
        for each in lines:
            yield lettering(each, (PAPER + 18, y - LETTERS), theme)
            y -= 1.35 * LETTERS
        y -= 1.6


def _title(found: MixMap) -> list[str]:
    unit = found.shown.shown.replace("money", found.money)
    words = say("map-title-unit" if unit else "map-title", title=found.recipe.title, shown=found.shown.words, unit=unit)
    return wrapped(words, WIDTH - 2 * PAPER - 8, 1.26 * LETTERS, bold=True)


def _spoken(found: MixMap) -> str:
    names = ", ".join(found.shop[key].name for key in found.corners)
    share = f"{100 * float(np.mean(found.feasible)):.0f}"
    return say("map-spoken", title=found.recipe.title, shown=found.shown.words, names=names,
               value=found.shown.text(found.here, found.money), share=share)  # fmt: skip
