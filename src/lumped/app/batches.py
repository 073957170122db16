"""A kept batch as its page shows it: what was weighed, measured, felt, and what it taught of its recipe."""

from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from lumped.app.asking import Question
from lumped.app.batch_form import goes_in, recipe_along, taken_words
from lumped.app.given import Given
from lumped.app.labels import shop_of
from lumped.app.own import batch_of, kneading_of, recipe_of, taught
from lumped.app.sources import opened, told_of
from lumped.documents import document_in
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.quantities import Value

__all__ = ["batch_told"]


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
    document, batch = document_in(given.text, given.name), batch_of(given)
    recipe, this = recipe_along(given), replace(given, batches=())
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
        "taken": list(taken_words(batch)), "stages": list(stages),
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
    resistivity = done.value(done.chain.resistivity, "Ω·m", "resistivity")
    fit = taught(given, done.recipe).lessons.fit
    score = feel_of(
        done.recipe, done.chain, done.value(done.chain.hydration, "", "hydration"), fit, shop=done.shop
    ).score
    sources[f"resistivity-{stage}"] = told_of(
        say("dough-step-resistivity"), done.provenance, opened(done, shop_of(given)), note=say("web-source-chain"),
        recipe=done.recipe,
    )  # fmt: skip
    sources[f"feel-{stage}"] = told_of(say("web-reading-feel"), score.provenance, note=say("web-source-feel"))
    return {"resistivity": resistivity, "feel": score}
