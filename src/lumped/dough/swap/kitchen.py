"""From masses that a search found to a recipe that a kitchen can make: measures, and what is added by feel."""

from collections.abc import Mapping
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from lumped.dough.recipe import Portion, Recipe
from lumped.dough.swap.figures import WAYS, Figures, figures_of
from lumped.dough.swap.requirements import beyond, row
from lumped.dough.swap.search import KEPT, Found, Search
from lumped.errors import RecipeError
from lumped.pantry import Ingredient, Pantry
from lumped.pantry.amounts import is_weight
from lumped.pantry.choosing import SCALE, Measured
from lumped.pantry.measures import kitchen, weight_of
from lumped.pantry.rounding import Rounded, Shift, Wanted, rounded_to_kitchen

__all__ = ["in_measures", "own_measures", "recipe_from", "rounded_recipe", "without_specks"]

Array = NDArray[np.float64]
_STEP = 1e-3  # of a kitchen's scale [kg]
_BEYOND = 20.0  # a rounding that breaks a requirement is worse than any that moves the dough: chosen
_AMOUNTS = 0.03  # what a part of an amount counts against as large a part of the resistivity: chosen
_UNTOUCHED = 0.01
_SPECK = 0.5  # of the smallest spoon, or of a gram on a scale: less is left out wherever that can be


def own_measures(recipe: Recipe) -> str:
    """Tell in what a recipe is measured: "scale" where most of it is weighed, else its cups and spoons.

    Examples
    --------
    >>> from lumped.quantities import Value
    >>> flour = Portion(ingredient="plain-flour", written="125 g", mass=Value.exact(0.125, "kg"))
    >>> own_measures(Recipe(title="", kind="conducting", portions=(flour,), cooked="pot"))
    'scale'
    """
    there = [each for each in recipe.portions if each.mass.mean]
    onto_the_scale = sum(each.mass.mean for each in there if _is_weight(each.written))
    return SCALE if 2 * onto_the_scale > sum(each.mass.mean for each in there) else recipe.measures


def _is_weight(written: str) -> bool:
    terms = written.split("+")
    return len(terms) == 1 and is_weight(terms[0])


def in_measures(recipe: Recipe, search: Search, shop: Pantry, system: str) -> Recipe:
    """Write a recipe as it is in a kitchen's measures; in its own it stays as it is written."""
    as_it_is = Found(masses=search.old, way=search.same_way, score=0.0, over=0.0, added=())
    return rounded_recipe(recipe, as_it_is, search, shop, system=system)[0]


def without_specks(found: Found, search: Search, shop: Pantry, system: str) -> Found:
    """Leave out what is less than the smallest spoon holds, the smallest first, where everything is kept without it.

    Half a spoon and more stays where it does as much as a changed ingredient counts, as a strong acid or a gum does.
    """
    there = np.flatnonzero(found.masses > 0)
    for i in there[np.argsort(found.masses[there])]:
        spoons = found.masses[i] / _least(shop[search.table.keys[i]], system)
        if spoons >= 1:
            continue
        masses = np.where(np.arange(len(found.masses)) == i, 0.0, found.masses)
        score, over = search.scores(masses[:, None], np.array([found.way]))
        serves = spoons >= _SPECK and score[0] - found.score > row("change", "ingredient")
        if over[0] <= max(found.over, KEPT) and not serves:
            added = tuple(each for each in found.added if each != i)
            found = replace(found, masses=masses, score=float(score[0]), over=float(over[0]), added=added)
    return found


def _least(ingredient: Ingredient, system: str) -> float:
    """What the smallest spoon of a kitchen holds, or a step of its scale. [kg]"""
    if system == SCALE:
        return _STEP
    least = min(kitchen(system).scoops, key=lambda each: float(each.share) * kitchen(system).volumes[each.measure].mean)
    try:
        return float(least.share) * weight_of(least.measure, ingredient, system).mean
    except RecipeError:  # nobody knows what a spoon of it weighs
        return _STEP


