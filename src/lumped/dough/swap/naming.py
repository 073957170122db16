"""What another recipe is called: the old name, and what went in or out."""

from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.texts import say

__all__ = ["title_of"]

_LONGEST = 120  # letters of a recipe's title


def title_of(before: Recipe, after: Recipe, shop: Pantry) -> str:
    """Name a recipe after the one that it came from.

    Parameters
    ----------
    before, after : Recipe
        The recipe as it was, and the other.
    shop : Pantry
        What the ingredients are.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> def of(*keys):
    ...     portions = tuple(Portion(ingredient=key, written="1 g", mass=Value.exact(1e-3, "kg")) for key in keys)
    ...     return Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")
    >>> title_of(of("plain-flour", "cream-of-tartar"), of("plain-flour", "citric-acid"), pantry())
    'Plain, with citric acid instead of cream of tartar'
    """
    new, gone = _only_in(after, before, shop), _only_in(before, after, shop)
    if before.cooked != after.cooked and not (new or gone):
        title = say("swap-titled-way", title=before.title, way=say(f"swap-way-{after.cooked.replace(' ', '-')}"))
    else:
        key = "instead" if new and gone else "with" if new else "without" if gone else "amounts"
        title = say(f"swap-titled-{key}", title=before.title, new=new, gone=gone)
    short = say("swap-titled-amounts", title=before.title)
    return next((each for each in (title, short) if len(each) <= _LONGEST), before.title)


def _only_in(one: Recipe, other: Recipe, shop: Pantry) -> str:
    """Names of what only one of two recipes has, the heaviest first; "" for nothing."""
    keys = sorted((key for key in one.ingredients if key not in other.ingredients), key=lambda key: -one.mass_of(key))
    *first, last = [shop[key].name for key in keys] or [""]
    return say("swap-titled-and", first=", ".join(first), last=last) if first else last
