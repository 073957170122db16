"""How long a grain takes to dissolve.

A grain in dough that lies still feeds salt outward, and what it can feed is what diffusion takes away:
`dr/dt = -(D/ρ) (c_s - c)/r`, so it shrinks as `r² = r₀² - 2 D (c_s - c) t/ρ`, while the liquid's own concentration
`c` rises with what has dissolved. Stirred liquid carries it away by itself: `dr/dt = -k (c_s - c)/ρ`.
"""

from collections.abc import Callable

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.compounds import compound
from lumped.chemistry.density import liquid_volume
from lumped.chemistry.diffusion import salt_diffusivity
from lumped.chemistry.solubility import solubility
from lumped.quantities import Value
from lumped.reference import handbook

__all__ = ["dissolving_time", "grain_diameter", "salt_dissolving_time", "stirred_dissolving_time"]

Array = NDArray[np.float64]
_SALT = "sodium-chloride"
_TINY = 1e-12
_THIN, _ROOT3 = 300.0, np.sqrt(3.0)


def dissolving_time(
    radius: ArrayLike,
    *,
    diffusivity: ArrayLike,
    solid_density: ArrayLike,
    saturation: ArrayLike,
    final: ArrayLike = 0.0,
) -> Array:
    """Give how long grains of one size take to dissolve in a liquid or dough that lies still.

    Parameters
    ----------
    radius : (...) float
        Radius of a grain. [m]
    diffusivity : (...) float
        Diffusivity of what dissolves; in dough times the obstruction, which counts the liquid's share. [m²/s]
    solid_density : (...) float
        Density of the grain. [kg/m³]
    saturation : (...) float
        Concentration in the liquid next to the grain. [kg/m³]
    final : (...) float
        Concentration in the liquid once all is dissolved. [kg/m³]

    Returns
    -------
    (...) float
        Time; infinite where more went in than dissolves. [s]

    Notes
    -----
    t = (ρ r₀²/D) ∫₀¹ x dx/(c_s - c_end (1 - x³)) in closed form; ρ r₀²/(2 D c_s) for a lone grain. Quasi-steady: the
    field round the grain is taken as settled. It never quite is, and the steeper field takes a lone grain of salt
    away in 0.83 of this time in water and 0.87 in dough, so the figure is on the long side. Grains closer together
    than some diameters share their field, which `final` counts.

    References
    ----------
    The shrinking sphere of T. Higuchi, E. N. Hiestand, J. Pharm. Sci. 52, 67 (1963); from memory.

    Examples
    --------
    >>> lone = dissolving_time(0.5e-3, diffusivity=4.5e-10, solid_density=2165, saturation=317)
    >>> float((lone / 60).round())
    32.0
    """
    scale = np.asarray(solid_density, float) * np.asarray(radius, float) ** 2 / np.asarray(diffusivity, float)
    return _over_filling(scale, np.asarray(saturation, float), np.asarray(final, float), _still)


def stirred_dissolving_time(
    radius: ArrayLike, *, sweep: ArrayLike, solid_density: ArrayLike, saturation: ArrayLike, final: ArrayLike = 0.0
) -> Array:
    """Give how long grains of one size take to dissolve while somebody stirs.

    Parameters
    ----------
    radius, solid_density, saturation, final
        As of `dissolving_time`.
    sweep : (...) float
        Speed at which the liquid sweeps away what dissolves; see the table `grains`. [m/s]

    Returns
    -------
    (...) float
        Time; infinite where more went in than dissolves. [s]

    Notes
    -----
    t = (ρ r₀/k) ∫₀¹ dx/(c_s - c_end (1 - x³)); ρ r₀/(k c_s) for a lone grain (Hixson and Crowell).

    Examples
    --------
    >>> lone = stirred_dissolving_time(0.5e-3, sweep=5e-5, solid_density=2165, saturation=317)
    >>> float(lone.round())
    68.0
    """
    scale = np.asarray(solid_density, float) * np.asarray(radius, float) / np.asarray(sweep, float)
    return _over_filling(scale, np.asarray(saturation, float), np.asarray(final, float), _swept)


def _over_filling(scale: Array, saturation: Array, final: Array, integral: Callable[[Array, Array], Array]) -> Array:
    """∫₀¹ xⁿ dx/(c_s - c_end + c_end x³), by k³ = (c_s - c_end)/c_end; without limit when the liquid stays thin."""
    left = saturation - final
    ratio = np.maximum(left, _TINY) / np.maximum(final, _TINY * saturation)
    k = np.clip(np.cbrt(ratio), _TINY, _THIN)  # thinner than the latter, x³ does not count
    time = scale / np.maximum(left, _TINY) * k**3 * integral(k, np.arctan((2 - k) / (k * _ROOT3)) + np.pi / 6)
    return np.asarray(np.where(left > 0, time, np.inf))


def _still(k: Array, turn: Array) -> Array:
    """∫₀¹ x dx/(k³ + x³)."""
    return np.asarray(_logs(k) / k + turn / (k * _ROOT3))


def _swept(k: Array, turn: Array) -> Array:
    """∫₀¹ dx/(k³ + x³)."""
    return np.asarray((turn / _ROOT3 - _logs(k)) / k**2)


def _logs(k: Array) -> Array:
    """A sixth of ln((k² - k + 1)/(k + 1)²)."""
    return np.asarray(np.log1p(-3 * k / (1 + k) ** 2) / 6)


def salt_dissolving_time(
    diameter: ArrayLike, *, salt: ArrayLike, water: ArrayLike, temperature: ArrayLike, obstruction: ArrayLike
) -> Array:
    """Give how long salt takes to dissolve in a dough that lies still.

    Parameters
    ----------
    diameter : (...) float
        Diameter of the grains; see `grain_diameter`. [m]
    salt, water : (...) float
        Mass of salt and of the water that may take it. [kg]
    temperature : (...) float
        Temperature. [K]
    obstruction : (...) float
        Conductivity of the dough over that of its liquid, about 0.2 to 0.4. [1]

    Returns
    -------
    (...) float
        Time; infinite where some salt stays solid. [s]

    Examples
    --------
    >>> time = salt_dissolving_time(1e-3, salt=0.0, water=0.2, temperature=293.15, obstruction=0.3)
    >>> float((time / 60).round())
    33.0
    """
    most = solubility(_SALT, temperature)
    full = most / liquid_volume(1.0, {_SALT: most}, temperature)
    held = np.asarray(salt, float) / np.maximum(water, _TINY)
    thinned = held / liquid_volume(1.0, {_SALT: np.minimum(held, most)}, temperature)
    return dissolving_time(
        np.asarray(diameter, float) / 2,
        diffusivity=salt_diffusivity(temperature) * np.asarray(obstruction, float),
        solid_density=compound(_SALT).density,
        saturation=full,
        final=np.where(held < most, thinned, full),
    )


def grain_diameter(kind: str) -> Value:
    """Give the usual diameter of grains. [m]

    Parameters
    ----------
    kind : str
        Its key in the table `grains`, such as "coarse-salt".

    Raises
    ------
    HandbookError
        If there is none of that key.

    Examples
    --------
    >>> grain_diameter("coarse-salt").text()
    '0.0020 m (0.0010 to 0.00350)'
    """
    return handbook().value("grains", kind, "diameter")
