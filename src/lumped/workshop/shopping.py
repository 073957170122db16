"""A shopping list for several doughs together: whole packets, what they cost, what is left over."""

import shlex
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.kneading import knead_middle
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry, Price, Sold, region, sold
from lumped.pantry.shops import PLACES
from lumped.quantities import Provenance, Value, believed, drawn, figure_shown, figure_text, weight_text
from lumped.reference import handbook
from lumped.texts import say
from lumped.workshop.cost import is_free
from lumped.workshop.one_for_all import one_for_all
from lumped.workshop.packets import covering, packet_price

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["SHELVES", "Bought", "Shopping", "needs_of", "shopping_list"]

Array = NDArray[np.float64]
SHELVES = {
    # first role of an ingredient: shelf
    "body": "flour", "binder": "flour", "ions": "salt", "preservative": "salt", "sweetener": "sugar", "acid": "sour",
    "softener": "oil", "moisture keeper": "oil", "raising": "baking", "colour": "baking", "liquid": "water",
}  # fmt: skip
_FAR = ("an order", "a search")


@dataclass(frozen=True, slots=True, kw_only=True)
class Bought:
    """One ingredient on the list.

    Parameters
    ----------
    ingredient, name : str
        Its key and what people call it.
    shelf : str
        Beside what it lies; a value of `SHELVES`.
    sold : Sold
        Where it is sold.
    need, have : float
        What the recipes take, what is added by feel at its most; and what is there already. [kg]
    packets : tuple of (float, int)
        What a packet holds and how many of it; empty if none is needed or known. [kg], [1]
    smallest : float
        What the smallest packet there holds, for which prices are known. [kg]
    cost : Value or None
        What the packets cost; None without a price. [money]
    price : Price or None
        What it costs there, and in which packets.
    """

    ingredient: str
    name: str
    shelf: str
    sold: Sold
    need: float
    have: float
    packets: tuple[tuple[float, int], ...]
    smallest: float
    cost: Value | None = None
    price: Price | None = None

    @property
    def bought(self) -> float:
        """What the packets hold together. [kg]"""
        return sum(size * count for size, count in self.packets)

    @property
    def over(self) -> float | None:
        """What is left afterwards; None if it is not known what is bought. [kg]"""
        left = self.bought + self.have - self.need
        return max(left, 0.0) if self.packets or left >= -1e-9 else None

    @property
    def is_far(self) -> bool:
        """Whether it takes an order or a search."""
        return self.sold.trouble in _FAR and self.sold.place != "unknown"

    @property
    def is_unpriced(self) -> bool:
        """Whether some of it must be bought, and nobody knows in which packets."""
        return self.sold.place != "tap" and not self.packets and self.need > self.have

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "ingredient": self.ingredient, "name": self.name, "shelf": self.shelf, "sold": self.sold.place,
            "need_kg": self.need, "have_kg": self.have,
            "packets": [{"size_kg": size, "count": count} for size, count in self.packets], "over_kg": self.over,
            "cost": self.cost.as_dict() if self.cost else None,
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Shopping:
    """A shopping list.

    Parameters
    ----------
    doughs : tuple of (str, float)
        Name of each recipe, and how much dough it yields. [kg]
    region, money : str
        Where it is bought, and in what money.
    dated : str
        The year of the oldest price.
    lines : tuple of Bought
        What is on it, by place and shelf.
    total : Value
        What all packets cost together: the sum of the lines as they are shown. [money]
    hints : tuple of str
        What to do about what is not easily had there, and about what has no price.
    one_oil : str
        Which oil would do for all doughs, and what it saves; "" if none would.
    invented : bool
        Whether a recipe is invented.
    """

    doughs: tuple[tuple[str, float], ...]
    region: str
    money: str
    dated: str
    lines: tuple[Bought, ...]
    total: Value
    hints: tuple[str, ...] = ()
    one_oil: str = ""
    invented: bool = False

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "shopping", "schema": 1, "region": self.region, "money": self.money,
            "doughs": [{"title": title, "mass_kg": mass} for title, mass in self.doughs], "dated": self.dated,
            "lines": [each.as_dict() for each in self.lines], "total": self.total.as_dict(),
            "hints": list(self.hints), "one_oil": self.one_oil or None, "invented": self.invented,
        }  # fmt: skip

    def frame(self) -> "pd.DataFrame":
        """Give a pandas frame: a row for each size of packet, or for an ingredient of which none is bought."""
        import pandas as pd

        rows = [
            (each.ingredient, each.name, each.sold.place, each.shelf, each.need, each.have, size, count, each.over)
            for each in self.lines for size, count in (each.packets or ((np.nan, 0),))
        ]  # fmt: skip
        columns = ["ingredient", "name", "sold", "shelf", "need_kg", "have_kg", "packet_kg", "packets", "over_kg"]
        return pd.DataFrame(rows, columns=columns)


