"""All ingredients that a recipe may name: the handbook's, and those that a user added."""

from collections.abc import Iterator, Mapping, Sequence
from difflib import SequenceMatcher
from functools import cache, cached_property

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import compounds
from lumped.errors import RecipeError
from lumped.pantry.alike import slips_in_name
from lumped.pantry.from_handbook import from_handbook
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.prices import Price, price
from lumped.pantry.where import region
from lumped.reference import handbook
from lumped.reference.pieces import Shelf
from lumped.texts import say
from lumped.texts.folding import plain_word

__all__ = ["Pantry", "pantry"]


class Pantry(Mapping[str, Ingredient]):
    """Ingredients by key.

    Examples
    --------
    >>> pantry()["table-salt"].name
    'table salt'
    >>> "table-salt" in pantry(), len(pantry()) > 15
    (True, True)
    """

    def __init__(self, ingredients: Mapping[str, Ingredient]) -> None:
        self._ingredients = ingredients

    def __getitem__(self, key: str) -> Ingredient:
        return self._ingredients[key]

    def __iter__(self) -> Iterator[str]:
        return iter(self._ingredients)

    def __len__(self) -> int:
        return len(self._ingredients)

    def __contains__(self, key: object) -> bool:
        return key in self._ingredients

    @cached_property
    def _plain(self) -> dict[str, str]:
        """All that ingredients are called, as `plain_word` writes it, with its key; who came first keeps a word."""
        found: dict[str, str] = {}
        for key, each in self._ingredients.items():
            for word in each.called:
                found.setdefault(plain_word(word), key)
        return found

    def key_of(self, word: str) -> str | None:
        """Tell which ingredient a word names, if any: its key or a name, with or without accents, hyphens and capitals.

        Examples
        --------
        >>> pantry().key_of("Crème de tartre"), pantry().key_of("plain flour"), pantry().key_of("stardust")
        ('cream-of-tartar', 'plain-flour', None)
        """
        asked = word.strip()
        return asked if asked in self else self._plain.get(plain_word(word))  # a key waits for no names

    def taken_as(self, word: str) -> str:
        """Say what an everyday word is taken as; "" of a word that is the name of one ingredient alone.

        Examples
        --------
        >>> pantry().taken_as("sel"), pantry().taken_as("table salt")
        ('“sel” is taken as table salt.', '')
        """
        key = self.key_of(word)
        if key is None or word in self or plain_word(word) not in map(plain_word, self[key].everyday):
            return ""
        return say("pantry-taken", word=word.strip(), name=self[key].name)

    def price(self, key: str, where: str) -> Price | None:
        """Give what an ingredient costs in a region: what somebody paid for a packet of it, else the handbook's figure.

        Raises
        ------
        InputError
            If there is no such region.

        Examples
        --------
        >>> pantry().price("table-salt", "japan").currency
        'JPY'
        """
        own = self[key].bought if key in self else None
        if own is None:
            return price(key, where)
        return own if own.region == region(where).key else None

    def with_added(self, *added: Ingredient) -> "Pantry":
        """Give a pantry with more ingredients; one of the same key takes the place of the old."""
        new = {each.key: each for each in added}
        keys = {key: key for key in (*self._ingredients, *new)}
        return Pantry(Shelf(keys, lambda key: new[key] if key in new else self._ingredients[key]))

    def find(self, word: str, where: str = "") -> Ingredient:
        """Find an ingredient by key, name or another name of it, in any of the languages.

        Parameters
        ----------
        word : str
            What a recipe calls it.
        where : str
            Place in the recipe, for the message.

        Raises
        ------
        RecipeError
            If there is none; the sentence names those that look alike.

        Examples
        --------
        >>> pantry().find("Flour").key
        'plain-flour'
        """
        key = self.key_of(word)
        if key is not None:
            return self[key]
        near = say("pantry-near", near=", ".join(alike)) if (alike := self.near(word)) else say("pantry-none-near")
        raise RecipeError("recipe-no-ingredient", where=where or word, word=word, near=near)

    def near(self, word: str) -> list[str]:
        """Give the keys of up to three ingredients whose names a word may mean: a part of them, or with slips in it.

        Examples
        --------
        >>> pantry().near("tabel salt")[0]
        'table-salt'
        >>> pantry().near("lime")
        ['lime-juice']
        >>> pantry().near("moonlight")
        []
        """
        asked = plain_word(word)
        if parts := self._with_part(asked):
            return parts[:3]
        found: list[tuple[int, float, str]] = []
        for name, key in self._plain.items():
            count = slips_in_name(asked.split(), name.split(), fewer=0 if name in self._english else 2)
            if count is not None:
                found.append((count, -SequenceMatcher(None, asked, name).ratio(), key))
        return list(dict.fromkeys(key for *_, key in sorted(found)))[:3]

    def _with_part(self, asked: str) -> list[str]:
        """Keys of ingredients in whose names all words stand whole: the usual name first, then others, then abroad.

        Where words are written without spaces between them, a part of a name is a word of it.
        """
        words = set(asked.split())
        if not words:
            return []
        found: dict[str, int] = {}
        for name, key in self._plain.items():
            if words <= set(name.split()) or (not asked.isascii() and asked in name):
                own = {plain_word(key), plain_word(self[key].name)} if name in self._english else set()
                found[key] = min(found.get(key, 3), 0 if name in own else 1 if name in self._english else 2)
        return sorted(found, key=lambda key: found[key])

    @cached_property
    def _english(self) -> frozenset[str]:
        """Keys and English names, as `plain_word` writes them."""
        return frozenset(
            plain_word(word) for key, each in self._ingredients.items() for word in (key, each.name, *each.also)
        )

    def named(self, words: str) -> tuple[str, ...]:
        """Give the keys of ingredients in whose names all of some words stand, in any of the languages.

        Parameters
        ----------
        words : str
            Words or beginnings of words, with or without accents.

        Examples
        --------
        >>> pantry().named("creme tart"), len(pantry().named("")) == len(pantry())
        (('cream-of-tartar',), True)
        """
        asked = plain_word(words).split()
        return tuple(key for key, names in self._read.items() if all(word in names for word in asked))

    @cached_property
    def _read(self) -> dict[str, str]:
        """All that each ingredient is called, as one text to search."""
        return {key: "\n".join(map(plain_word, each.called)) for key, each in self._ingredients.items()}

    def matrix(self, keys: Sequence[str]) -> NDArray[np.float64]:
        """Give what ingredients are made of.

        Parameters
        ----------
        keys : sequence of str
            The ingredients.

        Returns
        -------
        (compounds, ingredients) float
            Mass share of each compound, in the order of `chemistry.compounds.compounds()`. [1]
        """
        shares = [[self[key].composition.get(each.key, 0.0) for key in keys] for each in compounds()]
        return np.array(shares, float).reshape(len(compounds()), len(keys))


@cache
def pantry() -> Pantry:
    """Give the handbook's ingredients, each understood when it is first asked for; the second call costs nothing.

    Examples
    --------
    >>> pantry() is pantry()
    True
    """
    return Pantry(Shelf({key: key for key in handbook().keys("ingredients")}, from_handbook))
