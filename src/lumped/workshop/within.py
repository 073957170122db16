"""“What can I have in 40 minutes?”: how much dough each way of making it has ready by then."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from lumped.dough.beliefs import middle
from lumped.dough.holding import holding_words, is_held
from lumped.dough.kneading import followed, typical
from lumped.dough.other_ways import cold_version, kettle_version
from lumped.dough.properties import LUMP
from lumped.dough.recipe import Recipe
from lumped.dough.safety import caution
from lumped.errors import InputError
from lumped.pantry import Pantry
from lumped.quantities import Value, rounded_text
from lumped.texts import say
from lumped.workshop.batches import Batches, kneaded, most_at_once, room_of
from lumped.workshop.hands import Work, work_of
from lumped.workshop.waiting import COUNT, PLACES, PRESSED, Place, waits, waits_in

__all__ = ["Option", "options_within", "ready"]

Array = NDArray[np.float64]
_STEPS = 40
_LONGEST = 7 * 86400.0
_TOUCHED = 0.01
_QUICK: tuple[Place, ...] = ("thin", "bath")
_NOTABLE, _MUCH = 1.05, 1.25  # times, from which another resistivity is noted, and is told first: chosen


@dataclass(frozen=True, slots=True, kw_only=True)
class Option:
    """One way to have dough ready.

    Parameters
    ----------
    recipe : Recipe
        The recipe made that way.
    way, place : str
        How it is heated, and where it cools.
    ready : Value
        When all of the wanted dough is ready. [s]
    most, surely : float
        How much is ready in the time, at the middle of what is believed, and in 39 of 40 kitchens; less than a group
        wants counts as none. [kg]
    notes : tuple of str
        What is other than in the recipe.
    worse : float
        How many times worse its dough does what it is for than the recipe's own: carries, or blocks, current. [1]
    """

    recipe: Recipe
    way: str
    place: Place | None
    ready: Value
    most: float
    surely: float
    notes: tuple[str, ...] = ()
    worse: float = 1.0

    @property
    def as_good(self) -> bool:
        """Whether its dough does what it is for about as well as the recipe's own."""
        return self.worse < _MUCH

    @property
    def words(self) -> str:
        """The way in words."""
        way = say(f"making-way-{self.way.replace(' ', '-')}")
        return way if self.place is None else say("making-way-place", way=way, place=say(f"making-place-{self.place}"))

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "way": self.way, "place": self.place, "ready_s": self.ready.as_dict(), "most_kg": self.most,
            "surely_kg": self.surely, "worse": self.worse, "notes": list(self.notes),
        }  # fmt: skip


def options_within(
    batches: Batches, time: float, shop: Pantry, *, groups: int = 1, known: Mapping[Place, Array] | None = None
) -> tuple[Option, ...]:
    """Give all ways to have this dough, the soonest ready first.

    Parameters
    ----------
    batches : Batches
        What is wanted.
    time : float
        Until when. [s]
    shop : Pantry
        What the ingredients are.
    groups : int
        Among how many the dough is shared out.
    known : mapping of str to (n,) float, optional
        How long this dough cools in places where its mass does not count, if that is known. [s]

    Returns
    -------
    tuple of Option

    Raises
    ------
    InputError
        If that is no time.
    """
    if not 0 < time <= _LONGEST:
        raise InputError("making-time", minutes=f"{time / 60:,.9g}")
    asked = _Asked(batches=batches, time=time, shop=shop, groups=groups, known=known or {})
    return tuple(sorted(asked.options(), key=lambda each: each.ready.mean))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Asked:
    """What is wanted, and until when."""

    batches: Batches
    time: float
    shop: Pantry
    groups: int
    known: Mapping[Place, Array]

    def options(self) -> Iterator[Option]:
        """Give the recipe's own way in all places, then other ways."""
        own = self.batches.recipe
        yield from self._made(own, PLACES)
        if (kettle := kettle_version(own, self.shop)) is not None:
            yield from self._made(kettle, _QUICK)
        if own.cooked != "not cooked" and (cold := cold_version(own, self.shop)) is not None:
            yield from self._made(cold, ())

    def _made(self, recipe: Recipe, places: Sequence[Place]) -> Iterator[Option]:
        done, wanted = kneaded(recipe, self.shop), self.batches.mass.mean
        work = work_of(done, groups_per_mass=self.groups / wanted if self.groups > 1 else 0.0)
        limit = most_at_once(recipe, self.batches.pot, room_of(done))
        masses = wanted * np.arange(1, _STEPS + 1) / _STEPS
        worth = masses >= min(wanted / self.groups if self.groups > 1 else LUMP, wanted) * (1 - 1e-9)
        own = recipe is self.batches.recipe
        differs = _Differs() if own else _differs(self.batches.recipe, recipe, self.shop)
        known = self._known(work, recipe, places)
        worth &= own or is_held(recipe, self.shop)  # what falls apart helps nobody
        for place in places if recipe.cooked != "not cooked" else (None,):
            count = np.ceil(masses / limit - 1e-9)
            times = ready(work, place, masses, count, self.batches.pot, wait=known.get(place) if place else None)
            middle, late = np.quantile(times, [0.5, 0.975], axis=-1)
            yield Option(
                recipe=recipe, way=recipe.cooked, place=place, ready=work.value(times[-1]),
                most=_largest(masses, worth & (middle <= self.time)),
                surely=_largest(masses, worth & (late <= self.time)), notes=differs.notes,
                worse=differs.worse,
            )  # fmt: skip

    def _known(self, work: Work, recipe: Recipe, places: Sequence[Place]) -> Mapping[Place, Array]:
        """How long it cools where its mass does not count."""
        free = [place for place in places if place != "pot" and recipe.cooked != "not cooked"]
        if recipe is self.batches.recipe and all(place in self.known for place in free):
            return {place: self.known[place] for place in free}
        return waits_in(work, free, 1.0, self.batches.pot)


