"""What to mind with a dough: each caution is an object, so that cards and pages can choose; the gravest come first.

A caution is there because of what went in, of how the dough is made, or of who is at the table. None of them replaces
local rules and a qualified person, and the last one says so.
"""

import datetime
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from lumped.dough.safety.allergens import Allergens, allergens_of
from lumped.dough.safety.contents import bringers, plain, used
from lumped.dough.safety.doses import Dose, Helping, doses, helpings, salt_share
from lumped.dough.safety.metals import migration, named
from lumped.pantry import Pantry
from lumped.quantities import Provenance, Status
from lumped.reference import handbook
from lumped.texts import has, say

__all__ = ["Caution", "cautions_on"]

Severity = Literal["poison", "injury", "care"]
Scope = Literal["dough", "kitchen", "table", "law"]

_SALTY = 0.01  # share of salt from which a dough is no longer like food
_EATEN = {"child": 0.25, "dog": 1.0}  # dough that one may get down at most, from memory [kg]
_ACIDS = ("citric", "tartaric", "acetic", "ascorbic", "lactic")
_PRACTICE = Provenance(status=Status.COMMON_PRACTICE)
_FLOUR = Provenance(
    status=Status.FROM_MEMORY, sources=("fda-flour",), note="the advice was seen in copies, not on the agency's page"
)
_GLYCEROL = Provenance(status=Status.FROM_MEMORY, sources=("fsa-glycerol",), note="the advice was seen in the press")
_COOKED = ("pot", "microwave")  # a kettle scalds the flour and does not boil it through
_OTHER_DOSES = (
    ("boron-child", "lethal"),
    ("tartrate-dog", "kidneys_failed_per_kg"),
    ("epsom-child", "laxative_age_6"),
    ("potassium-child", "care_per_kg"),
    ("glycerol-child", "unwell_per_kg"),
)
_SAID_ELSEWHERE = {
    "raw-flour", "acid-eyes", "salt-skin", "oil-slippery", "colour-stains", "sugar-ants", "starch-dust", "spirit-burns",
    "alum", "borax",
}  # fmt: skip
_SAID_BY_DOSE = {
    "tartrate-dog": "tartrate-dogs",
    "epsom-child": "epsom-laxative",
    "potassium-child": "potassium",
    "glycerol-child": "glycerine-drink",
    "boron-child": "borax",
}
_GRAVE = {
    "alcohol-children", "buckwheat", "coconut", "epsom-laxative", "glycerine-drink", "honey-infants", "lupin",
    "mineral-oil", "not-food-grade", "nut-dust", "oats", "pearls-choke", "potassium", "rain-germs", "sulphite",
    "tartrate-dogs", "wheat-starch",
}  # fmt: skip
_MILD = {"colour-powder", "molasses-conducts", "name-gluten-none", "potato-not-starch", "salt-coarse", "spoils-fast"}
_SEVERITIES: tuple[Severity, ...] = ("poison", "injury", "care")


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """One thing to mind.

    Parameters
    ----------
    key : str
        Which: "eaten", "allergens", "raw-flour", …
    severity : {"poison", "injury", "care"}
        What may come of it: poisoning or a grave illness, an injury, a mess.
    scope : {"dough", "kitchen", "table", "law"}
        Where it belongs: to whoever handles the dough, to whoever makes it, to the table with its pack and parts, to
        whoever would sell it. A verdict on a sculpture says the table's cautions itself.
    words : str
        The caution, for a parent.
    ingredients : tuple of str
        Keys of the ingredients that bring it.
    provenance : Provenance
        Where it comes from.
    """

    key: str
    severity: Severity
    scope: Scope
    words: str
    ingredients: tuple[str, ...] = ()
    provenance: Provenance = _PRACTICE


