"""The steps in which a warm piece cools: its inside is a sum of modes, its face is where the air takes what they bring.

Only the face is not linear, one number a piece; so a step costs hardly more than the air's law.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.draught import evaporation_rate
from lumped.chemistry.vapour import VAPOUR_CONSTANT, evaporation_heat, saturation_slope
from lumped.dough.lasting.air import AirOver, AirSide, Room
from lumped.dough.lasting.heat import WarmDough
from lumped.dough.lasting.layers import Piece
from lumped.dough.lasting.modes import modes_of

__all__ = ["March"]

Array = NDArray[np.float64]
_GAMMA = 1 - np.sqrt(0.5)  # two implicit stages a step, second order, no overshoot


class March:
    """What stays the same from step to step.

    Parameters
    ----------
    dough, piece, room, activity, side, times, layers, beginning
        As of `cooling.cool`.
    """

    def __init__(
        self, dough: WarmDough, piece: Piece, room: Room, *, activity: ArrayLike | None, side: AirSide | None,
        times: ArrayLike, layers: int, beginning: ArrayLike,
    ) -> None:  # fmt: skip
        self.room, self.dry, self.wet = room, activity is None, 0.0 if activity is None else activity
        self.over = AirOver(piece, room, wet=self.wet, times=times) if side is None else _Fixed(side)
        self.air = np.asarray(room.temperature, float)
        start, passing = np.asarray(beginning, float), np.asarray(dough.conductivity, float)
        store = np.asarray(dough.density, float) * np.asarray(dough.capacity, float)
        fixed = () if side is None else (np.shape(side.heat), np.shape(side.vapour))
        self.cases = np.broadcast_shapes(
            start.shape, piece.volume.shape, passing.shape, store.shape, self.air.shape, np.shape(room.humidity),
            np.shape(room.air_speed), np.shape(self.wet), np.shape(times), *fixed,
        )  # fmt: skip
        self.modes = modes_of(layers, piece.power)
        self.decay = (piece.power * passing / (store * piece.depth**2))[..., None] * self.modes.decay
        self.store = store * piece.volume
        self.area = piece.power * piece.volume / piece.depth
        self.outer = passing * self.area / (piece.depth * self.modes.gap)
        self.warm = np.broadcast_to(start[..., None] * self.modes.even, (*self.cases, layers))
        self.face = np.broadcast_to(start, self.cases)

    def through(self, steps: Array) -> tuple[Array, Array]:
        """Go through all steps; give the modes' amplitudes (..., n, m) and the face (..., n). [K]"""
        warm, face = self.warm, self.face
        warms, faces = [warm], [face]
        for step in _GAMMA * steps:
            left = 1 / (1 + step * self.decay)
            first, face = self._stage(warm, face, left, float(step))
            warm, face = self._stage(warm + (1 - _GAMMA) / _GAMMA * (first - warm), face, left, float(step))
            warms.append(warm)
            faces.append(face)
        return np.stack(warms, axis=-2), np.stack(faces, axis=-1)

    def _stage(self, base: Array, face: Array, left: Array, step: float) -> tuple[Array, Array]:
        """Solve T = base + step · f(T), the heat from the face by its tangent; `left` of each mode is left."""
        at_face, per_heat = self.modes.face, step / self.store
        tight = left * base  # if the face were tight
        last, colder = tight @ at_face, per_heat * (left @ at_face**2)  # outermost layer, and what a watt takes off it
        for _ in range(2):
            heat, rise = self._given(face)
            softer = self.area * rise / (1 + self.area * rise / self.outer)
            still = softer * (heat / rise - face)  # heat from the face if the outermost layer were at 0 K
            outermost = (last - colder * still) / (1 + colder * softer)
            away = still + softer * outermost
            face = outermost - away / self.outer
        return tight - (per_heat * away)[..., None] * (left * at_face), face

    def _given(self, face: Array) -> tuple[Array, Array]:
        """Heat that a square metre of the face gives, and how much more for a kelvin. [W/m², W/(m²·K)]"""
        if self.dry:
            passing = self.over.heat(face)
            return passing * (face - self.air), passing
        side, latent = self.over.side(face), evaporation_heat(face)
        away = evaporation_rate(side.vapour, surface=face, activity=self.wet, air=self.air, humidity=self.room.humidity)
        slope = saturation_slope(face) / (VAPOUR_CONSTANT * (face + self.air) / 2)
        more = np.asarray(side.vapour) * np.asarray(self.wet) * slope
        return np.asarray(side.heat) * (face - self.air) + latent * away, np.asarray(side.heat) + latent * more


class _Fixed:
    """Air that takes the same from a face of any temperature."""

    def __init__(self, side: AirSide) -> None:
        self._side, self._heat = side, np.asarray(side.heat, float)

    def heat(self, face: Array) -> Array:
        return self._heat

    def side(self, face: Array) -> AirSide:
        return self._side
