"""The conductivity of water with several salts in it.

The rule: an ion among several counter-ions is braked as the mean of what each of them does to it in a salt of its own,
at the ionic strength of all, `κ = Σᵢ cᵢ λᵢ° exp(-Σⱼ Eⱼ bᵢⱼ(√I))`, with `Eⱼ` the share of counter-ion j among the
charges of its sign. Every tabulated salt alone comes out as its table. A pair that no table has is braked as the
tabulated salt of its charges, times the ratio of Onsager's limiting slopes.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, cached_property, lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.braking import braking_curves, cold_limits, onsager_slope, salts, valence
from lumped.chemistry.brine import T20, refuse_temperature, temperature_factor
from lumped.chemistry.density import water_density
from lumped.chemistry.potash import potash_warmth
from lumped.reference import handbook

__all__ = ["Mixture", "Plan", "limiting_conductivity", "mixed", "mixture_conductivity", "plan_of"]

Array = NDArray[np.float64]
_TINY = 1e-12
_POTASH = "potassium-chloride"
_LIKE = {"ammonium": "potassium"}
_MOST = 1.5  # no more than so many times the braking of the salt that stands for a pair


def limiting_conductivity(ion: str) -> float:
    """Give an ion's limiting conductivity at 25 °C per mole of charge.

    Parameters
    ----------
    ion : str
        Its key in the handbook's table `ions`.

    Returns
    -------
    float
        λ°. [S·m²/mol]

    Examples
    --------
    >>> limiting_conductivity("chloride")
    0.007631
    """
    return handbook().value("ions", ion, "limiting_conductivity").mean


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """What does not depend on amounts: which curve brakes which pair of P cations and M anions."""

    cations: Array  # (P,) rows of the ions
    anions: Array  # (M,)
    valences: Array  # (ions,)
    limits: Array  # (ions, 1) at 20 °C
    powers: Array  # (ions, 1) of the salt's temperature dependence
    curve: NDArray[np.intp]  # (P, M) row among the braking numbers
    scale: Array  # (P, M, 1)
    tabulated: NDArray[np.bool_]  # (P, M)
    potash: int  # row of potassium chloride


@dataclass(frozen=True, kw_only=True)
class Mixture:
    """A liquid of n entries with its ions, as the rule sees it.

    Parameters
    ----------
    ions : tuple of str
        The ions, in the order of the rows below.
    plan : object
        Which table brakes which pair.
    parts : (ions, n) float
        What each ion adds to the conductivity. [S/m]
    shares : (ions, n) float
        Share of each ion among the charges of its sign. [1]
    strength : (n,) float
        Ionic strength, as at 20 °C. [mol/m³]
    shape : tuple of int
        Shape that the amounts had.
    """

    ions: tuple[str, ...]
    plan: Plan
    parts: Array
    shares: Array
    strength: Array
    shape: tuple[int, ...]

    @property
    def conductivity(self) -> Array:
        """[S/m]"""
        return np.asarray(self.parts.sum(axis=0).reshape(self.shape))

    @cached_property
    def pairs(self) -> Array:
        """Share of the conductivity that each pair of cation and anion carries, (P, M, n). [1]"""
        plan, share = self.plan, self.parts / np.maximum(self.parts.sum(axis=0), _TINY)
        by_cation = share[plan.cations][:, None] * self.shares[plan.anions][None]
        by_anion = share[plan.anions][None] * self.shares[plan.cations][:, None]
        return np.asarray(by_cation + by_anion)


def mixture_conductivity(charges: Mapping[str, ArrayLike], temperature: ArrayLike) -> Array:
    """Give the conductivity of a liquid with several ions.

    Parameters
    ----------
    charges : mapping of str to (...) float
        Moles of charge of each ion in a cubic metre, positive for cations and anions alike. [mol/m³]
    temperature : (...) float
        Temperature, 0 to 100 °C. [K]

    Returns
    -------
    (...) float
        Conductivity. [S/m]

    Raises
    ------
    InputError
        If the temperature is out of range.

    Examples
    --------
    >>> float(mixture_conductivity({"sodium": 100, "chloride": 100}, 298.15).round(3))
    1.055
    """
    return mixed(charges, temperature).conductivity


def mixed(charges: Mapping[str, ArrayLike], temperature: ArrayLike) -> Mixture:
    """Work out what each ion of a liquid carries.

    Parameters
    ----------
    charges, temperature
        As of `mixture_conductivity`.

    Returns
    -------
    Mixture

    Notes
    -----
    The tables hold for a cubic metre as it is at 20 °C; the amounts are brought there as water expands, which is what
    brine does within 0.4 % at 60 °C. H+ and OH- warm less than salt, by a power of it.

    References
    ----------
    Mixing by the shares of the charges at equal ionic strength: C. E. Reilly, R. H. Wood, J. Phys. Chem. 73, 4292
    (1969); from memory.

    Examples
    --------
    >>> sea = mixed({"sodium": 470, "magnesium": 105, "chloride": 575}, 293.15)
    >>> [round(each, 2) for each in (sea.parts[:, 0] / sea.conductivity).tolist()]
    [0.33, 0.07, 0.6]
    """
    refuse_temperature(temperature)
    ions = tuple(charges)
    plan = plan_of(ions)
    amounts, kelvins, shape = _stacked(charges, temperature)
    is_warm = not isinstance(kelvins, float) or kelvins != T20
    if is_warm:
        amounts = amounts * _expansion(kelvins)
    strength = plan.valences @ amounts / 2
    shares = _shares(amounts, plan)
    keys, sheaf = braking_curves()
    curves = sheaf(np.sqrt(strength))
    number, bend = _beyond(curves[: len(keys)], strength), curves[len(keys) :]
    slowed = _felt(number[plan.curve] * plan.scale, plan, shares)
    if is_warm:
        quicker = _felt(_log_warming(bend, plan, strength, kelvins)[plan.curve], plan, shares)
        slowed = slowed - plan.powers * quicker
    parts = amounts * plan.limits * np.exp(-slowed)
    return Mixture(ions=ions, plan=plan, parts=parts, shares=shares, strength=strength, shape=shape)


def _stacked(charges: Mapping[str, ArrayLike], temperature: ArrayLike) -> tuple[Array, float | Array, tuple[int, ...]]:
    """Amounts as (ions, n), the temperature as a number or (n,), and the shape to come back to."""
    shapes = {np.shape(each) for each in charges.values()} | ({np.shape(temperature)} - {()})
    shape = shapes.pop() if len(shapes) == 1 else np.broadcast_shapes(*shapes)
    if shapes:
        charges = {ion: np.broadcast_to(each, shape) for ion, each in charges.items()}
    amounts = np.maximum(np.array(list(charges.values()), float).reshape(len(charges), math.prod(shape)), 0.0)
    if np.ndim(temperature) == 0:
        return amounts, float(temperature), shape  # type: ignore[arg-type]
    kelvins = np.broadcast_to(np.asarray(temperature, float), shape).reshape(-1)
    if amounts.shape[1] != len(kelvins):
        amounts = np.broadcast_to(amounts, (len(amounts), len(kelvins)))
    return amounts, kelvins, shape


def _shares(amounts: Array, plan: Plan) -> Array:
    """Share of each ion among the charges of its sign, (ions, n). [1]"""
    shares = np.empty_like(amounts)
    for rows in (plan.cations, plan.anions):
        own = amounts[rows]
        shares[rows] = own / np.maximum(own.sum(axis=0), _TINY)
    return shares


def _log_warming(bend: Array, plan: Plan, strength: Array, kelvins: float | Array) -> Array:
    """Logarithm of how much better each tabulated salt conducts than at 20 °C, (K, n). [1]"""
    warming = bend * _log_warmth(kelvins)
    if plan.potash in plan.curve:  # it has standards of its own
        warming[plan.potash] = potash_warmth(np.sqrt(strength), kelvins)
    return np.asarray(warming)


def _felt(pairs: Array, plan: Plan, shares: Array) -> Array:
    """What each ion feels of its counter-ions, (ions, n), from what each pair of cation and anion does, (P, M, n)."""
    felt = np.empty_like(shares)
    felt[plan.cations] = (pairs * shares[plan.anions]).sum(axis=1)
    felt[plan.anions] = (pairs * shares[plan.cations][:, None]).sum(axis=0)
    return felt


def _beyond(number: Array, strength: Array) -> Array:
    """Braking numbers; past the end of a salt's table they go on rising with ionic strength as they did last. (K, n)"""
    ends, slopes = _ends()
    if strength.size and strength.max() > ends.min():
        return np.asarray(number + slopes * np.maximum(strength - ends, 0.0))
    return number


