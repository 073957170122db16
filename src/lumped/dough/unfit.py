"""What to say first of a recipe whose dough is none, or does the opposite of what it is for."""

from typing import Literal

from lumped.dough.kneading import Kneading
from lumped.dough.material import Answer, Kind, answer_of
from lumped.dough.texture import Feel, feel_of
from lumped.quantities import Value
from lumped.texts import say

__all__ = ["OPPOSITE", "Standing", "standing", "standing_of", "unfit_words"]

Standing = Literal["sound", "none", "opposite"]

OPPOSITE: dict[Kind, Answer] = {"conducting": "blocks", "insulating": "carries"}


def unfit_words(done: Kneading) -> tuple[str, ...]:
    """Say that it is no dough, or else that it does the opposite of what it is for; nothing of a sound dough.

    Examples
    --------
    >>> from lumped.dough import Portion, Recipe
    >>> from lumped.dough.kneading import kneading
    >>> from lumped.quantities import Value
    >>> dry = Recipe(title="Dry", kind="conducting", cooked="pot", portions=tuple(
    ...     Portion(ingredient=key, written="", mass=Value.exact(0.1, "kg")) for key in ("plain-flour", "table-salt")))
    >>> unfit_words(kneading(dry))[0].startswith("This is no dough: ")
    True
    """
    stands = standing_of(done)
    if stands == "none":
        return (_feel(done).words,)
    if stands == "opposite":
        return (say(f"dough-unfit-{done.recipe.kind}", resistivity=_resistivity(done).text()),)
    return ()


def standing_of(done: Kneading) -> Standing:
    """Tell whether it is no dough ("none"), does the opposite of what it is for, or is sound."""
    return standing(done.recipe.kind, _feel(done), _resistivity(done))


def standing(kind: Kind, feel: Feel, resistivity: Value) -> Standing:
    """Tell the same of a dough whose feel and resistivity are known. [Ω·m]"""
    if not feel.is_dough:
        return "none"
    return "opposite" if answer_of(resistivity) == OPPOSITE[kind] else "sound"


def _feel(done: Kneading) -> Feel:
    return feel_of(done.recipe, done.chain, done.value(done.chain.hydration, "", "hydration"), shop=done.shop)


def _resistivity(done: Kneading) -> Value:
    return done.value(done.chain.resistivity, "Ω·m", "resistivity")