def cautions_on(
    masses: Mapping[str, float],
    dough_mass: float,
    pantry: Pantry,
    *,
    cooked: str,
    date: datetime.date,
    age: float = 2.0,
    dog: float | None = None,
) -> tuple[Caution, ...]:
    """Give the cautions on a dough, the gravest first.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    dough_mass : float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are.
    cooked : {"pot", "kettle", "microwave", "not cooked"}
        How it is heated.
    date : date
        The day whose law counts.
    age : float
        Age of the youngest child who may come by it, 1 to 10 years. [a]
    dog : float or None
        What a dog that may come by it weighs; None: a small one. [kg]

    Returns
    -------
    tuple of Caution

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> found = cautions_on({"plain-flour": 0.25, "table-salt": 0.1, "tap-water": 0.25}, 0.6, pantry(),
    ...                     cooked="not cooked", date=datetime.date(2026, 1, 1))
    >>> found[0].key, found[-1].key
    ('eaten', 'rules')
    """
    bowl = _Bowl(
        masses=masses, dough_mass=dough_mass, pantry=pantry, cooked=cooked, date=date, age=age, dog=dog
    )  # fmt: skip
    found = [each for kind in (_poisons, _injuries, _cares) for each in kind(bowl)]
    ranked = sorted(found, key=lambda each: _SEVERITIES.index(each.severity))
    rules = Caution(key="rules", severity="care", scope="dough", words=say("safety-caution-rules"))
    return (*ranked, rules)


@dataclass(frozen=True, kw_only=True)
class _Bowl:
    """A dough and who is near it."""

    masses: Mapping[str, float]
    dough_mass: float
    pantry: Pantry
    cooked: str
    date: datetime.date
    age: float
    dog: float | None

    @cached_property
    def keys(self) -> tuple[str, ...]:
        return used(self.masses)

    @cached_property
    def salt(self) -> float:
        return float(salt_share(self.masses, self.dough_mass, self.pantry))

    @cached_property
    def doses(self) -> dict[tuple[str, str], Dose]:
        found = doses(self.masses, self.dough_mass, self.pantry, age=self.age, dog=self.dog)
        return {(each.key, each.figure): each for each in found}

    @cached_property
    def helpings(self) -> tuple[Helping, ...]:
        return helpings(self.masses, self.dough_mass, self.pantry, age=self.age)

    @cached_property
    def allergens(self) -> Allergens:
        return allergens_of(self.masses, self.pantry)

    def marked(self, *cautions: str) -> tuple[str, ...]:
        """Ingredients that carry one of these caution keys."""
        return tuple(key for key in self.keys if set(cautions) & set(self.pantry[key].cautions))

    def bringing(self, *, element: str = "", acid: str = "", compound: str = "") -> tuple[str, ...]:
        return bringers(self.masses, self.pantry, element=element, acid=acid, compound=compound)


def _poisons(bowl: _Bowl) -> Iterator[Caution]:
    if bowl.salt > _SALTY:
        yield _salt(bowl)
    yield from (_other_dose(dose) for dose in bowl.doses.values() if _worth_saying(dose, bowl))
    if alum := tuple(key for key in bowl.bringing(element="Al") if bowl.pantry[key].composition.get("alum", 0) > 0):
        yield Caution(key="alum", severity="poison", scope="dough", words=say("safety-caution-alum"), ingredients=alum)
    if borax := bowl.bringing(element="B"):
        words = say("safety-caution-borax")
        yield Caution(key="borax", severity="poison", scope="dough", words=words, ingredients=borax)
    yield _allergens(bowl)
    if bowl.allergens.traces:
        yield _traces(bowl)
    yield from _raw(bowl)


