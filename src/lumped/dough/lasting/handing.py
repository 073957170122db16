"""When hands may take a hot dough: in its pot, pressed to a slab, rolled to a ball, with intervals.

The middle is what counts, since a hand presses into it; the face is cool long before. Under a cloth or film nothing
evaporates, which is the slowest that can happen.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.kneading import Kneading
from lumped.dough.lasting.air import Room
from lumped.dough.lasting.cooling import Cooling, cool, cool_pot, cooling_time, safe_warmth
from lumped.dough.lasting.heat import WarmDough
from lumped.dough.lasting.kneaded import warm_from
from lumped.dough.lasting.layers import Piece, Shape
from lumped.errors import InputError
from lumped.quantities import Provenance, Value, believed, drawn
from lumped.reference import handbook

__all__ = ["FORMS", "THINNEST", "HandClock", "Hot", "hand_clock", "hot_dough", "thickest_within"]

Array = NDArray[np.float64]
Form = Literal["pot", "slab", "ball"]
FORMS: tuple[Form, ...] = ("pot", "slab", "ball")
COUNT = 96
_DAY = 86400.0
_HEAVIEST, _LARGEST, _COLDEST = 50.0, 2.0, 253.15  # kg, m, K
_WARMTHS = 6.0  # times 1/e of the slowest draw that are followed
_GENTLE = 7.0  # W/(m²·K), about the least that a room takes away
THINNEST = 2e-3  # m, the thinnest piece that `thickest_within` looks at
_THICKNESSES = np.geomspace(THINNEST, 0.08, 14)


@dataclass(frozen=True, slots=True, kw_only=True)
class Hot:
    """A dough as it leaves the stove, in draws.

    Parameters
    ----------
    title : str
        Name of its recipe.
    dough : WarmDough
        What it is made of; (n,).
    beginning, safe : (n,) float
        How warm it is at first, and how warm hands bear it. [K]
    transfer, air_speed : (n,) float
        How many times better the air carries heat away than the laws say [1]; the room's air [m/s].
    provenance : Provenance
        The weakest of what went in.
    """

    title: str
    dough: WarmDough
    beginning: Array
    safe: Array
    transfer: Array
    air_speed: Array
    provenance: Provenance


@dataclass(frozen=True, slots=True, kw_only=True)
class HandClock:
    """How long a piece stays too hot for hands.

    Parameters
    ----------
    title : str
        Name of the recipe.
    form : {"pot", "slab", "ball"}
        What it lies there as.
    thickness : float
        Of slab or heap, or the ball's diameter. [m]
    mass : float or None
        How much it is; None for a slab of unknown size. [kg]
    middle, face : Value
        How long until hands may take it, and until its face feels so. [s]
    beginning, safe : Value
        How warm it is at first, and how warm hands bear it. [K]
    """

    title: str
    form: Form
    thickness: float
    mass: float | None
    middle: Value
    face: Value
    beginning: Value
    safe: Value

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        values = {key: getattr(self, key).as_dict() for key in ("middle", "face", "beginning", "safe")}
        return {"title": self.title, "form": self.form, "thickness_m": self.thickness, "mass_kg": self.mass,
                "too_hot_for_hands": values}  # fmt: skip


def hot_dough(done: Kneading, *, beginning: float | None = None, count: int = COUNT) -> Hot | None:
    """Give a recipe's dough as it leaves the stove; None for one that was never hot.

    Parameters
    ----------
    done : Kneading
        The recipe followed through.
    beginning : float, optional
        How warm it is, if somebody measured it; by the recipe's way of cooking if left out. [K]
    count : int
        How many draws.
    """
    book, way = handbook(), done.recipe.cooked
    if way == "not cooked" and beginning is None:
        return None
    hot = book.value("workshop", "heating", f"done_{way}") if beginning is None else Value.exact(beginning, "K")
    values = {f"done_{way}": hot, "safe": safe_warmth(), "air_speed": book.value("lasting", "draughts", "quiet")}
    for name, width in (("store", book.value("lasting", "warmth", "width").mean),
                        ("passing", book.value("lasting", "warmth", "width").mean),
                        ("transfer", book.value("air", "air", "transfer_width").mean)):  # fmt: skip
        values[name] = Value(mean=1.0, low=1 - width, high=1 + width, unit="")
    found = {name: each[:count] for name, each in drawn(values).items()}
    warm = warm_from(done.chain)
    return Hot(
        title=done.recipe.title, beginning=found[f"done_{way}"], safe=found["safe"], air_speed=found["air_speed"],
        transfer=np.maximum(found["transfer"], 0.2),
        provenance=Provenance.of([each.provenance for each in values.values()]),
        dough=WarmDough(
            density=np.asarray(warm.density)[:count], capacity=np.asarray(warm.capacity)[:count] * found["store"],
            conductivity=np.asarray(warm.conductivity)[:count] * found["passing"],
        ),
    )  # fmt: skip


def hand_clock(
    hot: Hot,
    form: Form,
    *,
    mass: float | None = None,
    thickness: float | None = None,
    across: float = 0.18,
    room: float = 294.15,
) -> HandClock:
    """Give how long a piece stays too hot for hands.

    Parameters
    ----------
    hot : Hot
        The dough.
    form : {"pot", "slab", "ball"}
        A heap in its pot, a slab on a table that takes no heat, a ball.
    mass, thickness : float, optional
        How much it is, how thick or high; one of them for a heap or a ball, at least the thickness of a slab. [kg, m]
    across : float
        Width of the pot. [m]
    room : float
        Temperature of the room. [K]

    Raises
    ------
    InputError
        If neither is given, a size can't be, or the room is as warm as hands bear.

    Examples
    --------
    >>> from lumped.dough import Portion, Recipe
    >>> from lumped.dough.kneading import kneading
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> done = kneading(Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot"))
    >>> ball = hand_clock(hot_dough(done), "ball", thickness=0.05)
    >>> 25 < ball.middle.low / 60 < 45 < ball.middle.high / 60 < 80
    True
    """
    _check_form(form, mass, thickness)
    _check_sizes(hot, mass, (thickness, across), room)
    density = float(np.median(np.asarray(hot.dough.density)))
    thickness = thickness or _thickness(form, (mass or 0.0) / density, across)
    volume = np.pi / 6 * thickness**3 if form == "ball" else np.pi / 4 * across**2 * thickness
    done = _cooled(hot, form, np.asarray(thickness), across, room)
    middle, face = (np.minimum(done.moment_below(hot.safe, where), _DAY) for where in ("middle", "face"))
    return HandClock(
        title=hot.title, form=form, thickness=thickness, mass=mass or (None if form == "slab" else density * volume),
        middle=believed(middle, unit="s", provenance=hot.provenance),
        face=believed(face, unit="s", provenance=hot.provenance),
        beginning=believed(hot.beginning, unit="K", provenance=hot.provenance), safe=safe_warmth(),
    )  # fmt: skip


def thickest_within(hot: Hot, form: Form, time: ArrayLike, *, across: float = 0.18, room: float = 294.15) -> Value:
    """Give how thick a piece may be to be cool enough within a time.

    Parameters
    ----------
    hot : Hot
        The dough.
    form : {"pot", "slab", "ball"}
        What it lies there as.
    time : (n,) float
        How much time it has, a draw each; nothing cools in less than none. [s]
    across : float
        Width of the pot. [m]
    room : float
        Temperature of the room. [K]

    Returns
    -------
    Value
        Thickness or diameter; its low end is the one to rely on. From 2 mm, below which it is 0, to 8 cm. [m]

    Raises
    ------
    InputError
        As `hand_clock`.
    """
    _check_form(form, None, _THICKNESSES[0])
    _check_sizes(hot, None, (across,), room)
    done = _cooled(hot, form, _THICKNESSES[:, None], across, room)
    needed = np.maximum.accumulate(done.moment_below(np.broadcast_to(hot.safe, done.middle.shape[:-1])), axis=0)
    given = np.broadcast_to(np.asarray(time, float), hot.safe.shape)
    return believed(_where(needed, given), unit="m", provenance=hot.provenance)


def _where(needed: Array, given: Array) -> Array:
    """The thickness at which just the given time is needed, draw by draw; (t, n), (n,) -> (n,). [m]"""
    k = np.clip((needed <= given).sum(axis=0) - 1, 0, len(needed) - 2)
    draw = np.arange(len(given))
    low, high = (np.log(np.maximum(np.minimum(needed[each, draw], 1e7), 1.0)) for each in (k, k + 1))
    wanted = np.log(np.maximum(given, 1.0))
    share = np.clip((wanted - low) / np.where(high > low, high - low, 1.0), 0.0, 1.0)
    found = _THICKNESSES[k] * (_THICKNESSES[k + 1] / _THICKNESSES[k]) ** share
    return np.asarray(np.where(given < needed[0], 0.0, found))


def _cooled(hot: Hot, form: Form, thickness: Array, across: float, room: float) -> Cooling:
    air = Room(temperature=room, air_speed=hot.air_speed)
    shape: Shape = "ball" if form == "ball" else "slab"
    size = thickness + 0 * hot.beginning
    piece = Piece(shape=shape, thickness=size, extent=1.0 if form == "ball" else np.pi / 4 * 0.3**2)
    slowest = float(np.max(cooling_time(hot.dough, piece, _GENTLE) + piece.depth**2 / hot.dough.diffusivity))
    duration = min(_WARMTHS * slowest, 2 * _DAY)
    if form == "pot":
        return cool_pot(hot.dough, air, height=size, diameter=across + 0 * size, beginning=hot.beginning + 0 * size,
                        duration=duration, times=hot.transfer)  # fmt: skip
    return cool(hot.dough, piece, air, beginning=hot.beginning, duration=duration, times=hot.transfer, layers=12)


def _thickness(form: Form, volume: float, across: float) -> float:
    if form == "ball":
        return float(np.cbrt(6 / np.pi * volume))
    return volume / (np.pi / 4 * across**2)


def _check_form(form: Form, mass: float | None, thickness: float | None) -> None:
    if form not in FORMS:
        raise InputError("lasting-form", form=form, forms=", ".join(FORMS))
    if thickness is None and (mass is None or form == "slab"):
        raise InputError("lasting-no-size", form=form)


def _check_sizes(hot: Hot, mass: float | None, sizes: Sequence[float | None], room: float) -> None:
    if mass is not None and not 0 < mass <= _HEAVIEST:
        raise InputError("lasting-hot-mass", mass=f"{mass:,.9g}", most=f"{_HEAVIEST:g}")
    for size in sizes:
        if size is not None and not 0 < size <= _LARGEST:
            raise InputError("lasting-hot-size", size=f"{1e3 * size:,.9g}", most=f"{_LARGEST:g}")
    if not _COLDEST < room < float(np.min(hot.safe)) - 1:
        raise InputError("lasting-room-warm", room=f"{room - 273.15:.3g}", hands=f"{safe_warmth().mean - 273.15:.3g}")
    if not np.all(hot.beginning > room):
        raise InputError("lasting-not-warm", beginning=f"{float(np.min(hot.beginning)) - 273.15:.3g}",
                         room=f"{room - 273.15:.3g}")  # fmt: skip
