"""Where the mass goes: what is liquid, what dissolves, what stays solid, and how much room each takes.

All amounts are arrays of draws: one entry is one possible batch.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry import bitartrate_solubility, brine_density, salt_solubility, sugar_solubility
from lumped.reference import handbook

__all__ = ["COMPONENTS", "Balance", "balanced", "mixed"]

Array = NDArray[np.float64]
COMPONENTS = (
    "water", "carbohydrate", "protein", "fat", "ash", "salt", "sucrose", "glycerol",
    "bitartrate", "citric_acid", "acetic_acid", "bicarbonate",
)  # fmt: skip
_DISSOLVING = ("glycerol", "bitartrate", "citric_acid", "acetic_acid", "bicarbonate")
_TINY = 1e-12


@dataclass(frozen=True, slots=True, kw_only=True)
class Balance:
    """A dough's mass balance, in draws.

    Parameters
    ----------
    mass : (n,) float
        Mass of the dough. [kg]
    free_water, bound_water : (n,) float
        Water that could be pressed out, and water that starch and protein hold. [kg]
    liquid_water : (n,) float
        Water that ions enter: all of it in a gel, the free part in a pack of grains. [kg]
    dissolved, solid : mapping of str to (n,) float
        Mass of each component in the liquid, and left undissolved. [kg]
    liquid_volume : (n,) float
        Volume of the liquid. [m³]
    liquid_share : (n,) float
        Liquid's share of the dough's volume. [1]
    """

    mass: Array
    free_water: Array
    bound_water: Array
    liquid_water: Array
    dissolved: Mapping[str, Array]
    solid: Mapping[str, Array]
    liquid_volume: Array
    liquid_share: Array

    @property
    def salt_in_liquid(self) -> Array:
        """Mass of dissolved salt over mass of it and its water. [1]"""
        salt = self.dissolved["salt"]
        return salt / np.maximum(salt + self.liquid_water, _TINY)


def mixed(masses: Mapping[str, Array]) -> dict[str, Array]:
    """Sum the components of all ingredients.

    Parameters
    ----------
    masses : mapping of str to (n,) float
        Mass of each ingredient. [kg]

    Returns
    -------
    dict of str to (n,) float
        Mass of each component. [kg]

    Examples
    --------
    >>> found = mixed({"plain-flour": np.array([0.1])})
    >>> float(sum(found.values())[0].round(6))
    0.1
    """
    total = {component: np.zeros_like(next(iter(masses.values()))) for component in COMPONENTS}
    for ingredient, mass in masses.items():
        for component, share in _composition(ingredient).items():
            total[component] = total[component] + share * mass
    return total


@cache
def _composition(ingredient: str) -> dict[str, float]:
    """Shares of the components, which a table rounds, brought to exactly one. [1]"""
    rows = handbook().entry("ingredients", ingredient).rows
    shares = {each: rows[each].value.mean for each in COMPONENTS if each in rows}
    return {each: share / sum(shares.values()) for each, share in shares.items()}


def balanced(
    components: Mapping[str, Array],
    *,
    lost: Array,
    bound_per_dry: Array,
    gel: NDArray[np.bool_],
    air: Array,
    temperature: float,
) -> Balance:
    """Work out a dough's mass balance.

    Parameters
    ----------
    components : mapping of str to (n,) float
        Mass of each component that went in. [kg]
    lost : (n,) float
        Water that left as steam. [kg]
    bound_per_dry : (n,) float
        Water held by a mass of dry starch and protein. [1]
    gel : (n,) bool
        Whether ions enter the bound water, once there is more water than starch and protein hold.
    air : (n,) float
        Volume share of air. [1]
    temperature : float
        Temperature of use. [K]

    Returns
    -------
    Balance
    """
    water = np.maximum(components["water"] - lost, 0.0)
    held = bound_per_dry * (components["carbohydrate"] + components["protein"])
    bound = np.minimum(held, water)
    liquid_water = water - np.where(gel, 1 - _openness(water, held), 1.0) * bound
    limits = {
        "salt": _per_water(float(salt_solubility(temperature))),
        "sucrose": _per_water(float(sugar_solubility(temperature))),
        "bitartrate": bitartrate_solubility(),
    }
    dissolved = {
        each: np.minimum(components[each], limits[each] * liquid_water) if each in limits else components[each]
        for each in ("salt", "sucrose", *_DISSOLVING)
    }
    solid = {each: components[each] - dissolved.get(each, 0.0) for each in COMPONENTS if each != "water"}
    liquid_volume = _volume_of_liquid(liquid_water, dissolved, temperature)
    rest = sum(mass / _density(each) for each, mass in solid.items()) + (water - liquid_water) / _density("water")
    return Balance(
        mass=water + sum(components[each] for each in COMPONENTS if each != "water"),
        free_water=water - bound, bound_water=bound, liquid_water=liquid_water, dissolved=dissolved, solid=solid,
        liquid_volume=liquid_volume,
        liquid_share=(1 - air) * liquid_volume / np.maximum(liquid_volume + rest, _TINY),
    )  # fmt: skip


def _openness(water: Array, held: Array) -> Array:
    """How far a gel lets ions into its bound water: not at all while all water is bound, fully at twice that. [1]"""
    return np.clip(water / np.maximum(held, _TINY) - 1, 0.0, 1.0)


def _volume_of_liquid(water: Array, dissolved: Mapping[str, Array], temperature: float) -> Array:
    """Volume of brine, and of what else is dissolved in it. [m³]"""
    brine = water + dissolved["salt"]
    density = brine_density(dissolved["salt"] / np.maximum(brine, _TINY), temperature)
    syrup = handbook().value("substances", "sucrose", "density_dissolved").mean
    others = sum(dissolved[each] / _density(each) for each in _DISSOLVING)
    return np.asarray(brine / density + dissolved["sucrose"] / syrup + others)


def _per_water(fraction: float) -> float:
    return fraction / (1 - fraction)


@cache
def _density(component: str) -> float:
    return handbook().value("substances", component, "density").mean
