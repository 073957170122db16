"""What a label does not print: water by what is left, acids and ions of the ash by an ingredient of the same sort."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from lumped.chemistry.compounds import compound, compounds, molar_mass_of
from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label import Label
from lumped.pantry.silent import (
    SALT_HOLDS,
    SUGARS,
    Taken,
    counts_fibre_within,
    is_syrup,
    left_out,
    percents,
    refuse_too_little,
    sodium_in,
    taken_words,
)
from lumped.quantities import Provenance, Status, Value, short_text
from lumped.texts import say

__all__ = ["Composed", "composed_of"]

_WATER_SPREAD = 0.02  # water by difference gathers the rounding of all the rest, from memory
_SLACK = 0.03
_FOOD_ASH = Taken(name="ash", share=0.006, low=0.0018, high=0.018)  # of a flour and the like, from memory
_OTHER_ASH = Taken(name="ash", share=0.0005, low=0.0, high=0.003)  # of sugar, juice, honey, from memory
_SODA = "sodium-hydrogen-carbonate"
_LEAST = 0.05  # of what is taken, where there may be none
_PRINTED = {
    "water", "starch", "fibre", "protein", "fat", "ethanol", "glycerol", "sorbitol", "sodium-chloride", *SUGARS,
}  # fmt: skip
_LABEL = Provenance(status=Status.LABEL, note="its packet")
_ASSUMED = Provenance(status=Status.FROM_MEMORY, note="not on its packet")


@dataclass(frozen=True, slots=True, kw_only=True)
class Composed:
    """What a labelled ingredient is made of.

    Parameters
    ----------
    composition : dict of str to float
        Compounds that sum to one. [1]
    moisture : Value
        Its share of water. [1]
    minerals : Value
        How much of its mineral salts there really is over that, salt that no label tells included. [1]
    taken : dict of str to Taken
        What was taken of each nutrient that the label leaves out.
    alike : bool
        Whether its water was taken as in the similar ingredient.
    """

    composition: dict[str, float]
    moisture: Value
    minerals: Value
    taken: dict[str, Taken]
    alike: bool


def composed_of(label: Label, shares: Mapping[str, float], like: Ingredient | None, said: list[str]) -> Composed:
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
    Composed

    Raises
    ------
    InputError
        If the table sums to more than a hundred, or says too little to know what it is.

    Examples
    --------
    >>> said = []
    >>> salt = composed_of(Label(name="crystals", sodium_from="salt"), {"sodium": 0.393}, None, said)
    >>> round(salt.composition["sodium-chloride"], 3)
    0.999
    """
    _refuse_more_than_all(label, shares, _all_of(label, shares, like, {}))
    printed = _compounds(label, shares, like, {})
    left = max(1 - sum(printed.values()) - shares.get("water", 0.0), 0.0)
    if like is None:
        refuse_too_little(label, shares, left)
    taken = left_out(label, shares, like, left)
    found = _all_of(label, shares, like, taken)
    alike = _water_alike(label, like, taken, dry=sum(found.values()))
    if alike and like:
        taken = _scaled_beside(taken, found, like)
        found = _all_of(label, shares, like, taken)
    _refuse_more_than_all(label, shares, found)
    dry = sum(found.values())
    water = shares["water"] if "water" in shares else max(1 - dry, 0.0)
    if "water" in shares:
        found["other"] = found.get("other", 0.0) + max(1 - dry - water, 0.0)
    total = sum(found.values()) + water
    composition = {"water": water / total, **{key: share / total for key, share in found.items() if share > 0}}
    ordered = {each.key: composition[each.key] for each in compounds() if composition.get(each.key, 0.0) > 0}
    if alike and like:
        taken = _within_the_whole(taken, ordered.get("water", 0.0), _ends_alike(ordered.get("water", 0.0), like))
    said += _sentences(label, shares, like, taken, ordered)
    return Composed(
        composition=ordered, taken=taken, alike=alike, minerals=_minerals(shares, found, like, taken, said),
        moisture=_moisture(label, ordered.get("water", 0.0), like, taken, said, alike=alike),
    )  # fmt: skip


