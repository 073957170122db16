"""How pictures look: the one place for colours, letters and widths of lines.

A table seen from above: a linen cloth with a stitched hem, dough on it, slips of paper with words.
"""

from dataclasses import dataclass
from typing import Literal

__all__ = ["FAMILY", "THEMES", "Theme", "ThemeName", "lamp_colour", "mixed"]

ThemeName = Literal["light", "dark", "print"]
FAMILY = "'DejaVu Serif', Georgia, 'Noto Serif', serif"


@dataclass(frozen=True, slots=True, kw_only=True)
class Theme:
    """Colours (#rrggbb) of one variant; `flat` leaves shading, shadow and cloth out, for ink on paper."""

    cloth: str
    weave: str
    hem: str
    ink: str
    quiet: str
    slip: str
    slip_edge: str
    shadow: str
    metal: str
    metal_edge: str
    red: str
    black: str
    case: str
    case_edge: str
    ridge: str
    shine: str
    flat: bool = False


THEMES: dict[ThemeName, Theme] = {
    "light": Theme(
        cloth="#f1ece1", weave="#e9e2d3", hem="#b9654a", ink="#3a2c22", quiet="#77665a", slip="#fffdf7",
        slip_edge="#d8ccb8", shadow="#5b4632", metal="#8d9196", metal_edge="#5c6065", red="#b8402f", black="#2d2a2b",
        case="#6f7f79", case_edge="#46544f", ridge="#3a2418", shine="#fff8ec",
    ),
    "dark": Theme(
        cloth="#2b2723", weave="#302b27", hem="#a8745d", ink="#f1e6d6", quiet="#b5a593", slip="#3b352f",
        slip_edge="#574d43", shadow="#0d0a08", metal="#a9adb2", metal_edge="#74787d", red="#d8604d", black="#151313",
        case="#71837c", case_edge="#9fb1aa", ridge="#2a170d", shine="#fff3e0",
    ),
    "print": Theme(
        cloth="#ffffff", weave="#ffffff", hem="#ffffff", ink="#000000", quiet="#444444", slip="#ffffff",
        slip_edge="#999999", shadow="#ffffff", metal="#555555", metal_edge="#222222", red="#a33022", black="#111111",
        case="#e4e4e4", case_edge="#222222", ridge="#000000", shine="#ffffff", flat=True,
    ),
}  # fmt: skip

_LAMPS = {"red": "#e2402c", "yellow": "#f2b91d", "green": "#2f9a5f", "blue": "#3f7fd6", "white": "#fff6d8"}


def lamp_colour(name: str) -> str:
    """Give the colour of a lamp's lens; an unknown name gives a warm white.

    Parameters
    ----------
    name : str
        The handbook's word for it.

    Examples
    --------
    >>> lamp_colour("red")
    '#e2402c'
    """
    return _LAMPS.get(name, _LAMPS["white"])


def mixed(colour: str, other: str, share: float) -> str:
    """Mix two colours.

    Parameters
    ----------
    colour, other : str
        As #rrggbb.
    share : float
        Share of the other. [1]

    Examples
    --------
    >>> mixed("#000000", "#ffffff", 0.5)
    '#808080'
    """
    pairs = ((int(colour[k : k + 2], 16), int(other[k : k + 2], 16)) for k in (1, 3, 5))
    return "#" + "".join(f"{round(a + share * (b - a)):02x}" for a, b in pairs)
