"""Dough from above: its colour, softly shaded towards the edge, with its mark pressed in."""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from lumped.picture.levels import Level
from lumped.picture.outlines import outline, rounded_outline
from lumped.picture.svg import closed_path, element, number, open_path, words
from lumped.picture.theme import Theme, mixed
from lumped.sculpt import Look, Lump
from lumped.shape import Block, Solid
from lumped.texts import say

__all__ = ["draw_lump", "mark_pattern"]

Loops = Sequence[NDArray[np.float64]]
_SHADE = tuple((k + 0.5) / 16 for k in range(16))  # shares of the radius over which the edge darkens
_PLAIN = Look(colour="#d9a066", mark="plain")


def draw_lump(
    lump: Lump, look: Look | None, theme: Theme, *, key: str, levels: Sequence[Level] = (), exact: bool = False
) -> str:
    """Draw one lump.

    Parameters
    ----------
    lump : Lump
        The lump.
    look : Look or None
        Its dough's colour and mark.
    theme : Theme
        Colours.
    key : str
        Its id in the picture.
    levels : sequence of Level
        Level lines pressed into it.
    exact : bool
        Whether corners stay as sharp as they are computed.
    """
    look = look or _PLAIN
    radius = edge_radius(lump.solid)
    path = closed_path(outline(lump.solid) if exact else rounded_outline(lump.solid, 0.45 * radius))
    painted = (
        _flat(path, look, theme, key, faint=bool(levels))
        if theme.flat
        else _soft(path, look, theme, key, radius, faint=bool(levels))
    )
    ridges = [_ridge(level, theme, key) for level in levels]
    title = element("title", words(say("picture-lump", name=lump.name, dough=lump.dough)))
    return element("g", title, *painted, *ridges, id=key, data_lump=lump.name, data_dough=lump.dough)


def edge_radius(solid: Solid) -> float:
    """Give how broadly a lump's edge bends: half its least measure. [mm]"""
    if isinstance(solid, Block):
        return 500.0 * min(solid.size)
    radius = getattr(solid, "radius", None)
    low, high = solid.bounds()
    height = 500.0 * float(high[2] - low[2])
    return height if radius is None else min(1e3 * float(radius), height)


def _soft(path: str, look: Look, theme: Theme, key: str, radius: float, *, faint: bool) -> list[str]:
    """Shadow on the cloth, dough, its edge in shade on the near right, a shine, the mark."""
    base, dark = look.colour, mixed(look.colour, "#3b1d0e", 0.62)

    def stroked(**how: object) -> str:
        return element("use", href=f"#{key}-shape", stroke_linejoin="round", **how)

    shape = element("defs", element("path", d=path, id=f"{key}-shape", fill_rule="evenodd"),
                    element("clipPath", element("path", d=path, clip_rule="evenodd"), id=f"{key}-in"))  # fmt: skip
    shadow = [
        stroked(
            fill=theme.shadow, stroke=theme.shadow, stroke_width=width, opacity=0.06, transform="translate(0.9 1.4)"
        )
        for width in (0.2, 1.2, 2.2, 3.4)
    ]
    shift = f"translate({number(-0.12 * radius)} {number(-0.16 * radius)})"
    shade = [
        stroked(fill="none", stroke=dark, stroke_width=2 * share * radius, opacity=0.04, transform=shift)
        for share in _SHADE
    ]
    inside = element("g", *shade, *_mark(path, look, key, dark, theme, faint=faint), clip_path=f"url(#{key}-in)")
    edge = stroked(fill="none", stroke=dark, stroke_width=0.25, opacity=0.55)
    return [shape, *shadow, stroked(fill=base), inside, edge]


def _flat(path: str, look: Look, theme: Theme, key: str, *, faint: bool) -> list[str]:
    """A pale tint, the mark, and a firm outline, for ink on paper."""
    tint = mixed(look.colour, "#ffffff", 0.72)
    clip = element("clipPath", element("path", d=path, clip_rule="evenodd"), id=f"{key}-in")
    inside = element("g", *_mark(path, look, key, "#555555", theme, faint=faint), clip_path=f"url(#{key}-in)")
    edge = element("path", d=path, fill="none", stroke=theme.ink, stroke_width=0.4, stroke_linejoin="round",
                   class_="outline")  # fmt: skip
    return [clip, element("path", d=path, fill=tint, fill_rule="evenodd"), inside, edge]


def _mark(path: str, look: Look, key: str, dark: str, theme: Theme, *, faint: bool) -> list[str]:
    if look.mark == "plain":
        return []
    light = mixed(look.colour, theme.shine, 0.7)
    return [
        mark_pattern(look.mark, f"{key}-mark", dark, light),
        element(
            "path",
            d=path,
            fill=f"url(#{key}-mark)",
            fill_rule="evenodd",
            opacity=0.2 if faint else 0.62,
            data_mark=look.mark,
        ),
    ]


def mark_pattern(mark: str, key: str, dark: str, light: str) -> str:
    """Give the pattern of a mark: each dent a dark stroke with a light lip below it.

    Parameters
    ----------
    mark : {"dots", "stripes", "crosses", "waves"}
        Which.
    key : str
        Its id.
    dark, light : str
        Colours of dent and lip.
    """
    dents = {
        "dots": "M1.6 1.6h.01M4.6 4.6h.01",
        "stripes": "M-1 7L7 -1M-1 1L1 -1M5 7L7 5",
        "crosses": "M1.2 1.2l1.8 1.8M3 1.2l-1.8 1.8M4.2 4.2l1.8 1.8M6 4.2l-1.8 1.8",
        "waves": "M-1.5 1.5Q0 0 1.5 1.5T4.5 1.5T7.5 1.5M-1.5 4.5Q0 3 1.5 4.5T4.5 4.5T7.5 4.5",
    }[mark]
    width = 1.1 if mark == "dots" else 0.4
    lines = [
        element("path", d=dents, fill="none", stroke=colour, stroke_width=width, stroke_linecap="round",
                transform=f"translate({shift} {shift})")
        for colour, shift in ((light, 0.22), (dark, 0.0))
    ]  # fmt: skip
    return element("pattern", *lines, id=key, width=6, height=6, patternUnits="userSpaceOnUse")


def _ridge(level: Level, theme: Theme, key: str) -> str:
    """One level line, pressed in: dark, with a light lip on its near side."""
    path = open_path(level.points)
    lines = [
        element("path", d=path, fill="none", stroke=colour, stroke_width=width, opacity=opacity,
                stroke_linecap="round", stroke_linejoin="round", transform=f"translate({shift} {shift})")
        for colour, width, opacity, shift in ((theme.shine, 0.45, 0.6, 0.3), (theme.ridge, 0.5, 0.6, 0.0))
    ]  # fmt: skip
    volts = f"{level.volts:.4g}"
    title = element("title", say("picture-volts", volts=volts))
    return element("g", title, *lines, clip_path=f"url(#{key}-in)", class_="level", data_volts=volts)
