"""More salt or less: a recipe followed through for a row of amounts of its salt, with all that is open drawn once.

Salt carries current until the water is full of it; what stays solid stands in the way, so resistivity falls, turns
and rises again. Every draw is one possible batch and goes along the whole row, so that the place of the turn has an
interval of its own.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds
from lumped.chemistry.solubility import is_limited
from lumped.dough.beliefs import Draws, draws, sorted_out, spread_over
from lumped.dough.calibrating import Calibration
from lumped.dough.chain import Chain
from lumped.dough.finding import found_in
from lumped.dough.kneading import Kneading, followed, kneading, lost_share
from lumped.dough.properties import PROPERTIES, drawn_prices, spent
from lumped.dough.recipe import Recipe
from lumped.dough.salts import growth_marks, main_salt
from lumped.pantry import Pantry, pantry
from lumped.quantities import Value, significant
from lumped.texts import say

__all__ = ["Salting", "salting"]

Array = NDArray[np.float64]
SHOWN = ("resistivity", "water_activity", "sodium", "cost")
_AMOUNTS, _DRAWS = 61, 512
_ENOUGH = 1.10  # resistivity over the best that still counts as as good
_PRINTED = 11  # amounts of the row that a table shows
_SAME = 1e-9  # kg
_PART = 0.05  # of an ingredient, from which a compound is more than a trace: flour is no sugar
_TRACE = 1e-4  # share of the dough from which solid salt counts


@dataclass(frozen=True, slots=True, kw_only=True)
class Salting:
    """A recipe with all amounts of its salt.

    Parameters
    ----------
    recipe : Recipe
        The recipe as written.
    salt, name : str
        Which of its ingredients is varied, for programs and for people.
    amounts : (n,) float
        How much of it. [kg]
    amount : float
        How much of it the recipe takes. [kg]
    bands : mapping of str to (3, n) float
        Low end, median and high end of the 95 % interval of each property. [unit of the property]
    point : mapping of str to Value
        The recipe's own figures, each in the unit of the property.
    share : (n,) float
        Mass of it over mass of dough. [1]
    best : Value
        The amount with which the dough conducts best. [kg]
    best_resistivity : Value
        Its resistivity. [Ω·m]
    enough : (float, float)
        From where to where the median is within a tenth of its best. [kg]
    solid_from : Value or None
        The amount from which some stays solid; None if all dissolves as far as the row goes. [kg]
    money : str
        In what prices are given; "" without prices.
    limited : bool
        Whether a table limits how much of it water holds; of what is not, nothing is said to dissolve.
    """

    recipe: Recipe
    salt: str
    name: str
    amounts: Array
    amount: float
    bands: Mapping[str, Array]
    point: Mapping[str, Value]
    share: Array
    best: Value
    best_resistivity: Value
    enough: tuple[float, float]
    solid_from: Value | None
    money: str = ""
    limited: bool = True

    def sentences(self) -> tuple[str, ...]:
        """Say where the dough conducts best and how surely, how little salt is enough, and what stays solid."""
        best = self.best
        most = float(self.amounts[-1])
        if best.mean > 0.97 * most:
            return (say("salt-best-end", name=self.name, most=_grams(most)), *self._solid())
        told = [
            say("salt-best", name=self.name, best=_grams(best.mean), low=_grams(best.low), high=_grams(best.high)),
            say("salt-enough", low=_grams(self.enough[0]), high=_grams(self.enough[1])),
        ]
        return (*told, *self._solid())

    def _solid(self) -> tuple[str, ...]:
        """From where it stays solid, or that it never does; nothing of what no table limits."""
        start = self.solid_from
        if start is not None:
            ends = {"low": _grams(start.low), "high": _grams(start.high)}
            return (say("salt-solid-from", start=_grams(start.mean), **ends),)
        return (say("salt-never-solid", most=_grams(float(self.amounts[-1]))),) if self.limited else ()

    def cells(self) -> list[tuple[str, ...]]:
        """Give the row as a table of words: amount, share of the dough, and each property with its interval.

        Eleven amounts from none to the most, and among them the recipe's own, which is marked.
        """
        kept = self.point["resistivity"].provenance
        wanted = [*np.linspace(0.0, self.amounts[-1], _PRINTED), self.amount]
        table = []
        for k in sorted({int(np.abs(self.amounts - each).argmin()) for each in wanted}):
            low, mean, high = (np.array([band[end, k] for band in self.bands.values()]) for end in range(3))
            ends = zip(low, mean, high, strict=True)
            found = [Value(mean=m, low=lo, high=hi, unit="", provenance=kept) for lo, m, hi in ends]
            told = (PROPERTIES[key].text(each, self.money) for key, each in zip(self.bands, found, strict=True))
            own = abs(self.amounts[k] - self.amount) < _SAME
            amount = say("salt-own-amount" if own else "salt-amount", grams=_grams(self.amounts[k]))
            table.append((amount, f"{100 * self.share[k]:.0f} %", *told))
        return table

    def as_dict(self) -> dict[str, Any]:
        """Give the row as JSON shows it, in SI."""
        return {
            "kind": "salting", "schema": 1, "title": self.recipe.title, "salt": self.salt, "amount_kg": self.amount,
            "invented": self.recipe.invented, "money": self.money or None,
            "point": {key: value.as_dict() for key, value in self.point.items()},
            "best_kg": self.best.as_dict(), "best_resistivity": self.best_resistivity.as_dict(),
            "enough_kg": list(self.enough),
            "solid_from_kg": None if self.solid_from is None else self.solid_from.as_dict(),
            "growth": {each.key: each.value.as_dict() for each in growth_marks()},
            "row": [
                {"amount_kg": float(amount), "share": float(self.share[k])}
                | {key: dict(zip(("low", "mean", "high"), map(float, band[:, k]), strict=True))
                   for key, band in self.bands.items()}
                for k, amount in enumerate(self.amounts)
            ],
        }  # fmt: skip


def salting(
    recipe: Recipe,
    shop: Pantry | None = None,
    *,
    salt: str | None = None,
    prices: Mapping[str, Value] | None = None,
    money: str = "",
    calibration: Calibration | None = None,
    amounts: int = _AMOUNTS,
    count: int = _DRAWS,
) -> Salting:
    """Follow a recipe through for a row of amounts of its salt.

    Parameters
    ----------
    recipe : Recipe
        What goes in, and what is done with it.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    salt : str, optional
        Which ingredient is varied; by default the one that brings most ions.
    prices : mapping of str to Value, optional
        Price of each ingredient. [money/kg]
    money : str
        In what they are given.
    calibration : Calibration, optional
        What measured batches taught.
    amounts, count : int
        How many amounts, and how many draws of what is open.

    Returns
    -------
    Salting
        From no salt to twice the recipe's, or beyond what the water holds if that is more; to thrice of what no table
        limits. The recipe's own amount is in the row.

    Raises
    ------
    RecipeError
        If there is no salt in the recipe.

    Notes
    -----
    A recipe that gives the weight of its finished dough tells how much water left; that share is kept for all amounts.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> row = salting(Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot"))
    >>> row.enough[0] < 0.073 < row.enough[1] < 0.146
    True
    """
    shop = shop or pantry()
    chosen = main_salt(recipe, shop) if salt is None else found_in(recipe, salt, shop)
    done = kneading(recipe, shop, calibration)
    given = draws(recipe, shop, calibration)[0].taken(spread_over(done.chain.resistivity, count))
    amount = recipe.mass_of(chosen)
    solids = _solids(shop, chosen)
    row = _row(_most(recipe, shop, chosen, amount, solids), amount, amounts)
    amounts = len(row)
    chain, masses = _followed(recipe, given, shop, chosen, row)
    paid = drawn_prices(prices)
    each = None if paid is None else {key: np.tile(draw[:count], amounts) for key, draw in paid.items()}
    cost = spent(given.keys, masses, each)
    bands = {key: _band(PROPERTIES[key].given(chain, cost), amounts)
             for key in SHOWN if key != "cost" or cost is not None}  # fmt: skip
    resistivity = chain.resistivity.reshape(amounts, -1)
    turn = resistivity.argmin(axis=0)
    good = row[bands["resistivity"][1] <= _ENOUGH * bands["resistivity"][1].min()]
    weighed = chain.mass.reshape(amounts, -1)
    return Salting(
        recipe=recipe, salt=chosen, name=shop[chosen].name, amounts=row, amount=amount, bands=bands,
        point=_point(done, shop, paid),
        share=np.median(row[:, None] / np.maximum(weighed, 1e-12), axis=1),
        best=done.value(row[turn], "kg", "resistivity"),
        best_resistivity=done.value(resistivity.min(axis=0), "Ω·m", "resistivity"),
        enough=(float(good[0]), float(good[-1])),
        solid_from=_solid_from(_solid_share(chain, solids), row, done), money=money if cost is not None else "",
        limited=bool(solids),
    )  # fmt: skip


def _grams(mass: float) -> str:
    grams = 1e3 * mass
    return f"{grams:.0f}" if grams >= 9.95 else f"{grams:.1f}".removesuffix(".0")


def _solids(shop: Pantry, key: str) -> list[int]:
    """Rows of the compounds that an ingredient mainly is, of which water holds only so much."""
    made_of = shop[key].composition
    return [row for row, each in enumerate(compounds()) if made_of.get(each.key, 0) > _PART and is_limited(each.key)]


def _solid_share(chain: Chain, rows: list[int]) -> Array:
    """Share of the dough that is undissolved of some compounds. [1]"""
    solid = (chain.components[rows] - chain.dissolved[rows]).sum(axis=0)
    return np.asarray(solid / np.maximum(chain.mass, 1e-12))


def _row(most: float, amount: float, count: int) -> Array:
    """Even amounts from none to the most, and the recipe's own among them. [kg]"""
    even = np.linspace(0.0, most, count)
    return np.sort(np.append(even[np.abs(even - amount) > _SAME], amount))


def _most(recipe: Recipe, shop: Pantry, salt: str, amount: float, solids: list[int]) -> float:
    """Where the row ends: twice the recipe's, or a fifth beyond what the water holds, at a round figure. [kg]"""
    if not solids:
        return significant(3 * amount, 2)
    middle = draws(recipe, shop)[0].first(33)
    flood = np.array([amount, 2 * amount + _mass(recipe)])
    chain, _ = _followed(recipe, middle, shop, salt, flood)
    solid = (_solid_share(chain, solids) * chain.mass).reshape(2, -1)[1]
    held = float(np.median(flood[1] - solid))
    return significant(max(2 * amount, min(1.2 * held, 0.6 * _mass(recipe))), 2)


def _mass(recipe: Recipe) -> float:
    """Mass of all that goes in, what is added by feel at its middle. [kg]"""
    return sum(recipe.mass_of(key) for key in recipe.ingredients)


def _followed(recipe: Recipe, given: Draws, shop: Pantry, salt: str, row: Array) -> tuple[Chain, Array]:
    """Follow each draw through with each amount, all in one pass: entry = amount · draws + draw."""
    place, rounds = given.keys.index(salt), given.repeated(len(row))
    scale = given.masses[place] / max(recipe.mass_of(salt), 1e-12)  # how far this batch was weighed off
    rounds.masses[place] = (row[:, None] * scale).ravel()
    lost = np.tile(np.broadcast_to(lost_share(recipe, given, shop), scale.shape), len(row))
    chain = followed(recipe, replace(rounds, lost_share=lost, weighed_after=None), shop)
    return chain, rounds.masses


def _band(found: Array, amounts: int) -> Array:
    return np.quantile(found.reshape(amounts, -1), [0.025, 0.5, 0.975], axis=1)


def _solid_from(share: Array, row: Array, done: Kneading) -> Value | None:
    """Give the amount from which salt stays solid, draw by draw, between two amounts of the row. [kg]"""
    solid = share.reshape(len(row), -1)
    if np.mean(solid[-1] > _TRACE) < 0.975:
        return None
    k = np.clip((solid > _TRACE).argmax(axis=0), 1, None)
    draw, steps = np.arange(solid.shape[1]), np.diff(row)
    risen = solid[k, draw] - solid[k - 1, draw]
    slope = (np.diff(solid, axis=0) / steps[:, None])[np.minimum(k, len(row) - 2), draw]  # past the kink
    back = np.where(slope > 0, risen / np.maximum(slope, 1e-12), steps[k - 1])
    found = row[k] - np.clip(back, 0.0, steps[k - 1])
    return done.value(np.where(solid[-1] > _TRACE, found, row[-1]), "kg", "salt_solid")


def _point(done: Kneading, shop: Pantry, paid: Mapping[str, Array] | None) -> dict[str, Value]:
    """Give the recipe's own figures, from all draws, as `knead` does."""
    weighed = sorted_out(done.recipe, done.named, shop)
    cost = spent(weighed.keys, weighed.masses, paid)
    return {
        key: done.value(PROPERTIES[key].given(done.chain, cost), PROPERTIES[key].unit, key)
        for key in SHOWN if key != "cost" or cost is not None
    }  # fmt: skip
