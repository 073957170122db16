"""A piece of dough that dries: cut through at some hours, and below it what it weighs and how well it still carries."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.dough.lasting.outlook import HOUR, Outlook
from lumped.dough.lasting.telling import MOMENTS, moment_words, piece_words, rest_words
from lumped.dough.lasting.wording import plain_time
from lumped.picture.charts import (
    LETTERS,
    WIDTH,
    Scale,
    figure,
    lettering,
    line,
    on_cloth,
    sheet,
    wrapped,
)  # fmt: skip
from lumped.picture.labels import Box
from lumped.picture.ridges import nice_levels
from lumped.picture.svg import closed_path, element
from lumped.picture.theme import THEMES, Theme, ThemeName, mixed
from lumped.texts import say

__all__ = ["drying_svg", "drying_svgs"]

Floats = NDArray[np.float64]
_LEFT, _RIGHT = 19.0, WIDTH - 11.0  # mm; ends of the clock
_PAPER = 5.5  # mm of cloth round the paper
_WEIGHT, _SKIN, _RESISTIVITY, _CUTS, _GAP = 40.0, 26.0, 48.0, 21.0, 10.0  # mm high
_LEAST_SKIN = 1.0  # mm; a strip without any skin still has a scale
_DRAWN = 17.0  # mm; the fresh piece, cut through
_SLAB_WIDE = 15.0  # mm
_FRESH, _DRY = "#e6bd86", "#6d4526"
_MOST = 100.0  # of the fresh resistivity: what is worse leaves the strip at the top
_KILO = 100.0  # Ω·m, from which on thousands are counted
_POINTS = 120
_QUANTILES = (0.025, 0.5, 0.975)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Strip:
    """One strip: a figure in draws over the hours, its scales."""

    key: str
    unit: str
    band: Floats
    x: Scale
    y: Scale

    @property
    def box(self) -> Box:
        return Box(self.x.start, self.y.start, self.x.end, self.y.end)


def drying_svg(
    found: Outlook, *, hours: float = 24.0, theme: ThemeName = "light", scale: float = 6.0, prefix: str = "",
    told: bool = True,
) -> str:  # fmt: skip
    """Draw a drying piece.

    Parameters
    ----------
    found : Outlook
        The piece, followed for three days at least.
    hours : float
        How much of it is drawn. [h]
    theme : {"light", "dark", "print"}
        Colours.
    scale : float
        Pixels of the picture's own size for each millimetre. [1/mm]
    prefix : str
        Put before each id, so that several pictures can stand on one page.
    told : bool
        Whether the sentences stand below; a page that says them itself leaves them out.

    Returns
    -------
    str
        An SVG document, 124 mm wide. Strips carry `data-strip`.
    """
    return drying_svgs(found, (theme,), hours=hours, scale=scale, prefix=prefix, told=told)[theme]


def drying_svgs(
    found: Outlook, themes: Sequence[ThemeName], *, hours: float = 24.0, scale: float = 6.0, prefix: str = "",
    told: bool = True,
) -> dict[ThemeName, str]:  # fmt: skip
    """Draw a drying piece in several themes; as `drying_svg`, measured once."""
    sentences = [*(moment_words(found, moment) for moment in MOMENTS), " ".join(rest_words(found))]
    below = sentences if told else []
    lines = [each for sentence in below for each in [*wrapped(sentence, _RIGHT - _LEFT + 6), ""]][:-1]
    foot = 1.38 * LETTERS * (len(lines) - 0.6 * lines.count(""))
    bottom = foot + _PAPER + 18.5
    x = Scale(low=0.0, high=hours, start=_LEFT, end=_RIGHT)
    above = bottom + _RESISTIVITY + _GAP
    strips = [_strip("resistivity", found, x, bottom), _strip("skin", found, x, above),
              _strip("mass", found, x, above + _SKIN + _GAP)]  # fmt: skip
    cuts = strips[-1].y.end + _GAP + _CUTS / 2 + 4.0
    titled = _title(found)
    title = wrapped(titled, WIDTH - 2 * _PAPER - 8, 1.3 * LETTERS, bold=True)
    height = cuts + _CUTS / 2 + 3.0 + 1.8 * LETTERS * len(title) + _PAPER

    def drawn(looks: Theme) -> str:
        layers = [
            sheet(Box(_PAPER, _PAPER, WIDTH - _PAPER, height - _PAPER), looks),
            *(lettering(each, (_PAPER + 4, height - _PAPER - 7.2 - 1.8 * LETTERS * k), looks, size=1.3 * LETTERS,
                        bold=True) for k, each in enumerate(title)),
            *_cut(found, x, cuts, looks),
            *(part for strip in strips for part in _drawn(strip, looks, prefix)),
            *_clock(strips[0], looks), *_foot(lines, bottom - 18.5, looks),
        ]  # fmt: skip
        return on_cloth(layers, height=height, title=" ".join((titled, *sentences)), theme=looks, scale=scale,
                        prefix=prefix)  # fmt: skip

    return {theme: drawn(THEMES[theme]) for theme in themes}


def _title(found: Outlook) -> str:
    return say("drying-picture-title", title=found.title, piece=piece_words(found))


def _strip(key: str, found: Outlook, x: Scale, bottom: float) -> _Strip:
    times = HOUR * np.linspace(x.low, x.high, _POINTS)
    band = np.quantile(found.along(key, times), _QUANTILES, axis=0)
    if key == "mass":
        low, high = 1e3 * float(band[0].min()), 1e3 * float(band[2].max())
        room = 0.06 * (high - low)
        y = Scale(low=max(low - room, 0.0), high=high + room, start=bottom, end=bottom + _WEIGHT)
        return _Strip(key=key, unit="g", band=1e3 * band, x=x, y=y)
    if key == "skin":
        most = max(1.06e3 * float(band[2].max()), _LEAST_SKIN)
        y = Scale(low=0.0, high=most, start=bottom, end=bottom + _SKIN)
        return _Strip(key=key, unit="mm", band=1e3 * band, x=x, y=y)
    unit, factor = ("kΩ·m", 1e-3) if float(band[1, 0]) > _KILO else ("Ω·m", 1.0)
    band = factor * band
    most = max(min(1.15 * float(band[2].max()), _MOST * float(band[1, 0])), 3.0 * float(band[1, 0]))
    y = Scale(low=0.8 * float(band[0].min()), high=most, start=bottom, end=bottom + _RESISTIVITY, ratios=True)
    return _Strip(key=key, unit=unit, band=band, x=x, y=y)


def _drawn(strip: _Strip, theme: Theme, prefix: str) -> Iterator[str]:
    box, clip = strip.box, f"{prefix}strip-{strip.key}"
    frame = {"x": box.left, "y": -box.far, "width": box.right - box.left, "height": box.far - box.near}
    yield element("clipPath", element("rect", **frame), id=clip)
    yield element("g", *_curve(strip, theme), clip_path=f"url(#{clip})", data_strip=strip.key)
    yield line([[box.left, box.far], [box.left, box.near], [box.right, box.near]], theme.quiet, 0.35)
    yield lettering(say(f"drying-strip-{strip.key}", unit=strip.unit), (_LEFT - 9.5, box.far + 2.4), theme, bold=True)
    for level in _levels(strip):
        at = (box.left - 1.4, float(strip.y(level)) - 0.35 * LETTERS)
        yield lettering(figure(level), at, theme, size=0.92 * LETTERS, anchor="end", quiet=True)


def _curve(strip: _Strip, theme: Theme) -> Iterator[str]:
    for level in _levels(strip):
        y = float(strip.y(level))
        yield line([[strip.box.left, y], [strip.box.right, y]], theme.slip_edge, 0.25)
    for moment in MOMENTS.values():
        at = float(strip.x(moment / HOUR))
        yield line([[at, strip.box.near], [at, strip.box.far]], theme.red, 0.45, stroke_dasharray="2.2 1.6")
    x = strip.x(np.linspace(strip.x.low, strip.x.high, _POINTS))
    low, mean, high = (strip.y(np.minimum(each, 10 * strip.y.high)) for each in strip.band)
    band = np.concatenate([np.column_stack([x, low]), np.column_stack([x, high])[::-1]])
    yield element("path", d=closed_path([band]), fill=_FRESH, opacity=0.5)
    yield line(np.column_stack([x, mean]), mixed(_FRESH, theme.ink, 0.55), 0.9)


def _levels(strip: _Strip) -> tuple[float, ...]:
    return nice_levels(1.0001 * strip.y.low, 0.98 * strip.y.high, ratios=strip.y.ratios, most=5)


def _clock(bottom: _Strip, theme: Theme) -> Iterator[str]:
    """Hours below the lowest strip, and the lesson and the night by name."""
    y, x = bottom.box.near, bottom.x
    days = x.high > 72
    for each in nice_levels(-1e-9, x.high / (24 if days else 1) * 1.0001, most=7):
        at = float(x(each * (24 if days else 1)))
        anchor, shift = ("end", 1.5) if at > _RIGHT - 1.5 else ("middle", 0.0)
        yield line([[at, y], [at, y - 1.2]], theme.quiet, 0.35)
        text = say("drying-day" if days else "drying-hour", count=figure(each))
        yield lettering(text, (at + shift, y - 5.4), theme, size=0.96 * LETTERS, anchor=anchor)
    used = -np.inf
    for name, moment in MOMENTS.items():
        at = float(x(moment / HOUR))
        if at < used or moment / HOUR > x.high:
            continue
        near = at > _RIGHT - 20
        yield lettering(say(f"drying-mark-{name}"), (at + (1.5 if near else -1.0), y - 10.4), theme,
                        size=0.92 * LETTERS, anchor="end" if near else "start", quiet=True)  # fmt: skip
        used = at + 22


def _cut(found: Outlook, x: Scale, y: float, theme: Theme) -> Iterator[str]:
    """The piece cut through, at five places along the clock: its size and, darker, how dry each layer is."""
    fresh = float(np.median(found.done.mean[..., 0]))
    size = _DRAWN / float(np.max(found.piece.thickness))
    for hour, at in zip(np.linspace(x.low, x.high, 5), np.linspace(_LEFT - 1.0, _RIGHT - 5.0, 5), strict=True):
        contents, volumes, thick = (_median(found, name, float(hour)) for name in ("contents", "volumes", "thickness"))
        edges = np.cumsum(volumes) / volumes.sum()
        shades = [mixed(_FRESH, _DRY, float(np.clip(1.25 * (1 - each / fresh), 0.0, 1.0))) for each in contents]
        yield from _layers(found.piece.shape, float(at), y, size * float(thick), edges, shades=shades, theme=theme)
        label = say("drying-fresh") if hour == 0 else plain_time(float(hour) * HOUR)
        yield lettering(
            label, (float(at), y - 0.5 * _CUTS - 3.2), theme, size=0.9 * LETTERS, anchor="middle", quiet=True
        )


def _layers(
    shape: str, x: float, y: float, thick: float, edges: Floats, *, shades: Sequence[str], theme: Theme
) -> Iterator[str]:
    if shape in ("roll", "ball"):
        power = 2 if shape == "roll" else 3
        for edge, shade in zip(edges[::-1], shades[::-1], strict=True):
            yield element("circle", cx=x, cy=-y, r=float(thick / 2 * edge ** (1 / power)), fill=shade)
        yield element("circle", cx=x, cy=-y, r=thick / 2, fill="none", stroke=theme.ink, stroke_width=0.35)
        return
    one_side = shape == "slab"
    floor = y - _DRAWN / 2 if one_side else y
    for edge, shade in zip(edges[::-1], shades[::-1], strict=True):
        high = float(thick * edge)
        low = floor if one_side else floor - high / 2
        yield element("rect", x=x - _SLAB_WIDE / 2, y=-(low + high), width=_SLAB_WIDE, height=high, fill=shade)
    low = floor if one_side else floor - thick / 2
    yield element("rect", x=x - _SLAB_WIDE / 2, y=-(low + thick), width=_SLAB_WIDE, height=thick, fill="none",
                  stroke=theme.ink, stroke_width=0.35)  # fmt: skip
    if one_side:
        yield line([[x - 0.6 * _SLAB_WIDE, floor], [x + 0.6 * _SLAB_WIDE, floor]], theme.ink, 0.6)


def _median(found: Outlook, name: str, hour: float) -> Floats:
    """The middle of all draws of a figure of the piece at an hour."""
    k = int(np.abs(found.done.time - hour * HOUR).argmin())
    return np.asarray(np.median(getattr(found.done, name)[:, k], axis=0))


def _foot(lines: list[str], top: float, theme: Theme) -> Iterator[str]:
    y = top
    for each in lines:
        if each:
            yield lettering(each, (_LEFT - 9.5, y), theme)
        y -= 1.38 * LETTERS * (1.0 if each else 0.4)
