"""From the words of a sculpture file to solids in metres.

A lump is first placed by bounding boxes, then slid along its direction until the true gap between the two surfaces is
the one asked for.
"""

from collections.abc import Callable, Mapping
from math import radians

import numpy as np
from numpy.typing import NDArray

from lumped.errors import SculptureError
from lumped.sculpt.model import BallEntry, BlockEntry, DiscEntry, LumpEntry, PathEntry, RollEntry, SlabEntry
from lumped.sculpt.places import Beside, Between, OnTop, read_lump_place
from lumped.sculpt.reading import nearest_remedy
from lumped.sculpt.scene import Lump
from lumped.shape import Ball, Block, Disc, PathRoll, Roll, Solid, gap_between
from lumped.texts import say

__all__ = ["place_lumps"]

_TOWARDS = {"left": (-1.0, 0.0), "right": (1.0, 0.0), "near": (0.0, -1.0), "far": (0.0, 1.0)}
_SLIDES = 12
_STEP = 2e-3  # m
_SLIDE_TOLERANCE = 2e-5  # m; a fiftieth of a millimetre, finer than any hand


def place_lumps(entries: list[LumpEntry], file: str) -> tuple[Lump, ...]:
    """Place all lumps, in order; a lump is placed by lumps that stand before it.

    Parameters
    ----------
    entries : list of LumpEntry
        The lumps of the file.
    file : str
        The file's name, for messages.

    Returns
    -------
    tuple of Lump

    Raises
    ------
    SculptureError
        If a lump is placed by one that is not in the file, or stands below it.
    """
    placed: dict[str, Lump] = {}
    for entry in entries:
        placed[entry.name] = Lump(
            name=entry.name, dough=entry.dough, shape=entry.shape, solid=_placed_solid(entry, placed, file)
        )
    return tuple(placed.values())


def _placed_solid(entry: LumpEntry, placed: Mapping[str, Lump], file: str) -> Solid:
    rest = _height(entry) / 2
    if entry.at_mm is not None:
        x, y, *z = (1e-3 * each for each in entry.at_mm)
        return _solid(entry, np.array([x, y, z[0] if z else rest]), file)

    def neighbour(name: str) -> Solid:
        if name not in placed:
            remedy = nearest_remedy(name, placed) if placed else say("remedy-first-lump")
            raise SculptureError("sculpture-no-lump-above", file=file, name=entry.name, lump=name, remedy=remedy)
        return placed[name].solid

    here = _solid(entry, np.array([0.0, 0.0, rest]), file)
    match read_lump_place(entry.place):
        case Beside() as place:
            return _beside(entry, here, neighbour(place.of), place, file)
        case OnTop() as place:
            below = neighbour(place.of).bounds()
            middle = below.mean(axis=0) + np.array([*place.shift, 0.0])
            return _solid(entry, np.array([middle[0], middle[1], below[1, 2] - place.pressed + rest]), file)
        case Between() as place:
            first, second = neighbour(place.first), neighbour(place.second)
            middle = gap_between(first, second).point
            return _solid(entry, np.array([middle[0], middle[1], rest]), file)
    return here


def _beside(entry: LumpEntry, here: Solid, other: Solid, place: Beside, file: str) -> Solid:
    """Slide a lump towards the other until the true gap is right."""
    direction = np.array([*_TOWARDS[place.side], 0.0])
    axis = int(np.argmax(np.abs(direction)))
    box, own = other.bounds(), here.bounds()
    middle = box.mean(axis=0) + np.array([*place.shift, 0.0])
    middle[2] = _height(entry) / 2
    reach_of_boxes = float(box[1, axis] - box[0, axis] + own[1, axis] - own[0, axis]) / 2
    reach = reach_of_boxes + place.gap

    def placed(reach: float) -> tuple[Solid, float]:
        solid = _solid(entry, middle + reach * direction, file)
        return solid, gap_between(other, solid).distance - place.gap

    for _ in range(_SLIDES):
        solid, excess = placed(reach)
        if abs(excess) < _SLIDE_TOLERANCE:
            return solid
        reach -= excess
    found = _slid_from_outside(placed, outer=reach_of_boxes + abs(place.gap))
    if found is None:
        gap = f"{1e3 * place.gap:g}"
        raise SculptureError("sculpture-far-off", file=file, name=entry.name, lump=place.of, gap=gap)
    return found


def _slid_from_outside(placed: Callable[[float], tuple[Solid, float]], *, outer: float) -> Solid | None:
    """Come from far outside in small steps until the gap is reached, then halve; for lumps with bays, like paths."""
    inner = next((reach for reach in np.arange(outer, -outer, -_STEP) if placed(reach)[1] < 0), None)
    if inner is None:
        return None
    far = inner + _STEP
    for _ in range(12):
        half = (inner + far) / 2
        inner, far = (half, far) if placed(half)[1] < 0 else (inner, half)
    return placed(far)[0]


def _height(entry: LumpEntry) -> float:
    """Height of a lump that lies on the table. [m]"""
    if isinstance(entry, BallEntry | RollEntry | PathEntry):
        return 1e-3 * entry.diameter_mm
    return 1e-3 * (entry.height_mm if isinstance(entry, BlockEntry) else entry.thickness_mm)


def _solid(entry: LumpEntry, middle: NDArray[np.float64], file: str) -> Solid:
    """Build the solid with its middle at a point. [m]"""
    turn, centre = radians(entry.turn_deg), _triple(middle)
    match entry:
        case BallEntry():
            return Ball(centre=centre, radius=entry.diameter_mm / 2000)
        case RollEntry():
            half = entry.length_mm / 2000 * np.array([np.cos(turn), np.sin(turn), 0.0])
            return Roll(start=_triple(middle - half), end=_triple(middle + half), radius=entry.diameter_mm / 2000)
        case PathEntry():
            return _path(entry, middle, turn, file)
        case SlabEntry():
            return Block(centre=centre, size=_metres(entry.length_mm, entry.width_mm, entry.thickness_mm), turn=turn)
        case BlockEntry():
            return Block(centre=centre, size=_metres(entry.length_mm, entry.width_mm, entry.height_mm), turn=turn)
        case DiscEntry():
            return Disc(centre=centre, radius=entry.diameter_mm / 2000, height=entry.thickness_mm / 1000)


def _path(entry: PathEntry, middle: NDArray[np.float64], turn: float, file: str) -> Solid:
    """A path is drawn where it lies: its points are shifted by its place; repeated points are dropped."""
    points = 1e-3 * np.array(entry.points_mm)
    kept = points[np.r_[True, np.any(np.diff(points, axis=0) != 0, axis=1)]]
    if len(kept) < 2:
        raise SculptureError("sculpture-path-still", file=file, lump=entry.name)
    turned = kept @ np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
    shifted = np.column_stack([turned + middle[:2], np.full(len(kept), middle[2])])
    return PathRoll(points=tuple(map(_triple, shifted)), radius=entry.diameter_mm / 2000)


def _metres(*lengths_mm: float) -> tuple[float, float, float]:
    return _triple(1e-3 * np.array(lengths_mm))


def _triple(point: NDArray[np.float64]) -> tuple[float, float, float]:
    x, y, z = (float(each) for each in point)
    return x, y, z
