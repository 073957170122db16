"""Doughs on a table and the children at it: which must go, which somebody must ask about, and what would mend it.

One child's need holds for the whole table: dough sticks to hands and hands go from dough to dough, and flour dust
travels further still.
"""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from numpy.typing import ArrayLike

from lumped.dough.safety.allergens import GLUTEN, NUTS, WHEAT, is_oats
from lumped.dough.safety.contents import used
from lumped.dough.safety.needs import How, borne, listed_allergens, need_in_words, need_named
from lumped.pantry import Ingredient, Pantry
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Mend", "Reason", "TableFit", "fit_for_table"]

_BY_DIET = {
    "coeliac": "no-gluten", GLUTEN: "no-gluten", **dict.fromkeys(("nuts", *NUTS), "no-nuts"), "corn": "no-corn",
    "vegan": "vegan",
}  # fmt: skip


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

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"dough": self.dough, "need": self.need, "ingredient": self.ingredient, "certain": self.certain,
                "words": self.words}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Mend:
    """What to look for instead of a dough that must leave, in the words that a swap takes.

    Parameters
    ----------
    dough : str
        Its name.
    diets, without : tuple of str
        Diets that the new dough must suit, and what must not be in it.
    """

    dough: str
    diets: tuple[str, ...]
    without: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"dough": self.dough, "diets": list(self.diets), "without": list(self.without)}


@dataclass(frozen=True, slots=True, kw_only=True)
class TableFit:
    """Which doughs may stand on a table.

    Parameters
    ----------
    needs : tuple of str
        What somebody at the table can't bear, each one of `known_needs`.
    stays, asks, leaves : tuple of str
        Doughs that may stay as far as their ingredients tell, that somebody must ask about first, that must go.
    reasons : tuple of Reason
        Why, dough by dough.
    mends : tuple of Mend
        What to look for instead of each that must go.
    words : tuple of str
        What to do, in sentences.
    """

    needs: tuple[str, ...]
    stays: tuple[str, ...]
    asks: tuple[str, ...]
    leaves: tuple[str, ...]
    reasons: tuple[Reason, ...]
    mends: tuple[Mend, ...]
    words: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "needs": [{"need": each, "words": need_in_words(each)} for each in self.needs],
            "stays": list(self.stays), "asks": list(self.asks), "leaves": list(self.leaves),
            "reasons": [each.as_dict() for each in self.reasons], "mends": [each.as_dict() for each in self.mends],
            "words": list(self.words),
        }  # fmt: skip


def fit_for_table(doughs: Mapping[str, Mapping[str, ArrayLike]], needs: Collection[str], pantry: Pantry) -> TableFit:
    """Tell which doughs must leave a table.

    Parameters
    ----------
    doughs : mapping of str to mapping of str to float
        Doughs by name, each with what went in of each ingredient. [kg]
    needs : collection of str
        What somebody at the table can't bear, as people write it; see `need_named`.
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
    >>> fit = fit_for_table(doughs, ["celiac"], pantry())
    >>> fit.leaves, fit.reasons[0].ingredient, fit.mends[0].diets
    (('salt dough',), 'plain-flour', ('no-gluten',))
    """
    meant = tuple(dict.fromkeys(need_named(each) for each in needs))
    reasons = tuple(
        _reason(dough, need, pantry[key], how)
        for dough, masses in doughs.items()
        for need in meant
        for key in used(masses)
        if (how := borne(need, pantry[key]))
    )
    leaves = tuple(dough for dough in doughs if any(each.dough == dough and each.certain for each in reasons))
    doubted = {each.dough for each in reasons if each.dough not in leaves}
    return TableFit(
        needs=meant, leaves=leaves, asks=tuple(dough for dough in doughs if dough in doubted),
        stays=tuple(dough for dough in doughs if dough not in leaves and dough not in doubted),
        reasons=reasons, mends=tuple(_mend(dough, meant, reasons) for dough in leaves),
        words=_words(meant, reasons, pantry),
    )  # fmt: skip


def _reason(dough: str, need: str, ingredient: Ingredient, how: How) -> Reason:
    certain = how == "holds"
    slots = {"dough": dough, "ingredient": ingredient.name, "need": need_in_words(need)}
    words = say("safety-table-holds", **slots) if certain else say("safety-table-perhaps", **slots)
    return Reason(dough=dough, need=need, ingredient=ingredient.key, certain=certain, words=words)


def _mend(dough: str, needs: Iterable[str], reasons: Iterable[Reason]) -> Mend:
    """Say what a swap must look for: every need at the table, lest it bring another's trouble in."""
    listed = [need for need in needs if need in listed_allergens() and need not in _BY_DIET]
    diets = dict.fromkeys(_BY_DIET[need] for need in needs if need in _BY_DIET)
    wrong = [each for each in reasons if each.dough == dough and each.certain]
    others = [each.ingredient for each in wrong if each.need not in _BY_DIET and each.need not in listed]
    return Mend(dough=dough, diets=tuple(diets), without=tuple(dict.fromkeys((*listed, *others))))


def _words(needs: Collection[str], reasons: tuple[Reason, ...], pantry: Pantry) -> tuple[str, ...]:
    """Say what it means for the whole table."""
    if not needs:
        return ()
    some_leave = any(each.certain for each in reasons)
    words = [say("safety-table-leave") if some_leave else say("safety-table-stay")]
    gluten = [pantry[each.ingredient] for each in reasons if each.need in ("coeliac", GLUTEN)]
    if {"coeliac", GLUTEN} & set(needs):
        words.append(say("safety-table-coeliac", limit=f"{_gluten_limit():g}"))
    if any(is_oats(each) for each in gluten):
        words.append(say("safety-table-oats", limit=f"{_gluten_limit():g}"))
    if any(WHEAT in each.allergens_us and "starch" in each.name for each in gluten):
        words.append(say("safety-table-starch", limit=f"{_gluten_limit():g}"))
    if WHEAT in needs:
        words.append(say("safety-table-wheat"))
    if {"nuts", *NUTS} & set(needs):
        words.append(say("safety-table-nuts"))
    if "corn" in needs:
        words.append(say("safety-table-corn"))
    if "vegan" in needs:
        words.append(say("safety-table-vegan"))
    return (*words, say("safety-table-ask"))


def _gluten_limit() -> float:
    """Most gluten in food that is sold as gluten-free. [mg/kg]"""
    return handbook().row("limits", "gluten-free", "highest").printed
