"""How far weak acids give their hydrogen away.

The liquid is neutral: strong ions leave a charge that hydrogen ions and the ions of weak acids must balance,
`[H+] - [OH-] + surplus + Σ cₐ·z̄ₐ(pH) + q(pH) = 0`, q being the charge of what takes hydrogen up without moving
(`Buffer`), and pH is that of the activity, `-log₁₀(γ[H+])`. Davies' law says how ions shield each other,
`log₁₀ γ = -z² G`, `G = 0.509 (√I/(1 + √I) - 0.3 I)`; past its peak at 0.39 mol/L, where it stops holding, G stays.
Constants are those of 25 °C.
"""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.quantities import Provenance
from lumped.reference import handbook

__all__ = ["Acidity", "Buffer", "acids_provenance", "dissociated", "ph_width", "shielding"]

Array = NDArray[np.float64]
WATER_PRODUCT = 14.0  # pKw at 25 °C, from memory
LOWEST, HIGHEST = -1.0, 15.0
_LN10 = float(np.log(10))
_GRID = np.linspace(LOWEST, HIGHEST, 33)
_FEW = 16  # up to so many liquids the whole grid is looked at in one go
_ALIKE = 1.5  # of many liquids: no further apart in pH than this, all start from one
_STEPS, _LONGEST, _CLOSE = 40, 0.5, 1e-6
_NEAR = 1e-3  # a step of the plain balance so short is as good as its end
_SLOPE, _RISE, _PEAK = 0.509, 0.3, 0.394  # Davies at 25 °C, and the ionic strength of his peak in mol/L


@dataclass(frozen=True, slots=True, kw_only=True)
class Acidity:
    """pH, moles of charge of each ion that hydrogen governs, and the ionic strength of all ions; `fixed` is the charge
    of a buffer, positive where it took hydrogen up. [mol/m³]
    """

    ph: Array
    charges: Mapping[str, Array]
    strength: Array
    fixed: Array


@dataclass(frozen=True, slots=True, kw_only=True)
class Buffer:
    """What lies in a liquid, takes hydrogen up or gives it, and does not move: flour's protein.

    Parameters
    ----------
    rest : (...) float
        pH at which it neither took up nor gave any. [1]
    capacity : (...) float
        Hydrogen that it takes up for each unit of pH below. [mol/m³]

    Notes
    -----
    Its charge is q = β (pH₀ - pH), the straight middle of a protein's titration curve.
    """

    rest: ArrayLike
    capacity: ArrayLike


@dataclass(frozen=True, slots=True, kw_only=True)
class _Acids:
    """Several acids' forms, from the one with most hydrogen on, and what D kinds of forms they are.

    Forms of one kind have given away as many hydrogens and bear as many charges: pH and shielding do the same to them.
    A form that an acid lacks never occurs.
    """

    names: tuple[tuple[str, ...], ...]
    charges: Array  # (acids, forms, 1)
    kinds: NDArray[np.intp]  # (acids, forms) kind of each form
    hydrogens: Array  # (D, 1) given away
    squares: Array  # (D, 1) of the charge
    shares: Array  # (acids, forms, 1) of a form at pH 0 without shielding, over the one with all hydrogen on
    sums: Array  # (3 acids, D) sum of shares, of shares times charge, and times its square, by kind
    first: Array  # (3 acids, D) the same of the forms with all hydrogen on
    crowding: Array  # (acids, 2) rise of pKa with the acid's mol/L, and with its square
    has_cations: bool


