"""The search: recipes grow by one ingredient at a time, and their masses move as long as it helps.

A beam of recipes is kept. In each round every recipe tries every ingredient in some amounts, all in one pass through
the chain; the best that are not alike go on, and their masses are moved up and down by steps that shrink. Nothing is
drawn by chance: the same question has the same answer.
"""

from collections.abc import Collection, Generator, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise
from typing import NamedTuple, TypeVar

import numpy as np
from numpy.typing import NDArray

from lumped.dough.swap.figures import Figures, Table, figures_of
from lumped.dough.swap.moves import trials_round
from lumped.dough.swap.requirements import Standard, beyond, row, score

__all__ = ["KEPT", "Ask", "Found", "Search", "Steps", "steps_of"]

Array = NDArray[np.float64]
Rows = NDArray[np.int64]
Scored = tuple[Array, Array]
_T = TypeVar("_T")
Steps = Generator["Ask", Scored, _T]
_AMOUNTS = (0.002, 0.006, 0.018, 0.05, 0.12, 0.25, 0.4)  # shares of all that goes in, at which an ingredient is tried
_COARSE = (0.7, 0.35, 0.17)
_QUICK = (0.5, 0.2)
_FINE = (0.25, 0.12, 0.06, 0.03, 0.015)
_ALIKE = 3  # recipes of one family in the beam
_ROUNDS_MORE = 2
_PATIENCE = {1: 4, 2: 9, 3: 15}  # moves by a step, by how many masses move together
_STRICT = 1e4
_DREGS = 0.05  # of what was in it: less is nothing
_FILLS = 0.1  # of what filled a role before: less fills it in part
_MARGIN = 0.1
_MENDABLE = 0.5  # beyond by more, a recipe is not brought back
_HOPELESS = 1.5  # beyond by more, fine steps don't mend it
KEPT = 1e-3  # how far beyond counts as kept, in units of a tolerance


@dataclass(frozen=True, slots=True, kw_only=True)
class Search:
    """What is searched for, and where.

    Parameters
    ----------
    table : Table
        All ingredients, I of them.
    standard : Standard
        What is asked.
    old : (I,) float
        The recipe as it was. [kg]
    gone : (I,) bool
        What must leave.
    trouble : (I,) float
        What getting an ingredient counts, and that it is not the plain one. [1]
    doubt : (I,) float
        What it counts that an ingredient may contain traces of what was refused. [1]
    families : tuple of str
        What each ingredient is like.
    roles : (R, I) float
        1 where an ingredient has a role that the recipe as it was has.
    ways : tuple of int
        Ways of making it that are open, by number.
    same_way : int
        How it was made.
    without : collection of str
        Requirements that are dropped.
    beam : int
        How many recipes go on from round to round.
    enough : bool
        Whether one recipe that keeps everything is enough: the search stops there.
    strict : bool
        Whether staying well within what is allowed outweighs all else; its square, so that no edge holds a step up.
    """

    table: Table
    standard: Standard
    old: Array
    gone: NDArray[np.bool_]
    trouble: Array
    doubt: Array
    families: tuple[str, ...]
    roles: Array
    ways: tuple[int, ...]
    same_way: int
    without: Collection[str] = field(default_factory=frozenset)
    beam: int = 14
    enough: bool = False
    strict: bool = False

    def scores(self, masses: Array, ways: Rows) -> Scored:
        """Give score and all that is beyond what is allowed, of (I, n) recipes. (n,), (n,)"""
        return self.judged(masses, figures_of(self.table, masses, ways))

    def judged(self, masses: Array, new: Figures) -> Scored:
        """Give the same of recipes whose figures are known."""
        total, over = score(self.standard, new, self._change(masses, new.mass), without=self.without)
        if self.strict:
            inside = beyond(self.standard, new, _MARGIN, without=self.without)
            total = total + _STRICT * sum(np.square(each) for each in inside.values())
        return total, np.asarray(sum(over.values(), np.zeros(masses.shape[1])))

    def _change(self, masses: Array, mass: Array) -> Array:
        """What it counts that something changes: how many, how much, which roles are gone, how far to the shop."""
        moved = np.abs(masses - self.old[:, None])
        touched = moved > row("change", "untouched") * np.maximum(self.old[:, None], 1e-9)
        new = (masses > 0) & (self.old[:, None] == 0)
        filled = self.roles @ masses / (_FILLS * np.maximum(self.roles @ self.old, 1e-9))[:, None]
        missing = np.maximum(1 - filled, 0.0).sum(axis=0)
        batch = np.log(mass / self.standard.old.mass) / np.log(1.1)
        return np.asarray(
            row("change", "ingredient") * touched.sum(axis=0) + row("change", "role") * missing
            + row("change", "distance") * moved.sum(axis=0) / self.old.sum() + self.trouble @ new
            + self.doubt @ (masses > 0)
            + row("change", "batch") * np.square(batch) / (1 + np.abs(batch) / 4)
        )  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """A recipe that a search found.

    Parameters
    ----------
    masses : (I,) float
        What goes in. [kg]
    way : int
        How it is made.
    score : float
        What stands against it. [1]
    over : float
        How far it is beyond what is allowed; 0 if all is kept. [1]
    added : tuple of int
        Rows of what is new in it.
    """

    masses: Array
    way: int
    score: float
    over: float
    added: tuple[int, ...]


