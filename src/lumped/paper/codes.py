"""Square codes that a telephone reads: how much text one takes at its printed size, and its picture.

A code grows with its text; printed at a fixed size its squares shrink. Below 0.4 mm telephones and office printers
begin to fail (common practice), so a text that needs smaller squares is refused, never squeezed.
"""

from lumped.picture.svg import element, number

__all__ = ["LEAST_SQUARE", "code_svg", "fits_in_code"]

LEAST_SQUARE = 0.4  # mm
_QUIET = 4  # squares of white round it, ISO/IEC 18004 (from memory)
_LEVELS = ("M", "L")  # 15 % of it may be stained, or else 7 %
_TOO_LONG = 2_953  # bytes; no code takes more


def code_svg(text: str, *, size: float) -> str:
    """Draw a code.

    Parameters
    ----------
    text : str
        What it says.
    size : float
        Edge of the picture with its white rim. [mm]

    Returns
    -------
    str
        An SVG, "" if the text is too long for squares of `LEAST_SQUARE` at this size.

    Examples
    --------
    >>> code_svg("dough", size=20.0)[:4], code_svg("dough " * 300, size=20.0)
    ('<svg', '')
    """
    rows = _squares(text, size)
    if rows is None:
        return ""
    path = "".join(
        f"M{x} {y}h1v1h-1z" for y, row in enumerate(rows, _QUIET) for x, dark in enumerate(row, _QUIET) if dark
    )
    side = len(rows) + 2 * _QUIET
    return element(
        "svg", element("path", d=path, fill="#000000", shape_rendering="crispEdges"),
        xmlns="http://www.w3.org/2000/svg", width=f"{number(size)}mm", height=f"{number(size)}mm",
        viewBox=f"0 0 {side} {side}",
    )  # fmt: skip


def fits_in_code(text: str, *, size: float) -> bool:
    """Tell whether a code of a text can be read at a size. [mm]

    Examples
    --------
    >>> fits_in_code("dough", size=20.0)
    True
    """
    return _squares(text, size) is not None


def _squares(text: str, size: float) -> list[list[int]] | None:
    import segno

    if len(text.encode()) > _TOO_LONG:
        return None
    for level in _LEVELS:
        try:
            code = segno.make_qr(text, error=level, encoding="utf-8", mode="byte", boost_error=False)
        except segno.DataOverflowError:
            continue
        rows = [list(row) for row in code.matrix]
        if size / (len(rows) + 2 * _QUIET) >= LEAST_SQUARE:
            return rows
    return None
