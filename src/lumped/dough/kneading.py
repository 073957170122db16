"""From a recipe to its dough: the chain, carried through with everything that the recipe leaves open."""

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry import brine_conductivity, salt_solubility
from lumped.dough.balance import COMPONENTS, balanced, mixed
from lumped.dough.liquid import ash_ions, ions_conductivity, slowed
from lumped.dough.material import Dough, Reason
from lumped.dough.notes import allergens_in, cautions_on, notes_on
from lumped.dough.obstruction import archie, mackie_meares, obstruction_bound
from lumped.dough.recipe import Recipe
from lumped.quantities import Provenance, Status, Value, combined
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["knead"]

Array = NDArray[np.float64]
Draws = dict[str, Array]
_OPEN = (
    "bound_water", "archie_exponent", "walden_exponent", "air", "mobile_potassium", "mobile_magnesium",
    "mixing_rule", "dry_conductivity",
)  # fmt: skip
_MEMORY = Provenance(status=Status.FROM_MEMORY)
_STEPS = (
    # key, unit shown, factor from SI
    ("went_in", "g", 1e3), ("water_lost", "g", 1e3), ("mass", "g", 1e3), ("bound_water", "g", 1e3),
    ("free_water", "g", 1e3), ("salt_dissolved", "g", 1e3), ("salt_solid", "g", 1e3), ("sugar_dissolved", "g", 1e3),
    ("sugar_solid", "g", 1e3), ("salt_in_liquid", "%", 1e2), ("liquid_conductivity", "S/m", 1.0),
    ("mobility_left", "%", 1e2), ("syrup_conductivity", "S/m", 1.0), ("liquid_share", "%", 1e2),
    ("obstruction", "%", 1e2), ("best_possible", "Ω·m", 1.0), ("resistivity", "Ω·m", 1.0),
)  # fmt: skip

_PLACES = {key: 2 for key, unit, _ in _STEPS if unit == "g"}  # a hundredth of a gram is none


