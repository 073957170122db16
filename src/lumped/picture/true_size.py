"""Things on paper that hands measure by: a ruler, and slots as wide as a roll is thick."""

from collections.abc import Sequence

from lumped.picture.svg import element, number, words
from lumped.picture.theme import FAMILY

__all__ = ["gauge_svg", "ruler_svg"]

_INK = "#000000"
_LETTERS = 2.9  # mm
_SLOT = 15.0  # mm; length of a slot


def ruler_svg(*, scale: float = 1.0) -> str:
    """Draw a ruler of 100 mm.

    Parameters
    ----------
    scale : float
        Millimetres on paper for each millimetre of the ruler. [1]

    Returns
    -------
    str
        An SVG of true size: its width and height are in mm.

    Examples
    --------
    >>> ruler_svg().count("<text")
    11
    """
    ticks = [
        f"M{number(2 + scale * k)} 0V{number(4.5 if k % 10 == 0 else 3.2 if k % 5 == 0 else 2.0)}"
        for k in range(0, 101, 1 if scale > 0.7 else 5 if scale > 0.2 else 10)
    ]
    step = 10 if scale > 0.7 else 50
    figures = [
        element("text", str(k), x=2 + scale * k, y=7.6, font_size=_LETTERS, text_anchor="middle", fill=_INK)
        for k in range(0, 101, step)
    ]
    base = element("path", d=f"M2 0.1H{number(2 + 100 * scale)}", stroke=_INK, stroke_width=0.3, class_="ruler")
    marks = element("path", d="".join(ticks), stroke=_INK, stroke_width=0.18)
    return _sheet(100 * scale + 7, 8.6, base, marks, *figures)


def gauge_svg(sizes: Sequence[float]) -> str:
    """Draw a row of slots, each as wide as a roll is thick.

    Parameters
    ----------
    sizes : sequence of float
        Thicknesses. [mm]

    Returns
    -------
    str
        An SVG of true size.
    """
    drawn, left = [], 0.5
    for size in sizes:
        path = f"M{number(left)} {number(_SLOT)}V0.4M{number(left + size)} {number(_SLOT)}V0.4"
        drawn.append(element("path", d=path, fill="none", stroke=_INK, stroke_width=0.5, class_="slot"))
        drawn.append(element("rect", x=left, y=_SLOT - 1.2, width=size, height=1.2, fill=_INK))
        text = words(f"{size:.3g} mm")
        drawn.append(
            element("text", text, x=left + size / 2, y=_SLOT + 4, font_size=_LETTERS, text_anchor="middle", fill=_INK)
        )
        left += max(size, 13.0) + 6.0
    return _sheet(left, _SLOT + 5.2, *drawn)


def _sheet(width: float, height: float, *inside: str) -> str:
    return element(
        "svg", *inside, xmlns="http://www.w3.org/2000/svg", viewBox=f"0 0 {number(width)} {number(height)}",
        width=f"{number(width)}mm", height=f"{number(height)}mm", font_family=FAMILY,
    )  # fmt: skip
