"""Something else instead of an ingredient: the same for the command line, the pages and Python."""

from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.swap import Swap

__all__ = ["swap", "write_proposal"]


def swap(
    dough: "Named",
    *,
    without: Iterable[str] = (),
    diets: Iterable[str] = (),
    region: str | None = None,
    target: str | None = None,
    measures: str | None = None,
    count: int = 3,
) -> "Swap":
    """Look for recipes that do without something and keep what matters.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    without : iterable of str
        Ingredients, classes of them, or "stove".
    diets : iterable of str
        "gluten-free", "vegan", "no-nuts", "no-corn".
    region : str, optional
        Where it is bought: only what is sold there is proposed, with its cost.
    target : str, optional
        What it should do better, one of `dough.swap.TARGETS`.
    measures : str, optional
        Whose cups and spoons, or "scale"; the recipe's own if left out.
    count : int
        How many proposals.

    Raises
    ------
    RecipeError, InputError
        If a word is not known, or what is wanted contradicts itself.
    """
    from lumped.dough.swap import read_wish, swapped
    from lumped.pantry import region as region_of
    from lumped.workshop.cost import prices_of

    recipe, shop = dough.recipe, dough.shop
    wish = read_wish(recipe, shop, without=without, diets=diets, where=region, target=target)
    prices, money = (None, "") if region is None else (prices_of(shop, region, shop)[0], region_of(region).currency)
    return swapped(
        recipe, wish, shop, prices=prices, money=money, measures=measures, count=count, calibration=dough.calibration
    )  # fmt: skip


def write_proposal(found: "Swap", number: int, path: Path) -> None:
    """Write a proposal as a recipe file of its own; a file that is there is not overwritten.

    Parameters
    ----------
    found : Swap
        What was found.
    number : int
        Which proposal, from 1.
    path : Path
        Where to; its name ends in .toml.

    Raises
    ------
    InputError
        If there is no such proposal, the ending is another one, or the file can't be written or is there already.
    """
    import tomli_w

    from lumped.app.writing import ready_to_write, write_whole
    from lumped.dough.writing import recipe_document
    from lumped.errors import InputError

    if not 1 <= number <= len(found.proposals):
        raise InputError("swap-no-such", number=number, count=len(found.proposals))
    ready_to_write(path, (".toml",))
    if path.exists():
        raise InputError("file-there", file=str(path))
    document = recipe_document(found.proposals[number - 1].recipe)
    write_whole(path, tomli_w.dumps(document).encode())
