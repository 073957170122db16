"""What counts of a dough when something else goes in, for many recipes at once.

A table holds all ingredients that any of the recipes may contain; a recipe is a column of masses and a way of making
it. Everything goes through the chain in one pass, at the middle of what is believed.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds, molar_mass_of
from lumped.dough.beliefs import middle
from lumped.dough.bowl import INDEX, Bowl, salt_rows
from lumped.dough.chain import Chain, Unknowns, follow
from lumped.dough.holding import body_of, unbound
from lumped.dough.recipe import Recipe
from lumped.dough.safety.contents import parched
from lumped.dough.swap.doses import doses_in_a_helping
from lumped.dough.texture import POURS, POWDER, body_lacking, least_body
from lumped.dough.wetting import wetness_of
from lumped.pantry import Pantry
from lumped.pantry.choosing import SCALE
from lumped.pantry.measures import spoon_fullness
from lumped.reference import handbook

__all__ = ["ELEMENTS", "WAYS", "Figures", "Table", "figures_of", "table_of"]

Array = NDArray[np.float64]
Rows = NDArray[np.int64]
WAYS = ("pot", "kettle", "microwave", "not cooked")
ELEMENTS = ("Na", "K", "Al", "B")
_COLD = WAYS.index("not cooked")
_SUGARS = [INDEX[key] for key in ("sucrose", "glucose", "fructose", "maltose")]
_SOFTENERS = [INDEX[key] for key in ("fat", "glycerol", "sorbitol")]
_NO_ACIDS = ("carbonic", "aluminium")
_TINY = 1e-12


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """All ingredients that a search may use.

    Parameters
    ----------
    keys : tuple of str
        The ingredients, I of them.
    bowl : Bowl
        The same, composed.
    unknowns : Unknowns
        The middle of what no recipe says.
    temperature : float
        Temperature of use. [K]
    lost : (W,) float
        Share of water that leaves as steam, by way of making. [1]
    least, most : (W,) float
        The trade's window of water to flour, by way of making. [1]
    gluten, binder : (I,) float
        1 for a body with gluten, and for a binder.
    elements : (4, I) float
        Share of each of `ELEMENTS` that an ingredient brings at most: as dry, and its spoon as full, as may be. [1]
    doses : (D, I) float
        How many of each dose are in a helping of an ingredient alone, likewise; see `dosed`. [1]
    prices : (I,) float or None
        Price of each. [money/kg]
    """

    keys: tuple[str, ...]
    bowl: Bowl
    unknowns: Unknowns
    temperature: float
    lost: Array
    least: Array
    most: Array
    gluten: Array
    binder: Array
    elements: Array
    doses: Array
    prices: Array | None

    def row(self, key: str) -> int:
        """Row of an ingredient."""
        return self.keys.index(key)


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """What counts of recipes, each an array of (n,) entries in SI.

    Parameters
    ----------
    place : (n,) float
        Where water to flour lies in the trade's window, from -1 to 1; see `texture.feel_of`. [1]
    hydration : (n,) float
        Water to flour. [1]
    no_dough : (n,) float
        How far water to flour, or the share of body, is beyond what is a dough at all; 0 or less of a dough. [1]
    unbound : (n,) float
        How much binder is missing, as a share of what a cold dough without gluten needs. [1]
    binder : (n,) float
        Gum, husk or gelatine to flour. [1]
    body : (n,) float
        Share of what goes in that is flour or starch. [1]
    softener, sugar, salt : (n,) float
        Fat and glycerine, sugars, and salts to flour. [1]
    resistivity : (n,) float
        [Ω·m]
    ph : (n,) float
        [1]
    acid : (n,) float
        Acid that lye could take up to pH 7 in a mass of dough, but carbonic acid and alum's. [mol/kg]
    water_activity : (n,) float
        [1]
    cost : (n,) float or None
        [money/kg]
    sodium : (n,) float
        Its share. [1]
    elements : (4, n) float
        Share of sodium, potassium, aluminium, boron, as much as there may be. [1]
    doses : (D, n) float
        How many of each dose are in a helping, as many as there may be; see `dosed`. [1]
    mass : (n,) float
        Dough that comes out. [kg]
    """

    place: Array
    hydration: Array
    no_dough: Array
    unbound: Array
    binder: Array
    body: Array
    softener: Array
    sugar: Array
    salt: Array
    resistivity: Array
    ph: Array
    acid: Array
    water_activity: Array
    cost: Array | None
    sodium: Array
    elements: Array
    doses: Array
    mass: Array


def table_of(
    recipe: Recipe, keys: Sequence[str], shop: Pantry, prices: Mapping[str, float] | None = None, *,
    system: str = SCALE,
) -> Table:  # fmt: skip
    """Lay out ingredients for a search round a recipe.

    Parameters
    ----------
    recipe : Recipe
        The recipe; if its dough was weighed, that tells how much steam its way of making costs.
    keys : sequence of str
        The ingredients, those of the recipe among them.
    shop : Pantry
        What they are.
    prices : mapping of str to float, optional
        Price of each. [money/kg]
    system : str
        In whose measures it will be measured, or "scale".
    """
    book = handbook()
    lost = np.array([book.value("doughs", way.replace(" ", "-"), "water_lost").mean for way in WAYS])
    given = middle(recipe, shop)
    if recipe.weighed_after is not None:
        there = (given.masses[:, 0] * Bowl.of(given.keys, shop).water).sum()
        share = (given.masses.sum() - recipe.weighed_after) / max(there, _TINY)
        lost[WAYS.index(recipe.cooked)] = np.clip(share, 0.0, 0.95)
    windows = ["hydration-not-cooked" if way == "not cooked" else "hydration-cooked" for way in WAYS]
    bodies = [body_of(shop[key]) for key in keys]
    priced = prices is not None and all(key in prices for key in keys)
    bowl = Bowl.of(keys, shop)
    fullest = np.array([parched(shop[key]) * spoon_fullness(shop[key], system) for key in keys])
    brought = (bowl.dry + bowl.minerals) * fullest
    return Table(
        keys=tuple(keys), bowl=bowl, unknowns=given.unknowns, temperature=recipe.temperature, lost=lost,
        least=np.array([book.value("marks", each, "least").mean for each in windows]),
        most=np.array([book.value("marks", each, "most").mean for each in windows]),
        gluten=np.array([float(body == "wheat") for body in bodies]),
        binder=np.array([float(body == "binder") for body in bodies]),
        elements=_element_shares() @ brought, doses=doses_in_a_helping() @ brought,
        prices=np.array([prices[key] for key in keys]) if priced and prices is not None else None,
    )  # fmt: skip


def figures_of(table: Table, masses: Array, ways: Rows) -> Figures:
    """Work out what counts of recipes.

    Parameters
    ----------
    table : Table
        The ingredients.
    masses : (I, n) float
        Mass of each in each recipe. [kg]
    ways : (n,) int
        How each is made, by number in `WAYS`.

    Returns
    -------
    Figures
    """
    chain = follow(
        table.bowl, masses, unknowns=table.unknowns, lost_share=table.lost[ways], temperature=table.temperature
    )
    mass = np.maximum(chain.mass, _TINY)
    flour = np.maximum(masses[table.bowl.body].sum(axis=0), _TINY)
    salts = chain.components[list(salt_rows())].sum(axis=0)
    binder = table.binder @ masses / flour
    return Figures(
        place=_place(table, ways, chain), hydration=chain.hydration, no_dough=_no_dough(table, ways, chain),
        unbound=np.where(ways == _COLD, unbound(table.gluten @ masses / flour, binder), 0.0),
        binder=binder,
        body=flour / np.maximum(masses.sum(axis=0), _TINY),
        softener=chain.components[_SOFTENERS].sum(axis=0) / flour, sugar=chain.components[_SUGARS].sum(axis=0) / flour,
        salt=salts / flour, resistivity=chain.resistivity, ph=chain.ph, acid=_acid_groups() @ chain.components / mass,
        water_activity=chain.water_activity, cost=None if table.prices is None else table.prices @ masses / mass,
        sodium=_element_shares()[0] @ chain.components / mass,
        elements=table.elements @ masses / mass, doses=table.doses @ masses / mass,
        mass=chain.mass,
    )  # fmt: skip


def _place(table: Table, ways: Rows, chain: Chain) -> Array:
    """Where water to flour lies in the window, from -1 to 1, as `texture.features_of` reckons it.

    Water counts as it was poured, whatever the body, for four reasons: the trade's window is stated so; the score that
    hands give is learnt so; nobody published how much more or less than wheat flour another body takes for the same
    feel; and at the dry end, where a dough crumbles, raw starch takes up no less than flour does. Where it is short,
    syrup and fat stand in for it.
    """
    wet = np.clip(wetness_of(chain, table.least[ways]), 1e-3, 1e3)
    low, high = np.log(table.least[ways]), np.log(table.most[ways])
    return np.asarray((2 * np.log(wet) - low - high) / (high - low))


def _no_dough(table: Table, ways: Rows, chain: Chain) -> Array:
    """How far it crumbles, pours, or lacks body, as `texture.feel_of` reckons it; below 0 of a dough. (n,) [1]"""
    wetness = np.log(np.clip(wetness_of(chain, table.least[ways]), 1e-3, 1e3))
    dry, wet = np.log(POWDER * table.least[ways]) - wetness, wetness - np.log(POURS * table.most[ways])
    return np.asarray(np.maximum(np.maximum(dry, wet), body_lacking(chain) / least_body()))


@cache
def _acid_groups() -> Array:
    """Acid groups that pH 7 frees, less the charge of metals, in a mass of each compound. (C,) [mol/kg]

    Carbonic acid leaves as gas. An aluminium ion frees hydrogen only as lye makes it fall out: nobody put that much
    acid into a dough by putting alum into it, so as much need not come in alum's stead.
    """
    book = handbook()
    found = []
    for each in compounds():
        charge = sum(book.value("ions", ion, "charge").mean * count for ion, count in each.ions.items())
        groups = sum(count * _groups(acid) for acid, count in each.acids.items() if acid not in _NO_ACIDS)
        found.append((groups - charge) / each.molar_mass if each.molar_mass else 0.0)
    return np.array(found)


def _groups(acid: str) -> int:
    rows = handbook().entry("acids", acid).rows
    return sum(1 for name, row in rows.items() if name.startswith("pKa_") and row.printed < 7)


@cache
def _element_shares() -> Array:
    """Share of each element in each compound. (4, C) [1]"""
    return np.array(
        [
            [each.atoms.get(symbol, 0) * molar_mass_of(symbol) / (each.molar_mass or np.inf) for each in compounds()]
            for symbol in ELEMENTS
        ]
    )
