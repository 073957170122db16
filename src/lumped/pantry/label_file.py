"""The ingredient file: a packet's label as TOML, as a line of CSV, or as a form gives it."""

import re
from dataclasses import replace
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import AfterValidator, BaseModel, ConfigDict, Field, StringConstraints, model_validator

from lumped.documents import checked, read_document
from lumped.errors import InputError
from lumped.pantry.ingredient import ROLES, Ingredient
from lumped.pantry.label import NUTRIENTS, Label
from lumped.pantry.labelling import labelled
from lumped.pantry.pantry import Pantry
from lumped.pantry.prices import Price, paid
from lumped.pantry.where import region

__all__ = ["LabelFile", "label_of", "label_schema", "labelled_from", "read_label_toml"]

_PLAIN_TEXT = re.compile(r"[^\W_][\w '’.,()%/&\-]*")
_GRAMS_PER_KG = 1000


def _plain(text: str) -> str:
    """Refuse what a spreadsheet would take for a formula or a page for markup."""
    if not _PLAIN_TEXT.fullmatch(text):
        raise InputError("label-text", text=text if len(text) <= 40 else text[:39] + "…")
    return text


def _known_role(text: str) -> str:
    if text not in ROLES:
        raise InputError("label-role", role=text, known=", ".join(ROLES))
    return text


def _known_region(text: str | None) -> str | None:
    return None if text is None else region(text).key


Text = Annotated[str, StringConstraints(min_length=1, max_length=80, strip_whitespace=True), AfterValidator(_plain)]
Grams = Annotated[float | None, Field(ge=0, le=100_000, allow_inf_nan=False)]
Words = Annotated[list[Text], Field(max_length=30)]
Role = Annotated[Text, AfterValidator(_known_role)]


