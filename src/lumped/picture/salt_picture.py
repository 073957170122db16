"""The salt picture: one row of amounts, and above it what each does to current, keeping, sodium and cost."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.dough.properties import PROPERTIES
from lumped.dough.salting import Salting
from lumped.dough.salts import growth_marks
from lumped.picture.charts import (
    LETTERS,
    WIDTH,
    Scale,
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
from lumped.picture.ridges import nice_levels
from lumped.picture.svg import closed_path, element, number
from lumped.picture.theme import THEMES, Theme, ThemeName, mixed
from lumped.quantities import rounded_text
from lumped.texts import say

__all__ = ["salt_svg"]

Floats = NDArray[np.float64]
_HEIGHTS = {"resistivity": 50.0, "water_activity": 47.0, "sodium": 24.0, "cost": 22.0}
_LEFT, _RIGHT = 17.0, WIDTH - 9.0  # mm; ends of the scale of amounts
_PAPER = 5.5  # mm of cloth round the paper
_GAP = 8.5  # mm between strips, with the heading of the lower one in it
_DOUGH = "#d9a066"
_KITCHEN = {"sodium": ("g", 1e3)}  # units that a strip has rather than the property
_TOP = 6.0  # of the best resistivity: what is worse leaves the strip at the top


@dataclass(frozen=True, slots=True, kw_only=True)
class _Strip:
    """One strip: which property, its scales, and the box it fills."""

    key: str
    x: Scale
    y: Scale

    @property
    def box(self) -> Box:
        return Box(self.x.start, self.y.start, self.x.end, self.y.end)


def salt_svg(row: Salting, *, theme: ThemeName = "light", scale: float = 6.0, prefix: str = "") -> str:
    """Draw the salt picture.

    Parameters
    ----------
    row : Salting
        The recipe with all amounts of its salt.
    theme : {"light", "dark", "print"}
        Colours.
    scale : float
        Pixels of the picture's own size for each millimetre. [1/mm]
    prefix : str
        Put before each id, so that several pictures can stand on one page.

    Returns
    -------
    str
        An SVG document, 124 mm wide. Strips carry `data-strip`.
    """
    looks = THEMES[theme]
    told = [each for sentence in row.sentences() for each in [*wrapped(sentence, _RIGHT - _LEFT + 4), ""]][:-1]
    foot = 1.38 * LETTERS * len(told) - 0.6 * 1.38 * LETTERS * told.count("")
    strips = _strips(row, foot + _PAPER + 17.5)
    top = strips[0].y.end + _GAP
    words = say("salt-picture-title", title=row.recipe.title, name=row.name)
    title = wrapped(words, WIDTH - 2 * _PAPER - 8, 1.3 * LETTERS, bold=True)
    height = top + 1.8 * LETTERS * len(title) + _PAPER + 3.0
    paper = Box(_PAPER, _PAPER, WIDTH - _PAPER, height - _PAPER)
    layers = [
        sheet(paper, looks),
        *(lettering(each, (_PAPER + 4, height - _PAPER - 7.2 - 1.8 * LETTERS * k), looks, size=1.3 * LETTERS, bold=True)
          for k, each in enumerate(title)),
        *(part for strip in strips for part in _drawn(strip, row, looks, prefix)),
        *_along(row, strips, looks),
        *_foot(told, strips[-1].y.start - 17.5, looks),
    ]  # fmt: skip
    patterns = [hatch("salt-stays-solid", looks, prefix)]
    return on_cloth(layers, height=height, title=_spoken(row), theme=looks, scale=scale, prefix=prefix,
                    patterns=patterns)  # fmt: skip


def _spoken(row: Salting) -> str:
    title = say("salt-picture-title", title=row.recipe.title, name=row.name)
    return " ".join((title, *row.sentences()))


def _strips(row: Salting, bottom: float) -> list[_Strip]:
    """Strips from top to bottom."""
    x = Scale(low=0.0, high=float(row.amounts[-1]), start=_LEFT, end=_RIGHT)
    found, y = [], bottom
    for key in reversed([key for key in _HEIGHTS if key in row.bands]):
        low, high = _ends(key, row.bands[key])
        found.append(_Strip(key=key, x=x, y=Scale(low=low, high=high, start=y, end=y + _HEIGHTS[key],
                                                  ratios=key == "resistivity")))  # fmt: skip
        y += _HEIGHTS[key] + _GAP
    return found[::-1]


def _ends(key: str, band: Floats) -> tuple[float, float]:
    if key == "resistivity":
        best = float(band[1].min())
        return 0.78 * float(band[0].min()), min(1.1 * float(band[2].max()), _TOP * best)
    if key == "water_activity":
        return min(0.70, float(band[0].min()) - 0.02), 1.0
    return 0.0, 1.12 * max(float(band[2].max()), 1e-9)


def _drawn(strip: _Strip, row: Salting, theme: Theme, prefix: str) -> Iterator[str]:
    box, shown = strip.box, PROPERTIES[strip.key]
    clip = f"{prefix}strip-{strip.key}"
    frame = {"x": box.left, "y": -box.far, "width": box.right - box.left, "height": box.far - box.near}
    yield element("clipPath", element("rect", **frame), id=clip)
    inner = [*_solid(strip, row, theme, prefix), *_rungs(strip, theme), *_growth(strip, theme),
             *_curve(strip, row, theme)]  # fmt: skip
    yield element("g", *inner, clip_path=f"url(#{clip})", data_strip=strip.key)
    yield line([[box.left, box.far], [box.left, box.near], [box.right, box.near]], theme.quiet, 0.35)
    unit, factor = _KITCHEN.get(strip.key, (shown.shown.replace("money", row.money), shown.factor))
    heading = say(f"salt-strip-{strip.key.replace('_', '-')}", unit=unit)
    yield lettering(heading, (_LEFT - 7.5, box.far + 2.2), theme, size=LETTERS, bold=True)
    for level in _figures(strip):
        y = float(strip.y(level))
        yield lettering(figure(level * factor), (box.left - 1.4, y - 0.35 * LETTERS), theme, size=0.92 * LETTERS,
                        anchor="end", quiet=True)  # fmt: skip
    if strip.key == "water_activity":
        yield from _growth_words(strip, theme)
    if strip.key == "sodium" and row.solid_from is not None:
        at = (box.right - 1.2, box.near + 1.6)
        yield lettering(say("salt-solid-here"), at, theme, size=0.92 * LETTERS, anchor="end", halo=theme.slip)


def _figures(strip: _Strip) -> tuple[float, ...]:
    factor = _KITCHEN.get(strip.key, ("", PROPERTIES[strip.key].factor))[1]
    most = 5 if strip.key == "resistivity" else 3
    levels = nice_levels(factor * strip.y.low * 1.0001 - (0 if strip.y.ratios else 1e-9), factor * strip.y.high * 0.97,
                         ratios=strip.y.ratios, most=most)  # fmt: skip
    return tuple(each / factor for each in levels)


def _rungs(strip: _Strip, theme: Theme) -> Iterator[str]:
    for level in _figures(strip):
        y = float(strip.y(level))
        yield line([[strip.box.left, y], [strip.box.right, y]], theme.slip_edge, 0.25)


def _solid(strip: _Strip, row: Salting, theme: Theme, prefix: str) -> Iterator[str]:
    """Where salt stays solid: dots like grains, from the middle of what is believed."""
    if row.solid_from is not None:
        x = float(strip.x(row.solid_from.mean))
        box = strip.box
        yield element("rect", x=x, y=-box.far, width=max(box.right - x, 0.0), height=box.far - box.near,
                      fill=f"url(#{prefix}hatch-salt-stays-solid)", opacity=0.38)  # fmt: skip


def _curve(strip: _Strip, row: Salting, theme: Theme) -> Iterator[str]:
    x, (low, mean, high) = strip.x(row.amounts), (strip.y(each) for each in row.bands[strip.key])
    band = np.concatenate([np.column_stack([x, low]), np.column_stack([x, high])[::-1]])
    yield element("path", d=closed_path([band]), fill=_DOUGH, opacity=0.42)
    yield line(np.column_stack([x, mean]), mixed(_DOUGH, theme.ink, 0.55), 0.9)


def _growth(strip: _Strip, theme: Theme) -> Iterator[str]:
    if strip.key == "water_activity":
        colour = theme.quiet if theme.flat else theme.hem
        for mark in growth_marks():
            if strip.y.low < mark.value.mean < strip.y.high:
                y = float(strip.y(mark.value.mean))
                yield line([[strip.box.left, y], [strip.box.right, y]], colour, 0.5, stroke_dasharray="2.4 1.5")


def _growth_words(strip: _Strip, theme: Theme) -> Iterator[str]:
    """Names of what grows above each mark, at the right end, just above it."""
    for mark in growth_marks():
        if strip.y.low < mark.value.mean < strip.y.high:
            at = (strip.box.right - 1.0, float(strip.y(mark.value.mean)) + 0.9)
            yield lettering(say(f"growth-{mark.key}"), at, theme, size=0.92 * LETTERS, anchor="end", halo=theme.slip)


def _along(row: Salting, strips: list[_Strip], theme: Theme) -> Iterator[str]:
    """What goes through all strips: the recipe, the best amount, the scale of amounts."""
    top, bottom = strips[0], strips[-1]
    x = bottom.x
    yield from _amounts(row, bottom, theme)
    here = float(x(row.amount))
    for strip in strips:
        yield line([[here, strip.box.near], [here, strip.box.far]], theme.red, 0.55)
        y = float(np.clip(strip.y(row.point[strip.key].mean), strip.box.near, strip.box.far))
        yield element("circle", cx=here, cy=-y, r=1.5, fill=theme.slip, stroke=theme.red, stroke_width=0.7)
    best, low, high = (float(x(each)) for each in (row.best.mean, row.best.low, row.best.high))
    y = top.box.near + 2.6
    yield line([[low, y], [high, y]], theme.ink, 0.6)
    for each in (low, high):
        yield line([[each, y - 1.1], [each, y + 1.1]], theme.ink, 0.6)
    yield element("path", d=f"M{number(best)} {number(-y - 1.8)}l1.8 1.8l-1.8 1.8l-1.8 -1.8Z", fill=theme.ink)
    label = say("salt-best-here")
    left = high > _LEFT + 0.66 * (_RIGHT - _LEFT)
    place = (low - 1.8 if left else high + 1.8, y - 0.35 * LETTERS)
    yield lettering(label, place, theme, size=0.92 * LETTERS, anchor="end" if left else "start", halo=theme.slip)
    point = row.point["resistivity"]
    text = say("salt-recipe", resistivity=f"{rounded_text(point.mean)} Ω·m")
    half = (slip_box(text, (0, 0)).right - slip_box(text, (0, 0)).left) / 2
    middle = float(np.clip(here, _LEFT + half, _RIGHT - half))
    yield slip(text, (middle, top.box.far - 4.0), theme, bold=False)


def _amounts(row: Salting, bottom: _Strip, theme: Theme) -> Iterator[str]:
    """Grams, and below them the share of the dough."""
    levels = nice_levels(-1e-9, 1e3 * float(row.amounts[-1]) * 1.0001, most=6)
    for grams in levels:
        at = float(bottom.x(grams / 1e3))
        share = 100 * float(np.interp(grams / 1e3, row.amounts, row.share))
        y = bottom.box.near
        anchor, shift = ("end", 1.5) if at > _RIGHT - 4 else ("middle", 0.0)
        yield line([[at, y], [at, y - 1.2]], theme.quiet, 0.35)
        yield lettering(f"{figure(grams)} g", (at + shift, y - 5.4), theme, size=0.96 * LETTERS, anchor=anchor)
        yield lettering(f"{share:.0f} %", (at + shift, y - 10.0), theme, size=0.88 * LETTERS, anchor=anchor, quiet=True)


def _foot(lines: list[str], top: float, theme: Theme) -> Iterator[str]:
    y = top
    for each in lines:
        if each:
            yield lettering(each, (_LEFT - 7.5, y), theme)
        y -= 1.38 * LETTERS * (1.0 if each else 0.4)
