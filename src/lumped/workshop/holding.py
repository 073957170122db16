"""What holds a dough together: gluten, starch that was heated, or a binder; and what to say where one is missing."""

from lumped.dough.recipe import Recipe
from lumped.dough.swap.figures import body_of
from lumped.pantry import Pantry
from lumped.texts import say

__all__ = ["holding_words", "is_dough"]


def is_dough(recipe: Recipe, shop: Pantry) -> bool:
    """Tell whether anything holds a recipe together: kneaded cold, starch without gluten needs a binder.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> portions = tuple(Portion(ingredient=key, written="", mass=Value.exact(0.1, "kg"))
    ...                  for key in ("cornstarch", "tap-water"))
    >>> cold = Recipe(title="", kind="conducting", portions=portions, cooked="not cooked")
    >>> is_dough(cold, pantry())
    False
    """
    bodies = _bodies(recipe, shop)
    return recipe.cooked != "not cooked" or not bodies or bool(bodies & {"wheat", "binder"})


def holding_words(recipe: Recipe, shop: Pantry) -> tuple[str, ...]:
    """Say what a dough without gluten is like, the gravest first; nothing of one with wheat or without any flour."""
    bodies = _bodies(recipe, shop)
    if "wheat" in bodies or not bodies - {"binder"}:
        return ()
    words = [say("swap-note-no-gluten")]
    if not is_dough(recipe, shop):
        return (say("making-no-dough"), *words)
    if "starch" in bodies:
        words.append(say(f"swap-note-starch-{'cold' if recipe.cooked == 'not cooked' else 'cooked'}"))
    return tuple(words)


def _bodies(recipe: Recipe, shop: Pantry) -> set[str]:
    return {body_of(shop[key]) for key in recipe.ingredients} - {""}
