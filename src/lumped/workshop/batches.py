"""A recipe for so much dough, in as many batches as the pot asks for.

All of a recipe scales alike, steam included, so `factor = wanted mass / mass of the dough`; a pot takes
`full · volume / room` of it, where the room is that of a kilogram of dough with the water that has not left yet.
"""

from dataclasses import dataclass, replace
from functools import cache, lru_cache
from math import ceil

import numpy as np

from lumped.dough.kneading import Kneading, kneading
from lumped.dough.recipe import Recipe
from lumped.dough.remembering import Same
from lumped.errors import InputError
from lumped.pantry import Pantry, pantry
from lumped.quantities import Value
from lumped.reference import handbook

__all__ = ["Batches", "batches_of", "kneaded", "most_at_once", "room_of", "scaled_to", "usual_pot"]

_WATER = 998.0  # kg/m³, at room temperature
_FULL = {"pot": "full", "microwave": "full_microwave", "kettle": "full_bowl", "not cooked": "full_bowl"}
_LEAST, _MOST = 0.02, 1000.0  # kg of dough; less is a crumb, more is no workshop: chosen
_SMALLEST_POT, _LARGEST_POT = 2e-4, 0.1  # m³


@dataclass(frozen=True, slots=True, kw_only=True)
class Batches:
    """So many equal batches of a recipe.

    Parameters
    ----------
    recipe : Recipe
        One batch.
    count : int
        How many.
    mass : Value
        Dough of all batches, when they are made. [kg]
    pot : float
        Volume of the pot or bowl. [m³]
    full : float
        How full it is at its fullest. [1]
    room : float
        What a kilogram of the dough takes before its steam leaves. [m³/kg]
    done : Kneading
        One batch followed through in draws.
    """

    recipe: Recipe
    count: int
    mass: Value
    pot: float
    full: float
    room: float
    done: Kneading

    @property
    def each(self) -> Value:
        """Dough of one batch. [kg]"""
        return _times(self.mass, 1 / self.count)

    @property
    def whole(self) -> Recipe:
        """All batches together."""
        return self.recipe.scaled(self.count)


def scaled_to(recipe: Recipe, mass: float, shop: Pantry | None = None) -> Recipe:
    """Give the recipe for a mass of finished dough.

    Parameters
    ----------
    recipe : Recipe
        The recipe.
    mass : float
        Dough that there should be after cooking, at the middle of what is believed. [kg]
    shop : Pantry, optional
        What the ingredients are; the handbook's.

    Returns
    -------
    Recipe

    Raises
    ------
    InputError
        If nobody makes so little or so much.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> recipe = Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")
    >>> larger = scaled_to(recipe, 1.7)
    >>> round(larger.mass_of("plain-flour"), 2), 1.7 < sum(map(larger.mass_of, larger.ingredients)) < 2.1
    (0.53, True)
    """
    return _scaled(recipe, mass, kneaded(recipe, shop or pantry()))


def batches_of(recipe: Recipe, mass: float | None, *, pot: float | None = None, shop: Pantry | None = None) -> Batches:
    """Share a mass of dough out to batches that fit pot and arms.

    Parameters
    ----------
    recipe : Recipe
        The recipe.
    mass : float or None
        Dough that there should be after cooking; None for what the recipe itself yields. [kg]
    pot : float, optional
        Volume of the pot or bowl; a large household pot if left out. [m³]
    shop : Pantry, optional
        What the ingredients are; the handbook's.

    Returns
    -------
    Batches
        As few equal ones as can be.

    Raises
    ------
    InputError
        If there is no such pot, or nobody makes so little or so much.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> portion = Portion(ingredient="plain-flour", written="1 kg", mass=Value.exact(1.0, "kg"))
    >>> dry = Recipe(title="", kind="insulating", portions=(portion,), cooked="not cooked")
    >>> batches_of(dry, 6.0, pot=10e-3).count
    3
    """
    shop = shop or pantry()
    pot = usual_pot().mean if pot is None else pot
    if not _SMALLEST_POT <= pot <= _LARGEST_POT:
        raise InputError("making-pot", pot=f"{1e3 * pot:,.9g}", least="0.2", most="100")
    found = kneaded(recipe, shop)
    room, mass = room_of(found), _yield(found) if mass is None else mass
    whole = _scaled(recipe, mass, found)
    count = ceil(mass / most_at_once(recipe, pot, room) - 1e-9)
    one = whole.scaled(1 / count)
    done = kneaded(one, shop)
    return Batches(
        recipe=one, count=count, mass=_times(done.value(done.chain.mass, "kg", "mass"), count), pot=pot,
        full=mass / count * room / pot, room=room, done=done,
    )  # fmt: skip


def kneaded(recipe: Recipe, shop: Pantry) -> Kneading:
    """Follow a recipe through in draws; one that was followed just before is not followed again."""
    return _kneaded(recipe, Same(shop))


@lru_cache(4)
def _kneaded(recipe: Recipe, same: Same) -> Kneading:
    return kneading(recipe, same.it)


def _scaled(recipe: Recipe, mass: float, done: Kneading) -> Recipe:
    if not _LEAST <= mass <= _MOST:
        raise InputError("making-mass", mass=f"{mass:,.9g}", least=f"{1e3 * _LEAST:.0f}", most=f"{_MOST:,.0f}")
    return recipe.scaled(mass / _yield(done))


def _yield(done: Kneading) -> float:
    """Dough that a recipe gives, at the middle of what is believed. [kg]"""
    return float(np.median(done.chain.mass))


def most_at_once(recipe: Recipe, pot: float, room: float) -> float:
    """Give the most dough that one pot and two arms make at once. [kg]"""
    book = handbook()
    full = book.value("workshop", "pot", _FULL[recipe.cooked]).mean
    return min(full * pot / room, book.value("workshop", "pot", "arms").mean)


@cache
def usual_pot() -> Value:
    """Give the volume of a large household pot. [m³]

    Examples
    --------
    >>> usual_pot().mean
    0.003
    """
    return handbook().value("workshop", "pot", "usual")


def room_of(done: Kneading) -> float:
    """What a kilogram of dough takes before its steam has left. [m³/kg]"""
    chain = done.chain
    return float(np.median((chain.volume + chain.water_lost / _WATER) / chain.mass))


def _times(value: Value, factor: float) -> Value:
    return replace(value, **{end: factor * getattr(value, end) for end in ("mean", "low", "high")})
