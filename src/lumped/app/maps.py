"""Pictures of what a recipe could be: its salt, three of its ingredients."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from lumped.app.pricing import known_prices
from lumped.app.writing import ready_to_write, write_whole

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.maps import MixMap
    from lumped.dough.salting import Salting
    from lumped.picture.theme import ThemeName

__all__ = ["PICTURES", "draw_map", "draw_salting", "mixes", "salt_row", "write_picture"]

PICTURES = (".svg", ".png")


def salt_row(dough: "Named", *, salt: str | None = None, region: str | None = None) -> "Salting":
    """Work out a recipe with all amounts of its salt.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    salt : str, optional
        Which ingredient is varied; the one that brings most ions if left out.
    region : str, optional
        Where it is bought; without it there is no cost.

    Raises
    ------
    RecipeError
        If the recipe has no salt, or not the one that was asked for.
    """
    from lumped.dough.salting import salting

    prices, money = known_prices([dough.recipe], region, dough.shop)
    return salting(
        dough.recipe, dough.shop, salt=salt, prices=prices, money=money, calibration=dough.calibration
    )  # fmt: skip


def mixes(
    dough: "Named",
    of: Sequence[str] = (),
    show: str = "resistivity",
    *,
    whole: bool = False,
    region: str | None = None,
) -> "MixMap":
    """Work out a recipe with three of its ingredients in all proportions.

    Parameters
    ----------
    dough : Named
        The recipe, with what its batches taught.
    of : sequence of str
        The three ingredients, in the recipe or not; flour, liquid and salt or sugar if left out.
    show : str
        Which property.
    whole : bool
        Whether all of the triangle is shown, or only the part of it where there are doughs.
    region : str, optional
        Where it is bought; without it there is no cost.

    Raises
    ------
    RecipeError, InputError
        If an ingredient or property is not there.
    """
    from lumped.dough.maps import mix_map, with_corners

    recipe = with_corners(dough.recipe, of, dough.shop)
    prices, money = known_prices([recipe], region, dough.shop)
    return mix_map(
        recipe, of, show, shop=dough.shop, whole=whole, prices=prices, money=money,
        calibration=dough.calibration,
    )  # fmt: skip


def draw_salting(row: "Salting", path: Path, *, theme: "ThemeName" = "light") -> None:
    """Write the salt picture, SVG or PNG by the name's ending."""
    from lumped.picture.salt_picture import salt_svg

    write_picture(salt_svg(row, theme=theme), path)


def draw_map(found: "MixMap", path: Path, *, theme: "ThemeName" = "light") -> None:
    """Write a mix map, SVG or PNG by the name's ending."""
    from lumped.picture.mix_map import map_svg

    write_picture(map_svg(found, theme=theme), path)


def write_picture(svg: str, path: Path) -> None:
    """Write a picture, SVG or PNG by the name's ending."""
    from lumped.paper import svg_as_png

    ready_to_write(path, PICTURES)
    write_whole(path, svg.encode() if path.suffix.lower() == ".svg" else svg_as_png(svg))
