"""Finding an ingredient of a recipe by the word that a person says."""

from difflib import get_close_matches

from lumped.dough.recipe import Recipe
from lumped.errors import RecipeError
from lumped.pantry import Ingredient, Pantry
from lumped.texts.folding import plain_word

__all__ = ["found_in", "matches_in"]


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
    found = matches_in(recipe, word, shop)
    if len(found) == 1:
        return found[0]
    every = {each: key for key in recipe.ingredients for each in _called(shop[key])}
    near = dict.fromkeys(every[each] for each in get_close_matches(plain_word(word), every, n=3, cutoff=0.5))
    raise RecipeError("map-not-in-recipe", word=word, near=", ".join(found or near or recipe.ingredients))


def matches_in(recipe: Recipe, word: str, shop: Pantry) -> tuple[str, ...]:
    """Tell which ingredients of a recipe a word may mean: the one that is called so, else all with the word in a name.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> one = Value.exact(1e-3, "kg")
    >>> flours = [Portion(ingredient=each, written="1 g", mass=one) for each in ("rice-flour", "potato-flour")]
    >>> recipe = Recipe(title="", kind="insulating", portions=tuple(flours), cooked="not cooked")
    >>> matches_in(recipe, "Farine de riz", pantry()), matches_in(recipe, "flour", pantry())
    (('rice-flour',), ('rice-flour', 'potato-flour'))
    """
    asked = plain_word(word)
    named = {key: _called(shop[key]) for key in recipe.ingredients}
    whole = tuple(key for key, names in named.items() if asked in names)
    return whole[:1] or tuple(key for key, names in named.items() if any(asked in each.split() for each in names))


def _called(ingredient: Ingredient) -> tuple[str, ...]:
    return tuple(map(plain_word, ingredient.called))
