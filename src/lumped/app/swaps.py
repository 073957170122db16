"""Something else instead of an ingredient: the same for the command line, the pages and Python."""

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from lumped.dough.swap import Swap

__all__ = ["swap", "write_proposal"]


def swap(
    path: Path,
    *,
    without: Iterable[str] = (),
    diets: Iterable[str] = (),
    region: str | None = None,
    target: str | None = None,
    measures: str | None = None,
    count: int = 3,
    labels: Sequence[Path] = (),
) -> "Swap":
    """Look for recipes that do without something and keep what matters.

    Parameters
    ----------
    path : Path
        The recipe file.
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
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be read, a word is not known, or what is wanted contradicts itself.
    """
    from lumped.app.shop import shop_with
    from lumped.dough import read_recipe
    from lumped.dough.swap import read_wish, swapped
    from lumped.pantry import region as region_of
    from lumped.workshop.cost import prices_of

    shop = shop_with(labels)
    recipe = read_recipe(path, shop)
    wish = read_wish(recipe, shop, without=without, diets=diets, where=region, target=target)
    if region is None:
        return swapped(recipe, wish, shop, measures=measures, count=count)
    prices, _ = prices_of(shop, region)
    return swapped(
        recipe, wish, shop, prices=prices, money=region_of(region).currency, measures=measures, count=count
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
