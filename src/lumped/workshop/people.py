"""Who comes: "28 of 9 in pairs", "2 adults", and how much dough their hands want.

A sculpture needs two conducting lumps whether one child builds it or two, so dough goes by groups and not by heads:
`mass = Σ groups · lumps(size of the group) · lump(age)`.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from math import ceil

import numpy as np
from numpy.typing import NDArray

from lumped.dough.material import Kind
from lumped.errors import InputError
from lumped.quantities import Provenance, Value, believed, drawn
from lumped.quantities.interpolation import Monotone
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Party", "dough_for", "lump_of_age", "read_party"]

Array = NDArray[np.float64]
_MOST, _LARGEST = 2000, 12  # people at once, and people round one sculpture: chosen
_AGES = (1, 99)
_SIZES = ("one", "two", "three", "four")
_COUNT = re.compile(r"(\d{1,3}(?:[, ]\d{3})+|\d+)\s*(.*)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Party:
    """People of one age who build in groups of one size.

    Parameters
    ----------
    count : int
        How many people.
    age : float
        Their age, the middle if they differ. [a]
    size : int
        How many share a sculpture.
    """

    count: int
    age: float
    size: int = 1

    @property
    def groups(self) -> int:
        """How many sculptures they build; the last group may be smaller."""
        return ceil(self.count / self.size)

    def lumps(self, kind: Kind) -> Value:
        """Give how many lumps one of their groups shares. [1]

        Examples
        --------
        >>> Party(count=28, age=9, size=2).lumps("conducting").mean
        2.0
        """
        book, entry = handbook(), f"sculpture-{kind}"
        if self.size <= len(_SIZES):
            return book.value("workshop", entry, _SIZES[self.size - 1])
        four, more = book.value("workshop", entry, "four"), book.value("workshop", entry, "each_more")
        ends = {end: getattr(four, end) + (self.size - 4) * getattr(more, end) for end in ("mean", "low", "high")}
        return Value(**ends, unit="", provenance=Provenance.of([four.provenance, more.provenance]))

    def text(self) -> str:
        """Say who they are.

        Examples
        --------
        >>> Party(count=28, age=9, size=2).text()
        '28 of age 9, in groups of 2'
        """
        return say("people-party", count=str(self.count), age=f"{self.age:g}", size=self.size)


def read_party(text: str) -> Party:
    """Read who comes.

    Parameters
    ----------
    text : str
        A number, then "of" an age, or "adults"; then, if they share, "in pairs", "in threes", "in groups of 4".

    Returns
    -------
    Party

    Raises
    ------
    InputError
        If the words don't say how many of what age, or nobody could come so.

    Examples
    --------
    >>> read_party("28 of 9 in pairs")
    Party(count=28, age=9.0, size=2)
    >>> read_party("2 adults"), read_party("ten children of 8 to 10")
    (Party(count=2, age=30.0, size=1), Party(count=10, age=9.0, size=1))
    """
    words = " ".join(text.casefold().replace("–", " to ").split())[:80]
    count, rest = _count(words, text)
    size, rest = _size(rest, text)
    age = _age(rest, text)
    if not _AGES[0] <= age <= _AGES[1]:
        raise InputError("people-age", text=text, age=f"{age:g}", first=str(_AGES[0]), last=str(_AGES[1]))
    return Party(count=count, age=age, size=min(size, count))


def _count(words: str, text: str) -> tuple[int, str]:
    if re.match(r"[-−]\s*\d", words) or re.match(r"0+(?!\d|[.,]\d)", words):
        raise InputError("people-nobody", text=text)
    match = _COUNT.fullmatch(words)
    if match:
        count, rest = int(re.sub(r"\D", "", match[1])), match[2]
    else:
        first, _, rest = words.partition(" ")
        numbers = say("people-read-numbers").split(", ")
        if first not in numbers:
            raise InputError("people-unreadable", text=text)
        count = numbers.index(first) + 1
    if count > _MOST:
        raise InputError("people-too-many", count=f"{count:,}", most=f"{_MOST:,}")
    return count, rest


def _size(rest: str, text: str) -> tuple[int, str]:
    """How many share a sculpture, and the words without it."""
    match = re.fullmatch(rf"(.*?)\s*(?:{_any('groups')})\s+(\d{{1,4}})", rest)
    if match:
        size = int(match[2])
        if not 1 <= size <= _LARGEST:
            raise InputError("people-group-size", text=text, most=str(_LARGEST))
        return size, match[1]
    for size, key in enumerate(_SIZES, 1):
        match = re.fullmatch(rf"(.*?)\s*(?:{_any(key)})", rest)
        if match:
            return size, match[1]
    return 1, rest


def _age(rest: str, text: str) -> float:
    """The age that the words say, or that of adults. [a]"""
    rest = re.sub(rf"\s*(?:{_any('years')})$", "", rest)
    if re.fullmatch(_any("adults"), rest):
        return handbook().value("workshop", "planning", "adult").mean
    match = re.fullmatch(rf"(?:(?:{_any('people')})\s+)?(?:{_any('of')})\s+(.*)", rest)
    ages = re.fullmatch(r"(\d{1,4}(?:\.\d)?)(?:\s*(?:-|to|and)\s*(\d{1,4}(?:\.\d)?))?", match[1]) if match else None
    if not ages:
        raise InputError("people-unreadable", text=text)
    first = float(ages[1])
    last = float(ages[2] or first)
    return first if not _AGES[0] <= first <= _AGES[1] else last if last > _AGES[1] else (first + last) / 2


def _any(which: str) -> str:
    words = sorted(say(f"people-read-{which}").split(", "), key=len, reverse=True)
    return "|".join(re.escape(each) for each in words)


def lump_of_age(age: float) -> Value:
    """Give a lump that fills a hand of that age. [kg]

    Parameters
    ----------
    age : float
        Age in years; a baby's hand below the table, an adult's above. [a]

    Examples
    --------
    >>> lump_of_age(9).text()
    '0.060 kg (0.0420 to 0.085)'
    """
    low, mean, high = (float(curve(age)) for curve in _lumps())
    origin = handbook().curve("lump-by-age").provenance
    return Value(mean=mean, low=low, high=high, unit="kg", provenance=origin, spread="lognormal")


@cache
def _lumps() -> tuple[Monotone, Monotone, Monotone]:
    table = handbook().curve("lump-by-age")
    low, mean, high = (Monotone(table["age"], table[column]) for column in ("low", "mass", "high"))
    return low, mean, high


def dough_for(parties: Sequence[Party], kind: Kind) -> Value:
    """Give the dough that people's hands want, without a reserve.

    Parameters
    ----------
    parties : sequence of Party
        Who comes.
    kind : {"conducting", "insulating"}
        Which dough.

    Returns
    -------
    Value
        With its 95 % interval: who likes large lumps likes them for all. [kg]

    Examples
    --------
    >>> dough_for([read_party("28 of 9 in pairs")], "conducting").text()
    '1.82 kg (1.24 to 2.89)'
    """
    total, origins = np.zeros(1), []
    for each in parties:
        share = {"lumps": each.lumps(kind), "lump": lump_of_age(each.age)}
        found = drawn(share)
        total = total + each.groups * np.maximum(found["lumps"], 0.0) * found["lump"]
        origins += [value.provenance for value in share.values()]
    return believed(total, unit="kg", provenance=Provenance.of(origins), spread="lognormal")
