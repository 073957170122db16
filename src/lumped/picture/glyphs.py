"""Parts from above, in a quiet hand: a lamp is its lens, a pack its cells side by side in a sleeve."""

from collections.abc import Callable

import numpy as np

from lumped.picture.bodies import Body, cells_in
from lumped.picture.svg import element, number, open_path
from lumped.picture.theme import Theme, lamp_colour, mixed
from lumped.picture.wires import Wire
from lumped.reference import handbook

__all__ = ["draw_body", "draw_hidden", "draw_wire"]


def draw_wire(wire: Wire, theme: Theme) -> str:
    """Draw a leg or wire outside the dough; one in the air ends in a small open ring."""
    path = open_path(wire.points)
    colour = {"red": theme.red, "black": theme.black}.get(wire.leg.name, theme.metal)
    width = 0.55 if wire.stiff else 1.0
    edge = theme.metal_edge if colour != theme.black else mixed(theme.black, theme.ink, 0.45)
    soft = {"fill": "none", "stroke_linecap": "round", "stroke_linejoin": "round"}
    lines = [
        element("path", d=path, stroke=edge, stroke_width=width + 0.35, opacity=0.75, **soft),
        element("path", d=path, stroke=colour, stroke_width=width, **soft),
    ]
    x, y = wire.points[-1]
    if wire.loose:
        lines.append(element("circle", cx=float(x), cy=float(-y), r=1.1, fill="none", stroke=colour, stroke_width=0.4))
    if wire.twisted:
        coil = f"M{number(x - 1.1)} {number(-y - 0.9)}l2.2 1.8m0 -1.8l-2.2 1.8m1.1 -2.2v2.6"
        lines.append(element("path", d=coil, stroke=theme.metal_edge, stroke_width=0.45, **soft))
    return element("g", *lines, data_leg=wire.leg.node, data_loose="yes" if wire.loose else None)


def draw_hidden(wire: Wire, theme: Theme) -> str:
    """Draw the stretch of a leg inside the dough, dashed, and the hole where it goes in."""
    if wire.hidden is None:
        return ""
    (x, y), tip = wire.hidden[0], wire.hidden[1]
    hole = element("circle", cx=float(x), cy=float(-y), r=0.75, fill=theme.ridge, opacity=0.75)
    if np.linalg.norm(tip - wire.hidden[0]) < 1.0:
        return element("g", hole, data_leg=wire.leg.node)
    dashed = element("path", d=open_path(wire.hidden), fill="none", stroke=theme.ridge, stroke_width=0.7,
                     stroke_dasharray="1.6 1.1", opacity=0.75)  # fmt: skip
    return element("g", dashed, hole, data_leg=wire.leg.node)


def draw_body(body: Body, lively: float, state: str, theme: Theme) -> str:
    """Draw the body of a part.

    Parameters
    ----------
    body : Body
        The part, where it stands.
    lively : float
        How much it glows or turns, 0 to 1. [1]
    state : str
        Its state.
    theme : Theme
        Colours.
    """
    x, y = body.centre
    turned = f"translate({number(x)} {number(-y)}) rotate({number(-np.degrees(body.turn))})"
    drawn = _BODIES[body.part.kind](body, lively, state, theme)
    return element("g", drawn, transform=turned)


def _lamp(body: Body, lively: float, state: str, theme: Theme) -> str:
    """The lens with its flat edge at the minus leg, a glow, and rays that also read in black and white."""
    colour = lamp_colour(str(handbook().entry("lamps", body.part.key).facts.get("colour", "")))
    lens = "M2 -1.95A2.8 2.8 0 1 0 2 1.95Z"
    unlit = mixed(colour, "#8b8078", 0.45)
    parts = []
    if lively and not theme.flat:
        glow = mixed(colour, "#ffe9c8", 0.4)
        radii = np.linspace(3.0, 6.0 + 6.0 * lively, 16)
        parts = [element("circle", r=float(radius), fill=glow, opacity=0.015 + 0.03 * lively) for radius in radii]
    rays = {0.2: 4, 0.5: 8, 1.0: 12}.get(lively, 0)
    ray = theme.ink if theme.flat else mixed(colour, theme.ink, 0.35)
    for k in range(rays):
        angle = 2 * np.pi * (k + 0.5) / rays
        ends = np.array([[4.3], [5.4 + 1.6 * lively]]) * np.array([np.cos(angle), np.sin(angle)])
        parts.append(
            element("path", d=open_path(ends), stroke=ray, stroke_width=0.45, stroke_linecap="round", fill="none")
        )
    fill = mixed(unlit, colour, min(1.0, 0.4 + 0.6 * lively) if lively else 0.0)
    if theme.flat:
        fill = mixed(fill, "#ffffff", 0.5)
    edge = theme.ink if theme.flat else mixed(colour, "#2a1a12", 0.55)
    parts.append(element("path", d=lens, fill=fill, stroke=edge, stroke_width=0.4))
    if lively:
        parts.append(element("circle", r=1.2 + 0.4 * lively, fill="#fffdf2", opacity=0.35 + 0.5 * lively))
    else:
        parts.append(element("path", d="M-1.7 -0.9A1.9 1.9 0 0 1 -0.4 -1.8", fill="none", stroke="#ffffff",
                             stroke_width=0.45, opacity=0.7, stroke_linecap="round"))  # fmt: skip
    if state == "too-hot":
        parts.append(element("path", d="M-4 -4L4 4M-4 4L4 -4", stroke=theme.ink, stroke_width=0.5, opacity=0.8))
    return "".join(parts)


