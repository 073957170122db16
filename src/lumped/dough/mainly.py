"""What a recipe is made of in the main: its flour, its liquid, and the salt that carries or the sugar that blocks."""

from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry

__all__ = ["main_three"]

_THIRD = {"conducting": "ions", "insulating": "sweetener"}


def main_three(recipe: Recipe, shop: Pantry) -> tuple[str, ...]:
    """Name a recipe's body, liquid and salt, or sugar where it is to block current: of each the heaviest there is.

    Where one is missing, the heaviest of what is left comes last; fewer than three where there are no more.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.pantry import pantry
    >>> from lumped.quantities import Value
    >>> grams = {"vegetable-oil": 14, "table-salt": 73, "tap-water": 237, "plain-flour": 125}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> main_three(Recipe(title="", kind="conducting", portions=portions, cooked="pot"), pantry())
    ('plain-flour', 'tap-water', 'table-salt')
    """
    masses = recipe.masses
    left = sorted(masses, key=lambda key: -masses[key])

    found: list[str] = []
    for role in ("body", "liquid", _THIRD[recipe.kind]):
        fits = [key for key in left if role in shop[key].roles and key not in found]
        found += fits[:1]
    rest = [key for key in left if key not in found]
    return (*found, *rest[: 3 - len(found)])
