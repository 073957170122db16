"""What may be in an ingredient as traces of that which was refused: only its packet can tell."""

from collections.abc import Iterable

from lumped.dough.safety.needs import borne, listed_allergens
from lumped.dough.swap.wants import Wish
from lumped.pantry import Ingredient, Pantry

__all__ = ["may_contain", "traces_in"]

_ASKED_AS = {"gluten": "coeliac", "nuts": "nuts", "wheat": "wheat", "shellfish": "shellfish"}  # classes, diets


def may_contain(ingredient: Ingredient, wish: Wish) -> tuple[str, ...]:
    """Name what was refused and may be in an ingredient as traces.

    Parameters
    ----------
    ingredient : Ingredient
        What is asked about.
    wish : Wish
        What was refused, as classes and as diets.

    Returns
    -------
    tuple of str
        "soybeans", "gluten", …

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> may_contain(pantry()["plain-flour"], Wish(classes=("soybeans", "acid")))
    ('soybeans',)
    >>> may_contain(pantry()["rice-flour"], Wish(diets=("no gluten",)))
    ('gluten',)
    """
    refused = dict.fromkeys((*wish.classes, *(each.removeprefix("no ") for each in wish.diets)))
    asked = {word: _ASKED_AS.get(word, word) for word in refused if word in _ASKED_AS or word in listed_allergens()}
    return tuple(word for word, need in asked.items() if borne(need, ingredient) == "perhaps")


def traces_in(keys: Iterable[str], wish: Wish, shop: Pantry) -> dict[str, tuple[str, ...]]:
    """Name what was refused and may be in a recipe as traces, each with the keys of the ingredients that bring it."""
    found: dict[str, tuple[str, ...]] = {}
    for key in keys:
        for word in may_contain(shop[key], wish):
            found[word] = (*found.get(word, ()), key)
    return found
