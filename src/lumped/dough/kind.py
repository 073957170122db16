"""What the notebook is told of recipes: how one is checked, and what names an ingredient of it."""

from pathlib import Path

from lumped.documents import checked
from lumped.dough.reading import RecipeFile, build_recipe
from lumped.errors import RecipeError
from lumped.notebook import Body, Kind

__all__ = ["RECIPE"]


def _check(body: Body, name: str) -> None:
    document = {"kind": "recipe", "schema": 1, **body}
    build_recipe(checked(RecipeFile, document, Path(name), failure=RecipeError), name)


RECIPE = Kind(name="recipe", schema=1, check=_check, keyed_by=("ingredient",))
"""Recipes; form 1 is the only one there was."""
