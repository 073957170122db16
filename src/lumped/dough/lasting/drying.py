"""A piece of dough that dries in air: from minute to minute, layer by layer.

Water creeps outward through the dough, `∂X/∂t = ∂/∂m (D ρ_s² A² ∂X/∂m)` with m the dry matter within, and leaves its
face by `J = k (a p(T_face) - e)/(R T)`, which cools the face until `h (T_air - T_face) = L J`.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.vapour import VAPOUR_CONSTANT, evaporation_heat, saturation_pressure, saturation_slope
from lumped.dough.lasting.air import OPEN, AirSide, Cover, Room, air_over
from lumped.dough.lasting.dried import Drying, Moment, result_of
from lumped.dough.lasting.layers import Piece, layer_shares, solve_layers
from lumped.dough.lasting.moist import MoistDough
from lumped.errors import InputError
from lumped.texts import say

__all__ = ["dry"]

Array = NDArray[np.float64]
WATER_DENSITY = 998.2  # what leaves shrinks the piece by so much; [kg/m³] at 20 °C
_GAMMA = 1 - np.sqrt(0.5)  # two implicit stages a step, second order, no overshoot
_ROUNDS = 2
_GRADING = 2.5


def dry(
    dough: MoistDough,
    piece: Piece,
    room: Room,
    *,
    duration: float,
    cover: Cover = OPEN,
    side: AirSide | None = None,
    layers: int = 20,
    steps: int = 64,
) -> Drying:
    """Let a piece dry, or take up water, in the air.

    Parameters
    ----------
    dough : MoistDough
        What it is made of.
    piece : Piece
        Its shape and size when fresh.
    room : Room
        The air.
    duration : float
        How long. [s]
    cover : Cover
        Open air, a bag or a box.
    side : AirSide, optional
        Transfer coefficients; by default those over the piece, which is as cold as its face makes it.
    layers, steps : int
        Layers from middle to face, steps in time: first short, then long.

    Returns
    -------
    Drying
        One entry a step and one at the beginning, on the last axis.

    Raises
    ------
    InputError
        If a size, a density, a water content or the duration is not positive, or a humidity is not between 0 and 1.

    Notes
    -----
    Finite volumes that move with the dry matter; water is lost to the last gram that the air gains. A slab loses
    thickness alone, a roll girth alone. Ends and edges are tight. The whole piece is as cold as its face (right within
    a tenth for pieces below 2 cm, after a quarter of an hour), no heat comes from the table, and the inside does not
    crack. Time: two implicit stages a step, of second order.

    References
    ----------
    J. Crank, The Mathematics of Diffusion, 2nd edition (1975), chapters 4 to 6 and 8; R. Alexander, SIAM J. Numer.
    Anal. 14, 1006 (1977) for the two stages.

    Examples
    --------
    >>> from lumped.dough.lasting import linear_isotherm
    >>> dough = MoistDough(density=1250.0, content=1.0, isotherm=linear_isotherm(0.9), diffusivity=lambda x: 1e-10)
    >>> done = dry(dough, Piece(shape="roll", thickness=0.012, extent=0.1), Room(humidity=0.45), duration=3600.0)
    >>> float(done.loss[-1].round(2))
    0.04
    """
    _check(dough, piece, room, duration)
    march = _March(dough, piece, room, cover=cover, side=side or air_over(piece, room), layers=layers)
    moments = [march.beginning()]
    ticks = duration * np.linspace(0.0, 1.0, steps + 1) ** _GRADING
    for step in np.diff(ticks):
        moments.append(march.stepped(moments[-1], float(step)))
    return result_of(ticks, moments, dry=march.dry, isotherm=dough.isotherm, piece=piece, volumes=march.volumes,
                     resistivity=dough.resistivity)  # fmt: skip


class _March:
    """What stays the same from step to step."""

    def __init__(
        self, dough: MoistDough, piece: Piece, room: Room, *, cover: Cover, side: AirSide, layers: int
    ) -> None:
        self.dough, self.piece, self.law = dough, piece, dough.isotherm
        density, content = np.asarray(dough.density, float), np.asarray(dough.content, float)
        self.air_temperature = np.asarray(room.temperature, float)
        vapour = VAPOUR_CONSTANT * self.air_temperature
        self.full = saturation_pressure(self.air_temperature)
        self.steep = saturation_slope(self.air_temperature) * self.air_temperature**2 / self.full
        self.outside = np.asarray(room.humidity, float) * self.full
        self.leak, self.store = np.asarray(cover.leak, float) / vapour, np.asarray(cover.air, float) / vapour
        self.heat, self.vapour = np.asarray(side.heat, float), np.asarray(side.vapour, float)
        self.latent = evaporation_heat(self.air_temperature)
        self.cases = np.broadcast_shapes(
            np.shape(density), np.shape(content), np.shape(dough.shrinks), piece.volume.shape, self.full.shape,
            self.outside.shape, self.leak.shape, self.store.shape, self.heat.shape, self.vapour.shape,
            self.law.activity.shape[:-1],
        )  # fmt: skip
        self.content = np.broadcast_to(content, self.cases)
        self.dry = (piece.volume * density / (1 + content))[..., None] * layer_shares(layers, piece.power)
        self.fresh = ((1 + content) / density)[..., None]  # volume that goes with a kilogram of dry matter
        self.per_water = (np.asarray(dough.shrinks, float) / WATER_DENSITY)[..., None]

    def volumes(self, content: Array) -> Array:
        """Volume of each layer. [m³]"""
        return np.asarray(self.dry * (self.fresh + self.per_water * (content - self.content[..., None])))

    def beginning(self) -> Moment:
        layers = self.dry.shape[-1]
        return Moment(
            content=np.broadcast_to(self.content[..., None], (*self.cases, layers)).copy(), surface=self.content.copy(),
            temperature=np.broadcast_to(self.air_temperature, self.cases),
            pressure=np.broadcast_to(self.outside, self.cases), flow=np.zeros(self.cases),
        )  # fmt: skip

    def stepped(self, now: Moment, step: float) -> Moment:
        """One step in two implicit stages (Alexander)."""
        part, ahead = _GAMMA * step, (1 - _GAMMA) / _GAMMA
        first = self._stage(now.content, now.pressure, part, now)
        base = now.content + ahead * (first.content - now.content)
        pressure = now.pressure + ahead * (first.pressure - now.pressure)
        return self._stage(base, pressure, part, first)

    def _stage(self, base: Array, base_pressure: Array, step: float, guess: Moment) -> Moment:
        """Solve X = base + step · f(X), and the same for the air under the cover."""
        found = guess
        for _ in range(_ROUNDS):
            ties, outer, area = self._ties(found)
            face = self._face(found, outer, area, base_pressure, step)
            flow = face.flow - face.per_content * found.content[..., -1]  # at no water in the outermost layer
            diagonal = self.dry / step
            diagonal = diagonal + np.zeros((*self.cases, 1))
            right = diagonal * base
            diagonal[..., :-1] += ties
            diagonal[..., 1:] += ties
            diagonal[..., -1] += face.per_content
            right[..., -1] -= flow
            content = solve_layers(-ties, diagonal, right)
            flow = flow + face.per_content * content[..., -1]
            found = Moment(
                content=content, surface=content[..., -1] - flow / outer, flow=flow,
                temperature=self.air_temperature - self.latent * flow / (self.heat * area),
                pressure=(self.store / step * base_pressure + self.leak * self.outside + flow)
                / (self.store / step + self.leak),
            )  # fmt: skip
        return found

    def _ties(self, found: Moment) -> tuple[Array, Array, Array]:
        """What passes between layers, and from the outermost to the face, for a unit of content. [kg/s]"""
        volume = self.volumes(found.content)
        within = np.cumsum(volume, axis=-1)
        middles = self.piece.reach_of(within - volume / 2)
        area = self.piece.area_of(within)
        packed = self.dry / volume
        contents = np.concatenate([found.content, found.surface[..., None]], axis=-1)
        speed = np.asarray(self.dough.diffusivity((contents[..., 1:] + contents[..., :-1]) / 2))
        between = (packed[..., 1:] + packed[..., :-1]) / 2
        inner = speed[..., :-1] if speed.ndim else speed
        ties = inner * between * area[..., :-1] / np.diff(middles, axis=-1)
        reach = self.piece.reach_of(within[..., -1:])[..., 0] - middles[..., -1]
        last = speed[..., -1] if speed.ndim else speed
        return ties, np.asarray(last * packed[..., -1] * area[..., -1] / reach), area[..., -1]

    def _face(self, found: Moment, outer: Array, area: Array, base_pressure: Array, step: float) -> "_Face":
        """Where what the dough brings to its face is what the air takes: found on the isotherm's straight pieces."""
        passing = self.vapour * area / (VAPOUR_CONSTANT * (self.air_temperature + found.temperature) / 2)
        behind = self.store / step + self.leak
        passing = passing * behind / (behind + passing)
        met = (self.store / step * base_pressure + self.leak * self.outside) / behind
        pressure = self.full * np.exp(self.steep * (1 / self.air_temperature - 1 / found.temperature))
        slope = pressure * self.steep / found.temperature**2
        warm = pressure + slope * (self.air_temperature - found.temperature)
        cooling = passing * slope * self.latent / (self.heat * area)
        nodes, activity = self.law.content, self.law.activity
        taken = passing[..., None] * (activity * warm[..., None] - met[..., None]) / (1 + activity * cooling[..., None])
        excess = outer[..., None] * (found.content[..., -1:] - nodes) - taken
        k = np.clip((excess > 0).sum(axis=-1) - 1, 0, len(nodes) - 2)[..., None]
        taken, excess = (np.broadcast_to(each, (*self.cases, len(nodes))) for each in (taken, excess))
        low, high = (np.take_along_axis(taken, each, -1)[..., 0] for each in (k, k + 1))
        width = (nodes[k + 1] - nodes[k])[..., 0]
        rise = (high - low) / width
        flow = low + rise * (np.take_along_axis(excess, k, -1)[..., 0] / (outer + rise))
        return _Face(flow=flow, per_content=outer * rise / (outer + rise))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Face:
    """Water that leaves, and how much more for a unit of content in the outermost layer. [kg/s]"""

    flow: Array
    per_content: Array


def _check(dough: MoistDough, piece: Piece, room: Room, duration: float) -> None:
    for key, figure in (("thickness", piece.thickness), ("extent", piece.extent), ("density", dough.density),
                        ("content", dough.content), ("duration", duration)):  # fmt: skip
        if not np.all(np.asarray(figure) > 0):
            raise InputError(
                "lasting-not-positive", what=say(f"lasting-word-{key}"), figure=f"{float(np.min(figure)):g}"
            )
    humidity = np.asarray(room.humidity)
    if not np.all((humidity >= 0) & (humidity <= 1)):
        raise InputError("lasting-humidity", humidity=f"{float(np.ravel(humidity)[0]):g}")
