"""One batch in the measures of one kitchen, rounded so that its dough moves least."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import middle
from lumped.dough.chain import Chain
from lumped.dough.kneading import followed, lost_share
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.pantry.choosing import SCALE, as_measures
from lumped.pantry.measures import kitchens
from lumped.pantry.rounding import Rounded, Shift, Wanted, rounded_to_kitchen
from lumped.pantry.wording import grams_text
from lumped.quantities import Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Line", "in_kitchen", "measures_of"]

Array = NDArray[np.float64]
_WEIGHTS = {"resistivity": 1.0, "hydration": 2.0, "ph": 0.3, "water_activity": 3.0, "mass": 0.5}  # chosen, as for swaps
_DRY = 1e-3  # water to flour below which a relative change says nothing
_FINE_BELOW = 5e-3  # kg; below it a scale for spices helps


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One ingredient of a batch.

    Parameters
    ----------
    ingredient, name : str
        Its key and what people call it.
    mass : float
        What is weighed into each batch. [kg]
    measures : str
        The same in cups and spoons, rounded; "" if it is added by feel alone.
    holds : Value or None
        What these measures hold, as people fill them; None if it is added by feel alone. [kg]
    as_needed : (float, float) or None
        What may be added by feel. [kg]
    """

    ingredient: str
    name: str
    mass: float
    measures: str
    holds: Value | None
    as_needed: tuple[float, float] | None = None

    @property
    def rounded(self) -> float:
        """What these measures hold at the middle of what is believed. [kg]"""
        return self.holds.mean if self.holds else 0.0

    def grams(self, count: int = 1) -> str:
        """Write the mass for so many batches as a kitchen scale shows it; kilograms for many of them."""
        mass = count * self.mass
        if count > 1 and mass >= 1:
            return say("making-kilograms", mass=f"{mass:.2f}")
        return grams_text(mass, 1e-4 if mass < _FINE_BELOW else 1e-3)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "ingredient": self.ingredient, "name": self.name, "mass_kg": self.mass, "measures": self.measures or None,
            "measured_kg": self.rounded, "as_needed_kg": list(self.as_needed) if self.as_needed else None,
        }  # fmt: skip


def measures_of(where: str | None, recipe: Recipe) -> str:
    """Tell whose cups and spoons are used: a region's, or those of the recipe.

    Examples
    --------
    >>> measures_of("japan", Recipe(title="", kind="conducting", portions=(), cooked="pot"))
    'japanese'
    """
    if where is None:
        return recipe.measures
    known: Mapping[str, str] = handbook().entry("workshop", "measures-by-region").facts["measures"]
    return known.get(where, recipe.measures)


def in_kitchen(recipe: Recipe, system: str, shop: Pantry) -> tuple[tuple[Line, ...], dict[str, float]]:
    """Write one batch in grams and in the measures of a kitchen.

    Parameters
    ----------
    recipe : Recipe
        One batch.
    system : str
        Whose measures: a key of `measures.kitchens()`, or "scale".
    shop : Pantry
        What the ingredients are.

    Returns
    -------
    tuple of Line
        One for each ingredient.
    dict of str to float
        Relative change of resistivity, hydration, mass, and change of pH and water activity, by the rounding. [1]

    Raises
    ------
    RecipeError
        If there are no such measures.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> grams = {"plain-flour": 126, "tap-water": 240}
    >>> portions = tuple(Portion(ingredient=k, written="", mass=Value.exact(g / 1e3, "kg")) for k, g in grams.items())
    >>> recipe = Recipe(title="", kind="insulating", portions=portions, cooked="pot")
    >>> lines, shifts = in_kitchen(recipe, "us", pantry())
    >>> [line.measures for line in lines], abs(shifts["hydration"]) < 0.02
    (['1 cup + ½ tsp', '1 cup + ½ tsp'], True)
    """
    if system not in (*kitchens(), SCALE):
        as_measures(1.0, shop[recipe.ingredients[0]], system)  # says which there are
    firm = {
        key: sum(each.mass.mean for each in recipe.portions if each.ingredient == key) for key in recipe.ingredients
    }
    wanted = {key: mass for key, mass in firm.items() if mass > 0}
    rounded = rounded_to_kitchen(
        [Wanted(ingredient=shop[key], mass=mass) for key, mass in wanted.items()], system,
        _shift(recipe, list(wanted), shop), weights=_WEIGHTS,
    ) if wanted else None  # fmt: skip
    shifts = {name: float(change) for name, change in rounded.shifts.items()} if rounded else {}
    return tuple(_line(key, firm[key], rounded, recipe, shop) for key in recipe.ingredients), shifts


def _line(key: str, mass: float, rounded: Rounded | None, recipe: Recipe, shop: Pantry) -> Line:
    found = {each.ingredient: each for each in rounded.portions} if rounded else {}
    ends = [each.as_needed for each in recipe.portions if each.ingredient == key and each.as_needed]
    needed = (sum(low for low, _ in ends), sum(high for _, high in ends)) if ends else None
    one = found.get(key)
    return Line(
        ingredient=key, name=shop[key].name, mass=mass, as_needed=needed, measures=one.words if one else "",
        holds=one.mass if one else None,
    )  # fmt: skip


def _shift(recipe: Recipe, keys: list[str], shop: Pantry) -> Shift:
    """Give the function that tells what other masses do to the dough."""
    given = middle(recipe, shop)
    given = replace(given, lost_share=lost_share(recipe, given, shop), weighed_after=None)
    rows = [given.keys.index(key) for key in keys]
    more = given.masses[rows, 0] - [
        sum(each.mass.mean for each in recipe.portions if each.ingredient == key) for key in keys
    ]
    aim = followed(recipe, given, shop)

    def shift(chosen: Array) -> dict[str, Array]:
        many = given.repeated(chosen.shape[1])
        many.masses[rows] = chosen + more[:, None]
        return _changes(followed(recipe, many, shop), aim)

    return shift


def _changes(new: Chain, aim: Chain) -> dict[str, Array]:
    return {
        "resistivity": new.resistivity / aim.resistivity - 1,
        "hydration": (new.hydration - aim.hydration) / np.maximum(aim.hydration, _DRY),
        "ph": new.ph - aim.ph, "water_activity": new.water_activity - aim.water_activity,
        "mass": new.mass / aim.mass - 1,
    }  # fmt: skip
