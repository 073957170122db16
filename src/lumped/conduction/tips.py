"""What a lead's end changes: near a tip there is line on one side only.

A piece of lead sees, beside the lattice's own potential, the part of the continuous line's potential that the
lattice smears away. That part comes from within about a pitch on both sides. Smearing acts nearly like a Gaussian of
width s, for which the part from one side, out to a distance u, is

    Q(u) = ∫₀ᵘ [1/√(z² + r²) − erf(z/√2 s)/z] dz = asinh(u/r) − E(u/√2 s),   E(x) = ∫₀ˣ erf(t)/t dt,

and Q(∞) = ln(r_eq/r) with r_eq = √2 e^(−γ/2) s. So ln(r_eq/r) of a piece becomes (Q(u₁) + Q(u₂))/2, with its
distances u₁, u₂ to both ends. An end at the surface is no tip: there the line's mirror image goes on.
"""

import numpy as np
from numpy.typing import NDArray
from scipy.special import erf

__all__ = ["one_sided_log"]

Floats = NDArray[np.float64]
_GAUSSIAN = float(np.sqrt(2) * np.exp(-np.euler_gamma / 2))  # r_eq of a Gaussian smear, in its widths
_LADDER = np.linspace(0, 4, 401)


def one_sided_log(distance: Floats, log_ratio: Floats, *, smear: Floats) -> Floats:
    """Give Q(u), the part of ln(r_eq/r) that comes from one side.

    Parameters
    ----------
    distance : (k,) float
        Distance u to the tip. [m]
    log_ratio : (k,) float
        ln(r_eq/r) far from any tip.
    smear : (k,) float
        Equivalent radius of the lattice for a thin lead. [m]

    Returns
    -------
    (k,) float
        Q(u), between 0 and `log_ratio`.

    Examples
    --------
    >>> one_sided_log(np.array([0.0, 9.0]), np.array([1.0, 1.0]), smear=np.array([0.7, 0.7])).round(3).tolist()
    [0.0, 1.0]
    """
    radius = smear * np.exp(-log_ratio)
    return np.asarray(np.arcsinh(distance / radius) - _smeared(distance * _GAUSSIAN / (np.sqrt(2) * smear)))


def _smeared(x: Floats) -> Floats:
    """E(x): from a table by the trapezoidal rule, beyond it by its asymptote ln x + γ/2 + ln 2."""
    far = np.log(np.maximum(x, _LADDER[-1])) + np.euler_gamma / 2 + np.log(2)
    return np.where(x < _LADDER[-1], np.interp(x, _LADDER, _TABLE), far)


def _tabulated() -> Floats:
    middles = (_LADDER[1:] + _LADDER[:-1]) / 2
    return np.concatenate([[0.0], np.cumsum(erf(middles) / middles * np.diff(_LADDER))])


_TABLE = _tabulated()