@cache
def _ends() -> tuple[Array, Array]:
    """Ionic strength where each salt's table ends, and how fast its braking number rises there, each (K, 1)."""
    curves = [salt.number for salt in salts().values()]
    ends = [curve.x[-1] ** 2 for curve in curves]
    rises = [(curve.y[-1] - curve.y[-2]) / (curve.x[-1] ** 2 - curve.x[-2] ** 2) for curve in curves]
    return np.array([ends]).T, np.array([rises]).T


def _expansion(kelvins: float | Array) -> float | Array:
    """What was in a cubic metre, once it is at 20 °C, over what is in it now. [1]"""
    return _expansion_at(kelvins) if isinstance(kelvins, float) else water_density(T20) / water_density(kelvins)


@lru_cache(256)
def _expansion_at(kelvins: float) -> float:
    return float(water_density(T20) / water_density(kelvins))


def _log_warmth(kelvins: float | Array) -> float | Array:
    return _log_warmth_at(kelvins) if isinstance(kelvins, float) else np.log(temperature_factor(kelvins))


@lru_cache(256)
def _log_warmth_at(kelvins: float) -> float:
    return float(np.log(temperature_factor(kelvins)))


@lru_cache(1024)
def plan_of(ions: tuple[str, ...]) -> Plan:
    """Say which table brakes which pair of some ions."""
    book, keys = handbook(), list(salts())
    positive = {ion: book.value("ions", ion, "charge").mean > 0 for ion in ions}
    cations, anions = ([row for row, ion in enumerate(ions) if positive[ion] is sign] for sign in (True, False))
    pairs = [[_standing_for(ions[plus], ions[minus]) for minus in anions] for plus in cations]
    shape = (len(cations), len(anions))
    powers = [_power(ion) for ion in ions]
    return Plan(
        cations=np.array(cations, int), anions=np.array(anions, int),
        valences=np.array([float(valence(ion)) for ion in ions]),
        limits=np.array([[cold_limits()[ion]] for ion in ions]).reshape(-1, 1),
        powers=np.array(powers).reshape(-1, 1),
        curve=np.array([[keys.index(salt) for salt, _, _ in row] for row in pairs], int).reshape(shape),
        scale=np.array([[scale for _, scale, _ in row] for row in pairs], float).reshape(*shape, 1),
        tabulated=np.array([[own for _, _, own in row] for row in pairs], bool).reshape(shape),
        potash=keys.index(_POTASH) if _POTASH in keys else -1,
    )  # fmt: skip


def _power(ion: str) -> float:
    book = handbook()
    return book.value("ions", ion, "temperature_power").mean if book.has("ions", ion, "temperature_power") else 1.0


@cache
def _standing_for(cation: str, anion: str) -> tuple[str, float, bool]:
    """The tabulated salt that a pair is, or is braked like; by how many times more; whether it is the pair's own.

    That of the same charges (more than two count as two), if there is one of the same cation; else the first of them.
    """
    for key, salt in salts().items():
        if (salt.cation, salt.anion) == (cation, anion):
            return key, 1.0, True
    charges = min(valence(cation), 2), min(valence(anion), 2)
    same = [key for key, salt in salts().items() if (valence(salt.cation), valence(salt.anion)) == charges]
    akin = [key for key in same if salts()[key].cation == _LIKE.get(cation, cation)]
    found = (akin or same)[0]
    stands = salts()[found]
    ratio = onsager_slope(cation, anion) / onsager_slope(stands.cation, stands.anion)
    return found, min(ratio, _MOST), False
