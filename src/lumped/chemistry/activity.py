"""How much of its water a liquid leaves free: water activity.

Mould, drying and the humidity that a dough comes to rest at all ask for one number, the vapour pressure over the
liquid over that of water. `a = a_salts · Π a_others`: salts together take `ln a = -M Σ νᵢ mᵢ φᵢ(I)`, each with its
osmotic coefficient at the ionic strength of all; sugars, glycerine and acids each follow Norrish,
`a = x exp(-K (1 - x)²)`; the product is Ross's rule.
"""

from collections.abc import Iterable, Mapping
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import Compound, compound
from lumped.chemistry.pitzer import beyond_the_fit, osmotic_coefficient
from lumped.quantities import Provenance, Value
from lumped.reference import handbook

__all__ = [
    "activity_provenance", "ionic_strength", "norrish", "water_activity", "water_activity_interval",
    "water_activity_value",
]  # fmt: skip

Array = NDArray[np.float64]
WATER_MOLAR_MASS = 0.0180153
_UNSURE = 0.5  # share of what an osmotic coefficient gains beyond its fit that is its half-width there, from memory


def water_activity(molalities: Mapping[str, ArrayLike], temperature: ArrayLike) -> Array:
    """Give the water activity of a liquid.

    Parameters
    ----------
    molalities : mapping of str to (...) float
        Moles of each dissolved compound in a kilogram of water. [mol/kg]
    temperature : (...) float
        Temperature, 0 to 60 °C. [K]

    Returns
    -------
    (...) float
        Water activity. [1]

    Notes
    -----
    Salt and potassium chloride: Pitzer, within 0.0005 at 25 °C, 0.005 elsewhere. Sugars, glycerine, sorbitol:
    Norrish, no change with temperature. Salts of weak acids, alum, borax: an osmotic coefficient by the size of their
    charges, from memory. Acids count as whole molecules. `water_activity_interval` says how sure the result is.

    References
    ----------
    R. S. Norrish, J. Food Technol. 1, 25 (1966); K. D. Ross, Food Technol. 29(3), 26 (1975).

    Examples
    --------
    >>> water_activity({"sodium-chloride": [0.0, 3.0, 6.15]}, 298.15).round(3).tolist()
    [1.0, 0.893, 0.752]
    """
    salts, others = _sorted(molalities)
    kelvins = np.asarray(temperature, float)
    free = np.exp(-WATER_MOLAR_MASS * _osmolality(salts, kelvins)[0])
    for key, amount in others.items():
        free = free * norrish(amount, _norrish_constants(key)[1])
    return np.asarray(free + 0 * kelvins)


def norrish(molality: ArrayLike, constant: ArrayLike) -> Array:
    """Give the water activity over one dissolved compound that is no salt.

    Parameters
    ----------
    molality : (...) float
        Moles of it in a kilogram of water. [mol/kg]
    constant : (...) float
        Norrish's K. [1]

    Returns
    -------
    (...) float
        Water activity. [1]

    Examples
    --------
    >>> float(norrish(2.9215, 6.47).round(4))
    0.9348
    """
    solute = np.asarray(molality, float) * WATER_MOLAR_MASS
    water = 1 / (1 + solute)
    return np.asarray(water * np.exp(-np.asarray(constant) * (1 - water) ** 2))


def water_activity_interval(molalities: Mapping[str, ArrayLike], temperature: ArrayLike) -> tuple[Array, Array]:
    """Give the ends of the 95 % interval of the water activity.

    Parameters
    ----------
    molalities, temperature
        As of `water_activity`.

    Returns
    -------
    low, high : (...) float
        Ends. [1]

    Notes
    -----
    In quadrature: each law's own constant at its ends; half of what a salt's osmotic coefficient gains beyond its
    fit; for salts that share the water an osmotic coefficient off by 0.04; for salt with sugar a tenth of the
    geometric mean of what each takes away (Ross's rule); and 0.0003 for each kelvin away from 25 °C times the share
    of water taken.

    Examples
    --------
    >>> low, high = water_activity_interval({"sodium-chloride": 6.0}, 298.15)
    >>> float((high - low).round(3))
    0.003
    """
    salts, others = _sorted(molalities)
    kelvins = np.asarray(temperature, float)
    osmolality, width = _osmolality(salts, kelvins)
    parts = [(width * WATER_MOLAR_MASS) ** 2]
    taken = [1 - np.exp(-WATER_MOLAR_MASS * osmolality)]
    for key, amount in others.items():
        low, mean, high = (np.log(norrish(amount, each)) for each in _norrish_constants(key))
        parts.append(((low - high) / 2) ** 2)
        taken.append(1 - np.exp(mean))
    middle = water_activity(molalities, kelvins)
    together = 1 - middle
    lone = np.sqrt(sum(each**2 for each in taken))
    sharing = np.asarray(sum(taken)) ** 2 - lone**2  # twice the sum of the products of what pairs take away
    parts += [_book("ross").high ** 2 * np.maximum(sharing, 0) / 2, (3e-4 * np.abs(kelvins - 298.15) * together) ** 2]
    half = middle * np.sqrt(sum(parts))
    return np.asarray(np.maximum(middle - half, 0.0)), np.asarray(np.minimum(middle + half, 1.0))


