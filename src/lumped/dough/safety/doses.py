"""How much of a dough holds a dose that somebody published: salt first, and whatever else went in.

`dough = dose / share`, where share is the mass of salt (or another substance) in a kilogram of the dough, counted from
the atoms that went in. Sentences tell the careful end: the least that was published, with what brings the substance
as dry, and each spoon of it as full, as it may be.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import atoms_of, molar_mass_of
from lumped.dough.safety.contents import bringers, element_share, moles, origin_of, whole
from lumped.dough.safety.weights import child_mass, dog_mass, salt_of_a_day
from lumped.pantry import Pantry
from lumped.quantities import Provenance, Value, short_text
from lumped.reference import Entry, handbook
from lumped.texts import say

__all__ = ["Dose", "Helping", "doses", "helpings", "near_doses", "salt_share"]

_SALT_PER_SODIUM = "NaCl"
_EATEN = {"child": 0.25, "dog": 1.0}  # dough that one may get down at most, from memory [kg]


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose:
    """A published dose, and the dough that holds it.

    Parameters
    ----------
    key, figure : str
        Entry and row in the handbook's table `limits`: "salt-dog", "signs_per_kg".
    eater : {"child", "dog"}
        Who eats.
    age, eater_mass : float
        Age of the child who is meant, in years, and what the eater weighs. [a], [kg]
    amount : Value
        Substance that is the dose. [kg]
    dough : Value
        Dough that holds so much. [kg]
    lumps : float
        The same in lumps, at the careful end. [1]
    ingredients : tuple of str
        What brings the substance, the most first.
    provenance : Provenance
        The weakest of the figure and of the composition.
    """

    key: str
    figure: str
    eater: str
    age: float
    eater_mass: float
    amount: Value
    dough: Value
    lumps: float
    ingredients: tuple[str, ...]
    provenance: Provenance

    @property
    def is_near(self) -> bool:
        """Whether somebody may get so much dough down."""
        return self.dough.low < _EATEN[self.eater]

    @property
    def words(self) -> str:
        """The same in a sentence, read at the careful end."""
        return say(
            f"safety-dose-{self.key}-{self.figure}", dough=short_text(1e3 * self.dough.low),
            lumps=short_text(self.lumps), amount=short_text(1e3 * self.amount.low),
            milligrams=short_text(1e6 * self.amount.low), mass=short_text(self.eater_mass), age=f"{self.age:g}",
        )  # fmt: skip

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it: in SI, with the figure as its source prints it."""
        entry = handbook().entry("limits", self.key)
        row = entry.rows[self.figure]
        return {
            "key": self.key, "figure": self.figure, "name": entry.name, "formula": entry.facts["formula"],
            "eater": self.eater, "age_years": self.age if self.eater == "child" else None,
            "eater_mass_kg": self.eater_mass, "amount": self.amount.as_dict(), "dough": self.dough.as_dict(),
            "lumps": self.lumps, "ingredients": list(self.ingredients), "words": self.words,
            "published": {
                "value": row.printed, "low": row.low, "high": row.high, "unit": row.unit, "page": row.page,
                "note": row.note, "provenance": row.value.provenance.as_dict(),
            },
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Helping:
    """A pinch or a lump of a dough, and the salt in it.

    Parameters
    ----------
    key : {"pinch", "lump"}
        Which.
    dough, sodium, salt : float
        Its mass, its sodium, and all of its sodium as table salt. [kg]
    salt_per_kg, salt_per_dog_kg : float
        The salt over what the child weighs, and over what the dog does. [1]
    of_lethal, of_illness : float
        The salt over that at which published lethal doses for the child begin, and over that from which the dog falls
        ill. [1]
    of_a_day : float
        The salt over the most that the child should eat in a day. [1]
    provenance : Provenance
        The weakest of all that was used.
    words : str
        The same in a sentence.
    """

    key: str
    dough: float
    sodium: float
    salt: float
    salt_per_kg: float
    salt_per_dog_kg: float
    of_lethal: float
    of_illness: float
    of_a_day: float
    provenance: Provenance
    words: str

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "key": self.key, "dough_kg": self.dough, "sodium_kg": self.sodium, "salt_kg": self.salt,
            "salt_per_child_mass": self.salt_per_kg, "salt_per_dog_mass": self.salt_per_dog_kg,
            "share_of_lethal_child": self.of_lethal, "share_of_illness_dog": self.of_illness,
            "share_of_day": self.of_a_day, "words": self.words,
            "provenance": self.provenance.as_dict(),
        }  # fmt: skip


