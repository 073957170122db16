"""What flour does to acid and soda: its protein takes hydrogen up below its own pH and gives it away above.

Straight lines, from memory of cereal laboratories: flour in much water reads about 6, and 100 g of white flour take up
some 2 mmol for each unit of pH below that. What is taken up does not move, so it carries no current.
"""

import numpy as np
from numpy.typing import NDArray

from lumped.chemistry.acidity import Buffer
from lumped.chemistry.compounds import compound
from lumped.dough.bowl import INDEX
from lumped.dough.unknowns import Unknowns

__all__ = ["flour_buffer", "more_tartar"]

Array = NDArray[np.float64]
KEY = "potassium-hydrogen-tartrate"
_PROTEIN, _TARTAR = INDEX["protein"], INDEX[KEY]
_MOST_BINDING = 1e4  # mol/m³ for a unit of pH; a stiff dough has some hundreds, one without liquid no end
_TARTAR_PH = 4.0  # where half of it has given its second hydrogen away, in brine
_TINY = 1e-12


def flour_buffer(components: Array, volume: Array, unknowns: Unknowns) -> Buffer | None:
    """Give what flour's protein does to acid and soda.

    Parameters
    ----------
    components : (C, n) float
        Mass of each compound of the dough. [kg]
    volume : (n,) float
        Volume of its liquid. [m³]
    unknowns : Unknowns
        Among them flour's own pH, and how much hydrogen it takes up.

    Returns
    -------
    Buffer or None
        None without any protein.
    """
    protein = components[_PROTEIN]
    if not protein.any():
        return None
    capacity = unknowns.flour_binding * protein / np.maximum(volume, _TINY)
    return Buffer(rest=unknowns.flour_ph, capacity=np.minimum(capacity, _MOST_BINDING))


def more_tartar(components: Array, dissolved: Array, unknowns: Unknowns) -> Array:
    """Give how much cream of tartar dissolves where flour takes its hydrogen, to about pH 4: up to thrice its limit.

    Parameters
    ----------
    components, unknowns
        As of `flour_buffer`.
    dissolved : (n,) float
        What dissolves of it without flour. [kg]

    Returns
    -------
    (n,) float
        What dissolves of it. [kg]
    """
    taken = unknowns.flour_binding * components[_PROTEIN] * np.maximum(unknowns.flour_ph - _TARTAR_PH, 0.0)
    more = np.minimum(taken * (compound(KEY).molar_mass or 0.0), 2 * dissolved)
    return np.asarray(np.minimum(components[_TARTAR], dissolved + more))
