"""What would raise a dough's resistivity, and what would ruin it: the same recipe with one thing different."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from lumped.dough.calibrating import Calibration
from lumped.dough.kneading import Kneading, kneading
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry, pantry
from lumped.quantities import Value, believed
from lumped.texts import say

__all__ = ["PINCH", "Change", "ratio", "what_if"]

PINCH = 0.4e-3  # kg; a dash of table salt, USDA SR, NDB 02047
_WATERS = ("tap-water", "distilled-water")


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One thing done differently.

    Parameters
    ----------
    key : str
        Which.
    words : str
        Which, in words.
    factor : Value
        Resistivity with it over resistivity without. [1]
    """

    key: str
    words: str
    factor: Value

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"key": self.key, "words": self.words, "factor": self.factor.as_dict()}


def what_if(recipe: Recipe, shop: Pantry | None = None, calibration: Calibration | None = None) -> tuple[Change, ...]:
    """Change one thing at a time and see what the resistivity does.

    Parameters
    ----------
    recipe : Recipe
        A conducting or an insulating dough.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    calibration : Calibration, optional
        What measured batches taught.

    Returns
    -------
    tuple of Change
        In order of factor, the most ruinous first.

    Notes
    -----
    What is unknown of both doughs is the same in each draw, so that only the change counts.
    """
    shop = shop or pantry()
    before = kneading(recipe, shop, calibration)
    found = []
    for key, other in _others(recipe, shop):
        factor = ratio(kneading(other, shop, calibration), before)
        found.append(Change(key=key, words=say(f"what-if-{key}"), factor=factor))
    order = -1 if recipe.kind == "conducting" else 1
    return tuple(sorted(found, key=lambda each: order * each.factor.mean))


def ratio(above: Kneading, below: Kneading) -> Value:
    """Give the ratio of two doughs' resistivities, draw by draw. [1]

    What is unknown of both (obstruction, air, moisture of the same flour) moves both alike and counts once.
    """
    draws = above.chain.resistivity / below.chain.resistivity
    if not np.all(draws > 0):
        return believed(draws, unit="")
    return replace(above.value(draws, "", "resistivity"), spread="lognormal")


def _others(recipe: Recipe, shop: Pantry) -> Iterator[tuple[str, Recipe]]:
    """The changes that make sense for this recipe."""
    there = recipe.ingredients
    yield "hot", replace(recipe, temperature=333.15)
    water = next((key for key in there if shop[key].composition.get("water", 0.0) > 0.9), None)
    if water is not None:
        yield "more-water", recipe.with_times(water, 1.2)
        yield "less-water", recipe.with_times(water, 0.8)
    if recipe.kind == "insulating":
        yield "pinch", recipe.with_added("table-salt", PINCH)
        yield "gram", recipe.with_added("table-salt", 1e-3)
    if "tap-water" in there:
        yield "distilled", recipe.with_instead("tap-water", "distilled-water")
    if "distilled-water" in there:
        yield "tap", recipe.with_instead("distilled-water", "tap-water")
    for key in there:
        composition = shop[key].composition
        if composition.get("sodium-chloride", 0.0) > 0.9:
            yield "half-salt", recipe.with_times(key, 0.5)
            yield "double-salt", recipe.with_times(key, 2.0)
        if composition.get("sucrose", 0.0) > 0.9:
            yield "no-sugar", recipe.without(key)
            yield "double-sugar", recipe.with_times(key, 2.0)
        if composition.get("fat", 0.0) > 0.9:
            yield "double-oil", recipe.with_times(key, 2.0)
        if composition.get("protein", 0.0) > 0.05 and composition.get("starch", 0.0) > 0.5:
            yield "starch", recipe.with_instead(key, "cornstarch")
        if composition.get("potassium-hydrogen-tartrate", 0.0) > 0.5:
            yield "no-acid", recipe.without(key)
