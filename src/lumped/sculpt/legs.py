"""Where each leg goes in and where it ends, from words to millimetres.

A place in words names a point on the lump's axis and a direction outwards; the leg goes in where that ray leaves the
lump, and runs back along the ray to its depth.
"""

from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray

from lumped.errors import SculptureError
from lumped.sculpt.model import LegAt
from lumped.sculpt.places import Along, Dangling, Spot, read_leg_place
from lumped.sculpt.reading import nearest_remedy
from lumped.sculpt.scene import Lump
from lumped.shape import Ball, Block, Disc, PathRoll, Roll, Solid

__all__ = ["axis_of", "place_leg"]

Point = NDArray[np.float64]
_TOWARDS: dict[str, tuple[float, float, float]] = {
    "left": (-1, 0, 0), "right": (1, 0, 0), "near": (0, -1, 0), "far": (0, 1, 0), "top": (0, 0, 1),
}  # fmt: skip
_BISECTIONS = 40


def place_leg(place: str | LegAt, lumps: Mapping[str, Lump], *, who: str, file: str) -> tuple[Point, Point] | None:
    """Give entry and tip of a leg.

    Parameters
    ----------
    place : str or LegAt
        The place in words, or in absolute millimetres.
    lumps : mapping of str to Lump
        All lumps.
    who, file : str
        The leg and the file, for messages.

    Returns
    -------
    entry, tip : (3,) float
        Where the leg goes in and where it ends [m]; None if it dangles.

    Raises
    ------
    SculptureError
        If it names a lump that is not in the file, or an end that the lump does not have.
    """
    if isinstance(place, LegAt):
        entry, towards = 1e-3 * np.array(place.at_mm), np.array(place.towards)
        return entry, entry + 1e-3 * place.depth_mm * towards / np.linalg.norm(towards)
    spot = read_leg_place(place)
    if isinstance(spot, Dangling):
        return None
    if spot.lump not in lumps:
        remedy = nearest_remedy(spot.lump, lumps)
        raise SculptureError("sculpture-no-lump", file=file, who=f"“{who}”", lump=spot.lump, remedy=remedy)
    solid = lumps[spot.lump].solid
    start, outwards = _ray(spot, solid, who, file)
    entry = _leaves(solid, start, outwards)
    return entry, entry - spot.depth * outwards


def axis_of(solid: Solid) -> NDArray[np.float64]:
    """Give the line along a lump that "along" and "end" refer to, left (or first) end first.

    Parameters
    ----------
    solid : Solid
        The lump.

    Returns
    -------
    (n, 3) float
        Points of the line. [m]
    """
    match solid:
        case Roll():
            line = np.array([solid.start, solid.end])
            return line if tuple(np.round(line[0], 9)) <= tuple(np.round(line[1], 9)) else line[::-1]
        case PathRoll():
            return np.asarray(solid.points)
        case Block():
            half = solid.size[0] / 2 * np.array([np.cos(solid.turn), np.sin(solid.turn), 0.0])
            return np.array([solid.centre - half, solid.centre + half])
        case Ball() | Disc():
            half = np.array([solid.radius, 0.0, 0.0])
            return np.array([solid.centre - half, solid.centre + half])
    raise TypeError(f"no axis for {type(solid).__name__}")


def _ray(spot: Spot, solid: Solid, who: str, file: str) -> tuple[Point, Point]:
    """Start inside the lump, and unit direction outwards."""
    line = axis_of(solid)
    if spot.face != "end" or not isinstance(solid, Roll | PathRoll):
        if spot.towards in ("first", "last"):
            raise SculptureError("sculpture-no-end", file=file, who=f"“{who}”", end=spot.towards, lump=spot.lump)
        length = float(np.linalg.norm(np.diff(line, axis=0), axis=1).sum())
        if spot.along.distance is not None and not 0 <= spot.along.distance <= length:
            raise SculptureError(
                "sculpture-beyond", file=file, who=f"“{who}”", lump=spot.lump,
                distance=f"{1e3 * spot.along.distance:g}", length=f"{1e3 * length:g}",
            )  # fmt: skip
        start = _point_along(line, spot.along) + np.array([*spot.shift, 0.0])
        return start, np.array(_TOWARDS[spot.towards or "top"], dtype=float)
    last = spot.towards == "last" or (spot.towards != "first" and _last_is(line, spot.towards))
    inner, end = (line[-2], line[-1]) if last else (line[1], line[0])
    outwards = (end - inner) / np.linalg.norm(end - inner)
    return end - 1e-6 * outwards, outwards


def _last_is(line: NDArray[np.float64], towards: str) -> bool:
    """Whether the last end of the line is the one that lies farther towards a side."""
    return bool((line[-1] - line[0]) @ np.array(_TOWARDS[towards]) >= 0)


def _point_along(line: NDArray[np.float64], along: Along) -> Point:
    steps = np.linalg.norm(np.diff(line, axis=0), axis=1)
    reached = np.r_[0.0, np.cumsum(steps)]
    wanted = along.share * reached[-1]
    if along.distance is not None:
        from_last = along.end == "last" or (along.end != "first" and _last_is(line, along.end))
        wanted = reached[-1] - along.distance if from_last else along.distance
    return np.array([np.interp(wanted, reached, line[:, k]) for k in range(3)])


def _leaves(solid: Solid, start: Point, outwards: Point) -> Point:
    """Where a ray from inside leaves a solid; the start itself if it is not inside."""
    box = solid.bounds()
    inside, outside = 0.0, float(np.linalg.norm(box[1] - box[0]))
    if solid.distance(start[None])[0] >= 0:
        return start
    for _ in range(_BISECTIONS):
        middle = (inside + outside) / 2
        if solid.distance((start + middle * outwards)[None])[0] < 0:
            inside = middle
        else:
            outside = middle
    return start + inside * outwards
