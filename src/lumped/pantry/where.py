"""Broad regions of the world, for prices and shops."""

from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache

from lumped.errors import InputError
from lumped.quantities import Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Region", "region", "regions"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Region:
    """A broad region.

    Parameters
    ----------
    key, name : str
        What programs and people call it.
    currency : str
        Three letters of its currency, or of a common one in it (ISO 4217).
    level : Value
        What a basket of groceries that costs one euro in Europe costs there. [currency]
    dated : str
        The year of that figure.
    """

    key: str
    name: str
    currency: str
    level: Value
    dated: str


def regions() -> tuple[str, ...]:
    """Give the keys of all regions.

    Examples
    --------
    >>> regions()[:3]
    ('north-america', 'latin-america', 'uk-ireland')
    """
    return handbook().keys("regions")


@cache
def region(key: str) -> Region:
    """Look a region up.

    Parameters
    ----------
    key : str
        Its key.

    Returns
    -------
    Region

    Raises
    ------
    InputError
        If there is none of that key; the sentence names all.

    Examples
    --------
    >>> region("japan").currency
    'JPY'
    """
    if key not in regions():
        near = _nearest(key)
        hint = f"{say('pantry-region-near', near=near)} " if near else ""
        raise InputError("pantry-no-region", region=key[:40], hint=hint, known=", ".join(regions()))
    entry = handbook().entry("regions", key)
    return Region(
        key=key, name=entry.name, currency=entry.facts["currency"], level=entry.rows["level"].value,
        dated=entry.facts["dated"],
    )  # fmt: skip


def _nearest(word: str) -> str:
    """Give the region that is meant by a name, or by that of a country in it; "" if none looks like it."""
    meant = {key: key for key in regions()}
    for key in regions():
        entry = handbook().entry("regions", key)
        meant |= dict.fromkeys([entry.name.casefold(), *entry.facts["also"]], key)
    near = get_close_matches(word.strip().casefold(), meant, n=1, cutoff=0.75)
    return meant[near[0]] if near else ""
