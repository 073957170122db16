"""A batch as a form is filled in, anew or to change one: what was weighed, measured and felt.

As with a packet, nothing is raised while a form is half filled in; documents and sentences are those of the batch file.
"""

from collections.abc import Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

import tomli_w

from lumped.app.given import Given, along, not_along, plain_name
from lumped.app.labels import shop_of
from lumped.app.own import batch_of, recipe_of
from lumped.documents import document_in
from lumped.errors import InputError, LumpedError, RecipeError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.batch import Batch

__all__ = ["Filled", "batch_filled", "batch_written", "goes_in", "recipe_along", "taken_words", "ways_to_measure"]

_GRAMS = 1e3
_REFUSED = "two-wire-dc"
_MEASURED = ("resistivity_ohm_m", "low_ohm_m", "high_ohm_m", "temperature_degC")
_FIELDS = ("title", "made_on", "feel", "notes", "weighed", "weighed_after_g", "measured")
_BESIDE = {
    "batch-ohmmeter": "measured_by", "dough-measured-order": "resistivity_ohm_m",
    "recipe-too-heavy": "weighed_after_g",
}  # fmt: skip


@dataclass(frozen=True, kw_only=True)
class Filled:
    """A form for a batch as far as it is filled in.

    Parameters
    ----------
    given : Given
        The batch file that it would be, with its recipe and ingredients.
    slips : mapping of str to str
        What is wrong, by field; under "" what is wrong with the whole.
    words : tuple of str
        What Lumped takes from it.
    """

    given: Given
    slips: Mapping[str, str] = field(default_factory=dict)
    words: tuple[str, ...] = ()


def ways_to_measure() -> tuple[tuple[str, str], ...]:
    """Give key and words of the ways to measure, the refused one too: who has only that learns why.

    Examples
    --------
    >>> ways_to_measure()[0]
    ('four-needles-ac', 'four needles, alternating current')
    """
    from lumped.dough.known import WAYS_TO_MEASURE
    from lumped.reference import handbook

    return tuple((key, handbook().name("measuring", key)) for key in (*WAYS_TO_MEASURE, _REFUSED))


def goes_in(given: Given, *also: str) -> tuple[tuple[str, str, str], ...]:
    """Give key, name and amount of what a recipe says goes in, each ingredient once; then what went in besides.

    Parameters
    ----------
    given : Given
        The recipe.
    *also : str
        Keys of ingredients; of those that the recipe has not, the amount says so.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be read.

    Examples
    --------
    >>> from lumped.app.examples import example_recipe
    >>> goes_in(Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml")))[2]
    ('table-salt', 'table salt', '73 g')
    """
    from lumped.quantities import short_text

    recipe, shop = recipe_of(given), shop_of(given)
    besides = [key for key in dict.fromkeys(also) if key not in recipe.ingredients and key in shop]
    return (
        *((key, shop[key].name, f"{short_text(_GRAMS * recipe.mass_of(key), 3)} g") for key in recipe.ingredients),
        *((key, shop[key].name, say("web-batch-besides")) for key in besides),
    )


def recipe_along(batch: Given) -> Given:
    """Give the recipe that came along with a batch, under the name that the batch calls it.

    Raises
    ------
    InputError
        If the batch can't be read, or the recipe did not come along.
    """
    name = str(document_in(batch.text, batch.name).get("recipe", ""))
    text = along(batch, name)
    if text is None:
        raise not_along(batch, name)
    return Given(name=name, text=text, labels=batch.labels)


def batch_filled(said: Mapping[str, str], recipe: Given, before: str = "") -> Filled:
    """Read a form.

    Parameters
    ----------
    said : mapping of str to str
        What stands in its fields: keys of the batch file and of its `measured`; `weighed-KEY` for each ingredient.
    recipe : Given
        The recipe that was made.
    before : str
        The batch file that the form changes, if it changes one: what has no field stays as it is.

    Returns
    -------
    Filled

    Examples
    --------
    >>> from lumped.app.examples import example_recipe
    >>> salt = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))
    >>> batch_filled({"title": "Friday", "feel": "3"}, salt).slips
    {}
    >>> batch_filled({"resistivity_ohm_m": "40", "measured_by": "two-wire-dc"}, salt).slips["measured_by"][:44]
    '40 Ω·m from an ohmmeter with two probes is n'
    """
    slips: dict[str, str] = {}
    document = _kept_besides(before, _document(said, recipe.name, slips), recipe)
    given = Given(name=f"{plain_name(document['title'])}.toml", text="", recipes={recipe.name: recipe.text},
                  labels=recipe.labels)  # fmt: skip
    if not slips:
        given = replace(given, text=tomli_w.dumps(document))
        try:
            return Filled(given=given, words=tuple(taken_words(batch_of(given))))
        except LumpedError as problem:
            slips[_BESIDE.get(problem.code, "")] = str(problem.data.get("remedy", problem))
    return Filled(given=given, slips=slips)


def _kept_besides(before: str, document: dict[str, Any], recipe: Given) -> dict[str, Any]:
    """Give a document with what a form has no field for, and ingredients called as they were."""
    if not before:
        return document
    there, shop = document_in(before, recipe.name), shop_of(recipe)
    called = {shop.find(each["ingredient"]).key: each["ingredient"] for each in there.get("weighed", ())}
    weighed = [{**each, "ingredient": called.get(each["ingredient"], each["ingredient"])}
               for each in document.get("weighed", ())]  # fmt: skip
    besides = {key: each for key, each in there.items() if key not in _FIELDS}
    return {**besides, **document, **({"weighed": weighed} if weighed else {})}


