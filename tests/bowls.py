"""Doughs kneaded in one line."""

from lumped.dough import Portion, Recipe, knead
from lumped.quantities import Value

CONDUCTING = {"plain-flour": 125, "tap-water": 237, "vegetable-oil": 13.6, "cream-of-tartar": 9}
INSULATING = {"plain-flour": 150, "granulated-sugar": 100, "distilled-water": 70, "vegetable-oil": 41}


def recipe_of(grams, kind="conducting", cooked="pot", **more):
    portions = tuple(
        Portion(ingredient=key, written=f"{amount} g", mass=Value.exact(amount / 1e3, "kg"))
        for key, amount in grams.items()
    )
    return Recipe(title="dough", kind=kind, portions=portions, cooked=cooked, **more)


def kneaded(grams, kind="conducting", cooked="pot", **more):
    return knead(recipe_of(grams, kind, cooked, **more))


def insulating(grams):
    return kneaded(grams, "insulating", "not cooked")
