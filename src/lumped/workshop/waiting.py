"""How long a made dough stays too hot for hands: in its pot, in slabs, rolled out thin, or in a bag in cold water."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.lasting import AirSide, Cooling, Piece, Room, WarmDough, cool, cool_pot, safe_warmth
from lumped.quantities import Value, drawn
from lumped.reference import handbook
from lumped.workshop.hands import Work

__all__ = ["COUNT", "PLACES", "PRESSED", "Place", "waits", "waits_in"]

Array = NDArray[np.float64]
Place = Literal["pot", "slab", "thin", "bath"]
PLACES: tuple[Place, ...] = ("pot", "slab", "thin", "bath")
PRESSED = ("slab", "thin", "bath")
COUNT = 128  # possible batches that are followed: a few hundredths of a second each place
_LAID: dict[Place, str] = {"slab": "thickness", "thin": "thin"}
_LONG = 86400.0
_LAYERS, _STEPS = 12, 40  # within two hundredths of four times as fine


@dataclass(frozen=True, slots=True, kw_only=True)
class _Warm:
    """Draws of what cooling hangs on, (n,) each."""

    dough: WarmDough
    hot: Array
    found: Mapping[str, Array]

    def beginning(self, air: Array) -> Array:
        """How warm a dough begins that the middle hand may take when this one's own hand may take it. [K]"""
        return np.asarray(air + (self.hot - air) * (safe_warmth().mean - air) / (self.found["safe"] - air))


def waits(work: Work, place: Place, mass: ArrayLike, pot: float) -> Array:
    """Give how long one batch cools until hands may take it, in a room of 20 °C.

    Parameters
    ----------
    work : Work
        The dough, and how hot it is when it is made.
    place : {"pot", "slab", "thin", "bath"}
        Whether it stays in its pot, is pressed into slabs of 2 cm or rolled out to 1 cm on a table, under film, or
        lies 2 cm thick in a tight bag in cold water.
    mass : (...) float
        Dough of the batch; it counts in a pot only. [kg]
    pot : float
        Volume of the pot. [m³]

    Returns
    -------
    (..., n) float
        Times, each for one possible batch; 0 for a dough that was never hot, a day for one that takes longer. [s]

    Notes
    -----
    Hands differ in the warmth T that they bear. One that wants T is served like one that wants the middle T₀ of a
    dough that began at `air + (beginning - air) (T₀ - air)/(T - air)`: excess warmth falls in proportion.
    """
    return waits_in(work, (place,), mass, pot)[place]


def waits_in(work: Work, places: Sequence[Place], mass: ArrayLike, pot: float) -> dict[Place, Array]:
    """Give how long one batch cools in each of some places; as `waits`, those on a table in one go. [s]"""
    shape = (*np.shape(mass), COUNT)
    if work.way == "not cooked":
        return {place: np.zeros(shape) for place in places}
    warm = _drawn(work)
    done: dict[Place, Array] = {}
    if "pot" in places:
        done["pot"] = _cool_enough(_in_pot(warm, np.asarray(mass, float), pot))
    if laid := [place for place in places if place in _LAID]:
        thick = np.stack([warm.found[_LAID[place]] for place in laid])
        done |= dict(zip(laid, _cool_enough(_on_table(warm, thick)), strict=True))
    if "bath" in places:
        done["bath"] = _cool_enough(_in_bath(warm))
    return {place: np.broadcast_to(done[place], shape) for place in places}


def _cool_enough(done: Cooling) -> Array:
    return np.minimum(done.moment_below(safe_warmth().mean), _LONG)


def _on_table(warm: _Warm, thickness: Array) -> Cooling:
    """Cool slabs whose upper face alone meets the air."""
    room = Room()
    beginning = warm.beginning(np.asarray(room.temperature, float))
    piece = Piece(shape="slab", thickness=thickness)
    return cool(warm.dough, piece, room, beginning=beginning, duration=_LONG / 4, layers=_LAYERS, steps=_STEPS)


def _in_bath(warm: _Warm) -> Cooling:
    """Cool flat bags in water, which meets both faces."""
    water = warm.found["temperature"]
    side = AirSide(heat=warm.found["heat"], vapour=0.0)
    piece = Piece(shape="slab-both-sides", thickness=warm.found["thickness"])
    room = Room(temperature=water)
    return cool(
        warm.dough,
        piece,
        room,
        beginning=warm.beginning(water),
        duration=_LONG / 4,
        side=side,
        layers=_LAYERS,
        steps=_STEPS,
    )


def _in_pot(warm: _Warm, mass: Array, pot: float) -> Cooling:
    """Cool heaps that all begin as warm as the middle one, and give each the excess of warmth that it had."""
    room = Room()
    air = np.asarray(room.temperature, float)
    beginning = warm.beginning(air)
    middle = float(np.median(beginning))
    diameter = np.cbrt(4 / np.pi * pot * warm.found["wide"])
    height = mass[..., None] / np.asarray(warm.dough.density) / (np.pi / 4 * diameter**2)
    done = cool_pot(
        warm.dough, room, height=height, diameter=diameter, beginning=middle, duration=_LONG,
    )  # fmt: skip
    scale = ((beginning - air) / (middle - air))[:, None]
    return replace(done, middle=air + (done.middle - air) * scale)


def _drawn(work: Work) -> _Warm:
    book = handbook()
    values: dict[str, Value] = {key: book.value("workshop", "slab", key) for key in ("thickness", "thin")}
    values |= {key: book.value("workshop", "bath", key) for key in ("temperature", "heat")}
    values["wide"], values["safe"] = book.value("workshop", "pot", "wide"), safe_warmth()
    width = book.value("lasting", "warmth", "width").mean
    values["store"] = values["passing"] = Value(mean=1.0, low=1 - width, high=1 + width, unit="")
    found = {key: each[:COUNT] for key, each in drawn(values).items()}
    density, capacity, passing = (
        np.broadcast_to(each, work.hot.shape)[:COUNT]
        for each in (work.warm.density, work.warm.capacity, work.warm.conductivity)
    )
    dough = WarmDough(
        density=density, capacity=capacity * found["store"], conductivity=passing * found["passing"]
    )  # fmt: skip
    return _Warm(dough=dough, hot=work.hot[:COUNT], found=found)
