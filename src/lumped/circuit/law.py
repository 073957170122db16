"""What every part is to the network: current as a continuous, non-decreasing function of voltage."""

from dataclasses import dataclass
from typing import Protocol, runtime_checkable

__all__ = ["Law", "StagedLaw", "StraightLine"]


class Law(Protocol):
    """Current through a part as a function of the voltage across it, plus leg minus minus leg."""

    def current(self, v: float, /) -> float:
        """Give the current from the plus leg through the part to the minus leg. [A at V]"""
        ...

    def slope(self, v: float, /) -> float:
        """Give the derivative of the current, never negative. [S at V]"""
        ...


@runtime_checkable
class StagedLaw(Protocol):
    """A law that holds until a threshold is crossed: a motor at rest, a fuse intact.

    Attributes
    ----------
    delay : float
        About how long the change takes; of several that are due, the quickest happens first. [s]
    """

    delay: float

    def next(self, v: float, i: float, /) -> Law | None:
        """Give the law that takes over at this voltage and current; None while this one holds."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class StraightLine:
    """A voltage source with a resistance in series: i = (v − emf) / resistance.

    Parameters
    ----------
    resistance : float
        Resistance, above zero. [Ω]
    emf : float
        Voltage at which no current flows. [V]

    Examples
    --------
    >>> StraightLine(resistance=100.0).current(6.0)
    0.06
    """

    resistance: float
    emf: float = 0.0

    def __post_init__(self) -> None:
        if not self.resistance > 0:
            raise ValueError(f"a resistance is above zero, not {self.resistance}")

    def current(self, v: float, /) -> float:
        """Give the current. [A]"""
        return (v - self.emf) / self.resistance

    def slope(self, v: float, /) -> float:
        """Give the conductance. [S]"""
        return 1 / self.resistance
