"""A recipe, read and understood: what goes in, and what is done with it."""

from dataclasses import dataclass, replace
from typing import Literal

from lumped.dough.material import Kind
from lumped.quantities import Value, significant

__all__ = ["Portion", "Recipe"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Portion:
    """An amount of one ingredient.

    Parameters
    ----------
    ingredient : str
        Key in the handbook's table `ingredients`.
    written : str
        The amount as the recipe writes it.
    mass : Value
        The amount, as exactly as people measure. [kg]
    as_needed : (float, float) or None
        Least and most that may be added until it feels right. [kg]
    """

    ingredient: str
    written: str
    mass: Value
    as_needed: tuple[float, float] | None = None

    def scaled(self, factor: float) -> "Portion":
        """Give `factor` times as much, as exactly as before."""
        mass = replace(self.mass, **{end: factor * getattr(self.mass, end) for end in ("mean", "low", "high")})
        needed = self.as_needed and (factor * self.as_needed[0], factor * self.as_needed[1])
        written = f"{significant(1e3 * mass.mean, 4):.12g} g" if mass.mean else self.written
        return replace(self, written=written, mass=mass, as_needed=needed)


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """A recipe.

    Parameters
    ----------
    title : str
        Its name.
    kind : {"conducting", "insulating"}
        What the dough is for.
    portions : tuple of Portion
        What goes in.
    cooked : {"pot", "kettle", "microwave", "not cooked"}
        How it is heated.
    weighed_after : float or None
        Mass of the dough after cooking, if weighed. [kg]
    temperature : float
        Temperature at which the dough is used. [K]
    steps : tuple of str
        What is done, in the recipe's own words; empty if it leaves that to the method.
    measures : str
        Whose cups and spoons it uses, by key in the handbook's table `measures`.
    invented : bool
        Whether the recipe is invented.
    everyday : tuple of (str, str)
        Everyday words that the recipe says, such as "salt", and the ingredient that each is taken as.
    """

    title: str
    kind: Kind
    portions: tuple[Portion, ...]
    cooked: Literal["pot", "kettle", "microwave", "not cooked"]
    weighed_after: float | None = None
    temperature: float = 293.15
    steps: tuple[str, ...] = ()
    measures: str = "us"
    invented: bool = False
    everyday: tuple[tuple[str, str], ...] = ()

    @property
    def ingredients(self) -> tuple[str, ...]:
        """The keys of its ingredients, each once, in order."""
        return tuple(dict.fromkeys(portion.ingredient for portion in self.portions))

    def scaled(self, factor: float) -> "Recipe":
        """Give the recipe for `factor` times as much."""
        after = None if self.weighed_after is None else factor * self.weighed_after
        return replace(self, portions=tuple(each.scaled(factor) for each in self.portions), weighed_after=after)

    def without(self, ingredient: str) -> "Recipe":
        """Give the recipe without an ingredient; a weight of the finished dough holds no longer."""
        return replace(
            self, portions=tuple(each for each in self.portions if each.ingredient != ingredient), weighed_after=None
        )

    def with_added(self, ingredient: str, mass: float) -> "Recipe":
        """Give the recipe with more of an ingredient, known or new. [kg]"""
        more = Portion(ingredient=ingredient, written=f"{1e3 * mass:.12g} g", mass=Value.exact(mass, "kg"))
        return replace(self, portions=(*self.portions, more), weighed_after=None)

    def with_instead(self, ingredient: str, other: str) -> "Recipe":
        """Give the recipe with the same mass of another ingredient instead of one."""
        portions = (
            replace(each, ingredient=other) if each.ingredient == ingredient else each for each in self.portions
        )
        return replace(self, portions=tuple(portions), weighed_after=None)

    def with_times(self, ingredient: str, factor: float) -> "Recipe":
        """Give the recipe with `factor` times as much of one ingredient."""
        portions = (each.scaled(factor) if each.ingredient == ingredient else each for each in self.portions)
        return replace(self, portions=tuple(portions), weighed_after=None)

    @property
    def masses(self) -> dict[str, float]:
        """Mass of each ingredient, what is added by feel at its middle. [kg]"""
        return {key: self.mass_of(key) for key in self.ingredients}

    @property
    def most(self) -> dict[str, float]:
        """Mass of each ingredient at most: measures as full as they may be, and all of what is added by feel. [kg]"""
        return {
            key: sum(each.mass.high + (each.as_needed or (0.0, 0.0))[1] for each in self.portions
                     if each.ingredient == key)
            for key in self.ingredients
        }  # fmt: skip

    def mass_of(self, ingredient: str) -> float:
        """Mass of an ingredient, what is added by feel at its middle. [kg]"""
        return sum(
            each.mass.mean + sum(each.as_needed or (0.0, 0.0)) / 2
            for each in self.portions if each.ingredient == ingredient
        )  # fmt: skip
