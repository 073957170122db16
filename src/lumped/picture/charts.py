"""What charts have in common: a sheet of paper on the cloth, words, scales, and lines drawn by hand."""

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.picture.cloth import draw_cloth
from lumped.picture.labels import Box
from lumped.picture.svg import element, number, open_path, text_width, words
from lumped.picture.theme import FAMILY, Theme
from lumped.quantities import significant

__all__ = ["LETTERS", "Scale", "figure", "hatch", "lettering", "line", "on_cloth", "sheet", "slip", "wrapped"]

Floats = NDArray[np.float64]
LETTERS = 4.2  # mm in a picture 124 mm wide: 12 pixels on a telephone 360 wide
WIDTH = 124.0
_HATCHES = {
    # how a pattern of 4 mm is drawn: told apart without colour
    "no-body": "M0 1H4M0 3H4", "no-free-water": "M0 4L4 0M0 0L4 4", "does-not-conduct": "M2 0V4", "conducts": "M2 0V4",
    "too-stiff": "M0 4L4 0", "too-wet": "M0 0L4 4", "salt-stays-solid": "M1 1h0.01M3 3h0.01",
    "sugar-stays-solid": "M1.1 1.1h1.3v1.3h-1.3z",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """From a quantity to a place along a side of a chart.

    Parameters
    ----------
    low, high : float
        Least and greatest that is shown. [any]
    start, end : float
        Where they stand. [mm]
    ratios : bool
        Whether equal ratios are equally far apart.
    """

    low: float
    high: float
    start: float
    end: float
    ratios: bool = False

    def __call__(self, value: ArrayLike) -> Floats:
        """Give places of values. [mm]

        Examples
        --------
        >>> float(Scale(low=1, high=100, start=0, end=10, ratios=True)(10))
        5.0
        """
        found, ends = np.asarray(value, float), (self.low, self.high)
        if self.ratios:
            found, ends = np.log(np.maximum(found, 1e-12)), (float(np.log(self.low)), float(np.log(self.high)))
        return np.asarray(self.start + (found - ends[0]) / (ends[1] - ends[0]) * (self.end - self.start))


def figure(value: float) -> str:
    """Write a figure on a scale: as few digits as it needs.

    Examples
    --------
    >>> figure(0.30000000000000004), figure(1500.0), figure(2.0)
    ('0.3', '1,500', '2')
    """
    shown = significant(value, 4)
    return f"{shown:,.0f}" if shown == round(shown) else f"{shown:,.6f}".rstrip("0")


def lettering(
    text: str, at: ArrayLike, theme: Theme, *, size: float = LETTERS, anchor: str = "start", quiet: bool = False,
    bold: bool = False, turn: float = 0.0, halo: str | None = None,
) -> str:  # fmt: skip
    """Write words at a place on the table, their base line there; a halo keeps lines off them. [mm]"""
    x, y = np.asarray(at, float) * [1, -1]
    return element(
        "text", words(text), x=float(x), y=float(y), font_size=size, fill=theme.quiet if quiet else theme.ink,
        text_anchor=None if anchor == "start" else anchor, font_weight="bold" if bold else None,
        transform=f"rotate({number(-turn)} {number(x)} {number(y)})" if turn else None,
        stroke=halo, stroke_width=0.9 if halo else None, paint_order="stroke" if halo else None,
        stroke_linejoin="round" if halo else None,
    )  # fmt: skip


def line(points: ArrayLike, colour: str, width: float = 0.5, **more: object) -> str:
    """Draw a line through points on the table, (n, 2) mm."""
    return element("path", d=open_path(points), fill="none", stroke=colour, stroke_width=width,
                   stroke_linejoin="round", stroke_linecap="round", **more)  # fmt: skip


def slip(text: str, at: ArrayLike, theme: Theme, *, size: float = LETTERS, bold: bool = False) -> str:
    """Lay a slip of paper with words, its middle at a place. [mm]"""
    box = slip_box(text, at, size)
    paper = element("rect", x=box.left, y=-box.far, width=box.right - box.left, height=box.far - box.near, rx=0.9,
                    fill=theme.slip, stroke=theme.slip_edge, stroke_width=0.3)  # fmt: skip
    return paper + lettering(
        text, np.asarray(at, float) - [0, 0.35 * size], theme, size=size, anchor="middle", bold=bold
    )


def slip_box(text: str, at: ArrayLike, size: float = LETTERS) -> Box:
    """Give what a slip covers. [mm]"""
    return Box.round(np.asarray(at, float), text_width(text, size) * 0.92 + 0.7 * size, 1.45 * size)


def wrapped(text: str, width: float, size: float = LETTERS, *, bold: bool = False) -> list[str]:
    """Break a sentence into lines of a width. [mm]"""
    lines = [""]
    for word in text.split(" "):
        longer = f"{lines[-1]} {word}".strip()
        if lines[-1] and (1.05 if bold else 0.9) * text_width(longer, size) > width:
            lines.append(word)
        else:
            lines[-1] = longer
    return lines


def hatch(reason: str, theme: Theme, prefix: str) -> str:
    """Give the pattern of a reason; its id is prefix + "hatch-" + reason."""
    dots = reason == "salt-stays-solid"
    stroke = {"stroke_width": 0.95 if dots else 0.4, "opacity": 0.8 if dots else 0.7}
    lines = element("path", d=_HATCHES[reason], stroke=theme.ink, fill="none", **stroke,
                    stroke_linecap="round" if dots else "square")  # fmt: skip
    return element("pattern", lines, id=f"{prefix}hatch-{reason}", width=4, height=4, patternUnits="userSpaceOnUse")


def sheet(box: Box, theme: Theme) -> str:
    """Lay a sheet of paper on the cloth."""
    left, top, width, height = box.left, -box.far, box.right - box.left, box.far - box.near
    under = "" if theme.flat else element(
        "rect", x=left + 0.6, y=top + 0.8, width=width, height=height, rx=1.2, fill=theme.shadow, opacity=0.16
    )  # fmt: skip
    return under + element("rect", x=left, y=top, width=width, height=height, rx=1.2, fill=theme.slip,
                           stroke=theme.slip_edge, stroke_width=0.3)  # fmt: skip


def on_cloth(
    layers: Iterable[str], *, height: float, title: str, theme: Theme, scale: float, prefix: str,
    patterns: Iterable[str] = (),
) -> str:  # fmt: skip
    """Put layers on a cloth from (0, 0) to (WIDTH, height), and give the whole SVG document. [mm]"""
    cloth = "" if theme.flat else draw_cloth(Box(0.0, 0.0, WIDTH, height), theme, prefix)
    return element(
        "svg", element("title", words(title)), element("defs", *patterns),
        cloth, *layers,
        xmlns="http://www.w3.org/2000/svg", role="img", viewBox=f"0 {number(-height)} {number(WIDTH)} {number(height)}",
        width=number(WIDTH * scale), height=number(height * scale), font_family=FAMILY,
    )  # fmt: skip