def ready(
    work: Work, place: Place | None, mass: Array, count: Array, pot: float, *, wait: Array | None = None
) -> Array:
    """Give when so much dough may be taken in hand: all are made in turn, and the last one cools.

    Parameters
    ----------
    work : Work
        What hands and stove do.
    place : {"pot", "slab", "thin", "bath"} or None
        Where it cools; None for what was never hot.
    mass, count : (k,) float
        Dough of all batches, rising, and how many they are. [kg], [1]
    pot : float
        Volume of the pot. [m³]
    wait : (n,) float, optional
        How long it cools, if that is known and does not hang on its mass. [s]

    Returns
    -------
    (k, n) float
        Times. [s]
    """
    busy = work.active(mass, count, pressed=place in PRESSED)
    if place is None:
        return busy
    busy = busy[:, :COUNT]
    if wait is not None:
        return np.asarray(busy + wait)
    if place != "pot" or len(mass) == 1:
        return np.asarray(busy + waits(work, place, mass / count, pot))
    few = np.geomspace(float((mass / count).min()), float((mass / count).max()), 5)
    few = np.unique([*few, (mass / count)[-1]])  # what is wanted is followed, not read between others
    return np.asarray(busy + _between(few, waits(work, place, few, pot), mass / count))


def _between(known: Array, times: Array, wanted: Array) -> Array:
    """Times at masses between those that were followed, by straight lines of their logarithms."""
    k = np.clip(known.searchsorted(wanted, "right") - 1, 0, len(known) - 2)
    share = (np.log(wanted / known[k]) / np.maximum(np.log(known[k + 1] / known[k]), 1e-12))[:, None]
    return np.asarray(times[k] ** (1 - share) * times[k + 1] ** share)


def _largest(masses: Array, fits: NDArray[np.bool_]) -> float:
    return float(masses[fits].max()) if fits.any() else 0.0


class _Differs(NamedTuple):
    """What is other than in the recipe, and how many times worse its dough does what it is for."""

    notes: tuple[str, ...] = ()
    worse: float = 1.0


def _differs(own: Recipe, other: Recipe, shop: Pantry) -> _Differs:
    """Say what is other than in the recipe: water and flour, and what that does to the dough."""
    moved = [
        say("making-share", name=shop[key].name, share=f"{100 * other.mass_of(key) / own.mass_of(key):.0f}")
        for key in own.ingredients if abs(other.mass_of(key) / max(own.mass_of(key), 1e-9) - 1) > _TOUCHED
    ]  # fmt: skip
    notes = [say("making-other-water", shares=", ".join(moved))] if moved else []
    batch = typical(own, shop)
    before = float(followed(own, batch, shop).resistivity[0])
    after = float(followed(other, replace(middle(other, shop), unknowns=batch.unknowns), shop).resistivity[0])
    if not 1 / _NOTABLE < after / before < _NOTABLE:
        notes.append(say("making-resistivity", before=rounded_text(before), after=rounded_text(after)))
    if other.cooked == "not cooked":
        notes += holding_words(other, shop) if is_held(other, shop) else [say("feel-unbound")]
        notes.append(caution("raw-flour").brief)
    ratio = after / before if own.kind == "conducting" else before / after
    return _Differs(tuple(notes), max(ratio, 1.0))
