"""All cautions that Lumped knows, each once: what may come of it, where it belongs, and when it applies.

Whoever needs one asks for it by its key: cautions on a dough, on an ingredient, on making much of it, on a picture.
Their sentences stand in one file of texts, a long one for whoever wants to know and often a short one for a sheet.
"""

from collections.abc import Mapping
from typing import NamedTuple

from lumped.dough.safety.caution import Caution, Scope, Severity, When
from lumped.pantry import Ingredient
from lumped.quantities import Provenance, Status
from lumped.texts import has, say

__all__ = ["KNOWN", "Kind", "caution", "cautions_of"]

_PRACTICE = Provenance(status=Status.COMMON_PRACTICE)


class Kind(NamedTuple):
    """What a caution is like, whatever dough it is on."""

    severity: Severity
    scope: Scope
    when: When


def _all(severity: Severity, scope: Scope, when: When, keys: str) -> dict[str, Kind]:
    return dict.fromkeys(keys.split(), Kind(severity, scope, when))


KNOWN: Mapping[str, Kind] = {
    **_all("poison", "dough", "amount", "eaten tartrate-dog epsom-child potassium-child glycerol-child boron-child"),
    **_all("poison", "dough", "ingredients", "allergens may-contain alum burnt-alum borax"),
    **_all("poison", "dough", "making", "flour-raw flour-cooked"),
    **_all("poison", "kitchen", "ingredients", "raw-flour alcohol-children buckwheat coconut epsom-laxative"),
    **_all("poison", "kitchen", "ingredients", "glycerine-drink honey-infants lupin mineral-oil not-food-grade"),
    **_all("poison", "kitchen", "ingredients", "nut-dust oats pearls-choke potassium rain-germs sulphite"),
    **_all("poison", "kitchen", "ingredients", "tartrate-dogs wheat-starch"),
    **_all("injury", "kitchen", "making", "hot"),
    **_all("injury", "kitchen", "ingredients", "acid-eyes dust slippery spirit foams gum-slippery psyllium-dust"),
    **_all("injury", "kitchen", "ingredients", "swells calcium-heats baking-powder lye irritates lime-skin"),
    **_all("injury", "kitchen", "ingredients", "benzoate-vitamin-c packet"),
    **_all("injury", "dough", "amount", "salt-skin"),
    **_all("injury", "table", "always", "small-parts pack-wires cells mains"),
    **_all("care", "dough", "ingredients", "no-allergens colour-stains sugar-ants"),
    **_all("care", "kitchen", "ingredients", "colour-powder molasses-conducts name-gluten-none potato-not-starch"),
    **_all("care", "kitchen", "ingredients", "salt-coarse spoils-fast"),
    **_all("care", "kitchen", "amount", "pan"),
    **_all("care", "table", "always", "metal"),
    **_all("care", "dough", "always", "mould disposal rules"),
    **_all("care", "dough", "amount", "disposal-salt"),
    **_all("care", "law", "amount", "migration-Al migration-B"),
}
"""Cautions by key."""
_AS = {
    # what is said of this dough in full: what is said shortly; potassium, as salt, by its grams of dough
    "flour-raw": "raw-flour", "flour-cooked": "raw-flour", "tartrate-dog": "tartrate-dogs",
    "epsom-child": "epsom-laxative", "glycerol-child": "glycerine-drink",
    "boron-child": "borax",
}  # fmt: skip


def caution(
    key: str, *, ingredients: tuple[str, ...] = (), provenance: Provenance = _PRACTICE, words: str = "", **slots: str
) -> Caution:
    """Give one caution.

    Parameters
    ----------
    key : str
        Which; see `KNOWN`.
    ingredients : tuple of str
        Keys of the ingredients that bring it.
    provenance : Provenance
        Where it comes from.
    words : str
        Its sentences, where they are made elsewhere.
    **slots
        What its sentences hold of this dough.

    Returns
    -------
    Caution

    Examples
    --------
    >>> caution("salt-skin").severity, caution("salt-skin").brief
    ('injury', 'Salt stings: not on broken skin or eczema, not near eyes. Wash hands after.')
    """
    kind, told = KNOWN[key], words or say(f"safety-caution-{key}", **slots)
    return Caution(
        key=key, severity=kind.severity, scope=kind.scope, when=kind.when, words=told,
        brief=_brief(key, slots) or told, ingredients=ingredients, provenance=provenance,
    )  # fmt: skip


def cautions_of(ingredient: Ingredient) -> tuple[Caution, ...]:
    """Give the cautions that an ingredient carries by itself; what nobody wrote a sentence for is on its packet.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [each.key for each in cautions_of(pantry()["cream-of-tartar"])]
    ['acid-eyes', 'tartrate-dogs']
    """
    return tuple(
        caution(key, ingredients=(ingredient.key,)) if key in KNOWN
        else caution("packet", ingredients=(ingredient.key,), names=ingredient.name)
        for key in ingredient.cautions
    )  # fmt: skip


def _brief(key: str, slots: Mapping[str, str]) -> str:
    """Say it shortly, as a sheet does; "" where there is no shorter way."""
    same = _AS.get(key, key)
    if slots.get("dough") != "" and has(f"safety-brief-{same}"):  # some name the dough
        return say(f"safety-brief-{same}", **slots)
    return say(f"safety-caution-{same}") if same != key else ""