def _salt(bowl: _Bowl) -> Caution:
    child, dog = bowl.doses["salt-child", "lethal_per_kg"], bowl.doses["salt-dog", "signs_per_kg"]
    words = say(
        "safety-caution-eaten", share=plain(100 * bowl.salt), age=f"{bowl.age:g}",
        child=plain(1e3 * child.dough.low), child_mass=plain(child.eater_mass),
        dog=plain(1e3 * dog.dough.low), dog_mass=plain(dog.eater_mass), pinch=bowl.helpings[0].words,
    )  # fmt: skip
    provenance = Provenance.of([child.provenance, dog.provenance, bowl.helpings[0].provenance])
    return Caution(
        key="eaten", severity="poison", scope="dough", words=words, ingredients=child.ingredients, provenance=provenance
    )


def _worth_saying(dose: Dose, bowl: _Bowl) -> bool:
    """Whether a dose of something other than salt lies in dough that may be eaten."""
    if dose.key == "potassium-child" and not bowl.bringing(compound="potassium-chloride"):
        return False  # as much potassium as fruit has, not a salt of it by the spoon
    return (dose.key, dose.figure) in _OTHER_DOSES and dose.dough.low < _EATEN[dose.eater]


def _other_dose(dose: Dose) -> Caution:
    return Caution(
        key=dose.key, severity="poison", scope="dough", words=dose.words, ingredients=dose.ingredients,
        provenance=Provenance.of([dose.provenance, _GLYCEROL]) if dose.key == "glycerol-child" else dose.provenance,
    )  # fmt: skip


def _allergens(bowl: _Bowl) -> Caution:
    found = bowl.allergens
    if not found.names:
        words = say("safety-caution-no-allergens")
        return Caution(key="no-allergens", severity="care", scope="dough", words=words, provenance=_listed())
    brought = [(name, key) for region in (found.eu, found.us) for name, keys in region.items() for key in keys]
    return Caution(
        key="allergens", severity="poison", scope="dough", ingredients=tuple(dict.fromkeys(key for _, key in brought)),
        words=say("safety-caution-allergens", allergens=_by_ingredient(brought, bowl.pantry)), provenance=_listed(),
    )  # fmt: skip


def _traces(bowl: _Bowl) -> Caution:
    brought = [(name, key) for name, keys in bowl.allergens.traces.items() for key in keys]
    return Caution(
        key="may-contain", severity="poison", scope="dough", provenance=Provenance(status=Status.FROM_MEMORY),
        words=say("safety-caution-may-contain", allergens=_by_ingredient(brought, bowl.pantry)),
        ingredients=tuple(dict.fromkeys(key for _, key in brought)),
    )  # fmt: skip


def _by_ingredient(brought: list[tuple[str, str]], pantry: Pantry) -> str:
    """Each ingredient with its allergens, in words."""
    names: dict[str, dict[str, None]] = {}
    for allergen, key in brought:
        names.setdefault(key, {})[allergen] = None
    each_with = (
        say("safety-allergens-of", ingredient=pantry[key].name, allergens=", ".join(names[key])) for key in names
    )
    return "; ".join(each_with)


def _listed() -> Provenance:
    return Provenance.of(handbook().value("allergens", region, "count").provenance for region in ("eu", "us"))


def _raw(bowl: _Bowl) -> Iterator[Caution]:
    flours = bowl.marked("raw-flour")
    if not flours:
        return
    key = "flour-cooked" if bowl.cooked in _COOKED else "flour-raw"
    words = say("safety-caution-flour-cooked") if bowl.cooked in _COOKED else say("safety-caution-flour-raw")
    yield Caution(key=key, severity="poison", scope="dough", words=words, ingredients=flours, provenance=_FLOUR)


