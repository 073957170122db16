"""What goes into a dough costs money: of what is used, by the gram, in one region."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from lumped.dough.beliefs import sorted_out
from lumped.dough.properties import drawn_prices
from lumped.pantry import Pantry, region, sold
from lumped.quantities import Provenance, Value, believed
from lumped.workshop.batches import Batches

__all__ = ["Cost", "cost_of", "is_free", "prices_of"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Cost:
    """What a dough costs, of what is used.

    Parameters
    ----------
    money : str
        In what.
    whole, batch : Value
        All of it, and one batch. [money]
    person : Value or None
        For each person, if there are any. [money]
    unpriced : tuple of str
        Ingredients that nobody knows a price of; they are not in the sums.
    dated : str
        The year of the oldest price of the handbook's.
    prices : mapping of str to Value
        What each ingredient costs, by its key. [money/kg]
    """

    money: str
    whole: Value
    batch: Value
    person: Value | None
    unpriced: tuple[str, ...]
    dated: str
    prices: Mapping[str, Value] = field(default_factory=dict)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "money": self.money, "whole": self.whole.as_dict(), "batch": self.batch.as_dict(),
            "person": self.person.as_dict() if self.person else None, "unpriced": list(self.unpriced),
            "dated": self.dated,
        }  # fmt: skip


def is_free(ingredient: str, where: str) -> bool:
    """Tell whether something comes from the tap there.

    Examples
    --------
    >>> is_free("tap-water", "japan"), is_free("table-salt", "japan")
    (True, False)
    """
    return sold(ingredient, where).place == "tap"


def prices_of(keys: Iterable[str], where: str, shop: Pantry) -> tuple[dict[str, Value], str]:
    """Give the prices that are known of a pantry's ingredients in a region, and the year of the oldest. [money/kg]"""
    found = {key: each for key in keys if (each := shop.price(key, where)) is not None}
    dated = min((each.dated for each in found.values() if each.dated), default=region(where).dated)
    return {key: each.per_mass for key, each in found.items()}, dated


def cost_of(batches: Batches, where: str, shop: Pantry, *, people: int = 0) -> Cost:
    """Give what a dough costs.

    Parameters
    ----------
    batches : Batches
        The dough.
    where : str
        Key of the region.
    shop : Pantry
        What the ingredients are.
    people : int
        Who share it.

    Raises
    ------
    InputError
        If there is no such region.
    """
    recipe, money = batches.recipe, region(where).currency
    prices, dated = prices_of(recipe.ingredients, where, shop)
    weighed = sorted_out(recipe, batches.done.named, shop)
    paid = drawn_prices(prices) or {}
    one = np.zeros(weighed.masses.shape[1])
    for row, key in enumerate(weighed.keys):
        one = one + weighed.masses[row] * paid.get(key, 0.0)
    origin = Provenance.of([value.provenance for value in prices.values()])

    def worth(factor: float) -> Value:
        return believed(factor * one, unit=money, provenance=origin)

    return Cost(
        money=money, whole=worth(batches.count), batch=worth(1), dated=dated, prices=prices,
        person=worth(batches.count / people) if people else None,
        unpriced=tuple(shop[key].name for key in recipe.ingredients if key not in prices),
    )  # fmt: skip
