"""How much water to knead into a dough that dried in its bag, found by weighing, and how long it then rests.

What the bag lost is water, so what it lost is what it needs. Kneading leaves wet and dry streaks of thickness s, which
even out as `exp(-π² D t/s²)`.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.errors import InputError
from lumped.quantities import Value, combined, short_text
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["Refresh", "refresh", "resting_time", "water_lost"]

Array = NDArray[np.float64]
EVEN = 0.05  # of the streaks' difference is left when a dough is called even


@dataclass(frozen=True, slots=True, kw_only=True)
class Refresh:
    """What to do with a dough that dried.

    Parameters
    ----------
    water : float
        Water to knead in. [kg]
    of_its_water : float or None
        The same over the water that it held; None if that is not known. [1]
    rest : Value
        How long it rests afterwards. [s]
    words : tuple of str
        The same in sentences, with what to mind.
    """

    water: float
    of_its_water: float | None
    rest: Value
    words: tuple[str, ...]


def water_lost(before: ArrayLike, now: ArrayLike, *, water: ArrayLike | None = None) -> Array:
    """Give the water that a dough lost between two weighings, both with the bag or both without.

    Parameters
    ----------
    before, now : (...) float
        Mass at first, and today. [kg]
    water : (...) float, optional
        Water that it held at first. [kg]

    Returns
    -------
    (...) float
        Water to knead in. [kg]

    Raises
    ------
    InputError
        If a mass is not positive, the dough became heavier, or it lost more than its water.

    Examples
    --------
    >>> float(water_lost(0.512, 0.487).round(6))
    0.025
    """
    first, today = np.asarray(before, float), np.asarray(now, float)
    if not (np.all(first > 0) and np.all(today > 0)):
        raise InputError("lasting-no-weight", mass=_grams(min(first.min(), today.min())))
    lost = first - today
    if np.any(lost < 0):
        raise InputError("lasting-heavier", before=_grams(first.max()), more=_grams(-lost.min()))
    if water is not None and np.any(lost > np.asarray(water)):
        raise InputError("lasting-lost-all", lost=_grams(lost.max()), water=_grams(np.min(water)))
    return np.asarray(lost)


def refresh(before: float, now: float, *, water: float | None = None) -> Refresh:
    """Say how to bring a dried dough back.

    Parameters
    ----------
    before, now : float
        Mass at first, and today, both with the bag or both without. [kg]
    water : float, optional
        Water that it held at first. [kg]

    Returns
    -------
    Refresh

    Raises
    ------
    InputError
        As `water_lost`.

    Examples
    --------
    >>> again = refresh(0.512, 0.487)
    >>> round(again.water, 6), again.words[0]
    (0.025, 'Knead in 25 g of water, a spoonful at a time.')
    """
    lost = float(water_lost(before, now, water=water))
    book = handbook()
    inputs = {"layer": book.value("lasting", "kneading", "layer"),
              "diffusivity": book.value("air", "water-in-dough", "diffusivity")}  # fmt: skip
    rest = combined(resting_time, inputs, unit="s", spread="lognormal")
    words: tuple[str, ...]
    if lost == 0:
        words = (say("lasting-refresh-nothing"),)
    else:
        words = (say("lasting-refresh-knead", water=_grams(lost)), say("lasting-refresh-rest", minutes=_minutes(rest)))
    return Refresh(
        water=lost, of_its_water=None if water is None else lost / water, rest=rest,
        words=(*words, say("lasting-refresh-mould")),
    )  # fmt: skip


def resting_time(layer: ArrayLike, diffusivity: ArrayLike, left: ArrayLike = EVEN) -> Array:
    """Give the time after which wet and dry streaks are even.

    Parameters
    ----------
    layer : (...) float
        Thickness of a streak. [m]
    diffusivity : (...) float
        Diffusivity of water in the dough. [m²/s]
    left : (...) float
        Share of the first difference that is left; below 0.5. [1]

    Returns
    -------
    (...) float
        Time. [s]

    Notes
    -----
    Layers that alternate with period 2 s: the first wave of their square profile has the height 4/π and decays by
    exp(-π² D t/s²); the others are gone long before.

    Examples
    --------
    >>> float((resting_time(1e-3, 1.5e-10) / 60).round())
    36.0
    """
    square = np.asarray(layer, float) ** 2 / (np.pi**2 * np.asarray(diffusivity, float))
    return np.asarray(square * np.log(4 / (np.pi * np.asarray(left))))


def _grams(mass: float) -> str:
    return short_text(1e3 * float(mass), 3)


def _minutes(rest: Value) -> str:
    return f"{5 * max(round(rest.mean / 300), 1):d}"
