"""What wets flour: water, and where water is short, syrup and fat; and how much hands can knead, by common practice.

A baker's percentage counts water alone, and so does the trade's window. Below that window syrup and fat stand in for
the water that lacks, `wetness = water + (1 - water/least) · k · (syrup + fat)`, each by its volume: a mix without any
water is a dough if syrup or fat wets its flour. The rule and k are from memory; nobody measured them.
"""

from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.bowl import Bowl
from lumped.dough.chain import Chain
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.quantities import Value
from lumped.reference import handbook

__all__ = ["hydration_window", "is_wetted_otherwise", "stands_in", "wetness", "wetness_of"]

Array = NDArray[np.float64]
_TINY = 1e-9


def hydration_window(recipe: Recipe) -> tuple[Value, Value]:
    """Give the least and the most water to flour that hands can knead, by method; stated common practice. [1]"""
    return _window(recipe.cooked)


def wetness(water: Any, others: Any, least: Any) -> Array:
    """Give what wets flour, as water to flour. [1]

    Parameters
    ----------
    water : (n,) float
        Water to flour, as poured. [1]
    others : (n,) float
        Syrup and fat to flour, as the water that fills their volume. [1]
    least : float or (n,) float
        The least water of the trade's window. [1]

    Examples
    --------
    >>> [round(float(wetness(water, 0.5, 0.35)), 2) for water in (0.0, 0.3, 0.6)]
    [0.5, 0.37, 0.6]
    """
    return np.asarray(water + np.maximum(1 - np.asarray(water) / least, 0.0) * _counted() * others)


def stands_in(chain: Chain, least: Any) -> Array:
    """Give how much water syrup and fat stand in for, to flour. (n,) [1]"""
    return np.asarray(wetness_of(chain, least) - chain.hydration)


def wetness_of(chain: Chain, least: Any) -> Array:
    """Give what wets the flour of doughs, as water to flour. (n,) [1]"""
    return wetness(chain.hydration, chain.syrup + chain.fat, least)


def is_wetted_otherwise(recipe: Recipe, shop: Pantry) -> bool:
    """Tell whether syrup or fat makes a recipe's dough, with less water than flour wants when it is kneaded cold.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> portions = tuple(Portion(ingredient=key, written="", mass=Value.exact(mass, "kg"))
    ...                  for key, mass in (("cornstarch", 0.15), ("shortening", 0.075)))
    >>> is_wetted_otherwise(Recipe(title="", kind="insulating", portions=portions, cooked="not cooked"), pantry())
    True
    """
    bowl = Bowl.of(recipe.ingredients, shop)
    masses = np.array([recipe.mass_of(key) for key in bowl.keys])
    flour = max(float(masses[bowl.body].sum()), _TINY)
    water, others = (masses * bowl.water)[bowl.wet].sum() / flour, (bowl.syrup + bowl.fat) @ masses / flour
    least = _window("not cooked")[0].mean
    return bool(water < least <= wetness(water, others, least))


def _window(cooked: str) -> tuple[Value, Value]:
    entry = "hydration-not-cooked" if cooked == "not cooked" else "hydration-cooked"
    return handbook().value("marks", entry, "least"), handbook().value("marks", entry, "most")


def _counted() -> float:
    return handbook().value("marks", "standing-in", "by_volume").mean
