"""A liquid with ions in it, as one value: its conductivity with interval and sources."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from lumped.chemistry.certainty import provenance_of, width_of
from lumped.chemistry.mixture import mixed
from lumped.quantities import Value

__all__ = ["Brine"]


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
    '4.64 S/m (4.51 to 4.78)'
    """

    charges: Mapping[str, float] = field(default_factory=dict)
    temperature: float = 293.15

    def conductivity(self) -> Value:
        """Give the conductivity with its interval. [S/m]"""
        found = mixed(self.charges, self.temperature)
        mean = float(found.conductivity)
        half = mean * float(width_of(found, self.temperature))
        return Value(
            mean=mean, low=mean - half, high=mean + half, unit="S/m", provenance=provenance_of(found, self.temperature)
        )
