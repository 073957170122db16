"""Names for doughs that stand beside each other: no two are the same."""

from collections import Counter
from collections.abc import Sequence

__all__ = ["told_apart"]


def told_apart(names: Sequence[str]) -> list[str]:
    """Number the names that several have, each by its place.

    Parameters
    ----------
    names : sequence of str
        What each is called.

    Returns
    -------
    list of str
        As many, all different.

    Examples
    --------
    >>> told_apart(["salt dough", "sugar dough", "salt dough"])
    ['salt dough (1)', 'sugar dough', 'salt dough (3)']
    """
    often = Counter(names)
    found: list[str] = []
    for number, name in enumerate(names, 1):
        told = name if often[name] == 1 else f"{name} ({number})"
        while told in found or (told != name and told in often):
            told = f"{told} ({number})"
        found.append(told)
    return found
