"""A recipe file: its dough, what one change does to it, and whether a wall of it insulates."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough import Dough
    from lumped.dough.what_if import Change
    from lumped.verdict.walls import WallVerdict

__all__ = ["dough", "wall", "wall_of", "what_if", "what_if_of"]


def dough(path: Path, *, batches: Sequence[Path] = (), labels: Sequence[Path] = ()) -> "Dough":
    """Work out the dough of a recipe file.

    Parameters
    ----------
    path : Path
        A recipe file.
    batches : sequence of Path
        Batch files that the prediction learns from, in the order in which they were made.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Returns
    -------
    Dough

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, the recipe can't exist, or a batch contradicts its recipe.
    """
    from lumped.app.named import dough_of, named_by_files

    return dough_of(named_by_files(path, batches=batches, labels=labels))


def what_if(path: Path, *, batches: Sequence[Path] = (), labels: Sequence[Path] = ()) -> "tuple[Change, ...]":
    """Change one thing of a recipe at a time, and see what its resistivity does.

    Parameters
    ----------
    path : Path
        A recipe file.
    batches : sequence of Path
        Batch files that the prediction learns from.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, or the recipe can't exist.
    """
    from lumped.app.named import named_by_files

    return what_if_of(named_by_files(path, batches=batches, labels=labels))


def what_if_of(dough: "Named") -> "tuple[Change, ...]":
    """Change one thing at a time of a recipe that was read."""
    from lumped.dough.what_if import what_if as changed

    return changed(dough.recipe, dough.shop, dough.calibration)


def wall(
    path: Path, *, thickness: float, area: float, lamp: str = "lamp-red", batches: Sequence[Path] = (),
    beside: Path | None = None, labels: Sequence[Path] = (),
) -> "WallVerdict":  # fmt: skip
    """Judge whether a wall of a dough insulates enough beside a lamp, and for how long.

    Parameters
    ----------
    path : Path
        A recipe file.
    thickness, area : float
        From lump to lump, and where the lumps touch the wall. [m], [m²]
    lamp : str
        Key of the lamp in the handbook.
    batches : sequence of Path
        Batch files that the prediction learns from.
    beside : Path, optional
        Recipe file of the conducting dough whose salt creeps in; a usual one if left out.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a recipe can't be read, or there is no such wall.
    HandbookError
        If there is no such lamp.
    """
    from lumped.app.named import named_by_files

    dough = named_by_files(path, batches=batches, labels=labels)
    return wall_of(dough, thickness=thickness, area=area, lamp=lamp, beside=beside)


def wall_of(
    dough: "Named", *, thickness: float, area: float, lamp: str = "lamp-red", beside: Path | None = None
) -> "WallVerdict":
    """Judge a wall of a recipe that was read; the arguments are those of `wall`."""
    from lumped.dough import read_recipe
    from lumped.dough.blocking import usual_neighbour
    from lumped.dough.kneading import kneading
    from lumped.dough.lasting.salt_creep import salt_creep
    from lumped.verdict.walls import DRIER, Wall, judge_wall, lasts

    made = Wall(thickness=thickness, area=area)
    shop, done = dough.shop, dough.kneading()
    salty = kneading(usual_neighbour() if beside is None else read_recipe(beside, shop), shop)
    lasting = lasts(made, salt_creep(done, salty, shop=shop), salt_creep(done, salty, water=DRIER, shop=shop), lamp)
    return judge_wall(made, done.value(done.chain.resistivity, "Ω·m", "resistivity"), lamp, lasting)
