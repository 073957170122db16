"""What a search starts from: the recipe as it was, what is asked, and all that may go in."""

import datetime
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from lumped.dough.calibrating import Calibration
from lumped.dough.kneading import Kneading
from lumped.dough.other_ways import made_otherwise
from lumped.dough.recipe import Recipe
from lumped.dough.swap.candidates import candidates, doubt_of, family_of, gone_from, plainness_of, trouble_of
from lumped.dough.swap.figures import WAYS, Figures, Table, figures_of, table_of
from lumped.dough.swap.requirements import REQUIREMENTS, Standard, doses_of, gain, limits_of, row
from lumped.dough.swap.search import Found, Search
from lumped.dough.swap.wants import Wish
from lumped.pantry import Pantry
from lumped.quantities import Value

__all__ = ["Base", "is_better", "laid_out", "made_otherwise_in", "search_for"]

_WELL_WITHIN = 0.9  # of the old interval: middles of the chain and medians of draws are not quite the same
_STOVELESS = ("kettle", "microwave", "not cooked")


@dataclass(frozen=True, slots=True, kw_only=True)
class Base:
    """What a swap starts from; `learnt` is the recipe as measured batches make it known, `before` as it is without."""

    recipe: Recipe
    wish: Wish
    shop: Pantry
    before: Kneading
    prices: Mapping[str, Value] | None
    money: str
    system: str
    count: int
    date: datetime.date | None
    learnt: Kneading
    calibration: Calibration | None


def search_for(base: Base) -> Search:
    """Lay out the search: table, standard, and what is open."""
    recipe, wish, shop = base.recipe, base.wish, base.shop
    gone = gone_from(recipe, wish, shop)
    new = candidates(recipe, wish, shop)
    if base.prices is not None:
        new = tuple(key for key in new if key in base.prices)
    keys = (*recipe.ingredients, *new)
    table = laid_out(base, keys)
    same = WAYS.index(recipe.cooked)
    old = np.array([recipe.mass_of(key) for key in keys])
    figures = figures_of(table, old[:, None], np.array([same]))
    roles = {role for key in recipe.ingredients for role in shop[key].roles}
    ways = (same,) if wish.stove or recipe.cooked != "pot" else tuple(map(WAYS.index, _STOVELESS))
    return Search(
        table=table, standard=_standard(base, figures, table.prices is not None), old=old, ways=ways, same_way=same,
        gone=np.array([key in gone for key in keys]),
        trouble=trouble_of(keys, wish) + plainness_of(keys, recipe, shop), doubt=doubt_of(keys, wish, shop),
        families=tuple(family_of(shop[key]) for key in keys),
        roles=np.array([[float(role in shop[key].roles) for key in keys] for role in sorted(roles)]),
    )  # fmt: skip


def laid_out(base: Base, keys: Sequence[str]) -> Table:
    """Lay out ingredients, with their prices where there are any."""
    middle = {key: each.mean for key, each in base.prices.items()} if base.prices is not None else None
    return table_of(base.recipe, keys, base.shop, middle, system=base.system)


def _standard(base: Base, figures: Figures, priced: bool) -> Standard:
    resistivity = base.before.value(base.before.chain.resistivity, "Ω·m", "resistivity")
    conducts = base.recipe.kind == "conducting"
    room = np.log(resistivity.high / resistivity.mean) if conducts else np.log(resistivity.mean / resistivity.low)
    dropped = {"acidity"} if "acid" in base.wish.classes else set()
    dropped |= set() if priced else {"cost"}
    return Standard(
        old=figures, conducts=conducts, room=_WELL_WITHIN * float(max(room, 0.05)),
        limits=limits_of(figures, date=base.date), doses=doses_of(figures),
        asked=frozenset(REQUIREMENTS) - dropped, target=base.wish.target,
    )  # fmt: skip


def made_otherwise_in(base: Base, search: Search) -> Iterator[Found]:
    """Give the recipe made in each way that is open, its water set right for it; none if it may be made as it is.

    Where nothing else is asked, that is the answer, and nothing has to be searched for.
    """
    if search.same_way in search.ways or search.gone.any() or search.standard.target is not None:
        return
    for way in search.ways:
        made = made_otherwise(base.recipe, WAYS[way], base.shop)
        if made is not None:
            masses = np.array([made.mass_of(key) for key in search.table.keys])
            score, over = search.scores(masses[:, None], np.array([way]))
            yield Found(masses=masses, way=way, score=float(score[0]), over=float(over[0]), added=())


def is_better(search: Search, found: Found) -> bool:
    """Tell whether a recipe is a step towards what is aimed at; where nothing is aimed at, any is."""
    if search.standard.target is None:
        return True
    new = figures_of(search.table, found.masses[:, None], np.array([found.way]))
    least = row("change", "better") / (10 if search.standard.target == "keeps-longer" else 1)
    return bool(gain(search.standard, new)[0] >= least)
