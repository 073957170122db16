"""From a kneaded recipe to what the clocks need to know of its dough: its water and its warmth.

Drying needs water over dry matter, the humidity that each amount of water brings, how fast water creeps, and what the
dough's resistivity becomes; the last comes from the chain, followed again with less water and with more.
"""

from dataclasses import replace
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import compounds
from lumped.dough.beliefs import Draws, middle
from lumped.dough.chain import Chain
from lumped.dough.kneading import followed, lost_share
from lumped.dough.lasting.heat import WarmDough, warm_dough
from lumped.dough.lasting.isotherm import Isotherm, Uptake, brine_uptake, flour_uptake, isotherm_of
from lumped.dough.lasting.moist import Law, MoistDough, falling_diffusivity
from lumped.dough.recipe import Recipe
from lumped.errors import InputError
from lumped.pantry import Pantry, pantry
from lumped.quantities import short_text
from lumped.reference import handbook

__all__ = ["isotherm_from", "isotherm_of_parts", "moist_from", "warm_from"]

Array = NDArray[np.float64]
_LEVELS = np.concatenate([np.linspace(0.0, 1.0, 33) ** 1.3, np.linspace(1.0, 2.0, 9)[1:]])
"""Water over that of the fresh dough at which it is followed again; a salt dough in damp air takes up as much again."""
_GAPS = np.diff(_LEVELS)
_MARKS = 100  # of the ruler in which levels are looked up, to 1; no two levels lie in one of its cells
_RULER = np.minimum(_LEVELS.searchsorted(np.arange(2 * _MARKS + 1) / _MARKS, "right") - 1, len(_LEVELS) - 2)
_DRIEST, _WETTEST = 0.01, 20.0  # water over dry matter: what is drier or wetter is no dough
_OFF = 1.1  # by how much two laws of the same water activity may differ, as a factor
_OPEN = 30.0  # between the driest and the wettest draw; a usual recipe leaves a factor of two or three
_WORTH_IT = 0.004  # share of the dry matter from which a compound's own brine counts
_SWEET = {"sucrose", "glucose", "fructose", "maltose", "glycerol", "sorbitol", "ethanol"}
_AS = {"water": "water", "protein": "protein", "fat": "fat"} | dict.fromkeys(("starch", "fibre", *_SWEET), "starch")


def moist_from(
    recipe: Recipe,
    shop: Pantry | None = None,
    given: Draws | None = None,
    *,
    diffusivity: Law | None = None,
    flour: Uptake | None = None,
    shrinks: ArrayLike | None = None,
) -> MoistDough:
    """Give what drying needs to know of a recipe's dough.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    given : Draws, optional
        Draws of what the recipe leaves open, n of them; the middle, one entry, if left out.
    diffusivity : callable, optional
        Law of water's diffusivity; the handbook's, that falls as the dough dries. [1] -> [m²/s]
    flour : callable, optional
        What its flour takes up; the handbook's.
    shrinks : (n,) float, optional
        Share of the leaving water's volume that the piece loses; the handbook's. [1]

    Returns
    -------
    MoistDough
        Of n cases, with a law of its resistivity.

    Raises
    ------
    InputError
        If it holds hardly any water, or is nearly all water.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.quantities import Value
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> dough = moist_from(Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot"))
    >>> float(dough.content[0].round(2)), dough.isotherm.content_at(np.array([0.45])).round(2).tolist()
    (1.17, [0.06])
    """
    shop = shop or pantry()
    given = given or middle(recipe, shop)
    fresh, law = _followed_drier(recipe, given, shop)
    least, most = float(np.min(_content(fresh))), float(np.max(_content(fresh)))
    if most > _OPEN * least > 0:
        raise InputError("lasting-too-open", least=short_text(100 * least), most=short_text(100 * most))
    if not _DRIEST < least <= most < _WETTEST:
        raise InputError("lasting-no-dough", water=short_text(100 * (least if least <= _DRIEST else most)))
    return MoistDough(
        density=fresh.density, content=_content(fresh),
        isotherm=isotherm_from(fresh, flour=flour, most=float(_LEVELS[-1]) * most),
        diffusivity=diffusivity or falling_diffusivity(), resistivity=law,
        shrinks=handbook().value("lasting", "drying", "shrinks").mean if shrinks is None else shrinks,
    )  # fmt: skip