def dissociated(
    acids: Mapping[str, ArrayLike],
    surplus: ArrayLike = 0.0,
    strength: ArrayLike | None = None,
    buffer: Buffer | None = None,
) -> Acidity:
    """Let weak acids dissociate until the liquid is neutral.

    Parameters
    ----------
    acids : mapping of str to (...) float
        Moles of each acid in a cubic metre, in whatever form it came, by its key in the handbook's table `acids`
        ("acetic", "citric", "tartaric", "phosphoric", "carbonic", …). [mol/m³]
    surplus : (...) float
        Charge of the strong cations less that of the strong anions. [mol/m³]
    strength : (...) float, optional
        Ionic strength of the strong ions; if it is not given, that of `surplus` in single charges. [mol/m³]
    buffer : Buffer, optional
        What takes hydrogen up and does not move.

    Returns
    -------
    Acidity
        pH between -1 and 15, and the charges of hydrogen, hydroxide and the acids' ions.

    Notes
    -----
    Davies' law holds within 0.02 in pH up to 0.1 mol/L and 0.05 up to 0.4; `ph_width` says how sure pH is beyond.

    References
    ----------
    C. W. Davies, Ion Association (1962); from memory.

    Examples
    --------
    >>> vinegar = dissociated({"acetic": 833.0})
    >>> float(vinegar.ph.round(2)), float(vinegar.charges["acetate"].round(1))
    (2.44, 3.9)
    """
    other = np.abs(surplus) / 2 if strength is None else strength
    held = (0.0, 0.0) if buffer is None else (buffer.rest, buffer.capacity)
    given = [np.asarray(each, float) for each in (surplus, other, *held, *acids.values())]
    shape = np.broadcast_shapes(*(each.shape for each in given))
    flat = np.array([each if each.shape == shape else np.broadcast_to(each, shape) for each in given])
    flat = flat.reshape(len(given), math.prod(shape))
    amounts = flat[4:]
    table = _table(tuple(acids))
    liquid = _Liquid(amounts, table, flat[0], flat[1], flat[2:4] if buffer else None, _crowded(amounts, table))
    ph, shield, whole = _settled(liquid)
    terms = _terms(ph, shield, liquid)
    parts = amounts[:, None] * terms / terms.sum(axis=1, keepdims=True) * np.abs(table.charges)
    hydrogen, hydroxide = _waters(ph, shield)
    charges = {"hydrogen": hydrogen.reshape(shape), "hydroxide": hydroxide.reshape(shape)}
    for row, names in enumerate(table.names):
        for form, name in enumerate(names):
            if name:
                charges[name] = charges.get(name, 0.0) + parts[row, form].reshape(shape)
    fixed = np.zeros_like(ph) if liquid.buffer is None else _fixed(ph, liquid.buffer)
    return Acidity(ph=ph.reshape(shape), charges=charges, strength=whole.reshape(shape), fixed=fixed.reshape(shape))


def shielding(strength: ArrayLike) -> Array:
    """Give what ions do to each other's activity: `-log₁₀ γ` of a single charge, by Davies.

    Parameters
    ----------
    strength : (...) float
        Ionic strength. [mol/m³]

    Returns
    -------
    (...) float
        G; past 0.39 mol/L it stays. [1]

    Examples
    --------
    >>> shielding([0.0, 100.0, 6000.0]).round(3).tolist()
    [0.0, 0.107, 0.136]
    """
    inside = np.minimum(1e-3 * np.asarray(strength, float), _PEAK)
    root = np.sqrt(inside)
    return np.asarray(_SLOPE * (root / (1 + root) - _RISE * inside))


def ph_width(strength: ArrayLike) -> Array:
    """Give the half-width of the 95 % interval of pH: constants, temperature, and what Davies misses.

    Parameters
    ----------
    strength
        As of `shielding`.

    Returns
    -------
    (...) float
        0.05 in thin liquid, 0.12 a mol/L beyond 0.1 mol/L, 0.7 at most; from memory. [1]

    Examples
    --------
    >>> ph_width([0.0, 1100.0, 9000.0]).round(2).tolist()
    [0.05, 0.17, 0.7]
    """
    return np.asarray(np.minimum(0.05 + 0.12e-3 * np.maximum(np.asarray(strength, float) - 100, 0), 0.7))


@dataclass(frozen=True, slots=True)
class _Liquid:
    """What is given of n liquids."""

    amounts: Array  # (acids, n)
    table: _Acids
    surplus: Array  # (n,)
    other: Array  # (n,) ionic strength of the strong ions
    buffer: Array | None  # (2, n) pH at rest and capacity of what takes hydrogen up and does not move
    held_back: Array | None  # (acids, 1, n) share of its giving that a crowded acid keeps; None where none crowds

    def only(self, rows: NDArray[np.intp]) -> "_Liquid":
        """Some of them, in any order and number."""
        held = None if self.held_back is None else self.held_back[:, :, rows]
        buffer = None if self.buffer is None else self.buffer[:, rows]
        return _Liquid(self.amounts[:, rows], self.table, self.surplus[rows], self.other[rows], buffer, held)


def _crowded(amounts: Array, table: _Acids) -> Array | None:
    """How strong acid holds itself back: it stands in the place of water. (acids, 1, n) [1]"""
    if not table.crowding.any():
        return None
    molar = 1e-3 * amounts[:, None]
    return np.asarray(np.exp(-_LN10 * molar * (table.crowding[:, :1, None] + molar * table.crowding[:, 1:, None])))


