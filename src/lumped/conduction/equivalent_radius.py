"""How fat a line of current looks on a lattice: the equivalent radius of a smeared lead.

A lead of radius r_w gives current to the cells around it. On the lattice the potential at the lead stays finite:
it is the potential that a continuous medium has at some radius r_eq from a thin line. What is missing between r_w
and r_eq is put back as a series resistance ln(r_eq / r_w) / (2π σ) for each metre of lead.

Derivation. Let t be the lead's direction, h the pitch. The source is spread by the quadratic B-spline, with
transform B̂(k) = Π sinc³(kᵢh/2), from a ring of radius R about the axis (R = 0: from the axis), and the potential
is read with the same weights. Averaged over all offsets of the lead in the lattice, only wave vectors at right
angles to t remain, aliases included by integrating over the whole plane:

    φ = 1/(2π)² ∫_{k⊥t} B̂(k)² J₀(kR)² / λ(k) d²k,      λ(k) = Σ (2 − 2 cos kᵢh) / h².

A thin line in a continuous medium has, cut off below the same wave number ε, φ(r) = −(ln(εr/2) + γ) / 2π.
Equating both gives r_eq, and ε drops out. The same integral with B̂ = 1 on the first zone gives Peaceman's well
radius, e^(−γ)/√8 h = 0.1985 h.
"""

from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import j0

__all__ = ["equivalent_radius"]

_EULER = float(np.euler_gamma)
_LAST = 42.0  # sinc⁶ has fallen to 1e-8 of its start here
_ANGLES = 96


def equivalent_radius(direction: ArrayLike, *, pitch: float, ring: float = 0.0) -> float:
    """Give the radius at which a thin line in a continuous medium has the smeared lead's potential.

    Parameters
    ----------
    direction : (3,) float
        Direction of the lead; any length.
    pitch : float
        Edge of a cell. [m]
    ring : float
        Radius of the ring from which the current is spread. [m]

    Returns
    -------
    float
        Equivalent radius; 0.66 to 0.69 pitches for a thin lead. [m]

    Examples
    --------
    >>> round(equivalent_radius([0, 0, 1], pitch=1.0), 4)
    0.6604
    """
    axes = np.sort(np.abs(np.asarray(direction, dtype=float)))
    axes = np.round(axes / np.linalg.norm(axes), 3)  # the radius depends on direction gently
    return pitch * _in_pitches(*(float(each) for each in axes), round(ring / pitch, 4))


@lru_cache(maxsize=4096)
def _in_pitches(x: float, y: float, z: float, ring: float) -> float:
    """Do the integral for unit pitch: ln r_eq = ln 2 − γ − ∫₀¹ (⟨f⟩ − 1) dk/k − ∫₁ ⟨f⟩ dk/k, f = k² B̂² J₀² / λ."""
    k, weight = _quadrature()
    angle = 2 * np.pi * (np.arange(_ANGLES) + 0.5) / _ANGLES
    first, second = _across(np.array([x, y, z]))
    rays = np.cos(angle)[:, None] * first + np.sin(angle)[:, None] * second
    vectors = k[:, None, None] * rays
    smear = np.prod(np.sinc(vectors / (2 * np.pi)) ** 6, axis=-1)
    lattice = np.sum(2 - 2 * np.cos(vectors), axis=-1)
    f = np.mean(k[:, None] ** 2 * smear / np.maximum(lattice, 1e-300), axis=1) * j0(k * ring) ** 2
    return float(np.exp(np.log(2) - _EULER - np.sum(weight / k * (f - (k < 1)))))


def _quadrature() -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Gauss–Legendre panels of half a wave number, from 0 to `_LAST`; none straddles 1."""
    nodes, weights = np.polynomial.legendre.leggauss(6)
    starts = np.arange(0, _LAST, 0.5)[:, None]
    return (starts + 0.25 * (nodes + 1)).ravel(), np.tile(0.25 * weights, len(starts))


def _across(direction: NDArray[np.float64]) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Two unit vectors at right angles to `direction` and to each other."""
    unit = direction / np.linalg.norm(direction)
    helper = np.eye(3)[np.argmin(np.abs(unit))]
    first = np.cross(unit, helper)
    first /= np.linalg.norm(first)
    return first, np.cross(unit, first)
