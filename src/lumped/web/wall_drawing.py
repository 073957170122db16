"""A wall between two lumps, and the lamp that bridges it, from the side: as thick as it is."""

from lumped.picture.theme import lamp_colour

__all__ = ["wall_drawing"]

_WIDE, _HIGH = 120.0, 46.0  # mm
_LUMP = 40.0  # mm; length of a lump that is shown


def wall_drawing(thick: float, touch: float, lamp: str) -> str:
    """Draw the wall, as an SVG in millimetres.

    Parameters
    ----------
    thick, touch : float
        Thickness, and where the lumps touch it. [mm], [cm²]
    lamp : str
        Key of the lamp, for its colour.

    Examples
    --------
    >>> wall_drawing(3.0, 4.0, "lamp-red").count("<rect")
    3
    """
    side = 10 * touch**0.5  # mm; side of a square that is touched
    tall = min(side, _HIGH - 18)
    left, base = (_WIDE - thick) / 2, _HIGH - 2
    top = base - tall
    bead = lamp_colour(lamp.removeprefix("lamp-"))
    lumps = "".join(
        f'<rect x="{x:.1f}" y="{top:.1f}" width="{_LUMP}" height="{tall:.1f}" rx="3" fill="#c98a5e"/>'
        for x in (left - _LUMP, left + thick)
    )
    wall = (
        f'<rect x="{left:.1f}" y="{top - 3:.1f}" width="{thick:.1f}" height="{tall + 3:.1f}" rx="0.8" fill="#e9dcc3" '
        'stroke="#8a6a48" stroke-width="0.4"/>'
    )
    a, b, head = left - 8, left + thick + 8, top - 9
    legs = (
        f'<path d="M{a:.1f} {top + 6:.1f}V{head:.1f}H{_WIDE / 2 - 2.5:.1f}M{b:.1f} {top + 6:.1f}V{head:.1f}'
        f'H{_WIDE / 2 + 2.5:.1f}" fill="none" stroke="#8d9196" stroke-width="0.8"/>'
    )
    dome = f'<circle cx="{_WIDE / 2}" cy="{head:.1f}" r="3.4" fill="{bead}" stroke="#3a2c22" stroke-width="0.4"/>'
    return f'<svg viewBox="0 0 {_WIDE:.0f} {_HIGH:.0f}" aria-hidden="true">{lumps}{wall}{legs}{dome}</svg>'
