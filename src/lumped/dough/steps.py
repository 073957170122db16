"""The steps from the scale to the resistivity, each with its figure and its words."""

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds
from lumped.dough.bowl import INDEX, bought_salts
from lumped.dough.chain import Chain
from lumped.dough.material import Reason
from lumped.quantities import Value
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading

__all__ = ["facts_of", "step_words", "steps_of"]

Array = NDArray[np.float64]
_STEPS = (
    # key, unit shown, factor from SI
    ("went_in", "g", 1e3), ("water_lost", "g", 1e3), ("mass", "g", 1e3), ("bound_water", "g", 1e3),
    ("free_water", "g", 1e3), ("liquid_water", "g", 1e3), ("salt_dissolved", "g", 1e3), ("salt_solid", "g", 1e3),
    ("sugar_dissolved", "g", 1e3), ("sugar_solid", "g", 1e3), ("salt_in_liquid", "%", 1e2),
    ("liquid_conductivity", "S/m", 1.0), ("mobility_left", "%", 1e2), ("syrup_conductivity", "S/m", 1.0),
    ("liquid_share", "%", 1e2), ("obstruction", "%", 1e2), ("best_possible", "Ω·m", 1.0), ("resistivity", "Ω·m", 1.0),
)  # fmt: skip
_FACTS = (
    ("hydration", "%", 1e2), ("water_activity", "", 1.0), ("ph", "", 1.0), ("density", "kg/m³", 1.0),
)  # fmt: skip
_PLACES = {key: 2 for key, unit, _ in _STEPS if unit == "g"}  # a hundredth of a gram is none
_BRINE, _SYRUP = 0.005, 0.01  # salts, and what is sweet, over water, from which a liquid is called so: chosen
_UNTHICKENED = 99.5  # per cent of their mobility


def steps_of(done: "Kneading") -> tuple[Reason, ...]:
    """Give the steps that say something of a recipe.

    Parameters
    ----------
    done : Kneading
        The recipe, followed through.
    """
    reasons: list[Reason] = []
    for key, unit, factor in _STEPS:
        each = _reason(done, key, unit, factor)
        if key == "resistivity" or not _is_idle(key, each.value, reasons):
            reasons.append(each)
    return tuple(reasons)


def facts_of(done: "Kneading") -> tuple[Reason, ...]:
    """Give what a dough is like besides: water to flour, water activity, pH, density."""
    return tuple(_reason(done, *each) for each in _FACTS)


def _reason(done: "Kneading", key: str, unit: str, factor: float) -> Reason:
    array = np.round(factor * _quantity(done.chain, key), _PLACES.get(key, 12))
    return Reason(key=key, words=step_words(key, done.chain), value=done.value(array, unit, key))


def _quantity(chain: Chain, key: str) -> Array:
    """A step of the chain, in SI."""
    if key in ("salt_dissolved", "sugar_dissolved"):
        return np.asarray(chain.dissolved[_rows(key)].sum(axis=0))
    if key in ("salt_solid", "sugar_solid"):
        return np.asarray((chain.components - chain.dissolved)[_rows(key)].sum(axis=0))
    if key == "syrup_conductivity":
        return chain.liquid_conductivity * chain.mobility_left
    return np.asarray(getattr(chain, key))


def _is_idle(key: str, value: Value, before: list[Reason]) -> bool:
    """A step that says nothing of this recipe: no sugar, no salt left solid, nothing slowed."""
    if key == "syrup_conductivity":
        return all(each.key != "mobility_left" for each in before)
    if key == "liquid_water" and all(each.key != "bound_water" for each in before):
        return True
    if key == "mobility_left":
        return value.low > _UNTHICKENED
    return value.high < 0.05 and value.unit in ("g", "%")


def step_words(key: str, chain: Chain) -> str:
    """Call a step or a fact by what the liquid is: brine, syrup, or neither.

    Parameters
    ----------
    key : str
        Which step, such as "liquid_conductivity".
    chain : Chain
        The dough.
    """
    if key in ("salt_in_liquid", "liquid_conductivity") and not _holds(chain, list(bought_salts()), _BRINE):
        thick = float(np.quantile(chain.mobility_left, 0.025)) < _UNTHICKENED / 100
        thin = key == "liquid_conductivity" and thick
        return say(f"dough-step-{key.replace('_', '-')}-{'thin' if thin else 'plain'}")
    if key == "mobility_left" and not _holds(chain, _sweet(), _SYRUP):
        return say("dough-step-mobility-left-plain")
    return say(f"dough-step-{key.replace('_', '-')}")


def _holds(chain: Chain, rows: list[int], least: float) -> bool:
    share = chain.dissolved[rows].sum(axis=0) / np.maximum(chain.liquid_water, 1e-12)
    return bool(np.median(share) > least)


def _rows(key: str) -> list[int]:
    """Which compounds a step counts: every salt that is bought as such, or table sugar."""
    return list(bought_salts()) if key.startswith("salt") else [INDEX["sucrose"]]


def _sweet() -> list[int]:
    return [row for row, each in enumerate(compounds()) if each.dissolves and not each.ions and not each.acids]
