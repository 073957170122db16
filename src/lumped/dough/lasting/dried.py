"""What a drying piece looks like at each moment."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.lasting.layers import Piece
from lumped.dough.lasting.moist import MoistDough
from lumped.reference import handbook

__all__ = ["Drying", "Moment", "result_of"]

Array = NDArray[np.float64]
_LEVEL = 1e-30  # a lesser rise of content is none


@dataclass(frozen=True, slots=True, kw_only=True)
class Moment:
    """A piece at one moment, its cases in a row: water in layers (m, c) and face, temperature, vapour under cover."""

    content: Array
    surface: Array
    temperature: Array
    pressure: Array


@dataclass(frozen=True, slots=True, kw_only=True)
class Drying:
    """A piece of dough over time.

    Parameters
    ----------
    time : (n,) float
        Moments, from 0. [s]
    mass, water : (..., n) float
        Mass of the piece and of the water in it. [kg]
    mean, surface, middle : (..., n) float
        Water over dry matter: of the whole, at the face, in the innermost layer. [1]
    activity : (..., n) float
        Water activity at the face. [1]
    temperature : (..., n) float
        Of the piece. [K]
    pressure : (..., n) float
        Vapour pressure of the air that it meets, under its cover if it has one. [Pa]
    thickness, skin : (..., n) float
        Thickness or diameter, and how deep the dough is drier than soft. [m]
    contents, volumes : (..., n, layers) float
        Water over dry matter, and volume, of each layer from the middle outward. [1, m³]
    along, across : (..., n) float or None
        Resistivity with the layers side by side (along a roll, along a slab), and one behind the other (through a
        slab; the ends of what a ball can do). None without a law. [Ω·m]

    Notes
    -----
    A roll carries along its layers: its resistance is `along` · length / section, and the section shrinks too.
    """

    time: Array
    mass: Array
    water: Array
    mean: Array
    surface: Array
    middle: Array
    activity: Array
    temperature: Array
    pressure: Array
    thickness: Array
    skin: Array
    contents: Array
    volumes: Array
    along: Array | None = None
    across: Array | None = None

    @property
    def loss(self) -> Array:
        """Water lost over water at the beginning; negative where it took some up. [1]"""
        return 1 - self.water / self.water[..., :1]

    @property
    def resistance_ratio(self) -> Array | None:
        """Resistance along the piece over its resistance when fresh: resistivity over section. [1]"""
        if self.along is None:
            return None
        section = self.volumes.sum(axis=-1)
        return np.asarray(self.along / self.along[..., :1] * section[..., :1] / section)


def result_of(
    time: Array, moments: Sequence[Moment], *, cases: tuple[int, ...], contents: Array, volumes: Array, dry: Array,
    dough: MoistDough, piece: Piece,
) -> Drying:  # fmt: skip
    """Put moments together.

    Parameters
    ----------
    time : (n,) float
        When. [s]
    moments : sequence of Moment
        What was found then.
    cases : tuple of int
        Shape of the cases, which lie in one row of c here.
    contents, volumes : (n, m, c) float
        Water over dry matter, and volume, of each layer at each moment. [1, m³]
    dry : (m, c) float
        Dry matter of each layer. [kg]
    dough, piece
        What it is made of, and its shape.

    Returns
    -------
    Drying
        Moments on the last axis.
    """
    surface, temperature, pressure = (
        np.stack([getattr(each, name) for each in moments], axis=-1).reshape(*cases, -1)
        for name in ("surface", "temperature", "pressure")
    )
    solid = dry.sum(axis=0).reshape(*cases, 1)
    water = (dry * contents).sum(axis=1).T.reshape(*cases, -1)
    contents, room = (
        np.ascontiguousarray(each.transpose(2, 0, 1)).reshape(*cases, *each.shape[:2]) for each in (contents, volumes)
    )
    within = np.cumsum(room, axis=-1)
    one_case = _per_case(piece)
    reach = one_case.reach_of(within[..., -1])
    along, across = (None, None) if dough.resistivity is None else _resistivities(dough.resistivity, contents, room)
    return Drying(
        time=time, mass=solid + water, water=water, mean=water / solid, surface=surface, middle=contents[..., 0],
        activity=dough.isotherm.activity_at(surface), temperature=temperature, pressure=pressure,
        thickness=reach if piece.shape == "slab" else 2 * reach,
        skin=_skin(reach, one_case.reach_of(within - room / 2), contents, surface),
        contents=contents, volumes=room, along=along, across=across,
    )  # fmt: skip


def _per_case(piece: Piece) -> Piece:
    """The same piece, its sizes with an axis for moments behind that of cases."""
    thickness, extent = np.asarray(piece.thickness, float), np.asarray(piece.extent, float)
    both = np.broadcast_shapes(thickness.shape, extent.shape)
    if not both:
        return piece
    return Piece(shape=piece.shape, thickness=thickness[..., None], extent=np.broadcast_to(extent, both)[..., None])


def _skin(reach: Array, middles: Array, contents: Array, surface: Array) -> Array:
    """How deep the straight lines between layers lie below the content of a skin. [m]"""
    limit = handbook().value("lasting", "skin", "content").mean
    where = np.concatenate([middles, reach[..., None]], axis=-1)
    content = np.concatenate([contents, surface[..., None]], axis=-1)
    a, b = content[..., :-1], content[..., 1:]
    least, width = np.minimum(a, b), np.abs(b - a)
    below = np.clip((limit - least) / np.maximum(width, _LEVEL), 0.0, 1.0)
    depth = (below * np.diff(where, axis=-1)).sum(axis=-1)
    return np.asarray(np.where(contents[..., 0] < limit, reach, depth))


def _resistivities(law: Callable[[Array], ArrayLike], contents: Array, room: Array) -> tuple[Array, Array]:
    each = np.broadcast_to(law(contents), contents.shape)
    whole = room.sum(axis=-1)
    return whole / (room / each).sum(axis=-1), (room * each).sum(axis=-1) / whole
