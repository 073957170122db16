"""Broad regions of the world, for prices and shops."""

from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache

from lumped.errors import InputError
from lumped.quantities import Value
from lumped.reference import handbook

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
        near = get_close_matches(key, regions(), n=1) or [regions()[0]]
        raise InputError("pantry-no-region", region=key, near=near[0], known=", ".join(regions()))
    entry = handbook().entry("regions", key)
    return Region(
        key=key, name=entry.name, currency=entry.facts["currency"], level=entry.rows["level"].value,
        dated=entry.facts["dated"],
    )  # fmt: skip
