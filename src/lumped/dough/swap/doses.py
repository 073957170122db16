"""Doses that a helping may hold: acids and compounds of which `lumped care` says how much somebody must not eat.

`doses = helping · share / dose`, where a helping is what a small child or a dog gets down before anybody sees (chosen),
and the dose is read at its careful end. Sodium, potassium and metals have limits of their own.
"""

from functools import cache

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.compounds import Compound, compounds, molar_mass_of
from lumped.dough.safety.weights import child_mass, dog_mass
from lumped.reference import Entry, handbook
from lumped.texts import say

__all__ = ["dosed", "doses_in_a_helping", "told_as"]

Array = NDArray[np.float64]
_AGE = 2.0  # of the child whose weight counts, as in `safety`


@cache
def dosed() -> tuple[str, ...]:
    """Name the entries of the table `limits` that count: what is eaten, and told by an acid or a compound.

    Examples
    --------
    >>> dosed()
    ('tartrate-dog', 'epsom-child', 'glycerol-child')
    """
    book = handbook()
    facts = {key: book.entry("limits", key).facts for key in book.keys("limits")}
    return tuple(key for key, each in facts.items() if "eater" in each and "element" not in each)


@cache
def doses_in_a_helping() -> Array:
    """Give how many doses are in a helping of each pure compound. (D, C) [1]

    Examples
    --------
    >>> doses_in_a_helping().shape[0] == len(dosed())
    True
    """
    return np.array([_doses(handbook().entry("limits", key)) for key in dosed()])


def told_as(number: int) -> str:
    """Name what is counted, by its number among `dosed`.

    Examples
    --------
    >>> told_as(2)
    'glycerine'
    """
    return say(f"swap-dosed-{dosed()[number]}")


def _doses(entry: Entry) -> list[float]:
    eater = entry.facts["eater"]
    helping = handbook().value("swap", "limits", f"{eater}_helping").mean
    weighs = child_mass(_AGE).mean if eater == "child" else dog_mass().mean
    least = min(row.value.low * (weighs if row.quantity.endswith("_per_kg") else 1.0) for row in entry.rows.values())
    return [helping * _counted(entry, each) / least for each in compounds()]


def _counted(entry: Entry, each: Compound) -> float:
    """Share of a compound that counts, weighed in the formula of the dose. [1]"""
    if "compound" in entry.facts:
        count = float(each.key == entry.facts["compound"])
    else:
        count = float(each.acids.get(entry.facts["acid"], 0))
    return count * molar_mass_of(entry.facts["formula"]) / each.molar_mass if count and each.molar_mass else 0.0
