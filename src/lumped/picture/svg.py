"""A small writer of SVG: elements as text, lengths in millimetres, far on the table is up."""

from collections.abc import Iterable
from xml.sax.saxutils import escape, quoteattr

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = ["closed_path", "element", "number", "open_path", "text_width"]

_NARROW, _WIDE = set("iljtfrI.,:;'|!()[] ‘’“”-–"), set("mwMW%@Ω—")


def element(tag: str, /, *inside: str, **attributes: object) -> str:
    """Write one element.

    Parameters
    ----------
    tag : str
        Its name.
    *inside : str
        What stands in it, already written.
    **attributes : object
        Its attributes; `_` in a name stands for `-`, one at the end is dropped; None is left out.

    Examples
    --------
    >>> element("circle", r=2.5, stroke_width=0.30000000001)
    '<circle r="2.5" stroke-width="0.3"/>'
    """
    pairs = "".join(
        f" {name.rstrip('_').replace('_', '-')}={_quoted(value)}"
        for name, value in attributes.items()
        if value is not None
    )
    body = "".join(inside)
    return f"<{tag}{pairs}>{body}</{tag}>" if body else f"<{tag}{pairs}/>"


def _quoted(value: object) -> str:
    return f'"{number(value)}"' if isinstance(value, float) else quoteattr(str(value))


def words(text: str) -> str:
    """Write text so that it can stand in an element."""
    return escape(text)


def number(value: float) -> str:
    """Write a number, to a hundredth.

    Examples
    --------
    >>> number(2.0), number(-0.001), number(1.256)
    ('2', '0', '1.26')
    """
    shown = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if shown == "-0" else shown


def open_path(points: ArrayLike) -> str:
    """Write the path through points on the table, (n, 2) mm.

    Examples
    --------
    >>> open_path([[0, 0], [1, 2]])
    'M0 0L1 -2'
    """
    xy = np.asarray(points, dtype=float).tolist()
    return "M" + "L".join(f"{number(x)} {number(-y)}" for x, y in xy)


def closed_path(loops: Iterable[NDArray[np.float64]]) -> str:
    """Write closed loops on the table, each (n, 2) mm.

    Examples
    --------
    >>> closed_path([np.array([[0, 0], [1, 0], [1, 1]])])
    'M0 0L1 0L1 -1Z'
    """
    return "".join(open_path(loop) + "Z" for loop in loops)


def text_width(text: str, size: float) -> float:
    """Estimate the width of text in the theme's letters, from rough widths of classes of letters.

    Parameters
    ----------
    text : str
        The text.
    size : float
        Size of the letters. [mm]

    Examples
    --------
    >>> text_width("lamp", 10.0) > text_width("ill", 10.0)
    True
    """
    return size * sum(0.4 if each in _NARROW else 0.98 if each in _WIDE else 0.72 if each.isupper() else 0.63
                      for each in text)  # fmt: skip
