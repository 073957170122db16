"""What may go in instead: ingredients of the pantry that are allowed, sold, harmless enough, and not all alike."""

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from lumped.dough.holding import body_of
from lumped.dough.recipe import Recipe
from lumped.dough.swap.requirements import row
from lumped.dough.swap.traces import may_contain
from lumped.dough.swap.wants import Wish, is_water
from lumped.errors import RecipeError
from lumped.pantry import Ingredient, Pantry, regions, sold
from lumped.reference import handbook

__all__ = ["candidates", "doubt_of", "family_of", "gone_from", "plainness_of", "trouble_of"]

_TROUBLE = {"none": 0.0, "another shop": 1.0, "an order": 2.0, "a search": 3.0}
_NEEDED = ("body", "liquid")


def gone_from(recipe: Recipe, wish: Wish, shop: Pantry) -> tuple[str, ...]:
    """Name the ingredients of a recipe that must leave.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> from lumped.dough import Portion
    >>> from lumped.quantities import Value
    >>> flour = Portion(ingredient="plain-flour", written="1 g", mass=Value.exact(1e-3, "kg"))
    >>> recipe = Recipe(title="", kind="insulating", portions=(flour,), cooked="not cooked")
    >>> gone_from(recipe, Wish(classes=("gluten",)), pantry())
    ('plain-flour',)
    """
    return tuple(key for key in recipe.ingredients if not wish.allows(key, shop))


def candidates(recipe: Recipe, wish: Wish, shop: Pantry) -> tuple[str, ...]:
    """Name the ingredients that may go in, those of the recipe not among them, in the pantry's order.

    One water is enough; where a water leaves, only water takes its place.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it was.
    wish : Wish
        What is wanted.
    shop : Pantry
        What there is.

    Raises
    ------
    RecipeError
        If nothing is left that could be its body, or its liquid.
    """
    facts = handbook().entry("swap", "never").facts
    never, cautions = set(facts["ingredients"]), set(facts["cautions"])
    there = set(recipe.ingredients)
    left = [key for key in recipe.ingredients if wish.allows(key, shop)]
    waters = [key for key in there if is_water(shop[key])]
    watered, dry = any(key in left for key in waters), bool(waters) and not any(key in left for key in waters)
    found = tuple(
        key
        for key, each in shop.items()
        if key not in there and key not in never and not cautions & set(each.cautions)
        and "colour" not in each.roles and wish.allows(key, shop)
        and not (watered and is_water(each)) and not (dry and family_of(each).startswith("wet "))
    )  # fmt: skip
    for role in _NEEDED:
        had = any(role in shop[key].roles for key in there)
        if had and not any(role in shop[key].roles for key in (*left, *found)):
            raise RecipeError("swap-nothing-left", title=recipe.title, role=role)
    return found


def family_of(ingredient: Ingredient) -> str:
    """Tell what an ingredient is like in a dough: bodies by kind, all else by what there is most of, wet or dry.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> family_of(pantry()["lemon-juice"]) == family_of(pantry()["lime-juice"]) != family_of(pantry()["citric-acid"])
    True
    """
    body = body_of(ingredient)
    if body:
        return body if body != "binder" else f"binder {ingredient.key}"
    dry = {key: share for key, share in ingredient.composition.items() if key != "water"}
    most = max(dry, key=lambda key: dry[key]) if dry else "water"
    wet = "wet" if ingredient.composition.get("water", 0.0) > 0.5 else "dry"
    return "water" if is_water(ingredient) else f"{wet} {most}"


def trouble_of(keys: Iterable[str], wish: Wish) -> NDArray[np.float64]:
    """Give what getting each ingredient counts in the score; without a region the mean of all. (I,) [1]"""
    where = regions() if wish.region is None else (wish.region,)
    trouble = [np.mean([_TROUBLE[sold(key, each).trouble] for each in where]) for key in keys]
    return row("change", "shop") * np.array(trouble)


def doubt_of(keys: Iterable[str], wish: Wish, shop: Pantry) -> NDArray[np.float64]:
    """Give what it counts that each ingredient may contain traces of what was refused. (I,) [1]"""
    return row("change", "traces") * np.array([float(len(may_contain(shop[key], wish))) for key in keys])


def plainness_of(keys: Iterable[str], recipe: Recipe, shop: Pantry) -> NDArray[np.float64]:
    """Give what it counts that an ingredient is not the plain one: a caution that is new, no everyday word. (I,) [1]"""
    known = {caution for key in recipe.ingredients for caution in shop[key].cautions}
    new = np.array([float(len(set(shop[key].cautions) - known)) for key in keys])
    rare = np.array([float(not shop[key].everyday) for key in keys])
    return np.asarray(row("change", "caution") * new + row("change", "rare") * rare)
