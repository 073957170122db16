"""The picture of a sculpture: a table seen from above."""

from collections.abc import Sequence
from typing import Literal

import numpy as np

from lumped.picture.arranging import Arrangement, arrange
from lumped.picture.cloth import draw_cloth
from lumped.picture.doughs import draw_lump
from lumped.picture.glyphs import draw_body, draw_hidden, draw_wire
from lumped.picture.labels import Box, Label
from lumped.picture.levels import Level, level_lines
from lumped.picture.svg import element, number, open_path, text_width, words
from lumped.picture.theme import FAMILY, THEMES, Theme, ThemeName, mixed
from lumped.picture.viewing import View, view_of
from lumped.picture.wording import beads
from lumped.sculpt import Lump, Nearness
from lumped.texts import say
from lumped.verdict import Verdict

__all__ = ["drawn", "sculpture_svg"]

_HEM = 5.0  # mm of cloth round everything


def sculpture_svg(
    verdict: Verdict | View,
    *,
    theme: ThemeName = "light",
    view: Literal["dough", "potential"] = "dough",
    scale: float = 6.0,
    labels: bool = True,
    legs: bool = False,
    letters: float | None = None,
    prefix: str = "",
) -> str:
    """Draw a sculpture from above, at true proportions.

    Parameters
    ----------
    verdict : Verdict or View
        What is drawn; a `View` can do without a verdict.
    theme : {"light", "dark", "print"}
        Colours.
    view : {"dough", "potential"}
        Dough alone, or with level lines of the potential pressed in.
    scale : float
        Pixels of the picture's own size for each millimetre. [1/mm]
    labels, legs : bool
        Whether names and states are written, and each leg's name and depth.
    letters : float, optional
        Size of the letters; by default in proportion to the sculpture. [mm]
    prefix : str
        Put before each id, so that several pictures can stand on one page.

    Returns
    -------
    str
        An SVG document whose user unit is the millimetre. Lumps carry `data-lump`, parts `data-part`, legs
        `data-leg`, level lines `data-volts`.

    Examples
    --------
    >>> from pathlib import Path
    >>> from lumped.sculpt import Sculpture
    >>> from lumped.shape import Ball
    >>> ball = Lump(name="ball", dough="salt", shape="ball", solid=Ball(centre=(0, 0, 0.01), radius=0.01))
    >>> table = Sculpture(title="One ball", story="", invented=True, path=Path(), doughs={}, looks={}, lumps=(ball,),
    ...                   parts=())
    >>> sculpture_svg(View(sculpture=table)).count('data-lump="ball"')
    1
    """
    seen = view_of(verdict)
    arrangement = arrange(seen, letters=letters, labels=labels, legs=legs)
    return drawn(arrangement, THEMES[theme], view=view, prefix=prefix, size=scale, unit="")


def drawn(
    arrangement: Arrangement,
    theme: Theme,
    *,
    view: str = "dough",
    prefix: str = "",
    size: float = 1.0,
    unit: str = "mm",
) -> str:
    """Draw an arrangement: `size` and `unit` say how large a millimetre of the table is."""
    seen = arrangement.view
    frame = arrangement.box.widened(0.5 if theme.flat else _HEM)
    width, height = frame.right - frame.left, frame.far - frame.near
    levels = level_lines(seen.sculpture, seen.reading) if view == "potential" and seen.reading else {}
    layers = [
        element("title", words(say("picture-title", title=seen.sculpture.title))),
        "" if theme.flat else draw_cloth(frame, theme, prefix),
        *_lumps(seen.sculpture.lumps, arrangement, theme, levels, prefix),
        *(draw_hidden(wire, theme) for wire in arrangement.wires),
        *(_near(pair, theme) for pair in seen.near),
        element("g", *_level_words(levels, theme, arrangement), class_="volts") if levels else "",
        *_parts(arrangement, theme, prefix),
        *(_label(label, theme) for label in arrangement.labels),
    ]
    return element(
        "svg", *layers, xmlns="http://www.w3.org/2000/svg", role="img",
        viewBox=f"{number(frame.left)} {number(-frame.far)} {number(width)} {number(height)}",
        width=f"{number(width * size)}{unit}", height=f"{number(height * size)}{unit}",
        font_family=FAMILY,
    )  # fmt: skip


def _lumps(
    lumps: Sequence[Lump], arrangement: Arrangement, theme: Theme, levels: dict[str, list[Level]], prefix: str
) -> list[str]:
    """Draw lumps from the table upwards, and in the file's order where they stand equally high."""
    order = sorted(range(len(lumps)), key=lambda k: (round(1e3 * float(lumps[k].solid.bounds()[0, 2])), k))
    looks = arrangement.view.sculpture.looks
    return [
        draw_lump(lumps[k], looks.get(lumps[k].dough), theme, key=f"{prefix}lump-{k + 1}",
                  levels=levels.get(lumps[k].name, ()), exact=theme.flat)
        for k in order
    ]  # fmt: skip


def _parts(arrangement: Arrangement, theme: Theme, prefix: str) -> list[str]:
    groups = []
    for number_, body in enumerate(arrangement.bodies, start=1):
        part, remark = body.part, arrangement.view.remarks.get(body.part.name)
        title = (
            say("picture-part-does", name=part.name, title=part.title, does=remark.words) if remark and remark.words
            else say("picture-part", name=part.name, title=part.title)
        )  # fmt: skip
        state = remark.state if remark else part.state
        wires = [draw_wire(wire, theme) for wire in arrangement.wires if wire.leg.part == part.name]
        drawn_body = draw_body(body, remark.lively if remark else 0.0, state, theme)
        groups.append(
            element("g", element("title", words(title)), *wires, drawn_body, id=f"{prefix}part-{number_}",
                    data_part=part.name, data_kind=part.kind, data_state=state or None)
        )  # fmt: skip
    return groups


