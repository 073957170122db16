"""Something else instead: proposals that keep what matters, or what stands in the way."""

import datetime
from collections.abc import Mapping, Sequence

from lumped.dough.calibrating import Calibration
from lumped.dough.kneading import kneading
from lumped.dough.recipe import Recipe
from lumped.dough.safety import allergens_of
from lumped.dough.swap.blocking import blockers_of
from lumped.dough.swap.candidates import gone_from
from lumped.dough.swap.kitchen import in_measures, own_measures
from lumped.dough.swap.laying_out import Base, search_for
from lumped.dough.swap.proposing import amounts_of, felt, properties_of, proposal_of, proposals_of
from lumped.dough.swap.results import Blocker, Proposal, Swap
from lumped.dough.swap.search import Search
from lumped.dough.swap.wants import Wish
from lumped.dough.unfit import standing_of
from lumped.errors import InputError
from lumped.pantry import Pantry, pantry
from lumped.pantry.choosing import SCALE
from lumped.pantry.measures import kitchens
from lumped.quantities import Value
from lumped.texts import say

__all__ = ["swapped"]

_MOST = 8


def swapped(
    recipe: Recipe,
    wish: Wish,
    shop: Pantry | None = None,
    *,
    prices: Mapping[str, Value] | None = None,
    money: str = "",
    measures: str | None = None,
    count: int = 3,
    calibration: Calibration | None = None,
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
        Whose measures, or "scale"; the recipe's own, which are a scale where most of it is weighed.
    count : int
        How many proposals, 1 to 8.
    calibration : Calibration, optional
        What measured batches taught: it narrows the figures that are told, not what is proposed.
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
    system = measures or own_measures(recipe)
    if system != SCALE and system not in kitchens():
        raise InputError("swap-no-measures", measures=system, known=", ".join((*kitchens(), SCALE)))
    if not 1 <= count <= _MOST:
        raise InputError("swap-count", count=count, most=_MOST)
    base = Base(
        recipe=recipe, wish=wish, shop=shop, before=kneading(recipe, shop), prices=prices, money=money, system=system,
        learnt=kneading(recipe, shop, calibration), calibration=calibration, count=count, date=date,
    )  # fmt: skip
    gone = gone_from(recipe, wish, shop)
    spoken, proposals, blockers = _looked_for(base) if _is_to_do(recipe, wish, gone) else (recipe, (_itself(base),), ())
    return Swap(
        recipe=recipe, wish=wish, before=properties_of(base.learnt, base), gone=gone, proposals=proposals,
        blockers=blockers, money=money, unchanged=not _is_to_do(recipe, wish, gone),
        allergens=allergens_of(recipe.masses, shop).names,
        now=amounts_of(spoken), feel=felt(recipe, base.learnt),
        names={key: shop[key].name for key in _keys(recipe, proposals)},
    )  # fmt: skip


def _keys(recipe: Recipe, proposals: Sequence[Proposal]) -> tuple[str, ...]:
    """All ingredients, old and new, each once."""
    recipes = (recipe, *(each.recipe for each in proposals))
    return tuple(dict.fromkeys(key for each in recipes for key in each.ingredients))


def _looked_for(base: Base) -> tuple[Recipe, tuple[Proposal, ...], tuple[Blocker, ...]]:
    """The recipe in the measures that are asked for, proposals, and what stands in the way."""
    search = search_for(base)
    spoken = in_measures(base.recipe, search, base.shop, base.system)
    proposals = tuple(proposals_of(base, search, spoken))
    return spoken, proposals, () if proposals else _blockers(base, search)


def _blockers(base: Base, search: Search) -> tuple[Blocker, ...]:
    """What stands in the way: a recipe that is no dough, or does the opposite, before all that is asked of another."""
    if (stands := standing_of(base.learnt)) != "sound":
        return (Blocker(requirement="recipe", words=say(f"swap-blocks-recipe-{stands}"), ingredients=()),)
    return tuple(blockers_of(base, search))


def _itself(base: Base) -> Proposal:
    return proposal_of(base, base.recipe, {}, {})


def _is_to_do(recipe: Recipe, wish: Wish, gone: Sequence[str]) -> bool:
    return bool(gone) or wish.target is not None or (not wish.stove and recipe.cooked == "pot")