def knead(recipe: Recipe) -> Dough:
    """Work out the dough that a recipe yields.

    Parameters
    ----------
    recipe : Recipe
        What goes in, and what is done with it.

    Returns
    -------
    Dough
        With resistivity, its 95 % interval, and the chain of reasons. [Ω·m]

    Notes
    -----
    Half the draws take the dough for a pack of grains: bound water holds no salt, obstruction φ^m with m from 1.5 to
    3. Half take it for a gel that ions enter: all water holds salt, obstruction φ·(φ/(2 - φ))². Nobody knows which
    is nearer, so the interval spans both.

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
    inputs = _inputs(recipe)
    steps: Draws = {}

    def step(key: str, factor: float = 1.0) -> Callable[..., Array]:
        def formula(**draws: Array) -> Array:  # the draws are the same each time: one run of the chain serves all steps
            if not steps:
                steps.update(_chain(recipe, draws))
            return np.round(factor * steps[key], _PLACES.get(key, 12))

        return formula

    reasons: list[Reason] = []
    for key, unit, factor in _STEPS:
        value = combined(step(key, factor), inputs, unit=unit)
        if key in ("resistivity", "best_possible"):
            value = replace(value, spread="lognormal")
        if key == "resistivity" or not _is_idle(key, value, reasons):
            reasons.append(Reason(key=key, words=say(f"dough-step-{key.replace('_', '-')}"), value=value))
    salt = float(np.median(steps["salt_fraction"]))
    found = {each.key: each.value for each in reasons}
    return Dough(
        name=recipe.title, kind=recipe.kind, resistivity=found["resistivity"], how="recipe", reasons=tuple(reasons),
        notes=notes_on(recipe, found, salt), cautions=cautions_on(recipe, salt), allergens=allergens_in(recipe),
        salt_fraction=salt, temperature=recipe.temperature, invented=recipe.invented,
    )  # fmt: skip


def _is_idle(key: str, value: Value, before: list[Reason]) -> bool:
    """A step that says nothing of this recipe: no sugar, no salt left solid, nothing slowed."""
    if key == "syrup_conductivity":
        return all(each.key != "mobility_left" for each in before)
    return value.low > 99.5 if key == "mobility_left" else value.high < 0.05 and value.unit in ("g", "%")


def _inputs(recipe: Recipe) -> dict[str, Value]:
    """All that is uncertain: each amount, the steam, and what no recipe says."""
    book = handbook()
    inputs = {name: book.value("doughs", "unmeasured", name) for name in _OPEN}
    table = brine_conductivity(float(salt_solubility(recipe.temperature)) / 2, recipe.temperature)
    inputs["brine_table"] = Value(
        mean=1.0, low=table.low / table.mean, high=table.high / table.mean, unit="", spread="lognormal",
        provenance=Provenance.of([table.provenance, *_tables_used(recipe)]),
    )  # fmt: skip
    hardness = book.value("ingredients", "tap-water", "calcium")
    inputs["hardness"] = replace(
        hardness, mean=1.0, low=hardness.low / hardness.mean, high=hardness.high / hardness.mean
    )
    inputs["picture"] = Value(mean=0.5, low=0.0, high=1.0, unit="", provenance=_MEMORY, spread="uniform")
    inputs["water_lost"] = book.value("doughs", recipe.cooked.replace(" ", "-"), "water_lost")
    if recipe.weighed_after is not None:
        after = recipe.weighed_after
        half = max(0.01 * after, 1e-3)
        inputs["weighed_after"] = Value(mean=after, low=after - half, high=after + half, unit="kg", provenance=_MEMORY)
    for number, portion in enumerate(recipe.portions):
        inputs[f"mass_{number}"] = portion.mass
        if portion.as_needed is not None:
            low, high = portion.as_needed
            inputs[f"needed_{number}"] = Value(
                mean=(low + high) / 2, low=low, high=high, unit="kg", provenance=_MEMORY, spread="uniform"
            )
    return inputs


def _tables_used(recipe: Recipe) -> list[Provenance]:
    """Where composition, solubility and density come from."""
    book = handbook()
    entries = [book.entry("ingredients", portion.ingredient) for portion in recipe.portions]
    rows = [entry.rows[each].value.provenance for entry in entries for each in COMPONENTS if each in entry.rows]
    return [*rows, *(book.curve(key).provenance for key in ("nacl-solubility", "nacl-density-20degC"))]


def _chain(recipe: Recipe, draws: Draws) -> Draws:
    """Every step of the chain, each an array of draws, in SI."""
    masses: Draws = {}
    for number, portion in enumerate(recipe.portions):
        mass = np.maximum(draws[f"mass_{number}"], 0.0) + draws.get(f"needed_{number}", 0.0)
        masses[portion.ingredient] = masses.get(portion.ingredient, 0.0) + mass
    components = mixed(masses)
    went_in = np.asarray(sum(masses.values()))
    lost = np.clip(draws["water_lost"], 0.0, 0.95) * components["water"]
    if "weighed_after" in draws:
        lost = np.clip(went_in - draws["weighed_after"], 0.0, 0.95 * components["water"])
    gel = draws["picture"] >= 0.5
    balance = balanced(
        components, lost=lost, bound_per_dry=np.maximum(draws["bound_water"], 0.0), gel=gel,
        air=np.clip(draws["air"], 0.0, 0.5), temperature=recipe.temperature,
    )  # fmt: skip
    cations, acids = ash_ions(
        masses,
        mobile_single=draws["mobile_potassium"],
        mobile_double=np.clip(draws["mobile_magnesium"], 0.0, 1.0),
        hardness=draws["hardness"],
    )
    whole, alone = ions_conductivity(balance, cations, acids, recipe.temperature)
    liquid = draws["brine_table"] * (alone + draws["mixing_rule"] * (whole - alone))
    left = slowed(balance, draws["walden_exponent"], recipe.temperature)
    share = balance.liquid_share
    bound = obstruction_bound(share)
    kept = np.minimum(np.where(gel, mackie_meares(share), archie(share, draws["archie_exponent"])), bound)
    dry = draws["dry_conductivity"]
    return {
        "went_in": went_in, "water_lost": lost, "mass": balance.mass, "bound_water": balance.bound_water,
        "free_water": balance.free_water, "salt_dissolved": balance.dissolved["salt"],
        "salt_solid": balance.solid["salt"], "sugar_dissolved": balance.dissolved["sucrose"],
        "sugar_solid": balance.solid["sucrose"], "salt_in_liquid": balance.salt_in_liquid,
        "liquid_conductivity": liquid, "mobility_left": left, "syrup_conductivity": liquid * left,
        "liquid_share": share, "obstruction": kept, "best_possible": 1 / (liquid * left * bound + dry),
        "resistivity": 1 / (liquid * left * kept + dry),
        "salt_fraction": components["salt"] / np.maximum(balance.mass, 1e-12),
    }  # fmt: skip
