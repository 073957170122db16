"""Something else instead: what to do when a shop lacks an ingredient, or a child can't bear one.

A search over the pantry changes as little of a recipe as possible and keeps what matters, in this order: the texture's
window, carrying or blocking current, acidity, keeping, cost, limits. `Σ weight · beyond + Σ drift · d² + change` is
what stands against a recipe; proposals are rounded to kitchen measures and checked again.
"""

from lumped.dough.swap.results import Blocker, Change, Proposal, Swap
from lumped.dough.swap.swapping import swapped
from lumped.dough.swap.wants import CLASSES, TARGETS, Wish, is_of, read_wish

__all__ = ["CLASSES", "TARGETS", "Blocker", "Change", "Proposal", "Swap", "Wish", "is_of", "read_wish", "swapped"]
