"""What a recipe card needs to know, computed before anything is said in the card's language."""

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from lumped.errors import RecipeError

if TYPE_CHECKING:
    from lumped.app.care import Care
    from lumped.app.named import Named
    from lumped.app.trial import Trial
    from lumped.dough import Dough, Recipe
    from lumped.dough.batch import Batch
    from lumped.dough.safety import Dose
    from lumped.pantry import Pantry
    from lumped.quantities import Value

__all__ = ["Facts", "gathered", "true_mark"]

States = tuple[str, str, str]
_THICK, _TOUCH = 3e-3, 4e-4  # the wall of a card: m, m²
_AGE = 2.0  # of the child whose doses a card names


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What is known of a dough whose card is made.

    Parameters
    ----------
    recipe, dough, care, trial : Recipe, Dough, Care, Trial
        What goes in, what comes out, what to mind, the one-minute trial.
    mark : {"carries", "blocks", ""}
        What its mark says.
    shop : Pantry
        What the ingredients are.
    measured : int
        From how many measured batches the prediction learnt.
    batch : Batch or None
        The batch that the card is for.
    rolls : tuple of (str, str, str)
        What a red lamp does behind a thick and behind a thin roll, of a dough that carries; else empty.
    wall, enough : (str, str, str), str
        What a red lamp does across a wall of a dough that blocks, and whether that is enough.
    lasts : Value or None
        How long that wall is enough. [s]
    salt : float
        Its share of salt. [1]
    doses : mapping of (str, str) to Dose
        How much of it holds which dose.
    on : date
        The day of the card.
    """

    recipe: "Recipe"
    dough: "Dough"
    mark: str
    care: "Care"
    trial: "Trial"
    shop: "Pantry"
    measured: int
    batch: "Batch | None"
    rolls: tuple[States, ...]
    wall: States | None
    enough: str
    lasts: "Value | None"
    salt: float
    doses: "dict[tuple[str, str], Dose]"
    on: date


def gathered(dough: "Named", *, on: date) -> Facts:
    """Compute all that a card says.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    on : date
        The day of the card.

    Raises
    ------
    RecipeError
        If it is no dough, or its mark would be false.
    """
    from lumped.app.care import tended
    from lumped.app.named import dough_of
    from lumped.app.trial import tried
    from lumped.dough.kneading import knead_middle
    from lumped.dough.safety import doses, salt_share

    recipe, shop, made = dough.recipe, dough.shop, dough_of(dough)
    mark = true_mark(made)
    masses, mass = recipe.masses, float(knead_middle(recipe, shop).mass[0])
    carries = recipe.kind == "conducting"
    wall, enough, lasts = (None, "", None) if carries else _wall(dough)
    table = tended([recipe], [""], shop, names=[recipe.title], needs=(), on=on, age=_AGE, dog=None)
    return Facts(
        recipe=recipe, dough=made, mark=mark, care=table.doughs[0], shop=shop, on=on,
        trial=tried(dough.kneading(), shop),
        measured=len(dough.calibration.batches) if dough.calibration else 0, batch=dough.batch,
        rolls=_rolls(made) if carries else (), wall=wall, enough=enough, lasts=lasts,
        salt=float(salt_share(masses, mass, shop)),
        doses={(each.key, each.figure): each
               for each in doses(masses, mass, shop, age=_AGE, dog=None, most=recipe.most)},
    )  # fmt: skip


def _rolls(made: "Dough") -> tuple[States, ...]:
    from lumped.verdict.rolls import THICK, THIN, lamp_through

    return lamp_through(THICK, made.resistivity), lamp_through(THIN, made.resistivity)


def _wall(dough: "Named") -> "tuple[States, str, Value | None]":
    from lumped.app.doughs import wall_of

    found = wall_of(dough, thickness=_THICK, area=_TOUCH)
    return found.states, found.enough, None if found.lasting is None else found.lasting.lasts


def true_mark(made: "Dough") -> str:
    """Tell what the mark of a dough on a card or label says: "carries" or "blocks" as computed, "" if none can tell.

    Raises
    ------
    RecipeError
        If it is none, or surely does the opposite of what it is for.
    """
    from lumped.dough.unfit import OPPOSITE

    if made.feel is not None and not made.feel.is_dough:
        raise RecipeError("card-no-dough", title=made.name, why=made.feel.words)
    if made.answer == OPPOSITE[made.kind]:
        raise RecipeError(f"card-{made.kind}-{made.answer}", title=made.name, resistivity=made.resistivity.text())
    return "" if made.answer == "open" else made.answer
