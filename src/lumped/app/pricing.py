"""What is known of prices."""

from collections.abc import Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from lumped.dough.recipe import Recipe
    from lumped.pantry import Pantry
    from lumped.quantities import Value

__all__ = ["known_prices"]


def known_prices(
    recipes: Sequence["Recipe"], where: str | None, shop: "Pantry"
) -> "tuple[dict[str, Value] | None, str]":
    """Give the prices that are known of recipes' ingredients in a region, and in what money; nothing without a region.

    Raises
    ------
    InputError
        If there is no such region.
    """
    if where is None:
        return None, ""
    from lumped.pantry import region
    from lumped.workshop.cost import prices_of

    keys = dict.fromkeys(key for recipe in recipes for key in recipe.ingredients)
    return prices_of(keys, where, shop)[0], region(where).currency