def water_activity_value(molalities: Mapping[str, float], temperature: float) -> Value:
    """Give the water activity of one liquid with interval and sources. [1]

    Examples
    --------
    >>> water_activity_value({"sucrose": 5.0, "sodium-chloride": 0.5}, 298.15).text()
    '0.86 (0.86 to 0.87)'
    """
    low, high = water_activity_interval(molalities, temperature)
    origin = activity_provenance(molalities)
    mean = float(water_activity(molalities, temperature))
    return Value(mean=mean, low=float(low), high=float(high), unit="", provenance=origin)


def activity_provenance(dissolved: Iterable[str]) -> Provenance:
    """Say what the water activity of water with some compounds in it rests on.

    Examples
    --------
    >>> activity_provenance(["sodium-chloride"]).sources
    ('pitzer-dat',)
    """
    return Provenance.of([row.provenance for key in dissolved for row in _entry(key).values()])


def ionic_strength(molalities: Mapping[str, ArrayLike]) -> Array:
    """Give half the sum of molality times charge squared, over the ions of salts. [mol/kg]

    Examples
    --------
    >>> float(ionic_strength({"sodium-chloride": 1.0, "magnesium-sulphate": 0.5, "sucrose": 1.0}))
    3.0
    """
    salts, _ = _sorted(molalities)
    return np.asarray(sum((_ions(key)[1] * amount for key, amount in salts.items()), np.zeros(())))


def _osmolality(salts: Mapping[str, Array], kelvins: Array) -> tuple[Array, Array]:
    """Moles of ions that a kilogram of water feels, and the half-width of its interval. [mol/kg]"""
    strength = ionic_strength(salts)
    felt, width = np.zeros(()), np.zeros(())
    several = _book("foreign_salt").high if len(salts) > 1 else 0.0
    for key, amount in salts.items():
        number = _ions(key)[0]
        if _law(key) == "pitzer":
            coefficient = osmotic_coefficient(key, strength, kelvins)
            half = np.asarray(
                _entry(key)["osmotic_width"].mean + _UNSURE * np.abs(beyond_the_fit(key, strength, kelvins))
            )
        else:
            coefficient, half = map(np.asarray, _plain_coefficient(key))
        felt = felt + number * amount * coefficient
        width = width + number * amount * (half + several * (1 - _share(key, amount, strength)))
    return np.asarray(felt), np.asarray(width)


def _share(key: str, amount: Array, strength: Array) -> Array:
    """A salt's own share of the ionic strength. [1]"""
    return np.asarray(_ions(key)[1] * amount / np.maximum(strength, 1e-12))


def _sorted(molalities: Mapping[str, ArrayLike]) -> tuple[dict[str, Array], dict[str, Array]]:
    """Salts, and what goes by Norrish."""
    amounts = {key: np.asarray(each, float) for key, each in molalities.items()}
    others = {key: each for key, each in amounts.items() if _law(key) == "norrish"}
    return {key: each for key, each in amounts.items() if key not in others}, others


@cache
def _law(key: str) -> str:
    """Which law a compound follows: pitzer, norrish or osmotic."""
    book = handbook()
    return str(book.entry("activity", key).facts["law"]) if key in book.keys("activity") else "osmotic"


@cache
def _entry(key: str) -> dict[str, Value]:
    name = key if key in handbook().keys("activity") else "other-salts"
    return {quantity: row.value for quantity, row in handbook().entry("activity", name).rows.items()}


@cache
def _book(quantity: str) -> Value:
    return handbook().value("activity", "mixtures", quantity)


@cache
def _norrish_constants(key: str) -> tuple[float, float, float]:
    value = _entry(key)["norrish"]
    return value.low, value.mean, value.high


@cache
def _ions(key: str) -> tuple[int, float]:
    """How many ions a molecule gives, and its ionic strength per molality; a salt's weak acid is one single ion."""
    stuff = compound(key)
    charges = _ion_charges(stuff)
    return sum(count for _, count in charges), sum(count * charge**2 for charge, count in charges) / 2


def _ion_charges(stuff: Compound) -> list[tuple[int, int]]:
    """Charge and number of each ion; a weak acid's anion counts as a single charge, aluminium with its three."""
    strong = [(_charge(ion), count) for ion, count in stuff.ions.items()]
    book = handbook()
    return strong + [(book.entry("acids", acid).facts.get("charge", -1), count) for acid, count in stuff.acids.items()]


@cache
def _charge(ion: str) -> int:
    return int(handbook().value("ions", ion, "charge").mean)


@cache
def _plain_coefficient(key: str) -> tuple[float, float]:
    """Osmotic coefficient by the size of the charges, and its half-width."""
    rows = _entry(key)
    single, least = rows["osmotic"], rows["osmotic_least"]
    charges = [charge for charge, _ in _ion_charges(compound(key))]
    product = -max(charges) * min(charges)
    mean = max(single.mean + rows["osmotic_per_charge"].mean * (product - 1), least.mean)
    return mean, (single.high - single.low) / 2
