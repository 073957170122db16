"""What a lamp does that is fed through a roll of dough: the plainest picture of a resistivity.

A pack, a roll and a lamp in one line, `V_pack - price = R·I + V_lamp(I)`, R = ρ·l/A of the roll.
"""

from dataclasses import dataclass

import numpy as np

from lumped.circuit.lamp import lamp
from lumped.quantities import Value, believed, drawn
from lumped.reference import handbook

__all__ = ["THICK", "THIN", "Roll", "lamp_through"]

_STEPS = ("barely_lit_current", "dim_current", "bright_current")
_STATES = ("dark", "barely-lit", "dim", "bright")


@dataclass(frozen=True, slots=True, kw_only=True)
class Roll:
    """A roll of dough between a pack and a lamp.

    Parameters
    ----------
    length, thickness : float
        From end to end; across. [m]

    Examples
    --------
    >>> round(Roll(length=0.1, thickness=0.02).resistance(0.2))
    64
    """

    length: float
    thickness: float

    def resistance(self, resistivity: float) -> float:
        """Resistance from end to end. [Ω]"""
        return resistivity * self.length / (np.pi * self.thickness**2 / 4)


THICK, THIN = Roll(length=0.1, thickness=0.02), Roll(length=0.3, thickness=0.008)


def lamp_through(roll: Roll, resistivity: Value, lamp_key: str = "lamp-red") -> tuple[str, str, str]:
    """Say what a lamp does behind a roll.

    Parameters
    ----------
    roll : Roll
        The roll.
    resistivity : Value
        Of its dough. [Ω·m]
    lamp_key : str
        Which lamp, by its key in the handbook.

    Returns
    -------
    (str, str, str)
        Its state at the poor end, the middle and the good end of the interval: "dark", "barely-lit", "dim", "bright".

    Notes
    -----
    Pack and price at the metal are those of the handbook's entry `wall-scene`, with their interval.

    Examples
    --------
    >>> lamp_through(THICK, Value.exact(0.2, "Ω·m"))[1], lamp_through(THICK, Value.exact(1000.0, "Ω·m"))[1]
    ('bright', 'dark')
    """
    open_ = drawn({"dough": resistivity, "pack": handbook().value("verdicts", "wall-scene", "voltage")})
    grid = np.linspace(0.0, float(open_["pack"].max()), 600)
    passed = np.vectorize(lamp(lamp_key).current)(grid)
    resistance = roll.resistance(1.0) * open_["dough"]
    low, high = np.zeros_like(resistance), open_["pack"].copy()
    for _ in range(40):
        middle = (low + high) / 2
        short = middle + resistance * np.interp(middle, grid, passed) < open_["pack"]
        low, high = np.where(short, middle, low), np.where(short, high, middle)
    current = believed(np.interp(low, grid, passed), unit="A", provenance=resistivity.provenance)
    return _state(lamp_key, current.low), _state(lamp_key, current.mean), _state(lamp_key, current.high)


def _state(lamp_key: str, current: float) -> str:
    return _STATES[sum(current >= handbook().value("lamps", lamp_key, step).mean for step in _STEPS)]