def _refuse_more_than_all(label: Label, shares: Mapping[str, float], found: Mapping[str, float]) -> None:
    total = sum(found.values()) + shares.get("water", 0.0)
    if total > 1 + _SLACK:
        raise InputError("label-sum", where=label.name, total=f"{100 * total:.1f}")


def _compounds(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, taken: Mapping[str, Taken]
) -> dict[str, float]:
    """Compounds of what is printed, and of what was taken beside it. [1]"""
    full = {name: each.share for name, each in taken.items() if name != "salt"} | dict(shares)
    if "salt" in taken:
        full["sodium"] = taken["salt"].share / SALT_HOLDS
    found = {
        "protein": full.get("protein", 0.0),
        "fat": full.get("fat", 0.0),
        "ethanol": full.get("alcohol", 0.0),
    }
    found["glycerol" if like and "glycerol" in like.composition else "sorbitol"] = full.get("polyols", 0.0)
    _add_carbohydrate(label, full, like, found)
    if full.get("sodium", 0.0) > 0:
        _add_sodium(label, full["sodium"], like, found)
    return found


def _all_of(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, taken: Mapping[str, Taken]
) -> dict[str, float]:
    """The same with the acids and the salts of the ash, which no label prints. [1]"""
    found = _compounds(label, shares, like, taken)
    if like:
        for key, share in like.composition.items():
            if key not in _PRINTED and "sodium" not in compound(key).ions:
                found[key] = found.get(key, 0.0) + share
    else:
        ash = shares.get("ash", _ash(found).share)
        found["potassium-dihydrogen-phosphate"] = 0.6 * ash
        found["other"] = 0.4 * ash
    return found


def _ash(found: Mapping[str, float]) -> Taken:
    """Ash of what is no like of anything: as of flour, or a trace in what is neither salt nor fat nor spirit."""
    if found["protein"] + found.get("starch", 0.0) + found["fibre"] > 0.2:
        return _FOOD_ASH
    pure = found["fat"] + found["ethanol"] + sum(found.get(key, 0.0) for key in ("sodium-chloride", _SODA))
    return _OTHER_ASH.scaled(max(1 - pure, 0.0))


def _water_alike(label: Label, like: Ingredient | None, taken: Mapping[str, Taken], *, dry: float) -> bool:
    """Whether so much is left out that the water of the similar ingredient is surer than what is left to a hundred."""
    if like is None or label.water is not None or not taken:
        return False
    water = like.moisture
    return dry > 1 or _more(taken) > max(water.mean - water.low, water.high - water.mean)


def _more(taken: Mapping[str, Taken]) -> float:
    return sum(each.high - each.share for each in taken.values() if each.dry)


def _scaled_beside(taken: Mapping[str, Taken], found: Mapping[str, float], like: Ingredient) -> dict[str, Taken]:
    """What was taken as in the similar ingredient, so that it fills the whole together with that one's water."""
    grows = sum(each.share - each.sure for each in taken.values() if each.grows)
    room = max(1 - (sum(found.values()) - grows), 0.0)
    whole = grows + like.moisture.mean
    factor = room / whole if whole > 0 else 1.0
    return {name: each.scaled(factor) for name, each in taken.items()}


def _within_the_whole(taken: Mapping[str, Taken], water: float, ends: tuple[float, float]) -> dict[str, Taken]:
    """What was taken in ranges that leave room for the least water and the least of the rest, and fill it up."""
    ranges = {name: each for name, each in taken.items() if each.grows and each.dry}
    fewer, more = sum(each.share - each.low for each in ranges.values()), _more(ranges)
    found = dict(taken)
    for name, each in ranges.items():
        room = water - ends[0] + fewer - (each.share - each.low)
        want = ends[1] - water + more - (each.high - each.share)
        found[name] = replace(each, low=max(each.low, each.share - want), high=min(each.high, each.share + room))
    return found


