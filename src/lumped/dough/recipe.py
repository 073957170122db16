"""A recipe, read and understood: what goes in, and what is done with it."""

from dataclasses import dataclass
from typing import Literal

from lumped.dough.material import Kind
from lumped.quantities import Value

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
    invented : bool
        Whether the recipe is invented.
    """

    title: str
    kind: Kind
    portions: tuple[Portion, ...]
    cooked: Literal["pot", "kettle", "microwave", "not cooked"]
    weighed_after: float | None = None
    temperature: float = 293.15
    invented: bool = False
