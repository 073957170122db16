"""Pictures as pixels."""

import re

from lumped.paper.typesetting import typeset

__all__ = ["svg_as_png"]

_SIZE = re.compile(r'<svg[^>]*?\bwidth="([\d.]+)(mm|)"')
_POINTS = {"": 0.75, "mm": 72 / 25.4}  # a pixel of SVG is 1/96 inch


def svg_as_png(svg: str, *, width: int = 1400) -> bytes:
    r"""Turn an SVG picture into a PNG.

    Parameters
    ----------
    svg : str
        The picture; it says its own width.
    width : int
        Width of the PNG. [px]

    Returns
    -------
    bytes

    Examples
    --------
    >>> svg_as_png('<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="5mm"/>', width=40)[:4]
    b'\x89PNG'
    """
    match = _SIZE.search(svg)
    if match is None:
        raise ValueError("the picture does not say its width")
    points = float(match[1]) * _POINTS[match[2]]
    return typeset("svg", {"svg": svg}, kind="png", ppi=72 * width / points)