def _add_carbohydrate(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, found: dict[str, float]
) -> None:
    """Starch, fibre and sugars; a European label counts fibre beside carbohydrate, an American one within it."""
    fibre, sugars = shares.get("fibre", 0.0), shares.get("sugars", 0.0)
    within = counts_fibre_within(label)
    rest = max(shares.get("carbohydrate", sugars) - sugars - (fibre if within else 0.0), 0.0)
    found["fibre"] = fibre
    syrup = like is not None and is_syrup(like)
    found["maltose" if syrup else "starch"] = rest
    kinds = _kinds(like)
    for key, share in kinds.items():
        found[key] = found.get(key, 0.0) + sugars * share / sum(kinds.values())


def _kinds(like: Ingredient | None) -> dict[str, float]:
    """Kinds of sugar by how much of each the similar ingredient holds; a syrup's maltose is counted as its rest."""
    alike = {key: like.composition.get(key, 0.0) for key in SUGARS} if like else {}
    syrup = like is not None and is_syrup(like)
    found = {key: share for key, share in alike.items() if share > 0 and not (syrup and key == "maltose")}
    return found or {"sucrose": 1.0}


def _add_sodium(label: Label, sodium: float, like: Ingredient | None, found: dict[str, float]) -> None:
    """Sodium as salt, as soda, or shared out as in the similar ingredient."""
    holds = _holders(label, like)
    for key, part in holds.items():
        per_sodium = (compound(key).molar_mass or 0.0) / (compound(key).ions["sodium"] * molar_mass_of("Na"))
        found[key] = found.get(key, 0.0) + sodium * part / sum(holds.values()) * per_sodium


def _holders(label: Label, like: Ingredient | None) -> dict[str, float]:
    """What holds the sodium."""
    if label.sodium_from == "baking soda":
        return {_SODA: 1.0}
    return (sodium_in(like) if like and label.sodium_from is None else {}) or {"sodium-chloride": 1.0}


def _sentences(
    label: Label, shares: Mapping[str, float], like: Ingredient | None, taken: Mapping[str, Taken],
    composition: Mapping[str, float],
) -> Iterator[str]:  # fmt: skip
    """Say what was assumed of fibre, of what is left out, of sugars and of sodium."""
    if label.fibre_within is None and shares.get("fibre", 0.0) > 0:
        yield say("label-assumed-fibre-within") if counts_fibre_within(label) else say("label-assumed-fibre-beside")
    yield from taken_words(tuple(taken.values()), like, shares.get("carbohydrate", 0.0))
    if sum(composition.get(key, 0.0) for key in _kinds(like)) > 0.01:
        yield say("label-assumed-sugars", kinds=", ".join(compound(key).name for key in _kinds(like)))
    if shares.get("sodium", 0.0) > 0 and label.sodium_from is None:
        kinds = ", ".join(compound(key).name for key in _holders(label, like))
        yield say("label-assumed-sodium", share=f"{100 * shares['sodium']:.2g}", kinds=kinds)


