"""The mark of a dough: what it does, told by shape alone, at arm's length and without colour.

A dough that carries is a round, hollow lump that threads run through; one that blocks is a square, dark lump before
which they turn back.
"""

import numpy as np

from lumped.picture.svg import element, number
from lumped.picture.theme import THEMES

__all__ = ["mark_svg"]

_SIDE = 100.0  # the mark's own unit; it is scaled to its size
_THREADS = (33.0, 50.0, 67.0)
_STROKE = 6.0


def mark_svg(conducts: bool, *, size: float = 30.0) -> str:
    """Draw the mark of a dough.

    Parameters
    ----------
    conducts : bool
        Whether it carries current.
    size : float
        Edge of the picture. [mm]

    Examples
    --------
    >>> mark_svg(True) != mark_svg(False), mark_svg(True)[:4]
    (True, '<svg')
    """
    ink, paper = THEMES["print"].ink, THEMES["print"].cloth
    drawn = _carrying(ink, paper) if conducts else _blocking(ink)
    return element(
        "svg", *drawn, xmlns="http://www.w3.org/2000/svg", width=f"{number(size)}mm", height=f"{number(size)}mm",
        viewBox=f"0 0 {_SIDE:g} {_SIDE:g}",
    )  # fmt: skip


def _carrying(ink: str, paper: str) -> list[str]:
    lump = element("path", d=_lump(50.0, 50.0, 33.0, squareness=2.0), fill=paper, stroke=ink, stroke_width=_STROKE)
    return [lump, *(_thread(f"M3 {number(y)}c16 -9 31 9 47 0s31 9 47 0", ink) for y in _THREADS)]


def _blocking(ink: str) -> list[str]:
    lump = element("path", d=_lump(70.0, 50.0, 27.0, 34.0, squareness=5.0), fill=ink)
    turns = (_thread(f"M3 {number(y - 7)}h17a7 7 0 0 1 0 14h-17", ink) for y in (_THREADS[0] - 4, _THREADS[2] + 4))
    return [lump, *turns]


def _thread(path: str, ink: str) -> str:
    return element("path", d=path, fill="none", stroke=ink, stroke_width=_STROKE, stroke_linecap="round")


def _lump(x: float, y: float, wide: float, high: float | None = None, *, squareness: float) -> str:
    """A superellipse, a little dented as a hand makes it; 2 is round, 5 nearly square."""
    angle = np.linspace(0, 2 * np.pi, 72, endpoint=False)
    hand = 1 + 0.02 * np.sin(3 * angle + 0.6) + 0.012 * np.sin(5 * angle)
    sine, cosine = np.sin(angle), np.cos(angle)
    across = hand * wide * np.sign(cosine) * np.abs(cosine) ** (2 / squareness)
    up = hand * (high or wide) * np.sign(sine) * np.abs(sine) ** (2 / squareness)
    return "M" + "L".join(f"{number(x + a)} {number(y + b)}" for a, b in zip(across, up, strict=True)) + "Z"
