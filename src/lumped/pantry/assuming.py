"""What a label does not print: water by what is left, acids and ions of the ash by an ingredient of the same sort."""

from collections.abc import Mapping

from lumped.chemistry.compounds import compound, compounds, molar_mass_of
from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label import Label
from lumped.quantities import Provenance, Status, Value
from lumped.texts import say

__all__ = ["composed_of", "counts_fibre_within"]

_WATER_SPREAD = 0.02  # water by difference gathers the rounding of all the rest, from memory
_SLACK = 0.03
_SUGARS = ("sucrose", "glucose", "fructose", "maltose")
_PRINTED = {
    "water",
    "starch",
    "fibre",
    "protein",
    "fat",
    "ethanol",
    "glycerol",
    "sorbitol",
    "sodium-chloride",
    *_SUGARS,
}
_LABEL = Provenance(status=Status.LABEL, note="its packet")
_ASSUMED = Provenance(status=Status.FROM_MEMORY, note="not on its packet")


def composed_of(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, said: list[str]
) -> tuple[dict[str, float], Value, Value]:
    """Give what a labelled ingredient is made of.

    Parameters
    ----------
    label : Label
        What the packet says.
    shares : mapping of str to float
        Mass shares that it prints, salt as sodium. [1]
    like : Ingredient or None
        An ingredient of the same sort.
    said : list of str
        Gets a sentence for each thing that was assumed.

    Returns
    -------
    (dict of str to float, Value, Value)
        Compounds that sum to one; the share of water; how much of its minerals there really is over that. [1]

    Raises
    ------
    InputError
        If the table sums to more than a hundred.

    Examples
    --------
    >>> said = []
    >>> salt, _, _ = composed_of(Label(name="crystals", sodium_from="salt"), {"sodium": 0.393}, None, said)
    >>> round(salt["sodium-chloride"], 3)
    0.999
    """
    found = {
        "protein": shares.get("protein", 0.0),
        "fat": shares.get("fat", 0.0),
        "ethanol": shares.get("alcohol", 0.0),
    }
    found["glycerol" if like and "glycerol" in like.composition else "sorbitol"] = shares.get("polyols", 0.0)
    _add_carbohydrate(label, shares, like, found, said)
    _add_sodium(label, shares, like, found, said)
    minerals = _add_unprinted(label, shares, like, found, said)
    dry = sum(found.values())
    if dry + shares.get("water", 0.0) > 1 + _SLACK:
        raise InputError("label-sum", where=label.name, total=f"{100 * (dry + shares.get('water', 0.0)):.1f}")
    water = shares["water"] if "water" in shares else max(1 - dry, 0.0)
    if "water" in shares:
        found["other"] = found.get("other", 0.0) + max(1 - dry - water, 0.0)
    total = sum(found.values()) + water
    composition = {"water": water / total, **{key: share / total for key, share in found.items() if share > 0}}
    ordered = {each.key: composition[each.key] for each in compounds() if composition.get(each.key, 0.0) > 0}
    return ordered, _moisture(label, ordered.get("water", 0.0), like, said), minerals


def _add_carbohydrate(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, found: dict[str, float], said: list[str]
) -> None:
    """Starch, fibre and sugars; a European label counts fibre beside carbohydrate, an American one within it."""
    fibre, sugars = shares.get("fibre", 0.0), shares.get("sugars", 0.0)
    within = counts_fibre_within(label)
    if label.fibre_within is None and fibre > 0:
        said.append(say("label-assumed-fibre-within") if within else say("label-assumed-fibre-beside"))
    rest = max(shares.get("carbohydrate", sugars) - sugars - (fibre if within else 0.0), 0.0)
    found["fibre"] = fibre
    alike = {key: like.composition.get(key, 0.0) for key in _SUGARS} if like else {}
    syrup = bool(like) and alike.get("maltose", 0.0) > 0 and not (like and like.composition.get("starch", 0.0))
    found["maltose" if syrup else "starch"] = rest
    kinds = {key: share for key, share in alike.items() if share > 0 and not (syrup and key == "maltose")} or {
        "sucrose": 1.0
    }
    for key, share in kinds.items():
        found[key] = found.get(key, 0.0) + sugars * share / sum(kinds.values())
    if sugars > 0.01:
        said.append(say("label-assumed-sugars", kinds=", ".join(compound(key).name for key in kinds)))


