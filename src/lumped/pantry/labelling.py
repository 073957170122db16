"""From a packet's label to an ingredient; what the label does not say is assumed, with an interval, and said.

Labels print fat, carbohydrate, protein and salt. Water is what is left to a hundred; acids, and the ions of the ash,
come from an ingredient of the same sort. Salt on a European label is `2.5 · sodium`, whatever the sodium is part of.
"""

from collections.abc import Iterator, Mapping
from dataclasses import replace

from lumped.errors import InputError
from lumped.pantry.assuming import Composed, composed_of
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label import NUTRIENTS, Label, allergens_named
from lumped.pantry.pantry import Pantry, pantry
from lumped.pantry.serving import density_of, way_of_filling, weights_of
from lumped.pantry.silent import SUGARS, counts_fibre_within
from lumped.quantities import Provenance, Status, Value
from lumped.texts import say

__all__ = ["SALT_PER_SODIUM", "labelled"]

SALT_PER_SODIUM = 2.5  # Regulation (EU) 1169/2011, Annex I, number 11
_KJ_PER_KCAL = 4.184
_KJ_PER_GRAM = {  # the same Regulation, Annex XIV (from memory)
    "fat": 37, "carbohydrate": 17, "fibre": 8, "protein": 17, "polyols": 10, "alcohol": 29,
}  # fmt: skip
_LABEL = Provenance(status=Status.LABEL, note="its packet")
_ASSUMED = Provenance(status=Status.FROM_MEMORY, note="not on its packet")


def labelled(label: Label, shop: Pantry | None = None) -> Ingredient:
    """Give the ingredient that a label describes.

    Parameters
    ----------
    label : Label
        What the packet says.
    shop : Pantry, optional
        Where the similar ingredient is looked up; the handbook's.

    Returns
    -------
    Ingredient
        Its `assumed` says in sentences what was not on the label.

    Raises
    ------
    InputError
        If a figure can't be, the table sums to more than a hundred, or figures contradict each other.

    Examples
    --------
    >>> flour = labelled(Label(name="corner flour", like="plain-flour", fat=1e-3, carbohydrate=72e-3, fibre=3e-3,
    ...                        protein=10e-3, salt=0.0, allergens=("wheat",)))
    >>> round(flour.composition["water"], 2), flour.allergens_eu
    (0.13, ('cereals containing gluten',))
    """
    shop = shop or pantry()
    like = shop.find(label.like, label.name) if label.like else None
    if (taken := shop.key_of(label.name)) is not None:
        raise InputError("label-taken", where=label.name, key=taken)
    said: list[str] = []
    whole = _whole_mass(label, like, said)
    shares = _shares(label, whole)
    made = composed_of(label, shares, like, said)
    _doubt_energy(label, {name: each.share for name, each in made.taken.items()} | shares, whole, said)
    names_eu, names_us = _allergens(label, like, said)
    return Ingredient(
        key=label.key, name=label.name, names={"en": label.name}, composition=made.composition, moisture=made.moisture,
        minerals=made.minerals, weights=weights_of(label, like, said), density=density_of(label, like),
        usual_method=way_of_filling(label, like), grain=like.grain if like else None,
        roles=label.roles or (like.roles if like else _roles(made.composition, said)), allergens_eu=names_eu,
        allergens_us=names_us, may_contain=_traces(label, like, {*names_eu, *names_us}),
        contains=label.contains or (like.contains if like else ()), cautions=like.cautions if like else (),
        notes=like.notes if like else (), origins=_origins(shares, made, like),
        label=_figures(label, shares, whole, made, like), assumed=tuple(said),
    )  # fmt: skip


def _origins(shares: Mapping[str, float], made: Composed, like: Ingredient | None) -> dict[str, Provenance]:
    """Where each figure comes from; salt that no label tells is drawn with the minerals, so it is named as they are."""
    found = dict.fromkeys(shares, _LABEL) | dict.fromkeys(made.taken, _ASSUMED)
    if "salt" in made.taken and made.composition.get("sodium-chloride") and not (like and "ions" in like.roles):
        found["sodium-chloride"] = _ASSUMED
    return found


def _figures(
    label: Label, shares: Mapping[str, float], whole: float, made: Composed, like: Ingredient | None
) -> dict[str, Value]:
    """What the label prints, and what was taken where it is silent, in the order of labels. [1]"""
    printed = {name: share for name, share in shares.items() if name != "sodium" or label.sodium is not None}
    if label.salt is not None:
        printed["salt"] = label.salt / whole
    note = say("label-note-like", like=like.name) if like else say("label-note-silent")
    origin = Provenance(status=Status.FROM_MEMORY, note=note)
    packet = Provenance(status=Status.LABEL, note=say("label-note-packet"))
    found = {name: Value.exact(share, "", packet) for name, share in printed.items()} | {
        name: Value(mean=each.share, low=each.low, high=each.high, unit="", provenance=origin)
        for name, each in made.taken.items()
    }
    if label.water is None:
        left = origin if made.alike else replace(origin, note=say("label-note-left"))
        found["water"] = replace(made.moisture, provenance=left)
    return {name: found[name] for name in NUTRIENTS if name in found}


