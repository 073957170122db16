"""A packet's label as a form is filled in: what Lumped takes from it and what it assumes, and what is wrong where.

Nothing is raised: whoever fills a form in is half-way through most of the time. The document, what is assumed and each
sentence are those of the ingredient file.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

import tomli_w

from lumped.app.given import Given, file_name_of
from lumped.documents import document_in
from lumped.errors import InputError, LumpedError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.pantry import Ingredient

__all__ = ["CONTAINS", "FIGURES", "LISTS", "PLAIN", "Packet", "filled_in", "packet_of"]

FIGURES = (
    "energy_kJ", "energy_kcal", "fat_g", "carbohydrate_g", "sugars_g", "polyols_g", "fibre_g", "protein_g", "salt_g",
    "sodium_mg", "water_g", "ash_g", "alcohol_g", "serving_g", "density_g_per_mL", "pack_g",
    "pack_price",
)  # fmt: skip
"""Fields that hold a number."""
PLAIN = ("title", "like", "per", "serving", "filled", "sodium_from", "bought_in")
LISTS = ("allergens", "may_contain")
CONTAINS = ("gluten", "corn", "animal", "alcohol")
_NONE = ("none", "–", "-")
_BESIDE = {  # which field a sentence about the whole label belongs to
    "label-sum": "per", "label-part": "sugars_g", "label-salt-sodium": "salt_g", "label-energy": "energy_kcal",
    "label-too-little": "like",
    "label-serving": "serving_g", "label-serving-measure": "serving", "label-taken": "title",
    "recipe-no-ingredient": "like", "label-price": "pack_price",
}  # fmt: skip


@dataclass(frozen=True, kw_only=True)
class Packet:
    """A form as far as it is filled in.

    Parameters
    ----------
    document : dict
        The ingredient file that it would be.
    slips : mapping of str to str
        What is wrong, by field; under "" what is wrong with the whole.
    told : dict or None
        The ingredient as `app.larder.ingredient_told` tells it, if nothing is wrong.
    """

    document: dict[str, Any]
    slips: Mapping[str, str] = field(default_factory=dict)
    told: dict[str, Any] | None = None

    @property
    def given(self) -> Given:
        """The ingredient file, to be kept or handed out."""
        return Given(name=file_name_of(self.document["title"]), text=tomli_w.dumps(self.document))


def packet_of(said: Mapping[str, str]) -> Packet:
    """Read a form.

    Parameters
    ----------
    said : mapping of str to str
        What stands in its fields: the keys of the ingredient file; `contains-gluten` and the like if they are ticked;
        lists parted by commas, "none" where the packet says that there are none; its roles, parted by ", ", as `role`.

    Returns
    -------
    Packet

    Examples
    --------
    >>> packet = packet_of({"title": "our salt", "like": "table-salt", "salt_g": "99,8", "allergens": "none"})
    >>> packet.document["salt_g"], packet.slips, packet.told["key"]
    (99.8, {}, 'our-salt')
    >>> packet_of({"title": "sand", "fat_g": "-3", "salt_g": "much"}).slips["fat_g"]
    'It must be at least 0.'
    """
    slips: dict[str, str] = {}
    document: dict[str, Any] = {"kind": "ingredient", "schema": 1, "title": say("web-packet-unnamed")}
    for key, value in _entries(said, slips):
        problem = _wrong(key, value)
        if problem:
            slips["role" if key == "roles" else key] = problem
        document[key] = value
    if slips:
        return Packet(document=document, slips=slips)
    return _understood(document)


def _entries(said: Mapping[str, str], slips: dict[str, str]) -> Iterator[tuple[str, Any]]:
    """What is filled in, as the ingredient file holds it."""
    from lumped.quantities import read_number

    for key in PLAIN:
        if text := said.get(key, "").strip():
            yield key, text
    for key in FIGURES:
        if text := said.get(key, "").strip():
            try:
                yield key, read_number(text)
            except InputError as problem:
                slips[key] = str(problem)
    if said.get("fibre_within"):
        yield "fibre_within", said["fibre_within"] == "yes"
    for key in LISTS:
        if text := said.get(key, "").strip():
            yield key, [] if text.casefold() in _NONE else [each.strip() for each in text.split(",") if each.strip()]
    if contains := [each for each in CONTAINS if said.get(f"contains-{each}")]:
        yield "contains", contains
    if said.get("role"):
        yield "roles", said["role"].split(", ")


def _wrong(key: str, value: Any) -> str:
    """Say what is wrong with one field by itself; nothing if it could be."""
    from lumped.documents import checked
    from lumped.pantry.label_file import LabelFile

    document = {"kind": "ingredient", "schema": 1, "title": "a", "fat_g": 0.0, key: value}
    try:
        checked(LabelFile, document, Path(), failure=InputError)
    except InputError as problem:
        return str(problem.data.get("remedy", problem))
    return ""


def _understood(document: dict[str, Any]) -> Packet:
    """Give the packet with what is taken from it; or with what is wrong with the whole, beside the field to look at."""
    from lumped.app.larder import ingredient_told
    from lumped.pantry import pantry
    from lumped.pantry.label_file import labelled_from

    try:
        ingredient: Ingredient = labelled_from(document, document["title"])
        told = ingredient_told(pantry().with_added(ingredient), ingredient.key)
    except LumpedError as problem:
        return Packet(document=document, slips={_field(problem, document): _words(problem)})
    return Packet(document=document, told=told)


def _field(problem: LumpedError, document: Mapping[str, Any]) -> str:
    if problem.code in ("label-allergen", "label-no-allergen"):
        return next((key for key in LISTS if problem.data["word"] in document.get(key, ())), "allergens")
    return _BESIDE.get(problem.code, "")


def _words(problem: LumpedError) -> str:
    return str(problem.data.get("remedy", problem))


def filled_in(text: str) -> dict[str, str]:
    r"""Give what stands in the fields of a form for an ingredient file; what is of no use there is left out.

    Raises
    ------
    InputError
        If it is no TOML.

    Examples
    --------
    >>> filled_in('title = "our salt"\nsalt_g = 99.8\nfat_g = "?"\nallergens = []\ncontains = ["corn"]')
    {'title': 'our salt', 'salt_g': '99.8', 'allergens': 'none', 'contains-corn': 'yes'}
    """
    said: dict[str, str] = {}
    for key, value in document_in(text, "").items():
        words = [each for each in value if isinstance(each, str)] if isinstance(value, list) else None
        if key in FIGURES and isinstance(value, int | float):
            said[key] = f"{value:.12g}"
        elif key in LISTS and words is not None:
            said[key] = ", ".join(words) or "none"
        elif key == "contains":
            said |= {f"contains-{each}": "yes" for each in words or ()}
        elif key == "roles" and words:
            said["role"] = ", ".join(words)
        elif key == "fibre_within":
            said[key] = "yes" if value else "no"
        elif key in PLAIN:
            said[key] = str(value)
    return said
