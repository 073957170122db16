"""Allergens: which are in a dough, and through what."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from numpy.typing import ArrayLike

from lumped.dough.safety.contents import used
from lumped.pantry import Ingredient, Pantry

__all__ = ["GLUTEN", "NUTS", "WHEAT", "Allergens", "allergens_of", "has_gluten", "is_oats"]

GLUTEN, WHEAT, NUTS = "cereals containing gluten", "wheat", ("tree nuts", "peanuts")


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

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        lists = {"eu": self.eu, "us": self.us, "traces": self.traces}
        return {which: {name: list(keys) for name, keys in there.items()} for which, there in lists.items()}


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


def has_gluten(ingredient: Ingredient) -> bool:
    """Tell whether an ingredient contains gluten.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> has_gluten(pantry()["plain-flour"]), has_gluten(pantry()["rice-flour"])
    (True, False)
    """
    return GLUTEN in ingredient.allergens_eu or "gluten" in ingredient.contains


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
