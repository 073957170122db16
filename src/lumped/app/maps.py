"""Pictures of what a recipe could be: its salt, three of its ingredients, and recipes side by side."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from lumped.app.given import names_file
from lumped.app.uses import ready_to_write, shop_with, write_whole

if TYPE_CHECKING:
    from lumped.app.settings import Settings
    from lumped.dough.comparing import Comparison
    from lumped.dough.maps import MixMap
    from lumped.dough.recipe import Recipe
    from lumped.dough.salting import Salting
    from lumped.picture.theme import ThemeName
    from lumped.quantities import Value

__all__ = ["PICTURES", "beside", "draw_map", "draw_salting", "mixes", "salt_row", "write_picture"]

PICTURES = (".svg", ".png")


def salt_row(
    path: Path, *, salt: str | None = None, region: str | None = None, labels: Sequence[Path] = ()
) -> "Salting":
    """Work out a recipe file with all amounts of its salt.

    Parameters
    ----------
    path : Path
        A recipe file.
    salt : str, optional
        Which ingredient is varied; the one that brings most ions if left out.
    region : str, optional
        Where it is bought; without it there is no cost.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError
        If the recipe can't be read, has no salt, or not the one that was asked for.
    """
    from lumped.dough import read_recipe
    from lumped.dough.salting import salting

    shop = shop_with(labels)
    recipe = read_recipe(path, shop)
    prices, money = _prices([recipe], region)
    return salting(recipe, shop, salt=salt, prices=prices, money=money)


def mixes(
    path: Path,
    of: Sequence[str],
    show: str = "resistivity",
    *,
    whole: bool = False,
    region: str | None = None,
    labels: Sequence[Path] = (),
) -> "MixMap":
    """Work out a recipe file with three of its ingredients in all proportions.

    Parameters
    ----------
    path : Path
        A recipe file.
    of : sequence of str
        The three ingredients.
    show : str
        Which property.
    whole : bool
        Whether all of the triangle is shown, or only the part of it where there are doughs.
    region : str, optional
        Where it is bought; without it there is no cost.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be read, or an ingredient or property is not there.
    """
    from lumped.dough import read_recipe
    from lumped.dough.maps import mix_map

    shop = shop_with(labels)
    recipe = read_recipe(path, shop)
    prices, money = _prices([recipe], region)
    return mix_map(recipe, of, show, shop=shop, whole=whole, prices=prices, money=money)


def beside(places: Sequence[str], *, settings: "Settings | None" = None, region: str | None = None) -> "Comparison":
    """Put recipes side by side: files, or revisions in the notebook.

    Parameters
    ----------
    places : sequence of str
        Each a file, or a title or id in the notebook with or without @ and a number.
    settings : Settings, optional
        They say which notebook.
    region : str, optional
        Where it is bought; without it there is no cost.

    Raises
    ------
    RecipeError, InputError, NotebookError
        If one of them can't be found or read.
    """
    from lumped.dough import read_recipe
    from lumped.dough.comparing import compared

    kept = [place for place in places if not names_file(place)]
    found = _from_notebook(kept, settings) if kept else {}
    recipes = [found[place][1] if place in found else read_recipe(Path(place)) for place in places]
    names = [found[place][0] if place in found else recipe.title
             for place, recipe in zip(places, recipes, strict=True)]  # fmt: skip
    prices, money = _prices(recipes, region)
    return compared(recipes, names=names if len(set(names)) == len(names) else None, prices=prices, money=money)


def draw_salting(row: "Salting", path: Path, *, theme: "ThemeName" = "light") -> None:
    """Write the salt picture, SVG or PNG by the name's ending."""
    from lumped.picture.salt_picture import salt_svg

    write_picture(salt_svg(row, theme=theme), path)


def draw_map(found: "MixMap", path: Path, *, theme: "ThemeName" = "light") -> None:
    """Write a mix map, SVG or PNG by the name's ending."""
    from lumped.picture.mix_map import map_svg

    write_picture(map_svg(found, theme=theme), path)


def _prices(recipes: Sequence["Recipe"], where: str | None) -> "tuple[dict[str, Value] | None, str]":
    """Give the prices that are known of their ingredients in a region, and in what money."""
    from lumped.pantry import price, region

    if where is None:
        return None, ""
    keys = dict.fromkeys(key for recipe in recipes for key in recipe.ingredients)
    found = {key: each.per_mass for key in keys if (each := price(key, where)) is not None}
    return found, region(where).currency


def _from_notebook(places: Sequence[str], settings: "Settings | None") -> dict[str, tuple[str, "Recipe"]]:
    """Give what revisions are called, and their recipes."""
    from lumped.app.given import Given, laid_out, plain_name
    from lumped.app.notebooks import file_text, open_notebook
    from lumped.dough import read_recipe
    from lumped.texts import say

    found = {}
    with open_notebook(settings=settings, begin=False) as notebook:
        for place in places:
            revision = notebook.find(place)
            given = Given(name=f"{plain_name(revision.title)}.toml", text=file_text(notebook, revision))
            with laid_out(given) as path:
                recipe = read_recipe(path)
            found[place] = (say("beside-revision", title=revision.title, number=revision.number), recipe)
    return found


def write_picture(svg: str, path: Path) -> None:
    """Write a picture, SVG or PNG by the name's ending."""
    from lumped.paper import svg_as_png

    ready_to_write(path, PICTURES)
    write_whole(path, svg.encode() if path.suffix.lower() == ".svg" else svg_as_png(svg))
