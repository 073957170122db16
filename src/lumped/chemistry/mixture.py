"""Salt water with other ions in it.

The rule: at ionic strength `I` a singly charged ion keeps the share `r(I) = Λ_NaCl(I)/Λ°_NaCl` of its limiting
conductivity, as in salt water of that strength, and an ion of charge `z` keeps `r^|z|`. It is exact for salt water
and at infinite dilution; chlorides of potassium, ammonium, calcium and magnesium come out within 3 to 8 %.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.brine import molar_conductivity, relative_width, temperature_factor
from lumped.quantities import Provenance, Status, Value
from lumped.reference import handbook

__all__ = ["Brine", "limiting_conductivity", "mixture_conductivity"]

Array = NDArray[np.float64]
_SALT = ("sodium", "chloride")


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
    left = salt / molar_conductivity(0.0)
    parts = (amount * limiting_conductivity(ion) * left ** (_valence(ion) - 1) for ion, amount in amounts.items())
    return np.asarray(sum(parts) * salt * temperature_factor(temperature) / _salt_limit())


@cache
def _valence(ion: str) -> int:
    return int(abs(handbook().value("ions", ion, "charge").mean))


@cache
def _salt_limit() -> float:
    return sum(limiting_conductivity(ion) for ion in _SALT)


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
    '4.66 S/m (4.55 to 4.77)'
    """

    charges: Mapping[str, float] = field(default_factory=dict)
    temperature: float = 293.15

    @property
    def foreign_share(self) -> float:
        """Share of the conductivity that other ions than Na+ and Cl- carry. [1]"""
        parts = {ion: amount * limiting_conductivity(ion) for ion, amount in self.charges.items()}
        whole = sum(parts.values())
        return (whole - sum(parts.get(ion, 0.0) for ion in _SALT)) / whole if whole else 0.0

    def conductivity(self) -> Value:
        """Give the conductivity; other ions than Na+ and Cl- are sure to ±15 %, salt as its table. [S/m]"""
        mean = float(mixture_conductivity(self.charges, self.temperature))
        half = mean * float(np.hypot(relative_width(self.temperature), 0.15 * self.foreign_share))
        book = handbook()
        parts = [book.value("ions", ion, "limiting_conductivity").provenance for ion in self.charges]
        table = Provenance(status=Status.COMPUTED, sources=book.curve("nacl-conductivity-20degC").provenance.sources)
        return Value(
            mean=mean, low=mean - half, high=mean + half, unit="S/m", provenance=Provenance.of([*parts, table])
        )
