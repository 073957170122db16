"""The chain from what was weighed in to what the dough does, in one pass over arrays.

`σ = σ(liquid) · mobility · obstruction(φ) + σ(dry)`. An entry of an array is one possible batch, or one recipe of a
map: intervals, maps and searches all go through here.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, cached_property, lru_cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry import Reach, dissociated, liquid_thickening, mobility_left
from lumped.chemistry.acidity import Acidity, Buffer, ph_width
from lumped.chemistry.activity import water_activity
from lumped.chemistry.certainty import provenance_of, reach_of, width_of
from lumped.chemistry.compounds import compounds
from lumped.chemistry.density import liquid_volume
from lumped.chemistry.mixture import Mixture, mixed
from lumped.chemistry.solubility import parted, solubility
from lumped.dough.bowl import INDEX, MINERALS, Bowl, bought_salts
from lumped.dough.flour import flour_buffer, more_tartar
from lumped.dough.obstruction import archie, mackie_meares, obstruction_bound
from lumped.dough.unknowns import Unknowns
from lumped.quantities import Provenance
from lumped.reference import handbook

__all__ = ["Chain", "Unknowns", "follow"]

Array = NDArray[np.float64]
_TINY = 1e-12
_PROTEIN, _TARTAR = INDEX["protein"], INDEX["potassium-hydrogen-tartrate"]
_SALT, _POTASH = INDEX["sodium-chloride"], INDEX["potassium-chloride"]
_ALL = compounds()
_DISSOLVING = [row for row, each in enumerate(_ALL) if each.dissolves]
_THICKENING = [row for row in _DISSOLVING if not _ALL[row].ions]  # tables of salts know how their own ions move
_HOLDING = [row for row, each in enumerate(_ALL) if each.holds_water]
_CRYSTALS = {row: each.crystals for row, each in enumerate(_ALL) if each.crystals}
_PHOSPHATES = {1: [], 2: []}  # type: dict[int, list[int]]
for _key in MINERALS:
    if _key.endswith("phosphate"):
        _PHOSPHATES[2 if _key.startswith(("magnesium", "calcium")) else 1].append(INDEX[_key])


@dataclass(frozen=True, kw_only=True)
class Chain:
    """All that is known of a dough, each an array of (n,) entries in SI."""

    went_in: Array
    water_lost: Array
    mass: Array
    bound_water: Array
    free_water: Array
    liquid_water: Array
    components: Array
    """(C, n) Mass of each compound after cooking. [kg]"""
    dissolved: Array
    """(C, n) Mass of each compound that is dissolved. [kg]"""
    volume: Array
    liquid_share: Array
    charges: Mapping[str, Array]
    fixed_charge: Array
    """(n,) Charge of flour that took hydrogen up, which closes the charge of the ions and does not move. [mol/m³]"""
    ph: Array
    liquid_conductivity: Array
    mobility_left: Array
    obstruction: Array
    bound: Array
    conductivity: Array
    dry_conductivity: Array
    hydration: Array
    syrup: Array
    fat: Array
    """(n,) Syrup and added fat to flour: the mass of water that fills their volume. [1]"""
    temperature: float
    activity_error: Array
    brine: Mixture
    """Its liquid, as the rule of mixing sees it."""

    @property
    def resistivity(self) -> Array:
        """[Ω·m]"""
        return 1 / self.conductivity

    @property
    def best_possible(self) -> Array:
        """Resistivity of the best dough of this liquid. [Ω·m]"""
        return 1 / (self.liquid_conductivity * self.mobility_left * self.bound + self.dry_conductivity)

    @property
    def density(self) -> Array:
        """[kg/m³]"""
        return np.asarray(self.mass / np.maximum(self.volume, _TINY))

    def of(self, key: str) -> Array:
        """Mass of a compound in the dough. [kg]"""
        return np.asarray(self.components[INDEX[key]])

    def in_liquid(self, key: str) -> Array:
        """Mass of a compound that is dissolved. [kg]"""
        return np.asarray(self.dissolved[INDEX[key]])

    def solid(self, key: str) -> Array:
        """Mass of a compound that is not dissolved. [kg]"""
        return np.asarray(self.components[INDEX[key]] - self.dissolved[INDEX[key]])

    @property
    def salt_in_liquid(self) -> Array:
        """Mass of dissolved salt, of any kind that is bought as such, over mass of it and its water. [1]"""
        salt = self.dissolved[list(bought_salts())].sum(axis=0)
        return np.asarray(salt / np.maximum(salt + self.liquid_water, _TINY))

    @cached_property
    def reach(self) -> Reach:
        """Where its liquid lies beyond what tables of conductivity hold."""
        return reach_of(self.brine, self.temperature)

    @cached_property
    def liquid_provenance(self) -> Provenance:
        """What its liquid's conductivity rests on."""
        return provenance_of(self.brine, self.temperature)

    @cached_property
    def water_activity(self) -> Array:
        """Water activity: that of the liquid, times that of flour that wants its water. [1]"""
        water = np.maximum(self.liquid_water, _TINY)
        there = [row for row in np.flatnonzero(self.dissolved.any(axis=1)) if _ALL[row].molar_mass]
        molal = {_ALL[row].key: self.dissolved[row] / _ALL[row].molar_mass / water for row in there}
        liquid = water_activity(molal, self.temperature) if molal else np.ones_like(water)
        whole = self.components[INDEX["water"]]
        held = np.maximum(self.components[_HOLDING].sum(axis=0), _TINY)
        return np.asarray(np.clip(liquid * _thirst(whole / held) * (1 + self.activity_error), 0.0, 1.0))


