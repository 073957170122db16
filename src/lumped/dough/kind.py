"""What the notebook is told of recipes and batches: how one is checked, and what names an ingredient of it."""

from pathlib import Path

from lumped.documents import checked
from lumped.dough.batch import BatchFile, measured_value
from lumped.dough.reading import RecipeFile, build_recipe
from lumped.errors import RecipeError
from lumped.notebook import Body, Kind

__all__ = ["BATCH", "RECIPE"]


def _check_recipe(body: Body, name: str) -> None:
    """See that it can be read; an ingredient that the handbook lacks may be somebody's own, a document of its own."""
    file = checked(RecipeFile, {"kind": "recipe", "schema": 1, **body}, Path(name), failure=RecipeError)
    try:
        build_recipe(file, name)
    except RecipeError as problem:
        if problem.code != "recipe-no-ingredient":
            raise


def _check_batch(body: Body, name: str) -> None:
    """See that it can be read, and that its measurement is one; its recipe is a document of its own."""
    measured_value(checked(BatchFile, {"kind": "batch", "schema": 1, **body}, Path(name), failure=RecipeError))


RECIPE = Kind(name="recipe", schema=1, check=_check_recipe, keyed_by=("ingredient",))
"""Recipes; form 1 is the only one there was."""
BATCH = Kind(name="batch", schema=1, check=_check_batch, keyed_by=("ingredient",))
"""Batches; form 1 is the only one there was."""
