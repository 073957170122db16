"""How far weak acids give their hydrogen away.

The liquid is neutral: strong ions leave a charge that hydrogen ions and the ions of weak acids must balance,
`[H+] - [OH-] + surplus + Σ cₐ·z̄ₐ(pH) = 0`. The balance falls with pH, so there is one solution. Constants are those of
thin solutions at 25 °C; strong brine moves them by some tenths, which the conductivity of a dough does not notice.
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
LOWEST, HIGHEST = -1.0, 15.0
_LN10 = float(np.log(10))
_GRID = np.linspace(LOWEST, HIGHEST, 33)
_FEW = 16  # up to so many liquids the whole grid is looked at in one go
_POLISH = 20  # Newton's steps at most; five or so are enough as a rule


@dataclass(frozen=True, slots=True, kw_only=True)
class Acidity:
    """pH, and moles of charge of each ion that hydrogen governs. [mol/m³]"""

    ph: Array
    charges: Mapping[str, Array]


@dataclass(frozen=True, slots=True)
class _Acids:
    """Several acids' forms, from the one with most hydrogen on; forms that an acid lacks never occur."""

    constants: Array  # (acids, forms, 1) sum of pKa up to the form
    charges: Array  # (acids, forms, 1)
    hydrogens: Array  # (1, forms, 1) given away
    crowding: Array  # (acids, 1)
    names: tuple[tuple[str, ...], ...]


def dissociated(acids: Mapping[str, ArrayLike], surplus: ArrayLike = 0.0) -> Acidity:
    """Let weak acids dissociate until the liquid is neutral.

    Parameters
    ----------
    acids : mapping of str to (...) float
        Moles of each acid in a cubic metre, in whatever form it came, by its key in the handbook's table `acids`
        ("acetic", "citric", "tartaric", "phosphoric", "carbonic", …). [mol/m³]
    surplus : (...) float
        Charge of the strong cations less that of the strong anions. [mol/m³]

    Returns
    -------
    Acidity
        pH between -1 and 15, and the charges of hydrogen, hydroxide and the acids' ions.

    Examples
    --------
    >>> vinegar = dissociated({"acetic": 833.0})
    >>> float(vinegar.ph.round(2)), float(vinegar.charges["acetate"].round(1))
    (2.42, 3.8)
    """
    shape = np.broadcast_shapes(np.shape(surplus), *(np.shape(each) for each in acids.values()))
    size = int(np.prod(shape))
    amounts = np.array([np.broadcast_to(each, shape) for each in acids.values()], float).reshape(len(acids), size)
    table = _table(tuple(acids))
    constants = table.constants + table.crowding[:, None] * (1e-3 * amounts[:, None]) ** 2 * (table.hydrogens > 0)
    extra = np.broadcast_to(np.asarray(surplus, float), shape).reshape(-1)
    pH = _solved(amounts, constants, table, extra)
    shares = _shares(pH, constants, table)
    hydrogen, hydroxide = 1e3 * 10.0**-pH, 1e3 * 10.0 ** (pH - WATER_PRODUCT)
    charges = {"hydrogen": hydrogen.reshape(shape), "hydroxide": hydroxide.reshape(shape)}
    for row, names in enumerate(table.names):
        for form, name in enumerate(names):
            if name:
                there = abs(table.charges[row, form, 0]) * amounts[row] * shares[row, form]
                charges[name] = charges.get(name, 0.0) + there.reshape(shape)
    return Acidity(ph=pH.reshape(shape), charges=charges)


def _solved(amounts: Array, constants: Array, table: _Acids, surplus: Array) -> Array:
    """Bracket each liquid's pH, then polish it by Newton's steps that never leave the bracket."""
    count = len(surplus)
    if count <= _FEW:
        spread = constants if constants.shape[2] == 1 else np.repeat(constants, len(_GRID), axis=2)
        grid = np.tile(_GRID, count)
        value, _ = _balance(grid, np.repeat(amounts, len(_GRID), axis=1), spread, table, np.repeat(surplus, len(_GRID)))
        at = np.maximum((value.reshape(count, -1) > 0).sum(axis=1), 1) - 1
        low = _GRID[np.minimum(at, len(_GRID) - 2)]
        high = low + (_GRID[1] - _GRID[0])
    else:
        low, high = np.full(count, LOWEST), np.full(count, HIGHEST)
        for _ in range(5):
            middle = (low + high) / 2
            too_acid = _balance(middle, amounts, constants, table, surplus)[0] > 0
            low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    pH = (low + high) / 2
    for _ in range(_POLISH):
        value, slope = _balance(pH, amounts, constants, table, surplus)
        above = value > 0
        low, high = np.where(above, pH, low), np.where(above, high, pH)
        step = pH - value / slope
        step = np.where((step >= low) & (step <= high), step, (low + high) / 2)
        if np.all(np.abs(step - pH) < 1e-12):
            return np.asarray(step)
        pH = step
    return np.asarray(pH)


def _balance(pH: Array, amounts: Array, constants: Array, table: _Acids, surplus: Array) -> tuple[Array, Array]:
    """Charge of the liquid, and its slope with pH, which is never positive. [mol/m³]"""
    shares = _shares(pH, constants, table)
    mean = (shares * table.charges).sum(axis=1)
    spread = (shares * table.charges**2).sum(axis=1) - mean**2
    hydrogen, hydroxide = 1e3 * 10.0**-pH, 1e3 * 10.0 ** (pH - WATER_PRODUCT)
    value = hydrogen - hydroxide + surplus + (amounts * mean).sum(axis=0)
    return value, -_LN10 * (hydrogen + hydroxide + (amounts * spread).sum(axis=0))


def _shares(pH: Array, constants: Array, table: _Acids) -> Array:
    """Share of each acid that is in each of its forms. (acids, forms, n) [1]"""
    if not len(constants):
        return np.zeros((0, 1, len(pH)))
    power = table.hydrogens * pH - constants
    terms = np.exp(_LN10 * (power - power.max(axis=1, keepdims=True)))
    return np.asarray(terms / terms.sum(axis=1, keepdims=True))


@cache
def _table(acids: tuple[str, ...]) -> _Acids:
    """Constants of some acids, as arrays."""
    book = handbook()
    entries = [book.entry("acids", acid) for acid in acids]
    forms = 1 + max((len(entry.facts["anions"]) for entry in entries), default=1)
    constants = np.full((len(acids), forms, 1), np.inf)
    charges = np.zeros((len(acids), forms, 1))
    names: list[tuple[str, ...]] = []
    for row, entry in enumerate(entries):
        steps, base = len(entry.facts["anions"]), int(entry.facts.get("charge", 0))
        constants[row, : steps + 1, 0] = np.cumsum(
            [0.0, *(entry.rows[f"pKa_{step}"].printed for step in range(1, steps + 1))]
        )
        charges[row, : steps + 1, 0] = base - np.arange(steps + 1)
        names.append((entry.facts.get("bare", "") if base else "", *entry.facts["anions"]))
    crowding = np.array([[entry.rows["crowding"].printed if "crowding" in entry.rows else 0.0] for entry in entries])
    hydrogens = np.arange(forms, dtype=float)[None, :, None]
    return _Acids(constants, charges, hydrogens, crowding.reshape(len(acids), 1), tuple(names))
