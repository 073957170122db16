"""The same dough made another way: from the kettle, in a microwave oven, or kneaded cold, with the water it then needs.

As little changes as may. A dough made with boiling water holds as much water as the cooked one did. One kneaded cold
would be too wet for hands with all of it, so that some water gives place to flour, just as much as hands need:
`flour' + water' = flour + water - steam`, `water' / flour' = aim`. It weighs what it weighed, and as much salt finds as
much water as there may be.
"""

from dataclasses import replace

import numpy as np

from lumped.dough.beliefs import beliefs
from lumped.dough.bowl import Bowl
from lumped.dough.kneading import knead_middle
from lumped.dough.recipe import Recipe
from lumped.dough.texture import WELL_INSIDE
from lumped.dough.wetting import hydration_window
from lumped.pantry import Pantry

__all__ = ["cold_version", "kettle_version", "made_otherwise"]


def made_otherwise(recipe: Recipe, way: str, shop: Pantry) -> Recipe | None:
    """Give a recipe made another way, with the water that this way needs.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it is made.
    way : {"pot", "kettle", "microwave", "not cooked"}
        How it is to be made.
    shop : Pantry
        What the ingredients are.

    Returns
    -------
    Recipe or None
        The recipe itself if it is made so; None if it has no water that could be less, or nobody cooked it.
    """
    if way == recipe.cooked:
        return recipe
    if way == "not cooked":
        return cold_version(recipe, shop)
    if way == "kettle":
        return kettle_version(recipe, shop)
    cooked = recipe.cooked in ("pot", "microwave")
    return replace(recipe, cooked=way, weighed_after=None) if cooked else None  # type: ignore[arg-type]


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
    """Give a recipe kneaded cold: as much dough, as wet as hands can knead it so (common practice).

    Returns
    -------
    Recipe or None
        The recipe itself if it is kneaded cold; None if it has no water that could be less.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written="", mass=Value.exact(g / 1e3, "kg")) for k, g in grams.items())
    >>> other = cold_version(Recipe(title="", kind="conducting", portions=portions, cooked="pot"), pantry())
    >>> round(other.mass_of("tap-water") / other.mass_of("plain-flour"), 2)
    0.98
    """
    if recipe.cooked == "not cooked":
        return recipe
    other = replace(recipe, cooked="not cooked", weighed_after=None)
    least, most = (each.mean for each in hydration_window(other))
    aim = float(np.sqrt(least * most) * (most / least) ** (WELL_INSIDE / 2))
    chain = knead_middle(recipe, shop)
    wet = float(chain.hydration[0])
    if wet <= aim:
        return other
    bowl = Bowl.of(recipe.ingredients, shop)
    bodies = [key for key, body in zip(bowl.keys, bowl.body, strict=True) if body]
    flour, steam = sum(recipe.mass_of(key) for key in bodies), float(chain.water_lost[0])
    wetness = _wettest(recipe, shop)[1]
    more = max((flour * (1 + wet / wetness) - steam) / (flour * (1 + aim / wetness)), 1.0)
    for key in bodies:
        other = other.with_times(key, more)
    return _with_less(other, flour * (wet - aim * more), shop)


def _wettest(recipe: Recipe, shop: Pantry) -> tuple[str, float]:
    """Name the ingredient that brings most of the water, and give its share of water; "" without any. [1]"""
    bowl = Bowl.of(recipe.ingredients, shop)
    shares = {key: share for key, share, wet in zip(bowl.keys, bowl.water.tolist(), bowl.wet, strict=True) if wet}
    if not shares:
        return "", 1.0
    return max(shares.items(), key=lambda each: each[1] * recipe.mass_of(each[0]))


def _with_less(recipe: Recipe, water: float, shop: Pantry) -> Recipe | None:
    """Give the recipe with so much less water, taken from its wettest ingredient. [kg]"""
    key, share = _wettest(recipe, shop)
    if not key:
        return None
    factor = 1 - water / (share * recipe.mass_of(key))
    return recipe.with_times(key, float(factor)) if factor > 0 else None
