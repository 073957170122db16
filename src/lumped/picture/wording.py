"""All words of a picture in their places: names pressed along lumps, slips beside parts, legs and gaps."""

from collections.abc import Callable, Iterator

import numpy as np
from numpy.typing import NDArray

from lumped.picture.bodies import Body
from lumped.picture.ground import Ground
from lumped.picture.labels import Box, Label, free_place, slip_size
from lumped.picture.svg import text_width
from lumped.picture.viewing import View
from lumped.picture.wires import Wire
from lumped.sculpt import Lump, Nearness
from lumped.shape import Ball, Block, Disc, PathRoll, Ring, Roll
from lumped.texts import say

__all__ = ["beads", "place_words"]

Floats = NDArray[np.float64]
_ALONG = (0.5, 0.38, 0.62, 0.25, 0.75, 0.15, 0.85)
_MOST_LEGS = 8  # with more, a leg says only its name, and the short leg nothing
_MOST_NAMES = 60  # more lumps than this are told by touch, not by writing


def place_words(
    view: View, bodies: tuple[Body, ...], wires: tuple[Wire, ...], ground: Ground, size: float, *, legs: bool
) -> tuple[Label, ...]:
    """Place all words.

    Parameters
    ----------
    view : View
        What is shown.
    bodies, wires : tuples
        What lies on the table already.
    ground : Ground
        The table.
    size : float
        Size of the letters. [mm]
    legs : bool
        Whether each leg says its name and depth.

    Returns
    -------
    tuple of Label
    """
    taken = [Box.of(body.corners) for body in bodies]
    taken += [Box.round(wire.points[-1], 2.0, 2.0) for wire in wires]
    taken += [box for wire in wires for line in (wire.points, wire.hidden) for box in beads(line)]
    placed: list[Label] = []

    def put(label: Label) -> None:
        placed.append(label)
        taken.append(label.box)

    for pair in view.near:
        put(_gap(pair, taken, ground, size))
    lumps = view.sculpture.lumps if len(view.sculpture.lumps) <= _MOST_NAMES else ()
    outside = [lump for lump in lumps if not _pressed(lump, view, taken, put, size)]
    for body in bodies:
        put(_slip(body, view, taken, ground, size))
    if legs:
        for label in _legs(wires, taken, ground, size):
            put(label)
    for lump in outside:
        put(_beside(lump, taken, ground, size))
    return tuple(placed)


def beads(line: Floats | None) -> list[Box]:
    """Small boxes along a line, so that no words lie across it. [mm]"""
    if line is None:
        return []
    reached = np.r_[0.0, np.cumsum(np.linalg.norm(np.diff(line, axis=0), axis=1))]
    even = np.linspace(0, reached[-1], max(2, int(reached[-1] / 2)))
    points = np.column_stack([np.interp(even, reached, line[:, k]) for k in (0, 1)])
    return [Box.round(point, 1.8, 1.8) for point in points]


def _pressed(lump: Lump, view: View, taken: list[Box], put: Callable[[Label], None], size: float) -> bool:
    """Press a name along the lump, where it fits between what is there."""
    width, height = text_width(lump.name, size), 1.3 * size
    for centre, turn, length, across in _seats(lump):
        cos, sin = abs(np.cos(np.radians(turn))), abs(np.sin(np.radians(turn)))
        if width + size > length or height > across:
            continue
        box = Box.round(centre, cos * width + sin * height, sin * width + cos * height)
        if not any(box.meets(other) for other in taken) and not _covered(lump, box, view):
            put(Label(lines=(lump.name,), box=box, anchor=centre, size=size, turn=turn, kind="lump"))
            return True
    return False


def _covered(lump: Lump, box: Box, view: View) -> bool:
    """Whether a place on a lump lies under another lump."""
    low, high = lump.solid.bounds()[:, 2]
    others = view.sculpture.lumps[view.sculpture.lumps.index(lump) + 1 :]
    for other in others:
        z = float(np.clip(other.solid.bounds()[:, 2].mean(), low, None))
        points = np.column_stack([1e-3 * box.samples, np.full(len(box.samples), z)])
        if float(other.solid.bounds()[1, 2]) >= high - 1e-4 and bool(np.any(other.solid.distance(points) < 0)):
            return True
    return False


