"""Where the bodies of parts stand: a lamp or resistor between its legs, everything else on free cloth beside them."""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from lumped.picture.ground import Ground
from lumped.sculpt import Leg, Part, Sculpture

__all__ = ["Body", "entry_of", "place_bodies", "terminals"]

Floats = NDArray[np.float64]
_SPANNING = ("lamp", "resistor", "switch")
_RINGS = (0.0, 6.0, 11.0, 16.0, 22.0, 30.0, 40.0, 55.0)  # mm
_DIRECTIONS = 16
_FARTHEST_SPAN = 60.0  # mm; stiff legs reach no farther
_CELL = 6.0  # mm; width of a cell as drawn, a sign and not to scale


@dataclass(frozen=True, slots=True, kw_only=True)
class Body:
    """The body of a part.

    Parameters
    ----------
    part : Part
        Whose body.
    centre : (2,) float
        Its middle. [mm]
    size : (2,) float
        Length along its own axis, and width. [mm]
    turn : float
        Angle from "to the right" to its axis, which points to its minus leg, anticlockwise. [rad]
    """

    part: Part
    centre: Floats
    size: tuple[float, float]
    turn: float

    @property
    def reach(self) -> float:
        """Radius of a circle round it. [mm]"""
        return float(np.hypot(*self.size)) / 2

    def at(self, along: float, across: float) -> Floats:
        """Give a point in its own frame. [mm]"""
        cos, sin = np.cos(self.turn), np.sin(self.turn)
        return self.centre + along * np.array([cos, sin]) + across * np.array([-sin, cos])

    @property
    def corners(self) -> Floats:
        """Its corners, (4, 2). [mm]"""
        a, b = self.size[0] / 2, self.size[1] / 2
        return np.array([self.at(-a, -b), self.at(a, -b), self.at(a, b), self.at(-a, b)])


def entry_of(leg: Leg) -> Floats | None:
    """Give where a leg goes in, from above; None if it dangles. [mm]"""
    return None if leg.entry is None else 1e3 * leg.entry[:2]


def terminals(body: Body) -> tuple[Floats, Floats]:
    """Give where the plus and the minus leg leave a body. [mm]"""
    length = body.size[0] / 2
    if body.part.kind == "pack":
        return body.at(-length / 3, body.size[1] / 2), body.at(length / 3, body.size[1] / 2)
    if body.part.kind == "motor":
        return body.at(-length, 1.2), body.at(-length, -1.2)
    if body.part.kind == "lamp":
        return body.at(-1.27, 0), body.at(1.27, 0)
    return body.at(-length, 0), body.at(length, 0)


def place_bodies(sculpture: Sculpture, ground: Ground) -> tuple[Body, ...]:
    """Place the bodies of all parts, stiff ones first.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    ground : Ground
        The table; places that are used become dear.

    Returns
    -------
    tuple of Body
        In the order of the parts.
    """
    placed: dict[str, Body] = {}
    for part in sorted(sculpture.parts, key=lambda each: _ORDER[each.kind]):
        body = _pack(part, ground, placed) if part.kind == "pack" else _beside_legs(part, ground, placed)
        placed[part.name] = body
        ground.take(_samples(body))
    return tuple(placed[part.name] for part in sculpture.parts)


_ORDER = {"lamp": 0, "resistor": 1, "switch": 2, "motor": 3, "pack": 4}
_SIZES = {"lamp": (5.6, 5.6), "resistor": (9.0, 3.2), "switch": (15.0, 7.0), "motor": (15.0, 10.0)}


