"""A dough, how it is made and who is near it: what cautions look at."""

import datetime
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from lumped.dough.safety.allergens import Allergens, allergens_of
from lumped.dough.safety.contents import bringers, used
from lumped.dough.safety.doses import Dose, Helping, doses, helpings, salt_share
from lumped.pantry import Pantry

__all__ = ["Bowl"]

_SALTS = ("salt-skin", "epsom-laxative", "calcium-heats", "alum")  # cautions that salts carry
_SALTY = 0.01  # share of salt from which a dough is no longer like food


@dataclass(frozen=True, kw_only=True)
class Bowl:
    """A dough and who is near it."""

    masses: Mapping[str, float]
    dough_mass: float
    pantry: Pantry
    cooked: str
    date: datetime.date | None
    age: float
    dog: float | None
    name: str = ""
    most: Mapping[str, float] | None = None

    @cached_property
    def keys(self) -> tuple[str, ...]:
        """The ingredients of which something went in."""
        return used(self.masses)

    @cached_property
    def salt(self) -> float:
        """Its share of salt. [1]"""
        return float(salt_share(self.masses, self.dough_mass, self.pantry))

    @cached_property
    def doses(self) -> dict[tuple[str, str], Dose]:
        """Its doses by entry and row of the handbook."""
        found = doses(self.masses, self.dough_mass, self.pantry, age=self.age, dog=self.dog, most=self.most)
        return {(each.key, each.figure): each for each in found}

    @cached_property
    def helpings(self) -> tuple[Helping, ...]:
        """A pinch and a lump of it."""
        return helpings(self.masses, self.dough_mass, self.pantry, age=self.age, dog=self.dog)

    @cached_property
    def allergens(self) -> Allergens:
        """Its allergens."""
        return allergens_of(self.masses, self.pantry)

    @property
    def holds_salt(self) -> bool:
        """Whether it holds more sodium than food does."""
        return self.salt > _SALTY

    @property
    def is_salty(self) -> bool:
        """Whether it holds more of any salt than food does."""
        salts = sum(self.masses[key] for key in self.marked(*_SALTS))
        return self.holds_salt or salts > _SALTY * self.dough_mass

    def marked(self, *cautions: str) -> tuple[str, ...]:
        """Ingredients that carry one of these caution keys."""
        return tuple(key for key in self.keys if set(cautions) & set(self.pantry[key].cautions))

    def bringing(self, *, element: str = "", acid: str = "", compound: str = "") -> tuple[str, ...]:
        """Ingredients that bring an element, an acid or a compound."""
        return bringers(self.masses, self.pantry, element=element, acid=acid, compound=compound)
