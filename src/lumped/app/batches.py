"""A batch as a form is filled in, and as a page shows it: what was weighed, measured, felt, and what it taught.

As with a packet, nothing is raised while a form is half filled in; documents and sentences are those of the batch file.
"""

from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

import tomli_w

from lumped.app.asking import Question
from lumped.app.given import Given, along, plain_name
from lumped.app.own import batch_of, document_of, kneading_of, recipe_of, shop_of, taught
from lumped.app.sources import opened, told_of
from lumped.errors import InputError, LumpedError, RecipeError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.batch import Batch
    from lumped.quantities import Value

__all__ = ["Filled", "batch_filled", "batch_told", "goes_in", "ways_to_measure"]

_GRAMS = 1e3
_REFUSED = "two-wire-dc"
_MEASURED = ("resistivity_ohm_m", "low_ohm_m", "high_ohm_m", "temperature_degC")
_BESIDE = {
    "dough-ohmmeter": "measured_by", "dough-measured-order": "resistivity_ohm_m",
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


def goes_in(given: Given) -> tuple[tuple[str, str, str], ...]:
    """Give key, name and amount of what a recipe says goes in, each ingredient once.

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
    return tuple(
        (key, shop[key].name, f"{short_text(_GRAMS * recipe.mass_of(key), 3)} g") for key in recipe.ingredients
    )


def batch_filled(said: Mapping[str, str], recipe: Given) -> Filled:
    """Read a form.

    Parameters
    ----------
    said : mapping of str to str
        What stands in its fields: keys of the batch file and of its `measured`; `weighed-KEY` for each ingredient.
    recipe : Given
        The recipe that was made.

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
    document = _document(said, recipe.name, slips)
    given = Given(name=f"{plain_name(document['title'])}.toml", text="", recipes={recipe.name: recipe.text},
                  labels=recipe.labels)  # fmt: skip
    if not slips:
        given = replace(given, text=tomli_w.dumps(document))
        try:
            return Filled(given=given, words=tuple(_taken(batch_of(given))))
        except LumpedError as problem:
            slips[_BESIDE.get(problem.code, "")] = str(problem.data.get("remedy", problem))
    return Filled(given=given, slips=slips)


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
        slips["measured_by"] = str(RecipeError("dough-ohmmeter", resistivity=reading[:20] or "…"))
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


def _taken(batch: "Batch") -> Iterator[str]:
    """What Lumped takes from a batch, in words."""
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


def batch_told(question: Question, report: Callable[[float], None]) -> dict[str, Any]:
    """Tell a batch with what it taught; a worker of the pool does it.

    Parameters
    ----------
    question : Question
        The batch with its recipe, ingredients, and as `batches` all that were made of that recipe.
    report : callable
        Told the share that is done.

    Returns
    -------
    dict
        `taken` in words; `weighed` (name, in the recipe, really); `learnt`: of each property its key, words and the
        figure from the recipe alone, with this batch and with all; `taught` in words; `notes`; `sources`.
    """
    from lumped.quantities import short_text

    given = question.given
    document, batch = document_of(given.text, given.name), batch_of(given)
    recipe = Given(name=document["recipe"], text=along(given, document["recipe"]) or "", labels=given.labels)
    this = replace(given, batches=())
    others = [each for each in given.batches if each.text != given.text]
    stages = {"alone": recipe, "this": replace(recipe, batches=(this,))}
    if others:
        stages["all"] = replace(recipe, batches=given.batches)
    shop, sources, columns = shop_of(given), {}, {}  # type: Any, dict[str, Any], dict[str, dict[str, Value]]
    for k, (stage, each) in enumerate(stages.items(), 1):
        columns[stage] = _properties(each, stage, sources)
        report(k / len(stages))
    by_recipe = {key: amount for key, _, amount in goes_in(recipe)}
    weighed = [(shop.find(each["ingredient"]), each["amount_g"]) for each in document.get("weighed", ())]
    return {
        "taken": list(_taken(batch)), "stages": list(stages),
        "weighed": [(each.name, by_recipe.get(each.key, "–"), f"{short_text(grams, 6)} g") for each, grams in weighed],
        "learnt": [
            (key, say(f"web-reading-{key}"), [(f"{key}-{stage}", it[key].text()) for stage, it in columns.items()])
            for key in ("resistivity", "feel")
        ],
        "taught": list(taught(stages["this"], recipe_of(recipe)).words),
        "notes": document.get("notes", ""), "invented": bool(document.get("invented")), "sources": sources,
    }  # fmt: skip


def _properties(given: Given, stage: str, sources: dict[str, Any]) -> "dict[str, Value]":
    """What a recipe does with what some batches taught of it."""
    from lumped.dough.texture import feel_of

    done = kneading_of(given)
    resistivity = done.value(done.chain.resistivity, "Ω·m")
    fit = taught(given, done.recipe).lessons.fit
    score = feel_of(done.recipe, done.chain, done.value(done.chain.hydration, ""), fit).score
    sources[f"resistivity-{stage}"] = told_of(
        say("dough-step-resistivity"), done.provenance, opened(done, shop_of(given)), note=say("web-source-chain"),
        recipe=done.recipe,
    )  # fmt: skip
    sources[f"feel-{stage}"] = told_of(say("web-reading-feel"), score.provenance, note=say("web-source-feel"))
    return {"resistivity": resistivity, "feel": score}
