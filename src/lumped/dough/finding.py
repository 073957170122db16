"""Finding an ingredient of a recipe by the word that a person says."""

from difflib import get_close_matches

from lumped.dough.recipe import Recipe
from lumped.errors import RecipeError
from lumped.pantry import Pantry

__all__ = ["found_in"]


def found_in(recipe: Recipe, word: str, shop: Pantry) -> str:
    """Find an ingredient of a recipe by key, name, other name, or the one of whose name the word is a part.

    Parameters
    ----------
    recipe : Recipe
        Where to look.
    word : str
        What a person calls it.
    shop : Pantry
        What the ingredients are.

    Returns
    -------
    str
        Its key.

    Raises
    ------
    RecipeError
        If there is none, or more than one; the sentence names those that look alike.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> flour = Portion(ingredient="plain-flour", written="1 g", mass=Value.exact(1e-3, "kg"))
    >>> found_in(Recipe(title="", kind="insulating", portions=(flour,), cooked="not cooked"), "Flour", pantry())
    'plain-flour'
    """
    asked = word.strip().casefold()
    named = {key: [each.casefold() for each in (key, shop[key].name, *shop[key].also)] for key in recipe.ingredients}
    whole = [key for key, names in named.items() if asked in names]
    part = [key for key, names in named.items() if any(asked in each.replace("-", " ").split() for each in names)]
    if whole or len(part) == 1:
        return (whole or part)[0]
    every = {each: key for key, names in named.items() for each in names}
    near = dict.fromkeys(every[each] for each in get_close_matches(asked, every, n=3, cutoff=0.5))
    raise RecipeError("map-not-in-recipe", word=word, near=", ".join(part or near or recipe.ingredients))
