"""The liquid inside a dough: brine, weak acids, syrup.

What conducts is the liquid: its ions, how far weak acids give theirs away, and how hard the syrup makes it for them
to move. Tables of pure salts are the truth; in a mixture each ion is braked as the mean of what its counter-ions do to
it in a salt of their own, `κ = Σ cᵢ λᵢ° exp(-Σⱼ Eⱼ bᵢⱼ(√I))`, and sugar slows them all by `(η_water/η)^p`, `p` from 0.6
to 0.9. `reach` says where that goes beyond the tables.
"""

from lumped.chemistry.acidity import dissociated
from lumped.chemistry.activity import water_activity, water_activity_interval
from lumped.chemistry.brine import brine_conductivity, is_extrapolated, salt_water_conductivity
from lumped.chemistry.certainty import Reach, mixture_width, reach
from lumped.chemistry.density import brine_density, liquid_volume
from lumped.chemistry.dissolving import salt_dissolving_time
from lumped.chemistry.liquid import Brine
from lumped.chemistry.mixture import limiting_conductivity, mixture_conductivity
from lumped.chemistry.solubility import (
    bitartrate_solubility,
    parted,
    salt_solubility,
    sugar_solubility,
)
from lumped.chemistry.syrup import liquid_thickening, liquid_viscosity_ratio, mobility_left, syrup_viscosity

__all__ = [
    "Brine",
    "Reach",
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
    "reach",
    "salt_dissolving_time",
    "salt_solubility",
    "salt_water_conductivity",
    "sugar_solubility",
    "syrup_viscosity",
    "water_activity",
    "water_activity_interval",
]