def _seats(lump: Lump) -> Iterator[tuple[Floats, float, float, float]]:
    """Where a name may stand on a lump: middle [mm], turn [deg], room along and across [mm]."""
    solid = lump.solid
    match solid:
        case Ball() | Disc():
            for shift in (0.0, 0.35, -0.35, 0.6, -0.6):
                room = 2 * np.sqrt(1 - (abs(shift) + 0.15) ** 2) * solid.radius
                yield 1e3 * (np.array(solid.centre[:2]) + np.array([0, shift * solid.radius])), 0.0, 1e3 * room, 1e9
        case Block():
            half = solid.size[0] / 2 * np.array([np.cos(solid.turn), np.sin(solid.turn)])
            aside = np.array([-half[1], half[0]]) / np.hypot(*half) * solid.size[1]
            for shift in (0.0, 0.3, -0.3):
                yield from _along(np.array(solid.centre[:2]) - half + shift * aside, 2 * half, solid.size[1])
            for share in (0.0, 0.3, -0.3):
                yield from _along(np.array(solid.centre[:2]) + 2 * share * half - aside / 2, aside, solid.size[0])
        case Roll():
            yield from _along(np.array(solid.start[:2]), np.subtract(solid.end, solid.start)[:2], 2 * solid.radius)
        case PathRoll():
            points = np.array(solid.points)[:, :2]
            steps = np.diff(points, axis=0)
            for k in np.argsort(-np.linalg.norm(steps, axis=1)):
                yield from _along(points[k], steps[k], 2 * solid.radius)
        case Ring():
            room = solid.outer - solid.inner
            middle = np.array(solid.centre[:2]) - np.array([0, (solid.outer + solid.inner) / 2])
            yield 1e3 * middle, 0.0, 1e3 * solid.inner, 1e3 * room


def _along(start: Floats, step: Floats, across: float) -> Iterator[tuple[Floats, float, float, float]]:
    length = float(np.hypot(*step))
    turn = float(np.degrees(np.arctan2(step[1], step[0])))
    turn = turn - 180 if turn > 90.01 else turn + 180 if turn <= -89.99 else turn
    for share in _ALONG:
        yield 1e3 * (start + share * step), turn, 2e3 * min(share, 1 - share) * length, 1e3 * across


def _slip(body: Body, view: View, taken: list[Box], ground: Ground, size: float) -> Label:
    remark = view.remarks.get(body.part.name)
    lines = (body.part.name, remark.words) if remark and remark.words else (body.part.name,)
    width, height = slip_size(lines, size)
    own = Box.of(body.corners)
    box = free_place(own, width, height, taken, ground, start=4.2 if body.part.kind == "lamp" else 1.5)
    return Label(lines=lines, box=box, anchor=_nearest(own.widened(0.4), box), size=size, kind="part")


def _nearest(own: Box, other: Box) -> Floats:
    """Give the point of a box that is nearest to the middle of another. [mm]"""
    middle = np.array([other.left + other.right, other.near + other.far]) / 2
    return np.asarray(np.clip(middle, [own.left, own.near], [own.right, own.far]))


def _legs(wires: tuple[Wire, ...], taken: list[Box], ground: Ground, size: float) -> Iterator[Label]:
    small, crowded = 0.82 * size, len(wires) > _MOST_LEGS
    for wire in wires:
        if wire.twisted or (crowded and not wire.loose and wire.leg.name in ("short", "other", "one")):
            continue
        if crowded and not wire.loose:
            text = wire.leg.name
        elif wire.leg.entry is None or wire.leg.tip is None:
            text = f"{wire.leg.name}, {say('picture-dangles')}"
        else:
            depth = f"{1e3 * np.linalg.norm(wire.leg.tip - wire.leg.entry):.0f}"
            text = say("picture-depth", leg=wire.leg.name, depth=depth)
        width, height = text_width(text, small) + 0.4 * small, 1.25 * small
        anchor = wire.points[-1]
        box = free_place(Box.round(anchor, 0, 0), width, height, taken, ground, start=1.8)
        yield Label(lines=(text,), box=box, anchor=anchor, size=small, kind="leg")


def _gap(pair: Nearness, taken: list[Box], ground: Ground, size: float) -> Label:
    small = 0.82 * size
    key = "picture-gap" if pair.gap.distance > 0 else "picture-pressed"
    text = say(key, gap=f"{abs(1e3 * pair.gap.distance):.1f}")
    anchor = 1e3 * pair.gap.point[:2]
    box = free_place(Box.round(anchor, 4, 6), text_width(text, small), 1.25 * small, taken, ground, start=0.5)
    return Label(lines=(text,), box=box, anchor=anchor, size=small, kind="gap")


def _beside(lump: Lump, taken: list[Box], ground: Ground, size: float) -> Label:
    low, high = 1e3 * lump.solid.bounds()[:, :2]
    own = Box(*map(float, (*low, *high)))
    box = free_place(own, text_width(lump.name, size), 1.25 * size, taken, ground, start=0.8)
    anchor = _nearest(own, box)
    return Label(lines=(lump.name,), box=box, anchor=anchor, size=size, kind="lump")
