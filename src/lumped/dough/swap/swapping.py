"""Something else instead: proposals that keep what matters, or what stands in the way."""

import datetime
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import sorted_out
from lumped.dough.kneading import Kneading, kneading
from lumped.dough.notes import allergens_in
from lumped.dough.properties import PROPERTIES, drawn_prices, spent
from lumped.dough.recipe import Recipe
from lumped.dough.swap.candidates import candidates, family_of, gone_from, trouble_of
from lumped.dough.swap.explaining import Reasoned, notes_on, reasons_for
from lumped.dough.swap.figures import WAYS, Figures, figures_of, table_of
from lumped.dough.swap.kitchen import rounded_recipe
from lumped.dough.swap.requirements import REQUIREMENTS, Standard, beyond, gain, limits_of, row
from lumped.dough.swap.search import Found, Search, searched
from lumped.dough.swap.wants import Wish
from lumped.dough.texture import Feel, feel_of
from lumped.dough.what_if import ratio
from lumped.errors import InputError
from lumped.pantry import Pantry, pantry
from lumped.pantry.choosing import SCALE
from lumped.pantry.measures import kitchens
from lumped.quantities import Value
from lumped.texts import say

__all__ = ["Blocker", "Change", "Proposal", "Swap", "swapped"]

Array = NDArray[np.float64]
SHOWN = ("resistivity", "water_activity", "hydration", "ph", "sodium", "cost")
_KEPT = 1e-3  # how far beyond counts as kept, in units of a tolerance
_MOST = 8
_NARROW = 6  # recipes that go on where it only matters whether there is one


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What happens to one ingredient.

    Parameters
    ----------
    ingredient : str
        Its key.
    before, after : float
        Its mass, what is added by feel at its middle. [kg]
    written : str
        The amount in the new recipe, as a kitchen measures it; "" if it is gone.
    """

    ingredient: str
    before: float
    after: float
    written: str

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"ingredient": self.ingredient, "before_kg": self.before, "after_kg": self.after,
                "written": self.written}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """Another recipe.

    Parameters
    ----------
    recipe : Recipe
        The recipe, in kitchen measures.
    changes : tuple of Change
        What happens to each ingredient, those that stay as they are too.
    properties : mapping of str to Value
        What its dough has, by key of `PROPERTIES`. [unit of each]
    ratio : Value
        Its resistivity over the old one's. [1]
    beyond : mapping of str to float
        How far it is beyond what each requirement allows: 0, as every requirement is kept after rounding. [1]
    reasons : tuple of Reasoned
        What moves, and why.
    notes : tuple of str
        What to know.
    allergens, allergens_gone, allergens_new : tuple of str
        Allergens of both lists: those in it, those that left, those that came.
    rounding : mapping of str to float
        What rounding to measures changed of each property. [1]
    feel : Feel
        How it is expected to feel.
    money : str
        In what it costs; "" without prices.
    """

    recipe: Recipe
    changes: tuple[Change, ...]
    properties: Mapping[str, Value]
    ratio: Value
    beyond: Mapping[str, float]
    reasons: tuple[Reasoned, ...]
    notes: tuple[str, ...]
    allergens: tuple[str, ...]
    allergens_gone: tuple[str, ...]
    allergens_new: tuple[str, ...]
    rounding: Mapping[str, float]
    feel: Feel
    money: str = ""

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "title": self.recipe.title, "cooked": self.recipe.cooked, "measures": self.recipe.measures,
            "changes": [each.as_dict() for each in self.changes],
            "properties": {key: value.as_dict() for key, value in self.properties.items()},
            "resistivity_ratio": self.ratio.as_dict(), "beyond": dict(self.beyond),
            "reasons": [each.as_dict() for each in self.reasons], "notes": list(self.notes),
            "allergens": list(self.allergens), "allergens_gone": list(self.allergens_gone),
            "allergens_new": list(self.allergens_new), "rounding": dict(self.rounding), "feel": self.feel.as_dict(),
            "money": self.money or None,
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Blocker:
    """A requirement that stands in the way.

    Parameters
    ----------
    requirement : str
        Which, one of `REQUIREMENTS` or a part of the wish.
    words : str
        What could be had without it, in a sentence.
    ingredients : tuple of str
        What that recipe would contain that is new.
    """

    requirement: str
    words: str
    ingredients: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"requirement": self.requirement, "words": self.words, "ingredients": list(self.ingredients)}


@dataclass(frozen=True, slots=True, kw_only=True)
class Swap:
    """What came of a wish.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it was.
    wish : Wish
        What was wanted.
    before : mapping of str to Value
        What the old dough has, by key of `PROPERTIES`. [unit of each]
    gone : tuple of str
        Ingredients that must leave.
    proposals : tuple of Proposal
        The best first; none if something stands in the way.
    blockers : tuple of Blocker
        What does, if there is no proposal; empty also if no single requirement does.
    money : str
        In what prices are given.
    unchanged : bool
        Whether nothing has to change.
    allergens : tuple of str
        Allergens of the recipe as it was.
    """

    recipe: Recipe
    wish: Wish
    before: Mapping[str, Value]
    gone: tuple[str, ...]
    proposals: tuple[Proposal, ...]
    blockers: tuple[Blocker, ...] = ()
    money: str = ""
    unchanged: bool = False
    allergens: tuple[str, ...] = ()

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "swap", "schema": 1, "title": self.recipe.title, "dough": self.recipe.kind,
            "gone": list(self.gone), "unchanged": self.unchanged, "money": self.money or None,
            "without": [*self.wish.classes, *self.wish.ingredients], "diets": list(self.wish.diets),
            "region": self.wish.region, "target": self.wish.target, "stove": self.wish.stove,
            "allergens": list(self.allergens), "before": {key: value.as_dict() for key, value in self.before.items()},
            "proposals": [each.as_dict() for each in self.proposals],
            "blockers": [each.as_dict() for each in self.blockers],
        }  # fmt: skip


def swapped(
    recipe: Recipe,
    wish: Wish,
    shop: Pantry | None = None,
    *,
    prices: Mapping[str, Value] | None = None,
    money: str = "",
    measures: str | None = None,
    count: int = 3,
    date: datetime.date | None = None,
) -> Swap:
    """Look for recipes that do what is wanted and keep what matters.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it is.
    wish : Wish
        What is wanted; see `read_wish`.
    shop : Pantry, optional
        What there is; the handbook's ingredients.
    prices : mapping of str to Value, optional
        Price of each ingredient; what has none is not proposed. [money/kg]
    money : str
        In what they are given.
    measures : str, optional
        Whose measures, or "scale"; the recipe's own.
    count : int
        How many proposals, 1 to 8.
    date : date, optional
        The day whose law counts; the newest that the handbook knows.

    Returns
    -------
    Swap

    Raises
    ------
    InputError, RecipeError
        If there are no such measures, or nothing is left to make a dough of.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73, "cream-of-tartar": 9}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> plain = Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")
    >>> found = swapped(plain, Wish(classes=("gluten",)), count=1, measures="scale")
    >>> found.gone, found.proposals[0].allergens
    (('plain-flour',), ())
    """
    shop = shop or pantry()
    system = measures or recipe.measures
    if system != SCALE and system not in kitchens():
        raise InputError("swap-no-measures", measures=system, known=", ".join((*kitchens(), SCALE)))
    if not 1 <= count <= _MOST:
        raise InputError("swap-count", count=count, most=_MOST)
    before = kneading(recipe, shop)
    gone = gone_from(recipe, wish, shop)
    base = _Base(recipe=recipe, wish=wish, shop=shop, before=before, prices=prices, money=money, system=system,
                 count=count, date=date)  # fmt: skip
    if _nothing_to_do(recipe, wish, gone):
        found = Found(masses=np.zeros(0), way=WAYS.index(recipe.cooked), score=0.0, over=0.0, added=())
        same = _proposal(base, recipe, found, {}, {})
        return Swap(recipe=recipe, wish=wish, before=_properties(before, base), gone=(), proposals=(same,),
                    money=money, unchanged=True, allergens=allergens_in(recipe, shop))  # fmt: skip
    search = _search(base, gone)
    proposals = tuple(_proposals(base, search))
    blockers = () if proposals else tuple(_blockers(base, search))
    return Swap(recipe=recipe, wish=wish, before=_properties(before, base), gone=gone, proposals=proposals,
                blockers=blockers, money=money, allergens=allergens_in(recipe, shop))  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class _Base:
    """What a swap starts from."""

    recipe: Recipe
    wish: Wish
    shop: Pantry
    before: Kneading
    prices: Mapping[str, Value] | None
    money: str
    system: str
    count: int
    date: datetime.date | None


def _nothing_to_do(recipe: Recipe, wish: Wish, gone: Sequence[str]) -> bool:
    return not gone and wish.target is None and (wish.stove or recipe.cooked != "pot")


def _search(base: _Base, gone: Sequence[str]) -> Search:
    """Lay out the search: table, standard, and what is open."""
    recipe, wish, shop = base.recipe, base.wish, base.shop
    new = candidates(recipe, wish, shop)
    if base.prices is not None:
        new = tuple(key for key in new if key in base.prices)
    keys = (*recipe.ingredients, *new)
    middle = {key: each.mean for key, each in base.prices.items()} if base.prices is not None else None
    table = table_of(recipe, keys, shop, middle)
    same = WAYS.index(recipe.cooked)
    old = np.array([recipe.mass_of(key) for key in keys])
    figures = figures_of(table, old[:, None], np.array([same]))
    roles = {role for key in recipe.ingredients for role in shop[key].roles}
    ways = (same,) if wish.stove or recipe.cooked != "pot" else (1, 2, 3)
    return Search(
        table=table, standard=_standard(base, figures, table.prices is not None), old=old, ways=ways, same_way=same,
        gone=np.array([key in gone for key in keys]), trouble=trouble_of(keys, wish),
        families=tuple(family_of(shop[key]) for key in keys),
        roles=np.array([[float(role in shop[key].roles) for key in keys] for role in sorted(roles)]),
    )  # fmt: skip


def _standard(base: _Base, figures: Figures, priced: bool) -> Standard:
    resistivity = base.before.value(base.before.chain.resistivity, "Ω·m")
    conducts = base.recipe.kind == "conducting"
    room = np.log(resistivity.high / resistivity.mean) if conducts else np.log(resistivity.mean / resistivity.low)
    dropped = {"acidity"} if "acid" in base.wish.classes else set()
    dropped |= set() if priced else {"cost"}
    return Standard(
        old=figures, conducts=conducts, room=float(max(room, 0.05)), limits=limits_of(figures, date=base.date),
        asked=frozenset(REQUIREMENTS) - dropped, target=base.wish.target,
    )  # fmt: skip


def _proposals(base: _Base, search: Search) -> Iterator[Proposal]:
    """Round, check again, and take those that are not alike: other families first, then other ingredients."""
    ready = []
    for found in searched(search):
        if found.over > _KEPT or not _is_better(search, found):
            continue
        recipe, rounded = rounded_recipe(base.recipe, found, search, base.shop, base.system)
        over = _beyond(search, recipe)
        if sum(over.values()) <= _KEPT:
            ready.append((recipe, found, over, dict(rounded.shifts) if rounded else {}))
        if len(ready) >= 3 * base.count:
            break
    for recipe, found, over, shifts in _distinct(ready, search, base.count):
        yield _proposal(base, recipe, found, over, shifts)


def _distinct(ready: list[Any], search: Search, count: int) -> list[Any]:
    families: set[tuple[Any, ...]] = set()
    first: list[Any] = []
    later: list[Any] = []
    for each in ready:
        found = each[1]
        family = (found.way, *sorted(search.families[i] for i in found.added))
        (later if family in families else first).append(each)
        families.add(family)
    return (first + later)[:count]


def _is_better(search: Search, found: Found) -> bool:
    if search.standard.target is None:
        return True
    new = figures_of(search.table, found.masses[:, None], np.array([found.way]))
    least = row("change", "better") / (10 if search.standard.target == "keeps-longer" else 1)
    return bool(gain(search.standard, new)[0] >= least)


def _beyond(search: Search, recipe: Recipe) -> dict[str, float]:
    """How far a recipe is beyond what each requirement allows, as it is written."""
    masses = np.array([recipe.mass_of(key) for key in search.table.keys])
    new = figures_of(search.table, masses[:, None], np.array([WAYS.index(recipe.cooked)]))
    return {key: float(each[0]) for key, each in beyond(search.standard, new).items()}


def _proposal(
    base: _Base, recipe: Recipe, found: Found, over: Mapping[str, float], shifts: Mapping[str, float]
) -> Proposal:
    done = kneading(recipe, base.shop)
    was, now = (allergens_in(each, base.shop) for each in (base.recipe, recipe))
    return Proposal(
        recipe=recipe, changes=tuple(_changes(base.recipe, recipe)), properties=_properties(done, base),
        ratio=ratio(done, base.before), beyond=over, reasons=reasons_for(base.before, done, base.shop),
        notes=notes_on(base.recipe, recipe, base.wish, base.shop), allergens=now,
        allergens_gone=tuple(each for each in was if each not in now),
        allergens_new=tuple(each for each in now if each not in was),
        rounding={key: each for key, each in shifts.items() if key != "beyond"},
        feel=feel_of(recipe, done.chain, done.value(done.chain.hydration, "")), money=base.money,
    )  # fmt: skip


def _changes(before: Recipe, after: Recipe) -> Iterator[Change]:
    for key in dict.fromkeys((*before.ingredients, *after.ingredients)):
        written = " + ".join(_written(each) for each in after.portions if each.ingredient == key)
        yield Change(ingredient=key, before=before.mass_of(key), after=after.mass_of(key), written=written)


def _written(portion: Any) -> str:
    if portion.as_needed is None:
        return str(portion.written)
    low, high = (f"{1e3 * each:.0f}" for each in portion.as_needed)
    return say("swap-by-feel", amount=portion.written, low=low, high=high)


def _properties(done: Kneading, base: _Base) -> dict[str, Value]:
    given = sorted_out(done.recipe, done.named, base.shop)
    cost = spent(given.keys, given.masses, drawn_prices(base.prices))
    return {
        key: done.value(PROPERTIES[key].given(done.chain, cost), PROPERTIES[key].unit)
        for key in SHOWN if key != "cost" or cost is not None
    }  # fmt: skip


def _blockers(base: _Base, search: Search) -> Iterator[Blocker]:
    """Drop one requirement at a time and search again."""
    for key in REQUIREMENTS:
        if key not in search.standard.asked:
            continue
        found = next(iter(searched(replace(search, without=frozenset([key]), beam=_NARROW))), None)
        if found is None or found.over > _KEPT or not _is_better(search, found):
            continue
        names = [base.shop[search.table.keys[i]].name for i in found.added]
        new = figures_of(search.table, found.masses[:, None], np.array([found.way]))
        yield Blocker(
            requirement=key, ingredients=tuple(search.table.keys[i] for i in found.added),
            words=say(f"swap-blocks-{key}", instead=", ".join(names) or say("swap-nothing-new"), **_slots(search, new)),
        )  # fmt: skip


def _slots(search: Search, new: Figures) -> dict[str, str]:
    """Figures that a sentence on a blocker may show."""
    old = search.standard.old
    return {
        "resistivity": f"{new.resistivity[0]:.3g}", "before": f"{old.resistivity[0]:.3g}", "ph": f"{new.ph[0]:.1f}",
        "ph_before": f"{old.ph[0]:.1f}", "activity": f"{new.water_activity[0]:.2f}",
        "activity_before": f"{old.water_activity[0]:.2f}",
        "cost": "–" if new.cost is None or old.cost is None else f"{new.cost[0] / old.cost[0]:.1f}",
        "potassium": f"{1e2 * new.elements[1, 0]:.2g}", "sodium": f"{1e2 * new.elements[0, 0]:.2g}",
    }  # fmt: skip