def isotherm_from(chain: Chain, *, flour: Uptake | None = None, most: float) -> Isotherm:
    """Give the humidity that each water content of a dough brings.

    Parameters
    ----------
    chain : Chain
        The fresh dough, n of them.
    flour : callable, optional
        What its flour takes up; the handbook's.
    most : float
        Greatest water content of the table. [1]

    Returns
    -------
    Isotherm
        Of n cases.

    Notes
    -----
    Flour, salts and sugars each hold what they hold alone (`isotherm_of`). The chain's own water activity multiplies
    the liquid's with the flour's instead; at fresh doughs of the usual kind the two are within 0.02. All of the curve
    is stretched by what that makes, so that a fresh dough's is the one that `knead` tells, its interval included.
    """
    dry = chain.mass - chain.of("water")
    law = isotherm_of_parts(chain, flour=flour, most=most)
    fresh = np.broadcast_to(chain.water_activity, dry.shape).clip(0.0, 1.0)
    off = np.clip(fresh / np.maximum(law.activity_at(chain.of("water") / dry), 1e-6), 1 / _OFF, _OFF)
    return replace(law, activity=np.clip(law.activity * off[..., None], 0.0, 1.0))


def isotherm_of_parts(chain: Chain, *, flour: Uptake | None = None, most: float) -> Isotherm:
    """Give the humidity that each water content brings, if all parts hold what they hold alone; see `isotherm_from`."""
    dry = chain.mass - chain.of("water")
    parts = [(sum(chain.components[row] for row in _holding()) / dry, flour or flour_uptake())]
    for row, key in _brines():
        share = chain.components[row] / dry
        if np.any(share > _WORTH_IT):
            parts.append((share, _brine(key, chain.temperature)))
    return isotherm_of(parts, most=most)


def warm_from(chain: Chain, *, pores: ArrayLike | None = None) -> WarmDough:
    """Give what cooling needs to know of a dough.

    Parameters
    ----------
    chain : Chain
        The dough, n of them.
    pores : (n,) float, optional
        Air's share of its volume; the middle of what is believed. [1]

    Returns
    -------
    WarmDough
        Of n cases.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.dough.kneading import knead_middle
    >>> from lumped.quantities import Value
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> dough = warm_from(knead_middle(Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")))
    >>> int(dough.capacity[0]), float(dough.conductivity[0].round(2))
    (2872, 0.49)
    """
    shares: dict[str, Array] = {}
    for each, mass in zip(compounds(), chain.components, strict=True):
        part = _AS.get(each.key, "starch" if each.key == "other" else "salt")
        shares[part] = shares.get(part, 0.0) + mass
    air = handbook().value("doughs", "unmeasured", "air").mean if pores is None else pores
    return warm_dough(shares, pores=air)


def _followed_drier(recipe: Recipe, given: Draws, shop: Pantry) -> tuple[Chain, Law]:
    """Follow a recipe through with less water and with more, all in one pass: entry = level · draws + draw."""
    count = given.masses.shape[1]
    stays = 1 - np.broadcast_to(lost_share(recipe, given, shop), (count,))
    lost = (1 - _LEVELS[:, None] * stays).ravel()
    rounds = replace(given.repeated(len(_LEVELS)), lost_share=lost, weighed_after=None)
    table = np.log(followed(recipe, rounds, shop).resistivity).reshape(-1, count).T
    fresh = followed(recipe, given, shop)
    return fresh, _law(table, _content(fresh))


def _law(table: Array, fresh: Array) -> Law:
    """Give the resistivity at water contents (n, …, layers), by straight lines of its logarithm."""
    flat, rows = table.ravel(), len(_LEVELS) * np.arange(len(table))

    def resistivity(content: Array) -> Array:
        more = (1,) * (np.ndim(content) - fresh.ndim)
        level = np.clip(content / fresh.reshape(fresh.shape + more), 0.0, _LEVELS[-1])
        k = _below(level)
        share = (level - _LEVELS.take(k)) / _GAPS.take(k)
        k += rows.reshape(fresh.shape + more)
        return np.asarray(np.exp(flat.take(k) * (1 - share) + flat.take(k + 1) * share))

    return resistivity


def _below(level: Array) -> NDArray[np.intp]:
    """The last of the levels, but the very last, that is not above each: those in a cell of a ruler differ by one."""
    k = _RULER.take((level * _MARKS).astype(np.intp), mode="clip")
    k += level >= _LEVELS.take(k + 1)
    return np.minimum(k, len(_LEVELS) - 2)


def _content(chain: Chain) -> Array:
    """Water over dry matter. [1]"""
    water = chain.of("water")
    return np.asarray(water / (chain.mass - water))


@cache
def _brine(key: str, temperature: float) -> Uptake:
    return brine_uptake(key, temperature)


@cache
def _holding() -> tuple[int, ...]:
    return tuple(row for row, each in enumerate(compounds()) if each.holds_water)


@cache
def _brines() -> tuple[tuple[int, str], ...]:
    return tuple((row, each.key) for row, each in enumerate(compounds()) if each.dissolves and each.molar_mass)
