"""What a food shop sells, as a dough needs it: compounds that sum to one, weights of measures, who may touch it.

An ingredient's printed nutrients are composed into compounds, `Σ shares = 1`, so that mass, charge and elements close
in every dough. A pantry is a value: the handbook's ingredients and those a user added are handed to whoever computes.
"""

from lumped.pantry.ingredient import Ingredient
from lumped.pantry.pantry import Pantry, pantry

__all__ = ["Ingredient", "Pantry", "pantry"]