def needs_of(recipes: Sequence[Recipe]) -> dict[str, float]:
    """Give what recipes take together, what is added by feel at its most. [kg]

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> flour = Portion(ingredient="plain-flour", written="", mass=Value.exact(0.2, "kg"), as_needed=(0.0, 0.06))
    >>> needs_of([Recipe(title="", kind="conducting", portions=(flour,), cooked="pot")] * 2)
    {'plain-flour': 0.52}
    """
    found: dict[str, float] = {}
    for recipe in recipes:
        for each in recipe.portions:
            most = each.mass.mean + (each.as_needed or (0.0, 0.0))[1]
            found[each.ingredient] = found.get(each.ingredient, 0.0) + most
    return found


def shopping_list(
    recipes: Sequence[Recipe], where: str, shop: Pantry, *, have: Mapping[str, float] | None = None,
    little_over: bool = False, files: Sequence[str] = (),
) -> Shopping:  # fmt: skip
    """Make a shopping list.

    Parameters
    ----------
    recipes : sequence of Recipe
        All that is made, at its full amounts.
    where : str
        Key of the region.
    shop : Pantry
        What the ingredients are.
    have : mapping of str to float, optional
        What is there already. [kg]
    little_over : bool
        Whether packets are chosen so that least is left over, instead of the cheapest.
    files : sequence of str
        Where the recipes were read, for hints.

    Returns
    -------
    Shopping

    Raises
    ------
    InputError
        If there is no such region.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> salt = Portion(ingredient="table-salt", written="", mass=Value.exact(0.6, "kg"))
    >>> found = shopping_list([Recipe(title="", kind="conducting", portions=(salt,), cooked="pot")], "europe", pantry())
    >>> found.lines[0].packets, round(found.lines[0].over, 3)
    (((0.75, 1),), 0.15)
    """
    place = region(where)
    needs, there = needs_of(recipes), dict(have or {})
    draws = _drawn_prices(needs, where, shop)
    lines = [
        _line(shop, key, need, there.get(key, 0.0), where=where, draws=draws, little_over=little_over)
        for key, need in needs.items()
    ]
    total = sum((_paid(each, draws) for each in lines), np.zeros(1))
    origin = Provenance.of([each.cost.provenance for each in lines if each.cost])
    dates = [found.dated for each in lines if (found := shop.price(each.ingredient, where)) and found.dated]
    return Shopping(
        doughs=tuple((each.title, float(knead_middle(each, shop).mass[0])) for each in recipes), region=where,
        money=place.currency, dated=min(dates, default=place.dated), lines=tuple(sorted(lines, key=_order)),
        total=_sum_of(lines, believed(total, unit=place.currency, provenance=origin)),
        hints=tuple(hint for each in lines for hint in _hints(each, recipes, where, files)),
        one_oil=_one_oil(lines, shop, where=where, draws=draws, little_over=little_over),
        invented=any(each.invented for each in recipes),
    )  # fmt: skip


def _sum_of(lines: Sequence[Bought], total: Value) -> Value:
    """Give the sum of the lines as they are shown, within the interval of all prices drawn together.

    Medians of skewed prices don't add up to the median of their sum; who adds the lines up should find what is said.
    """
    shown = sum(figure_shown(each.cost.mean, each.cost.unit) for each in lines if each.cost)
    return replace(total, mean=min(max(shown, total.low), total.high))


