"""Salt that creeps from a conducting dough into the wall beside it: how fast, and what a salty wall is worth.

Both figures come from the two recipes: flour and syrup slow salt as they slow current, and the wall with as much salt
in its water as its neighbour has is worked out like any dough.
"""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.diffusion import salt_diffusivity
from lumped.dough.beliefs import Draws, sorted_out, spread_over
from lumped.dough.bowl import Bowl
from lumped.dough.chain import Chain
from lumped.dough.kneading import Kneading, followed, lost_share
from lumped.dough.lasting.creep import creep_depth, creep_diffusivity, joint_share, wall_lifetime
from lumped.pantry import Pantry, pantry
from lumped.quantities import Provenance

__all__ = ["SaltCreep", "salt_creep"]

Array = NDArray[np.float64]
COUNT = 128
_LEAST = 1e-15  # m²/s


@dataclass(frozen=True, slots=True, kw_only=True)
class SaltCreep:
    """How salt creeps into a wall, in draws.

    Parameters
    ----------
    resistivity : (n,) float
        Of the fresh wall. [Ω·m]
    contrast : (n,) float
        How many times better it conducts once its water is as salty as its neighbour's. [1]
    diffusivity : (n,) float
        Of salt in the wall. [m²/s]
    joint : (n,) float
        Saltiness where they touch. [1]
    provenance : Provenance
        Where this comes from.
    """

    resistivity: Array
    contrast: Array
    diffusivity: Array
    joint: Array
    provenance: Provenance

    def lifetime(self, thickness: float, factor: ArrayLike) -> Array:
        """Give how long a wall between two salty lumps lasts whose fresh resistance is `factor` times enough. [s]"""
        return wall_lifetime(thickness, self.diffusivity, factor=factor, contrast=self.contrast, joint=self.joint)

    def reach(self, time: float, limit: float = 0.01) -> Array:
        """Give how deep a thick wall has more than a share of its neighbour's salt after a time. [m]"""
        return creep_depth(limit, time, self.diffusivity, self.joint)


def salt_creep(
    wall: Kneading, beside: Kneading, *, shop: Pantry | None = None, water: float = 1.0, count: int = COUNT
) -> SaltCreep:
    """Work out how salt creeps from one recipe's dough into another's.

    Parameters
    ----------
    wall, beside : Kneading
        The insulating dough and the conducting one beside it, followed through.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    water : float
        How many times as much water the wall is made with as its recipe says. [1]
    count : int
        How many draws.

    Returns
    -------
    SaltCreep

    Examples
    --------
    >>> from lumped.dough import Portion, Recipe
    >>> from lumped.dough.kneading import kneading
    >>> from lumped.quantities import Value
    >>> def recipe(**grams):
    ...     portions = tuple(Portion(ingredient=k.replace("_", "-"), written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                      for k, g in grams.items())
    ...     return Recipe(title="", kind="conducting", portions=portions, cooked="not cooked")
    >>> salty = kneading(recipe(plain_flour=125, tap_water=100, table_salt=40))
    >>> sweet = kneading(recipe(plain_flour=150, granulated_sugar=100, distilled_water=70))
    >>> found = salt_creep(sweet, salty)
    >>> 1e-12 < float(np.median(found.diffusivity)) < 1e-9 < 1e3 < 1e6 * float(np.median(found.contrast))
    True
    """
    shop = shop or pantry()
    places = spread_over(wall.chain.resistivity, count)
    given = _drawn(wall, shop, places, water)
    fresh = followed(wall.recipe, given, shop)
    salty = beside.chain
    held = (salty.in_liquid("sodium-chloride") / np.maximum(salty.liquid_water, 1e-12))[places]
    spoilt = followed(wall.recipe, _salted(given, held * fresh.liquid_water), shop)
    return SaltCreep(
        resistivity=fresh.resistivity, contrast=np.maximum(spoilt.conductivity / fresh.conductivity, 1.0),
        diffusivity=_speed(fresh),
        joint=joint_share(_speed(salty)[places], _speed(fresh), salty_liquid=salty.liquid_share[places],
                          wall_liquid=np.maximum(fresh.liquid_share, 1e-6)),
        provenance=Provenance.of([wall.provenance, beside.provenance]),
    )  # fmt: skip


def _drawn(wall: Kneading, shop: Pantry, places: NDArray[np.int64], water: float) -> Draws:
    given = sorted_out(wall.recipe, wall.named, shop).taken(places)
    masses = given.masses.copy()
    masses[Bowl.of(given.keys, shop).wet] *= water
    lost = np.broadcast_to(lost_share(wall.recipe, given, shop), (masses.shape[1],))
    return replace(given, masses=masses, lost_share=lost, weighed_after=None)


def _salted(given: Draws, salt: Array) -> Draws:
    """The same with more salt. [kg]"""
    return replace(given, keys=(*given.keys, "table-salt"), masses=np.vstack([given.masses, salt]))


def _speed(chain: Chain) -> Array:
    """Diffusivity of salt in a dough. [m²/s]"""
    in_liquid = salt_diffusivity(chain.temperature) * chain.mobility_left
    return np.maximum(creep_diffusivity(in_liquid, chain.obstruction, np.maximum(chain.liquid_share, 1e-6)), _LEAST)
