"""How far the rule of mixtures can be trusted: its interval, where it leaves the tables, and what it rests on.

Inside its tables each salt has the width of its table. What no table has, what is stronger or warmer than any table,
and what mixes several salts adds to it, each by its share of the conductivity.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.braking import salts
from lumped.chemistry.brine import T20, TABLE_BEGINS, TABLE_ENDS, warmth_width
from lumped.chemistry.mixture import Mixture, mixed, plan_of
from lumped.chemistry.potash import STRONGEST
from lumped.quantities import Provenance, Status
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Reach", "mixture_width", "provenance_of", "reach", "reach_of", "width_of"]

Array = NDArray[np.float64]
_TINY = 1e-12
_COUNTS = 0.10  # from this share of the conductivity on, what lies beyond the tables is named
_POTASH_BEGINS, _POTASH_ENDS = 273.15, 323.15
_EDGE = 1.05  # a table goes a little further than it prints
_TRACE = 0.001  # share of the conductivity from which a source counts
_WARM = 0.5  # kelvins from 20 °C
# For pairs without a table: half-width in thin liquid, and what the root of ionic strength adds. [1, (mol/L)^-½]
_GUESSED = {(1, 1): (0.05, 0.12), (2, 1): (0.05, 0.12), (1, 2): (0.08, 0.15)}
_GUESSED_OTHERS = (0.25, 0.10)
_BEYOND = 0.3  # for each e-fold of strength beyond a table
_SEVERAL = 0.05  # of a mixture of many salts, each known
_MEMORY = {"potassium-chloride": 1e3 * STRONGEST}  # mol/m³ of ionic strength from which a table is from memory
_MEMORY_WIDTH = 0.05


def mixture_width(charges: Mapping[str, ArrayLike], temperature: ArrayLike) -> Array:
    """Give the relative half-width of the 95 % interval of `mixture_conductivity`.

    Parameters
    ----------
    charges : mapping of str to (...) float
        Moles of charge of each ion in a cubic metre. [mol/m³]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Half-width over the conductivity. [1]

    Examples
    --------
    >>> round(float(mixture_width({"sodium": 100, "chloride": 100}, 293.15)), 3)
    0.02
    """
    return width_of(mixed(charges, temperature), temperature)


def width_of(found: Mixture, temperature: ArrayLike) -> Array:
    """Give the relative half-width of a liquid that was worked out.

    Parameters
    ----------
    found : Mixture
        What `mixed` gave.
    temperature : (...) float
        Its temperature. [K]

    Returns
    -------
    (...) float
        Half-width. [1]
    """
    pairs, kinds = found.pairs, _kinds(found.ions)
    carried = kinds.members @ pairs.reshape(-1, pairs.shape[2])
    known = _known_widths(found.strength)[kinds.curve]
    guessed = kinds.thin + kinds.climb * np.sqrt(1e-3 * found.strength)
    each = (carried * np.sqrt(known**2 + guessed**2)).sum(axis=0)
    several = _SEVERAL * (1 - np.einsum("pmn,pmn->n", pairs, pairs))
    warmth = _warmth_widths(found, pairs, temperature)
    return np.asarray(np.sqrt((each + warmth) ** 2 + several**2).reshape(found.shape))


def _known_widths(strength: Array) -> Array:
    """Width of each tabulated salt at some ionic strength, (K, n). [1]"""
    inside, ends, memory = _salt_figures()
    beyond = _BEYOND * np.log(np.maximum(strength / ends, 1.0))
    return np.asarray(inside + beyond + _MEMORY_WIDTH * (strength > memory))


@cache
def _salt_figures() -> tuple[Array, Array, Array]:
    """Width, strength where the table ends and where it begins to be from memory, each (K, 1)."""
    each = salts()
    return (
        np.array([[salt.width] for salt in each.values()]),
        np.array([[salt.number.x[-1] ** 2] for salt in each.values()]),
        np.array([[_MEMORY.get(key, np.inf)] for key in each]),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Kinds:
    """The G kinds of pairs of cation and anion in a liquid; those of a kind are equally sure at any strength."""

    members: Array  # (G, pairs) 1 where a pair is of that kind
    curve: NDArray[np.intp]  # (G,) row of the salt whose table brakes it
    thin: Array  # (G, 1) what it adds in thin liquid that a pair has no table of its own [1]
    climb: Array  # (G, 1) and with the root of ionic strength [(L/mol)^½]


@lru_cache(1024)
def _kinds(ions: tuple[str, ...]) -> _Kinds:
    plan = plan_of(ions)
    charge = [int(handbook().value("ions", ion, "charge").mean) for ion in ions]
    guesses = [_GUESSED.get((charge[c], -charge[a]), _GUESSED_OTHERS) for c in plan.cations for a in plan.anions]
    own = plan.tabulated.ravel().tolist()
    pairs = [
        (row, *((0.0, 0.0) if known else guess))
        for row, known, guess in zip(plan.curve.ravel().tolist(), own, guesses, strict=True)
    ]
    kinds = sorted(set(pairs))
    figures = np.array(kinds, float).reshape(len(kinds), 3)
    return _Kinds(
        members=np.array([[float(each == kind) for each in pairs] for kind in kinds]).reshape(len(kinds), len(pairs)),
        curve=figures[:, 0].astype(int), thin=figures[:, 1:2], climb=figures[:, 2:],
    )  # fmt: skip


def _warmth_widths(found: Mixture, pairs: Array, temperature: ArrayLike) -> Array:
    """What temperature adds: as of salt water, and ±0.1 % a kelvin more where no table says how a pair warms. [1]"""
    kelvins = np.asarray(temperature, float).reshape(-1)
    away = np.abs(kelvins - T20)
    if not away.any():
        return np.zeros(1)
    potash = pairs[found.plan.curve == found.plan.potash].sum(axis=0)
    own = pairs[found.plan.tabulated].sum(axis=0)
    standard = 0.0005 * away + 0.004 * np.maximum(kelvins - _POTASH_ENDS, 0)
    return np.asarray((1 - potash) * warmth_width(kelvins) + potash * standard + 0.001 * away * (1 - own))


@dataclass(frozen=True, slots=True, kw_only=True)
class Reach:
    """Where a liquid lies beyond what the tables hold.

    Parameters
    ----------
    temperature : float
        Temperature, the furthest from 20 °C if there are several. [K]
    cold, hot : bool
        Whether it lies below or above the temperatures of the tables.
    begins, ends : float
        Temperatures where the tables begin and end. [K]
    potash, strong, guessed : float
        Share of the conductivity, in the middle of the entries, that rests on potassium chloride stronger than its
        standards; on salts stronger than their tables; on pairs of ions that no table has. [1]
    """

    temperature: float
    cold: bool
    hot: bool
    begins: float
    ends: float
    potash: float
    strong: float
    guessed: float

    @property
    def is_extrapolated(self) -> bool:
        """Whether the tables don't hold the liquid."""
        return self.cold or self.hot or max(self.potash, self.strong, self.guessed) > _COUNTS

    def words(self, *, warm: bool = True) -> tuple[str, ...]:
        """Say it, a sentence each, all with the word “extrapolated”; `warm` says also that it is too hot.

        Examples
        --------
        >>> reach({"sodium": 100, "chloride": 100}, 278.15).words()[0][:44]
        'At 5 °C the conductivity is extrapolated: th'
        """
        found = []
        if self.cold or (self.hot and warm):
            key, limit = ("liquid-reach-cold", self.begins) if self.cold else ("liquid-reach-hot", self.ends)
            found.append(say(key, temperature=f"{self.temperature - 273.15:.0f}", limit=f"{limit - 273.15:.0f}"))
        for name in ("potash", "strong", "guessed"):
            share = getattr(self, name)
            if share > _COUNTS:
                found.append(say(f"liquid-reach-{name}", share=f"{100 * share:.0f}"))
        return tuple(found)


