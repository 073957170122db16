"""What a spoon of a labelled ingredient weighs: "30 g (1/4 cup)"."""

import re
from collections.abc import Mapping
from fractions import Fraction

from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label import Label
from lumped.quantities import Provenance, Status, Value
from lumped.texts import say

__all__ = ["density_of", "weights_of"]

_US_CUP, _LABEL_CUP = 236.5882365, 240.0  # US customary; 21 CFR 101.9(b)(5)(viii) [mL]
_PER_CUP = {"cup": 1, "tbsp": 16, "tsp": 48}
_MEASURE = re.compile(
    r"\s*(?:(\d{1,4})\s+)?(\d{1,4}(?:\.\d{1,4})?)(?:\s*/\s*(\d{1,4}))?\s*(cup|tbsp|tsp)s?\s*", re.IGNORECASE | re.ASCII
)
_LABEL = Provenance(status=Status.PUBLISHED, note="its packet")
_ASSUMED = Provenance(status=Status.FROM_MEMORY, note="not on its packet")


def density_of(label: Label, like: Ingredient | None) -> Value | None:
    """Give the density of a labelled liquid: its own, or that of an ingredient of the same sort. [kg/m³]

    Examples
    --------
    >>> density_of(Label(name="syrup", density=1400.0), None).mean
    1400.0
    """
    if label.density is None:
        return like.density if like else None
    return Value(
        mean=label.density, low=0.99 * label.density, high=1.01 * label.density, unit="kg/m³", provenance=_LABEL
    )


def weights_of(label: Label, like: Ingredient | None, said: list[str]) -> Mapping[str, Mapping[str, Value]]:
    """Give what measures weigh: by the serving, by the density, as the similar ingredient, or nothing. [kg]

    Examples
    --------
    >>> flakes = Label(name="flakes", serving=0.030, serving_measure="1/4 cup")
    >>> weights_of(flakes, None, [])["cup"]["levelled"].text()  # of 240 mL by law, of 236.6 mL in a kitchen
    '0.118 kg (0.106 to 0.130)'
    """
    method = like.usual_method if like else "levelled"
    if label.serving_measure:
        measure, count = _measure_of(label)
        cup = (label.serving or 0.0) / count * _PER_CUP[measure] * _US_CUP / _LABEL_CUP
        return _by_cup(cup, 0.10, method, _LABEL)
    if density := density_of(label, None) or (like.density if like else None):
        return _by_cup(density.mean * _US_CUP * 1e-6, 0.04, method, density.provenance)
    if like and like.weights:
        said.append(say("label-assumed-weight", like=like.name))
        return {
            measure: {way: _widened(value) for way, value in by_way.items()} for measure, by_way in like.weights.items()
        }
    said.append(say("label-assumed-no-weight"))
    return {}


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
