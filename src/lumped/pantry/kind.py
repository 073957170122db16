"""What the notebook is told of ingredients that a user adds: how one is checked."""

from lumped.notebook import Body, Kind
from lumped.pantry.label_file import labelled_from

__all__ = ["INGREDIENT"]


def _check(body: Body, name: str) -> None:
    labelled_from({"kind": "ingredient", "schema": 1, **body}, name)


INGREDIENT = Kind(name="ingredient", schema=1, check=_check)
"""Ingredients from a packet's label; form 1 is the only one there was."""
