"""A mass in the measures of one kitchen: which scoops come nearest without a drawer full of them.

Of all ways to add a few scoops the chosen one has the smallest  |m − m₀| / m₀ + trouble · (scoops + kinds).
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.errors import RecipeError
from lumped.pantry.amounts import weighed
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.measures import kitchen, scaled, together, weight_of
from lumped.pantry.wording import grams_text, measures_text
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook

__all__ = ["SCALE", "Measured", "as_measures", "ways_to_measure"]

Array = NDArray[np.float64]
Counts = NDArray[np.int64]
SCALE = "scale"
_TROUBLE = 0.005  # a further scoop must bring the mass nearer by half a per cent: chosen
_KINDS = 3
_FINEST = 0.01  # nobody adds a scoop of less than a hundredth of what is in the bowl: chosen
_FINE_BELOW = 5e-3  # a scale for spices, in tenths of a gram, serves below this. [kg]
_FINE, _COARSE = 1e-4, 1e-3


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """A mass, as it is measured in one kitchen.

    Parameters
    ----------
    ingredient : str
        Key of the ingredient.
    words : str
        "1¼ cups + 2 tbsp", or "125 g".
    terms : tuple of (str, Fraction)
        Measure and how many of it; empty on a scale.
    mass : Value
        What these measures hold. [kg]
    wanted : float
        What should be in the bowl. [kg]
    shift : float
        How much more that is than what was wanted, as a share of it. [1]
    scoops : int
        How often something is filled.
    """

    ingredient: str
    words: str
    terms: tuple[tuple[str, Fraction], ...]
    mass: Value
    wanted: float
    shift: float
    scoops: int


def as_measures(mass: float, ingredient: Ingredient, system: str, method: str | None = None) -> Measured:
    """Say a mass in the measures that a kitchen has.

    Parameters
    ----------
    mass : float
        How much is wanted. [kg]
    ingredient : Ingredient
        Of what.
    system : str
        Whose measures: a key of `measures.kitchens()`, or "scale" for grams (tenths of a gram below 5 g).
    method : str, optional
        How measures are filled.

    Returns
    -------
    Measured
        At most three kinds of scoop, few scoops preferred.

    Raises
    ------
    RecipeError
        If the mass is not positive or more than any bowl holds, or nobody knows what measures of it weigh.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> found = as_measures(0.1875, pantry()["plain-flour"], "us")
    >>> found.words, round(found.mass.mean, 4)
    ('1½ cups', 0.1875)
    """
    return ways_to_measure(mass, ingredient, system, method, ways=1)[0]


def ways_to_measure(
    mass: float, ingredient: Ingredient, system: str, method: str | None = None, *, ways: int = 3
) -> tuple[Measured, ...]:
    """Give the best ways to measure a mass, more and less than it among them; the best one first.

    Parameters
    ----------
    mass, ingredient, system, method
        As of `as_measures`.
    ways : int
        How many.

    Returns
    -------
    tuple of Measured
        Of different masses; fewer than `ways` on a scale, where only the neighbouring marks are offered.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> [each.words for each in ways_to_measure(0.0127, pantry()["table-salt"], "scale")]
    ['13 g', '12 g']
    """
    _refuse_odd(mass, ingredient)
    if system == SCALE:
        return _on_a_scale(mass, ingredient, ways)
    scoops = kitchen(system).scoops
    kinds = [(scoop.measure, scoop.share) for scoop in scoops] + [("dash", Fraction(1))]
    each = {measure: weight_of(measure, ingredient, system, method) for measure in {kind[0] for kind in kinds}}
    weights = np.array([float(share) * each[measure].mean for measure, share in kinds])
    counts = _counts(system, math.floor(mass / weights[0]))
    masses = counts @ weights
    smallest = np.where(counts > 0, weights, np.inf).min(1)
    worth = smallest >= _FINEST * mass
    if worth.any():
        counts, masses = counts[worth], masses[worth]
    gap = np.abs(masses - mass) / mass
    order = np.argsort(gap + _TROUBLE * (counts.sum(1) + (counts > 0).sum(1)), kind="stable")
    chosen = _either_side(masses, gap, order, mass, ways)
    return tuple(_measured(counts[row], kinds, each, mass, ingredient) for row in chosen)


def _either_side(masses: Array, gap: Array, order: Counts, mass: float, ways: int) -> list[int]:
    """Rows: the best, the best of those that are less and of those that are more, the nearest, then the next best."""
    less, more = order[masses[order] < mass * (1 - 1e-9)][:1], order[masses[order] > mass * (1 + 1e-9)][:1]
    first = [int(row) for row in (order[0], *less, *more, np.argmin(gap), *order[:200])]
    rows: list[int] = []
    for row in first:
        if len(rows) < ways and not any(math.isclose(masses[row], masses[old], rel_tol=1e-9) for old in rows):
            rows.append(row)
    return rows


@cache
def _few(system: str) -> Counts:
    """All ways to take scoops of at most three kinds, the largest left out. (ways, kinds)"""
    scoops = kitchen(system).scoops
    most = [math.ceil(each - 1e-9) - 1 for each in _until_the_next(system)]
    rows = np.zeros((1, len(scoops) + 1), np.int64)
    for kind in range(1, len(scoops) + 1):
        grown = np.repeat(rows, most[kind] + 1, 0)
        grown[:, kind] = np.tile(np.arange(most[kind] + 1), len(rows))
        rows = grown[(grown > 0).sum(1) <= _KINDS]
    return np.asarray(rows[_sensible(rows, [scoop.share for scoop in scoops])])


def _sensible(rows: Counts, shares: Sequence[Fraction]) -> NDArray[np.bool_]:
    """No pinch beside a scoop, no eighth of a spoon but by itself, no thirds beside halves and quarters."""
    thirds = np.array([share.denominator == 3 for share in shares])
    parts = np.array([share.denominator in (2, 4) for share in shares]) & _of_cups(shares)
    pinch, scoops = rows[:, -1] > 0, rows[:, :-1] > 0
    eighths = np.array([share.denominator == 8 for share in shares])
    alone = ~(scoops & eighths).any(1) | (rows.sum(1) == 1)
    return np.asarray(alone & ~(pinch & scoops.any(1)) & ~((scoops & thirds).any(1) & (scoops & parts).any(1)))


def _of_cups(shares: Sequence[Fraction]) -> NDArray[np.bool_]:
    """The first drawer: up to where a whole follows a part."""
    wholes = np.cumsum([share == 1 for share in shares])
    return np.asarray(wholes == 1)


def _until_the_next(system: str) -> list[float]:
    """How many scoops of a kind make the next larger whole of its drawer: 2 half cups a cup, 4 spoons a quarter. [1]"""
    place = kitchen(system)
    held = [float(scoop.share) * place.volumes[scoop.measure].mean for scoop in place.scoops]
    held.append(handbook().value("measures", "handling", "pinch").mean)
    limits = [math.inf]
    for number, (scoop, volume) in enumerate(zip(place.scoops, held, strict=False)):
        whole = place.volumes[scoop.measure].mean if scoop.share < 1 else held[max(number - 1, 0)]
        limits.append(min(whole / volume, 4.0))
    return [2.0, *limits[2:], 2.0]


def _counts(system: str, whole: int) -> Counts:
    """Ways to take scoops when `whole` of the largest kind are less than what is wanted. (ways, kinds)"""
    few = _few(system)
    parts = []
    for largest in {0, max(whole - 1, 0), whole, whole + 1} if whole < _KINDS else {whole - 1, whole, whole + 1}:
        rows = few.copy()
        rows[:, 0] = largest
        parts.append(rows)
    counts = np.concatenate(parts)
    kinds = (counts > 0).sum(1)
    return np.asarray(counts[(kinds > 0) & (kinds <= _KINDS)])


def _measured(
    counts: Counts, kinds: Sequence[tuple[str, Fraction]], each: dict[str, Value], mass: float, ingredient: Ingredient
) -> Measured:
    totals: dict[str, Fraction] = {}
    for count, (measure, share) in zip(counts.tolist(), kinds, strict=True):
        if count:
            totals[measure] = totals.get(measure, Fraction(0)) + count * share
    parts = [scaled(each[measure], float(amount)) for measure, amount in totals.items()]
    held = parts[0] if len(parts) == 1 else together(parts)
    terms = tuple(totals.items())
    return Measured(
        ingredient=ingredient.key, words=measures_text(terms), terms=terms, mass=held, wanted=mass,
        shift=held.mean / mass - 1, scoops=int(counts.sum()),
    )  # fmt: skip


def _on_a_scale(mass: float, ingredient: Ingredient, ways: int) -> tuple[Measured, ...]:
    step = _FINE if mass < _FINE_BELOW else _COARSE
    marks = {max(math.floor(mass / step + 1e-9), 1), max(math.ceil(mass / step - 1e-9), 1)}
    near = sorted(marks, key=lambda mark: abs(mark * step - mass))[:ways]
    return tuple(
        Measured(
            ingredient=ingredient.key, words=grams_text(mark * step, step), terms=(), mass=_shown(mark * step, step),
            wanted=mass, shift=mark * step / mass - 1, scoops=1,
        )
        for mark in near
    )  # fmt: skip


def _shown(mass: float, step: float) -> Value:
    if step == _COARSE:
        return weighed(mass)
    book = handbook()
    share, least = (book.value("measures", "handling", key).high for key in ("by_weight", "by_fine_weight_least"))
    half = min(mass, max(share * mass, least))
    memory = Provenance(status=Status.FROM_MEMORY)
    return Value(mean=mass, low=mass - half, high=mass + half, unit="kg", provenance=memory)


def _refuse_odd(mass: float, ingredient: Ingredient) -> None:
    if not mass > 0:
        raise RecipeError("measures-nothing", ingredient=ingredient.name, mass=f"{mass * 1e3:g}")
    most = handbook().value("measures", "handling", "most").mean
    if not mass <= most:
        raise RecipeError("amount-too-much", text=ingredient.name, mass=f"{mass:,.0f}", most=f"{most:g}")
