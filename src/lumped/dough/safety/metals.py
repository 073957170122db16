"""Aluminium and boron in a dough against what may migrate from a toy, if all of it migrated: the worst case.

An ingredient may be drier than the table says, and a spoon fuller: each is taken at its most.

The law limits what acid draws out of a toy, which is less than all; so a dough whose whole amount is below a limit is
below it, as long as it does not dry, and one above it may be. `amount = limit · M(compound) / M(element)`.
"""

import datetime
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from lumped.chemistry.compounds import atoms_of, molar_mass_of
from lumped.dough.safety.contents import bringers, element_share, origin_of, parched
from lumped.errors import InputError
from lumped.pantry import Pantry
from lumped.quantities import Provenance, Value, short_text
from lumped.reference import Entry, handbook
from lumped.texts import say

__all__ = ["ELEMENTS", "Migration", "amount_at_limit", "limit_rows", "limits_on", "migration"]

Category = Literal["category_1", "category_2"]
ELEMENTS = {"Al": "care-element-Al", "B": "care-element-B"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Migration:
    """An element of a dough against the limits of a day.

    Parameters
    ----------
    element : str
        Its symbol.
    share, share_dry : float
        All of it at most, with what brings it as dry as it may be, over the mass of the dough, and over what is left
        when all water has gone. [1]
    pliable, sticky : Value
        Limits for a pliable toy and for a liquid or sticky one. [1]
    valid_from, valid_to : date or None
        First and last day of these limits; None: no end is known.
    ingredients : tuple of str
        What brings it, the most first.
    provenance : Provenance
        The weakest of the limits and of the composition.
    words : str
        The same in sentences.
    """

    element: str
    share: float
    share_dry: float
    pliable: Value
    sticky: Value
    valid_from: datetime.date
    valid_to: datetime.date | None
    ingredients: tuple[str, ...]
    provenance: Provenance
    words: str

    @property
    def over(self) -> tuple[str, ...]:
        """Which limits all of it would pass while the dough is fresh: "pliable", "sticky"."""
        return _passed(self.share, self.pliable, self.sticky)

    @property
    def over_dry(self) -> tuple[str, ...]:
        """Which limits all of it would pass once the dough is dry."""
        return _passed(self.share_dry, self.pliable, self.sticky)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it: shares are masses over the mass of the dough, worst case (all migrates)."""
        return {
            "element": self.element, "share": self.share, "share_dry": self.share_dry, "over": list(self.over),
            "over_dry": list(self.over_dry),
            "pliable": self.pliable.as_dict(), "sticky": self.sticky.as_dict(),
            "valid_from": self.valid_from.isoformat(), "valid_to": self.valid_to and self.valid_to.isoformat(),
            "ingredients": list(self.ingredients), "words": self.words, "provenance": self.provenance.as_dict(),
        }  # fmt: skip


def limits_on(element: str, date: datetime.date) -> Entry:
    """Look up the European migration limits of an element that hold on a day.

    Parameters
    ----------
    element : str
        Its symbol: "Al", "B".
    date : date
        The day.

    Returns
    -------
    Entry
        Of the handbook's table `limits`, with rows `category_1` (pliable) and `category_2` (liquid or sticky).

    Raises
    ------
    InputError
        If the handbook has no limit for that day.

    Examples
    --------
    >>> limits_on("Al", datetime.date(2021, 5, 20)).rows["category_1"].printed
    2250.0
    >>> limits_on("Al", datetime.date(2021, 5, 19)).rows["category_1"].printed
    5625.0
    """
    dated = _dated(element)
    for entry in dated:
        if _holds_on(entry, date):
            return entry
    if not dated:
        raise InputError("safety-no-limit", element=element, known=", ".join(ELEMENTS))
    raise InputError("safety-no-limit-yet", date=date.isoformat(), start=dated[0].facts["valid_from"].isoformat())


def limit_rows(date: datetime.date) -> tuple[dict[str, Any], ...]:
    """Give the limits of a day as JSON shows them, as the law prints them; none for a day before the first law.

    Examples
    --------
    >>> row = limit_rows(datetime.date(2026, 5, 8))[0]
    >>> row["element"], row["toy"], row["limit"], row["unit"], row["valid_to"]
    ('Al', 'pliable', 2250.0, 'mg/kg', '2030-07-31')
    """
    held = ((element, entry) for element in ELEMENTS for entry in _dated(element) if _holds_on(entry, date))
    return tuple(
        {
            "element": element, "toy": toy, "limit": row.printed, "unit": row.unit,
            "valid_from": entry.facts["valid_from"].isoformat(),
            "valid_to": entry.facts["valid_to"].isoformat() if "valid_to" in entry.facts else None,
            "dated_by": entry.facts["dated_by"], "page": row.page, "provenance": row.value.provenance.as_dict(),
        }
        for element, entry in held
        for toy, row in zip(("pliable", "sticky"), (entry.rows[f"category_{k}"] for k in (1, 2)), strict=True)
    )  # fmt: skip


def _holds_on(entry: Entry, date: datetime.date) -> bool:
    return bool(entry.facts["valid_from"] <= date <= entry.facts.get("valid_to", datetime.date.max))


@cache
def _dated(element: str) -> tuple[Entry, ...]:
    """The element's limits, the oldest first."""
    entries = (handbook().entry("limits", key) for key in handbook().keys("limits") if key.startswith("migration-"))
    of_element = (each for each in entries if each.facts["element"] == element)
    return tuple(sorted(of_element, key=lambda each: each.facts["valid_from"]))


def amount_at_limit(formula: str, element: str, date: datetime.date, category: Category = "category_1") -> Value:
    """Tell how much of a compound brings a dough to a limit, if all its element migrates.

    Parameters
    ----------
    formula : str
        The compound, water of crystals included: "KAl(SO4)2(H2O)12".
    element : str
        The element that is limited.
    date : date
        The day.
    category : {"category_1", "category_2"}
        Limit of a pliable toy, or of a liquid or sticky one.

    Returns
    -------
    Value
        Mass of the compound over mass of the dough. [1]

    Examples
    --------
    >>> round(1e3 * amount_at_limit("KAl(SO4)2(H2O)12", "Al", datetime.date(2026, 1, 1)).mean, 1)
    39.6
    """
    limit = limits_on(element, date).rows[category].value
    factor = molar_mass_of(formula) / (atoms_of(formula)[element] * molar_mass_of(element))
    return Value.exact(limit.mean * factor, "", Provenance.of([limit.provenance]))


def migration(
    masses: Mapping[str, float], dough_mass: float, pantry: Pantry, *, date: datetime.date,
    most: Mapping[str, float] | None = None,
) -> tuple[Migration, ...]:  # fmt: skip
    """Hold the aluminium and the boron of a dough against the limits of a day.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    dough_mass : float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are made of.
    date : date
        The day.
    most : mapping of str to float, optional
        What may have gone in of each at most, such as heaped spoons; as `masses` if left out. [kg]

    Returns
    -------
    tuple of Migration
        One for each of the two elements that is in the dough at all.

    Raises
    ------
    InputError
        If no dough came out, or the handbook has no limit for that day.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> migration({"plain-flour": 0.125, "table-salt": 0.05}, 0.3, pantry(), date=datetime.date(2026, 1, 1))
    ()
    """
    return tuple(_migrations(masses, dough_mass, pantry, date, most or masses))


def _migrations(
    masses: Mapping[str, float], dough_mass: float, pantry: Pantry, date: datetime.date, most: Mapping[str, float]
) -> Iterator[Migration]:
    for element in ELEMENTS:
        keys = bringers(masses, pantry, element=element)
        if not keys:
            continue
        full = {key: most[key] if key in keys else mass for key, mass in masses.items()}
        share = float(element_share(full, dough_mass, pantry, element, at_most=True))
        dry = share * dough_mass / dry_mass(full, pantry, parching=keys)
        entry = limits_on(element, date)
        pliable, sticky = entry.rows["category_1"].value, entry.rows["category_2"].value
        yield Migration(
            element=element, share=share, share_dry=dry, pliable=pliable, sticky=sticky, ingredients=keys,
            valid_from=entry.facts["valid_from"], valid_to=entry.facts.get("valid_to"),
            words=_words(element, share, dry, entry, named(keys, pantry)),
            provenance=origin_of(keys, pantry, pliable.provenance, sticky.provenance),
        )  # fmt: skip


def _words(element: str, share: float, dry: float, entry: Entry, ingredients: str) -> str:
    pliable, sticky = entry.rows["category_1"], entry.rows["category_2"]
    held = say(
        "safety-migration-held", element=say(ELEMENTS[element]), ingredients=ingredients,
        share=short_text(1e6 * share), dry=short_text(1e6 * dry), pliable=f"{pliable.printed:,.0f}",
        sticky=f"{sticky.printed:,.0f}", start=entry.facts["valid_from"].isoformat(),
    )  # fmt: skip
    over, over_dry = (_passed(each, pliable.value, sticky.value) for each in (share, dry))
    found = "both" if len(over) == 2 else over[0] if over else "none"
    dried = [say("safety-migration-dry", kind=" and ".join(new))] if (new := sorted({*over_dry} - {*over})) else []
    guessed = [say("safety-migration-unseen")] if pliable.value.provenance.status.value == "from memory" else []
    return " ".join((held, say(f"safety-migration-{found}"), *dried, *guessed, say("safety-no-certificate")))


def _passed(share: float, pliable: Value, sticky: Value) -> tuple[str, ...]:
    return tuple(name for name, limit in (("pliable", pliable), ("sticky", sticky)) if share > limit.mean)


def dry_mass(masses: Mapping[str, float], pantry: Pantry, *, parching: Collection[str] = ()) -> float:
    """Give the mass of what is not water, some ingredients as dry as they may be. [kg]"""
    return sum(
        mass * (1 - pantry[key].composition.get("water", 0.0)) * (parched(pantry[key]) if key in parching else 1.0)
        for key, mass in masses.items()
    )


def named(keys: tuple[str, ...], pantry: Pantry) -> str:
    """Name ingredients in a sentence."""
    return ", ".join(pantry[key].name for key in keys)
