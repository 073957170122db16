"""Allergens: which are in a dough and through what, and which doughs must leave a table for somebody's sake."""

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal

from numpy.typing import ArrayLike

from lumped.dough.safety.contents import used
from lumped.errors import InputError
from lumped.pantry import Ingredient, Pantry
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Allergens", "Reason", "TableFit", "allergens_of", "fit_for_table", "has_gluten", "is_oats", "known_needs"]

_GLUTEN, _WHEAT, _NUTS = "cereals containing gluten", "wheat", ("tree nuts", "peanuts")
How = Literal["holds", "perhaps", ""]


@dataclass(frozen=True, slots=True, kw_only=True)
class Allergens:
    """The allergens of a dough, each with the ingredients that bring it.

    Parameters
    ----------
    eu, us : mapping of str to tuple of str
        Allergens of the European and of the American list, each with the keys of the ingredients that contain it.
    traces : mapping of str to tuple of str
        Allergens that may be in it as traces, apart from those that it contains.
    """

    eu: Mapping[str, tuple[str, ...]]
    us: Mapping[str, tuple[str, ...]]
    traces: Mapping[str, tuple[str, ...]]

    @property
    def names(self) -> tuple[str, ...]:
        """All that it contains, of either list."""
        return tuple(dict.fromkeys((*self.eu, *self.us)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """Why a dough must leave a table, or must be asked about.

    Parameters
    ----------
    dough : str
        Its name.
    need : str
        Whose need it is.
    ingredient : str
        Key of the ingredient that is why.
    certain : bool
        Whether the ingredient contains it; else it may.
    words : str
        The same in a sentence.
    """

    dough: str
    need: str
    ingredient: str
    certain: bool
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class TableFit:
    """Which doughs may stand on a table.

    Parameters
    ----------
    stays, asks, leaves : tuple of str
        Doughs that may stay as far as their ingredients tell, that somebody must ask about first, that must go.
    reasons : tuple of Reason
        Why, dough by dough.
    words : tuple of str
        What to do, in sentences.
    """

    stays: tuple[str, ...]
    asks: tuple[str, ...]
    leaves: tuple[str, ...]
    reasons: tuple[Reason, ...]
    words: tuple[str, ...]


def allergens_of(masses: Mapping[str, ArrayLike], pantry: Pantry) -> Allergens:
    """Name the allergens of a dough.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    pantry : Pantry
        What the ingredients are.

    Returns
    -------
    Allergens

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> found = allergens_of({"plain-flour": 0.125, "table-salt": 0.05}, pantry())
    >>> dict(found.eu), dict(found.us)
    ({'cereals containing gluten': ('plain-flour',)}, {'wheat': ('plain-flour',)})
    """
    keys = used(masses)
    eu = _by_name(keys, lambda key: pantry[key].allergens_eu)
    us = _by_name(keys, lambda key: pantry[key].allergens_us)
    traces = _by_name(keys, lambda key: pantry[key].may_contain)
    return Allergens(eu=eu, us=us, traces={name: traces[name] for name in traces if name not in eu and name not in us})


def _by_name(keys: tuple[str, ...], named: Callable[[str], tuple[str, ...]]) -> dict[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    for key in keys:
        for name in named(key):
            found[name] = (*found.get(name, ()), key)
    return found


@cache
def known_needs() -> tuple[str, ...]:
    """Name what somebody at a table may not be able to bear: coeliac disease, wheat, nuts, or a listed allergen.

    Examples
    --------
    >>> known_needs()[:3], "sesame" in known_needs()
    (('coeliac', 'wheat', 'nuts'), True)
    """
    lists = [handbook().entry("allergens", region).facts["names"] for region in ("eu", "us")]
    return tuple(dict.fromkeys(("coeliac", "wheat", "nuts", *(name for names in lists for name in names))))


def fit_for_table(doughs: Mapping[str, Mapping[str, ArrayLike]], needs: Collection[str], pantry: Pantry) -> TableFit:
    """Tell which doughs must leave a table.

    One child's need holds for the whole table: dough sticks to hands and hands go from dough to dough, and flour
    dust travels further still.

    Parameters
    ----------
    doughs : mapping of str to mapping of str to float
        Doughs by name, each with what went in of each ingredient. [kg]
    needs : collection of str
        What somebody at the table can't bear; see `known_needs`.
    pantry : Pantry
        What the ingredients are.

    Returns
    -------
    TableFit

    Raises
    ------
    InputError
        If a need is none that Lumped knows.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> doughs = {"salt dough": {"plain-flour": 0.125, "table-salt": 0.05}, "rice dough": {"rice-flour": 0.2}}
    >>> fit = fit_for_table(doughs, ["coeliac"], pantry())
    >>> fit.leaves, fit.reasons[0].ingredient
    (('salt dough',), 'plain-flour')
    """
    for need in needs:
        if need not in known_needs():
            raise InputError("safety-no-need", need=need, known=", ".join(known_needs()))
    reasons = tuple(
        _reason(dough, need, pantry[key], how)
        for dough, masses in doughs.items()
        for need in needs
        for key in used(masses)
        if (how := _borne(need, pantry[key]))
    )
    leaves = tuple(dough for dough in doughs if any(each.dough == dough and each.certain for each in reasons))
    doubted = {each.dough for each in reasons if each.dough not in leaves}
    return TableFit(
        stays=tuple(dough for dough in doughs if dough not in leaves and dough not in doubted),
        asks=tuple(dough for dough in doughs if dough in doubted),
        leaves=leaves, reasons=reasons, words=_words(needs, reasons, bool(leaves), pantry),
    )  # fmt: skip


def has_gluten(ingredient: Ingredient) -> bool:
    """Tell whether an ingredient contains gluten.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> has_gluten(pantry()["plain-flour"]), has_gluten(pantry()["rice-flour"])
    (True, False)
    """
    return _GLUTEN in ingredient.allergens_eu or "gluten" in ingredient.contains


def is_oats(ingredient: Ingredient) -> bool:
    """Tell whether an ingredient is made of oats.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> is_oats(pantry()["plain-flour"])
    False
    """
    words = f"{ingredient.key} {ingredient.name}".lower().replace("-", " ").split()
    return "oat" in words or "oats" in words or "oatmeal" in words


def _borne(need: str, ingredient: Ingredient) -> How:
    """Whether an ingredient holds what a need is about, perhaps holds it, or does not."""
    holds = set(ingredient.allergens_eu) | set(ingredient.allergens_us)
    traces = set(ingredient.may_contain)
    if need in ("coeliac", _GLUTEN):  # wheat without gluten: starch that is sold as gluten-free
        if has_gluten(ingredient):
            return "holds"
        return "perhaps" if _WHEAT in holds or traces & {_GLUTEN, _WHEAT, "gluten"} else ""
    if need == _WHEAT:  # barley, rye and oats hold gluten and no wheat, but grow and are milled beside it
        if _WHEAT in holds:
            return "holds"
        return "perhaps" if has_gluten(ingredient) or traces & {_WHEAT, _GLUTEN, "gluten"} else ""
    asked = set(_NUTS) if need == "nuts" else {need}
    return "holds" if asked & holds else "perhaps" if asked & traces else ""


def _reason(dough: str, need: str, ingredient: Ingredient, how: How) -> Reason:
    certain = how == "holds"
    slots = {"dough": dough, "ingredient": ingredient.name, "need": need_in_words(need)}
    words = say("safety-table-holds", **slots) if certain else say("safety-table-perhaps", **slots)
    return Reason(dough=dough, need=need, ingredient=ingredient.key, certain=certain, words=words)


def need_in_words(need: str) -> str:
    """Say a need as people do."""
    if need == "coeliac":
        return say("safety-need-coeliac")
    return say("safety-need-nuts") if need == "nuts" else say("safety-need-allergy", allergen=need)


def _words(needs: Collection[str], reasons: tuple[Reason, ...], some_leave: bool, pantry: Pantry) -> tuple[str, ...]:
    words = [say("safety-table-leave") if some_leave else say("safety-table-stay")] if needs else []
    if "coeliac" in needs:
        words.append(say("safety-table-coeliac", limit=f"{_gluten_limit():g}"))
    if _WHEAT in needs:
        words.append(say("safety-table-wheat"))
    if any(is_oats(pantry[each.ingredient]) for each in reasons if each.need in ("coeliac", _GLUTEN)):
        words.append(say("safety-table-oats", limit=f"{_gluten_limit():g}"))
    if any(_is_wheat_starch(pantry[each.ingredient]) for each in reasons if each.need in ("coeliac", _GLUTEN)):
        words.append(say("safety-table-starch", limit=f"{_gluten_limit():g}"))
    return (*words, say("safety-table-ask")) if needs else ()


def _is_wheat_starch(ingredient: Ingredient) -> bool:
    return _WHEAT in ingredient.allergens_us and "starch" in ingredient.name


def _gluten_limit() -> float:
    """Most gluten in food that is sold as gluten-free. [mg/kg]"""
    return handbook().row("limits", "gluten-free", "highest").printed
