"""Salt water with other ions in it.

The rule: at ionic strength `I` a singly charged ion keeps the share `r(I) = Λ(I)/Λ°` of its limiting conductivity, as
in a liquid of table salt, or of potassium chloride, of that strength; by how much of either by the share of potassium
among the singly charged metals. An ion of charge `z` keeps `r^|z|`. It is exact for table salt, for potassium chloride
and at infinite dilution; chlorides of ammonium, calcium and magnesium come out within 3 to 8 %, sulphates of doubly
charged metals up to twice too conducting, because they pair.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.brine import T20, molar_conductivity, relative_width, temperature_factor
from lumped.chemistry.potash import STRONGEST, potash_molar_conductivity
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook

__all__ = ["Brine", "limiting_conductivity", "mixture_conductivity", "mixture_width"]

Array = NDArray[np.float64]
_SALT = ("sodium", "chloride")
_PAIRING = ("magnesium", "calcium", "aluminium", "iron", "copper", "nickel", "sulphate")


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
    return _limits()[ion] if ion in _limits() else handbook().value("ions", ion, "limiting_conductivity").mean


@cache
def _limits() -> dict[str, float]:
    book = handbook()
    return {ion: book.value("ions", ion, "limiting_conductivity").mean for ion in book.keys("ions")}


def mixture_conductivity(charges: Mapping[str, ArrayLike], temperature: ArrayLike) -> Array:
    """Give the conductivity of a liquid with several ions.

    Parameters
    ----------
    charges : mapping of str to (...) float
        Moles of charge of each ion in a cubic metre, positive for cations and anions alike. [mol/m³]
    temperature : (...) float
        Temperature. [K]

    Returns
    -------
    (...) float
        Conductivity. [S/m]

    Examples
    --------
    >>> float(mixture_conductivity({"sodium": 100, "chloride": 100}, 298.15).round(3))
    1.056
    """
    amounts = {ion: np.asarray(each, float) for ion, each in charges.items()}
    strength = np.asarray(sum(amount * _valence(ion) for ion, amount in amounts.items()) / 2)
    salt = molar_conductivity(strength)
    left, warmth = salt / _salt_cold(), temperature_factor(temperature)
    potash = _potash_share(amounts)
    if np.any(potash > 0):
        at_20 = potash_molar_conductivity(strength, T20)
        left = (1 - potash) * left + potash * at_20 / potash_molar_conductivity(0.0, T20)
        warmth = (1 - potash) * warmth + potash * potash_molar_conductivity(strength, temperature) / at_20
    power = {1: left}
    for valence in {_valence(ion) for ion in amounts} - {1}:
        power[valence] = left**valence
    parts = (amount * _cold_limit(ion) * power[_valence(ion)] for ion, amount in amounts.items())
    return np.asarray(sum(parts) * warmth)


def _potash_share(amounts: Mapping[str, Array]) -> Array:
    """Share of potassium among sodium and potassium. [1]"""
    potassium = amounts.get("potassium", np.zeros(1))
    return np.asarray(potassium / np.maximum(potassium + amounts.get("sodium", 0.0), 1e-12))


@cache
def _cold_limit(ion: str) -> float:
    """Limiting conductivity at 20 °C: those of the two salts as their tables have it, others cooled as table salt."""
    salt = _salt_cold() / sum(limiting_conductivity(each) for each in _SALT)
    if ion == "potassium":  # so that potassium chloride is exact
        return float(potash_molar_conductivity(0.0, T20)) - _cold_limit("chloride")
    return limiting_conductivity(ion) * salt


@cache
def _salt_cold() -> float:
    """Limiting molar conductivity of table salt at 20 °C. [S·m²/mol]"""
    return float(molar_conductivity(0.0))


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

    Notes
    -----
    ±2 to 4 % as salt's tables; ±2 % on a potash liquid up to 1 mol/L, ±8 %
    beyond, where it is extrapolated from memory; on what other ions
    carry ±15 % and as much again for each mol/L of ionic strength, up to ±140 %: strong calcium chloride is thick and
    comes out 40 % too poor; ±60 % on sulphate and metals that pair with it.

    Examples
    --------
    >>> round(mixture_width({"sodium": 100, "chloride": 100}, 293.15).item(), 3)
    0.02
    """
    amounts = {ion: np.asarray(each, float) for ion, each in charges.items()}
    parts = {ion: amount * limiting_conductivity(ion) for ion, amount in amounts.items()}
    whole = np.maximum(np.asarray(sum(parts.values())), 1e-12)
    strength = np.asarray(sum(amount * _valence(ion) for ion, amount in amounts.items()) / 2)
    other = np.minimum(0.15 + 0.15e-3 * strength, 1.4)
    own = sum(parts.get(ion, 0.0) for ion in (*_SALT, "potassium")) / whole
    double = sum((part for ion, part in parts.items() if _valence(ion) > 1 and ion in _PAIRING), start=np.zeros(1))
    paired = np.minimum(double, 2 * parts.get("sulphate", np.zeros(1))) / whole
    pairing = 0.6 * np.asarray(paired)
    known = np.where(strength > 1e3 * STRONGEST, 0.08, 0.02)
    potash = 2 * known * np.asarray(parts.get("potassium", 0.0)) / whole
    return np.asarray(np.hypot(np.hypot(relative_width(temperature), other * (1 - own)), np.hypot(pairing, potash)))


@cache
def _valence(ion: str) -> int:
    return int(abs(handbook().value("ions", ion, "charge").mean))


@dataclass(frozen=True, slots=True, kw_only=True)
class Brine:
    """A liquid with ions in it.

    Parameters
    ----------
    charges : mapping of str to float
        Moles of charge of each ion in a cubic metre. [mol/m³]
    temperature : float
        Temperature. [K]

    Examples
    --------
    >>> sea = Brine(charges={"sodium": 470, "magnesium": 105, "chloride": 575}, temperature=293.15)
    >>> sea.conductivity().text()
    '4.66 S/m (4.53 to 4.79)'
    """

    charges: Mapping[str, float] = field(default_factory=dict)
    temperature: float = 293.15

    def conductivity(self) -> Value:
        """Give the conductivity with its interval. [S/m]"""
        mean = float(mixture_conductivity(self.charges, self.temperature))
        half = mean * float(mixture_width(self.charges, self.temperature).item())
        book = handbook()
        parts = [book.value("ions", ion, "limiting_conductivity").provenance for ion in self.charges]
        table = Provenance(status=Status.COMPUTED, sources=book.curve("nacl-conductivity-20degC").provenance.sources)
        return Value(
            mean=mean, low=mean - half, high=mean + half, unit="S/m", provenance=Provenance.of([*parts, table])
        )
