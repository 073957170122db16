"""A whole recipe in kitchen measures, chosen for all ingredients together so that the dough moves least.

Each ingredient has a few ways near its mass; of all combinations the one wins whose  √(Σ (weight · change)² + n fuss²)
is smallest, over the dough's properties and the n ingredients that are not measured in their plainest way. A cup of
flour too full may be mended by water too full: rounding each alone can't see.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.errors import RecipeError
from lumped.pantry.choosing import SCALE, Measured, ways_to_measure
from lumped.pantry.ingredient import Ingredient

__all__ = ["Rounded", "Wanted", "rounded_to_kitchen"]

Array = NDArray[np.float64]
Shift = Callable[[Array], Mapping[str, Array]]
_AT_ONCE = 4096  # combinations that are all tried; more are searched one ingredient at a time
_SWEEPS = 8
_FUSS = (
    0.005  # another way than the plainest must keep the dough half a per cent nearer, as for a further scoop: chosen
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """What a recipe wants of an ingredient.

    Parameters
    ----------
    ingredient : Ingredient
        Of what.
    mass : float
        How much. [kg]
    method : str or None
        How measures are filled.
    """

    ingredient: Ingredient
    mass: float
    method: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Rounded:
    """A recipe in kitchen measures.

    Parameters
    ----------
    portions : tuple of Measured
        Words and mass of each ingredient, in the recipe's order.
    moved : float
        √Σ (weight · change)² over all properties. [1]
    shifts : mapping of str to float
        Relative change of each property against the recipe as it was. [1]
    each_alone : float
        What `moved` would have been, had each ingredient been rounded by itself. [1]
    tried : int
        How many combinations were computed.
    complete : bool
        Whether these were all combinations.
    """

    portions: tuple[Measured, ...]
    moved: float
    shifts: Mapping[str, float]
    each_alone: float
    tried: int
    complete: bool


def rounded_to_kitchen(
    wanted: Sequence[Wanted],
    system: str,
    shift: Shift,
    *,
    weights: Mapping[str, float] | None = None,
    ways: int = 3,
    fuss: float = _FUSS,
) -> Rounded:
    """Round a whole recipe to measures that a kitchen has.

    Parameters
    ----------
    wanted : sequence of Wanted
        Ingredients and masses.
    system : str
        Whose measures, or "scale". What no measure can weigh goes on the scale.
    shift : callable
        Takes masses, (ingredients, n) float [kg], and gives for each property of the dough its relative change against
        the recipe as it was, (n,) float [1].
    weights : mapping of str to float, optional
        How much each property counts; 1 for those left out. [1]
    ways : int
        How many ways of measuring each ingredient are considered.
    fuss : float
        How much nearer the dough must stay for an ingredient to be measured in another than its plainest way. [1]

    Returns
    -------
    Rounded
        Never worse than rounding each ingredient by itself.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> flour, water = (Wanted(ingredient=pantry()[key], mass=mass) for key, mass in
    ...                 (("plain-flour", 0.140), ("tap-water", 0.100)))
    >>> found = rounded_to_kitchen([flour, water], "us", lambda m: {"hydration": m[1] / m[0] / (0.1 / 0.14) - 1})
    >>> found.moved <= found.each_alone
    True
    """
    table = [_ways(each, system, ways) for each in wanted]
    masses = [np.array([way.mass.mean for way in options]) for options in table]
    costs = _Costs(masses, shift, weights or {}, fuss)
    rows = np.zeros((1, len(table)), np.int64)
    alone = costs.moved(rows)[0]
    complete = int(np.prod([float(len(options)) for options in table])) <= _AT_ONCE
    best = _of_all(costs, table) if complete else _in_turn(costs, table)
    found = costs.changes(best[None, :])
    return Rounded(
        portions=tuple(options[number] for options, number in zip(table, best.tolist(), strict=True)),
        moved=float(costs.moved(best[None, :])[0]), shifts={name: float(change[0]) for name, change in found.items()},
        each_alone=float(alone), tried=costs.tried, complete=complete,
    )  # fmt: skip


class _Costs:
    """How far a combination moves the dough; counts what was computed."""

    def __init__(self, masses: list[Array], shift: Shift, weights: Mapping[str, float], fuss: float) -> None:
        self.masses, self.shift, self.weights, self.fuss, self.tried = masses, shift, weights, fuss, 0

    def changes(self, rows: NDArray[np.int64]) -> dict[str, Array]:
        """Give each property's change for rows of choices, (n, ingredients)."""
        chosen = np.stack([options[rows[:, number]] for number, options in enumerate(self.masses)])
        return {name: np.broadcast_to(change, (len(rows),)) for name, change in self.shift(chosen).items()}

    def moved(self, rows: NDArray[np.int64]) -> Array:
        """How far the dough's properties move, (n,). [1]"""
        self.tried += len(rows)
        total = np.zeros(len(rows))
        for name, change in self.changes(rows).items():
            total = total + (self.weights.get(name, 1.0) * change) ** 2
        return np.where(np.isfinite(total), np.sqrt(total), np.inf)

    def __call__(self, rows: NDArray[np.int64]) -> Array:
        """The same, and the fuss of ways that are not the plainest, which stand first. (n,) [1]"""
        return np.asarray(np.sqrt(self.moved(rows) ** 2 + self.fuss**2 * (rows > 0).sum(axis=1)))


def _ways(each: Wanted, system: str, ways: int) -> tuple[Measured, ...]:
    try:
        return ways_to_measure(each.mass, each.ingredient, system, each.method, ways=ways)
    except RecipeError as problem:
        if problem.code != "recipe-no-weight":
            raise
        return ways_to_measure(each.mass, each.ingredient, SCALE, ways=ways)


def _of_all(costs: _Costs, table: Sequence[Sequence[Measured]]) -> NDArray[np.int64]:
    """The best of all combinations; of equals that with the fewest scoops."""
    sizes = tuple(len(options) for options in table)
    rows = np.stack(np.unravel_index(np.arange(int(np.prod(sizes))), sizes), axis=1)
    scoops = np.sum([np.array([way.scoops for way in ways])[rows[:, i]] for i, ways in enumerate(table)], axis=0)
    order = np.lexsort((scoops, np.round(costs(rows), 9)))
    return np.asarray(rows[order[0]])


def _in_turn(costs: _Costs, table: Sequence[Sequence[Measured]]) -> NDArray[np.int64]:
    """Change one or two ingredients at a time as long as it helps, from each rounded alone."""
    sizes = [len(options) for options in table]
    best = np.zeros(len(table), np.int64)
    least = costs(best[None, :])[0]
    for _ in range(_SWEEPS):
        rows = _neighbours(best, sizes)
        found = costs(rows)
        if not found.min() < least:
            break
        best, least = rows[np.argmin(found)], found.min()
    return best


def _neighbours(best: NDArray[np.int64], sizes: Sequence[int]) -> NDArray[np.int64]:
    """All choices that differ in one or two ingredients. (n, ingredients)"""
    steps = [(i, number) for i, size in enumerate(sizes) for number in range(size) if number != best[i]]
    pairs = [(one, other) for a, one in enumerate(steps) for other in steps[a:] if one[0] != other[0] or one == other]
    rows = np.repeat(best[None, :], len(pairs), 0)
    for row, ((i, number), (j, second)) in enumerate(pairs):
        rows[row, i], rows[row, j] = number, second
    return rows
