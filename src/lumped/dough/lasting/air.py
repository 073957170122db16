"""The air round a piece: a room with its draught, a bag, a box; and how fast heat and vapour pass to it.

A cover stands between piece and room: vapour first fills its air, then leaks, `V de/dt = R T J A - Q (e - e_room)`.
Open air is a leak without end; a tight box has none and comes to the dough's own humidity.
"""

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.draught import heat_transfer, vapour_transfer
from lumped.chemistry.humidity import wet_bulb
from lumped.chemistry.vapour import saturation_pressure, vapour_diffusivity
from lumped.dough.lasting.layers import Piece
from lumped.reference import handbook

__all__ = ["OPEN", "AirOver", "AirSide", "Cover", "Room", "air_over", "bag", "radiation"]

Array = NDArray[np.float64]
_STEFAN_BOLTZMANN = 5.670374e-8
_CALM = 1e-9
_VAPOUR_LIGHTER = 0.378  # a mole of vapour weighs 0.622 of a mole of air
_ATMOSPHERE = 101325.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """Air of a room, far from the piece.

    Parameters
    ----------
    temperature : (...) float
        Temperature. [K]
    humidity : (...) float
        Relative humidity. [1]
    air_speed : (...) float
        Draught over the piece. [m/s]

    Examples
    --------
    >>> Room(humidity=0.3).temperature
    293.15
    """

    temperature: ArrayLike = 293.15
    humidity: ArrayLike = 0.5
    air_speed: ArrayLike = 0.1


@dataclass(frozen=True, slots=True, kw_only=True)
class Cover:
    """What stands between piece and room.

    Parameters
    ----------
    leak : (...) float
        Air (or its equal in vapour through the wall) that passes between inside and room. [m³/s]
    air : (...) float
        Air inside. [m³]

    Examples
    --------
    >>> Cover(leak=0.0, air=0.002).air
    0.002
    """

    leak: ArrayLike
    air: ArrayLike = 0.0


OPEN = Cover(leak=1e9)


def bag(piece: Piece, leak: ArrayLike | None = None, air: ArrayLike = 1e-4) -> Cover:
    """Give a closed bag round a piece.

    Parameters
    ----------
    piece : Piece
        What lies in it.
    leak : (...) float, optional
        Leak over the face of the piece; the handbook's. [m/s]
    air : (...) float
        Air inside. [m³]

    Examples
    --------
    >>> float(1e6 * bag(Piece(shape="slab", thickness=0.01, extent=0.01)).leak)
    0.2
    """
    rate = handbook().value("lasting", "bag", "leak").mean if leak is None else leak
    return Cover(leak=np.asarray(rate) * piece.area, air=air)


@dataclass(frozen=True, slots=True, kw_only=True)
class AirSide:
    """How fast heat and vapour pass between a face and the air.

    Parameters
    ----------
    heat : (...) float
        Heat for each kelvin, radiation included. [W/(m²·K)]
    vapour : (...) float
        Transfer coefficient of vapour. [m/s]

    Examples
    --------
    >>> AirSide(heat=10.0, vapour=0.005).heat
    10.0
    """

    heat: ArrayLike
    vapour: ArrayLike


def air_over(
    piece: Piece, room: Room, *, surface: ArrayLike | None = None, wet: ArrayLike = 1.0, times: ArrayLike = 1.0
) -> AirSide:
    """Give the transfer coefficients over a piece in a room.

    Parameters
    ----------
    piece : Piece
        What lies in the air.
    room : Room
        The air.
    surface : (...) float, optional
        Temperature of the face; half-way to the wet bulb. [K]
    wet : (...) float
        Water activity of the face. [1]
    times : (...) float
        How many times better the air carries heat and vapour away than the laws say. [1]

    Returns
    -------
    AirSide
        ±25 %. [W/(m²·K), m/s]

    Notes
    -----
    A slab is as long as the root of its area. A ball: `Nu = 2 + 0.6 Re^½ Pr^⅓` (Ranz and Marshall) and
    `2 + 0.45 Ra^¼`, their excesses over 2 joined by cubes; from memory.

    Examples
    --------
    >>> side = air_over(Piece(shape="roll", thickness=0.012), Room())
    >>> float(side.heat.round(0)), float((1e3 * side.vapour).round(0))
    (16.0, 9.0)
    """
    warm = np.asarray(room.temperature, float)
    face = (warm + wet_bulb(warm, room.humidity)) / 2 if surface is None else np.asarray(surface, float)
    return AirOver(piece, room, wet=wet, times=times).side(face)