def rounded_recipe(
    recipe: Recipe, found: Found, search: Search, shop: Pantry, *, system: str, spoken: Recipe | None = None
) -> tuple[Recipe, Rounded | None]:
    """Write a found recipe in kitchen measures, chosen so that its dough moves least.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it was.
    found : Found
        What was found.
    search : Search
        Where.
    shop : Pantry
        What the ingredients are.
    system : str
        Whose measures, or "scale".
    spoken : Recipe, optional
        The recipe as it was, in these measures; what did not change is taken from it.

    Returns
    -------
    Recipe
        What did not change is as it was written, if the measures are its own.
    Rounded or None
        What rounding did; None if nothing had to be measured anew.
    """
    table = search.table
    keys = [table.keys[i] for i in np.flatnonzero(found.masses > 0)]
    spoken = spoken or (recipe if system == own_measures(recipe) else None)
    same = [key for key in keys if spoken and _is_untouched(search, found, key)]
    needed = _by_feel(recipe, found, search, shop)
    wanted = {
        key: float(found.masses[table.row(key)]) - sum(needed.get(key, (0.0, 0.0))) / 2
        for key in keys if key not in same
    }  # fmt: skip
    if not wanted:
        return recipe_from(spoken or recipe, found, search, system=system, measured={}, needed={}), None
    rounded = rounded_to_kitchen(
        [Wanted(ingredient=shop[key], mass=max(mass, 1e-5)) for key, mass in wanted.items()], system,
        _shifts(found, search, list(wanted), needed),
        weights={"beyond": _BEYOND, "amounts": _AMOUNTS, "resistivity": 1.0, "hydration": 2.0, "ph": 0.3,
                 "water_activity": 3.0},
    )  # fmt: skip
    measured = {each.ingredient: each for each in rounded.portions}
    return recipe_from(spoken or recipe, found, search, system=system, measured=measured, needed=needed), rounded


def recipe_from(
    recipe: Recipe,
    found: Found,
    search: Search,
    *,
    system: str,
    measured: Mapping[str, Measured],
    needed: Mapping[str, tuple[float, float]],
) -> Recipe:
    """Put a recipe together: old portions that stay, in their order, then what is new."""
    keys = [search.table.keys[i] for i in np.flatnonzero(found.masses > 0)]
    new = [key for key in keys if key not in recipe.ingredients]
    new.sort(key=lambda key: -found.masses[search.table.row(key)])
    order = [key for key in recipe.ingredients if key in keys] + new
    portions: list[Portion] = []
    for key in order:
        if key not in measured:
            portions += [each for each in recipe.portions if each.ingredient == key]
            continue
        one = measured[key]
        portions.append(Portion(ingredient=key, written=one.words, mass=one.mass, as_needed=needed.get(key)))
    way = WAYS[found.way]
    changed = bool(measured) or way != recipe.cooked or set(order) != set(recipe.ingredients)
    return replace(
        recipe, portions=tuple(portions), cooked=way,  # type: ignore[arg-type]
        weighed_after=None if changed else recipe.weighed_after, steps=() if changed else recipe.steps,
        measures=recipe.measures if system == SCALE else system,
    )  # fmt: skip


def _is_untouched(search: Search, found: Found, key: str) -> bool:
    i = search.table.row(key)
    return bool(search.old[i] > 0 and abs(found.masses[i] / search.old[i] - 1) < _UNTOUCHED)


def _by_feel(recipe: Recipe, found: Found, search: Search, shop: Pantry) -> dict[str, tuple[float, float]]:
    """What is added by feel: as before, or of the largest new body where the old one left."""
    needed: dict[str, tuple[float, float]] = {}
    for portion in recipe.portions:
        if portion.as_needed is None:
            continue
        key: str | None = portion.ingredient
        if key not in search.table.keys or found.masses[search.table.row(portion.ingredient)] == 0:
            bodies = [i for i in found.added if "body" in shop[search.table.keys[i]].roles]
            key = search.table.keys[max(bodies, key=lambda i: found.masses[i])] if bodies else None
        if key is not None:
            before = needed.get(key, (0.0, 0.0))
            needed[key] = (before[0] + portion.as_needed[0], before[1] + portion.as_needed[1])
    return {
        key: ends for key, ends in needed.items() if found.masses[search.table.row(key)] > sum(ends)
    }  # fmt: skip


def _shifts(found: Found, search: Search, keys: list[str], needed: Mapping[str, tuple[float, float]]) -> Shift:
    """Give the function that tells what rounding does to the dough."""
    rows = [search.table.row(key) for key in keys]
    more = np.array([sum(needed.get(key, (0.0, 0.0))) / 2 for key in keys])
    aim = figures_of(search.table, found.masses[:, None], np.array([found.way]))

    def shift(chosen: Array) -> dict[str, Array]:
        masses = np.repeat(found.masses[:, None], chosen.shape[1], axis=1)
        masses[rows] = chosen + more[:, None]
        new = figures_of(search.table, masses, np.full(chosen.shape[1], found.way))
        off = np.log(np.maximum(masses[rows], 1e-9) / np.maximum(found.masses[rows], 1e-9)[:, None])
        return _moved(search, aim, new) | {"amounts": np.sqrt(np.square(off).sum(axis=0))}

    return shift


def _moved(search: Search, aim: Figures, new: Figures) -> dict[str, Array]:
    over = sum(beyond(search.standard, new).values(), np.zeros_like(new.mass))
    return {
        "resistivity": np.log(new.resistivity / aim.resistivity), "hydration": (new.place - aim.place) / 2,
        "ph": new.ph - aim.ph, "water_activity": new.water_activity - aim.water_activity, "beyond": over,
    }  # fmt: skip