def _minerals(
    shares: Mapping[str, float], found: Mapping[str, float], like: Ingredient | None, taken: Mapping[str, Taken],
    said: list[str],
) -> Value:  # fmt: skip
    """How much of its mineral salts there is over what was taken, by the charge that they bring. [1]"""
    natural = {key: share for key, share in found.items() if key not in _PRINTED and "sodium" not in compound(key).ions}
    salts = {key: share for key, share in natural.items() if compound(key).ions}
    if like:
        low, high = 0.7 * like.minerals.low, 1.4 * like.minerals.high
        said += _words_of_ash_like(like, sum(natural.values()), sum(salts.values()), low, high)
    else:
        ash = _ash(found) if "ash" not in shares else _FOOD_ASH.scaled(shares["ash"] / _FOOD_ASH.share)
        low, high = (max(end / ash.share, _LEAST) if ash.share else 1.0 for end in (ash.low, ash.high))
        said.append(say("label-assumed-ash", **percents(ash)))
    salt = taken.get("salt")
    if salt and not (like and "ions" in like.roles):
        charge = sum(share * _charge(key) for key, share in salts.items())
        per_salt = _charge("sodium-chloride")
        mean = charge + salt.share * per_salt
        if mean > 0:
            low, high = ((charge * end + each * per_salt) / mean for end, each in ((low, salt.low), (high, salt.high)))
    return Value(mean=1.0, low=max(low, _LEAST), high=high, unit="", provenance=_ASSUMED, spread="lognormal")


def _charge(key: str) -> float:
    """Charge of the metals of a salt. [mol/kg]"""
    each = compound(key)
    ions = sum(count * (2 if ion in ("magnesium", "calcium") else 1) for ion, count in each.ions.items()
               if ion in ("sodium", "potassium", "magnesium", "calcium"))  # fmt: skip
    return ions / each.molar_mass if each.molar_mass else 0.0


def _words_of_ash_like(like: Ingredient, natural: float, salts: float, low: float, high: float) -> Iterator[str]:
    minerals = Taken(name="ash", share=salts, low=low * salts, high=high * salts)
    yield say("label-assumed-ash-like", like=like.name, **percents(minerals))
    if natural - salts > 0.0005:
        yield say("label-assumed-acids-like", like=like.name, share=short_text(100 * (natural - salts)))


def _moisture(
    label: Label, water: float, like: Ingredient | None, taken: Mapping[str, Taken], said: list[str], *, alike: bool
) -> Value:
    """Its share of water, as unsure as all that is left out where the label does not tell it. [1]"""
    if label.water is not None:
        return Value(mean=water, low=max(water - 0.01, 0.0), high=min(water + 0.01, 1.0), unit="", provenance=_LABEL)
    low, high = _ends_alike(water, like) if alike and like else _ends(label, water, like, taken)
    figures = {"share": f"{100 * water:.1f}", "low": f"{100 * low:.1f}", "high": f"{100 * high:.1f}"}
    if alike and like:
        said.append(say("label-assumed-water-like", like=like.name, **figures))
    else:
        said.append(say("label-assumed-water", **figures))
    if like and not like.moisture.low - 0.04 <= water <= like.moisture.high + 0.04:
        said.append(say("label-doubt-water", like=like.name, usual=f"{100 * like.moisture.mean:.0f}"))
    return Value(mean=water, low=low, high=high, unit="", provenance=_ASSUMED)


def _ends(label: Label, water: float, like: Ingredient | None, taken: Mapping[str, Taken]) -> tuple[float, float]:
    """What is left to a hundred gathers the rounding of all that is printed and the range of all that is not."""
    guessed = label.per == "100 mL" and label.density is None
    spread = max(_WATER_SPREAD, 0.05 * (1 - water)) if guessed else _WATER_SPREAD  # as unsure as the density
    below = above = spread
    if like:
        below = max(spread, like.moisture.mean - like.moisture.low)
        above = max(spread, like.moisture.high - like.moisture.mean)
    fewer = sum(each.share - each.low for each in taken.values() if each.dry)
    return max(water - below - _more(taken), 0.0), min(water + above + fewer, 1.0)


def _ends_alike(water: float, like: Ingredient) -> tuple[float, float]:
    """As in the similar ingredient, as far as that one's is known, and what may differ from it."""
    known = like.moisture
    factor = water / known.mean if known.mean > 0 else 1.0
    low, high = min(1.0, factor) * known.low - _WATER_SPREAD, max(1.0, factor) * known.high + _WATER_SPREAD
    return max(min(low, water), 0.0), min(max(high, water), 1.0)