def salt_share(masses: Mapping[str, ArrayLike], dough_mass: ArrayLike, pantry: Pantry) -> NDArray[np.float64]:
    """Give the share of salt in a dough, all its sodium taken as table salt.

    Parameters
    ----------
    masses : mapping of str to (...) float
        What went in of each ingredient. [kg]
    dough_mass : (...) float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are made of.

    Returns
    -------
    (...) float
        Mass of salt over mass of dough. [1]

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> round(float(salt_share({"plain-flour": 0.25, "table-salt": 0.1}, 0.6, pantry())), 3)
    0.166
    """
    sodium = element_share(masses, dough_mass, pantry, "Na")
    return sodium * (molar_mass_of(_SALT_PER_SODIUM) / molar_mass_of("Na"))


def helpings(
    masses: Mapping[str, float], dough_mass: float, pantry: Pantry, *, age: float = 2.0, dog: float | None = None
) -> tuple[Helping, ...]:
    """Tell how much salt a pinch and a lump of a dough hold, against a child, a dog and what was published of both.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    dough_mass : float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are made of.
    age : float
        Age of the child, 1 to 10 years. [a]
    dog : float or None
        What the dog weighs; None: a small one. [kg]

    Returns
    -------
    tuple of Helping
        The pinch, then the lump.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> pinch, lump = helpings({"plain-flour": 0.25, "table-salt": 0.1}, 0.6, pantry())
    >>> round(1e3 * pinch.salt, 3), round(1e3 * lump.salt, 1)
    (0.067, 10.0)
    """
    share = float(salt_share(masses, dough_mass, pantry))
    origin = origin_of(bringers(masses, pantry, element="Na"), pantry)
    return tuple(
        _helping(key, share, age, dog_mass().mean if dog is None else dog, origin) for key in ("pinch", "lump")
    )


def _helping(key: str, share: float, age: float, dog: float, origin: Provenance) -> Helping:
    book, day, child = handbook(), salt_of_a_day(age), child_mass(age)
    dough, lethal = book.value("limits", "helpings", key), book.value("limits", "salt-child", "lethal_per_kg")
    illness, salt = book.value("limits", "salt-dog", "signs_per_kg"), share * dough.mean
    words = say(
        f"safety-helping-{key}", dough=short_text(1e3 * dough.mean), salt=short_text(1e3 * salt), age=f"{age:g}",
        day=short_text(1e3 * day.mean), share=short_text(100 * salt / day.mean),
    )  # fmt: skip
    return Helping(
        key=key, dough=dough.mean, sodium=salt * molar_mass_of("Na") / molar_mass_of(_SALT_PER_SODIUM), salt=salt,
        salt_per_kg=salt / child.mean, salt_per_dog_kg=salt / dog, of_a_day=salt / day.mean, words=words,
        of_lethal=salt / child.mean / lethal.low, of_illness=salt / dog / illness.low,
        provenance=Provenance.of([origin, *(v.provenance for v in (dough, day, child, lethal, illness))]),
    )  # fmt: skip