def _one_oil(
    lines: Sequence[Bought], shop: Pantry, *, where: str, draws: Mapping[str, Array], little_over: bool
) -> str:
    """Say which oil would do for all doughs, and what that saves; "" if none would."""
    found = one_for_all(
        lines, shop, paid=lambda each: _paid(each, draws),
        line=lambda key, need, have: _line(shop, key, need, have, where=where, draws=draws, little_over=little_over),
    )  # fmt: skip
    if found is None:
        return ""
    money = region(where).currency
    saved = believed(found.saved, unit=money)
    ends = {end: figure_text(max(getattr(saved, end), 0.0), money) for end in ("mean", "low", "high")}
    return say("shopping-one-oil", names=", ".join(shop[key].name for key in found.keys),
               name=shop[found.kept].name, need=weight_text(found.need), money=money, **ends)  # fmt: skip


def _drawn_prices(keys: Mapping[str, float], where: str, shop: Pantry) -> dict[str, Array]:
    """Draws of each price in small packets, and of how much cheaper large ones are. [money/kg], [1]"""
    values = {f"price {key}": found.per_mass for key in keys if (found := shop.price(key, where)) is not None}
    return drawn({**values, "cheaper": handbook().value("workshop", "packets", "cheaper")})


def _line(
    shop: Pantry, key: str, need: float, have: float, *, where: str, draws: Mapping[str, Array], little_over: bool
) -> Bought:
    each, priced = shop[key], shop.price(key, where)
    packets: tuple[tuple[float, int], ...] = ()
    if priced is not None and not is_free(each.key, where):
        costs = [float(packet_price(size, priced.packs[0], priced.per_mass.mean)) for size in priced.packs]
        counts = covering(need - have, priced.packs, costs, little_over=little_over)
        packets = tuple((size, count) for size, count in zip(priced.packs, counts, strict=True) if count)
    role = each.roles[0] if each.roles else "body"
    line = Bought(ingredient=each.key, name=each.name, shelf=SHELVES.get(role, "baking"), sold=sold(each.key, where),
                  need=need, have=have, packets=packets, smallest=priced.packs[0] if priced else 0.0,
                  price=priced)  # fmt: skip
    if priced is None or not packets:
        return line
    cost = believed(_paid(line, draws), unit=priced.currency, provenance=priced.per_mass.provenance)
    return replace(line, cost=cost)


def _paid(each: Bought, draws: Mapping[str, Array]) -> Array:
    """What the packets cost, in draws. [money]"""
    per_mass = draws.get(f"price {each.ingredient}")
    if per_mass is None or not each.packets:
        return np.zeros(1)
    cheaper = draws["cheaper"]
    return np.asarray(sum(count * packet_price(size, each.smallest, per_mass, cheaper) for size, count in each.packets))


def _order(each: Bought) -> tuple[int, int, str]:
    """The nearest shop first, the tap last; shelf by shelf."""
    places = [place for place in PLACES if place != "tap"]
    shelves = list(dict.fromkeys(SHELVES.values()))
    place = len(places) if each.sold.place == "tap" else places.index(each.sold.place)
    return place, shelves.index(each.shelf), each.name


def _hints(each: Bought, recipes: Sequence[Recipe], where: str, files: Sequence[str]) -> Iterator[str]:
    """Say what to do about what is far away, and about what has no price."""
    if each.is_far:
        first = next(number for number, recipe in enumerate(recipes) if each.ingredient in recipe.ingredients)
        file = shlex.quote(files[first]) if files else "RECIPE"
        yield say("shopping-hint-swap", name=each.name, place=each.sold.words, key=each.ingredient, region=where,
                  file=file)  # fmt: skip
    if each.is_unpriced:
        yield say("shopping-hint-unknown", name=each.name, need=f"{1e3 * (each.need - each.have):.0f}")
