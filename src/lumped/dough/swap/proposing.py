"""From what a search found to proposals: in kitchen measures, checked again, unlike each other, and explained."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import NamedTuple

import numpy as np

from lumped.dough.beliefs import sorted_out
from lumped.dough.kneading import Kneading, kneading
from lumped.dough.properties import PROPERTIES, drawn_prices, spent
from lumped.dough.recipe import Portion, Recipe
from lumped.dough.safety import Caution, allergens_of, cautions_on
from lumped.dough.swap.explaining import notes_on, reasons_for
from lumped.dough.swap.figures import WAYS, figures_of
from lumped.dough.swap.kitchen import rounded_recipe, without_specks
from lumped.dough.swap.laying_out import Base, is_better, made_otherwise_in
from lumped.dough.swap.naming import title_of
from lumped.dough.swap.requirements import beyond
from lumped.dough.swap.results import Change, Proposal
from lumped.dough.swap.search import KEPT, Found, Search
from lumped.dough.swap.together import searched
from lumped.dough.swap.traces import traces_in
from lumped.dough.texture import Feel, feel_of
from lumped.dough.unfit import standing
from lumped.dough.what_if import ratio
from lumped.quantities import Value
from lumped.texts import say

__all__ = ["amounts_of", "felt", "properties_of", "proposal_of", "proposals_of"]

_AIMS = {"cheapest": ("cost", 1.0), "saltless": ("sodium", 1.0), "keeps-longer": ("water_activity", 1.0),
         "carries-better": ("resistivity", 1.0), "blocks-better": ("resistivity", -1.0)}  # fmt: skip
_ASIDE = ("beyond", "amounts")  # of what rounding counts, what is no property of a dough
SHOWN = ("resistivity", "water_activity", "hydration", "ph", "sodium", "cost")


class _Ready(NamedTuple):
    """A recipe that a kitchen can make and that keeps everything."""

    recipe: Recipe
    found: Found
    over: Mapping[str, float]
    shifts: Mapping[str, float]


def proposals_of(base: Base, search: Search, spoken: Recipe) -> Iterator[Proposal]:
    """Round, check again, and take those that are not alike: other families first, then other ingredients.

    Those come first that can't bring traces of what was refused, and of these the one that is best at what is aimed at.

    Parameters
    ----------
    base, search : Base, Search
        What is asked, and where it is looked for.
    spoken : Recipe
        The recipe as it was, in the measures that are asked for.
    """
    told = [proposal_of(base, *each) for each in _ready_made(base, search, spoken)]
    fits = felt(base.recipe, base.learnt).fits
    kept = [each for each in told if _carries_or_blocks(base, each) and each.feel.fits >= fits and _is_sound(each)]
    yield from sorted(kept, key=lambda each: (sum(map(len, each.traces.values())), _against(base, each)))


def _against(base: Base, proposal: Proposal) -> float:
    """What is shown of a proposal at what is aimed at, the less the better; the same for all without an aim."""
    key, sign = _AIMS.get(base.wish.target or "", ("", 0.0))
    return sign * proposal.properties[key].mean if key in proposal.properties else 0.0


def _ready_made(
    base: Base, search: Search, spoken: Recipe
) -> Iterator[tuple[Recipe, Mapping[str, float], Mapping[str, float]]]:
    """Recipes in kitchen measures that are not alike, how far each is beyond what is allowed, what rounding did."""
    ready: list[_Ready] = []
    kept = (each for each in _found(base, search) if each.over <= KEPT)
    for found in (without_specks(each, search, base.shop, base.system) for each in kept):
        if found.over > KEPT or not is_better(search, found) or _is_among(ready, found):
            continue
        recipe, rounded = rounded_recipe(base.recipe, found, search, base.shop, system=base.system, spoken=spoken)
        over = _beyond(search, recipe)
        if sum(over.values()) <= KEPT:
            ready.append(_Ready(recipe, found, over, rounded.shifts if rounded else {}))
        if len(ready) >= 3 * base.count:
            break
    for each in _distinct(ready, search, base):
        yield each.recipe, each.over, each.shifts


def _found(base: Base, search: Search) -> tuple[Found, ...]:
    """The recipe made in other ways where no more is asked and that is enough, else what a search finds besides."""
    others = sorted(made_otherwise_in(base, search), key=lambda each: each.score)
    kept = [each for each in others if each.over <= KEPT]
    return tuple(kept) if len(kept) >= base.count else (*kept, *searched(search))


def _is_among(ready: list[_Ready], found: Found) -> bool:
    """Whether the same ingredients are in a recipe that is there already, made the same way."""
    return any(
        each.found.way == found.way and np.array_equal(each.found.masses > 0, found.masses > 0) for each in ready
    )


def _carries_or_blocks(base: Base, proposal: Proposal) -> bool:
    """Tell from all draws whether the resistivity is no worse than the old interval's end, as wide as unmeasured."""
    old, learnt = (each.value(each.chain.resistivity, "Ω·m", "resistivity") for each in (base.before, base.learnt))
    new = proposal.properties["resistivity"].mean / (learnt.mean / old.mean)
    return new <= old.high if base.recipe.kind == "conducting" else new >= old.low