class Ask(NamedTuple):
    """Recipes of which a search must know the scores before it goes on: (I, n) masses and (n,) ways."""

    search: Search
    masses: Array
    ways: Rows


@dataclass(slots=True)
class _Beam:
    """Recipes that go on: (I, n) masses, (n,) ways, scores and what is beyond."""

    masses: Array
    ways: Rows
    scores: Array
    over: Array

    def kept(self, rows: Sequence[int] | Rows) -> "_Beam":
        """Those of some rows."""
        chosen = np.asarray(rows, np.int64)
        return _Beam(self.masses[:, chosen], self.ways[chosen], self.scores[chosen], self.over[chosen])

    def joined(self, other: "_Beam") -> "_Beam":
        """Both."""
        return _Beam(
            np.concatenate([self.masses, other.masses], axis=1), np.concatenate([self.ways, other.ways]),
            np.concatenate([self.scores, other.scores]), np.concatenate([self.over, other.over]),
        )  # fmt: skip


def steps_of(search: Search, rounds: int | None = None) -> Steps[tuple[Found, ...]]:
    """Search for recipes, step by step: each asks for the scores of some recipes, and goes on when it has them.

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
    beam = yield from _begun(search)
    seen = beam
    more = 1 if search.enough else _ROUNDS_MORE
    for _ in range(int(search.gone.sum()) + more if rounds is None else rounds):
        if search.enough and seen.over.min() < KEPT:
            break
        grown = yield from _grown(search, beam)
        if grown is None:
            break
        if (exchanged := (yield from _exchanged(search, beam))) is not None:
            grown = grown.joined(exchanged)
        if seen.over.min() > KEPT and (mixed := (yield from _mixed(search, beam))) is not None:
            grown = grown.joined(mixed)
        grown = yield from _moved(search, grown, _QUICK if search.enough else _COARSE)
        seen = seen.joined(grown)
        chosen = _unalike(search, seen, search.beam)
        after = seen.kept(chosen)
        if np.array_equal(after.scores, beam.scores):
            break
        beam = after
    if seen.over.min() > (_MENDABLE if search.enough else _HOPELESS):
        return ()
    needed = seen.kept(_needed(search, seen))
    if search.enough:
        needed = needed.kept(np.lexsort((needed.scores, needed.over > KEPT))[:3])
    unalike = needed.kept(_unalike(search, needed, search.beam, kept_first=True))
    best = yield from _moved(search, unalike, _FINE, together=2)
    if KEPT < best.over.min() < _MENDABLE:
        best = yield from _mended(search, seen)
    best = yield from _without_dregs(search, best)
    best = yield from _with_its_own(search, best)
    best = best.kept(_needed(search, best))
    order = np.lexsort((best.scores, best.over > KEPT))
    return tuple(
        Found(
            masses=best.masses[:, k], way=int(best.ways[k]), score=float(best.scores[k]), over=float(best.over[k]),
            added=tuple(np.flatnonzero((best.masses[:, k] > 0) & (search.old == 0)).tolist()),
        )
        for k in order
    )  # fmt: skip


def _without_dregs(search: Search, beam: _Beam) -> Steps[_Beam]:
    """Leave out what is hardly in it any more, as nobody would measure it."""
    masses = np.where(beam.masses < _DREGS * search.old[:, None], 0.0, beam.masses)
    masses = np.where(masses.any(axis=0), masses, beam.masses)
    return _Beam(masses, beam.ways, *(yield Ask(search, masses, beam.ways)))


def _with_its_own(search: Search, beam: _Beam) -> Steps[_Beam]:
    """Take what was in it, where its like went in though it need not have left: another oil for less of an oil."""
    masses = beam.masses.copy()
    stayed = [j for j in np.flatnonzero(search.old > 0) if not search.gone[j] and search.doubt[j] == 0]
    for k in range(masses.shape[1]):
        for i in np.flatnonzero((masses[:, k] > 0) & (search.old == 0)):
            j = next((j for j in stayed if search.families[j] == search.families[i] and masses[j, k] == 0), None)
            if j is not None:
                masses[j, k], masses[i, k] = masses[i, k], 0.0
    scores, over = yield Ask(search, masses, beam.ways)
    better = (scores < beam.scores) & (over <= np.maximum(beam.over, KEPT))
    masses = np.where(better, masses, beam.masses)
    return _Beam(masses, beam.ways, np.where(better, scores, beam.scores), np.where(better, over, beam.over))


def _mended(search: Search, seen: _Beam) -> Steps[_Beam]:
    """Bring recipes that are nearly within what is allowed back into it, whatever else it costs."""
    strict = replace(search, strict=True)
    near = seen.kept(np.argsort(seen.over, kind="stable")[:40])
    near = near.kept(_unalike(search, near, 2 if search.enough else 4))
    near.scores, near.over = yield Ask(strict, near.masses, near.ways)
    found = yield from _moved(strict, near, (0.35, *_FINE), together=2 if search.enough else 3)
    found.scores, found.over = yield Ask(search, found.masses, found.ways)
    return found


def _begun(search: Search) -> Steps[_Beam]:
    """The recipe without what must leave, each way of making it; with an aim, also without one more ingredient."""
    kept = np.where(search.gone, 0.0, search.old)
    starts = [kept]
    if search.standard.target is not None:
        starts += [np.where(np.arange(len(kept)) == k, 0.0, kept) for k in np.flatnonzero(kept)]
    masses = np.stack([each for each in starts if each.any()] or [np.full_like(kept, 1e-6)], axis=1)
    ways = np.repeat(np.array(search.ways, np.int64), masses.shape[1])
    masses = np.tile(masses, (1, len(search.ways)))
    begun = _Beam(masses, ways, *(yield Ask(search, masses, ways)))
    return (yield from _moved(search, begun, _COARSE))


def _exchanged(search: Search, beam: _Beam) -> Steps[_Beam | None]:
    """Each recipe with the like of what may bring traces of something refused, as much of it, in its stead."""
    free = np.flatnonzero((search.doubt == 0) & ~search.gone)
    trials = []
    for k, i in zip(*np.nonzero((beam.masses.T > 0) & (search.doubt > 0)), strict=True):
        for j in free:
            if search.families[j] == search.families[i] and beam.masses[j, k] == 0:
                masses = beam.masses[:, k].copy()
                masses[j], masses[i] = masses[i], 0.0
                trials.append((masses, beam.ways[k]))
    if not trials:
        return None
    masses, ways = np.stack([each[0] for each in trials], axis=1), np.array([each[1] for each in trials])
    return _Beam(masses, ways, *(yield Ask(search, masses, ways)))


def _grown(search: Search, beam: _Beam) -> Steps[_Beam | None]:
    """Each recipe with each further ingredient, in the best of some amounts."""
    whole = search.old.sum()
    news = np.flatnonzero((search.old == 0) & ~search.gone)
    pairs = [(k, i) for k in range(beam.masses.shape[1]) for i in news if beam.masses[i, k] == 0]
    if not pairs:
        return None
    count = len(_AMOUNTS)
    columns, rows = (np.repeat(np.array(each, np.int64), count) for each in zip(*pairs, strict=True))
    masses = beam.masses[:, columns].copy()
    masses[rows, np.arange(len(rows))] = whole * np.tile(_AMOUNTS, len(pairs))
    ways = beam.ways[columns]
    scores, over = yield Ask(search, masses, ways)
    best = np.arange(len(pairs)) * count + scores.reshape(-1, count).argmin(axis=1)
    found = _Beam(masses[:, best], ways[best], scores[best], over[best])
    return found.kept(_unalike(search, found, 4 * search.beam))


def _mixed(search: Search, beam: _Beam) -> Steps[_Beam | None]:
    """Each recipe with half of what it has most of as its body made another body: adding alone does not get there."""
    bodies = np.flatnonzero(search.table.bowl.body & ~search.gone)
    trials = []
    for masses, way in zip(beam.masses.T, beam.ways, strict=True):
        first = int(np.argmax(np.where(search.table.bowl.body, masses, 0.0)))
        for j in bodies[masses[bodies] == 0]:
            other = masses.copy()
            other[j] = other[first] = masses[first] / 2
            trials.append((other, way))
    if not trials:
        return None
    masses, ways = np.stack([each[0] for each in trials], axis=1), np.array([each[1] for each in trials])
    found = _Beam(masses, ways, *(yield Ask(search, masses, ways)))
    return found.kept(_unalike(search, found, search.beam))


def _needed(search: Search, beam: _Beam) -> list[int]:
    """Recipes of which each ingredient serves: none that is better, or as good, without some of what is new in it."""
    order = np.lexsort((beam.scores, beam.over > KEPT))
    new = (beam.masses > 0) & (search.old[:, None] == 0)
    kept = (beam.masses > 0) & (search.old[:, None] > 0)
    chosen: list[int] = []
    for k in order:
        alike = [j for j in chosen if beam.ways[j] == beam.ways[k] and np.array_equal(kept[:, j], kept[:, k])]
        if not any(np.all(new[:, j] <= new[:, k]) for j in alike):
            chosen.append(int(k))
    return chosen


def _unalike(search: Search, beam: _Beam, most: int, *, kept_first: bool = False) -> list[int]:
    """The best recipes, each with other ingredients, and not too many of one family."""
    chosen: list[int] = []
    seen: set[tuple[int, ...]] = set()
    families: dict[tuple[str, ...], int] = {}
    for k in np.lexsort((beam.scores, kept_first & (beam.over > KEPT))):
        there = (int(beam.ways[k]), *np.flatnonzero(beam.masses[:, k] > 0).tolist())
        new = np.flatnonzero((beam.masses[:, k] > 0) & (search.old == 0))
        family = (str(beam.ways[k]), *sorted(search.families[i] for i in new))
        if there in seen or families.get(family, 0) >= _ALIKE:
            continue
        seen.add(there)
        families[family] = families.get(family, 0) + 1
        chosen.append(int(k))
        if len(chosen) == most:
            break
    return chosen


def _moved(search: Search, beam: _Beam, steps: Sequence[float], *, together: int = 1) -> Steps[_Beam]:
    """Move masses up and down, some at a time, and on in the direction that helped; the steps shrink."""
    masses, ways = beam.masses.copy(), beam.ways
    scores, over = beam.scores.copy(), beam.over.copy()
    for step in steps:
        moving = list(range(masses.shape[1]))
        for turn in range(_PATIENCE[together]):
            if turn % 3 == 0:
                begun = masses.copy()
            trials = [trials_round(masses[:, k], begun[:, k], search.old, step, together=together) for k in moving]
            ends = np.cumsum([0, *(each.shape[1] for each in trials)]).tolist()
            tried = np.concatenate(trials, axis=1)
            found, beyond_here = yield Ask(search, tried, np.repeat(ways[moving], np.diff(ends)))
            best = [start + int(found[start:end].argmin()) for start, end in pairwise(ends)]
            better = [(k, row) for k, row in zip(moving, best, strict=True) if found[row] < scores[k] - 1e-6]
            for k, number in better:
                masses[:, k], scores[k], over[k] = tried[:, number], found[number], beyond_here[number]
            moving = [k for k, _ in better]  # the others would find the same again
            if not moving:
                break
    return _Beam(masses, ways, scores, over)
