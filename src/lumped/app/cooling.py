"""How long a cooked dough stays too hot for hands, and how it is laid out to be cool in time."""

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from lumped.errors import InputError

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.lasting.handing import Form, HandClock
    from lumped.quantities import Value

__all__ = ["Cooled", "InTime", "cooled", "in_time"]

_DAY = 1440.0  # minutes
_DENSITY = 1250.0  # kg/m³, for areas and sizes that people shape by hand


@dataclass(frozen=True, slots=True, kw_only=True)
class Cooled:
    """How long a dough stays too hot for hands.

    Parameters
    ----------
    title : str
        Of the recipe.
    clock : HandClock or None
        None for a dough that was never hot.
    words : tuple of str
        The clock in sentences.
    """

    title: str
    clock: "HandClock | None"
    words: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        clock = None if self.clock is None else self.clock.as_dict()
        return {"title": self.title, "clock": clock, "words": list(self.words)}


def cooled(
    dough: "Named",
    form: "Form" = "pot",
    *,
    mass: float | None = None,
    thickness: float | None = None,
    across: float = 0.18,
    room: float = 294.15,
    beginning: float | None = None,
) -> Cooled:
    """Tell how long a recipe's dough stays too hot for hands.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    form : {"pot", "slab", "ball"}
        How it lies there.
    mass, thickness : float, optional
        How much it is, how thick it lies; the whole recipe if both are left out, a slab of 2 cm. [kg, m]
    across : float
        Width of the pot. [m]
    room, beginning : float
        Temperature of the room and of the hot dough; the latter by its way of cooking if left out. [K]

    Raises
    ------
    InputError
        If there is no such piece or room.
    """
    import numpy as np

    from lumped.dough.lasting.handing import hand_clock, hot_dough
    from lumped.texts import say

    done = dough.kneading()
    hot, title, whole = hot_dough(done, beginning=beginning), done.recipe.title, float(np.median(done.chain.mass))
    if hot is None:
        return Cooled(title=title, clock=None, words=(say("cool-never-hot"),))
    if mass is None and thickness is None:
        mass = whole
    if form == "slab" and thickness is None:
        thickness = 0.02
    clock = hand_clock(hot, form, mass=mass, thickness=thickness, across=across, room=room)
    return Cooled(title=title, clock=clock, words=_cool_words(clock, room))


def _cool_words(clock: "HandClock", room: float) -> tuple[str, ...]:
    from lumped.dough.lasting.wording import time_text
    from lumped.quantities import short_text
    from lumped.texts import say

    sizes = {"thick": short_text(1e3 * clock.thickness), "middle": time_text(clock.middle)}
    if clock.form != "slab" and clock.mass is not None:
        sizes["mass"] = short_text(1e3 * clock.mass)
    return (
        say(f"cool-{clock.form}", **sizes), say("cool-face", face=time_text(clock.face)),
        say("cool-reckoned", beginning=_degrees(clock.beginning.mean), room=_degrees(room),
            safe=_degrees(clock.safe.mean)),
        say("cool-adult"),
    )  # fmt: skip


def _degrees(kelvins: float) -> str:
    return f"{kelvins - 273.15:.0f}"


@dataclass(frozen=True, slots=True, kw_only=True)
class InTime:
    """How a cooked dough is laid out to be cool in time.

    Parameters
    ----------
    title, form : str
        Of the recipe; one of `Form`.
    thickness : Value or None
        How thick it may be; its low end is to be relied on. None for a dough that was never hot. [m]
    possible : bool
        Whether anybody can lay it out so thin.
    words : tuple of str
        How to lay it out, in sentences.
    """

    title: str
    form: str
    thickness: "Value | None"
    possible: bool
    words: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "title": self.title, "form": self.form, "possible": self.possible, "words": list(self.words),
            "thickness": None if self.thickness is None else self.thickness.as_dict(),
        }  # fmt: skip


def in_time(
    dough: "Named", minutes: float, form: "Form" = "slab", *, across: float = 0.18, room: float = 294.15
) -> InTime:
    """Tell how a recipe's dough is laid out to be cool enough in time, weighing and cooking included.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    minutes : float
        From the first gram on the scale to the first hand on the dough. [min]
    form : {"pot", "slab", "ball"}
        How it is to lie there.
    across : float
        Width of the pot. [m]
    room : float
        Temperature of the room. [K]

    Raises
    ------
    InputError
        If there is no such time, form or room.
    """
    from lumped.dough.lasting.handing import hot_dough, thickest_within
    from lumped.dough.lasting.wording import time_text
    from lumped.texts import say
    from lumped.workshop.hands import work_of

    if not 0 < minutes < _DAY:
        raise InputError("cool-no-time", within=f"{minutes:g}")
    done = dough.kneading()
    hot, title = hot_dough(done), done.recipe.title
    if hot is None:
        return InTime(title=title, form=form, thickness=None, possible=True, words=(say("cool-never-hot"),))
    mass = float(sorted(done.chain.mass)[len(done.chain.mass) // 2])
    work = work_of(done)
    making = work.active(mass, 1, pressed=form == "slab")
    left = 60.0 * minutes - making[: len(hot.safe)]
    found = thickest_within(hot, form, left, across=across, room=room)
    taken = work.value(making)
    key = "cool-making" if taken.mean < 60.0 * minutes else "cool-making-longer"
    words = (say(key, within=f"{minutes:g}", making=time_text(taken)),)
    possible = found.low >= _thinnest(form)
    return InTime(title=title, form=form, thickness=found, possible=possible,
                  words=(*words, *_in_time_words(found, form, mass, across, possible=possible)))  # fmt: skip


def _in_time_words(found: "Value", form: str, mass: float, across: float, *, possible: bool) -> tuple[str, ...]:
    from math import pi, sqrt

    from lumped.dough.lasting.handing import THINNEST
    from lumped.quantities import short_text
    from lumped.texts import say

    sizes = {"sure": short_text(1e3 * found.low), "likely": short_text(1e3 * found.mean)}
    if not possible:
        thinnest = short_text(1e3 * _thinnest(form))
        if found.low < THINNEST:
            return (say("cool-within-never", least=short_text(1e3 * THINNEST), thinnest=thinnest), say("cool-adult"))
        return (say("cool-within-no", **sizes, thinnest=thinnest), say("cool-adult"))
    if form == "slab":
        area = mass / _DENSITY / found.low
        return (say("cool-within-slab", **sizes, area=short_text(1e4 * area), side=short_text(1e2 * sqrt(area))),
                say("cool-adult"))  # fmt: skip
    volume = pi / 6 * found.low**3 if form == "ball" else pi / 4 * across**2 * found.low
    return (say(f"cool-within-{form}", **sizes, mass=short_text(1e3 * _DENSITY * volume)), say("cool-adult"))


def _thinnest(form: str) -> float:
    """How thin a hot dough can be laid out. [m]"""
    from lumped.reference import handbook

    return handbook().value("lasting", "laid-out", form).mean