def _motor(body: Body, lively: float, state: str, theme: Theme) -> str:
    """A can with a shaft and a leaf on it; arcs where it turns."""
    case = element("rect", x=-7.5, y=-4.2, width=10, height=8.4, rx=2.2, fill=theme.case, stroke=theme.case_edge,
                   stroke_width=0.4)  # fmt: skip
    band = element("path", d="M-4.9 -4.2V4.2M-0.1 -4.2V4.2", stroke=theme.case_edge, stroke_width=0.35, opacity=0.6)
    shaft = element("path", d="M2.5 0H5.6", stroke=theme.metal_edge, stroke_width=0.9)
    leaf = element("path", d="M5.2 0C4.2 -2 4.4 -4 5.2 -5.4C6 -4 6.2 -2 5.2 0C6.2 2 6 4 5.2 5.4C4.4 4 4.2 2 5.2 0Z",
                   fill=theme.slip if theme.flat else theme.hem, stroke=theme.case_edge, stroke_width=0.3)  # fmt: skip
    arcs = ["M7.2 -4.4Q8.6 0 7.2 4.4", "M8.8 -3.4Q9.9 0 8.8 3.4"][: 2 if lively == 1 else 1 if lively else 0]
    moved = [
        element("path", d=arc, fill="none", stroke=theme.ink, stroke_width=0.4, opacity=0.7, stroke_linecap="round")
        for arc in arcs
    ]
    return case + band + shaft + leaf + "".join(moved)


def _pack(body: Body, lively: float, state: str, theme: Theme) -> str:
    """Cells side by side in a cloth sleeve."""
    count, (length, width) = cells_in(body.part), body.size
    sleeve = element("rect", x=-length / 2, y=-width / 2, width=length, height=width, rx=2.6, fill=theme.case,
                     stroke=theme.case_edge, stroke_width=0.4)  # fmt: skip
    each = (length - 4.0) / count
    cells = [
        element("rect", x=-length / 2 + 2 + k * each + 0.5, y=-width / 2 + 2.6, width=each - 1, height=width - 5.2,
                rx=1.6, fill=mixed(theme.case, theme.slip, 0.55), stroke=theme.case_edge, stroke_width=0.25)
        for k in range(count)
    ]  # fmt: skip
    seam = element("rect", x=-length / 2 + 1, y=-width / 2 + 1, width=length - 2, height=width - 2, rx=1.9, fill="none",
                   stroke=theme.slip, stroke_width=0.3, stroke_dasharray="1.2 0.9", opacity=0.8)  # fmt: skip
    return sleeve + "".join(cells) + seam


def _switch(body: Body, lively: float, state: str, theme: Theme) -> str:
    """Two studs on a wooden chip and a strip of metal, lifted where it is open."""
    chip = element("rect", x=-7.5, y=-3.5, width=15, height=7, rx=3.2, fill=mixed("#c9a878", theme.cloth, 0.2),
                   stroke=theme.case_edge, stroke_width=0.35)  # fmt: skip
    strip = "M-4.6 0L4.6 0" if state != "open" else "M-4.6 0L3.2 -5"
    lever = element("path", d=strip, stroke=theme.metal_edge, stroke_width=1.3, stroke_linecap="round")
    studs = [
        element("circle", cx=x, cy=0, r=1.2, fill=theme.metal, stroke=theme.metal_edge, stroke_width=0.3)
        for x in (-4.6, 4.6)
    ]
    return chip + lever + "".join(studs)


def _resistor(body: Body, lively: float, state: str, theme: Theme) -> str:
    """The plain rectangle of IEC 60617."""
    return element("rect", x=-4.5, y=-1.6, width=9, height=3.2, fill=theme.slip, stroke=theme.ink, stroke_width=0.45)


_BODIES: dict[str, Callable[[Body, float, str, Theme], str]] = {
    "lamp": _lamp, "motor": _motor, "pack": _pack, "switch": _switch, "resistor": _resistor,
}  # fmt: skip
