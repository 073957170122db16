"""A recipe as the file that would be read as it."""

from typing import Any

from lumped.dough.recipe import Portion, Recipe

__all__ = ["recipe_document"]


def recipe_document(recipe: Recipe) -> dict[str, Any]:
    """Give a recipe as the table of its file.

    Parameters
    ----------
    recipe : Recipe
        What goes in, and what is done with it.

    Returns
    -------
    dict
        What `read_recipe` reads; amounts stand in the words in which the recipe has them.

    Examples
    --------
    >>> from lumped.quantities import Value
    >>> salt = Portion(ingredient="table-salt", written="73 g", mass=Value.exact(0.073, "kg"))
    >>> document = recipe_document(Recipe(title="Plain", kind="conducting", portions=(salt,), cooked="pot"))
    >>> document["dough"], document["ingredients"]
    ('conducting', [{'ingredient': 'table-salt', 'amount': '73 g'}])
    """
    method: dict[str, Any] = {"cooked": recipe.cooked}
    if recipe.weighed_after is not None:
        method["weighed_after_g"] = _plain(1e3 * recipe.weighed_after)
    document = {
        "kind": "recipe", "schema": 1, "title": recipe.title, "dough": recipe.kind, "measures": recipe.measures,
        "temperature_degC": _plain(recipe.temperature - 273.15), "method": method,
        "ingredients": [_entry(each) for each in recipe.portions],
    }  # fmt: skip
    if recipe.invented:
        document["invented"] = True
    if recipe.steps:
        document["steps"] = list(recipe.steps)
    return document


def _entry(portion: Portion) -> dict[str, Any]:
    entry: dict[str, Any] = {"ingredient": portion.ingredient}
    if portion.mass.mean:
        entry["amount"] = portion.written
    if portion.as_needed is not None:
        entry["as_needed_g"] = [_plain(1e3 * end) for end in portion.as_needed]
    return entry


def _plain(number: float) -> float | int:
    """A number without the dust of the binary system, and without a point where it is whole."""
    rounded = round(number, 6)
    return int(rounded) if rounded.is_integer() else rounded
