"""A plain salt dough, and a shelf with a few ingredients only."""

from tests.bowls import recipe_of

from lumped.pantry import Pantry, pantry

SALT = {"plain-flour": 125, "tap-water": 237, "table-salt": 55}


def salt_dough():
    return recipe_of(SALT)


def shelf(*keys):
    return Pantry({key: pantry()[key] for key in dict.fromkeys(keys)})
