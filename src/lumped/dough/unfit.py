"""What to say first of a recipe whose dough is none, or does the opposite of what it is for."""

from lumped.dough.kneading import Kneading
from lumped.dough.material import Answer, Kind, answer_of
from lumped.dough.texture import feel_of
from lumped.texts import say

__all__ = ["OPPOSITE", "unfit_words"]

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
    feel = feel_of(done.recipe, done.chain, done.value(done.chain.hydration, ""))
    if not feel.is_dough:
        return (feel.words,)
    resistivity = done.value(done.chain.resistivity, "Ω·m")
    if answer_of(resistivity) == OPPOSITE[done.recipe.kind]:
        return (say(f"dough-unfit-{done.recipe.kind}", resistivity=resistivity.text()),)
    return ()
