"""Making doughs for people, and shopping for them, as pages and commands ask for it."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from lumped.errors import InputError

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.app.together import Together
    from lumped.dough.recipe import Recipe
    from lumped.pantry import Pantry
    from lumped.workshop import Making, Shopping

__all__ = ["make", "make_of", "shopping", "shopping_for"]


def make(
    path: Path | str,
    *,
    people: Sequence[str] = (),
    mass: str | None = None,
    pot: str | None = None,
    region: str | None = None,
    measures: str | None = None,
    within: str | None = None,
    labels: Sequence[Path] = (),
) -> "Making":
    """Plan making the dough of a recipe file.

    Parameters
    ----------
    path : Path or str
        A recipe file.
    people : sequence of str
        Who comes, in words: "28 of 9 in pairs", "2 adults".
    mass : str, optional
        Or how much dough there should be: "1.7 kg".
    pot : str, optional
        Volume of the pot or bowl: "3 L".
    region : str, optional
        Where it is bought; without it there is no cost.
    measures : str, optional
        Whose cups and spoons.
    within : str, optional
        By when some of it should be ready: "40 min".
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a file or an amount can't be read, or nobody could make it so.
    """
    from lumped.app.named import named_by_files

    dough = named_by_files(Path(path), labels=labels)
    return make_of(
        dough, people=people, mass=mass, pot=pot, region=region, measures=measures, within=within
    )  # fmt: skip


def make_of(
    dough: "Named",
    *,
    people: Sequence[str] = (),
    mass: str | None = None,
    pot: str | None = None,
    region: str | None = None,
    measures: str | None = None,
    within: str | None = None,
) -> "Making":
    """Plan making the dough of a recipe that was read; the arguments are those of `make`."""
    from lumped.pantry import region as find_region
    from lumped.quantities import parse_quantity
    from lumped.workshop import make_dough, read_party

    if people and mass is not None:
        raise InputError("making-people-or-mass")
    if region is not None:
        find_region(region)
    return make_dough(
        dough.recipe, dough.shop, parties=[read_party(each) for each in people],
        mass=None if mass is None else parse_quantity(mass, "mass"),
        pot=None if pot is None else parse_quantity(pot, "volume"), where=region, measures=measures,
        within=None if within is None else parse_quantity(within, "time"),
    )  # fmt: skip


def shopping(
    paths: Sequence[Path | str],
    region: str | None,
    *,
    people: Sequence[str] = (),
    masses: Sequence[str] = (),
    have: Sequence[str] = (),
    little_over: bool = False,
    labels: Sequence[Path] = (),
) -> "Shopping":
    """Make a shopping list for recipe files together.

    Parameters
    ----------
    paths : sequence of Path or str
        Recipe files. People who want conducting dough share it out among the conducting recipes, and so on.
    region : str
        Where it is bought.
    people : sequence of str
        Who comes, in words.
    masses : sequence of str
        Or how much dough there should be: of each recipe, or one mass for all.
    have : sequence of str
        What is there already: "table-salt: 500 g".
    little_over : bool
        Whether packets are chosen that leave least over, instead of the cheapest.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a file or an amount can't be read, or there is no such region.
    """
    from lumped.app.together import read_together

    together = read_together([str(each) for each in paths], labels=labels)
    return shopping_for(together, region, people=people, masses=masses, have=have, little_over=little_over)


def shopping_for(
    together: "Together",
    region: str | None,
    *,
    people: Sequence[str] = (),
    masses: Sequence[str] = (),
    have: Sequence[str] = (),
    little_over: bool = False,
) -> "Shopping":
    """Make a shopping list for recipes that were read; the arguments are those of `shopping`."""
    from lumped.pantry import regions
    from lumped.workshop import shopping_list

    if region is None:
        raise InputError("making-no-shop", known=", ".join(regions()))
    if people and masses:
        raise InputError("making-people-or-mass")
    recipes, shop = together.recipes, together.shop
    return shopping_list(
        _for_people(recipes, people, shop) if people else _of_mass(recipes, masses, shop), region, shop,
        have=_there(have, shop), little_over=little_over, files=together.places,
    )  # fmt: skip


def _for_people(recipes: Sequence["Recipe"], people: Sequence[str], shop: "Pantry") -> "list[Recipe]":
    """Scale recipes to what people's hands want, with a reserve; recipes of one kind share it."""
    from lumped.workshop import read_party, scaled_to, wanted_mass

    parties = [read_party(each) for each in people]
    scaled = []
    for recipe in recipes:
        wants, reserve = wanted_mass(recipe, parties)
        sharing = sum(other.kind == recipe.kind for other in recipes)
        scaled.append(scaled_to(recipe, wants.mean * (1 + reserve) / sharing, shop))
    return scaled


def _of_mass(recipes: "Sequence[Recipe]", masses: Sequence[str], shop: "Pantry") -> "list[Recipe]":
    from lumped.quantities import parse_quantity
    from lumped.workshop import scaled_to

    if not masses:
        return list(recipes)
    if len(masses) not in (1, len(recipes)):
        raise InputError("making-masses", recipes=str(len(recipes)), masses=str(len(masses)))
    wanted = [parse_quantity(each, "mass") for each in masses] * (len(recipes) if len(masses) == 1 else 1)
    return [scaled_to(recipe, mass, shop) for recipe, mass in zip(recipes, wanted, strict=True)]


def _there(have: Sequence[str], shop: "Pantry") -> dict[str, float]:
    """What is there already, by ingredient. [kg]"""
    from lumped.pantry.amounts import mass_of

    found: dict[str, float] = {}
    for each in have:
        word, colon, amount = each.partition(":")
        if not colon:
            raise InputError("making-have", text=each)
        one = shop.find(word)
        found[one.key] = found.get(one.key, 0.0) + mass_of(amount.strip(), one, "metric").mean
    return found