def _near(pair: Nearness, theme: Theme) -> str:
    """Mark a gap: two small curves that face each other across it; on paper a measure from skin to skin."""
    x, y = 1e3 * pair.gap.point[:2]
    across = 1e3 * (pair.gap.point_b[:2] - pair.gap.point_a[:2])
    apart = float(np.hypot(*across))
    turn = float(np.degrees(np.arctan2(across[1], across[0]))) if apart > 1e-3 else 0.0
    if theme.flat and pair.gap.distance > 0:
        a = number(apart / 2)
        d = f"M-{a} 0H{a}M-{a} -1.6V1.6M{a} -1.6V1.6"
    else:
        near, far = number(1.0 + apart / 2), number(2.4 + apart / 2)
        d = f"M{far} -2.4Q{near} 0 {far} 2.4M-{far} -2.4Q-{near} 0 -{far} 2.4"
    mark = element("path", d=d, fill="none", stroke=theme.ink if theme.flat else theme.hem, stroke_linecap="round",
                   stroke_width=0.25 if theme.flat else 0.5)  # fmt: skip
    return element("g", mark, class_="near", transform=f"translate({number(x)} {number(-y)}) rotate({number(-turn)})")


def _label(label: Label, theme: Theme) -> str:
    x, y = (label.box.left + label.box.right) / 2, -(label.box.near + label.box.far) / 2
    if label.kind == "part":
        return _slip(label, x, y, theme)
    style = {"font_style": "italic"} if label.kind in ("lump", "leg") else {}
    turn = f"rotate({number(-label.turn)} {number(x)} {number(y)})" if label.turn else None
    colour = theme.ink if theme.flat else theme.ridge if label.kind == "lump" and _on(label) else theme.ink
    halo = {} if _on(label) and not theme.flat else {
        "stroke": theme.cloth, "stroke_width": 0.5, "paint_order": "stroke", "stroke_linejoin": "round"}  # fmt: skip
    text = element("text", words(label.lines[0]), x=x, y=y + 0.35 * label.size, font_size=label.size, fill=colour,
                   text_anchor="middle", transform=turn, class_=f"word-{label.kind}", **style, **halo)  # fmt: skip
    tied = label.kind == "leg" or (label.kind == "lump" and not _on(label))
    return _thread(label, theme) + text if tied else text


def _on(label: Label) -> bool:
    """Whether words stand on what they name."""
    box, (x, y) = label.box, label.anchor
    return bool(box.left <= x <= box.right and box.near <= y <= box.far)


def _slip(label: Label, x: float, y: float, theme: Theme) -> str:
    """A slip of paper, tied to what it names with a thread."""
    box, size = label.box, label.size
    paper = element("rect", x=box.left, y=-box.far, width=box.right - box.left, height=box.far - box.near,
                    rx=0.35 * size, fill=theme.slip, stroke=theme.slip_edge, stroke_width=0.25,
                    class_="slip")  # fmt: skip
    first = y - 0.64 * size * (len(label.lines) - 1) + 0.35 * size
    lines = [
        element("text", words(line), x=x, y=first + 1.28 * size * k, font_size=size, text_anchor="middle",
                fill=theme.ink if k == 0 else mixed(theme.ink, theme.slip, 0.15),
                font_weight="bold" if k == 0 else None)
        for k, line in enumerate(label.lines)
    ]  # fmt: skip
    return _thread(label, theme) + element("g", paper, *lines, class_="word-part")


def _thread(label: Label, theme: Theme) -> str:
    box = label.box
    near = np.clip(label.anchor, [box.left, box.near], [box.right, box.far])
    way = label.anchor - near
    length = float(np.hypot(*way))
    gap = 1.0 if label.kind == "leg" else 0.0
    if length < gap + 1.2:
        return ""
    end = label.anchor - way / length * gap
    return element("path", d=open_path([near, end]), stroke=theme.quiet, stroke_width=0.25, fill="none", opacity=0.8)


def _level_words(levels: dict[str, list[Level]], theme: Theme, arrangement: Arrangement) -> list[str]:
    """Write the volts on the first, middle and last line of each lump, where nothing else is written."""
    size = 0.8 * max([label.size for label in arrangement.labels if label.kind == "part"], default=2.6)
    taken = [label.box for label in arrangement.labels] + [Box.of(body.corners) for body in arrangement.bodies]
    taken += [box for wire in arrangement.wires for line in (wire.points, wire.hidden) for box in beads(line)]
    sculpture, written = arrangement.view.sculpture, []
    for name, lines in levels.items():
        look = sculpture.looks.get(sculpture.lump(name).dough)
        halo = mixed(look.colour if look else "#d9a066", theme.shine, 0.3)
        for level in (lines[k] for k in sorted({0, len(lines) // 2, len(lines) - 1})):
            text = say("picture-volts", volts=f"{level.volts:.4g}")
            box = _free_on(level, text_width(text, size), 1.2 * size, taken)
            if box is not None:
                taken.append(box.widened(0.4))
                written.append(
                    element("text", words(text), x=(box.left + box.right) / 2, y=0.35 * size - (box.near + box.far) / 2,
                            font_size=size, text_anchor="middle", fill=theme.ridge, stroke=halo, stroke_width=0.7,
                            stroke_linejoin="round", paint_order="stroke", class_="word-level")
                )  # fmt: skip
    return written


def _free_on(level: Level, width: float, height: float, taken: list[Box]) -> Box | None:
    for share in (0.5, 0.35, 0.65, 0.2, 0.8):
        box = Box.round(level.points[int(share * (len(level.points) - 1))], width, height)
        if not any(box.meets(other) for other in taken):
            return box
    return None