def _shares(label: Label, whole: float) -> dict[str, float]:
    """Mass shares as printed. [1]"""
    given = {name: getattr(label, name) for name in NUTRIENTS if getattr(label, name) is not None}
    if not given:
        raise InputError("label-empty", where=label.name)
    shares = {name: float(figure) / whole for name, figure in given.items()}
    if shares.get("sugars", 0.0) > shares.get("carbohydrate", 1.0) + 0.006:  # both are rounded, to half a gram at worst
        raise InputError("label-part", where=label.name, part="sugars", whole="carbohydrate")
    _agree_on_sodium(label, shares)
    return shares


def _whole_mass(label: Label, like: Ingredient | None, said: list[str]) -> float:
    """Mass of what the table is for. [kg]"""
    if label.per == "100 g":
        return 0.1
    if label.per == "serving":
        if not label.serving:
            raise InputError("label-serving", where=label.name)
        return label.serving
    density = density_of(label, like)
    assert density is not None  # a table for 100 mL always has one
    if label.density is None:
        said.append(_density_sentence(f"{density.mean / 1000:.2f}", like))
    return 1e-4 * density.mean


def _density_sentence(density: str, like: Ingredient | None) -> str:
    if like and like.density:
        return say("label-assumed-density-like", density=density, like=like.name)
    return say("label-assumed-density", density=density)


def _agree_on_sodium(label: Label, shares: dict[str, float]) -> None:
    if "salt" in shares and "sodium" in shares:
        if abs(shares["salt"] - SALT_PER_SODIUM * shares["sodium"]) > 0.1 * shares["salt"] + 2e-4:
            raise InputError("label-salt-sodium", where=label.name, salt=f"{100 * shares['salt']:g}",
                             wanted=f"{100 * SALT_PER_SODIUM * shares['sodium']:g}")  # fmt: skip
    elif "salt" in shares:
        shares["sodium"] = shares["salt"] / SALT_PER_SODIUM
    shares.pop("salt", None)


def _doubt_energy(label: Label, shares: Mapping[str, float], whole: float, said: list[str]) -> None:
    """Hold the printed energy against that of the nutrients; kilojoules and kilocalories must agree."""
    kilojoules = label.kilojoules if label.kilojoules is not None else (label.kilocalories or 0.0) * _KJ_PER_KCAL
    by_calories = kilojoules if label.kilocalories is None else label.kilocalories * _KJ_PER_KCAL
    if abs(by_calories - kilojoules) > 0.06 * kilojoules + 10:
        raise InputError(
            "label-energy", where=label.name, kJ=f"{label.kilojoules:g}", kcal=f"{label.kilocalories:g}",
            wanted=f"{kilojoules / _KJ_PER_KCAL:.0f}",
        )  # fmt: skip
    fibre = shares.get("fibre", 0.0) if counts_fibre_within(label) else 0.0
    eaten = {**shares, "carbohydrate": shares.get("carbohydrate", 0.0) - fibre - shares.get("polyols", 0.0)}
    reckoned = sum(1000 * eaten.get(name, 0.0) * factor for name, factor in _KJ_PER_GRAM.items())
    printed = kilojoules / whole
    if printed and abs(printed - reckoned) > 0.15 * reckoned + 400:
        said.append(say("label-doubt-energy", printed=f"{printed / 10:.0f}", reckoned=f"{reckoned / 10:.0f}"))


def _allergens(label: Label, like: Ingredient | None, said: list[str]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    if label.allergens is not None:
        return allergens_named(label.allergens, label.name)
    if like:
        said.append(say("label-assumed-allergens", like=like.name))
        return like.allergens_eu, like.allergens_us
    said.append(say("label-assumed-no-allergens"))
    return (), ()


def _traces(label: Label, like: Ingredient | None, holds: set[str]) -> tuple[str, ...]:
    if label.may_contain is None:
        names: Iterator[str] = iter(like.may_contain if like else ())
    else:
        names = (name for region in allergens_named(label.may_contain, label.name) for name in region)
    return tuple(dict.fromkeys(name for name in names if name not in holds))


def _roles(composition: Mapping[str, float], said: list[str]) -> tuple[str, ...]:
    """What it will do in a dough, by what it is mostly made of."""
    sums = {
        "body": ("starch", "protein", "fibre"), "softener": ("fat",), "sweetener": SUGARS, "liquid": ("water",),
        "ions": ("sodium-chloride", "sodium-hydrogen-carbonate"), "moisture keeper": ("glycerol", "sorbitol"),
    }  # fmt: skip
    role = max(sums, key=lambda role: sum(composition.get(key, 0.0) for key in sums[role]))
    said.append(say("label-assumed-role", role=role))
    return (role,)