def _is_sound(proposal: Proposal) -> bool:
    """Tell whether it is a dough, and does not the opposite of what it is for: nothing else is worth a table."""
    return standing(proposal.recipe.kind, proposal.feel, proposal.properties["resistivity"]) == "sound"


def _distinct(ready: list[_Ready], search: Search, base: Base) -> list[_Ready]:
    def doubt(each: _Ready) -> int:
        return sum(map(len, traces_in(each.recipe.ingredients, base.wish, base.shop).values()))

    families: set[tuple[str, ...]] = set()
    first: list[_Ready] = []
    later: list[_Ready] = []
    for each in sorted(ready, key=doubt):
        family = (each.recipe.cooked, *sorted(search.families[i] for i in each.found.added))
        (later if family in families else first).append(each)
        families.add(family)
    return (first + later)[: base.count]


def _beyond(search: Search, recipe: Recipe) -> dict[str, float]:
    """How far a recipe is beyond what each requirement allows, as it is written."""
    masses = np.array([recipe.mass_of(key) for key in search.table.keys])
    new = figures_of(search.table, masses[:, None], np.array([WAYS.index(recipe.cooked)]))
    return {key: float(each[0]) for key, each in beyond(search.standard, new).items()}


def proposal_of(base: Base, recipe: Recipe, over: Mapping[str, float], shifts: Mapping[str, float]) -> Proposal:
    """Work a recipe out with everything that is open, and explain it."""
    recipe = recipe if recipe is base.recipe else replace(recipe, title=title_of(base.recipe, recipe, base.shop))
    done = kneading(recipe, base.shop, base.calibration)
    was, now = (allergens_of(each.masses, base.shop).names for each in (base.recipe, recipe))
    return Proposal(
        recipe=recipe, changes=tuple(_changes(base.recipe, recipe)), properties=properties_of(done, base),
        ratio=ratio(done, base.learnt), beyond=over, reasons=reasons_for(base.learnt, done, base.shop),
        notes=notes_on(base.recipe, recipe, base.wish, base.shop), allergens=now,
        allergens_gone=tuple(each for each in was if each not in now),
        allergens_new=tuple(each for each in now if each not in was),
        rounding={key: each for key, each in shifts.items() if key not in _ASIDE},
        traces=traces_in(recipe.ingredients, base.wish, base.shop),
        feel=felt(recipe, done), cautions=tuple(_new_cautions(base, recipe, float(np.median(done.chain.mass)))),
        money=base.money,
    )  # fmt: skip


def _new_cautions(base: Base, recipe: Recipe, mass: float) -> Iterator[str]:
    """What is to be minded with a recipe that was not with the old one, the gravest first."""
    known = {each.key for each in _cautions(base, base.recipe, float(np.median(base.learnt.chain.mass)))}
    yield from (each.brief for each in _cautions(base, recipe, mass) if each.key not in known)


def _cautions(base: Base, recipe: Recipe, mass: float) -> tuple[Caution, ...]:
    return cautions_on(
        recipe.masses, mass, base.shop, cooked=recipe.cooked, date=None, name=recipe.title, most=recipe.most
    )


def _changes(before: Recipe, after: Recipe) -> Iterator[Change]:
    written = amounts_of(after)
    for key in dict.fromkeys((*before.ingredients, *after.ingredients)):
        yield Change(ingredient=key, before=before.mass_of(key), after=after.mass_of(key), written=written.get(key, ""))


def amounts_of(recipe: Recipe) -> dict[str, str]:
    """Give the amount of each ingredient in words, with what is added by feel."""
    return {
        key: " + ".join(_written(each) for each in recipe.portions if each.ingredient == key)
        for key in recipe.ingredients
    }


def felt(recipe: Recipe, done: Kneading) -> Feel:
    """Say how a recipe that was followed through is expected to feel."""
    return feel_of(recipe, done.chain, done.value(done.chain.hydration, "", "hydration"), shop=done.shop)


def _written(portion: Portion) -> str:
    if portion.as_needed is None:
        return portion.written
    low, high = (f"{1e3 * each:.0f}" for each in portion.as_needed)
    return say("swap-by-feel", amount=portion.written, low=low, high=high)


def properties_of(done: Kneading, base: Base) -> dict[str, Value]:
    """Give what a dough has, by key of `PROPERTIES`, cost only if every ingredient has a price. [unit of each]"""
    given = sorted_out(done.recipe, done.named, base.shop)
    cost = spent(given.keys, given.masses, drawn_prices(base.prices))
    return {
        key: done.value(PROPERTIES[key].given(done.chain, cost), PROPERTIES[key].unit, key)
        for key in SHOWN if key != "cost" or cost is not None
    }  # fmt: skip
