"""Who may touch a dough, who must not eat it, and what to mind, as pages and commands show it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from lumped.dough.safety import Allergens, Caution, Remark, Suits

__all__ = ["Care", "care"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Care:
    """What to mind with a dough.

    Parameters
    ----------
    title : str
        Name of its recipe.
    allergens : Allergens
        What it contains, and what may be in it as traces.
    diets : mapping of str to Suits
        Whether it suits each diet, and why not.
    cautions : tuple of Caution
        The gravest first; local rules last.
    remarks : tuple of Remark
        Questions of religion and the like, with status and date, without a verdict.
    """

    title: str
    allergens: "Allergens"
    diets: "dict[str, Suits]"
    cautions: "tuple[Caution, ...]"
    remarks: "tuple[Remark, ...]"

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "title": self.title,
            "allergens": {
                "eu": {name: list(keys) for name, keys in self.allergens.eu.items()},
                "us": {name: list(keys) for name, keys in self.allergens.us.items()},
                "traces": {name: list(keys) for name, keys in self.allergens.traces.items()},
            },
            "diets": {diet: {"fits": each.fits, "why": each.why} for diet, each in self.diets.items()},
            "cautions": [
                {"key": each.key, "severity": each.severity, "scope": each.scope, "words": each.words,
                 "provenance": each.provenance.as_dict()}
                for each in self.cautions
            ],
            "remarks": [each.words for each in self.remarks],
        }  # fmt: skip


def care(path: Path, *, on: date, age: float = 2.0, dog: float | None = None, labels: Sequence[Path] = ()) -> Care:
    """Say what to mind with the dough of a recipe.

    Parameters
    ----------
    path : Path
        A recipe file.
    on : date
        The day: limits of law change.
    age : float
        Age of the youngest child at the table, 1 to 10 years. [a]
    dog : float, optional
        Weight of the house's dog; a small one's if left out. [kg]
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be read, or there is no figure for that age or weight.
    """
    from lumped.app.uses import shop_with
    from lumped.dough import read_recipe
    from lumped.dough.kneading import knead_middle
    from lumped.dough.safety import DIETS, allergens_of, cautions_on, remarks_on, suits

    shop = shop_with(labels)
    recipe = read_recipe(path, shop)
    masses = recipe.masses
    mass = float(knead_middle(recipe, shop).mass[0])
    return Care(
        title=recipe.title, allergens=allergens_of(masses, shop),
        diets={diet: suits(masses, shop, diet) for diet in DIETS},
        cautions=cautions_on(masses, mass, shop, cooked=recipe.cooked, date=on, age=age, dog=dog),
        remarks=remarks_on(masses, shop),
    )  # fmt: skip
