"""How long the grains of a dough's salt take to dissolve, once it is kneaded and lies still."""

from collections.abc import Iterator, Mapping

import numpy as np

from lumped.chemistry import salt_dissolving_time
from lumped.dough.recipe import Recipe
from lumped.pantry import Ingredient, Pantry
from lumped.quantities import Value
from lumped.texts import say

__all__ = ["dissolving_hours", "grain_words"]

_BOILED = ("pot", "microwave")  # where it is hot and stirred, grains are gone in minutes
_SALT = "sodium-chloride"
_LONG = 0.5  # hours from which somebody should know
_WAIT = 12.0  # hours after which nobody waits


def dissolving_hours(grain: Value, found: Mapping[str, Value], temperature: float) -> tuple[float, float]:
    """Give from when to when grains of salt are gone, from the smallest to the largest.

    Parameters
    ----------
    grain : Value
        Their diameter. [m]
    found : mapping of str to Value
        The steps of the chain, in the units that people read: salt and water (free, or what ions reach) in g,
        obstruction in %.
    temperature : float
        Temperature of use. [K]

    Returns
    -------
    (float, float)
        Hours; infinite where the water can't take all of the salt. [h]

    Examples
    --------
    >>> figures = {"salt_dissolved": 20.0, "free_water": 150.0, "obstruction": 25.0}
    >>> found = {key: Value.exact(each, "") for key, each in figures.items()}
    >>> low, high = dissolving_hours(Value(mean=2e-3, low=1e-3, high=3.5e-3, unit="m"), found, 293.15)
    >>> round(low, 1), round(high, 1)
    (0.9, 11.0)
    """
    salt = sum(found[key].mean for key in ("salt_dissolved", "salt_solid") if key in found)
    water = found.get("liquid_water", found["free_water"])
    hours = salt_dissolving_time(
        np.array([grain.low, grain.high]), salt=salt, water=water.mean, temperature=temperature,
        obstruction=found["obstruction"].mean / 100,
    ) / 3600  # fmt: skip
    return float(hours[0]), float(hours[1])


def grain_words(recipe: Recipe, found: Mapping[str, Value], shop: Pantry) -> Iterator[str]:
    """Say of each salt that is not boiled how long its grains take, where that is long.

    Parameters
    ----------
    recipe : Recipe
        What went in.
    found : mapping of str to Value
        The steps of the chain.
    shop : Pantry
        What the ingredients are.
    """
    if recipe.cooked in _BOILED or not {"free_water", "salt_dissolved", "obstruction"} <= set(found):
        return
    for each in (shop[key] for key in recipe.ingredients):
        if each.grain is not None and each.composition.get(_SALT, 0.0) > 0.5:
            low, high = dissolving_hours(each.grain, found, recipe.temperature)
            if (low * high) ** 0.5 > _LONG:
                yield _words(each, each.grain, low, high)


def _words(salt: Ingredient, grain: Value, low: float, high: float) -> str:
    said = {"salt": salt.name, "size": f"{1e3 * grain.mean:g}"}
    if np.isinf(high):
        return say("dough-note-grains-full", **said)
    if high > _WAIT:
        key = "stay" if low <= _WAIT else "never"
        return say(f"dough-note-grains-{key}", **said, **({"low": _time(low)} if key == "stay" else {}))
    return say("dough-note-grains", **said, low=_time(low), high=_time(high))


def _time(hours: float) -> str:
    if hours < 1.5:
        return say("minutes", count=max(5 * round(12 * hours), 1))
    return say("hours", count=f"{hours:.0f}")
