"""An LED: an exponential with a series resistance, and a small leak backwards."""

import math
from dataclasses import dataclass
from functools import partial

from scipy.constants import Boltzmann, elementary_charge
from scipy.special import wrightomega

from lumped.reference import handbook

__all__ = ["Lamp", "lamp", "lamp_from_forward_voltage"]

ROOM = 298.15  # K; also the temperature of data sheets


@dataclass(frozen=True, slots=True, kw_only=True)
class Lamp:
    """Current of a diode with a resistance in series and a leak beside both.

    Parameters
    ----------
    saturation : float
        Saturation current Is. [A]
    ideality : float
        Ideality n. [1]
    resistance : float
        Series resistance R. [Ω]
    leak : float
        Conductance of the leak. [S]
    temperature : float
        Temperature of the junction. [K]

    Notes
    -----
    v = n·Vt·ln(1 + i/Is) + R·i, Vt = kT/q, solved for i by Lambert's function:
    i = (n·Vt/R)·W[(Is·R/(n·Vt))·exp((v + Is·R)/(n·Vt))] − Is. Written with Wright's omega function, W(exp z) = ω(z),
    it can't overflow. Breakdown backwards (beyond some 5 V an LED is out of its data sheet) is left out.

    Examples
    --------
    >>> red = lamp_from_forward_voltage(1.95, 0.020, ideality=2.0, resistance=5.0)
    >>> round(red.current(1.95), 6), abs(red.current(-3.0)) < 1e-7
    (0.02, True)
    """

    saturation: float
    ideality: float
    resistance: float
    leak: float = 0.0
    temperature: float = ROOM

    @property
    def _scale(self) -> float:
        return self.ideality * Boltzmann * self.temperature / elementary_charge

    def _omega(self, v: float) -> float:
        scale, drop = self._scale, self.saturation * self.resistance
        return float(wrightomega(math.log(drop / scale) + (v + drop) / scale))

    def current(self, v: float, /) -> float:
        """Give the current. [A]"""
        return self._scale / self.resistance * self._omega(v) - self.saturation + self.leak * v

    def slope(self, v: float, /) -> float:
        """Give its derivative. [S]"""
        omega = self._omega(v)
        return omega / (1 + omega) / self.resistance + self.leak


def lamp_from_forward_voltage(
    voltage: float, current: float, *, ideality: float, resistance: float, leak: float = 0.0
) -> Lamp:
    """Make a lamp that passes a test current at its forward voltage.

    Parameters
    ----------
    voltage, current : float
        Forward voltage at the test current. [V, A]
    ideality, resistance, leak : float
        Ideality, series resistance and leak. [1, Ω, S]

    Returns
    -------
    Lamp
        Its law.

    Examples
    --------
    >>> blue = lamp_from_forward_voltage(3.2, 0.020, ideality=2.0, resistance=10.0)
    >>> round(blue.current(3.2), 6)
    0.02
    """
    scale = ideality * Boltzmann * ROOM / elementary_charge
    through = current - leak * voltage
    saturation = through / math.expm1((voltage - resistance * through) / scale)
    return Lamp(saturation=saturation, ideality=ideality, resistance=resistance, leak=leak)


def lamp(key: str, *, against: float = 0.0) -> Lamp:
    """Look up a lamp.

    Parameters
    ----------
    key : str
        Key in the handbook's table of lamps.
    against : float
        Where this piece stands in its kind's spread: -1 lets current through easily, 1 hardly. [1]

    Returns
    -------
    Lamp
        Its law.

    Examples
    --------
    >>> round(lamp("lamp-red").current(1.95) * 1000)
    20
    """
    value = partial(handbook().value, "lamps", key)
    return lamp_from_forward_voltage(
        value("forward_voltage").at(against),
        value("test_current").mean,
        ideality=value("ideality").mean,
        resistance=value("series_resistance").mean,
        leak=1 / value("leak_resistance").mean,
    )
