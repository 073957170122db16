"""Dough for so many people, or of so much weight: what goes in, in which batches, how long it takes, what it costs."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from lumped.dough.holding import holding_words
from lumped.dough.recipe import Recipe
from lumped.dough.safety import Caution
from lumped.pantry import Pantry, pantry
from lumped.quantities import Value
from lumped.reference import handbook
from lumped.workshop.batches import Batches, batches_of
from lumped.workshop.cautions import cautions_for
from lumped.workshop.cost import Cost, cost_of
from lumped.workshop.hands import Step, Work, work_of
from lumped.workshop.kitchen import Line, in_kitchen, measures_of
from lumped.workshop.people import Party, dough_for
from lumped.workshop.waiting import COUNT, PLACES, PRESSED, Place, waits_in
from lumped.workshop.within import Option, options_within

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["Making", "Wait", "batches_for", "make_dough", "wanted_mass"]

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Wait:
    """How long a batch cools somewhere, and when all is ready if each batch cools there.

    Parameters
    ----------
    place : {"pot", "slab", "thin", "bath"}
        Where.
    wait, ready : Value
        Until hands may take one batch, and from the first weighing to the last handing out. [s]
    """

    place: str
    wait: Value
    ready: Value

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {"place": self.place, "wait_s": self.wait.as_dict(), "ready_s": self.ready.as_dict()}


@dataclass(frozen=True, slots=True, kw_only=True)
class Making:
    """Making a dough for people, or of a weight.

    Parameters
    ----------
    recipe : Recipe
        The recipe as it was written.
    parties : tuple of Party
        For whom; empty if a weight was asked for.
    wants : Value or None
        What their hands want, without reserve. [kg]
    reserve : float
        What is made beyond that, as a share of it. [1]
    batches : Batches
        The recipe of one batch, how many, in which pot.
    measures : str
        Whose cups and spoons.
    lines : tuple of Line
        One batch, by ingredient.
    shifts : mapping of str to float
        What rounding to measures does to the dough. [1]
    steps : tuple of Step
        What keeps one person busy.
    active : Value
        All of that. [s]
    waits : tuple of Wait
        Ways to cool, none for a dough that was never hot.
    ready : Value
        When a dough that is never hot may be handed out, or a hot one that cools in its pot. [s]
    options : tuple of Option
        What can be had in a given time; empty if none was given.
    within : float or None
        That time. [s]
    region : str or None
        Where it is bought.
    cost : Cost or None
        What it costs there.
    cautions : tuple of Caution
        What to mind.
    holding : tuple of str
        What a dough without gluten is like.
    """

    recipe: Recipe
    parties: tuple[Party, ...]
    wants: Value | None
    reserve: float
    batches: Batches
    measures: str
    lines: tuple[Line, ...]
    shifts: dict[str, float]
    steps: tuple[Step, ...]
    active: Value
    waits: tuple[Wait, ...]
    ready: Value
    options: tuple[Option, ...]
    within: float | None
    region: str | None
    cost: Cost | None
    cautions: tuple[Caution, ...]
    holding: tuple[str, ...] = ()

    @property
    def people(self) -> int:
        """How many people share it."""
        return sum(each.count for each in self.parties)

    @property
    def groups(self) -> int:
        """How many groups share it, one at least."""
        return max(sum(each.groups for each in self.parties), 1)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "making", "schema": 1, "title": self.recipe.title, "dough": self.recipe.kind,
            "cooked": self.recipe.cooked, "invented": self.recipe.invented,
            "people": [{"count": each.count, "age_years": each.age, "size": each.size, "groups": each.groups}
                       for each in self.parties],
            "wants_kg": self.wants.as_dict() if self.wants else None, "reserve": self.reserve,
            "mass_kg": self.batches.mass.as_dict(), "batches": self.batches.count,
            "batch_kg": self.batches.each.as_dict(), "pot_m3": self.batches.pot, "full": self.batches.full,
            "measures": self.measures, "lines": [each.as_dict() for each in self.lines], "shifts": self.shifts,
            "steps": [{"key": each.key, "time_s": each.time.as_dict()} for each in self.steps],
            "active_s": self.active.as_dict(), "waits": [each.as_dict() for each in self.waits],
            "ready_s": self.ready.as_dict(), "within_s": self.within,
            "options": [each.as_dict() for each in self.options], "region": self.region,
            "cost": self.cost.as_dict() if self.cost else None, "cautions": [each.brief for each in self.cautions],
            "holding": list(self.holding),
        }  # fmt: skip

    def frame(self) -> "pd.DataFrame":
        """Give a pandas frame: a row for each ingredient of one batch."""
        import pandas as pd

        rows = [(each.ingredient, each.name, self.batches.count, each.mass, *(each.as_needed or (0.0, 0.0)),
                 each.measures, each.rounded) for each in self.lines]  # fmt: skip
        columns = ["ingredient", "name", "batches", "mass_kg", "as_needed_low_kg", "as_needed_high_kg", "measures",
                   "measured_kg"]  # fmt: skip
        return pd.DataFrame(rows, columns=columns)


def wanted_mass(recipe: Recipe, parties: Sequence[Party]) -> tuple[Value, float]:
    """Give what people's hands want of a recipe's dough, and the share that is made beyond it. [kg], [1]"""
    return dough_for(parties, recipe.kind), handbook().value("workshop", "planning", "reserve").mean


def batches_for(recipe: Recipe, parties: Sequence[Party], shop: Pantry, *, pot: float | None = None) -> Batches:
    """Give the batches of a recipe that so many people want, with the reserve. [m³]"""
    wants, reserve = wanted_mass(recipe, parties)
    return batches_of(recipe, wants.mean * (1 + reserve), pot=pot, shop=shop)


def make_dough(
    recipe: Recipe,
    shop: Pantry | None = None,
    *,
    parties: Sequence[Party] = (),
    mass: float | None = None,
    pot: float | None = None,
    where: str | None = None,
    measures: str | None = None,
    within: float | None = None,
) -> Making:
    """Plan making a dough.

    Parameters
    ----------
    recipe : Recipe
        The recipe.
    shop : Pantry, optional
        What the ingredients are; the handbook's.
    parties : sequence of Party
        For whom it is made.
    mass : float, optional
        Or how much there should be after cooking; one making of the recipe if neither is said. [kg]
    pot : float, optional
        Volume of the pot or bowl; a large household pot if left out. [m³]
    where : str, optional
        Key of the region where it is bought; without it there is no cost.
    measures : str, optional
        Whose cups and spoons; the region's, else the recipe's.
    within : float, optional
        By when some of it should be ready. [s]

    Returns
    -------
    Making

    Raises
    ------
    InputError, RecipeError
        If there is no such region, pot, time or amount.

    Examples
    --------
    >>> from lumped.dough import Portion
    >>> from lumped.workshop.people import read_party
    >>> grams = {"plain-flour": 125, "tap-water": 237, "table-salt": 73}
    >>> portions = tuple(Portion(ingredient=k, written=f"{g} g", mass=Value.exact(g / 1e3, "kg"))
    ...                  for k, g in grams.items())
    >>> recipe = Recipe(title="Plain", kind="conducting", portions=portions, cooked="pot")
    >>> made = make_dough(recipe, parties=[read_party("28 of 9 in pairs")], pot=2e-3)
    >>> made.batches.count, made.wants.text()
    (2, '1.82 kg (1.24 to 2.89)')
    """
    shop = shop or pantry()
    wants, reserve = wanted_mass(recipe, parties) if parties else (None, 0.0)
    total = wants.mean * (1 + reserve) if wants else mass
    batches = batches_of(recipe, total, pot=pot, shop=shop)
    groups = max(sum(each.groups for each in parties), 1)
    work = work_of(batches.done, groups_per_mass=groups / batches.mass.mean if parties else 0.0)
    system = measures or measures_of(where, recipe)
    lines, shifts = in_kitchen(batches.recipe, system, shop)
    active = work.value(work.active(batches.mass.mean, batches.count))
    places = () if recipe.cooked == "not cooked" else PLACES
    known = waits_in(work, places, batches.each.mean, batches.pot)
    cooling = tuple(_wait(place, batches, work, known[place]) for place in places)
    return Making(
        recipe=recipe, parties=tuple(parties), wants=wants, reserve=reserve, batches=batches, measures=system,
        lines=lines, shifts=shifts, steps=work.steps(batches.mass.mean, batches.count),
        active=active, waits=cooling,
        ready=cooling[0].ready if cooling else active,
        options=() if within is None else options_within(batches, within, shop, groups=groups, known=known),
        within=within,
        region=where, cost=cost_of(batches, where, shop, people=sum(each.count for each in parties)) if where else None,
        cautions=cautions_for(batches, parties, cooling[0].wait if cooling else None),
        holding=holding_words(recipe, shop),
    )  # fmt: skip


def _wait(place: Place, batches: Batches, work: Work, wait: Array) -> Wait:
    busy = work.active(batches.mass.mean, batches.count, pressed=place in PRESSED)[:COUNT]
    return Wait(place=place, wait=work.value(wait), ready=work.value(busy + wait))
