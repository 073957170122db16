"""How well a weak acid conducts in water, from thin to strong: it rises, has a maximum, and falls again.

The more acid, the smaller the share that gives its hydrogen away (law of mass action); strong acid stands in the place
of water, which makes room for fewer ions (`crowding`, fitted), and thickens the liquid, so that ions move slower.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.chemistry.acidity import dissociated
from lumped.chemistry.compounds import compound
from lumped.chemistry.density import liquid_volume
from lumped.chemistry.mixture import mixture_conductivity
from lumped.chemistry.viscosity import salt_thickening

__all__ = ["sour_conductivity"]

Array = NDArray[np.float64]
_SLOWING = 0.8  # power of viscosity with which hydrogen ions slow down, from memory


def sour_conductivity(acid: str, share: ArrayLike, temperature: float = 293.15) -> Array:
    """Give the conductivity of a weak acid in water.

    Parameters
    ----------
    acid : {"acetic", "citric"}
        Which; for others no table says how they thicken water.
    share : (...) float
        Mass of acid over mass of liquid, up to one half. [1]
    temperature : float
        Temperature. [K]

    Returns
    -------
    (...) float
        Conductivity. [S/m]

    Examples
    --------
    >>> bool(sour_conductivity("acetic", 0.17) > sour_conductivity("acetic", 0.4))
    True
    """
    w = np.asarray(share, float)
    key = f"{acid}-acid"
    volume = liquid_volume(np.ones_like(w), {key: w / (1 - w)}, temperature)
    amount = w / (1 - w) / (compound(key).molar_mass or 1.0) / volume
    thick = salt_thickening(key, w, temperature)
    return np.asarray(mixture_conductivity(dissociated({acid: amount}).charges, temperature) * thick**-_SLOWING)
