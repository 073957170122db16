"""A person's own recipes and batches, read from their texts, and what the batches taught."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given, along, not_along
from lumped.app.labels import KEPT, Texts, shop_from, shop_of, sound_labels
from lumped.documents import document_in
from lumped.errors import LumpedError, RecipeError

if TYPE_CHECKING:
    from lumped.dough import Recipe
    from lumped.dough.batch import Batch
    from lumped.dough.kneading import Kneading
    from lumped.dough.learning import Lessons
    from lumped.pantry import Pantry

__all__ = ["Taught", "batch_of", "kneading_of", "learnt_words", "recipe_of", "taught", "unfit_in"]

BatchTexts = tuple[tuple[str, str, Texts, Texts], ...]
FOLLOWED = 4  # doughs of about 7 MB each


@dataclass(frozen=True, slots=True, kw_only=True)
class Taught:
    """What the batches of a recipe taught, and what to say of them.

    Parameters
    ----------
    lessons : Lessons
        The calibration and the fit.
    words : tuple of str
        How many batches narrow what, and which teach nothing and why.
    """

    lessons: "Lessons"
    words: tuple[str, ...]


def recipe_of(given: Given, shop: "Pantry | None" = None) -> "Recipe":
    """Read a recipe with the ingredients that came along, or those of a shop, without a file.

    Raises
    ------
    RecipeError, InputError
        If it can't be read or can't exist.
    """
    return _recipe(given.text, given.name, shop or shop_of(given))


def kneading_of(given: Given) -> "Kneading":
    """Follow a recipe through in draws, with the ingredients that came along and what its batches taught.

    A page that asks again of the same recipe, in another room or with another lamp, gets what was followed before.

    Raises
    ------
    RecipeError, InputError
        If it can't be read or can't exist.
    """
    return _kneading(given.text, given.name, tuple(sorted(given.labels.items())), _batch_texts(given))


def unfit_in(given: Given) -> tuple[str, ...]:
    """Say what is to be said first of a recipe: that it is no dough, or does the opposite of what it is for.

    Nothing of a sound one, and nothing of one that can't be read: what is asked about it says why.
    """
    from lumped.dough.unfit import unfit_words

    try:
        return unfit_words(kneading_of(given))
    except LumpedError:
        return ()


@lru_cache(FOLLOWED)
def _kneading(text: str, name: str, labels: Texts, batches: BatchTexts) -> "Kneading":
    from lumped.dough.kneading import kneading

    shop = shop_from(labels)
    recipe = _recipe(text, name, shop)
    lessons = _taught(batches, labels, recipe.kind, recipe.temperature).lessons
    return kneading(recipe, shop, lessons.calibration)


def _recipe(text: str, name: str, shop: "Pantry") -> "Recipe":
    from lumped.documents import checked
    from lumped.dough.reading import RecipeFile, build_recipe

    return build_recipe(checked(RecipeFile, document_in(text, name), Path(name), failure=RecipeError), name, shop)


def batch_of(given: Given) -> "Batch":
    """Read a batch with the recipe that came along, without a file.

    Raises
    ------
    RecipeError, InputError
        If one of them can't be read or can't be, or the recipe did not come along.
    """
    return _batch(given, shop_of(given))


def _batch(given: Given, shop: "Pantry") -> "Batch":
    from lumped.documents import checked
    from lumped.dough.batch import BatchFile, build_batch

    file = checked(BatchFile, document_in(given.text, given.name), Path(given.name), failure=RecipeError)
    text = along(given, file.recipe)
    if text is None:
        raise not_along(given, file.recipe)
    return build_batch(file, _recipe(text, file.recipe, shop), given.name, shop)


def taught(given: Given, recipe: "Recipe") -> Taught:
    """Give what the batches that came along with a recipe taught; the second call costs nothing.

    Parameters
    ----------
    given : Given
        The recipe's text, its ingredients and batches.
    recipe : Recipe
        The recipe that is asked about; it may be another than in the text.

    Returns
    -------
    Taught
        A batch that contradicts its recipe, or can't be read, teaches nothing and is told in words.
    """
    labels = tuple(sorted(given.labels.items()))
    return _taught(_batch_texts(given), labels, recipe.kind, recipe.temperature)


def _batch_texts(given: Given) -> BatchTexts:
    return tuple(
        (each.name, each.text, tuple(sorted(each.recipes.items())), tuple(sorted(each.labels.items())))
        for each in given.batches
    )


@lru_cache(KEPT)
def _taught(batches: BatchTexts, labels: Texts, kind: Any, temperature: float) -> Taught:
    from lumped.dough.learning import Lessons

    read: list[Batch] = []
    words: list[str] = []
    sound = sound_labels(dict(each for batch in batches for each in batch[3]))
    shop = shop_from(tuple(sorted({**sound, **dict(labels)}.items())))
    for name, text, recipes, theirs in batches:
        try:
            shop_of(Given(name=name, text="", labels=dict(theirs)))  # those that it was saved with
            read.append(_batch(Given(name=name, text=text, recipes=dict(recipes)), shop))
        except LumpedError as problem:
            words.append(str(problem))
    if not read:
        return Taught(lessons=Lessons(), words=tuple(words))
    asked = replace(read[0].recipe, kind=kind, temperature=temperature)
    lessons = _learnt(read, asked, shop, words)
    return Taught(lessons=lessons, words=(*learnt_words(read, lessons), *words))


def _learnt(read: "list[Batch]", asked: "Recipe", shop: "Pantry", words: list[str]) -> "Lessons":
    """Learn from all batches but those that contradict their recipe, which leave the list."""
    from lumped.dough.learning import learnt

    while True:
        try:
            return learnt(read, asked, shop)
        except RecipeError as problem:
            if problem.code != "dough-batch-far":
                raise
            words.append(str(problem))
            read[:] = [each for each in read if each.title != problem.data["batch"]]


def learnt_words(read: "Sequence[Batch]", lessons: "Lessons") -> tuple[str, ...]:
    """Say how many of some batches narrow what, and which teach nothing; nothing if there are none."""
    from lumped.texts import say

    teaching = [each for each in read if each.title not in lessons.passed_over]
    measured = [each.title for each in teaching if each.measured is not None]
    felt = [each.title for each in teaching if each.feel is not None]
    found = [("own-narrowed", measured), ("own-felt", felt), ("own-passed-over", list(lessons.passed_over))]
    return tuple(say(key, count=len(names), names=", ".join(names)) for key, names in found if names)
