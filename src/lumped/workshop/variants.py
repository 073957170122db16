"""The same dough made another way: with water from the kettle, or kneaded cold; the water is set right for it."""

from dataclasses import replace

import numpy as np

from lumped.dough.beliefs import beliefs
from lumped.dough.bowl import Bowl
from lumped.dough.kneading import knead_middle
from lumped.dough.recipe import Recipe
from lumped.dough.texture import hydration_window
from lumped.pantry import Pantry

__all__ = ["cold_version", "kettle_version"]


def kettle_version(recipe: Recipe, shop: Pantry) -> Recipe | None:
    """Give a cooked recipe made with boiling water instead, with as much less water as steam would have taken.

    Returns
    -------
    Recipe or None
        None if it is not cooked, or has no water that could be less.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written="", mass=Value.exact(g / 1e3, "kg")) for k, g in grams.items())
    >>> other = kettle_version(Recipe(title="", kind="conducting", portions=portions, cooked="pot"), pantry())
    >>> other.cooked, 0.19 < other.mass_of("tap-water") < 0.22
    ('kettle', True)
    """
    if recipe.cooked not in ("pot", "microwave"):
        return None
    chain = knead_middle(recipe, shop)
    other = replace(recipe, cooked="kettle", weighed_after=None)
    kept = 1 - beliefs(other, shop)["water_lost"].mean
    water = float((chain.of("water") + chain.water_lost)[0])
    return _with_less(other, water - float(chain.of("water")[0]) / kept, shop)


def cold_version(recipe: Recipe, shop: Pantry) -> Recipe | None:
    """Give a recipe kneaded cold, with water in the middle of what hands can knead so (common practice).

    Returns
    -------
    Recipe or None
        The recipe itself if it is kneaded cold; None if it has no water that could be less.
    """
    if recipe.cooked == "not cooked":
        return recipe
    other = replace(recipe, cooked="not cooked", weighed_after=None)
    least, most = (each.mean for each in hydration_window(other))
    hydration = float(knead_middle(recipe, shop).hydration[0])
    if hydration <= most:
        return other
    bowl = Bowl.of(recipe.ingredients, shop)
    flour = sum(recipe.mass_of(key) for key, body in zip(bowl.keys, bowl.body, strict=True) if body)
    return _with_less(other, (hydration - float(np.sqrt(least * most))) * flour, shop)


def _with_less(recipe: Recipe, water: float, shop: Pantry) -> Recipe | None:
    """Give the recipe with so much less water, taken from its wettest ingredient. [kg]"""
    bowl = Bowl.of(recipe.ingredients, shop)
    held = {key: share * recipe.mass_of(key) for key, share, wet in zip(bowl.keys, bowl.water, bowl.wet, strict=True)
            if wet}  # fmt: skip
    if not held:
        return None
    wettest = max(held, key=lambda key: held[key])
    factor = 1 - water / held[wettest]
    return recipe.with_times(wettest, float(factor)) if factor > 0 else None
