"""One making of a recipe: what was really weighed, how it felt, and what was measured on it."""

import re
from dataclasses import dataclass, replace
from datetime import date, datetime
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints, model_validator

from lumped.documents import checked, read_document
from lumped.dough.known import OHMMETER, measured_dough
from lumped.dough.reading import read_recipe
from lumped.dough.recipe import Portion, Recipe
from lumped.errors import InputError, RecipeError
from lumped.pantry import Pantry, pantry
from lumped.quantities import Value

__all__ = ["Batch", "BatchFile", "batch_schema", "build_batch", "measured_value", "read_batch"]

Line = Annotated[str, StringConstraints(min_length=1, max_length=200, strip_whitespace=True)]
Grams = Annotated[float, Field(gt=0, le=100_000, allow_inf_nan=False)]
Ohmmetres = Annotated[float, Field(gt=0, le=1e12, allow_inf_nan=False)]
_WRITTEN_DAY = re.compile(r"\d{4}-\d{2}-\d{2}")
_EXACTLY = 0.005  # of a kitchen scale that was read and written down


def _day(given: object) -> object:
    """Take a day as TOML has it, or as JSON writes it; no moment, and no number."""
    if isinstance(given, str) and _WRITTEN_DAY.fullmatch(given):
        return given
    if isinstance(given, date) and not isinstance(given, datetime):
        return given
    raise InputError("batch-day")


Day = Annotated[date, BeforeValidator(_day)]


class _Table(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


class WeighedEntry(_Table):
    """What the scale said of one ingredient."""

    ingredient: Line
    amount_g: Grams = Field(description="All of it that went in, the last handful too. [g]")


class MeasuredEntry(_Table):
    """A resistivity that was measured on it."""

    resistivity_ohm_m: Ohmmetres = Field(description="The reading. [Ω·m]")
    measured_by: Line = Field(description="How, by its key in the handbook's table of ways to measure.")
    low_ohm_m: Ohmmetres | None = Field(None, description="Low end of its interval. [Ω·m]")
    high_ohm_m: Ohmmetres | None = Field(None, description="High end of its interval. [Ω·m]")
    temperature: Annotated[float, Field(ge=0, le=90, allow_inf_nan=False)] = Field(
        20.0, alias="temperature_degC", description="Temperature of the specimen. [°C]"
    )

    @model_validator(mode="after")
    def _both_ends(self) -> "MeasuredEntry":
        if (self.low_ohm_m is None) != (self.high_ohm_m is None):
            raise InputError("batch-one-end")
        return self


class BatchFile(_Table):
    """A batch."""

    kind: Literal["batch"]
    schema_: Literal[1] = Field(alias="schema")
    title: Line
    recipe: Line = Field(description="The recipe's file, beside this one.")
    made_on: Day | None = Field(None, description="The day.")
    weighed: Annotated[list[WeighedEntry], Field(max_length=60)] = Field(
        [], description="What was really weighed; what is not named is as in the recipe."
    )
    weighed_after_g: Grams | None = Field(None, description="Weight of the finished dough. [g]")
    feel: Annotated[int, Field(ge=1, le=5)] | None = Field(
        None, description="1 crumbles, 2 stiff, 3 right, 4 soft, 5 sticks."
    )
    measured: MeasuredEntry | None = None
    notes: Annotated[str, StringConstraints(max_length=4_000)] = ""
    invented: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch:
    """One making of a recipe.

    Parameters
    ----------
    title : str
        Its name.
    recipe : Recipe
        The recipe as it was really made, at the temperature at which it was measured.
    made_on : date or None
        The day.
    feel : int or None
        1 (crumbles) to 5 (sticks).
    measured : Value or None
        Its resistivity. [Ω·m]
    invented : bool
        Whether its figures are invented.
    """

    title: str
    recipe: Recipe
    made_on: date | None = None
    feel: int | None = None
    measured: Value | None = None
    invented: bool = False


def read_batch(path: Path, shop: Pantry | None = None) -> Batch:
    """Read a batch file and the recipe that it names.

    Parameters
    ----------
    path : Path
        The TOML file.
    shop : Pantry, optional
        The ingredients that it may name; the handbook's.

    Returns
    -------
    Batch

    Raises
    ------
    RecipeError
        If something can't be read or can't be: with file, key, value and remedy. A value from an ohmmeter with two
        probes is refused as a resistivity.
    """
    file = checked(BatchFile, read_document(path, "batch", failure=RecipeError), path, failure=RecipeError)
    recipe = read_recipe(path.parent / file.recipe, shop)
    return build_batch(file, recipe, str(path), shop)


def build_batch(file: BatchFile, recipe: Recipe, name: str, shop: Pantry | None = None) -> Batch:
    """Understand a batch file's contents; `name` is the file, for messages."""
    shop = shop or pantry()
    weighed: dict[str, float] = {}
    for number, entry in enumerate(file.weighed, 1):
        key = shop.find(entry.ingredient, f"{name}: weighed › no. {number}").key
        weighed[key] = weighed.get(key, 0.0) + entry.amount_g / 1e3
    portions = [each for each in recipe.portions if each.ingredient not in weighed]
    portions += [_weighed_portion(key, mass) for key, mass in weighed.items()]
    after = file.weighed_after_g / 1e3 if file.weighed_after_g else None
    went_in = sum(each.mass.high + (each.as_needed or (0.0, 0.0))[1] for each in portions)
    if after is not None and after > went_in:
        raise RecipeError("recipe-too-heavy", file=name, after=f"{1e3 * after:g}", most=f"{1e3 * went_in:.0f}")
    measured = file.measured
    temperature = measured.temperature + 273.15 if measured else recipe.temperature
    made = replace(
        recipe, title=file.title, portions=tuple(portions), weighed_after=after, temperature=temperature,
        invented=recipe.invented or file.invented,
    )  # fmt: skip
    return Batch(
        title=file.title, recipe=made, made_on=file.made_on, feel=file.feel,
        measured=measured_value(file), invented=made.invented,
    )  # fmt: skip


def measured_value(file: BatchFile) -> Value | None:
    """Give the resistivity that was measured on a batch. [Ω·m]

    Raises
    ------
    RecipeError
        If it was measured in a way that does not measure dough, or its ends can't be.
    """
    if file.measured is None:
        return None
    each = file.measured
    if each.measured_by == OHMMETER:
        raise RecipeError("batch-ohmmeter", resistivity=f"{each.resistivity_ohm_m:g}")
    return measured_dough(
        each.resistivity_ohm_m, each.measured_by, low=each.low_ohm_m, high=each.high_ohm_m
    ).resistivity  # fmt: skip


def _weighed_portion(key: str, mass: float) -> Portion:
    half = max(_EXACTLY * mass, 0.5e-3 if mass > 5e-3 else 0.05 * mass)
    value = Value(mean=mass, low=mass - half, high=mass + half, unit="kg")
    return Portion(ingredient=key, written=f"{1e3 * mass:.12g} g", mass=value)


def batch_schema() -> dict[str, Any]:
    """Give the JSON Schema of a batch file.

    Examples
    --------
    >>> sorted(batch_schema()["required"])
    ['kind', 'recipe', 'schema', 'title']
    """
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **BatchFile.model_json_schema()}
