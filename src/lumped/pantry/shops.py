"""Where an ingredient is sold, by region, and how much trouble that is."""

from dataclasses import dataclass
from functools import cache
from typing import Literal

from lumped.pantry.where import region
from lumped.quantities import Provenance, Status
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["PLACES", "Sold", "sold"]

Trouble = Literal["none", "another shop", "an order", "a search"]
PLACES: dict[str, Trouble] = {
    "tap": "none", "supermarket": "none", "baking shelf": "none",
    "health-food shop": "another shop", "pharmacy": "another shop", "asian grocer": "another shop",
    "hardware shop": "another shop", "online": "an order", "unusual": "a search", "unknown": "a search",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Sold:
    """Where an ingredient is sold.

    Parameters
    ----------
    place : str
        One of `PLACES`.
    trouble : {"none", "another shop", "an order", "a search"}
        What it takes beyond a trip to the supermarket, the least first.
    words : str
        The same in words.
    provenance : Provenance
        Where this comes from.
    """

    place: str
    trouble: Trouble
    words: str
    provenance: Provenance


@cache
def sold(ingredient: str, where: str) -> Sold:
    """Tell where an ingredient is sold.

    Parameters
    ----------
    ingredient : str
        Its key; "unknown" is the answer for one that the handbook does not know.
    where : str
        Key of the region.

    Returns
    -------
    Sold

    Raises
    ------
    InputError
        If there is no such region.

    Examples
    --------
    >>> sold("potato-starch", "japan").words, sold("potato-starch", "uk-ireland").trouble
    ('in any supermarket', 'an order')
    """
    place = region(where)
    facts = handbook().entry("shops", ingredient).facts if ingredient in handbook().keys("shops") else {}
    found = facts.get("elsewhere", {}).get(place.key, facts.get("usual", "unknown"))
    return Sold(
        place=found, trouble=PLACES[found], words=say(f"pantry-place-{found.replace(' ', '-')}"),
        provenance=Provenance(status=Status(facts.get("status", "from memory"))),
    )  # fmt: skip
