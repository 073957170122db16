"""Diets: whether a dough suits one, and why not; and remarks without a verdict where faith asks."""

import datetime
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any, Literal, NamedTuple

from numpy.typing import ArrayLike

from lumped.dough.safety.allergens import has_gluten
from lumped.dough.safety.contents import used
from lumped.errors import InputError
from lumped.pantry import Ingredient, Pantry
from lumped.quantities import Status
from lumped.texts import has, say

__all__ = ["DIETS", "Met", "Remark", "Suits", "met_by", "remarks_on", "suits"]

Met = Literal["right", "doubtful", "wrong"]

_NUTS = {"tree nuts", "peanuts"}
_ANIMAL = {"crustacean shellfish", "crustaceans", "eggs", "fish", "milk", "molluscs"}
_OF_CORN = ("corn-ferment", "corn-perhaps")  # remarks on where an ingredient comes from
_OF_ANIMALS = ("colour-origin", "fat-origin", "glycerine-origin", "sugar-char")
_WRITTEN = datetime.date(2026, 11, 26)  # when the remarks below were written, from memory


class Suits(NamedTuple):
    """Whether a dough suits a diet, and why or why not in a sentence."""

    fits: bool
    why: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark:
    """Something that a person of some faith may want to ask; no verdict.

    Parameters
    ----------
    key : str
        Which remark.
    ingredient : str
        Key of the ingredient that it is about.
    words : str
        The remark.
    status : Status
        What it is worth.
    written : date
        When it was written.
    """

    key: str
    ingredient: str
    words: str
    status: Status
    written: datetime.date

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"key": self.key, "ingredient": self.ingredient, "words": self.words, "status": self.status.value,
                "written": self.written.isoformat()}  # fmt: skip


def _holds(*names: str) -> Callable[[Ingredient], bool]:
    return lambda ingredient: bool(set(names) & {*ingredient.allergens_eu, *ingredient.allergens_us})


def _may_hold(*names: str) -> Callable[[Ingredient], bool]:
    """Whether one of these may be in it: as traces, or because of where it comes from."""
    return lambda ingredient: bool(set(names) & {*ingredient.may_contain, *ingredient.notes})


_DIETS: dict[str, tuple[Callable[[Ingredient], bool], Callable[[Ingredient], bool]]] = {
    # diet: (what an ingredient must not be, what it had better not be)
    "no gluten": (has_gluten, _may_hold("cereals containing gluten", "wheat", "gluten")),
    "no nuts": (_holds(*_NUTS), _may_hold(*_NUTS)),
    "no corn": (lambda ingredient: "corn" in ingredient.contains, _may_hold("corn", *_OF_CORN)),
    "vegan": (
        lambda ingredient: "animal" in ingredient.contains or _holds(*_ANIMAL)(ingredient),
        _may_hold("animal", *_ANIMAL, *_OF_ANIMALS),
    ),
}
DIETS = tuple(_DIETS)


def suits(masses: Mapping[str, ArrayLike], pantry: Pantry, diet: str) -> Suits:
    """Tell whether a dough suits a diet.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    pantry : Pantry
        What the ingredients are.
    diet : {"no gluten", "no nuts", "no corn", "vegan"}
        The diet.

    Returns
    -------
    Suits
        Whether it fits, and why; where traces are possible it fits and the sentence says where to look.

    Raises
    ------
    InputError
        If there is no such diet.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> fits, why = suits({"plain-flour": 0.125}, pantry(), "no gluten")
    >>> fits, why
    (False, 'Does not suit “no gluten”, because of plain wheat flour.')
    """
    if diet not in _DIETS:
        near = get_close_matches(diet[:40].casefold(), DIETS, n=2, cutoff=0.7)
        if near:
            raise InputError("safety-diet-near", diet=diet, near=", ".join(near))
        raise InputError("safety-no-diet", diet=diet, known=", ".join(DIETS))
    met = {pantry[key].name: met_by(pantry[key], diet) for key in used(masses)}
    wrong = [name for name, each in met.items() if each == "wrong"]
    doubtful = [name for name, each in met.items() if each == "doubtful"]
    if wrong:
        return Suits(False, say("safety-diet-wrong", diet=diet, ingredients=", ".join(wrong)))
    if doubtful:
        return Suits(True, say("safety-diet-doubtful", diet=diet, ingredients=", ".join(doubtful)))
    return Suits(True, say("safety-diet-suits", diet=diet))


def met_by(ingredient: Ingredient, diet: str) -> Met:
    """Tell whether an ingredient suits a diet, surely not, or only perhaps.

    Parameters
    ----------
    ingredient : Ingredient
        The ingredient.
    diet : {"no gluten", "no nuts", "no corn", "vegan"}
        The diet.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> met_by(pantry()["cornstarch"], "no corn"), met_by(pantry()["citric-acid"], "no corn")
    ('wrong', 'doubtful')
    """
    must_not, better_not = _DIETS[diet]
    return "wrong" if must_not(ingredient) else "doubtful" if better_not(ingredient) else "right"


def remarks_on(masses: Mapping[str, ArrayLike], pantry: Pantry) -> tuple[Remark, ...]:
    """Give the remarks on a dough's ingredients where faith may ask; they judge nothing.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    pantry : Pantry
        What the ingredients are.

    Returns
    -------
    tuple of Remark

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> remarks_on({"table-salt": 0.05}, pantry())
    ()
    """
    return tuple(
        Remark(key=note, ingredient=key, words=_words(note, pantry[key].name), status=Status.FROM_MEMORY,
               written=_WRITTEN)
        for key in used(masses)
        for note in pantry[key].notes
    )  # fmt: skip


def _words(note: str, ingredient: str) -> str:
    key = f"safety-remark-{note}"
    text = say(key, ingredient=ingredient) if has(key) else say("safety-remark-other", ingredient=ingredient)
    return f"{text} {say('safety-remark-written', date=_WRITTEN.isoformat())}"