def batch_written(given: Given) -> dict[str, str]:
    r"""Give what stands in the fields of a form for a batch.

    Parameters
    ----------
    given : Given
        The batch file with its recipe and ingredients.

    Raises
    ------
    RecipeError, InputError
        If it can't be read.

    Examples
    --------
    >>> text = 'recipe = "a.toml"\nfeel = 3\nweighed = [{ingredient = "table salt", amount_g = 70}]'
    >>> batch_written(Given(name="a.toml", text=text))
    {'feel': '3', 'weighed-table-salt': '70'}
    """
    document, shop, said = document_in(given.text, given.name), shop_of(given), {}
    for key in ("title", "made_on", "feel", "notes"):
        if key in document:
            said[key] = str(document[key])
    weighed: dict[str, float] = {}
    for each in document.get("weighed", ()):
        key = f"weighed-{shop.find(each['ingredient']).key}"
        weighed[key] = weighed.get(key, 0.0) + each["amount_g"]
    figures = {"weighed_after_g": document.get("weighed_after_g"), **weighed, **document.get("measured", {})}
    return said | {
        key: each if isinstance(each, str) else f"{each:.12g}" for key, each in figures.items() if each is not None
    }


def _document(said: Mapping[str, str], recipe: str, slips: dict[str, str]) -> dict[str, Any]:
    """The batch file that a form makes, with a slip for each field that can't be."""
    base: dict[str, Any] = {"kind": "batch", "schema": 1, "title": say("web-batch-unnamed"), "recipe": recipe}
    found = dict(base)
    for key in ("title", "made_on", "feel", "notes"):
        if text := said.get(key, "").strip():
            found[key] = int(text) if key == "feel" and text.isdecimal() and len(text) < 3 else text
            _look(base | {key: found[key]}, key, slips)
    with suppress(KeyError, ValueError):
        found["made_on"] = date.fromisoformat(found["made_on"])
    if (after := _number(said, "weighed_after_g", slips)) is not None:
        found["weighed_after_g"] = after
        _look(base | {"weighed_after_g": after}, "weighed_after_g", slips)
    weighed = [(name, grams) for name in said if name.startswith("weighed-")
               if (grams := _number(said, name, slips)) is not None]  # fmt: skip
    for name, grams in weighed:
        entry = {"ingredient": name.removeprefix("weighed-"), "amount_g": grams}
        _look(base | {"weighed": [entry]}, name, slips)
        found.setdefault("weighed", []).append(entry)
    if measured := _measured(said, slips):
        found["measured"] = measured
    return found


def _measured(said: Mapping[str, str], slips: dict[str, str]) -> dict[str, Any]:
    """What was measured; a way that does not measure dough is refused as soon as it is chosen."""
    found: dict[str, Any] = {}
    for key in _MEASURED:
        if (figure := _number(said, key, slips)) is not None:
            found[key] = figure
    way, reading = said.get("measured_by", ""), said.get("resistivity_ohm_m", "").strip()
    if way == _REFUSED:
        slips["measured_by"] = str(RecipeError("batch-ohmmeter", resistivity=reading[:20] or "…"))
    elif "resistivity_ohm_m" not in found:
        if found and "resistivity_ohm_m" not in slips and set(found) != {"temperature_degC"}:
            slips["resistivity_ohm_m"] = say("web-batch-no-reading")
        return {}
    elif not way:
        slips["measured_by"] = say("web-batch-how")
    base = {"resistivity_ohm_m": 1.0, "measured_by": "a"}
    for key, figure in found.items():
        ends = {"low_ohm_m": 1.0, "high_ohm_m": 1.0} if key.startswith(("low", "high")) else {}
        _look({"kind": "batch", "schema": 1, "title": "a", "recipe": "a", "measured": base | ends | {key: figure}},
              key, slips)  # fmt: skip
    if ("low_ohm_m" in found) != ("high_ohm_m" in found):
        slips.setdefault("low_ohm_m", say("web-batch-both-ends"))
    return {**found, "measured_by": way}


def _number(said: Mapping[str, str], key: str, slips: dict[str, str]) -> float | None:
    from lumped.quantities import read_number

    text = said.get(key, "").strip()
    if not text:
        return None
    try:
        return read_number(text)
    except InputError as problem:
        slips[key] = str(problem)
        return None


def _look(document: dict[str, Any], key: str, slips: dict[str, str]) -> None:
    """Say what is wrong with one field by itself."""
    from lumped.documents import checked
    from lumped.dough.batch import BatchFile

    try:
        checked(BatchFile, document, Path(), failure=InputError)
    except InputError as problem:
        slips[key] = str(problem.data.get("remedy", problem))


def taken_words(batch: "Batch") -> Iterator[str]:
    """Say what Lumped takes from a batch."""
    from lumped.dough.texture import FEELS

    recipe = batch.recipe
    went_in = sum(recipe.masses.values())
    yield say("web-batch-went-in", mass=f"{_GRAMS * went_in:,.0f}")
    if recipe.weighed_after is not None:
        lost = went_in - recipe.weighed_after
        yield say("web-batch-steam", after=f"{_GRAMS * recipe.weighed_after:,.0f}", lost=f"{_GRAMS * lost:,.0f}",
                  share=f"{100 * lost / went_in:.1f}")  # fmt: skip
    if batch.measured is not None:
        yield say("web-batch-measured", figure=batch.measured.text(), way=batch.measured.provenance.note,
                  degrees=f"{recipe.temperature - 273.15:.3g}")  # fmt: skip
    if batch.feel is not None:
        yield say("web-batch-felt", score=batch.feel, word=say(f"feel-{FEELS[batch.feel]}"))
    if batch.measured is None and batch.feel is None:
        yield say("web-batch-idle")
