"""What a spoon of a labelled ingredient weighs: "30 g (1/4 cup)"."""

import re
from collections.abc import Mapping
from fractions import Fraction

from lumped.chemistry.compounds import compound
from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label import Label
from lumped.quantities import Provenance, Status, Value
from lumped.texts import say

__all__ = ["density_of", "way_of_filling", "weights_of"]

_US_CUP, _LABEL_CUP = 236.5882365, 240.0  # US customary; 21 CFR 101.9(b)(5)(viii) [mL]
_PER_CUP = {"cup": 1, "tbsp": 16, "tsp": 48}
_MEASURE = re.compile(
    r"\s*(?:(\d{1,4})\s+)?(\d{1,4}(?:\.\d{1,4})?)(?:\s*/\s*(\d{1,4}))?\s*(cup|tbsp|tsp)s?\s*", re.IGNORECASE | re.ASCII
)
_STANDS_FOR = {  # sugars are within carbohydrate, sodium is within salt
    "fat": "fat", "carbohydrate": "sucrose", "fibre": "fibre", "protein": "protein", "salt": "sodium-chloride",
    "polyols": "sorbitol", "alcohol": "ethanol",
}  # fmt: skip
_LABEL = Provenance(status=Status.LABEL, note="its packet")
_ASSUMED = Provenance(status=Status.FROM_MEMORY, note="not on its packet")


def density_of(label: Label, like: Ingredient | None) -> Value | None:
    """Give the density of a labelled liquid: its own, that of one of the same sort, or by what is in it. [kg/m³]

    Parameters
    ----------
    label : Label
        What the packet says.
    like : Ingredient or None
        An ingredient of the same sort.

    Returns
    -------
    Value or None
        None for what is no liquid.

    Examples
    --------
    >>> density_of(Label(name="syrup", density=1400.0), None).mean
    1400.0
    >>> density_of(Label(name="oil", per="100 mL", fat=0.092), None).text()
    '920 kg/m³ (870 to 970)'

    Notes
    -----
    By what is in it: `ρ = c + ρ_w (1 - Σ c_i/ρ_i)`, each part taking the room that it takes alone.
    """
    if label.density is not None:
        return _within(label.density, 0.01, _LABEL)
    if like and like.density:
        return like.density
    return _within(_by_volumes(label), 0.05, _ASSUMED) if label.per == "100 mL" else None


def _by_volumes(label: Label) -> float:
    """Density of a liquid by what is in a hundred millilitres of it. [kg/m³]"""
    alone = {name: compound(key).density for name, key in _STANDS_FOR.items()}
    held = {name: (getattr(label, name) or 0.0) / 1e-4 for name in alone}
    held["salt"] = held["salt"] or 2.5 * (label.sodium or 0.0) / 1e-4
    room = sum(mass / alone[name] for name, mass in held.items())
    return sum(held.values()) + compound("water").density * max(1 - room, 0.0)


def _within(mean: float, spread: float, origin: Provenance) -> Value:
    return Value(mean=mean, low=(1 - spread) * mean, high=(1 + spread) * mean, unit="kg/m³", provenance=origin)


def weights_of(label: Label, like: Ingredient | None, said: list[str]) -> Mapping[str, Mapping[str, Value]]:
    """Give what measures weigh: by the serving, by the density, as the similar ingredient, or nothing. [kg]

    Examples
    --------
    >>> flakes = Label(name="flakes", serving=0.030, serving_measure="1/4 cup")
    >>> weights_of(flakes, None, [])["cup"]["levelled"].text()  # of 240 mL by law, of 236.6 mL in a kitchen
    '0.118 kg (0.106 to 0.130)'
    """
    method = way_of_filling(label, like)
    if label.serving_measure:
        measure, count = _measure_of(label)
        cup = (label.serving or 0.0) / count * _PER_CUP[measure] * _US_CUP / _LABEL_CUP
        return _by_cup(cup, 0.10, method, _worked_out())
    if density := density_of(label, like):
        return _by_cup(density.mean * _US_CUP * 1e-6, 0.04, method, density.provenance)
    if like and like.weights:
        said.append(say("label-assumed-weight", like=like.name))
        return {
            measure: {way: _widened(value) for way, value in by_way.items()} for measure, by_way in like.weights.items()
        }
    said.append(say("label-assumed-no-weight"))
    return {}


def _worked_out() -> Provenance:
    """A label prints a serving and its measure; what a measure of a kitchen holds is worked out from that."""
    return Provenance(status=Status.COMPUTED, note=say("label-note-serving"))


def way_of_filling(label: Label, like: Ingredient | None) -> str:
    """Tell how its measures are filled: as the label or its owner says, as is usual for its like, else levelled.

    Examples
    --------
    >>> way_of_filling(Label(name="flakes", serving_measure="1 cup", filled="packed"), None)
    'packed'
    """
    said = label.filled if label.serving_measure else ""
    return said or (like.usual_method if like else "levelled")


def _by_cup(cup: float, spread: float, method: str, origin: Provenance) -> dict[str, dict[str, Value]]:
    return {
        measure: {method: Value(mean=cup / count, low=(1 - spread) * cup / count, high=(1 + spread) * cup / count,
                                unit="kg", provenance=origin)}
        for measure, count in _PER_CUP.items()
    }  # fmt: skip


def _widened(value: Value) -> Value:
    return Value(mean=value.mean, low=0.9 * value.low, high=1.1 * value.high, unit="kg", provenance=_ASSUMED)


def _measure_of(label: Label) -> tuple[str, float]:
    """Which measure a serving fills, and how many of it: "1/4 cup"."""
    match = _MEASURE.fullmatch(label.serving_measure)
    if not match or not label.serving or match[3] == "0":
        raise InputError("label-serving-measure", where=label.name, text=label.serving_measure)
    count = Fraction(match[1] or 0) + Fraction(match[2]) / Fraction(match[3] or 1)
    if count <= 0:
        raise InputError("label-serving-measure", where=label.name, text=label.serving_measure)
    return match[4].lower(), float(count)
