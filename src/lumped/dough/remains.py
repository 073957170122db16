"""What of a dough's salts, acids and powders stays solid, in words; table salt and sugar are steps of the chain."""

from collections.abc import Iterator

import numpy as np

from lumped.chemistry.compounds import compounds
from lumped.dough.bowl import MINERALS
from lumped.dough.chain import Chain
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.quantities import short_text
from lumped.texts import say

__all__ = ["remaining_words"]

_STEPS = ("sodium-chloride", "sucrose")
_LEAST, _SHARE = 0.3e-3, 0.05  # kg, and of what went in; less is not worth a word


def remaining_words(recipe: Recipe, chain: Chain, shop: Pantry) -> Iterator[str]:
    """Say what stays solid, and how much of it.

    Parameters
    ----------
    recipe : Recipe
        What went in.
    chain : Chain
        What came of it, in draws.
    shop : Pantry
        What the ingredients are.
    """
    for each in compounds():
        if not each.dissolves or each.key in _STEPS or each.key in MINERALS:
            continue
        solid, there = chain.solid(each.key), chain.of(each.key)
        if np.median(solid) < max(_LEAST, _SHARE * float(np.median(there))):
            continue
        crystals = 1e3 * (1 + each.crystals) * np.quantile(solid, [0.025, 0.975])
        low, high = map(short_text, crystals.tolist())
        yield say("dough-note-stays", low=low, high=high, name=_named(each.key, recipe, shop) or each.name,
                  temperature=f"{recipe.temperature - 273.15:.0f}")  # fmt: skip


def _named(compound: str, recipe: Recipe, shop: Pantry) -> str:
    """Name of the ingredient that brings most of a compound; "" if none is mostly that."""
    bring = {key: recipe.mass_of(key) * shop[key].composition.get(compound, 0.0) for key in recipe.ingredients}
    most = max(bring, key=lambda key: bring[key])
    return shop[most].name if shop[most].composition.get(compound, 0.0) > 0.4 else ""
