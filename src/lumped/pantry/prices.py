"""What an ingredient costs in a region, in small packs, and which packs there are.

Where the handbook has no figure for a region, the European one is taken times the region's level of prices; the
spreads of both add as independent factors, `s² = s₁² + s₂²`. All figures are from memory, and dated.
"""

from dataclasses import dataclass
from functools import cache
from math import exp, hypot, log

from lumped.pantry.where import Region, region
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook
from lumped.reference.rows import Entry

__all__ = ["Price", "paid", "price"]

_BASE = "eur_per_kg"
_GRAMS_PER_KG = 1000


@dataclass(frozen=True, slots=True, kw_only=True)
class Price:
    """What an ingredient costs.

    Parameters
    ----------
    ingredient, region : str
        Their keys.
    currency : str
        Three letters (ISO 4217).
    per_mass : Value
        Price by mass in small packs. [currency/kg]
    packs : tuple of float
        What usual packs hold, the smallest first. [kg]
    dated : str
        The year of the figures; "" where somebody paid it.
    worked_out : bool
        Whether it was worked out from the European price, for want of a figure.
    """

    ingredient: str
    region: str
    currency: str
    per_mass: Value
    packs: tuple[float, ...]
    dated: str
    worked_out: bool


@cache
def price(ingredient: str, where: str) -> Price | None:
    """Give what an ingredient costs in a region.

    Parameters
    ----------
    ingredient : str
        Its key in the handbook.
    where : str
        Key of the region.

    Returns
    -------
    Price or None
        None where the handbook knows no price, such as that of a user's own ingredient.

    Raises
    ------
    InputError
        If there is no such region.

    Examples
    --------
    >>> found = price("table-salt", "north-america")
    >>> found.per_mass.text(), found.packs, found.dated
    ('1.30 USD/kg (0.70 to 2.50)', (0.737,), '2024')
    """
    place = region(where)
    if ingredient not in handbook().keys("prices"):
        return None
    entry = handbook().entry("prices", ingredient)
    own = f"{place.currency.lower()}_per_kg"
    return Price(
        ingredient=ingredient, region=where, currency=place.currency,
        per_mass=_in(place.currency, entry.rows[own].value) if own in entry.rows else _worked_out(entry, place),
        packs=_packs(entry, where), dated=min(entry.facts["dated"], place.dated), worked_out=own not in entry.rows,
    )  # fmt: skip


def paid(ingredient: str, where: str, *, pack: float, money: float) -> Price:
    """Give the price that somebody paid for a packet in a region; no other packet and no other region is known.

    Parameters
    ----------
    ingredient, where : str
        Their keys.
    pack : float
        What the packet holds. [kg]
    money : float
        What it cost, in the region's money.

    Raises
    ------
    InputError
        If there is no such region.

    Examples
    --------
    >>> paid("our-salt", "europe", pack=0.5, money=0.4).per_mass.text()
    '0.80 EUR/kg'
    """
    currency = region(where).currency
    per_mass = Value.exact(money / pack, f"{currency}/kg", Provenance(status=Status.LABEL))
    return Price(
        ingredient=ingredient, region=where, currency=currency, per_mass=per_mass, packs=(pack,), dated="",
        worked_out=False,
    )  # fmt: skip


def _packs(entry: Entry, where: str) -> tuple[float, ...]:
    grams = entry.facts.get(f"packs_{where.replace('-', '_')}_g", entry.facts["packs_g"])
    return tuple(sorted(each / _GRAMS_PER_KG for each in grams))


def _in(currency: str, value: Value) -> Value:
    return Value(
        mean=value.mean, low=value.low, high=value.high, unit=f"{currency}/kg", provenance=value.provenance,
        spread=value.spread,
    )  # fmt: skip


def _worked_out(entry: Entry, place: Region) -> Value:
    base, level = entry.rows[_BASE].value, place.level
    mean = base.mean * level.mean
    below = exp(hypot(log(base.low / base.mean), log(level.low / level.mean)))
    above = exp(hypot(log(base.high / base.mean), log(level.high / level.mean)))
    return Value(
        mean=mean, low=mean / below, high=mean * above, unit=f"{place.currency}/kg", spread="lognormal",
        provenance=Provenance.of([base.provenance, level.provenance]),
    )  # fmt: skip
