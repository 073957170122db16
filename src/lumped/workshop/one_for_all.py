"""Several doughs that each ask another oil: one oil for all of them, where it brings nothing that the others lack."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from lumped.pantry import Ingredient, Pantry
from lumped.reference import handbook

if TYPE_CHECKING:
    from lumped.workshop.shopping import Bought

__all__ = ["OneForAll", "one_for_all"]

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class OneForAll:
    """One oil in place of several.

    Parameters
    ----------
    keys : tuple of str
        All that are asked for.
    kept : str
        The one that would do.
    need : float
        How much of it all doughs take together. [kg]
    saved : (n,) float
        Money that is not spent, in draws. [money]
    """

    keys: tuple[str, ...]
    kept: str
    need: float
    saved: Array


def one_for_all(
    lines: "Sequence[Bought]",
    shop: Pantry,
    *,
    line: "Callable[[str, float, float], Bought]",
    paid: "Callable[[Bought], Array]",
) -> OneForAll | None:
    """Find the oil that in place of all others saves most; None if there is none that saves.

    Parameters
    ----------
    lines : sequence of Bought
        The shopping list.
    shop : Pantry
        What the ingredients are.
    line : callable
        Gives the line for an ingredient: its key, how much is needed, how much is there.
    paid : callable
        Gives what a line costs, in draws.
    """
    alike = handbook().entry("workshop", "oils-alike").facts["keys"]
    asked = [each for each in lines if each.ingredient in alike and each.packets]
    if len(asked) < 2:
        return None
    spent, need = sum(map(paid, asked), np.zeros(1)), sum(each.need for each in asked)
    found = [
        OneForAll(
            keys=tuple(each.ingredient for each in asked), kept=kept.ingredient, need=need,
            saved=spent - paid(line(kept.ingredient, need, kept.have)),
        )
        for kept in asked if all(_brings_no_more(shop[kept.ingredient], shop[each.ingredient]) for each in asked)
    ]  # fmt: skip
    best = max(found, key=lambda each: float(np.median(each.saved)), default=None)
    return best if best is not None and np.median(best.saved) > 0 else None


def _brings_no_more(one: Ingredient, other: Ingredient) -> bool:
    """Whether an oil brings no allergen, trace or caution that another does not."""
    return set(_brought(one)) <= set(_brought(other))


def _brought(each: Ingredient) -> Iterator[str]:
    yield from (*each.allergens_eu, *each.allergens_us, *each.may_contain, *each.cautions, *each.contains)