def _thirst(water_per_dry: Array) -> Array:
    """Water activity of starch and flour by Oswin's form: `X = A (a/(1 - a))^B`. [1]"""
    book = handbook()
    a, b = (book.value("doughs", "flour-isotherm", each).mean for each in ("factor", "power"))
    return np.asarray(1 / (1 + (a / np.maximum(water_per_dry, 1e-6)) ** (1 / b)))


def follow(
    bowl: Bowl,
    masses: Array,
    *,
    unknowns: Unknowns,
    lost_share: Array,
    temperature: float,
    weighed_after: Array | None = None,
    moisture: Mapping[int, Array] | None = None,
    minerals: Mapping[int, Array] | None = None,
) -> Chain:
    """Follow recipes through to their doughs.

    Parameters
    ----------
    bowl : Bowl
        The ingredients.
    masses : (I, n) float
        Mass of each. [kg]
    unknowns : Unknowns
        What no recipe says.
    lost_share : (n,) float
        Share of all water that leaves as steam. [1]
    temperature : float
        Temperature of use. [K]
    weighed_after : (n,) float, optional
        Mass of the finished dough, if it was weighed; then it tells how much water left. [kg]
    moisture, minerals : mapping of int to (n,) float, optional
        What is drawn of an ingredient's water and minerals, by its row in the bowl. [1]

    Returns
    -------
    Chain

    Notes
    -----
    A dough lies between a pack of grains, whose bound water holds no ions and whose obstruction is φ^m, and a gel that
    ions enter, with φ·(φ/(2 - φ))²; in between, the logarithm of the obstruction goes linearly from one to the other,
    and so does the share of bound water that is open to ions. Crystal water counts as water, but
    crystals that can't dissolve keep theirs. Table salt and potassium
    chloride crowd each other out; every other salt saturates as if it were alone, but flour helps cream of tartar to
    dissolve by taking its hydrogen. Flour's protein holds the pH near flour's own (`Buffer`).
    """
    components = bowl.compounds(masses, moisture or {}, minerals or {})
    went_in, water = masses.sum(axis=0), components[INDEX["water"]]
    lost = lost_share * water if weighed_after is None else np.clip(went_in - weighed_after, 0.0, 0.95 * water)
    water = components[INDEX["water"]] = water - lost
    gel = np.sin(np.pi / 2 * unknowns.picture) ** 2
    held = unknowns.bound_water * components[_HOLDING].sum(axis=0)
    bound = np.minimum(held, water)
    openness = np.minimum(np.maximum(water / np.maximum(held, _TINY) - 1, 0.0), 1.0)
    liquid_water = water - bound * (1 - gel * openness)
    crystals = _in_crystals(components, liquid_water, temperature)
    liquid_water = liquid_water - crystals
    dissolved = _dissolved(components, liquid_water, temperature, unknowns)
    there = np.flatnonzero(dissolved.any(axis=1)).tolist()
    solved = {_ALL[row].key: dissolved[row] for row in there}
    liquid = liquid_volume(liquid_water, solved, temperature)
    solid = components - dissolved
    solid[INDEX["water"]] = water - liquid_water
    rest = _specific_volumes() @ solid
    share = (1 - unknowns.air) * liquid / np.maximum(liquid + rest, _TINY)
    found, charges = _ions(dissolved, liquid, there, flour_buffer(components, liquid, unknowns))
    ph = found.ph
    brine = mixed(charges, temperature)
    conductivity = brine.conductivity if charges else np.zeros_like(liquid)
    if charges and unknowns.brine_error.any():
        conductivity = conductivity * np.exp(unknowns.brine_error * width_of(brine, temperature))
        ph = ph + unknowns.brine_error * ph_width(found.strength)
    left = _mobility(dissolved, liquid_water, temperature, unknowns.walden_exponent)
    limit = obstruction_bound(share)
    kept = np.minimum(_kept(share, unknowns, gel) * unknowns.scatter, limit)
    flour = np.maximum(masses[bowl.body].sum(axis=0), _TINY)
    poured = (masses * bowl.water[:, None])[bowl.wet].sum(axis=0)
    return Chain(
        went_in=went_in, water_lost=lost, mass=components.sum(axis=0), bound_water=bound,
        free_water=np.maximum(water - bound - crystals, 0.0), liquid_water=liquid_water, components=components,
        dissolved=dissolved, volume=(liquid + rest) / (1 - unknowns.air), liquid_share=share, charges=charges, ph=ph,
        fixed_charge=found.fixed, liquid_conductivity=conductivity, mobility_left=left, obstruction=kept, bound=limit,
        conductivity=conductivity * left * kept + unknowns.dry_conductivity,
        dry_conductivity=unknowns.dry_conductivity, hydration=poured / flour, syrup=bowl.syrup @ masses / flour,
        fat=bowl.fat @ masses / flour, temperature=temperature, activity_error=unknowns.activity_error, brine=brine,
    )  # fmt: skip


