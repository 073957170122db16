"""What a lab's batches taught so far: a calibration of the obstruction, and a fit of the feel."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from lumped.dough.batch import Batch
from lumped.dough.calibrating import Calibration, calibrated
from lumped.dough.kneading import knead_middle
from lumped.dough.recipe import Recipe
from lumped.dough.texture import FeelFit, features_of, fitted
from lumped.errors import RecipeError
from lumped.pantry import Pantry, pantry

__all__ = ["Lessons", "learnt"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Lessons:
    """What batches taught.

    Parameters
    ----------
    calibration : Calibration or None
        Of the obstruction; None if none was measured.
    fit : FeelFit or None
        Of the feel; None if none was scored.
    passed_over : tuple of str
        Titles of batches that taught nothing of this recipe: of the other kind, or neither measured nor scored.
    """

    calibration: Calibration | None = None
    fit: FeelFit | None = None
    passed_over: tuple[str, ...] = ()


def learnt(batches: Sequence[Batch], recipe: Recipe, shop: Pantry | None = None) -> Lessons:
    """Learn from batches what holds for a recipe.

    Parameters
    ----------
    batches : sequence of Batch
        In the order in which they were made.
    recipe : Recipe
        The recipe that is asked about; obstruction is learnt from batches of its own kind only.
    shop : Pantry, optional
        What the ingredients are; the handbook's.

    Returns
    -------
    Lessons

    Raises
    ------
    RecipeError
        If a batch contradicts its recipe.
    """
    shop = shop or pantry()
    calibration, scored, idle = None, [], []
    for batch in batches:
        alike = batch.recipe.kind == recipe.kind
        if not alike or (batch.measured is None and batch.feel is None):
            idle.append(batch.title)
            continue
        if batch.measured is not None:
            calibration = _one_more(batch, calibration, shop)
        if batch.feel is not None:
            made = replace(batch.recipe, temperature=recipe.temperature)
            scored.append((features_of(made, knead_middle(made, shop)), batch.feel))
    return Lessons(
        calibration=calibration, fit=fitted(scored) if scored else None, passed_over=tuple(idle)
    )  # fmt: skip


def _one_more(batch: Batch, before: Calibration | None, shop: Pantry) -> Calibration:
    try:
        assert batch.measured is not None  # the caller looked
        return calibrated(batch.recipe, batch.measured, shop=shop, before=before, batch=batch.title)
    except RecipeError as problem:
        raise RecipeError("dough-batch-far", batch=batch.title, problem=str(problem)) from None
