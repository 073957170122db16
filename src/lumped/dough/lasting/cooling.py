"""A warm piece of dough that cools on the table, until hands may take it.

Heat creeps outward, `ρ c ∂T/∂t = ∇·(k ∇T)`, and leaves the face by the air, by radiation, and with the water that
evaporates. A piece with h L/k far below 1 cools as one, `exp(-t/τ)` with τ = ρ c V/(h A); a thick one keeps a hot
middle.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.lasting.air import AirSide, Room
from lumped.dough.lasting.cooling_steps import March
from lumped.dough.lasting.heat import WarmDough
from lumped.dough.lasting.layers import Piece
from lumped.errors import InputError
from lumped.quantities import Value
from lumped.reference import handbook

__all__ = ["Cooling", "biot_number", "cool", "cool_pot", "cooling_time", "safe_warmth"]

Array = NDArray[np.float64]
_GRADING = 2.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Cooling:
    """A cooling piece over time.

    Parameters
    ----------
    time : (n,) float
        Moments, from 0. [s]
    middle, mean, face : (..., n) float
        Temperatures. [K]
    """

    time: Array
    middle: Array
    mean: Array
    face: Array

    def moment_below(self, temperature: ArrayLike, where: str = "middle") -> Array:
        """Give when a place is first as cool as that.

        Parameters
        ----------
        temperature : (...) float
            Which. [K]
        where : str
            "middle", "mean" or "face".

        Returns
        -------
        (...) float
            Time, by straight lines of ln(T); infinite if it does not happen in the time computed. [s]
        """
        warm = np.log(getattr(self, where))
        wanted = np.broadcast_to(np.log(temperature), warm.shape[:-1])
        cooler = warm <= wanted[..., None]
        k = np.clip(cooler.argmax(axis=-1), 1, None)[..., None]
        high, low = (np.take_along_axis(warm, each, -1)[..., 0] for each in (k - 1, k))
        share = np.clip((high - wanted) / np.where(high > low, high - low, 1.0), 0.0, 1.0)
        found = self.time[k - 1][..., 0] + share * (self.time[k] - self.time[k - 1])[..., 0]
        return np.asarray(np.where(cooler.any(axis=-1), found, np.inf))


def cool(
    dough: WarmDough,
    piece: Piece,
    room: Room,
    *,
    beginning: ArrayLike,
    duration: float,
    activity: ArrayLike | None = None,
    side: AirSide | None = None,
    times: ArrayLike = 1.0,
    layers: int = 16,
    steps: int = 60,
) -> Cooling:
    """Let a warm piece cool.

    Parameters
    ----------
    dough : WarmDough
        What it is made of.
    piece : Piece
        Shape and size. A slab that lies on the table gives no heat to it: cork, wood or cloth, not stone.
    room : Room
        The air.
    beginning : (...) float
        Temperature at first, the same throughout. [K]
    duration : float
        How long. [s]
    activity : (...) float, optional
        Water activity of its face, if it lies open; left out, nothing evaporates, as under film.
    side : AirSide, optional
        Transfer coefficients; by default they follow the temperature of the face.
    times : (...) float
        How many times better the air carries heat away than the laws say. [1]
    layers, steps : int
        Layers from middle to face, steps in time.

    Returns
    -------
    Cooling
        One entry a step and one at the beginning, on the last axis.

    Raises
    ------
    InputError
        If a size, the duration or a property is not positive, or it is no warmer than the room.

    Notes
    -----
    Finite volumes, two implicit stages a step, each a sum of the piece's modes. Evaporating water does not dry the face
    here (`dry` does that).

    Examples
    --------
    >>> dough = WarmDough(density=1280.0, capacity=2650.0, conductivity=0.46)
    >>> ball = Piece(shape="ball", thickness=0.05)
    >>> done = cool(dough, ball, Room(), beginning=353.15, duration=2 * 3600.0)
    >>> 20 < float(done.moment_below(316.15)) / 60 < 90
    True
    """
    _check(dough, piece, room, beginning, duration)
    march = March(dough, piece, room, activity=activity, side=side, times=times, layers=layers, beginning=beginning)
    ticks = duration * np.linspace(0.0, 1.0, steps + 1) ** _GRADING
    warm, faces = march.through(np.diff(ticks))
    middle = np.minimum(warm @ march.modes.middle, np.asarray(beginning)[..., None])
    return Cooling(time=ticks, middle=middle, mean=march.modes.mean(warm), face=faces)


def cool_pot(
    dough: WarmDough,
    room: Room,
    *,
    height: ArrayLike,
    diameter: ArrayLike,
    beginning: ArrayLike,
    duration: float,
    side: AirSide | None = None,
    times: ArrayLike = 1.0,
) -> Cooling:
    """Let a round heap of dough cool, as high as it stands in its pot, on something that takes no heat.

    Parameters
    ----------
    height, diameter : (...) float
        Of the heap. [m]
    dough, room, beginning, duration, side, times
        As of `cool`; nothing evaporates.

    Returns
    -------
    Cooling

    Notes
    -----
    The product of a slab's and a roll's temperatures above the room, exact where transfer coefficients don't change
    with temperature. A bare metal wall takes nothing away from the coefficients.

    References
    ----------
    H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd edition (1959), section 1.15.

    Examples
    --------
    >>> dough = WarmDough(density=1280.0, capacity=2650.0, conductivity=0.46)
    >>> heap = cool_pot(dough, Room(), height=0.05, diameter=0.16, beginning=353.15, duration=4 * 3600.0)
    >>> float(heap.moment_below(316.15)) > 3600
    True
    """
    slab = Piece(shape="slab", thickness=height, extent=np.pi / 4 * np.asarray(diameter, float) ** 2)
    roll = Piece(shape="roll", thickness=diameter, extent=height)
    up, round_about = (
        cool(dough, each, room, beginning=beginning, duration=duration, side=side, times=times) for each in (slab, roll)
    )
    air = np.asarray(room.temperature, float)[..., None]
    first = np.asarray(beginning, float)[..., None] - air

    def product(name: str) -> Array:
        return np.asarray(air + (getattr(up, name) - air) * (getattr(round_about, name) - air) / first)

    return Cooling(time=up.time, middle=product("middle"), mean=product("mean"), face=product("face"))


def cooling_time(dough: WarmDough, piece: Piece, heat: ArrayLike) -> Array:
    """Give the time in which the excess of temperature falls to 1/e, for a piece that cools as one.

    Parameters
    ----------
    dough, piece
        What it is made of, and its shape.
    heat : (...) float
        Heat-transfer coefficient. [W/(m²·K)]

    Returns
    -------
    (...) float
        τ = ρ c V/(h A). [s]

    Examples
    --------
    >>> dough = WarmDough(density=1250.0, capacity=3000.0, conductivity=0.5)
    >>> float((cooling_time(dough, Piece(shape="slab-both-sides", thickness=0.02), 10.0) / 60).round(1))
    62.5
    """
    store = np.asarray(dough.density, float) * np.asarray(dough.capacity, float)
    return np.asarray(store * piece.depth / piece.power / np.asarray(heat))


def biot_number(dough: WarmDough, piece: Piece, heat: ArrayLike) -> Array:
    """Give h (V/A)/k: below 0.1 a piece cools as one. [1]

    Examples
    --------
    >>> dough = WarmDough(density=1250.0, capacity=3000.0, conductivity=0.5)
    >>> float(biot_number(dough, Piece(shape="ball", thickness=0.05), 12.0).round(2))
    0.2
    """
    return np.asarray(np.asarray(heat) * piece.depth / piece.power / np.asarray(dough.conductivity, float))


def safe_warmth() -> Value:
    """Give the warmth below which hands may take a dough; local rules and whoever knows the children come first. [K]

    Examples
    --------
    >>> safe_warmth().mean
    316.15
    """
    return handbook().value("lasting", "warmth", "safe")


def _check(dough: WarmDough, piece: Piece, room: Room, beginning: ArrayLike, duration: float) -> None:
    figures = (piece.thickness, piece.extent, dough.density, dough.capacity, dough.conductivity, duration)
    least = min(float(np.min(figure)) for figure in figures)
    if not least > 0:
        raise InputError("lasting-cooling-figure", figure=f"{least:g}")
    if not np.all(np.asarray(beginning) > np.asarray(room.temperature)):
        raise InputError("lasting-not-warm", beginning=f"{float(np.min(beginning)) - 273.15:.3g}",
                         room=f"{float(np.max(room.temperature)) - 273.15:.3g}")  # fmt: skip
