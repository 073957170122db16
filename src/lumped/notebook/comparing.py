"""How two bodies differ, in lines that a person reads: where, from what, to what, with units.

Entries of a list are told apart by what names them (a lump by its name, an ingredient by its key), else by likeness
and order; so an entry that was put in between doesn't make all after it look changed.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher
from itertools import takewhile
from typing import Any

from lumped.notebook.canonical import Body, canonical_text
from lumped.quantities import SUFFIXES
from lumped.texts import say

__all__ = ["Difference", "differences"]

_SHOWN = 80  # characters of a value
_LEAD = 20  # of them before the first difference


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """One difference.

    Parameters
    ----------
    where : tuple of str
        Keys from the outermost in, entries of lists by their names.
    before, after : object
        The values; None where there was or is nothing.
    unit : str
        Unit of both, from the key's suffix.
    """

    where: tuple[str, ...]
    before: Any
    after: Any
    unit: str = ""

    @property
    def text(self) -> str:
        """The difference in one line.

        Examples
        --------
        >>> Difference(where=("salt", "amount"), before=48, after=60, unit="g").text
        'salt › amount: 48 g → 60 g'
        """
        where, (before, after) = " › ".join(self.where), _from_difference(self.before, self.after)
        if self.before is None:
            return say("difference-new", where=where, after=_shown(self.after, self.unit))
        if self.after is None:
            return say("difference-gone", where=where, before=_shown(self.before, self.unit))
        return say("difference-changed", where=where, before=_shown(before, self.unit), after=_shown(after, self.unit))

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "where": list(self.where), "before": self.before, "after": self.after, "unit": self.unit, "text": self.text
        }  # fmt: skip


def differences(before: Body, after: Body, *, keyed_by: Sequence[str] = ("name",)) -> tuple[Difference, ...]:
    """Tell how two bodies differ.

    Parameters
    ----------
    before, after : mapping
        The bodies.
    keyed_by : sequence of str
        Keys whose value names an entry of a list.

    Returns
    -------
    tuple of Difference
        In the order of the keys; empty if they say the same.

    Examples
    --------
    >>> [each.text for each in differences({"salt_g": 48}, {"salt_g": 60, "cooked": "pot"})]
    ['salt: 48 g → 60 g', 'cooked: new, pot']
    """
    return tuple(_tables(before, after, (), keyed_by))


def _tables(before: Body, after: Body, where: tuple[str, ...], keyed_by: Sequence[str]) -> Iterator[Difference]:
    for key in dict.fromkeys((*before, *after)):
        word, unit = _word_and_unit(key)
        yield from _values(before.get(key), after.get(key), (*where, word), unit, keyed_by)


def _values(
    before: Any, after: Any, where: tuple[str, ...], unit: str, keyed_by: Sequence[str]
) -> Iterator[Difference]:
    if isinstance(before, Mapping) and isinstance(after, Mapping):
        yield from _tables(before, after, where, keyed_by)
    elif _is_list_of_tables(before) and _is_list_of_tables(after):
        yield from _lists(before, after, where, keyed_by)
    elif not _same(before, after):
        yield Difference(where=where, before=before, after=after, unit=unit)


def _lists(
    before: Sequence[Body], after: Sequence[Body], where: tuple[str, ...], keyed_by: Sequence[str]
) -> Iterator[Difference]:
    old, new = _named(before, keyed_by), _named(after, keyed_by)
    if old is None or new is None:
        yield from _unnamed(before, after, where, keyed_by)
        return
    for name in dict.fromkeys((*old, *new)):
        yield from _values(old.get(name), new.get(name), (*where, f"“{name}”"), "", keyed_by)
    kept = [name for name in old if name in new]
    if kept != [name for name in new if name in old]:
        yield Difference(where=(*where, say("difference-order")), before=list(old), after=list(new))


def _named(entries: Sequence[Body], keyed_by: Sequence[str]) -> dict[str, Body] | None:
    """Give entries by what names them; None if one has no name or two share one."""
    for key in keyed_by:
        named = {str(each[key]): each for each in entries if key in each}
        if len(named) == len(entries):
            return named
    return None


def _unnamed(
    before: Sequence[Body], after: Sequence[Body], where: tuple[str, ...], keyed_by: Sequence[str]
) -> Iterator[Difference]:
    olds, news = ([canonical_text(each) for each in entries] for entries in (before, after))
    for what, a, b, c, d in SequenceMatcher(None, olds, news, autojunk=False).get_opcodes():
        if what == "equal":
            continue
        for k in range(max(b - a, d - c)):
            old = before[a + k] if a + k < b else None
            new = after[c + k] if c + k < d else None
            number = (a if new is None else c) + k + 1
            yield from _values(old, new, (*where, say("difference-number", number=number)), "", keyed_by)


def _is_list_of_tables(value: Any) -> bool:
    return isinstance(value, list | tuple) and all(isinstance(each, Mapping) for each in value)


def _same(before: Any, after: Any) -> bool:
    """True and 1 are equal in Python; here they are not."""
    return before == after and isinstance(before, bool) == isinstance(after, bool)


def _word_and_unit(key: str) -> tuple[str, str]:
    for suffix in sorted(SUFFIXES, key=len, reverse=True):
        if key.endswith(suffix) and key != suffix:
            unit = SUFFIXES[suffix][1]
            return key.removesuffix(suffix), _WRITTEN.get(unit, unit)
    return key, ""


_WRITTEN = {"ohm": "Ω", "ohm_m": "Ω·m", "deg": "°"}


def _from_difference(before: Any, after: Any) -> tuple[Any, Any]:
    """Give two long texts from shortly before their first difference on, so that it is seen in what is shown."""
    if not isinstance(before, str) or not isinstance(after, str) or max(len(before), len(after)) <= _SHOWN:
        return before, after
    alike = takewhile(lambda pair: pair[0] == pair[1], zip(before, after, strict=False))
    start = len([*alike]) - _LEAD
    return (before, after) if start <= 0 else ("…" + before[start:], "…" + after[start:])


def _shown(value: Any, unit: str) -> str:
    if isinstance(value, Mapping):
        told = ((*_word_and_unit(key), each) for key, each in value.items())
        text = ", ".join(f"{word} {_shown(each, its)}" for word, its, each in told) or say("difference-empty")
    elif isinstance(value, list | tuple):
        text = ", ".join(_shown(each, unit) for each in value) or say("difference-empty")
    elif isinstance(value, bool):
        text = say("difference-yes") if value else say("difference-no")
    else:
        number = isinstance(value, int | float)
        text = _digits(value) if number else " ".join(str(value).split()) or say("difference-empty")
        text += f" {unit}" if number and unit else ""
    return text if len(text) <= _SHOWN else text[: _SHOWN - 1] + "…"


def _digits(value: float) -> str:
    """Write a number in the fewest digits that tell it from every other."""
    text = f"{value:.15g}"
    return text if float(text) == value else repr(value)
