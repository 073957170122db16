"""What a swap gives back: proposals with their numbers and reasons, or what stands in the way."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from lumped.dough.recipe import Recipe
from lumped.dough.swap.explaining import Reasoned
from lumped.dough.swap.wants import Wish
from lumped.dough.texture import Feel
from lumped.quantities import Value
from lumped.texts import say

__all__ = ["Blocker", "Change", "Proposal", "Swap"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What happens to one ingredient.

    Parameters
    ----------
    ingredient : str
        Its key.
    before, after : float
        Its mass, what is added by feel at its middle. [kg]
    written : str
        The amount in the new recipe, as a kitchen measures it; "" if it is gone.
    """

    ingredient: str
    before: float
    after: float
    written: str

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"ingredient": self.ingredient, "before_kg": self.before, "after_kg": self.after,
                "written": self.written}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """Another recipe.

    Parameters
    ----------
    recipe : Recipe
        The recipe, in kitchen measures.
    changes : tuple of Change
        What happens to each ingredient, those that stay as they are too.
    properties : mapping of str to Value
        What its dough has, by key of `PROPERTIES`. [unit of each]
    ratio : Value
        Its resistivity over the old one's. [1]
    beyond : mapping of str to float
        How far it is beyond what each requirement allows: 0, as every requirement is kept after rounding. [1]
    reasons : tuple of Reasoned
        What moves, and why.
    notes : tuple of str
        What to know.
    allergens, allergens_gone, allergens_new : tuple of str
        Allergens of both lists: those in it, those that left, those that came.
    traces : mapping of str to tuple of str
        What was refused and may be in it as traces, each with the keys of the ingredients that may bring it.
    rounding : mapping of str to float
        What rounding to measures changed of each property. [1]
    feel : Feel
        How it is expected to feel.
    cautions : tuple of str
        What to mind with it that the old recipe asked nobody to mind.
    money : str
        In what it costs; "" without prices.
    """

    recipe: Recipe
    changes: tuple[Change, ...]
    properties: Mapping[str, Value]
    ratio: Value
    beyond: Mapping[str, float]
    reasons: tuple[Reasoned, ...]
    notes: tuple[str, ...]
    allergens: tuple[str, ...]
    allergens_gone: tuple[str, ...]
    allergens_new: tuple[str, ...]
    traces: Mapping[str, tuple[str, ...]]
    rounding: Mapping[str, float]
    feel: Feel
    cautions: tuple[str, ...] = ()
    money: str = ""

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "title": self.recipe.title, "cooked": self.recipe.cooked, "measures": self.recipe.measures,
            "changes": [each.as_dict() for each in self.changes],
            "properties": {key: value.as_dict() for key, value in self.properties.items()},
            "resistivity_ratio": self.ratio.as_dict(), "beyond": dict(self.beyond),
            "reasons": [each.as_dict() for each in self.reasons], "notes": list(self.notes),
            "cautions": list(self.cautions),
            "allergens": list(self.allergens), "allergens_gone": list(self.allergens_gone),
            "allergens_new": list(self.allergens_new),
            "may_contain": {word: list(keys) for word, keys in self.traces.items()},
            "rounding": dict(self.rounding), "feel": self.feel.as_dict(), "money": self.money or None,
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Blocker:
    """A requirement that stands in the way.

    Parameters
    ----------
    requirement : str
        Which, one of `REQUIREMENTS` or a part of the wish.
    words : str
        What could be had without it, in a sentence.
    ingredients : tuple of str
        What that recipe would contain that is new.
    """

    requirement: str
    words: str
    ingredients: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"requirement": self.requirement, "words": self.words, "ingredients": list(self.ingredients)}


@dataclass(frozen=True, slots=True, kw_only=True)
class Swap:
    """What came of a wish.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it was.
    wish : Wish
        What was wanted.
    before : mapping of str to Value
        What the old dough has, by key of `PROPERTIES`. [unit of each]
    gone : tuple of str
        Ingredients that must leave.
    proposals : tuple of Proposal
        The best first; none if something stands in the way.
    blockers : tuple of Blocker
        What does, if there is no proposal; empty also if no single requirement does.
    money : str
        In what prices are given.
    unchanged : bool
        Whether nothing has to change.
    allergens : tuple of str
        Allergens of the recipe as it was.
    now : mapping of str to str
        Amount of each ingredient of the recipe as it was, in the measures of the proposals.
    feel : Feel
        How it is expected to feel as it was.
    names : mapping of str to str
        Name of each ingredient, old and new.
    """

    recipe: Recipe
    wish: Wish
    before: Mapping[str, Value]
    gone: tuple[str, ...]
    proposals: tuple[Proposal, ...]
    now: Mapping[str, str]
    feel: Feel
    blockers: tuple[Blocker, ...] = ()
    money: str = ""
    unchanged: bool = False
    allergens: tuple[str, ...] = ()
    names: Mapping[str, str] = field(default_factory=dict)

    def traces_words(self, proposal: Proposal) -> tuple[str, ...]:
        """Say what a proposal may contain as traces of what was refused."""
        return tuple(
            say("swap-traces", allergen=word, ingredients=", ".join(self.names[key] for key in keys))
            for word, keys in proposal.traces.items()
        )

    @property
    def shared_notes(self) -> tuple[str, ...]:
        """What is to be known of every proposal alike."""
        if len(self.proposals) < 2:
            return ()
        return tuple(note for note in self.proposals[0].notes if all(note in each.notes for each in self.proposals))

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "swap", "schema": 1, "title": self.recipe.title, "dough": self.recipe.kind,
            "gone": list(self.gone), "unchanged": self.unchanged, "money": self.money or None,
            "without": [*self.wish.classes, *self.wish.ingredients], "diets": list(self.wish.diets),
            "region": self.wish.region, "target": self.wish.target, "stove": self.wish.stove,
            "names": dict(self.names), "now": dict(self.now), "feel": self.feel.as_dict(),
            "allergens": list(self.allergens), "before": {key: value.as_dict() for key, value in self.before.items()},
            "proposals": [each.as_dict() for each in self.proposals],
            "blockers": [each.as_dict() for each in self.blockers],
        }  # fmt: skip