def _add_sodium(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, found: dict[str, float], said: list[str]
) -> None:
    """Sodium as salt, as soda, or shared out as in the similar ingredient."""
    sodium = shares.get("sodium", 0.0)
    if sodium <= 0:
        if "sodium" not in shares:
            said.append(say("label-assumed-no-salt"))
        return
    holds = _sodium_in(like) if like and label.sodium_from is None else {}
    if label.sodium_from == "baking soda":
        holds = {"sodium-hydrogen-carbonate": 1.0}
    holds = holds or {"sodium-chloride": 1.0}
    for key, part in holds.items():
        per_sodium = (compound(key).molar_mass or 0.0) / (compound(key).ions["sodium"] * molar_mass_of("Na"))
        found[key] = found.get(key, 0.0) + sodium * part / sum(holds.values()) * per_sodium
    if label.sodium_from is None:
        said.append(
            say("label-assumed-sodium", share=f"{100 * sodium:.2g}", kinds=", ".join(compound(k).name for k in holds))
        )


def _sodium_in(like: Ingredient) -> dict[str, float]:
    """Sodium of an ingredient by the compound that holds it. [1]"""
    counts = ((key, share, compound(key)) for key, share in like.composition.items())
    return {
        key: share * each.ions["sodium"] / (each.molar_mass or 1.0)
        for key, share, each in counts
        if "sodium" in each.ions
    }


def _add_unprinted(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, found: dict[str, float], said: list[str]
) -> Value:
    """Acids and the salts of the ash, which no label prints: as in the similar ingredient, or a little phosphate."""
    if like:
        for key, share in like.composition.items():
            if key not in _PRINTED and "sodium" not in compound(key).ions:
                found[key] = found.get(key, 0.0) + share
        said.append(say("label-assumed-ash-like", like=like.name))
        low, high = 0.7 * like.minerals.low, 1.4 * like.minerals.high
    else:
        food = found["protein"] + found.get("starch", 0.0) + found["fibre"] > 0.2
        ash = shares.get("ash", 0.006 if food else 0.0)
        found["potassium-dihydrogen-phosphate"] = 0.6 * ash
        found["other"] = 0.4 * ash
        said.append(say("label-assumed-ash", share=f"{100 * ash:.1f}"))
        low, high = 0.3, 3.0
    return Value(mean=1.0, low=low, high=high, unit="", provenance=_ASSUMED, spread="lognormal")


def _moisture(label: Label, water: float, like: Ingredient | None, said: list[str]) -> Value:
    if label.water is not None:
        return Value(mean=water, low=max(water - 0.01, 0.0), high=min(water + 0.01, 1.0), unit="", provenance=_LABEL)
    guessed = label.per == "100 mL" and label.density is None
    spread = max(_WATER_SPREAD, 0.05 * (1 - water)) if guessed else _WATER_SPREAD  # as unsure as the density
    low, high = max(water - spread, 0.0), min(water + spread, 1.0)
    if like:
        low = min(low, max(water - (like.moisture.mean - like.moisture.low), 0.0))
        high = max(high, min(water + (like.moisture.high - like.moisture.mean), 1.0))
    said.append(
        say("label-assumed-water", share=f"{100 * water:.1f}", low=f"{100 * low:.1f}", high=f"{100 * high:.1f}")
    )
    if like and not like.moisture.low - 0.04 <= water <= like.moisture.high + 0.04:
        said.append(say("label-doubt-water", like=like.name, usual=f"{100 * like.moisture.mean:.0f}"))
    return Value(mean=water, low=low, high=high, unit="", provenance=_ASSUMED)


def counts_fibre_within(label: Label) -> bool:
    """Tell whether a label's carbohydrate includes fibre: as it says, or as in America where it prints only sodium.

    Examples
    --------
    >>> counts_fibre_within(Label(name="a", salt=0.0)), counts_fibre_within(Label(name="a", sodium=0.0))
    (False, True)
    """
    if label.fibre_within is not None:
        return label.fibre_within
    return label.salt is None and label.sodium is not None