class LabelFile(BaseModel):
    """An ingredient from a packet's label. What is left out becomes an assumption that is said."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    kind: Literal["ingredient"]
    schema_: Literal[1] = Field(alias="schema")
    title: Text = Field(description="What the packet is called.")
    like: Text | None = Field(None, description="Key or name of an ingredient of the same sort, such as plain-flour.")
    per: Literal["100 g", "100 mL", "serving"] = Field("100 g", description="What the table is for.")
    energy_kJ: Grams = Field(None, description="Energy. [kJ]")  # noqa: N815 - a unit keeps its letters
    energy_kcal: Grams = Field(None, description="Energy. [kcal]")
    fat_g: Grams = Field(None, description="Fat. [g]")
    carbohydrate_g: Grams = Field(None, description="Carbohydrate. [g]")
    sugars_g: Grams = Field(None, description="Of which sugars. [g]")
    fibre_g: Grams = Field(None, description="Fibre. [g]")
    protein_g: Grams = Field(None, description="Protein. [g]")
    salt_g: Grams = Field(None, description="Salt, as European labels print it. [g]")
    sodium_mg: Grams = Field(None, description="Sodium, as American labels print it. [mg]")
    water_g: Grams = Field(None, description="Water, if it is printed. [g]")
    ash_g: Grams = Field(None, description="Ash, if it is printed. [g]")
    polyols_g: Grams = Field(None, description="Of which polyols, such as glycerol. [g]")
    alcohol_g: Grams = Field(None, description="Alcohol. [g]")
    fibre_within: bool | None = Field(None, description="Whether carbohydrate includes fibre, as in America.")
    sodium_from: Literal["salt", "baking soda"] | None = Field(None, description="What its sodium is a part of.")
    density_g_per_mL: Annotated[float | None, Field(ge=0.3, le=3, allow_inf_nan=False)] = Field(  # noqa: N815
        None, description="Density of a liquid. [g/mL]"
    )
    serving_g: Annotated[float | None, Field(gt=0, le=5000, allow_inf_nan=False)] = Field(
        None, description="What a serving weighs. [g]"
    )
    serving: Annotated[str, StringConstraints(max_length=40, strip_whitespace=True)] = Field(
        "", description='The measure that a serving fills: "1/4 cup", "2 tbsp".'
    )
    filled: Literal["spooned", "scooped", "sifted", "poured", "packed", "levelled"] | None = Field(
        None, description="How that measure was filled; unsaid: as is usual for what it is like, else levelled."
    )
    allergens: Words | None = Field(None, description="Allergens that it contains; an empty list if it says none.")
    may_contain: Words | None = Field(None, description="Allergens that it may contain.")
    contains: Annotated[list[Literal["gluten", "corn", "animal", "alcohol"]], Field(max_length=4)] = Field(
        [], description="What diets ask for beyond allergens."
    )
    roles: Annotated[list[Role], Field(max_length=6)] = Field([], description="What it does in a dough.")

    pack_g: Annotated[float | None, Field(gt=0, le=100_000, allow_inf_nan=False)] = Field(
        None, description="What the packet holds. [g]"
    )
    pack_price: Annotated[float | None, Field(gt=0, le=10_000_000, allow_inf_nan=False)] = Field(
        None, description="What it cost, in the money of the region."
    )
    bought_in: Annotated[str | None, AfterValidator(_known_region)] = Field(
        None, description="Where it was bought: the key of a region, such as europe."
    )

    @model_validator(mode="after")
    def _says_something(self) -> "LabelFile":
        if all(getattr(self, key) is None for key in _KEYS.values()):
            raise InputError("label-empty", where=self.title)
        return self


_KEYS = {name: f"{name}_mg" if name == "sodium" else f"{name}_g" for name in NUTRIENTS}


def read_label_toml(path: Path, shop: Pantry | None = None) -> Ingredient:
    """Read an ingredient from a TOML file.

    Parameters
    ----------
    path : Path
        The file, with kind = "ingredient".
    shop : Pantry, optional
        Where the similar ingredient is looked up; the handbook's.

    Returns
    -------
    Ingredient

    Raises
    ------
    InputError
        If something can't be read or can't be, with file, key, value and remedy.
    """
    return labelled_from(read_document(path, "ingredient"), str(path), shop)


def labelled_from(document: dict[str, Any], name: str, shop: Pantry | None = None) -> Ingredient:
    """Give the ingredient that a document, a line of a table or a form describes.

    Parameters
    ----------
    document : dict
        Keys and values of `LabelFile`.
    name : str
        File or form, for messages.
    shop : Pantry, optional
        Where the similar ingredient is looked up; the handbook's.

    Examples
    --------
    >>> form = {"title": "our salt", "like": "table-salt", "salt_g": 99.8, "allergens": []}
    >>> labelled_from({"kind": "ingredient", "schema": 1, **form}, "form").key
    'our-salt'
    """
    file = checked(LabelFile, document, Path(name), failure=InputError)
    found = labelled(label_of(file), shop)
    return replace(found, bought=_bought(file, found.key))


def _bought(file: LabelFile, key: str) -> Price | None:
    """What the packet cost, if that is said; half of it said is refused."""
    said = (file.pack_g, file.pack_price, file.bought_in)
    if file.pack_g is None or file.pack_price is None or file.bought_in is None:
        if any(each is not None for each in said):
            raise InputError("label-price", where=file.title)
        return None
    return paid(key, file.bought_in, pack=file.pack_g / _GRAMS_PER_KG, money=file.pack_price)


def label_of(file: LabelFile) -> Label:
    """Give a file's label in SI."""
    figures = {
        name: None
        if getattr(file, key) is None
        else getattr(file, key) / _GRAMS_PER_KG / (1000 if key.endswith("_mg") else 1)
        for name, key in _KEYS.items()
    }
    return Label(
        name=file.title, like=file.like or "", per=file.per, kilojoules=file.energy_kJ, kilocalories=file.energy_kcal,
        fibre_within=file.fibre_within, sodium_from=file.sodium_from,
        density=None if file.density_g_per_mL is None else 1000 * file.density_g_per_mL,
        serving=None if file.serving_g is None else file.serving_g / _GRAMS_PER_KG, serving_measure=file.serving,
        filled=file.filled or "",
        allergens=None if file.allergens is None else tuple(file.allergens),
        may_contain=None if file.may_contain is None else tuple(file.may_contain),
        contains=tuple(file.contains), roles=tuple(file.roles), **figures,
    )  # fmt: skip


def label_schema() -> dict[str, Any]:
    """Give the JSON Schema of an ingredient file.

    Examples
    --------
    >>> sorted(label_schema()["required"])
    ['kind', 'schema', 'title']
    """
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **LabelFile.model_json_schema()}
