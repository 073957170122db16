"""Cautions against injuries and mess: making the dough, handling it, what stands on the table, throwing it away."""

from collections.abc import Iterator, Mapping

from lumped.dough.safety.bowl import Bowl
from lumped.dough.safety.caution import Caution
from lumped.dough.safety.known import KNOWN, caution
from lumped.dough.safety.metals import migration, named
from lumped.dough.safety.poisoning import doses_worth_saying
from lumped.quantities import Provenance
from lumped.reference import handbook

__all__ = ["cares", "injuries"]

_ACIDS = ("citric", "tartaric", "acetic", "ascorbic", "lactic")
_SAID_ELSEWHERE = {
    "raw-flour", "acid-eyes", "salt-skin", "slippery", "colour-stains", "sugar-ants", "dust", "spirit", "alum", "borax",
}  # fmt: skip
_SAID_BY_DOSE = {
    "tartrate-dog": "tartrate-dogs",
    "epsom-child": "epsom-laxative",
    "potassium-child": "potassium",
    "glycerol-child": "glycerine-drink",
    "boron-child": "borax",
}


def injuries(bowl: Bowl) -> Iterator[Caution]:
    """Give the cautions against injuries."""
    if bowl.cooked != "not cooked":
        yield caution("hot")
    if acids := _strong_acids(bowl):
        yield caution("acid-eyes", ingredients=acids)
    if bowl.is_salty:
        yield caution("salt-skin", ingredients=bowl.marked("salt-skin"))
    dusty = bowl.marked("dust")
    if powders := tuple(key for key in bowl.keys if key in dusty or _is_powder(bowl.pantry[key].composition)):
        yield caution("dust", ingredients=powders)
    if slippery := bowl.marked("slippery") or tuple(k for k in bowl.keys if _is_greasy(bowl.pantry[k].composition)):
        yield caution("slippery", ingredients=slippery)
    if spirits := bowl.marked("spirit") or tuple(
        key for key in bowl.keys if bowl.pantry[key].composition.get("ethanol", 0) > 0.2
    ):
        yield caution("spirit", ingredients=spirits)
    yield _small_parts()
    yield from (caution(key) for key in ("pack-wires", "cells", "mains"))


def _strong_acids(bowl: Bowl) -> tuple[str, ...]:
    """Ingredients that sting in eyes: marked so, or with an acid as such in them."""
    bringing = {key for acid in _ACIDS for key in bowl.bringing(compound=f"{acid}-acid")}
    return tuple(key for key in bowl.keys if key in bringing or "acid-eyes" in bowl.pantry[key].cautions)


def _is_powder(composition: Mapping[str, float]) -> bool:
    return composition.get("starch", 0) > 0.3 and composition.get("water", 0) < 0.25


def _is_greasy(composition: Mapping[str, float]) -> bool:
    return composition.get("fat", 0) > 0.5 or composition.get("glycerol", 0) > 0.5


def _small_parts() -> Caution:
    value = handbook().value("limits", "small-parts", "cylinder_diameter")
    return caution("small-parts", diameter=f"{1e3 * value.mean:.0f}", provenance=Provenance.of([value.provenance]))


def cares(bowl: Bowl) -> Iterator[Caution]:
    """Give the cautions against mess and worse, with the law and the packets."""
    for key in ("colour-stains", "sugar-ants"):
        if carriers := bowl.marked(key):
            yield caution(key, ingredients=carriers)
    if bowl.is_salty or _strong_acids(bowl):
        yield caution("pan")
    yield from (caution(key) for key in ("metal", "mould", "disposal-salt" if bowl.is_salty else "disposal"))
    if bowl.date is not None:
        for each in migration(bowl.masses, bowl.dough_mass, bowl.pantry, date=bowl.date, most=bowl.most):
            key = f"migration-{each.element}"
            yield caution(key, words=each.words, ingredients=each.ingredients, provenance=each.provenance)
    yield from _of_packets(bowl)


def _of_packets(bowl: Bowl) -> Iterator[Caution]:
    """Cautions that an ingredient names and that nothing else has said, and what nobody wrote a sentence for."""
    said = {_SAID_BY_DOSE[dose.key] for dose in doses_worth_saying(bowl)} | _SAID_ELSEWHERE
    for key in dict.fromkeys(each for carrier in bowl.keys for each in bowl.pantry[carrier].cautions):
        if key in KNOWN and key not in said:
            yield caution(key, ingredients=bowl.marked(key))
    if others := tuple(each for each in bowl.keys if set(bowl.pantry[each].cautions) - set(KNOWN)):
        yield caution("packet", ingredients=others, names=named(others, bowl.pantry))
