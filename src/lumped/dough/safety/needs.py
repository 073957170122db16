"""Needs of children at a table: the words that people use for them, and what an ingredient means for each.

A need is coeliac disease, an allergen of the European or the American list, nuts or shellfish of any kind, corn, a
vegan life, or one of a few foods that no list names; those are told by an ingredient's name.
"""

from collections.abc import Mapping
from difflib import get_close_matches
from functools import cache
from typing import Literal

from lumped.dough.safety.allergens import GLUTEN, NUTS, WHEAT, has_gluten
from lumped.dough.safety.diets import met_by
from lumped.errors import InputError
from lumped.pantry import Ingredient
from lumped.reference import handbook
from lumped.texts import say
from lumped.texts.folding import plain_word

__all__ = ["How", "borne", "diet_named", "known_needs", "listed_allergens", "need_in_words", "need_named"]

How = Literal["holds", "perhaps", ""]
_BEFORE = ("no ", "allergic to ", "allergy to ", "without ", "free of ")
_AFTER = (" allergy", " allergies", " free", " intolerance", " intolerant", " disease")
_DIETS = {"corn": "no corn", "vegan": "vegan"}
_ANSWERED = {"coeliac": "no gluten", GLUTEN: "no gluten", "nuts": "no nuts", **_DIETS}
_SAID = ("gluten-free", "no-nuts", "no-corn", "vegan")
_SHELLFISH = {"crustaceans", "crustacean shellfish", "molluscs"}
_GROUPS = {"nuts": set(NUTS), "shellfish": _SHELLFISH, "crustaceans": _SHELLFISH - {"molluscs"}}


@cache
def listed_allergens() -> tuple[str, ...]:
    """Name the allergens of the European and the American list.

    Examples
    --------
    >>> len(listed_allergens()), "lupin" in listed_allergens()
    (16, True)
    """
    lists = [handbook().entry("allergens", region).facts["names"] for region in ("eu", "us")]
    return tuple(dict.fromkeys(name for names in lists for name in names))


@cache
def known_needs() -> tuple[str, ...]:
    """Name the needs that Lumped knows.

    Examples
    --------
    >>> known_needs()[:5], "sesame" in known_needs()
    (('coeliac', 'wheat', 'nuts', 'corn', 'vegan'), True)
    """
    listed = [name for name in listed_allergens() if name != "crustacean shellfish"]  # crustaceans, said twice
    return tuple(dict.fromkeys(("coeliac", WHEAT, "nuts", "corn", "vegan", *listed, "shellfish", *_by_name())))


def need_named(word: str) -> str:
    """Tell which need a word means, as people write it.

    Parameters
    ----------
    word : str
        "celiac", "peanut allergy", "dairy-free", "no corn", …

    Returns
    -------
    str
        One of `known_needs`.

    Raises
    ------
    InputError
        If it means none; the sentence names the nearest.

    Examples
    --------
    >>> need_named("Celiac"), need_named("peanut allergy"), need_named("dairy-free"), need_named("maize")
    ('coeliac', 'peanuts', 'milk', 'corn')
    """
    asked, words = _bare(plain_word(word)), _words()
    for each in (asked, f"{asked}s", asked.removesuffix("s")):
        if each in words:
            return words[each]
    near = dict.fromkeys(words[each] for each in get_close_matches(asked, words, n=3, cutoff=0.7))
    if near:
        raise InputError("safety-need-near", need=word, near=", ".join(near))
    raise InputError("safety-no-need", need=word, known=", ".join(known_needs()))


def diet_named(word: str) -> str:
    """Tell which diet a word means, by the words of `need_named`; the need itself where no diet answers it.

    Raises
    ------
    InputError
        If it means none; the sentence names the nearest.

    Examples
    --------
    >>> diet_named("gluten-free"), diet_named("celiac"), diet_named("nut allergy"), diet_named("dairy-free")
    ('no gluten', 'no gluten', 'no nuts', 'milk')
    """
    try:
        need = need_named(word)
    except InputError:
        near = get_close_matches(plain_word(word)[:80], _SAID, n=2, cutoff=0.7)
        if near:
            raise InputError("safety-diet-near", diet=word[:80], near=", ".join(near)) from None
        raise InputError("safety-no-diet", diet=word[:80], known=", ".join(_SAID)) from None
    return _ANSWERED.get(need, need)


def _bare(asked: str) -> str:
    for start in _BEFORE:
        asked = asked.removeprefix(start)
    for end in _AFTER:
        asked = asked.removesuffix(end)
    return asked


@cache
def _words() -> dict[str, str]:
    """Needs by what they are called, as `plain_word` writes it."""
    facts = handbook().entry("allergens", "needs").facts
    return {plain_word(each): each for each in known_needs()} | {plain_word(k): v for k, v in facts["words"].items()}


@cache
def _by_name() -> Mapping[str, tuple[str, ...]]:
    """Needs that no list of allergens names, each with words that an ingredient's name then has."""
    return {key: tuple(each) for key, each in handbook().entry("allergens", "needs").facts["by_name"].items()}


def borne(need: str, ingredient: Ingredient) -> How:
    """Tell whether an ingredient holds what a need is about, perhaps holds it, or does not.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [borne("coeliac", pantry()[key]) for key in ("plain-flour", "rice-flour", "alum")]
    ['holds', 'perhaps', '']
    """
    if need in ("coeliac", GLUTEN, WHEAT):
        return _cereal(need, ingredient)
    if need in _DIETS:
        met: dict[str, How] = {"wrong": "holds", "doubtful": "perhaps", "right": ""}
        return met[met_by(ingredient, _DIETS[need])]
    if need in _by_name():
        named = set(plain_word(f"{ingredient.key} {ingredient.name}").split())
        return "holds" if named & set(_by_name()[need]) else ""
    asked = _GROUPS.get(need, {need})
    if asked & {*ingredient.allergens_eu, *ingredient.allergens_us}:
        return "holds"
    return "perhaps" if asked & set(ingredient.may_contain) else ""


def _cereal(need: str, ingredient: Ingredient) -> How:
    """Tell gluten and wheat apart: barley, rye and oats hold gluten and no wheat, but grow and are milled beside it."""
    is_wheat, gluten = WHEAT in ingredient.allergens_us or WHEAT in ingredient.allergens_eu, has_gluten(ingredient)
    if is_wheat if need == WHEAT else gluten:
        return "holds"
    return "perhaps" if is_wheat or gluten or {GLUTEN, WHEAT, "gluten"} & set(ingredient.may_contain) else ""


def need_in_words(need: str) -> str:
    """Say a need as people do.

    Examples
    --------
    >>> need_in_words("coeliac"), need_in_words("milk")
    ('coeliac disease', 'an allergy to milk')
    """
    if need in ("coeliac", "nuts", "vegan", "shellfish"):
        return say(f"safety-need-{need}")
    return say("safety-need-gluten") if need == GLUTEN else say("safety-need-allergy", allergen=need)
