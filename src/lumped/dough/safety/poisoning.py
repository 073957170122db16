"""Cautions against poisoning and grave illness: salt and other doses, allergens, raw flour."""

from collections.abc import Iterator

from lumped.dough.safety.bowl import Bowl
from lumped.dough.safety.caution import Caution
from lumped.dough.safety.doses import Dose, near_doses
from lumped.dough.safety.known import caution
from lumped.pantry import Pantry
from lumped.quantities import Provenance, Status, short_text
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["doses_worth_saying", "poisonings"]

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


def poisonings(bowl: Bowl) -> Iterator[Caution]:
    """Give the cautions against poisoning and grave illness."""
    if bowl.holds_salt:
        yield _salt(bowl)
    yield from (_other_dose(dose) for dose in doses_worth_saying(bowl))
    if alum := tuple(key for key in bowl.bringing(element="Al") if bowl.pantry[key].composition.get("alum", 0) > 0):
        yield caution("alum", ingredients=alum)
    if borax := bowl.bringing(element="B"):
        yield caution("borax", ingredients=borax)
    yield _allergens(bowl)
    if bowl.allergens.traces:
        yield _traces(bowl)
    yield from _raw(bowl)


def _salt(bowl: Bowl) -> Caution:
    child, dog = bowl.doses["salt-child", "lethal_per_kg"], bowl.doses["salt-dog", "signs_per_kg"]
    lethal = bowl.doses["salt-dog", "lethal_per_kg"]
    return caution(
        "eaten", ingredients=child.ingredients, share=short_text(100 * bowl.salt), age=f"{bowl.age:g}",
        child=short_text(1e3 * child.dough.low), child_mass=short_text(child.eater_mass), dough=bowl.name,
        dog=short_text(1e3 * dog.dough.low), dog_mass=short_text(dog.eater_mass), pinch=bowl.helpings[0].words,
        dog_lethal=short_text(1e3 * lethal.dough.low),
        provenance=Provenance.of([child.provenance, dog.provenance, bowl.helpings[0].provenance]),
    )  # fmt: skip


def doses_worth_saying(bowl: Bowl) -> tuple[Dose, ...]:
    """Give the doses of something other than salt that lie in dough that may be eaten."""
    near = near_doses(bowl.doses.values(), bowl.masses, bowl.pantry)
    return tuple(dose for dose in near if (dose.key, dose.figure) in _OTHER_DOSES)


def _other_dose(dose: Dose) -> Caution:
    origin = Provenance.of([dose.provenance, _GLYCEROL]) if dose.key == "glycerol-child" else dose.provenance
    return caution(dose.key, words=dose.words, ingredients=dose.ingredients, provenance=origin)


def _allergens(bowl: Bowl) -> Caution:
    found = bowl.allergens
    if not found.names:
        return caution("no-allergens", provenance=_listed(), dough=bowl.name)
    brought = [(name, key) for region in (found.eu, found.us) for name, keys in region.items() for key in keys]
    words = say("safety-caution-allergens", allergens=_by_ingredient(brought, bowl.pantry))
    return caution(
        "allergens", words=words, ingredients=tuple(dict.fromkeys(key for _, key in brought)), provenance=_listed(),
        dough=bowl.name, allergens=", ".join(found.names),
    )  # fmt: skip


def _traces(bowl: Bowl) -> Caution:
    brought = [(name, key) for name, keys in bowl.allergens.traces.items() for key in keys]
    return caution(
        "may-contain", provenance=Provenance(status=Status.FROM_MEMORY),
        allergens=_by_ingredient(brought, bowl.pantry), traces=", ".join(bowl.allergens.traces),
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


def _raw(bowl: Bowl) -> Iterator[Caution]:
    if flours := bowl.marked("raw-flour"):
        key = "flour-cooked" if bowl.cooked in _COOKED else "flour-raw"
        yield caution(key, ingredients=flours, provenance=_FLOUR)
