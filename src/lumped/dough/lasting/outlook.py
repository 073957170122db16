"""What becomes of a recipe's piece of dough from hour to hour, with intervals: what nobody knows of its drying, drawn.

Every draw is one possible dough in one possible room and is followed through all hours, so a difference between two
hours is surer than either. The diffusivity of water in dough and how well the air carries vapour away count most.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import beliefs, draws, spread_over
from lumped.dough.calibrating import Calibration
from lumped.dough.chain import Chain
from lumped.dough.kneading import followed
from lumped.dough.lasting.air import OPEN, AirSide, Cover, Room, air_over, bag
from lumped.dough.lasting.dried import Drying
from lumped.dough.lasting.drying import dry
from lumped.dough.lasting.isotherm import flour_uptake
from lumped.dough.lasting.kneaded import moist_from
from lumped.dough.lasting.layers import Piece
from lumped.dough.lasting.moist import MoistDough, falling_diffusivity
from lumped.dough.origins import Origins
from lumped.dough.recipe import Recipe
from lumped.dough.remembering import Same
from lumped.errors import InputError, SolverError
from lumped.pantry import Pantry, pantry
from lumped.quantities import Provenance, Value, believed, drawn
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["BELIEVED", "COVERS", "DRAUGHTS", "Outlook", "Surroundings", "outlook"]

Array = NDArray[np.float64]
CoverName = Literal["open", "bag", "box"]
COVERS: tuple[CoverName, ...] = ("open", "bag", "box")
DRAUGHTS = ("still", "quiet", "airy", "fan")
COUNT = 128
_STEPS = (64, 256, 1024)
_LEAST = 0.01  # by how much the water content of a layer may undershoot nothing
HOUR, LONGEST = 3600.0, 30 * 86400.0
_FIGURES = {"loss": "", "mass": "kg", "skin": "m", "resistivity": "Ω·m", "worse": "", "content": "", "middle": ""}
BELIEVED = {
    # name of the draw: row of the handbook's table `lasting` (or `air`) that says what is believed
    "diffusivity": ("air", "water-in-dough", "diffusivity"), "slower": ("lasting", "skin", "slower"),
    "layer": ("lasting", "flour", "layer"), "first": ("lasting", "flour", "first"),
    "further": ("lasting", "flour", "further"), "shrinks": ("lasting", "drying", "shrinks"),
    "leak": ("lasting", "bag", "leak"), "changes": ("lasting", "box", "changes"), "spare": ("lasting", "box", "spare"),
}  # fmt: skip
_COVERED = {"open": (), "bag": ("leak",), "box": ("changes", "spare")}
_OF_COVER = ("leak", "changes", "spare")
_OF_AIR = ("vapour_diffusivity", "vapour_diffusivity_power", "heat_conductivity", "viscosity", "heat_capacity")
_OF_DOUGH = ("diffusivity", "slower", "layer", "first", "further", "shrinks")


@dataclass(frozen=True, slots=True, kw_only=True)
class Surroundings:
    """Where a piece lies.

    Parameters
    ----------
    temperature : float
        Of the room. [K]
    humidity : float
        Relative humidity of the room. [1]
    draught : str or float
        A word of `DRAUGHTS`, or the speed of the air. [m/s]
    cover : {"open", "bag", "box"}
        What lies round it.

    Raises
    ------
    InputError
        If there is no such room.

    Examples
    --------
    >>> Surroundings(humidity=0.3).draught
    'quiet'
    """

    temperature: float = 294.15
    humidity: float = 0.45
    draught: str | float = "quiet"
    cover: CoverName = "open"

    def __post_init__(self) -> None:
        if not 273.15 <= self.temperature <= 323.15:
            raise InputError("lasting-room", room=f"{self.temperature - 273.15:.3g}")
        if not 0 <= self.humidity <= 1:
            raise InputError("lasting-humidity-percent", humidity=f"{100 * self.humidity:,.9g}")
        if self.cover not in COVERS:
            raise InputError("lasting-cover", cover=self.cover, covers=", ".join(COVERS))
        if isinstance(self.draught, str) and self.draught not in DRAUGHTS:
            raise InputError("lasting-draught", draught=self.draught, draughts=", ".join(DRAUGHTS))
        if not isinstance(self.draught, str) and not 0 <= self.draught <= 20:
            raise InputError("lasting-draught", draught=f"{self.draught:g}", draughts=", ".join(DRAUGHTS))

    @property
    def air_speed(self) -> Value:
        """[m/s]"""
        if isinstance(self.draught, str):
            return handbook().value("lasting", "draughts", self.draught)
        return Value.exact(float(self.draught), "m/s")


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """A piece of dough over time, in draws.

    Parameters
    ----------
    title : str
        Name of the recipe.
    piece : Piece
        Shape and size when fresh.
    where : Surroundings
        Where it lies.
    done : Drying
        What becomes of each draw.
    fresh : Value
        Its water activity at first: the humidity that neither dries nor wets it. [1]
    rest : Value
        Share of its water that it has lost when it is in balance with the room; negative if it takes up. [1]
    endless : bool
        Whether it takes up more water than can be computed.
    provenance, resistive : Provenance
        What its drying rests on, and its resistivity while it dries.
    """

    title: str
    piece: Piece
    where: Surroundings
    done: Drying
    fresh: Value
    rest: Value
    endless: bool
    provenance: Provenance
    resistive: Provenance

    def at(self, figure: str, time: float) -> Value:
        """Give a figure at a time.

        Parameters
        ----------
        figure : {"loss", "mass", "skin", "resistivity", "worse", "content", "middle"}
            Share of its water that left [1]; mass [kg]; depth of the skin [m]; resistivity along the piece [Ω·m], and
            over that of the fresh piece [1]; water over dry matter, and in the innermost layer [1].
        time : float
            When. [s]
        """
        unit = _FIGURES[figure]
        spread: Literal["normal", "lognormal"] = "lognormal" if figure in ("resistivity", "worse") else "normal"
        origin = self.resistive if figure in ("resistivity", "worse") else self.provenance
        return believed(self.along(figure, time), unit=unit, provenance=origin, spread=spread)

    def along(self, figure: str, time: float | Array) -> Array:
        """Give the draws of a figure at times (m,): (n, m); at one time: (n,)."""
        whole = self._figure(figure)
        k = np.clip(self.done.time.searchsorted(time, "right") - 1, 0, len(self.done.time) - 2)
        share = np.clip((time - self.done.time[k]) / (self.done.time[k + 1] - self.done.time[k]), 0.0, 1.0)
        return np.asarray(whole[..., k] * (1 - share) + whole[..., k + 1] * share)

    def _figure(self, figure: str) -> Array:
        done = self.done
        if done.along is None:
            raise ValueError("a dough of a recipe has a resistivity")
        found = {
            "loss": done.loss, "mass": done.mass, "skin": done.skin, "resistivity": done.along, "content": done.mean,
            "middle": done.middle,
            "worse": done.along / done.along[..., :1],
        }  # fmt: skip
        return found[figure]

    def as_dict(self, times: tuple[float, ...]) -> dict[str, Any]:
        """Give it as JSON shows it, at some times."""
        draught = {"draught": self.where.draught, "air_speed": self.where.air_speed.as_dict()}
        return {
            "title": self.title,
            "piece": {"shape": self.piece.shape, "thickness_m": float(np.max(self.piece.thickness)),
                      "extent": float(np.max(self.piece.extent))},
            "room": {"temperature_K": self.where.temperature, "humidity": self.where.humidity, **draught,
                     "cover": self.where.cover},
            "keeps_its_water_in_humidity": self.fresh.as_dict(),
            "water_lost_in_balance": self.rest.as_dict(), "takes_up_without_end": self.endless,
            "moments": [
                {"time_s": time, **{name: self.at(name, time).as_dict() for name in _FIGURES}} for time in times
            ],
        }  # fmt: skip


def outlook(
    recipe: Recipe,
    piece: Piece,
    where: Surroundings,
    *,
    duration: float,
    shop: Pantry | None = None,
    calibration: Calibration | None = None,
    count: int = COUNT,
) -> Outlook:
    """Follow a piece of a recipe's dough through its hours.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    piece : Piece
        Shape and size when fresh; one piece.
    where : Surroundings
        Room, draught, cover.
    duration : float
        How long; up to 30 days. [s]
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    calibration : Calibration, optional
        What measured batches taught: it narrows the resistivity.
    count : int
        How many draws.

    Returns
    -------
    Outlook

    Raises
    ------
    InputError
        If the duration or a size can't be.
    SolverError
        If the piece is so thin that it can't be followed for so long.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> recipe = Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")
    >>> roll = Piece(shape="roll", thickness=0.012, extent=0.1)
    >>> found = outlook(recipe, roll, Surroundings(), duration=86400.0)
    >>> lost = found.at("loss", 3600.0)
    >>> 0.01 < lost.low < 0.04 < lost.high < 0.10
    True
    """
    if not 0 < duration <= LONGEST:
        raise InputError("lasting-duration", hours=f"{duration / HOUR:,.9g}", most=f"{LONGEST / HOUR:g}")
    shop = shop or pantry()
    values = {name: handbook().value(*row) for name, row in BELIEVED.items()}
    width = handbook().value("air", "air", "transfer_width").mean
    values["transfer"] = Value(mean=1.0, low=1 - width, high=1 + width, unit="")
    values["air_speed"] = where.air_speed
    found = {name: each[:count] for name, each in drawn(values).items()}
    dough, chain = _dough(recipe, Same(shop), Same(calibration), count)
    room = Room(temperature=where.temperature, humidity=where.humidity, air_speed=found["air_speed"])
    side = air_over(piece, room, times=np.maximum(found["transfer"], 0.2))
    done = _followed(dough, piece, room, duration=duration, cover=_cover(piece, where, found), side=side)
    made = Origins(recipe=recipe, values=beliefs(recipe, shop), chain=chain, shop=shop, calibration=calibration)
    taken = {name: each for name, each in values.items() if name not in _OF_COVER or name in _COVERED[where.cover]}
    return _told(recipe.title, piece, where, dough, done=done, made=made, taken=taken)


def _followed(
    dough: MoistDough, piece: Piece, room: Room, *, duration: float, cover: Cover, side: AirSide
) -> Drying:  # fmt: skip
    """Follow a piece in as few steps as its draws bear: a thin one is dry long before a long time is over."""
    for steps in _STEPS:
        with np.errstate(invalid="ignore", over="ignore", divide="ignore"):
            done = dry(dough, piece, room, duration=duration, cover=cover, side=side, steps=steps)
        if np.all(np.isfinite(done.mass)) and np.min(done.contents) > -_LEAST:
            return done
    raise SolverError("lasting-unsteady", thickness=f"{1e3 * float(np.max(piece.thickness)):.3g}",
                      hours=f"{duration / HOUR:g}")  # fmt: skip


@lru_cache(4)
def _dough(recipe: Recipe, shop: Same, calibration: Same, count: int) -> tuple[MoistDough, Chain]:
    """The dough in draws, and what it is when fresh in all of them; where it lies and as what changes nothing of it.

    Few are followed; in the resistivity of the fresh dough they stand for all, so that every page tells the same.
    """
    whole = draws(recipe, shop.it, calibration.it)[0]
    chain = followed(recipe, whole, shop.it)
    given = whole.taken(spread_over(chain.resistivity, count))
    values = {name: handbook().value(*BELIEVED[name]) for name in _OF_DOUGH}
    found = {name: each[:count] for name, each in drawn(values).items()}
    flour = flour_uptake(found["layer"], np.maximum(found["first"], 2.0), np.clip(found["further"], 0.5, 0.95))
    dough = moist_from(
        recipe, shop.it, given, flour=flour, shrinks=np.clip(found["shrinks"], 0.0, 1.0),
        diffusivity=falling_diffusivity(found["diffusivity"], found["slower"]),
    )  # fmt: skip
    return dough, chain


def _cover(piece: Piece, where: Surroundings, found: Mapping[str, Array]) -> Cover:
    if where.cover == "bag":
        return bag(piece, leak=found["leak"])
    if where.cover == "box":
        spare = np.clip(found["spare"], 0.1, 0.97)
        air = piece.volume * spare / (1 - spare)
        return Cover(leak=found["changes"] / HOUR * air, air=air)
    return OPEN


def _told(
    title: str, piece: Piece, where: Surroundings, dough: MoistDough, *, done: Drying, made: Origins,
    taken: Mapping[str, Value],
) -> Outlook:  # fmt: skip
    activity = made.of("water_activity")
    dries = _dries_by(made, taken)
    content = np.asarray(dough.content)
    humidity = np.full_like(content, where.humidity)
    rest = dough.isotherm.content_at(humidity)
    most = dough.isotherm.content[-1]
    return Outlook(
        title=title, piece=piece, where=where, done=done, provenance=dries,
        resistive=Provenance.of([dries, made.of("resistivity")], note=say("origin-dried", laws=dries.note)),
        fresh=believed(made.chain.water_activity.clip(0.0, 1.0), unit="", provenance=activity),
        rest=believed(1 - rest / content, unit="", provenance=_balance_by(activity, taken)),
        endless=bool(np.median(rest) > 0.99 * most),
    )  # fmt: skip


def _dries_by(made: Origins, taken: Mapping[str, Value]) -> Provenance:
    """Say what drying rests on: how tightly and how fast the dough gives its water, and how the air carries it away."""
    book = handbook()
    parts = [made.of(figure) for figure in ("water_activity", "density")]
    parts += [each.provenance for each in taken.values()]
    parts += [book.value("air", "air", each).provenance for each in _OF_AIR]
    parts.append(book.curve("water-evaporation").provenance)
    return Provenance.of(parts, note=say("origin-drying"))


def _balance_by(activity: Provenance, taken: Mapping[str, Value]) -> Provenance:
    """Say what the balance with a room rests on: what brine leaves free, and what flour holds."""
    held = [taken[each].provenance for each in ("layer", "first", "further")]
    return Provenance.of([activity, *held], note=activity.note)
