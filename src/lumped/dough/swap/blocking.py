"""What stands in the way: one requirement, or one part of the wish, is dropped at a time, and the search run again."""

from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from typing import NamedTuple

import numpy as np

from lumped.dough.swap.candidates import gone_from
from lumped.dough.swap.doses import told_as
from lumped.dough.swap.figures import ELEMENTS, Figures, figures_of
from lumped.dough.swap.laying_out import Base, is_better, laid_out, search_for
from lumped.dough.swap.requirements import REQUIREMENTS, beyond_hands, texture_parts
from lumped.dough.swap.results import Blocker
from lumped.dough.swap.search import KEPT, Found, Search
from lumped.dough.swap.together import searched_together
from lumped.dough.swap.wants import Wish
from lumped.dough.texture import WELL_INSIDE
from lumped.errors import RecipeError
from lumped.quantities import rounded_text, short_text
from lumped.texts import say

__all__ = ["blockers_of", "texture_words"]

_SHARES = ("body", "softener", "sugar", "salt", "binder")
_NARROW = 8  # recipes that go on where it only matters whether there is one


def blockers_of(base: Base, search: Search) -> Iterator[Blocker]:
    """Name each requirement and each part of the wish without which something could be had.

    Parameters
    ----------
    base : Base
        What the swap starts from.
    search : Search
        The search that found nothing.
    """
    tries = list(_tries(base, search))
    keys = dict.fromkeys(key for each in tries for key in each.search.table.keys)
    found = searched_together([each.search for each in tries], laid_out(base, tuple(keys)))
    for each, recipes in zip(tries, found, strict=True):
        yield from _told(each, recipes, base)


class _Try(NamedTuple):
    """What is dropped, a requirement or a part of the wish, and the search without it."""

    key: str
    what: str
    search: Search


def _tries(base: Base, search: Search) -> Iterator[_Try]:
    for key in REQUIREMENTS:
        if key in search.standard.asked:
            yield _Try(key, "", _narrow(replace(search, without=frozenset([key]))))
    for key, what, wish in _lesser(base.wish):
        if not gone_from(base.recipe, wish, base.shop) and wish.target is None:
            continue  # then the recipe itself would do
        with suppress(RecipeError):  # still nothing left to make a dough of
            yield _Try(key, what, _narrow(search_for(replace(base, wish=wish))))


def _narrow(search: Search) -> Search:
    return replace(search, beam=_NARROW, enough=True)


def _told(tried: _Try, recipes: Sequence[Found], base: Base) -> Iterator[Blocker]:
    key, what, search = tried
    found = next(iter(recipes), None)
    if found is None or found.over > KEPT or not is_better(search, found):
        return
    new = figures_of(search.table, found.masses[:, None], np.array([found.way]))
    yield Blocker(
        requirement=what or key, ingredients=tuple(search.table.keys[i] for i in found.added),
        words=say(f"swap-blocks-{key}", what=what, instead=_instead(found, base, search), **_slots(search, new)),
    )  # fmt: skip


def _lesser(wish: Wish) -> Iterator[tuple[str, str, Wish]]:
    """The wish with one part of several taken back."""
    parts: list[tuple[str, str, Wish]] = []
    if wish.region is not None:
        parts.append(("region", wish.region, replace(wish, region=None)))
    for diet in wish.diets:
        parts.append(("diet", diet, replace(wish, diets=tuple(each for each in wish.diets if each != diet))))
    for word in wish.classes:
        parts.append(("class", word, replace(wish, classes=tuple(each for each in wish.classes if each != word))))
    for key in wish.ingredients:
        left = tuple(each for each in wish.ingredients if each != key)
        parts.append(("ingredient", key, replace(wish, ingredients=left)))
    if not wish.stove:
        parts.append(("stove", "stove", replace(wish, stove=True)))
    yield from (part for part in parts if len(parts) > 1)


def _instead(found: Found, base: Base, search: Search) -> str:
    names = [base.shop[search.table.keys[i]].name for i in found.added]
    return ", ".join(names) or say("swap-nothing-new")


def _slots(search: Search, new: Figures) -> dict[str, str]:
    """Figures that a sentence on a blocker may show."""
    old = search.standard.old
    return {
        "resistivity": short_text(new.resistivity[0], 3), "before": short_text(old.resistivity[0], 3),
        "ph": rounded_text(new.ph[0]), "ph_before": rounded_text(old.ph[0]), "activity": f"{new.water_activity[0]:.2f}",
        "activity_before": f"{old.water_activity[0]:.2f}",
        "cost": "–" if new.cost is None or old.cost is None else f"{new.cost[0] / old.cost[0]:.1f}",
        "too_much": "; ".join(_too_much(search, new)), "texture": "; ".join(texture_words(old, new)),
    }  # fmt: skip


def texture_words(old: Figures, new: Figures) -> Iterator[str]:
    """Say what of the texture leaves what is allowed: water to flour, the body, too much fat, sugar, salt or binder."""
    if abs(new.place[0]) > max(abs(float(old.place[0])), WELL_INSIDE):
        yield say(f"swap-texture-{'wet' if new.place[0] > 0 else 'dry'}", water=rounded_text(100 * new.hydration[0]))
    shares = {key: [100 * float(getattr(each, key)[0]) for each in (old, new)] for key in _SHARES}
    far = texture_parts(old, new)
    for key, (before, after) in shares.items():
        if far[key][0] > KEPT:
            yield say(f"swap-texture-{key}", before=rounded_text(before), after=rounded_text(after))


def _too_much(search: Search, new: Figures) -> Iterator[str]:
    """What goes beyond limits and doses, and how far."""
    standard = search.standard
    for symbol, share, most in zip(ELEMENTS, new.elements[:, 0], standard.limits, strict=True):
        if share > most:
            yield say("swap-too-much-share", name=say(f"swap-element-{symbol}"), share=short_text(1e2 * share),
                      most=short_text(1e2 * most))  # fmt: skip
    for number, (count, most) in enumerate(zip(new.doses[:, 0], standard.doses, strict=True)):
        if count > most:
            yield say("swap-too-much-dose", name=told_as(number), share=rounded_text(count / most))
    if beyond_hands(standard.old, new)[0] > 0:
        yield say("swap-too-much-ph", ph=rounded_text(new.ph[0]))
