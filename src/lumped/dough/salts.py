"""Which ingredient is a recipe's salt, and what no longer grows in its brine."""

from dataclasses import dataclass

from lumped.chemistry.compounds import compounds
from lumped.dough.bowl import salt_rows
from lumped.dough.recipe import Recipe
from lumped.errors import RecipeError
from lumped.pantry import Pantry
from lumped.quantities import Value
from lumped.reference import handbook

__all__ = ["Mark", "growth_marks", "main_salt"]

_DRAWN = ("bacteria", "salmonella", "yeasts", "moulds", "salt-lovers", "sugar-yeasts")
"""Groups of `lasting.keeping` that a picture has room for, by the same name."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A water activity below which something no longer grows.

    Parameters
    ----------
    key : str
        What grows, as `lasting.keeping` calls it.
    value : Value
        The water activity. [1]
    """

    key: str
    value: Value


def main_salt(recipe: Recipe, shop: Pantry) -> str:
    """Find the ingredient that brings most ions, among those that are mostly salt.

    Raises
    ------
    RecipeError
        If none is.
    """
    brought = {key: recipe.mass_of(key) * _moles(shop, key) for key in recipe.ingredients}
    if not any(brought.values()):
        raise RecipeError("salting-no-salt", title=recipe.title)
    return max(brought, key=lambda key: brought[key])


def growth_marks() -> tuple[Mark, ...]:
    """Give the water activities below which bacteria, yeasts and moulds, and their hardiest, no longer grow."""
    book = handbook()
    return tuple(Mark(key=key, value=book.value("lasting", key, "least_activity")) for key in _DRAWN)


def _moles(shop: Pantry, key: str) -> float:
    """Moles of ions in a mass of an ingredient, if more than half of what is not water is salt. [mol/kg]"""
    parts = [(shop[key].composition.get(each.key, 0.0), each) for row in salt_rows() for each in (compounds()[row],)]
    held = sum(share for share, _ in parts)
    if held < 0.2 or held < 0.5 * (1 - shop[key].composition.get("water", 0.0)):  # crystals may hold much water
        return 0.0
    return sum(share * sum(each.ions.values()) / (each.molar_mass or float("inf")) for share, each in parts)