def _settled(liquid: _Liquid) -> tuple[Array, Array, Array]:
    """Give pH, shielding and ionic strength: Newton's steps on pH, shielding following, and a last one with it held."""
    pH, shield = _started(liquid, shielding(liquid.other))
    for _ in range(_STEPS):
        step, strength = _step(pH, shield, liquid)
        next_shield = shielding(strength)
        done = _largest(step) < _CLOSE and _largest(next_shield - shield) < _CLOSE
        pH, shield = pH + step, next_shield
        if done:
            last, strength = _step(pH, shield, liquid)
            return pH + last, shield, strength
    return _halved(liquid)


def _largest(change: Array) -> float:
    return float(np.maximum.reduce(np.abs(change), initial=0.0))


def _step(pH: Array, shield: Array, liquid: _Liquid) -> tuple[Array, Array]:
    """Newton's step in pH, on the ratio of the charges, which is almost straight; and the ionic strength."""
    value, slope, strength, hydrogen = _balance(pH, shield, liquid)
    if liquid.table.has_cations:
        step = -value / slope
    else:
        plus, falls = hydrogen + np.maximum(liquid.surplus, 0.0), -_LN10 * hydrogen
        if liquid.buffer is not None:
            charge = _fixed(pH, liquid.buffer)
            plus, falls = plus + np.maximum(charge, 0.0), falls - (charge > 0) * liquid.buffer[1]
        minus = np.maximum(plus - value, 1e-30)
        step = -np.log(plus / minus) / (falls / plus - (falls - slope) / minus)
        if liquid.buffer is not None:  # its charge changes sides at rest: the ratio has a kink there, the balance none
            away, plain = liquid.buffer[0] - pH, -value / slope
            step = np.where((away * (away - step) < 0) | (np.abs(plain) < _NEAR), plain, step)
    return np.minimum(np.maximum(step, -_LONGEST), _LONGEST), strength