class AirOver:
    """The air over a piece, for face after face: as `air_over`, with what no face changes worked out once.

    Parameters
    ----------
    piece, room, wet, times
        As of `air_over`.
    """

    def __init__(self, piece: Piece, room: Room, *, wet: ArrayLike = 1.0, times: ArrayLike = 1.0) -> None:
        self._piece, self._wet, self._times = piece, np.asarray(wet, float), np.asarray(times, float)
        self._warm, self._speed = np.asarray(room.temperature, float), np.asarray(room.air_speed, float)
        self._damp = np.asarray(room.humidity, float) * saturation_pressure(self._warm)

    def side(self, face: Array) -> AirSide:
        """Give the transfer coefficients over a face of a temperature. [K] -> [W/(m²·K), m/s]"""
        convection = self._convection(face)
        return AirSide(heat=convection + radiation(face, self._warm),
                       vapour=vapour_transfer(convection, (self._warm + face) / 2))  # fmt: skip

    def heat(self, face: Array) -> Array:
        """Give the heat alone that passes for each kelvin. [W/(m²·K)]"""
        return np.asarray(self._convection(face) + radiation(face, self._warm))

    def _convection(self, face: Array) -> Array:
        more_vapour = self._wet * saturation_pressure(face) - self._damp if self._wet.any() else -self._damp
        lighter = (face - self._warm) / self._warm + _VAPOUR_LIGHTER * more_vapour / _ATMOSPHERE
        return self._times * _convection(self._piece, self._speed, lighter, (self._warm + face) / 2)


def _convection(piece: Piece, air_speed: Array, lighter: Array, kelvins: Array) -> Array:
    size = np.asarray(piece.thickness, float)
    if piece.shape in ("roll", "ball"):
        found = heat_transfer(size, air_speed=air_speed, lighter=lighter, temperature=kelvins, shape="roll")
        return _ball(size, air_speed, lighter, kelvins) if piece.shape == "ball" else found
    length = np.sqrt(np.asarray(piece.extent, float))
    return heat_transfer(length, air_speed=air_speed, lighter=lighter, temperature=kelvins)


def _ball(size: Array, air_speed: Array, lighter: Array, kelvins: Array) -> Array:
    book = handbook()
    viscosity, conductivity = (book.value("air", "air", key).mean for key in ("viscosity", "heat_conductivity"))
    kinematic, spread, prandtl = viscosity / 1.204, vapour_diffusivity(kelvins) * 0.85, 0.71
    forced = 0.6 * np.sqrt(np.maximum(air_speed, 0.0) * size / kinematic) * prandtl ** (1 / 3)
    free = 0.45 * (9.81 * np.maximum(np.abs(lighter), _CALM) * size**3 / (kinematic * spread)) ** 0.25
    return np.asarray(conductivity / size * (2 + np.cbrt(forced**3 + free**3)))


def radiation(face: ArrayLike, walls: ArrayLike) -> Array:
    """Give the heat that a face and the walls of a room exchange for each kelvin. [W/(m²·K)]

    Examples
    --------
    >>> float(radiation(293.15, 293.15).round(1))
    5.3
    """
    a, b = np.asarray(face, float), np.asarray(walls, float)
    return np.asarray(_emissivity() * _STEFAN_BOLTZMANN * (a**2 + b**2) * (a + b))


@cache
def _emissivity() -> float:
    return handbook().value("lasting", "room", "emissivity").mean
