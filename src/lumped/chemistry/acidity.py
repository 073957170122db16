"""How far weak acids give their hydrogen away.

The liquid is neutral: strong ions leave a charge that hydrogen ions and the anions of weak acids must balance. That
balance rises with pH, so there is one solution, found by halving. Constants are those of thin solutions at 25 °C;
strong brine moves them by some tenths, which the conductivity of a dough does not notice.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.reference import handbook

__all__ = ["Acidity", "dissociated"]

Array = NDArray[np.float64]
WATER_PRODUCT = 14.0  # pKw at 25 °C, from memory


@dataclass(frozen=True, slots=True, kw_only=True)
class Acidity:
    """pH, and moles of charge of each ion that hydrogen governs. [mol/m³]"""

    ph: Array
    charges: Mapping[str, Array]


def dissociated(acids: Mapping[str, ArrayLike], surplus: ArrayLike = 0.0) -> Acidity:
    """Let weak acids dissociate until the liquid is neutral.

    Parameters
    ----------
    acids : mapping of str to (...) float
        Moles of each acid in a cubic metre, in whatever form it came ("acetic", "citric", "tartaric", "phosphoric",
        "carbonic"). [mol/m³]
    surplus : (...) float
        Charge of the strong cations less that of the strong anions. [mol/m³]

    Returns
    -------
    Acidity
        pH and the charges of hydrogen, hydroxide and the acids' anions.

    Examples
    --------
    >>> vinegar = dissociated({"acetic": 833.0})
    >>> float(vinegar.ph.round(2)), float(vinegar.charges["acetate"].round(1))
    (2.42, 3.8)
    """
    amounts = {acid: np.asarray(each, float) for acid, each in acids.items()}
    shape = np.broadcast_shapes(np.shape(surplus), *(each.shape for each in amounts.values()))
    low, high = np.full(shape, -1.0), np.full(shape, 15.0)
    for _ in range(44):  # 16 units halved 44 times: 1e-12
        middle = (low + high) / 2
        too_acid = np.asarray(surplus) + _balance(middle, amounts) > 0
        low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    return Acidity(ph=low, charges=_charges(low, amounts))


def _balance(pH: Array, amounts: Mapping[str, Array]) -> Array:
    """Positive less negative charge of all that hydrogen governs; falls with pH. [mol/m³]"""
    charges = _charges(pH, amounts)
    hydrogen = charges.pop("hydrogen")
    return np.asarray(hydrogen - sum(charges.values()))


def _charges(pH: Array, amounts: Mapping[str, Array]) -> dict[str, Array]:
    hydrogen = 10.0**-pH
    charges = {"hydrogen": 1e3 * hydrogen, "hydroxide": 1e3 * 10.0 ** (pH - WATER_PRODUCT)}
    for acid, amount in amounts.items():
        names, constants = _acid(acid)
        terms, term = [np.ones_like(pH)], np.ones_like(pH)
        for constant in constants:
            term = term * constant / hydrogen
            terms.append(term)
        whole = np.asarray(sum(terms))
        for charge, name in enumerate(names, 1):
            charges[name] = charges.get(name, 0.0) + charge * amount * terms[charge] / whole
    return charges


@cache
def _acid(acid: str) -> tuple[tuple[str, ...], tuple[float, ...]]:
    """Anions of an acid and its dissociation constants. [mol/L]"""
    entry = handbook().entry("acids", acid)
    names = tuple(entry.facts["anions"])
    return names, tuple(10.0 ** -entry.rows[f"pKa_{step}"].printed for step in range(1, len(names) + 1))