def _started(liquid: _Liquid, shield: Array) -> tuple[Array, Array]:
    """Near pH and shielding: by looking at a grid; of many, by some of them if they are alike, else by halving."""
    count = len(liquid.surplus)
    if count <= _FEW:
        return _on_grid(liquid, shield)
    some = np.arange(_FEW) * (count // _FEW)
    pH, shields = _on_grid(liquid.only(some), shield[some])
    if pH.max() - pH.min() < _ALIKE:
        return np.full(count, pH.mean()), np.full(count, shields.mean())
    low, high = np.full(count, LOWEST), np.full(count, HIGHEST)
    for _ in range(5):
        middle = (low + high) / 2
        too_acid = _balance(middle, shield, liquid)[0] > 0
        low, high = np.where(too_acid, middle, low), np.where(too_acid, high, middle)
    return (low + high) / 2, shield


def _on_grid(liquid: _Liquid, shield: Array) -> tuple[Array, Array]:
    """Near pH and shielding of few liquids, each looked at from the lowest to the highest pH."""
    count, wide = len(liquid.surplus), len(_GRID)
    each = liquid.only(np.arange(count).repeat(wide))
    found = _balance(np.tile(_GRID, count), shield.repeat(wide), each)
    value, strength = found[0].reshape(count, -1), found[2].reshape(count, -1)
    at, row = np.minimum(np.maximum(np.add.reduce(value > 0, 1), 1), wide - 1), np.arange(count)
    above, below = value[row, at - 1], value[row, at]
    share = np.minimum(np.maximum(above / (above - below), 0.2), 0.8)
    return _GRID[at - 1] + share * (_GRID[1] - _GRID[0]), shielding(strength[row, at])


def _halved(liquid: _Liquid) -> tuple[Array, Array, Array]:
    """The same by halving, where Newton's steps did not come to rest: slow, and sure."""
    low, high = np.full(len(liquid.surplus), LOWEST), np.full(len(liquid.surplus), HIGHEST)
    shield = shielding(liquid.other)
    for _ in range(60):
        middle = (low + high) / 2
        for _ in range(6):
            value, _slope, strength, _ = _balance(middle, shield, liquid)
            shield = shielding(strength)
        low, high = np.where(value > 0, middle, low), np.where(value > 0, high, middle)
    return np.asarray((low + high) / 2), shield, strength


def _balance(pH: Array, shield: Array, liquid: _Liquid) -> tuple[Array, Array, Array, Array]:
    """Charge of the liquid, its slope with pH, which is never positive, ionic strength, and hydrogen. [mol/m³]"""
    amounts, (mean, square) = liquid.amounts, _moments(pH, shield, liquid)
    hydrogen, hydroxide = _waters(pH, shield)
    water, charge = hydrogen + hydroxide, amounts * mean
    squares = np.add.reduce(amounts * square, 0)
    value = hydrogen - hydroxide + liquid.surplus + np.add.reduce(charge, 0)
    slope = -_LN10 * (water + squares - np.add.reduce(charge * mean, 0))
    if liquid.buffer is not None:
        value, slope = value + _fixed(pH, liquid.buffer), slope - liquid.buffer[1]
    return value, slope, liquid.other + (water + squares) / 2, hydrogen


def _fixed(pH: Array, buffer: Array) -> Array:
    """Charge of what takes hydrogen up and does not move. [mol/m³]"""
    return np.asarray(buffer[1] * (buffer[0] - pH))


def _waters(pH: Array, shield: Array) -> tuple[Array, Array]:
    """Hydrogen and hydroxide. [mol/m³]"""
    return 1e3 * np.exp(_LN10 * (shield - pH)), 1e3 * np.exp(_LN10 * (pH - WATER_PRODUCT + shield))


def _moments(pH: Array, shield: Array, liquid: _Liquid) -> tuple[Array, Array]:
    """Mean charge of each acid's forms, and mean of its square, (acids, n)."""
    table, count = liquid.table, len(pH)
    kinds = _kinds(pH, shield, table)
    sums = (table.sums @ kinds).reshape(-1, 3, count)
    if liquid.held_back is not None:
        first = (table.first @ kinds).reshape(-1, 3, count)
        sums = first + liquid.held_back * (sums - first)
    return sums[:, 1] / sums[:, 0], sums[:, 2] / sums[:, 0]


def _terms(pH: Array, shield: Array, liquid: _Liquid) -> Array:
    """How much of each acid is in each of its forms, over the one with all hydrogen on. (acids, forms, n) [1]"""
    terms = liquid.table.shares * _kinds(pH, shield, liquid.table)[liquid.table.kinds]
    if liquid.held_back is not None:
        terms[:, 1:] *= liquid.held_back
    return np.asarray(terms)


def acids_provenance(acids: Iterable[str]) -> Provenance:
    """Say what the dissociation of some weak acids rests on.

    Examples
    --------
    >>> acids_provenance(["acetic"]).sources
    ('crc-conductivity',)
    """
    return Provenance.of(
        [row.value.provenance for each in acids for row in handbook().entry("acids", each).rows.values()]
    )


def _kinds(pH: Array, shield: Array, table: _Acids) -> Array:
    """What pH and shielding do to each kind of form, (D, n). [1]"""
    return np.asarray(np.exp(_LN10 * (table.hydrogens * pH + table.squares * shield)))


@cache
def _table(acids: tuple[str, ...]) -> _Acids:
    """Some acids' forms, as arrays."""
    entries = [handbook().entry("acids", acid) for acid in acids]
    forms = 1 + max((len(entry.facts["anions"]) for entry in entries), default=1)
    shares, charges = np.zeros((len(acids), forms, 1)), np.zeros((len(acids), forms, 1))
    names: list[tuple[str, ...]] = []
    for row, entry in enumerate(entries):
        steps, base = len(entry.facts["anions"]), int(entry.facts.get("charge", 0))
        given = [0.0, *(entry.rows[f"pKa_{step}"].printed for step in range(1, steps + 1))]
        shares[row, : steps + 1, 0] = 10 ** -np.cumsum(given)
        charges[row, : steps + 1, 0] = base - np.arange(steps + 1)
        names.append((entry.facts.get("bare", "") if base else "", *entry.facts["anions"]))
    crowding = [
        [entry.rows[each].printed if each in entry.rows else 0.0 for each in ("crowding", "crowding_squared")]
        for entry in entries
    ]
    squares = charges[:, :, 0] ** 2
    each = np.stack([np.broadcast_to(np.arange(forms), squares.shape), squares], axis=-1).reshape(-1, 2)
    found, kinds = np.unique(each, axis=0, return_inverse=True)
    kinds = kinds.reshape(len(acids), forms)
    powers = shares * np.stack([np.ones_like(squares), charges[:, :, 0], squares], axis=-1)
    is_kind = kinds[:, :, None] == np.arange(len(found))
    return _Acids(
        names=tuple(names), charges=charges, kinds=kinds, hydrogens=found[:, :1], squares=found[:, 1:], shares=shares,
        sums=np.einsum("afp,afd->apd", powers, is_kind).reshape(3 * len(acids), len(found)),
        first=np.einsum("ap,ad->apd", powers[:, 0], is_kind[:, 0]).reshape(3 * len(acids), len(found)),
        crowding=np.array(crowding).reshape(len(acids), 2), has_cations=bool((charges > 0).any()),
    )  # fmt: skip
