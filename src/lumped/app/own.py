"""What is a person's own beside a recipe: ingredients that the handbook lacks, and batches that were made of it."""

import tomllib
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import tomli_w

from lumped.app.given import Given, along
from lumped.errors import InputError, LumpedError, RecipeError
from lumped.texts.folding import plain_word

if TYPE_CHECKING:
    from lumped.dough import Recipe
    from lumped.dough.batch import Batch
    from lumped.dough.kneading import Kneading
    from lumped.dough.learning import Lessons
    from lumped.pantry import Pantry

__all__ = [
    "Taught", "batch_of", "document_of", "foreign_words", "kneading_of", "label_texts", "label_trouble", "learnt_words",
    "left_out_words", "recipe_of", "shop_of", "sound_labels", "taught", "usable_labels",
]  # fmt: skip

Texts = tuple[tuple[str, str], ...]
BatchTexts = tuple[tuple[str, str, Texts, Texts], ...]
KEPT = 64
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


def shop_of(given: Given) -> "Pantry":
    r"""Give the handbook's ingredients with those that came along.

    Raises
    ------
    InputError
        If one of them can't be read.

    Examples
    --------
    >>> text = 'kind = "ingredient"\nschema = 1\ntitle = "our salt"\nsalt_g = 99\nallergens = []'
    >>> shop_of(Given(name="a.toml", text="", labels={"our salt": text})).find("our salt").key
    'our-salt'
    """
    return _shop(tuple(sorted(given.labels.items())))


@lru_cache(KEPT)
def _shop(labels: Texts) -> "Pantry":
    from lumped.pantry import pantry
    from lumped.pantry.label_file import labelled_from

    shop = pantry()
    return shop.with_added(*(labelled_from(document_of(text, title), title) for title, text in labels))


def label_texts(text: str, name: str) -> tuple[tuple[str, str], ...]:
    r"""Give title and text of each ingredient of an ingredient file, or of a table by the ending of its name.

    Raises
    ------
    InputError
        If one of them can't be read.

    Examples
    --------
    >>> label_texts("title,salt_g\nour salt,99", "a.csv")[0][0]
    'our salt'
    """
    from lumped.pantry.label_file import labelled_from
    from lumped.pantry.label_table import labels_in

    if name.lower().endswith(".csv"):
        found = [document for document, _ in labels_in(text, name)]
        return tuple((str(each["title"]), tomli_w.dumps(each)) for each in found)
    document = document_of(text, name)
    return ((labelled_from(document, name).name, text),)


def sound_labels(labels: Mapping[str, str]) -> dict[str, str]:
    """Give the ingredient files that can be read; the others would keep every recipe from being read.

    Examples
    --------
    >>> sound_labels({"sand": "kind = 'ingredient'"})
    {}
    """
    return {title: text for title, text in labels.items() if not label_trouble(text, title)}


def usable_labels(labels: Mapping[str, str], *recipes: str) -> dict[str, str]:
    """Give the ingredient files that can be read, and those that some recipe names: why it can't be is told of them.

    Parameters
    ----------
    labels : mapping of str to str
        Texts of ingredient files by their titles.
    *recipes : str
        Texts of recipes.

    Examples
    --------
    >>> sand = {"sand": "kind = 'ingredient'"}
    >>> usable_labels(sand), list(usable_labels(sand, "ingredients = [{ingredient = 'Sand'}]"))
    ({}, ['sand'])
    """
    words = set()
    for text in recipes:
        with suppress(LumpedError):
            words |= {plain_word(each) for each in foreign_words(text)}
    return {
        title: text for title, text in labels.items() if plain_word(title) in words or not label_trouble(text, title)
    }


def left_out_words(labels: Mapping[str, str], taken: Mapping[str, str]) -> tuple[str, ...]:
    """Say which ingredient files can't be read, of those whose titles were not taken.

    Examples
    --------
    >>> "sand" in left_out_words({"sand": "kind = 'ingredient'"}, {})[0]
    True
    """
    return tuple(filter(None, (label_trouble(text, title) for title, text in labels.items() if title not in taken)))


@lru_cache(KEPT)
def label_trouble(text: str, title: str) -> str:
    """Say what is wrong with an ingredient file; nothing if it can be read.

    Examples
    --------
    >>> "sand" in label_trouble("kind = 'ingredient'", "sand")
    True
    """
    try:
        _shop(((title, text),))
    except LumpedError as problem:
        return str(problem)
    return ""


def document_of(text: str, name: str) -> dict[str, Any]:
    """Read a document from its text; `name` is its file, for messages.

    Raises
    ------
    InputError
        If it is no TOML.
    """
    try:
        return tomllib.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError("document-not-toml", file=name, problem=str(error)) from None


def foreign_words(text: str) -> tuple[str, ...]:
    """Give the ingredients of a recipe or batch that the handbook does not have, as it calls them.

    Examples
    --------
    >>> foreign_words("ingredients = [{ingredient = 'Flour'}, {ingredient = 'our salt'}]")
    ('our salt',)
    """
    from lumped.pantry import pantry

    document = document_of(text, "")
    entries = [each for key in ("ingredients", "weighed") for each in _entries(document.get(key))]
    words = dict.fromkeys(str(each.get("ingredient", "")).strip() for each in entries if isinstance(each, dict))
    return tuple(word for word in words if word and pantry().key_of(word) is None)


def _entries(found: object) -> list[Any]:
    return found if isinstance(found, list) else []


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


@lru_cache(FOLLOWED)
def _kneading(text: str, name: str, labels: Texts, batches: BatchTexts) -> "Kneading":
    from lumped.dough.kneading import kneading

    shop = _shop(labels)
    recipe = _recipe(text, name, shop)
    lessons = _taught(batches, labels, recipe.kind, recipe.temperature).lessons
    return kneading(recipe, shop, lessons.calibration)


def _recipe(text: str, name: str, shop: "Pantry") -> "Recipe":
    from lumped.documents import checked
    from lumped.dough.reading import RecipeFile, build_recipe

    return build_recipe(checked(RecipeFile, document_of(text, name), Path(name), failure=RecipeError), name, shop)


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

    file = checked(BatchFile, document_of(given.text, given.name), Path(given.name), failure=RecipeError)
    text = along(given, file.recipe)
    if text is None:
        raise InputError("recipe-not-along", file=given.name, recipe=file.recipe)
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
    shop = _shop(tuple(sorted({**sound, **dict(labels)}.items())))
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
