"""From people to dough: how much, in which pots, how long, what it costs, what to buy.

Dough goes by groups, `Σ groups · lumps · lump(age)`; a recipe scales as a whole until its cooked dough weighs so much;
stove, hands and cooling are clocks whose figures are from memory, so all of them are intervals.
"""

from lumped.workshop.batches import Batches, batches_of, scaled_to
from lumped.workshop.cost import Cost, cost_of
from lumped.workshop.making import Making, make_dough, wanted_mass
from lumped.workshop.people import Party, dough_for, lump_of_age, read_party
from lumped.workshop.shopping import Shopping, shopping_list
from lumped.workshop.within import Option, options_within

__all__ = [
    "Batches",
    "Cost",
    "Making",
    "Option",
    "Party",
    "Shopping",
    "batches_of",
    "cost_of",
    "dough_for",
    "lump_of_age",
    "make_dough",
    "options_within",
    "read_party",
    "scaled_to",
    "shopping_list",
    "wanted_mass",
]