def _injuries(bowl: _Bowl) -> Iterator[Caution]:
    def found(key: str, scope: Scope, ingredients: tuple[str, ...] = ()) -> Caution:
        words = say(f"safety-caution-{key}")
        return Caution(key=key, severity="injury", scope=scope, words=words, ingredients=ingredients)

    if bowl.cooked != "not cooked":
        yield found("hot", "kitchen")
    if acids := _strong_acids(bowl):
        yield found("acid-eyes", "kitchen", acids)
    if bowl.salt > _SALTY:
        yield found("salt-skin", "dough", bowl.bringing(element="Na"))
    if powders := tuple(key for key in bowl.keys if _is_powder(bowl.pantry[key].composition)):
        yield found("dust", "kitchen", powders)
    if slippery := bowl.marked("oil-slippery") or tuple(k for k in bowl.keys if _is_greasy(bowl.pantry[k].composition)):
        yield found("slippery", "kitchen", slippery)
    if spirits := tuple(k for k in bowl.keys if bowl.pantry[k].composition.get("ethanol", 0) > 0.2):
        yield found("spirit", "kitchen", spirits)
    yield _small_parts()
    for key in ("pack-wires", "cells", "mains"):  # the same sentences as under a verdict
        yield Caution(key=key, severity="injury", scope="table", words=say(f"caution-{key}"))


def _strong_acids(bowl: _Bowl) -> tuple[str, ...]:
    """Ingredients that sting in eyes: marked so, or with an acid as such in them."""
    bringing = {key for acid in _ACIDS for key in bowl.bringing(compound=f"{acid}-acid")}
    return tuple(key for key in bowl.keys if key in bringing or "acid-eyes" in bowl.pantry[key].cautions)


def _is_powder(composition: Mapping[str, float]) -> bool:
    return composition.get("starch", 0) > 0.3 and composition.get("water", 0) < 0.25


def _is_greasy(composition: Mapping[str, float]) -> bool:
    return composition.get("fat", 0) > 0.5 or composition.get("glycerol", 0) > 0.5


def _small_parts() -> Caution:
    row = handbook().row("limits", "small-parts", "cylinder_diameter")
    words = say("safety-caution-small-parts", diameter=f"{1e3 * row.value.mean:.0f}")
    return Caution(
        key="small-parts",
        severity="injury",
        scope="table",
        words=words,
        provenance=Provenance.of([row.value.provenance]),
    )


def _cares(bowl: _Bowl) -> Iterator[Caution]:
    salty, sweet = bowl.salt > _SALTY, bowl.marked("sugar-ants")
    if colours := bowl.marked("colour-stains"):
        yield _care("colour-stains", "dough", colours)
    if sweet:
        yield _care("sugar-ants", "dough", sweet)
    if salty or _strong_acids(bowl):
        yield _care("pan", "kitchen", ())
    yield _care("metal", "table", ())
    yield _care("mould", "dough", ())
    yield _care("disposal-salt" if salty else "disposal", "dough", ())
    for each in migration(bowl.masses, bowl.dough_mass, bowl.pantry, date=bowl.date):
        yield Caution(
            key=f"migration-{each.element}", severity="care", scope="law", words=each.words,
            ingredients=each.ingredients, provenance=each.provenance,
        )  # fmt: skip
    yield from _of_packets(bowl)


def _care(key: str, scope: Scope, ingredients: tuple[str, ...]) -> Caution:
    return Caution(key=key, severity="care", scope=scope, words=say(f"safety-caution-{key}"), ingredients=ingredients)


def _of_packets(bowl: _Bowl) -> Iterator[Caution]:
    """Cautions that an ingredient names and that nothing else has said."""
    said = {_SAID_BY_DOSE[dose.key] for dose in bowl.doses.values() if _worth_saying(dose, bowl)} | _SAID_ELSEWHERE
    for key in dict.fromkeys(caution for each in bowl.keys for caution in bowl.pantry[each].cautions):
        if key not in said:
            carriers = bowl.marked(key)
            known, names = has(f"dough-caution-{key}"), named(carriers, bowl.pantry)
            words = say(f"dough-caution-{key}") if known else say("safety-packet", ingredients=names)
            severity: Severity = "poison" if key in _GRAVE else "care" if key in _MILD else "injury"
            yield Caution(key=key, severity=severity, scope="kitchen", words=words, ingredients=carriers)
