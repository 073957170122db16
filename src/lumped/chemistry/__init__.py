"""The liquid inside a dough: brine, weak acids, syrup.

What conducts is the liquid: its ions, how far weak acids give theirs away, and how hard the syrup makes it for them
to move. For salt water the handbook's table is the truth; other ions join by their limiting conductivities,
`κ = Σ cᵢ λᵢ° r(I)^|zᵢ|`, and sugar slows them all by `(η_water/η)^p`, `p` from 0.6 to 0.9.
"""

from lumped.chemistry.acidity import dissociated
from lumped.chemistry.activity import water_activity, water_activity_interval
from lumped.chemistry.brine import brine_conductivity, is_extrapolated, salt_water_conductivity
from lumped.chemistry.density import brine_density, liquid_volume
from lumped.chemistry.dissolving import salt_dissolving_time
from lumped.chemistry.mixture import Brine, limiting_conductivity, mixture_conductivity, mixture_width
from lumped.chemistry.solubility import (
    bitartrate_solubility,
    parted,
    salt_solubility,
    sugar_solubility,
)
from lumped.chemistry.syrup import liquid_thickening, liquid_viscosity_ratio, mobility_left, syrup_viscosity

__all__ = [
    "Brine",
    "bitartrate_solubility",
    "brine_conductivity",
    "brine_density",
    "dissociated",
    "is_extrapolated",
    "limiting_conductivity",
    "liquid_thickening",
    "liquid_viscosity_ratio",
    "liquid_volume",
    "mixture_conductivity",
    "mixture_width",
    "mobility_left",
    "parted",
    "salt_dissolving_time",
    "salt_solubility",
    "salt_water_conductivity",
    "sugar_solubility",
    "syrup_viscosity",
    "water_activity",
    "water_activity_interval",
]
