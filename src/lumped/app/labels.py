"""A person's own ingredients, as texts: what they make of the pantry, and which of them can be read."""

from collections.abc import Mapping
from contextlib import suppress
from functools import lru_cache
from typing import TYPE_CHECKING, Any

import tomli_w

from lumped.app.given import Given
from lumped.documents import document_in
from lumped.errors import LumpedError
from lumped.texts.folding import plain_word

if TYPE_CHECKING:
    from lumped.pantry import Pantry

__all__ = [
    "foreign_words", "label_texts", "label_trouble", "left_out_words", "shop_from", "shop_of",
    "sound_labels", "usable_labels",
]  # fmt: skip

Texts = tuple[tuple[str, str], ...]
KEPT = 64


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
    return shop_from(tuple(sorted(given.labels.items())))


@lru_cache(KEPT)
def shop_from(labels: Texts) -> "Pantry":
    """Give the handbook's ingredients with own ones, by title and text in the order of their titles."""
    from lumped.pantry import pantry
    from lumped.pantry.label_file import labelled_from

    shop = pantry()
    return shop.with_added(*(labelled_from(document_in(text, title), title) for title, text in labels))


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
    document = document_in(text, name)
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
        shop_from(((title, text),))
    except LumpedError as problem:
        return str(problem)
    return ""


def foreign_words(text: str) -> tuple[str, ...]:
    """Give the ingredients of a recipe or batch that the handbook does not have, as it calls them.

    Examples
    --------
    >>> foreign_words("ingredients = [{ingredient = 'Flour'}, {ingredient = 'our salt'}]")
    ('our salt',)
    """
    from lumped.pantry import pantry

    document = document_in(text, "")
    entries = [each for key in ("ingredients", "weighed") for each in _entries(document.get(key))]
    words = dict.fromkeys(str(each.get("ingredient", "")).strip() for each in entries if isinstance(each, dict))
    return tuple(word for word in words if word and pantry().key_of(word) is None)


def _entries(found: object) -> list[Any]:
    return found if isinstance(found, list) else []
