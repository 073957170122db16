"""Where one light of a trial gives way to the next: the resistivity at which a lamp passes a step of its brightness.

Drawn are the eye, lamp, cells and metal within their kinds, and the mould's sizes. What the draws of a part come to is
worked out once for each part, so that a hundred lines of them can be held against each other at once.
"""

from collections.abc import Sequence
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.electrodes import lump_price
from lumped.circuit import lamp as lamp_law
from lumped.circuit import pack as pack_law
from lumped.quantities import Value, drawn
from lumped.reference import handbook
from lumped.sculpt.mould import Mould
from lumped.sculpt.mould import mould as mould_of

__all__ = ["CURRENTS", "VOLTS", "border", "passed", "prices", "resistivity_at"]

Array = NDArray[np.float64]
CURRENTS = np.geomspace(1e-6, 0.3, 56)  # A; a fifth of a decade between two
VOLTS = np.linspace(0.0, 8.0, 401)  # V; of any lamp up to its end
_SHARE = Value(mean=0.0, low=-1.0, high=1.0, unit="")
_SPREAD = (-1.0, 0.0, 1.0)  # where lamp, cells and metal may stand within their kinds


def border(mould: Mould, lamp: str, pack: str, step: str, *, ohms: float = 0.0) -> Array:
    """Draw the resistivity of the dough at which a lamp passes a step of its brightness.

    Parameters
    ----------
    mould : Mould
        With dough and two rods.
    lamp, pack : str
        Keys in the handbook.
    step : {"bright", "barely_lit"}
        Which step.
    ohms : float
        Resistor in line. [Ω]

    Returns
    -------
    (n,) float
        0 where no dough is good enough. [Ω·m]

    Examples
    --------
    >>> from lumped.sculpt.mould import mould
    >>> found = border(mould("barrel"), "lamp-red", "pack-4aa-alkaline", "bright", ohms=220.0)
    >>> 1 < float(np.median(found)) < 10
    True
    """
    current = _current(lamp, step)
    emf, inside = (_between(ends, _shares("trial cells")) for ends in _ends(pack))
    lost = _volts(lamp, step) + _price(mould.rods, mould.wetted_area, lamp, step)
    return resistivity_at(current, emf - lost, inside + ohms, _factor(mould.key, mould.rods))


def resistivity_at(current: ArrayLike, volts: ArrayLike, ohms: ArrayLike, factor: ArrayLike) -> Array:
    """Give the resistivity through which a current flows.

    Parameters
    ----------
    current : (...) float
        The current. [A]
    volts : (...) float
        What lamp and metal leave of the pack's. [V]
    ohms : (...) float
        Resistance beside the dough. [Ω]
    factor : (...) float
        Resistance of the mould over the dough's resistivity. [1/m]

    Returns
    -------
    (...) float
        0 where the current can't flow. [Ω·m]
    """
    left = np.maximum(np.asarray(volts) - np.asarray(current) * np.asarray(ohms), 0.0)
    return np.asarray(left / (np.asarray(current) * np.asarray(factor)))


@cache
def _shares(name: str) -> tuple[Array, Array]:
    """Draws of where something stands within its kind: those below the middle and those above, 0 elsewhere. [1]"""
    share = drawn({name: _SHARE})[name]
    return np.minimum(share, 0.0), np.maximum(share, 0.0)


def _between(ends: Sequence[Any], shares: tuple[Array, Array]) -> Array:
    """What stands at the shares -1, 0 and 1, taken on to any share as two straight lines."""
    low, middle, high = ends
    return np.asarray(middle + shares[0] * (middle - low) + shares[1] * (high - middle))


@cache
def _ends(pack_key: str) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Volts and ohms of cells that give much, are as most are, and give little. [V, Ω]"""
    cells = [pack_law(pack_key, against=share) for share in _SPREAD]
    return tuple(each.emf for each in cells), tuple(each.resistance for each in cells)


@cache
def _current(lamp_key: str, step: str) -> Array:
    """Draws of the current at which an eye calls a lamp so. [A]"""
    return drawn({"trial eye": handbook().value("lamps", lamp_key, f"{step}_current")})["trial eye"]


@cache
def _factor(mould_key: str, rods: str) -> Array:
    """Draws of the resistance between rods over the dough's resistivity. [1/m]"""
    return drawn({"trial mould": mould_of(mould_key, rods).factor})["trial mould"]


@cache
def _volts(lamp_key: str, step: str) -> Array:
    """Draws of the volts that a lamp takes at a step of its brightness. [V]"""
    current = _current(lamp_key, step)
    return _between([np.interp(current, passed(lamp_key, share), VOLTS) for share in _SPREAD], _shares("trial lamp"))


@cache
def _price(rods: str, area: float, lamp_key: str, step: str) -> Array:
    """Draws of the volts that are lost between dough and both rods at a step of a lamp's brightness. [V]"""
    wanted, known = np.log(_current(lamp_key, step)), np.log(CURRENTS)
    return _between([np.interp(wanted, known, prices(rods, area, share)) for share in _SPREAD], _shares("trial price"))


@cache
def passed(lamp_key: str, share: float) -> Array:
    """Current of a lamp at each of `VOLTS`. [A]"""
    law = lamp_law(lamp_key, against=share)
    return np.array([law.current(volts) for volts in VOLTS])


@cache
def prices(rods: str, area: float, share: float) -> Array:
    """Volts lost between dough and both rods at each of `CURRENTS`. [V]"""
    metal = handbook().entry("gauges", rods).facts["plating"]
    return np.array([lump_price(metal, metal, each, wetted_area=area, price=share) for each in CURRENTS])