def doses(
    masses: Mapping[str, float], dough_mass: float, pantry: Pantry, *, age: float = 2.0, dog: float | None = None,
    most: Mapping[str, float] | None = None,
) -> tuple[Dose, ...]:  # fmt: skip
    """Tell how much of a dough holds each dose that the handbook knows.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    dough_mass : float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are made of.
    age : float
        Age of the child, 1 to 10 years. [a]
    dog : float or None
        What the dog weighs; None: a small one. [kg]
    most : mapping of str to float, optional
        What may have gone in of each at most, such as heaped spoons; as `masses` if left out. [kg]

    Returns
    -------
    tuple of Dose
        Those whose substance is in the dough, however little, the smallest amount of dough first; `is_near` tells which
        matter. The low end of the dough is that of what was published, with the most of the substance that may be in
        it; the eater's weight is taken as given.

    Raises
    ------
    InputError
        If no dough came out, or the age is beyond the table.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> found = doses({"plain-flour": 0.25, "table-salt": 0.1}, 0.6, pantry())
    >>> lethal = next(each for each in found if (each.key, each.figure) == ("salt-child", "lethal_per_kg"))
    >>> round(1e3 * lethal.dough.low)
    54
    """
    weighs = {"child": child_mass(age).mean, "dog": dog_mass().mean if dog is None else dog}
    found = _doses(masses, float(whole(dough_mass)), pantry, weighs, age=age, most=most or masses)
    return tuple(sorted(found, key=lambda each: each.dough.low))


def near_doses(found: Iterable[Dose], masses: Mapping[str, ArrayLike], pantry: Pantry) -> tuple[Dose, ...]:
    """Choose the doses that matter: in so much dough as somebody may get down, potassium only where a salt of it is.

    Parameters
    ----------
    found : iterable of Dose
        All doses of a dough.
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    pantry : Pantry
        What the ingredients are made of.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> bowl = {"plain-flour": 0.25, "table-salt": 0.1, "cream-of-tartar": 0.02}
    >>> "potassium-child" in {each.key for each in near_doses(doses(bowl, 0.6, pantry()), bowl, pantry())}
    False
    """
    by_the_spoon = bringers(masses, pantry, compound="potassium-chloride")  # else no more of it than fruit has
    return tuple(each for each in found if each.is_near and (each.key != "potassium-child" or by_the_spoon))


def _doses(
    masses: Mapping[str, float], dough_mass: float, pantry: Pantry, weighs: Mapping[str, float], *, age: float,
    most: Mapping[str, float],
) -> Iterator[Dose]:  # fmt: skip
    lump = handbook().value("limits", "helpings", "lump").mean
    for entry in _eaten():
        counted = {name: entry.facts[name] for name in ("element", "acid", "compound") if name in entry.facts}
        keys = bringers(masses, pantry, **counted)
        if not keys:
            continue
        per_mole = molar_mass_of(entry.facts["formula"]) / _counted_in(entry)
        share = float(moles(masses, pantry, **counted)) * per_mole / dough_mass
        full = {key: most[key] for key in keys}
        least = share * dough_mass / (float(moles(full, pantry, at_most=True, **counted)) * per_mole)
        origin, eater = origin_of(keys, pantry), entry.facts["eater"]
        for row in entry.rows.values():
            provenance = Provenance.of([row.value.provenance, origin])
            times = weighs[eater] if row.quantity.endswith("_per_kg") else 1.0
            dough = _scaled(row.value, times / share, provenance)
            dough = replace(dough, low=dough.low * min(least, 1.0))
            yield Dose(
                key=entry.key, figure=row.quantity, eater=eater, age=age, eater_mass=weighs[eater],
                amount=_scaled(row.value, times, provenance), dough=dough, lumps=dough.low / lump, ingredients=keys,
                provenance=provenance,
            )  # fmt: skip


def _eaten() -> tuple[Entry, ...]:
    entries = (handbook().entry("limits", key) for key in handbook().keys("limits"))
    return tuple(entry for entry in entries if "eater" in entry.facts)


def _counted_in(entry: Entry) -> int:
    """How often what is counted is in the formula in which the dose is weighed."""
    element = entry.facts.get("element")
    return atoms_of(entry.facts["formula"])[element] if element else 1


def _scaled(value: Value, factor: float, provenance: Provenance) -> Value:
    low, mean, high = (each * factor for each in (value.low, value.mean, value.high))
    return Value(mean=mean, low=low, high=high, unit="kg", provenance=provenance)