def _in_crystals(components: Array, water: Array, temperature: float) -> Array:
    """Water in crystals that can't dissolve. [kg]

    With s dissolved by a mass of water, and r of water in the crystals of a mass m: `d = s (water - r (m - d))`.
    """
    held = np.zeros_like(water)
    for row, ratio in _CRYSTALS.items():
        limit, mass = float(_limits(temperature)[_DISSOLVING.index(row), 0]), components[row]
        if np.any(mass > limit * water):
            dissolved = np.clip(limit * (water - ratio * mass) / (1 - limit * ratio), 0.0, mass)
            held = held + np.where(mass > limit * water, ratio * (mass - dissolved), 0.0)
    return np.minimum(held, np.maximum(water, 0.0))


def _dissolved(components: Array, water: Array, temperature: float, unknowns: Unknowns) -> Array:
    """What dissolves of each compound: all of it, or as much as the water takes; part of flour's metals stays. [kg]"""
    dissolved = np.zeros_like(components)
    dissolved[_DISSOLVING] = np.minimum(components[_DISSOLVING], _limits(temperature) * water)
    if components[_SALT].any() and components[_POTASH].any():
        both = {_ALL[row].key: components[row] for row in (_SALT, _POTASH)}
        held, _ = parted(both, water, temperature)
        dissolved[_SALT], dissolved[_POTASH] = held["sodium-chloride"], held["potassium-chloride"]
    if components[_TARTAR].any() and components[_PROTEIN].any():
        dissolved[_TARTAR] = more_tartar(components, dissolved[_TARTAR], unknowns)
    for rows, free in ((_PHOSPHATES[1], unknowns.mobile_single), (_PHOSPHATES[2], unknowns.mobile_double)):
        dissolved[rows] *= free
    return dissolved


