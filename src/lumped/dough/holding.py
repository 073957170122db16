"""What holds a dough together: gluten, starch that was heated, or a binder; and what to say where one is missing.

A recipe is told to be no dough only where that is sure: kneaded cold, with less gluten and less binder than the low
ends of the handbook's figures. A swap proposes nothing below their middles.
"""

import numpy as np
from numpy.typing import NDArray

from lumped.dough.bowl import is_body
from lumped.dough.recipe import Recipe
from lumped.dough.safety.allergens import has_gluten
from lumped.dough.wetting import is_wetted_otherwise
from lumped.pantry import Ingredient, Pantry
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["body_of", "holding_words", "is_held", "unbound"]

Array = NDArray[np.float64]


def body_of(ingredient: Ingredient) -> str:
    """Tell what kind of body an ingredient makes: "wheat", "gluten-free", "starch", "rich", "binder"; "" for none.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [body_of(pantry()[key]) for key in ("plain-flour", "rice-flour", "cornstarch", "xanthan-gum", "table-salt")]
    ['wheat', 'gluten-free', 'starch', 'binder', '']
    """
    share = ingredient.composition.get
    starch, protein, fat = share("starch", 0.0), share("protein", 0.0), share("fat", 0.0)
    if not is_body(ingredient):
        return "binder" if starch < 0.1 and starch + protein + share("fibre", 0.0) > 0.4 else ""
    if has_gluten(ingredient) and protein > 0.05:
        return "wheat"
    if protein > 0.2 or fat > 0.15:
        return "rich"
    return "starch" if starch > 0.8 and protein < 0.03 else "gluten-free"


def unbound(gluten: Array, binder: Array) -> Array:
    """Give how much binder doughs lack that are kneaded cold, as a share of what one without gluten needs. (n,) [1]

    Parameters
    ----------
    gluten, binder : (n,) float
        Mass of flours with gluten, and of binders, to all flour. [1]
    """
    book = handbook()
    short = 1 - binder / book.value("swap", "texture", "least_binder").mean
    return np.where(gluten < book.value("swap", "texture", "least_gluten").mean, np.maximum(short, 0.0), 0.0)


def is_held(recipe: Recipe, shop: Pantry) -> bool:
    """Tell whether anything holds a recipe together: kneaded cold, starch without gluten needs a binder.

    A meal of nuts or beans holds by its fat and protein, as marzipan does (common practice), and so does what fat or
    syrup wets instead of water, as shortbread and fondant do (from memory).

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> portions = tuple(Portion(ingredient=key, written="", mass=Value.exact(0.1, "kg"))
    ...                  for key in ("cornstarch", "tap-water"))
    >>> cold = Recipe(title="", kind="conducting", portions=portions, cooked="not cooked")
    >>> is_held(cold, pantry())
    False
    """
    if recipe.cooked != "not cooked" or is_wetted_otherwise(recipe, shop):
        return True
    masses: dict[str, float] = {}
    for key, mass in recipe.masses.items():
        masses[body_of(shop[key])] = masses.get(body_of(shop[key]), 0.0) + mass
    flour = sum(mass for body, mass in masses.items() if body not in ("", "binder"))
    book = handbook()
    least = {each: book.value("swap", "texture", f"least_{each}").low * flour for each in ("gluten", "binder")}
    holds = masses.get("wheat", 0.0) + masses.get("rich", 0.0)
    return holds >= least["gluten"] or masses.get("binder", 0.0) >= least["binder"]


def holding_words(recipe: Recipe, shop: Pantry) -> tuple[str, ...]:
    """Say what a dough without gluten is like; nothing of one with wheat, without any flour, or of what is no dough."""
    bodies = {body_of(shop[key]) for key in recipe.ingredients} - {""}
    if "wheat" in bodies or not bodies - {"binder"} or not is_held(recipe, shop):
        return ()
    words = [say("swap-note-no-gluten")]
    if "starch" in bodies:
        words.append(say(f"swap-note-starch-{'cold' if recipe.cooked == 'not cooked' else 'cooked'}"))
    return tuple(words)
