"""The recipe file: what may stand in it, and how it is read."""

from collections.abc import Iterator
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints, model_validator

from lumped.documents import checked, read_document
from lumped.dough.recipe import Portion, Recipe
from lumped.errors import InputError, RecipeError
from lumped.pantry import Pantry, pantry
from lumped.pantry.amounts import mass_of, weighed
from lumped.quantities import Value

__all__ = ["RecipeFile", "build_recipe", "read_recipe", "recipe_schema"]

Title = Annotated[str, StringConstraints(min_length=1, max_length=120, strip_whitespace=True)]
Grams = Annotated[float, Field(gt=0, le=100_000, allow_inf_nan=False)]
SomeGrams = Annotated[float, Field(ge=0, le=100_000, allow_inf_nan=False)]
Step = Annotated[str, StringConstraints(min_length=1, max_length=400, strip_whitespace=True)]
KILOGRAMS = 1e-3


class _Table(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


def _no_words(given: object) -> object:
    if isinstance(given, str):
        raise InputError("recipe-feel-words", words=given[:40])
    if given is not None and (not isinstance(given, (list, tuple)) or len(given) != 2):
        raise InputError("recipe-feel-two")
    return given


class IngredientEntry(_Table):
    """An ingredient with its amount, and what may be added until it feels right."""

    ingredient: str = Field(description="Key or name of an ingredient in the handbook, such as table-salt.")
    amount_g: Grams | None = Field(None, description="Weighed amount. [g]")
    amount: str | None = Field(None, description='Or a measure: "1 cup", "2 1/2 tbsp", "30 mL".')
    as_needed_g: Annotated[tuple[SomeGrams, SomeGrams] | None, BeforeValidator(_no_words)] = Field(
        None, description="Least and most that is added until it feels right: [0, 60]. [g]"
    )

    @model_validator(mode="after")
    def _says_how_much(self) -> "IngredientEntry":
        if self.amount is not None and self.amount_g is not None:
            raise InputError("recipe-two-amounts")
        if self.amount is None and self.amount_g is None and self.as_needed_g is None:
            raise InputError("recipe-no-amount")
        if self.as_needed_g is not None and self.as_needed_g[0] > self.as_needed_g[1]:
            raise InputError("recipe-feel-order", least=f"{self.as_needed_g[1]:g}", most=f"{self.as_needed_g[0]:g}")
        if self.as_needed_g is not None and self.as_needed_g[1] == 0:
            raise InputError("recipe-feel-nothing")
        return self


class MethodEntry(_Table):
    """What is done with it."""

    cooked: Literal["pot", "kettle", "microwave", "not cooked"] = Field(
        "pot", description="In a pot on the stove, with boiling water from the kettle, in a microwave oven, or not."
    )
    weighed_after_g: Grams | None = Field(None, description="Weight of the dough when it is made, if known. [g]")


class RecipeFile(_Table):
    """A recipe."""

    kind: Literal["recipe"]
    schema_: Literal[1] = Field(alias="schema")
    title: Title
    dough: Literal["conducting", "insulating"] = Field(description="What the dough is for.")
    story: str = ""
    invented: bool = Field(False, description="The recipe is invented.")
    measures: Literal["us", "us-label", "metric", "australian", "imperial", "japanese"] = Field(
        "us", description="Whose cups and spoons."
    )
    temperature: Annotated[float, Field(ge=0, le=90, allow_inf_nan=False)] = Field(
        20.0, alias="temperature_degC", description="Temperature at which the dough is used. [°C]"
    )
    steps: Annotated[list[Step], Field(max_length=20)] = Field([], description="What is done, step by step, in words.")
    method: MethodEntry = Field(default_factory=lambda: MethodEntry(cooked="pot", weighed_after_g=None))
    ingredients: Annotated[list[IngredientEntry], Field(min_length=1, max_length=60)]


def read_recipe(path: Path, shop: Pantry | None = None) -> Recipe:
    """Read a recipe file.

    Parameters
    ----------
    path : Path
        The TOML file.
    shop : Pantry, optional
        The ingredients that it may name; the handbook's.

    Returns
    -------
    Recipe

    Raises
    ------
    RecipeError
        If something can't be read or can't exist, with file, key, value and remedy.
    """
    document = read_document(path, "recipe", failure=RecipeError)
    return build_recipe(checked(RecipeFile, document, path, failure=RecipeError), str(path), shop)


def build_recipe(file: RecipeFile, name: str, shop: Pantry | None = None) -> Recipe:
    """Understand a recipe file's contents; `name` is the file, for messages."""
    shop = shop or pantry()
    portions = tuple(_portion(entry, number, file, name, shop) for number, entry in enumerate(file.ingredients, 1))
    after = file.method.weighed_after_g
    _refuse_impossible_weight(portions, after, name, shop)
    return Recipe(
        title=file.title, kind=file.dough, portions=portions, cooked=file.method.cooked,
        weighed_after=after * KILOGRAMS if after else None, temperature=file.temperature + 273.15,
        steps=tuple(file.steps), measures=file.measures, invented=file.invented,
        everyday=tuple(_everyday(file, shop)),
    )  # fmt: skip


def _portion(entry: IngredientEntry, number: int, file: RecipeFile, name: str, shop: Pantry) -> Portion:
    ingredient = shop.find(entry.ingredient, f"{name}: ingredients › no. {number}")
    needed = entry.as_needed_g and (entry.as_needed_g[0] * KILOGRAMS, entry.as_needed_g[1] * KILOGRAMS)
    if entry.amount_g is not None:
        written, mass = f"{entry.amount_g:.12g} g", weighed(entry.amount_g * KILOGRAMS)
    elif entry.amount is not None:
        try:
            written, mass = entry.amount, mass_of(entry.amount, ingredient, file.measures)
        except RecipeError as problem:
            place = f"ingredients › “{entry.ingredient}” › amount"
            raise RecipeError("recipe-portion", file=name, key=place, problem=str(problem),
                              ingredient=ingredient.name) from None  # fmt: skip
    else:
        written, mass = "as needed", Value.exact(0.0, "kg")
    return Portion(ingredient=ingredient.key, written=written, mass=mass, as_needed=needed or None)


def _everyday(file: RecipeFile, shop: Pantry) -> Iterator[tuple[str, str]]:
    """Words of a recipe that may mean several ingredients, each with the one that it is taken as."""
    for word in dict.fromkeys(each.ingredient.strip() for each in file.ingredients):
        if shop.taken_as(word):
            yield word, shop.find(word).key


def _refuse_impossible_weight(portions: tuple[Portion, ...], after_g: float | None, name: str, shop: Pantry) -> None:
    if after_g is None:
        return
    most = sum(each.mass.high + (each.as_needed or (0, 0))[1] for each in portions) * 1e3
    dry = sum(each.mass.low * (1 - shop[each.ingredient].moisture.high) for each in portions) * 1e3
    if after_g > most:
        raise RecipeError("recipe-too-heavy", file=name, after=f"{after_g:g}", most=f"{most:.0f}")
    if after_g < dry:
        raise RecipeError("recipe-too-light", file=name, after=f"{after_g:g}", dry=f"{dry:.0f}")


def recipe_schema() -> dict[str, Any]:
    """Give the JSON Schema of a recipe file.

    Examples
    --------
    >>> sorted(recipe_schema()["required"])
    ['dough', 'ingredients', 'kind', 'schema', 'title']
    """
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **RecipeFile.model_json_schema()}
