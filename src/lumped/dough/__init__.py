"""From what was weighed into the bowl to the resistivity of the dough, and the reasons between.

A recipe's mass balance gives the liquid: free water with what dissolves in it; its conductivity and its share of the
volume give the dough's, `σ = σ_liquid · obstruction(φ)`. Every figure is an interval, because nobody measured the
batch; a measured dough, and one that nobody knows, are doughs too.
"""

from lumped.dough.kneading import knead
from lumped.dough.known import WAYS_TO_MEASURE, measured_dough, unknown_dough
from lumped.dough.material import Dough, Reason
from lumped.dough.reading import read_recipe, recipe_schema
from lumped.dough.recipe import Portion, Recipe

__all__ = [
    "WAYS_TO_MEASURE",
    "Dough",
    "Portion",
    "Reason",
    "Recipe",
    "knead",
    "measured_dough",
    "read_recipe",
    "recipe_schema",
    "unknown_dough",
]
