"""Which letters the fonts in the package can print; what they lack would vanish from a page without a word."""

from collections.abc import Iterator
from functools import cache
from importlib.resources import as_file, files
from typing import Any
from unicodedata import category, normalize

from lumped.errors import InputError

__all__ = ["printable", "require_letters"]

_UNSEEN = ("Cc", "Cf", "Mn", "Zl", "Zp", "Zs")  # Unicode: control, format, marks on a letter, and separators
_NAMED = 12


def require_letters(data: Any) -> None:
    """See that every text in a page's data can be printed.

    Parameters
    ----------
    data : dict, list, str, …
        What a template shows.

    Raises
    ------
    InputError
        If the fonts lack a letter; the sentence shows which.

    Examples
    --------
    >>> require_letters({"title": "Pâte à sel, 塩の粘土"})
    """
    seen = {letter for text in _texts(data) for letter in set(normalize("NFC", text))}
    missing = sorted(each for each in seen - printable() if category(each) not in _UNSEEN)
    if missing:
        more = " …" if len(missing) > _NAMED else ""
        raise InputError("letters-missing", letters=" ".join(missing[:_NAMED]) + more)


def _texts(data: Any) -> Iterator[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for each in data.values():
            yield from _texts(each)
    elif isinstance(data, list | tuple):
        for each in data:
            yield from _texts(each)


@cache
def printable() -> frozenset[str]:
    """Give all letters that at least one font of the package has.

    Examples
    --------
    >>> "é" in printable(), "塩" in printable(), "ก" in printable()
    (True, True, False)
    """
    from fontTools.ttLib import TTFont

    found: set[int] = set()
    with as_file(files("lumped.paper").joinpath("fonts")) as folder:
        for path in folder.iterdir():
            if path.suffix in (".ttf", ".otf"):
                with TTFont(path, lazy=True) as font:
                    found |= set(font.getBestCmap())
    return frozenset(map(chr, found))
