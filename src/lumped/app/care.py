"""Who may touch doughs, who must not eat them, and what to mind, as pages and commands show it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from lumped.app.together import Together
    from lumped.dough import Recipe
    from lumped.dough.safety import Allergens, Caution, Dose, Helping, Migration, Remark, Suits, TableFit
    from lumped.pantry import Pantry
    from lumped.quantities import Value

__all__ = ["Care", "CareTable", "Eaters", "care", "care_at_table", "care_for", "tended"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Eaters:
    """Who may come by a dough.

    Parameters
    ----------
    age : float
        Age of the youngest child, 1 to 10 years. [a]
    child, dog : Value
        What the child and the dog weigh. [kg]
    """

    age: float
    child: "Value"
    dog: "Value"

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {"child": {"age_years": self.age, "mass": self.child.as_dict()}, "dog": {"mass": self.dog.as_dict()}}


@dataclass(frozen=True, slots=True, kw_only=True)
class Care:
    """What to mind with a dough.

    Parameters
    ----------
    title, name, place : str
        Name of its recipe, what it is called at the table, and where the recipe lies.
    invented : bool
        Whether the recipe is invented.
    mass, salt : float
        Dough that comes out, and the share of salt in it. [kg], [1]
    names : mapping of str to str
        Name of each ingredient.
    allergens : Allergens
        What it contains, and what may be in it as traces.
    diets : mapping of str to Suits
        Whether it suits each diet, and why not.
    helpings : tuple of Helping
        The salt in a pinch and a lump.
    doses : tuple of Dose
        How much of it holds each published dose, the smallest first.
    near : tuple of Dose
        Those that matter: in so much dough as somebody may get down.
    migration : tuple of Migration
        Its aluminium and boron against the limits of the day.
    cautions : tuple of Caution
        The gravest first; local rules last.
    remarks : tuple of Remark
        Questions of religion and the like, with status and date, without a verdict.
    """

    title: str
    name: str
    place: str
    invented: bool
    mass: float
    salt: float
    names: Mapping[str, str]
    allergens: "Allergens"
    diets: "Mapping[str, Suits]"
    helpings: "tuple[Helping, ...]"
    doses: "tuple[Dose, ...]"
    near: "tuple[Dose, ...]"
    migration: "tuple[Migration, ...]"
    cautions: "tuple[Caution, ...]"
    remarks: "tuple[Remark, ...]"

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "title": self.title, "name": self.name, "recipe": self.place, "invented": self.invented,
            "mass_kg": self.mass, "salt_share": self.salt, "names": dict(self.names),
            "allergens": self.allergens.as_dict(),
            "diets": {diet: {"fits": each.fits, "why": each.why} for diet, each in self.diets.items()},
            "helpings": [each.as_dict() for each in self.helpings],
            "doses": [{"near": each in self.near} | each.as_dict() for each in self.doses],
            "migration": [each.as_dict() for each in self.migration],
            "cautions": [each.as_dict() for each in self.cautions],
            "remarks": [each.as_dict() for each in self.remarks],
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class CareTable:
    """What to mind with the doughs of a table.

    Parameters
    ----------
    on : date
        The day whose law counts.
    eaters : Eaters
        Who may come by the doughs.
    doughs : tuple of Care
        Each by itself.
    fit : TableFit
        Which may stay for the sake of the children at the table, and what would mend those that can't.
    limits : tuple of dict
        The law's limits on that day, as it prints them.
    """

    on: date
    eaters: Eaters
    doughs: tuple[Care, ...]
    fit: "TableFit"
    limits: tuple[dict[str, Any], ...]

    def of(self, dough: str) -> Care:
        """Give a dough by its name at the table."""
        return next(each for each in self.doughs if each.name == dough)

    @property
    def shared_cautions(self) -> "tuple[Caution, ...]":
        """Cautions that hold in the same words for every dough."""
        return tuple(
            each for each in self.doughs[0].cautions
            if all(each.words in (other.words for other in dough.cautions) for dough in self.doughs)
        )  # fmt: skip

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "care", "schema": 1, "on": self.on.isoformat(), **self.eaters.as_dict(),
            "table": self.fit.as_dict(), "doughs": [each.as_dict() for each in self.doughs],
            "limits": list(self.limits),
        }  # fmt: skip


def care(path: Path, *, on: date, age: float = 2.0, dog: float | None = None, labels: Sequence[Path] = ()) -> Care:
    """Say what to mind with the dough of a recipe; see `care_at_table`."""
    return care_at_table([path], on=on, age=age, dog=dog, labels=labels).doughs[0]


def care_at_table(
    paths: Sequence[Path],
    *,
    needs: Sequence[str] = (),
    on: date,
    age: float = 2.0,
    dog: float | None = None,
    labels: Sequence[Path] = (),
) -> CareTable:
    """Say what to mind with the doughs of some recipes on one table.

    Parameters
    ----------
    paths : sequence of Path
        Recipe files.
    needs : sequence of str
        What children at the table can't bear, as people write it.
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
        If a recipe can't be read, a need is not known, or there is no figure for that age or weight.
    """
    from lumped.app.together import read_together

    together = read_together([str(path) for path in paths], labels=labels)
    return care_for(together, needs=needs, on=on, age=age, dog=dog)


def care_for(
    together: "Together", *, needs: Sequence[str] = (), on: date, age: float = 2.0, dog: float | None = None
) -> CareTable:
    """Say what to mind with the doughs of recipes that were read; the arguments are those of `care_at_table`."""
    return tended(
        together.recipes, together.places, together.shop, names=together.names, needs=needs, on=on, age=age, dog=dog
    )


def tended(
    recipes: "Sequence[Recipe]", places: Sequence[str], shop: "Pantry", *, names: Sequence[str], needs: Sequence[str],
    on: date, age: float, dog: float | None,
) -> CareTable:  # fmt: skip
    """Say what to mind with the doughs of recipes that are read, each with a name of its own; see `care_at_table`."""
    from lumped.dough.safety import child_mass, dog_mass, fit_for_table
    from lumped.dough.safety.metals import limit_rows
    from lumped.errors import InputError
    from lumped.quantities import Provenance, Status, Value

    if dog is not None and not 0.5 <= dog <= 120:
        raise InputError("care-dog", mass=f"{dog:,.9g}")
    fit = fit_for_table({name: each.masses for name, each in zip(names, recipes, strict=True)}, needs, shop)
    weighed = dog_mass() if dog is None else Value.exact(dog, "kg", Provenance(status=Status.MEASURED, note="as given"))
    return CareTable(
        on=on, eaters=Eaters(age=age, child=child_mass(age), dog=weighed), fit=fit, limits=limit_rows(on),
        doughs=tuple(_care(recipe, shop, name=name, place=place, on=on, age=age, dog=dog)
                     for recipe, name, place in zip(recipes, names, places, strict=True)),
    )  # fmt: skip


def _care(
    recipe: "Recipe", shop: "Pantry", *, name: str, place: str, on: date, age: float, dog: float | None
) -> Care:  # fmt: skip
    from lumped.dough.kneading import knead_middle
    from lumped.dough.safety import (
        DIETS,
        allergens_of,
        cautions_on,
        doses,
        helpings,
        migration,
        near_doses,
        remarks_on,
        salt_share,
        suits,
    )  # fmt: skip

    masses = recipe.masses
    mass = float(knead_middle(recipe, shop).mass[0])
    found = doses(masses, mass, shop, age=age, dog=dog, most=recipe.most)
    return Care(
        title=recipe.title, name=name, place=place, invented=recipe.invented, mass=mass,
        salt=float(salt_share(masses, mass, shop)), names={key: shop[key].name for key in recipe.ingredients},
        allergens=allergens_of(masses, shop), diets={diet: suits(masses, shop, diet) for diet in DIETS},
        helpings=helpings(masses, mass, shop, age=age, dog=dog), doses=found, near=near_doses(found, masses, shop),
        migration=migration(masses, mass, shop, date=on, most=recipe.most), remarks=remarks_on(masses, shop),
        cautions=cautions_on(masses, mass, shop, cooked=recipe.cooked, date=on, age=age, dog=dog,
                             most=recipe.most),
    )  # fmt: skip