def reach(charges: Mapping[str, ArrayLike], temperature: ArrayLike) -> Reach:
    """Say where a liquid lies beyond what the tables hold.

    Parameters
    ----------
    charges, temperature
        As of `mixture_width`.

    Returns
    -------
    Reach

    Examples
    --------
    >>> reach({"potassium": 3000, "chloride": 3000}, 293.15).is_extrapolated
    True
    >>> reach({"sodium": 3000, "chloride": 3000}, 293.15).is_extrapolated
    False
    """
    return reach_of(mixed(charges, temperature), temperature)


def reach_of(found: Mixture, temperature: ArrayLike) -> Reach:
    """Say it of a liquid that was worked out.

    Parameters
    ----------
    found, temperature
        As of `width_of`.
    """
    pairs, plan, kelvins = found.pairs, found.plan, np.asarray(temperature, float).reshape(-1)
    _, ends, memory = (each[plan.curve] for each in _salt_figures())
    own = plan.tabulated[:, :, None]
    is_potash = (plan.curve == plan.potash)[:, :, None]
    potash = float((pairs * is_potash).sum(axis=(0, 1)).mean()) > 0.5
    begins, closes = (_POTASH_BEGINS, _POTASH_ENDS) if potash else (TABLE_BEGINS, TABLE_ENDS)
    shares = {
        "potash": own & (found.strength > memory * _EDGE) & (found.strength <= ends * _EDGE),
        "strong": own & (found.strength > ends * _EDGE),
        "guessed": np.broadcast_to(~own, pairs.shape),
    }
    return Reach(
        temperature=float(kelvins[np.argmax(np.abs(kelvins - T20))]),
        cold=bool(kelvins.min() < begins - 1e-6), hot=bool(kelvins.max() > closes + 1e-6), begins=begins, ends=closes,
        **{name: _middle((pairs * where).sum(axis=(0, 1))) for name, where in shares.items()},
    )  # fmt: skip