def _beside_legs(part: Part, ground: Ground, placed: dict[str, Body]) -> Body:
    size = _SIZES[part.kind]
    ends = [entry for leg in part.legs if (entry := entry_of(leg)) is not None]
    if not ends:
        ends = [np.array([ground.high[0] + 26.0, ground.low[1] + 6.0])]
    elif len(ends) == 1 and part.kind in _SPANNING:
        ends.append(ends[0] + _away(ends[0], ground))
    middle, apart = np.mean(ends, axis=0), float(np.linalg.norm(ends[-1] - ends[0]))
    along = ends[-1] - ends[0]
    turn = float(np.arctan2(along[1], along[0])) if apart > 0.5 else 0.0
    if len(ends) == 2 and entry_of(part.legs[0]) is None:
        turn += np.pi
    stays = part.kind == "lamp" or (part.kind in _SPANNING and size[0] + 3 < apart < _FARTHEST_SPAN)
    first = Body(part=part, centre=middle, size=size, turn=turn)
    return _cheapest(first, ground, placed, price_of_dough=0.0 if stays else 25.0)


def _away(end: Floats, ground: Ground) -> Floats:
    """Where a part with one leg in the air leans: twice as far as its body, the way with least dough under it. [mm]"""
    angles = 2 * np.pi * (np.arange(24) + 0.5) / 24 - np.pi / 2
    ways = np.column_stack([np.cos(angles), np.sin(angles)])
    prices = [
        length / 100 + ground.mean_price(end + way * np.linspace(length / 2, length / 2 + 14.0, 12)[:, None])
        for length in (16.0, 28.0, 40.0)
        for way in ways
    ]
    best = int(np.argmin(prices))
    return np.asarray((16.0, 28.0, 40.0)[best // 24] * ways[best % 24])


def _cheapest(first: Body, ground: Ground, placed: dict[str, Body], *, price_of_dough: float) -> Body:
    """Try places in rings round a point, and keep the one that is near, free, and off the dough."""
    best, least = first, np.inf
    for ring in _RINGS:
        for k in range(_DIRECTIONS if ring else 1):
            angle = first.turn + np.pi / 2 + 2 * np.pi * k / _DIRECTIONS
            centre = first.centre + ring * np.array([np.cos(angle), np.sin(angle)])
            body = replace(first, centre=centre)
            price = ring + price_of_dough * ground.share_of_dough(_samples(body))
            price += sum(200.0 for other in placed.values() if _meet(body, other))
            if price < least - 1e-9:
                best, least = body, price
    return best


def _pack(part: Part, ground: Ground, placed: dict[str, Body]) -> Body:
    """A pack lies on the side of the sculpture that is nearest to its wires, the near side if that is as good."""
    count = cells_in(part)
    size = (count * _CELL + 5.0, 15.0)
    ends = [entry for leg in part.legs if (entry := entry_of(leg)) is not None]
    aim = np.mean(ends, axis=0) if ends else (ground.low + ground.high) / 2
    places = [(aim[0] + shift, ground.low[1] - 19.0, 0.0) for shift in (0, -20, 20, -40, 40, -60, 60)]
    places += [(aim[0] + shift, ground.high[1] + 19.0, np.pi) for shift in (0, -20, 20, -40, 40)]
    bodies = [Body(part=part, centre=np.array([x, y]), size=size, turn=turn) for x, y, turn in places]

    def price(body: Body) -> float:
        met = sum(200.0 for other in placed.values() if _meet(body, other))
        wires = sum(float(np.linalg.norm(each - end)) for each, end in zip(terminals(body), ends, strict=False))
        return met + wires + (20.0 if body.turn else 0.0)

    return min(bodies, key=price)


def cells_in(part: Part) -> int:
    """Give how many cells a pack is drawn with: what its key says, else three.

    The key's count, as in "pack-4aa-alkaline".
    """
    digits = [int(each) for each in part.key if each.isdigit()]
    return digits[0] if digits and digits[0] else 3


def _meet(one: Body, other: Body) -> bool:
    return float(np.linalg.norm(one.centre - other.centre)) < one.reach + other.reach + 1.0


def _samples(body: Body) -> Floats:
    a, b = body.size[0] / 2, body.size[1] / 2
    return np.array([body.at(x * a, y * b) for x in (-1, -0.5, 0, 0.5, 1) for y in (-1, 0, 1)])
