"""What a recipe card needs to know, computed before anything is said in the card's language."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from lumped.app.care import Care
    from lumped.app.trial import Trial
    from lumped.dough import Dough, Recipe
    from lumped.dough.batch import Batch
    from lumped.dough.safety import Dose
    from lumped.pantry import Pantry
    from lumped.quantities import Value

__all__ = ["Facts", "gathered"]

States = tuple[str, str, str]
_THICK, _TOUCH = 3e-3, 4e-4  # the wall of a card: m, m²


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What is known of a dough whose card is made.

    Parameters
    ----------
    recipe, dough, care, trial : Recipe, Dough, Care, Trial
        What goes in, what comes out, what to mind, the one-minute trial.
    shop : Pantry
        What the ingredients are.
    batches : tuple of Batch
        What the prediction learnt from.
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
    care: "Care"
    trial: "Trial"
    shop: "Pantry"
    batches: "tuple[Batch, ...]"
    rolls: tuple[States, ...]
    wall: States | None
    enough: str
    lasts: "Value | None"
    salt: float
    doses: "dict[tuple[str, str], Dose]"
    on: date


def gathered(path: Path, *, on: date, batches: Sequence[Path], labels: Sequence[Path]) -> Facts:
    """Compute all that a card says.

    Parameters
    ----------
    path : Path
        A recipe file.
    on : date
        The day of the card.
    batches, labels : sequence of Path
        Batch files that the prediction learns from; ingredient files.
    """
    from lumped.app.care import care
    from lumped.app.doughs import dough
    from lumped.app.shop import shop_with
    from lumped.app.trial import trial
    from lumped.dough import read_recipe
    from lumped.dough.batch import read_batch
    from lumped.dough.kneading import knead_middle
    from lumped.dough.safety import doses, salt_share

    shop = shop_with(labels)
    recipe, made = read_recipe(path, shop), dough(path, batches=batches, labels=labels)
    masses = {key: recipe.mass_of(key) for key in recipe.ingredients}
    mass = float(knead_middle(recipe, shop).mass[0])
    carries = recipe.kind == "conducting"
    wall, enough, lasts = (None, "", None) if carries else _wall(recipe, shop, made)
    return Facts(
        recipe=recipe, dough=made, care=care(path, on=on, labels=labels), shop=shop, on=on,
        trial=trial(path, batches=batches, labels=labels), batches=tuple(read_batch(each, shop) for each in batches),
        rolls=_rolls(made) if carries else (), wall=wall, enough=enough, lasts=lasts,
        salt=float(salt_share(masses, mass, shop)),
        doses={(each.key, each.figure): each for each in doses(masses, mass, shop, age=2.0, dog=None)},
    )  # fmt: skip


def _rolls(made: "Dough") -> tuple[States, ...]:
    from lumped.verdict.rolls import THICK, THIN, lamp_through

    return lamp_through(THICK, made.resistivity), lamp_through(THIN, made.resistivity)


def _wall(recipe: "Recipe", shop: "Pantry", made: "Dough") -> "tuple[States, str, Value]":
    from lumped.dough.kneading import kneading
    from lumped.dough.lasting.salt_creep import salt_creep, usual_neighbour
    from lumped.verdict.walls import DRIER, Wall, judge_wall, lasts

    wall = Wall(thickness=_THICK, area=_TOUCH)
    done, salty = kneading(recipe, shop), kneading(usual_neighbour())
    lasting = lasts(wall, salt_creep(done, salty), salt_creep(done, salty, water=DRIER))
    found = judge_wall(wall, made.resistivity)
    return found.states, found.enough, lasting.lasts
