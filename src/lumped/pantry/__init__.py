"""What a food shop sells, as a dough needs it: compounds that sum to one, weights of measures, who may touch it.

An ingredient's printed nutrients are composed into compounds, `Σ shares = 1`, so that mass, charge and elements close
in every dough. A pantry is a value: the handbook's ingredients and those a user added are handed to whoever computes.
"""

from lumped.pantry.ingredient import Ingredient
from lumped.pantry.pantry import Pantry, pantry
from lumped.pantry.prices import Price, price
from lumped.pantry.shops import Sold, sold
from lumped.pantry.where import Region, region, regions

__all__ = ["Ingredient", "Pantry", "Price", "Region", "Sold", "pantry", "price", "region", "regions", "sold"]
