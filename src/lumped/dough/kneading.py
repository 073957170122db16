"""From a recipe to its dough: the chain, carried through with everything that the recipe leaves open."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import Draws, beliefs, draws, middle
from lumped.dough.bowl import Bowl, bought_salts
from lumped.dough.calibrating import Calibration
from lumped.dough.chain import Chain, follow
from lumped.dough.grains import grain_words
from lumped.dough.influence import influences_on
from lumped.dough.material import Dough
from lumped.dough.notes import cautions_on, notes_on, taken_words
from lumped.dough.origins import Origins
from lumped.dough.recipe import Recipe
from lumped.dough.remains import remaining_words
from lumped.dough.safety import allergens_of
from lumped.dough.steps import facts_of, steps_of
from lumped.dough.texture import FeelFit, feel_of
from lumped.pantry import Pantry, pantry
from lumped.quantities import Provenance, Value, believed

__all__ = ["Kneading", "followed", "knead", "knead_middle", "kneading", "lost_share", "typical"]

Array = NDArray[np.float64]
_SOME = 1e-3  # kg of solid salt from which it is worth a word


@dataclass(frozen=True, slots=True, kw_only=True)
class Kneading:
    """A recipe followed through in draws: what was drawn, by name, and what came of it.

    Parameters
    ----------
    recipe : Recipe
        What went in.
    values : mapping of str to Value
        What is open, by name.
    named : mapping of str to (n,) float
        Its draws.
    chain : Chain
        What came of each.
    origins : Origins
        Where each figure of it comes from.
    shop : Pantry
        What the ingredients are.
    """

    recipe: Recipe
    values: Mapping[str, Value]
    named: Mapping[str, Array]
    chain: Chain
    origins: Origins
    shop: Pantry

    @property
    def provenance(self) -> Provenance:
        """Where its resistivity comes from."""
        return self.origins.of("resistivity")

    def value(self, array: Array, unit: str, figure: str) -> Value:
        """Give what the draws of some quantity say; its sources are those of one of `origins.FIGURES`."""
        spread = "lognormal" if unit == "Ω·m" else "normal"
        return believed(array, unit=unit, provenance=self.origins.of(figure), spread=spread)  # type: ignore[arg-type]


def followed(recipe: Recipe, given: Draws, shop: Pantry, temperature: float | None = None) -> Chain:
    """Follow a recipe through for what was drawn, at the temperature of use or another. [K]"""
    return follow(
        Bowl.of(given.keys, shop), given.masses, unknowns=given.unknowns, lost_share=given.lost_share,
        temperature=recipe.temperature if temperature is None else temperature, weighed_after=given.weighed_after,
        moisture=given.moisture, minerals=given.minerals,
    )  # fmt: skip


def lost_share(recipe: Recipe, given: Draws, shop: Pantry) -> Array:
    """Share of the water that leaves, (n,): the method's, or what a weighed dough says. [1]"""
    if given.weighed_after is None:
        return given.lost_share
    chain = followed(recipe, given, shop)
    return np.asarray(chain.water_lost / np.maximum(chain.of("water") + chain.water_lost, 1e-12))


def kneading(recipe: Recipe, shop: Pantry | None = None, calibration: Calibration | None = None) -> Kneading:
    """Follow a recipe through in draws.

    Parameters
    ----------
    recipe : Recipe
        What goes in, and what is done with it.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    calibration : Calibration, optional
        What measured batches taught.

    Returns
    -------
    Kneading
    """
    shop = shop or pantry()
    given, named = draws(recipe, shop, calibration)
    values, chain = beliefs(recipe, shop), followed(recipe, given, shop)
    origins = Origins(recipe=recipe, values=values, chain=chain, shop=shop, calibration=calibration)
    return Kneading(recipe=recipe, values=values, named=named, chain=chain, origins=origins, shop=shop)


def knead(
    recipe: Recipe,
    shop: Pantry | None = None,
    calibration: Calibration | None = None,
    fit: FeelFit | None = None,
) -> Dough:
    """Work out the dough that a recipe yields.

    Parameters
    ----------
    recipe : Recipe
        What goes in, and what is done with it.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    calibration : Calibration, optional
        What measured batches taught: it narrows the interval.
    fit : FeelFit, optional
        What batches that hands scored taught of its feel.

    Returns
    -------
    Dough
        With resistivity, its 95 % interval, the chain of reasons, and what dominates the interval. [Ω·m]

    Notes
    -----
    A dough lies somewhere between a pack of grains, whose bound water holds no salt and whose obstruction is φ^m with
    m from 1.5 to 3, and a gel that ions enter, with φ·(φ/(2 - φ))². Nobody knows where, so the interval spans both.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> dough = knead(Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot"))
    >>> 0.08 < dough.resistivity.low < dough.resistivity.mean < dough.resistivity.high < 0.4
    True
    """
    shop = shop or pantry()
    done = kneading(recipe, shop, calibration)
    reasons = steps_of(done)
    salts = done.chain.components[list(bought_salts())].sum(axis=0)
    salt = float(np.median(salts / np.maximum(done.chain.mass, 1e-12)))
    mass = float(knead_middle(recipe, shop).mass[0])  # as `care` and the card take it, so that all name the same doses
    found = {each.key: each.value for each in reasons}
    told = found if np.any(done.chain.solid("sodium-chloride") > _SOME) else _without(found, "salt_solid")
    return Dough(
        name=recipe.title, kind=recipe.kind, resistivity=found["resistivity"], how="recipe", reasons=reasons,
        facts=facts_of(done), influences=influences_on(done, shop),
        feel=feel_of(recipe, done.chain, done.value(done.chain.hydration, "", "hydration"), fit, shop=shop),
        notes=(
            *notes_on(recipe, told, salt, calibrated=calibration is not None), *grain_words(recipe, found, shop),
            *taken_words(recipe, shop),
            *remaining_words(recipe, done.chain, shop),
            *done.chain.reach.words(warm=False),
        ),
        cautions=cautions_on(recipe, mass, shop), allergens=allergens_of(recipe.masses, shop).names,
        salt_fraction=salt, temperature=recipe.temperature, invented=recipe.invented,
    )  # fmt: skip


def _without(found: Mapping[str, Value], key: str) -> dict[str, Value]:
    """Figures but one; of salts other than table salt `remaining_words` says what stays solid."""
    return {each: value for each, value in found.items() if each != key}


def knead_middle(recipe: Recipe, shop: Pantry | None = None) -> Chain:
    """Work out the middle of what is believed of a dough, without intervals: one entry, fast.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    """
    shop = shop or pantry()
    return followed(recipe, middle(recipe, shop), shop)


def typical(recipe: Recipe, shop: Pantry | None = None, calibration: Calibration | None = None) -> Draws:
    """Give a typical batch as one entry: its dough has the resistivity that `knead` tells, the median.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    calibration : Calibration, optional
        What measured batches taught.

    Notes
    -----
    The chain bends, so that the middle of what is open does not yield the middle of what comes out. What it lacks is
    laid on the batch's scatter, and on what conducts without free water: doughs near this one share it, so that a map
    or a change of the recipe goes through the figure that its own page shows.
    """
    shop = shop or pantry()
    given = middle(recipe, shop, calibration)
    median = float(np.median(kneading(recipe, shop, calibration).chain.resistivity))
    lacks = followed(recipe, given, shop).resistivity / median
    unknowns = replace(
        given.unknowns, scatter=lacks * given.unknowns.scatter,
        dry_conductivity=lacks * given.unknowns.dry_conductivity,
    )  # fmt: skip
    return replace(given, unknowns=unknowns)
