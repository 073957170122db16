"""Recipes side by side: what goes in, what comes out, and how surely the one conducts better than the other.

Two doughs share what nobody measured (how flour holds water, how a dough obstructs), so the ratio of their
resistivities is known better than either: it is taken draw by draw.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import sorted_out
from lumped.dough.kneading import Kneading, kneading
from lumped.dough.naming import told_apart
from lumped.dough.properties import PROPERTIES, Property, drawn_prices, spent
from lumped.dough.recipe import Recipe
from lumped.dough.safety import allergens_of
from lumped.dough.unfit import unfit_words
from lumped.dough.what_if import ratio
from lumped.errors import RecipeError
from lumped.pantry import Pantry, pantry
from lumped.quantities import Provenance, Value
from lumped.texts import say

if TYPE_CHECKING:
    import pandas as pd

    from lumped.dough.calibrating import Calibration

__all__ = ["Comparison", "Side", "compared"]

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Side:
    """One of the recipes.

    Parameters
    ----------
    name : str
        What it is called here.
    recipe : Recipe
        The recipe.
    amounts : mapping of str to Value
        How much of each ingredient goes in, what is added by feel included. [kg]
    properties : mapping of str to Value
        What its dough has, by key of `PROPERTIES`. [unit of each]
    ratio : Value
        Its resistivity over that of the first. [1]
    allergens : tuple of str
        Allergens of the European and American lists.
    unfit : tuple of str
        What to say first: that it is no dough, or does the opposite of what it is for.
    """

    name: str
    recipe: Recipe
    amounts: Mapping[str, Value]
    properties: Mapping[str, Value]
    ratio: Value
    allergens: tuple[str, ...]
    unfit: tuple[str, ...] = ()

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "name": self.name, "title": self.recipe.title, "dough": self.recipe.kind, "cooked": self.recipe.cooked,
            "invented": self.recipe.invented,
            "amounts_kg": {key: value.as_dict() for key, value in self.amounts.items()},
            "properties": {key: value.as_dict() for key, value in self.properties.items()},
            "ratio_to_first": self.ratio.as_dict(), "allergens": list(self.allergens),
            **({"unfit": list(self.unfit)} if self.unfit else {}),
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """Recipes side by side, the first being what the others are held against.

    Parameters
    ----------
    sides : tuple of Side
        The recipes.
    ingredients : mapping of str to str
        Every ingredient of any of them, in order, and its name.
    money : str
        In what prices are given; "" without prices.
    left_out : tuple of str
        Ingredients that none of them names and that can't be read, in words.
    taught : tuple of str
        What measured batches taught of each, in words.
    """

    sides: tuple[Side, ...]
    ingredients: Mapping[str, str]
    money: str = ""
    left_out: tuple[str, ...] = ()
    taught: tuple[str, ...] = ()

    @property
    def unfit(self) -> tuple[str, ...]:
        """Which of them are no dough, or do the opposite of what they are for."""
        return tuple(say("unfit-of", title=side.name, words=words) for side in self.sides for words in side.unfit)

    @property
    def properties(self) -> tuple[Property, ...]:
        """What is known of all of them."""
        return tuple(each for key, each in PROPERTIES.items() if all(key in side.properties for side in self.sides))

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        told = (("taught", self.taught), ("left_out", self.left_out))
        return {"kind": "comparison", "schema": 1, "money": self.money or None,
                "sides": [side.as_dict() for side in self.sides],
                **{key: list(each) for key, each in told if each}}  # fmt: skip

    def frame(self) -> "pd.DataFrame":
        """Give a pandas frame: a row for each figure of each recipe (name, group, key, unit, mean, low, high)."""
        import pandas as pd

        rows = [
            (side.name, group, key, value.unit, value.mean, value.low, value.high)
            for side in self.sides
            for group, values in (("amount", side.amounts), ("property", side.properties),
                                  ("ratio", {"resistivity": side.ratio}))
            for key, value in values.items()
        ]  # fmt: skip
        return pd.DataFrame(rows, columns=["name", "group", "key", "unit", "mean", "low", "high"])


def compared(
    recipes: Sequence[Recipe],
    shop: Pantry | None = None,
    *,
    names: Sequence[str] | None = None,
    calibrations: "Sequence[Calibration | None] | None" = None,
    prices: Mapping[str, Value] | None = None,
    money: str = "",
) -> Comparison:
    """Put recipes, or revisions of one, side by side.

    Parameters
    ----------
    recipes : sequence of Recipe
        Two at least; the first is what the others are held against.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    names : sequence of str, optional
        What they are called here; their titles if left out.
    calibrations : sequence of Calibration or None, optional
        What measured batches taught of each.
    prices : mapping of str to Value, optional
        Price of each ingredient. [money/kg]
    money : str
        In what they are given.

    Returns
    -------
    Comparison

    Raises
    ------
    RecipeError
        If there are fewer than two.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> def plain(salt):
    ...     grams = {"plain-flour": 125, "tap-water": 237, "table-salt": salt}
    ...     portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                      for k, g in grams.items())
    ...     return Recipe(title=f"{salt} g", kind="conducting", portions=portions, cooked="pot")
    >>> found = compared([plain(73), plain(36)])
    >>> 1.1 < found.sides[1].ratio.low < found.sides[1].ratio.high < 1.6
    True
    """
    if len(recipes) < 2:
        raise RecipeError("beside-two", count=len(recipes))
    shop = shop or pantry()
    called = list(names) if names is not None else told_apart([each.title for each in recipes])
    known = calibrations if calibrations is not None else [None] * len(recipes)
    done = [kneading(each, shop, learnt) for each, learnt in zip(recipes, known, strict=True)]
    paid = drawn_prices(prices)
    sides = tuple(_side(name, each, done[0], shop, paid) for name, each in zip(called, done, strict=True))
    priced = all("cost" in side.properties for side in sides)
    names_of = {key: shop[key].name for side in sides for key in side.amounts}
    return Comparison(sides=sides, ingredients=names_of, money=money if priced else "")


def _side(name: str, done: Kneading, first: Kneading, shop: Pantry, paid: Mapping[str, Array] | None) -> Side:
    recipe = done.recipe
    weighed = sorted_out(recipe, done.named, shop)
    cost = spent(weighed.keys, weighed.masses, paid)
    return Side(
        name=name, recipe=recipe, amounts={key: _amount(recipe, key) for key in recipe.ingredients},
        properties={key: done.value(each.given(done.chain, cost), each.unit, key)
                    for key, each in PROPERTIES.items() if key != "cost" or cost is not None},
        ratio=ratio(done, first), allergens=allergens_of(recipe.masses, shop).names,
        unfit=unfit_words(done),
    )  # fmt: skip


def _amount(recipe: Recipe, key: str) -> Value:
    """All portions of an ingredient together, ends summed: no narrower than it may be. [kg]"""
    portions = [each for each in recipe.portions if each.ingredient == key]
    needed = [each.as_needed or (0.0, 0.0) for each in portions]
    return Value(
        mean=recipe.mass_of(key), low=sum(each.mass.low + ends[0] for each, ends in zip(portions, needed, strict=True)),
        high=sum(each.mass.high + ends[1] for each, ends in zip(portions, needed, strict=True)), unit="kg",
        provenance=Provenance.of([each.mass.provenance for each in portions]),
    )  # fmt: skip
