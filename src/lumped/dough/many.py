"""Many recipes at once: a table of masses goes through the chain in one pass.

One recipe is one entry; with draws, entry = recipe · draws + draw, and the same draw of what is open (how much water
flour binds, how a hand weighs) goes to every recipe, so that they can be held against each other.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.dough.beliefs import Draws, draws, middle
from lumped.dough.bowl import Bowl
from lumped.dough.chain import follow
from lumped.dough.material import Kind
from lumped.dough.properties import PROPERTIES, drawn_prices, middle_prices, spent
from lumped.dough.recipe import Portion, Recipe
from lumped.errors import RecipeError
from lumped.pantry import Pantry, pantry
from lumped.pantry.amounts import weighed
from lumped.quantities import Value

__all__ = ["knead_many"]

Array = NDArray[np.float64]
_BLOCK = 16_384  # entries of a pass: they stay near the processor, and memory does not grow with the table
_PINCH = 1e-3  # kg; how a hand weighs what none of the recipes holds: it comes to nothing


def knead_many(
    keys: Sequence[str],
    masses: ArrayLike,
    *,
    kind: Kind = "conducting",
    cooked: str = "pot",
    temperature: float = 293.15,
    count: int = 0,
    shop: Pantry | None = None,
    prices: Mapping[str, Value] | None = None,
) -> dict[str, Array]:
    """Work out many recipes of the same ingredients.

    Parameters
    ----------
    keys : sequence of str
        The ingredients, I of them.
    masses : (I, n) array_like
        How much of each goes into each recipe. [kg]
    kind : {"conducting", "insulating"}
        What the doughs are for.
    cooked : {"pot", "kettle", "microwave", "not cooked"}
        How they are heated.
    temperature : float
        At which they are used. [K]
    count : int
        How many draws of what is open; 0 for the middle of what is believed alone.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    prices : mapping of str to Value, optional
        Price of each ingredient. [money/kg]

    Returns
    -------
    dict of str to (n,) or (3, n) float
        Each of `properties.PROPERTIES` that can be given, in its SI unit; with draws: low end of the 95 % interval,
        median, high end.

    Raises
    ------
    RecipeError
        If an ingredient stands twice, a mass is negative or no number, or a recipe is empty.

    Examples
    --------
    >>> table = [[0.125, 0.125], [0.237, 0.237], [0.018, 0.073]]
    >>> knead_many(["plain-flour", "tap-water", "table-salt"], table)["resistivity"].round(2).tolist()
    [0.36, 0.16]
    """
    shop = shop or pantry()
    table = _checked(keys, masses)
    recipe = _typical(keys, table, kind=kind, cooked=cooked, temperature=temperature)
    given = draws(recipe, shop)[0].first(count) if count else middle(recipe, shop)
    paid = drawn_prices(prices) if count else middle_prices(prices)
    step = max(_BLOCK // max(count, 1), 1)
    blocks = [
        _followed(table[:, start : start + step], given, recipe, shop, paid) for start in range(0, table.shape[1], step)
    ]
    return {key: np.concatenate([_summed_up(block[key], count) for block in blocks], axis=-1) for key in blocks[0]}


def _followed(
    table: Array, given: Draws, recipe: Recipe, shop: Pantry, paid: Mapping[str, Array] | None
) -> dict[str, Array]:
    """Follow some recipes through, each with all draws. (recipes · draws,)"""
    keys, count, recipes = recipe.ingredients, given.masses.shape[1], table.shape[1]
    slips = given.masses / given.masses.mean(axis=1, keepdims=True)  # how far a hand weighs off
    entries = (table[:, :, None] * slips[:, None, :]).reshape(len(keys), -1)
    given = given.repeated(recipes)
    chain = follow(
        Bowl.of(keys, shop), entries, unknowns=given.unknowns, lost_share=given.lost_share,
        temperature=recipe.temperature, moisture=given.moisture, minerals=given.minerals,
    )  # fmt: skip
    cost = spent(keys, entries, paid and {key: np.tile(price[:count], recipes) for key, price in paid.items()})
    none = np.zeros(1)
    return {
        key: np.array(np.broadcast_to(one.of(chain, none if cost is None else cost), chain.mass.shape))
        for key, one in PROPERTIES.items()
        if key != "cost" or cost is not None
    }


def _summed_up(found: Array, count: int) -> Array:
    if not count:
        return found
    return np.quantile(found.reshape(-1, count), [0.025, 0.5, 0.975], axis=1)


def _checked(keys: Sequence[str], masses: ArrayLike) -> Array:
    """Give the table of masses, if it can be one."""
    table = np.asarray(masses, float)
    if table.ndim != 2 or len(table) != len(set(keys)):
        raise RecipeError("many-shape", rows=len(keys), shape=" × ".join(map(str, table.shape)))
    bad = np.argwhere(~(np.isfinite(table) & (table >= 0)))
    if len(bad):
        row, column = bad[0]
        grams = f"{1e3 * table[row, column]:g}"
        raise RecipeError("many-mass", number=int(column) + 1, ingredient=keys[row], mass=grams)
    if not table.shape[1]:
        raise RecipeError("many-none")
    empty = np.flatnonzero(table.sum(axis=0) == 0)
    if len(empty):
        raise RecipeError("many-empty", number=int(empty[0]) + 1)
    return table


def _typical(keys: Sequence[str], table: Array, *, kind: Kind, cooked: str, temperature: float) -> Recipe:
    """A recipe with the mean of each mass, for what its kind of recipe leaves open."""
    portions = tuple(
        Portion(ingredient=key, written="", mass=weighed(float(mass) or _PINCH))
        for key, mass in zip(keys, table.mean(axis=1), strict=True)
    )
    plain = Recipe(title="", kind=kind, portions=portions, cooked="pot")
    return replace(plain, cooked=cooked, temperature=temperature)  # type: ignore[arg-type]
