"""A piece of dough that dries in air: from minute to minute, layer by layer.

Water creeps outward through the dough, `∂X/∂t = ∂/∂m (D ρ_s² A² ∂X/∂m)` with m the dry matter within, and leaves its
face by `J = k (a p(T_face) - e)/(R T)`, which cools the face until `h (T_air - T_face) = L J`.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.vapour import VAPOUR_CONSTANT, evaporation_heat, saturation_pressure, saturation_slope
from lumped.dough.lasting.air import OPEN, AirSide, Cover, Room, air_over
from lumped.dough.lasting.dried import Drying, Moment, result_of
from lumped.dough.lasting.layers import Piece, layer_shares, solve_layers
from lumped.dough.lasting.moist import MoistDough
from lumped.dough.lasting.segments import Segments
from lumped.errors import InputError
from lumped.texts import say

__all__ = ["dry"]

Array = NDArray[np.float64]
WATER_DENSITY = 998.2  # what leaves shrinks the piece by so much; [kg/m³] at 20 °C
_GAMMA = 1 - np.sqrt(0.5)  # two implicit stages a step, second order, no overshoot
_ROUNDS = 2
_BOTH = np.array([[0], [1]])
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
    return march.result(ticks, moments)


class _March:
    """What stays the same from step to step: all cases in one row, layers above one another."""

    def __init__(
        self, dough: MoistDough, piece: Piece, room: Room, *, cover: Cover, side: AirSide, layers: int
    ) -> None:
        self.dough, self.piece = dough, piece
        density, content = np.asarray(dough.density, float), np.asarray(dough.content, float)
        air = np.asarray(room.temperature, float)
        vapour, full = VAPOUR_CONSTANT * air, saturation_pressure(air)
        given = {
            "density": density, "content": content, "air": air, "full": full, "per_water": dough.shrinks,
            "outside": np.asarray(room.humidity, float) * full, "leak": np.asarray(cover.leak, float) / vapour,
            "store": np.asarray(cover.air, float) / vapour, "heat": side.heat, "vapour": side.vapour,
            "volume": piece.volume, "factor": piece.volume / piece.depth**piece.power,
        }  # fmt: skip
        laws = np.empty(dough.isotherm.activity.shape[:-1])
        self.cases = np.broadcast_shapes(laws.shape, *(np.shape(each) for each in given.values()))
        row = {name: np.broadcast_to(each, self.cases).astype(float).ravel() for name, each in given.items()}
        self.content, self.air, self.full, self.outside = (row[key] for key in ("content", "air", "full", "outside"))
        self.leak, self.store, self.heat, self.vapour = (row[key] for key in ("leak", "store", "heat", "vapour"))
        self.factor = row["factor"]
        self.steep = saturation_slope(self.air) * self.air**2 / self.full
        self.latent = evaporation_heat(self.air)
        self.pieces = Segments(dough.isotherm, self.cases)
        solid = row["volume"] * row["density"] / (1 + self.content)
        self.dry = layer_shares(layers, piece.power)[:, None] * solid
        self.per_water = self.dry * (row["per_water"] / WATER_DENSITY)
        self.without = self.dry * ((1 + self.content) / row["density"]) - self.per_water * self.content
        inward = np.tril(np.ones((layers, layers)))
        self.within = np.concatenate([inward, inward - np.eye(layers) / 2])  # up to the layers' faces and middles

    def volumes(self, content: Array) -> Array:
        """Volume of each layer, for contents (..., layers, cases). [m³]"""
        return np.asarray(self.without + self.per_water * content)

    def beginning(self) -> Moment:
        return Moment(
            content=np.tile(self.content, (len(self.dry), 1)), surface=self.content, temperature=self.air,
            pressure=self.outside,
        )  # fmt: skip

    def stepped(self, now: Moment, step: float) -> Moment:
        """One step in two implicit stages (Alexander)."""
        part, ahead = _GAMMA * step, (1 - _GAMMA) / _GAMMA
        first = self._stage(now.content, now.pressure, part, now)
        base = now.content + ahead * (first.content - now.content)
        pressure = now.pressure + ahead * (first.pressure - now.pressure)
        return self._stage(base, pressure, part, first)

    def result(self, ticks: Array, moments: Sequence[Moment]) -> Drying:
        """Put moments together."""
        contents = np.stack([each.content for each in moments])
        return result_of(
            ticks, moments, cases=self.cases, contents=contents, volumes=self.volumes(contents), dry=self.dry,
            dough=self.dough, piece=self.piece,
        )  # fmt: skip

    def _stage(self, base: Array, base_pressure: Array, step: float, guess: Moment) -> Moment:
        """Solve X = base + step · f(X), and the same for the air under the cover."""
        found, held = guess, self.dry / step
        due = held * base
        behind = self.store / step + self.leak
        met = (self.store / step * base_pressure + self.leak * self.outside) / behind
        for _ in range(_ROUNDS):
            ties, outer, area = self._ties(found)
            face = self._face(found, outer, area, met, behind)
            flow = face.flow - face.per_content * found.content[-1]  # at no water in the outermost layer
            diagonal, right = held.copy(), due.copy()
            diagonal[:-1] += ties
            diagonal[1:] += ties
            diagonal[-1] += face.per_content
            right[-1] -= flow
            content = solve_layers(-ties, diagonal, right)
            flow = flow + face.per_content * content[-1]
            found = Moment(
                content=content, surface=content[-1] - flow / outer,
                temperature=self.air - self.latent * flow / (self.heat * area), pressure=met + flow / behind,
            )  # fmt: skip
        return found

    def _ties(self, found: Moment) -> tuple[Array, Array, Array]:
        """What passes between layers, and from the outermost to the face, for a unit of content. [kg/s]"""
        volume = self.volumes(found.content)
        layers, power = len(volume), self.piece.power
        reach = self.within @ volume / self.factor
        if power > 1:
            reach = np.sqrt(reach) if power == 2 else np.cbrt(reach)
        faces, middles = reach[:layers], reach[layers:]
        area = self.factor * power * faces ** (power - 1)
        packed, speed = self.dry / volume, self._speed(found)
        ties = speed[:-1] * (packed[1:] + packed[:-1]) * area[:-1] / (2 * (middles[1:] - middles[:-1]))
        return ties, speed[-1] * packed[-1] * area[-1] / (faces[-1] - middles[-1]), area[-1]

    def _speed(self, found: Moment) -> Array:
        """Diffusivity of water between each layer and the next, and between the outermost and the face. [m²/s]"""
        between = np.concatenate([found.content, found.surface[None]])
        between = (between[1:] + between[:-1]) / 2
        shape = (len(between), *self.cases)
        speed = np.asarray(self.dough.diffusivity(between.reshape(shape)))
        return (speed if speed.shape == shape else np.broadcast_to(speed, shape)).reshape(between.shape)

    def _face(self, found: Moment, outer: Array, area: Array, met: Array, behind: Array) -> "_Face":
        """Where what the dough brings to its face is what the air takes: found on the isotherm's straight pieces."""
        passing = self.vapour * area / (VAPOUR_CONSTANT * (self.air + found.temperature) / 2)
        passing = passing * behind / (behind + passing)
        pressure = self.full * np.exp(self.steep * (1 / self.air - 1 / found.temperature))
        slope = pressure * self.steep / found.temperature**2
        warm = passing * (pressure + slope * (self.air - found.temperature))
        cooling, there = passing * slope * self.latent / (self.heat * area), passing * met
        brought = outer * found.content[-1]

        def balance(activity: Array, content: Array) -> tuple[Array, Array]:
            """What the air takes from a face, and how much more the dough would bring to it. [kg/s]"""
            taken = (activity * warm - there) / (1 + activity * cooling)
            return taken, brought - outer * content - taken

        k = self.pieces.last_where(lambda activity, content: balance(activity, content)[1] > 0, near=found.surface)
        activity, nodes = self.pieces.at(k + _BOTH)
        taken, excess = balance(activity, nodes)
        rise = (taken[1] - taken[0]) / (nodes[1] - nodes[0])
        flow = taken[0] + rise * (excess[0] / (outer + rise))
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