@cache
def _limits(temperature: float) -> Array:
    """How much of each dissolving compound a mass of water takes, a column. [1]"""
    limits = np.array([[float(solubility(_ALL[row].key, temperature))] for row in _DISSOLVING])
    return np.asarray(np.minimum(limits, 1e6))  # what mixes in any proportion still needs some water


@cache
def _specific_volumes() -> Array:
    return np.array([1 / each.density for each in _ALL])


def _ions(dissolved: Array, volume: Array, there: list[int], flour: Buffer | None) -> tuple[Acidity, dict[str, Array]]:
    """How far acids give hydrogen away, and moles of charge of each ion in a cubic metre of the liquid."""
    if not there:
        neutral = np.asarray(7.0 if flour is None else flour.rest, float) + 0 * volume
        return Acidity(ph=neutral, charges={}, strength=0 * volume, fixed=0 * volume), {}
    ions, acids, valences, counts = _given(tuple(there))
    given = counts @ (dissolved[there] / np.maximum(volume, _TINY))
    strong = given[: len(ions)]
    found = dissociated(dict(zip(acids, given[len(ions) :], strict=True)), valences @ strong, valences**2 @ strong / 2,
                        flour)  # fmt: skip
    charges = dict(found.charges)
    for ion, each in zip(ions, np.abs(valences)[:, None] * strong, strict=True):
        charges[ion] = charges[ion] + each if ion in charges else each
    return found, charges


@lru_cache(1024)
def _given(there: tuple[int, ...]) -> tuple[tuple[str, ...], tuple[str, ...], Array, Array]:
    """Strong ions and acids that some compounds give, the ions' charges, and moles of each from a kilogram."""
    rows = [_ALL[row] for row in there]
    ions = tuple(sorted({ion for each in rows for ion in each.ions}))
    acids = tuple(sorted({acid for each in rows for acid in each.acids}))
    valences = np.array([handbook().value("ions", ion, "charge").mean for ion in ions])
    counts = [[each.ions.get(ion, 0) for each in rows] for ion in ions]
    counts += [[each.acids.get(acid, 0) for each in rows] for acid in acids]
    moles = np.array([1 / each.molar_mass if each.molar_mass else 0.0 for each in rows])
    return ions, acids, valences, np.array(counts, float).reshape(len(ions) + len(acids), len(rows)) * moles


def _mobility(dissolved: Array, water: Array, temperature: float, exponent: Array) -> Array:
    """Share of their mobility that ions keep in the dough's liquid, by all that thickens it but salts. [1]"""
    thick = {_ALL[row].key: dissolved[row] for row in _THICKENING if dissolved[row].any()}
    if not thick:
        return np.ones_like(water)
    return mobility_left(liquid_thickening(np.maximum(water, _TINY), thick, temperature), exponent)


def _kept(share: Array, unknowns: Unknowns, gel: Array) -> Array:
    """Share of the liquid's conductivity that the body keeps, before the bound. [1]"""
    through = np.maximum(share - unknowns.percolation, _TINY) / (1 - unknowns.percolation)
    grains = archie(through, unknowns.archie_exponent)
    return np.asarray(grains ** (1 - gel) * mackie_meares(through) ** gel)
