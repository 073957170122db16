"""Cautions against injuries and mess: making the dough, handling it, what stands on the table, throwing it away."""

from collections.abc import Iterator, Mapping

from lumped.dough.safety.bowl import Bowl
from lumped.dough.safety.caution import Caution, Scope, Severity
from lumped.dough.safety.metals import migration, named
from lumped.dough.safety.poisoning import doses_worth_saying
from lumped.quantities import Provenance
from lumped.reference import handbook
from lumped.texts import has, say

__all__ = ["cares", "injuries"]

_ACIDS = ("citric", "tartaric", "acetic", "ascorbic", "lactic")
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


def injuries(bowl: Bowl) -> Iterator[Caution]:
    """Give the cautions against injuries."""

    def found(key: str, scope: Scope, ingredients: tuple[str, ...] = ()) -> Caution:
        words = say(f"safety-caution-{key}")
        return Caution(key=key, severity="injury", scope=scope, words=words, ingredients=ingredients)

    if bowl.cooked != "not cooked":
        yield found("hot", "kitchen")
    if acids := _strong_acids(bowl):
        yield found("acid-eyes", "kitchen", acids)
    if bowl.is_salty:
        yield found("salt-skin", "dough", bowl.marked("salt-skin"))
    if powders := tuple(key for key in bowl.keys if _is_powder(bowl.pantry[key].composition)):
        yield found("dust", "kitchen", powders)
    if slippery := bowl.marked("oil-slippery") or tuple(k for k in bowl.keys if _is_greasy(bowl.pantry[k].composition)):
        yield found("slippery", "kitchen", slippery)
    if spirits := tuple(k for k in bowl.keys if bowl.pantry[k].composition.get("ethanol", 0) > 0.2):
        yield found("spirit", "kitchen", spirits)
    yield _small_parts()
    for key in ("pack-wires", "cells", "mains"):  # the same sentences as under a verdict
        yield Caution(key=key, severity="injury", scope="table", words=say(f"caution-{key}"))


def _strong_acids(bowl: Bowl) -> tuple[str, ...]:
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


def cares(bowl: Bowl) -> Iterator[Caution]:
    """Give the cautions against mess and worse, with the law and the packets."""
    salty, sweet = bowl.is_salty, bowl.marked("sugar-ants")
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


def _of_packets(bowl: Bowl) -> Iterator[Caution]:
    """Cautions that an ingredient names and that nothing else has said."""
    said = {_SAID_BY_DOSE[dose.key] for dose in doses_worth_saying(bowl)} | _SAID_ELSEWHERE
    for key in dict.fromkeys(caution for each in bowl.keys for caution in bowl.pantry[each].cautions):
        if key not in said:
            carriers = bowl.marked(key)
            known, names = has(f"dough-caution-{key}"), named(carriers, bowl.pantry)
            words = say(f"dough-caution-{key}") if known else say("safety-packet", ingredients=names)
            severity: Severity = "poison" if key in _GRAVE else "care" if key in _MILD else "injury"
            yield Caution(key=key, severity=severity, scope="kitchen", words=words, ingredients=carriers)