def _middle(shares: Array) -> float:
    return float(np.median(shares)) if shares.size else 0.0


def provenance_of(found: Mixture, temperature: ArrayLike = T20) -> Provenance:
    """Say what a liquid's conductivity rests on: all that carries a thousandth of it, and the weakest status of these.

    Parameters
    ----------
    found, temperature
        As of `width_of`.

    Returns
    -------
    Provenance

    Examples
    --------
    >>> salt = mixed({"sodium": 100, "chloride": 100}, 293.15)
    >>> provenance_of(salt).status.value
    'computed'
    """
    book, pairs = handbook(), found.pairs.max(axis=2, initial=0.0)
    warm = bool(np.any(np.abs(np.asarray(temperature, float) - T20) > _WARM))
    used = set(found.plan.curve[pairs > _TRACE].tolist())
    parts: list[Provenance] = []
    for row, (key, salt) in enumerate(salts().items()):
        if row in used:
            parts += [salt.provenance, salt.warmth] if warm else [salt.provenance]
            if found.strength.max(initial=0.0) > _MEMORY.get(key, np.inf):
                parts.append(book.curve("kcl-conductivity-20degC").provenance)
    total = np.maximum(found.parts.sum(axis=0), _TINY)
    carries = (found.parts / total).max(axis=1, initial=0.0) > _TRACE
    parts += [
        book.value("ions", ion, "limiting_conductivity").provenance
        for ion, counts in zip(found.ions, carries, strict=True) if counts
    ]  # fmt: skip
    if warm:
        parts.append(book.curve("nacl-conductivity-saturated").provenance)
    if np.any(~found.plan.tabulated & (pairs > _COUNTS)):
        parts.append(Provenance(status=Status.FROM_MEMORY))
    return Provenance.of(parts, note=" ".join(reach_of(found, temperature).words()))
