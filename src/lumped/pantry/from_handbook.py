"""An ingredient of the handbook, understood: its printed rows become compounds."""

from collections.abc import Collection, Mapping
from dataclasses import replace
from typing import Any

from lumped.chemistry.compounds import compounds
from lumped.pantry.composing import METALS, composed
from lumped.pantry.ingredient import Ingredient
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook
from lumped.reference.rows import Row

__all__ = ["from_handbook"]

_NUTRIENTS = ("carbohydrate", "sugars", "ash", *METALS)
_CHARGE = {
    "sodium": 1 / 22.99,
    "potassium": 1 / 39.10,
    "magnesium": 2 / 24.31,
    "calcium": 2 / 40.08,
    "sodium-chloride": 1 / 58.44,
    "potassium-chloride": 1 / 74.55,
    "magnesium-chloride": 2 / 95.21,
    "calcium-chloride": 2 / 110.98,
}  # of a gram [mol]
_USUALLY = (0.8, 1.25)  # spread of a metal of which the table says none, from memory
_LEAST = 0.05  # of what a table prints as “none to some”, from memory
_MEMORY = Provenance(status=Status.FROM_MEMORY)

_LISTED = ("roles", "allergens_eu", "allergens_us", "may_contain", "contains", "cautions", "notes", "also")


def from_handbook(key: str) -> Ingredient:
    """Understand one entry of the handbook's table `ingredients`.

    Parameters
    ----------
    key : str
        Its key.

    Returns
    -------
    Ingredient

    Examples
    --------
    >>> salt = from_handbook("table-salt")
    >>> round(salt.composition["sodium-chloride"], 3), salt.weights["cup"]["poured"].text()
    (0.998, '0.292 kg (0.280 to 0.304)')
    """
    entry = handbook().entry("ingredients", key)
    rows, facts = entry.rows, entry.facts
    known = {*_NUTRIENTS, *(each.key for each in compounds())}
    printed = {quantity: row.value.mean for quantity, row in rows.items() if quantity in known}
    composition = composed(printed, anion=facts.get("anion", ""), where=entry.name)
    usual = facts.get("measured", "levelled")
    listed: dict[str, Any] = {name: tuple(facts.get(name, ())) for name in _LISTED}
    return Ingredient(
        key=key, name=entry.name, composition=composition, moisture=_moisture(rows, composition),
        minerals=_minerals(_salt_rows(rows, facts)), usual_method=usual,
        weights=_weights(rows, usual, facts.get("filling_unsaid", ())),
        density=rows["density"].value if "density" in rows else None,
        grain=rows["grain"].value if "grain" in rows else None,
        origins={quantity: row.value.provenance for quantity, row in rows.items()},
        names=_names(key, entry.name), everyday=tuple(handbook().entry("names", key).facts.get("everyday", ())),
        **listed,
    )  # fmt: skip


def _names(key: str, english: str) -> dict[str, str]:
    """Its name by language: English is the entry's own name, the others stand in a table of their own."""
    facts = handbook().entry("names", key).facts
    return {"en": english, **{language: facts[language] for language in ("fr", "es", "ja")}}


def _moisture(rows: Mapping[str, Row], composition: Mapping[str, float]) -> Value:
    """Its water as far as the table knows it, around the share that the whole composition leaves. [1]"""
    mean = composition.get("water", 0.0)
    if "water" not in rows or mean == 0:
        return Value.exact(mean, "", _MEMORY)
    printed = rows["water"].value
    below, above = printed.mean - printed.low, printed.high - printed.mean
    return Value(
        mean=mean, low=max(mean - below, 0.0), high=min(mean + above, 1.0), unit="", provenance=printed.provenance
    )


def _salt_rows(rows: Mapping[str, Row], facts: Mapping[str, Any]) -> dict[str, Row]:
    """The rows of the salts that nature puts in: metals, and chlorides where it is no salt that is sold as one.

    Metals only repeat salts that are printed as compounds.
    """
    chlorides = {name: rows[name] for name in _CHARGE if name.endswith("-chloride") and name in rows}
    if "ions" in facts.get("roles", ()):
        chlorides = {}
    metals = {} if chlorides and not facts.get("anion") else {name: rows[name] for name in METALS if name in rows}
    return metals | chlorides


def _minerals(rows: Mapping[str, Row]) -> Value:
    """How far its salts differ from the table, all of them together, each by the charge that it brings. [1]"""
    low = mean = high = 0.0
    for name, row in rows.items():
        charge, value = _CHARGE[name], row.value
        if value.mean > 0:
            below, above = _USUALLY if value.is_exact else (value.low / value.mean, value.high / value.mean)
            low += charge * value.mean * below
            mean += charge * value.mean
            high += charge * value.mean * above
    below, above = (max(low / mean, _LEAST), high / mean) if mean else _USUALLY
    return Value(mean=1.0, low=below, high=above, unit="", provenance=_MEMORY, spread="lognormal")


def _weights(rows: Mapping[str, Row], usual: str, unsaid: Collection[str]) -> dict[str, dict[str, Value]]:
    """What a measure weighs: `g_per_cup` by the usual method, `g_per_cup_scooped` by another. [kg]

    Where a table leaves open how it was filled, the filling is from memory, and so is what such a measure weighs.
    """
    weights: dict[str, dict[str, Value]] = {}
    for quantity, row in rows.items():
        if not quantity.startswith("g_per_"):
            continue
        measure, _, method = quantity.removeprefix("g_per_").partition("_")
        weights.setdefault(measure, {})[method or usual] = _weaker(row.value) if quantity in unsaid else row.value
    return weights


def _weaker(value: Value) -> Value:
    provenance = Provenance.of([value.provenance, _MEMORY], note=value.provenance.note)
    return replace(value, provenance=provenance)
