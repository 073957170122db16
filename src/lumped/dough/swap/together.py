"""Searches side by side: in each round the recipes of all of them go through the chain in one pass.

A pass costs nearly as much for few recipes as for many, so a dozen small searches take hardly longer than two.
"""

from collections.abc import Mapping, Sequence
from dataclasses import fields
from typing import Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.swap.figures import Figures, Table, figures_of
from lumped.dough.swap.search import Ask, Found, Scored, Search, steps_of

__all__ = ["searched", "searched_together"]

Array = NDArray[np.float64]


def searched(search: Search, *, rounds: int | None = None) -> tuple[Found, ...]:
    """Search for recipes.

    Parameters
    ----------
    search : Search
        What is searched for.
    rounds : int, optional
        How many ingredients may be added; two more than must leave, if left out.

    Returns
    -------
    tuple of Found
        The best first; none if all are far beyond what is allowed.
    """
    steps, answer = steps_of(search, rounds), None
    try:
        ask = next(steps)
        while True:
            answer = ask.search.scores(ask.masses, ask.ways)
            ask = steps.send(answer)
    except StopIteration as done:
        found: tuple[Found, ...] = done.value
        return found


def searched_together(searches: Sequence[Search], wide: Table) -> tuple[tuple[Found, ...], ...]:
    """Search for recipes in several ways at once.

    Parameters
    ----------
    searches : sequence of Search
        What is searched for: all round the same recipe.
    wide : Table
        All ingredients of any of them.

    Returns
    -------
    tuple of tuple of Found
        What each of them finds, as `searched` gives it.
    """
    rows = [np.array([wide.row(key) for key in each.table.keys]) for each in searches]
    running = {number: steps_of(each) for number, each in enumerate(searches)}
    found: dict[int, tuple[Found, ...]] = {}
    answers: dict[int, Scored | None] = dict.fromkeys(running)
    while answers:
        asks: dict[int, Ask] = {}
        for number, answer in answers.items():
            try:
                asks[number] = next(running[number]) if answer is None else running[number].send(answer)
            except StopIteration as done:
                found[number] = done.value
        answers = dict(_answered(asks, rows, wide)) if asks else {}
    return tuple(found[number] for number in running)


def _answered(asks: Mapping[int, Ask], rows: Sequence[NDArray[np.intp]], wide: Table) -> dict[int, Scored]:
    """Scores of what each search asks for, from one pass."""
    ends = np.cumsum([0, *(each.masses.shape[1] for each in asks.values())]).tolist()
    masses = np.zeros((len(wide.keys), ends[-1]))
    for (number, ask), start, end in zip(asks.items(), ends, ends[1:], strict=False):
        masses[rows[number], start:end] = ask.masses
    new = figures_of(wide, masses, np.concatenate([each.ways for each in asks.values()]))
    return {
        number: ask.search.judged(ask.masses, _part(new, start, end))
        for (number, ask), start, end in zip(asks.items(), ends, ends[1:], strict=False)
    }


def _part(new: Figures, start: int, end: int) -> Figures:
    """Figures of some of the recipes."""
    every: dict[str, Any] = {each.name: getattr(new, each.name) for each in fields(new)}
    cut: dict[str, Any] = {name: None if each is None else each[..., start:end] for name, each in every.items()}
    return Figures(**cut)
