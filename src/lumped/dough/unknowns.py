"""What no recipe says of a dough: the figures that the chain from scale to resistivity needs besides amounts."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

__all__ = ["Unknowns"]

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Unknowns:
    """What no recipe says, each a number or one draw a batch; the defaults are the middle of what is believed.

    Parameters
    ----------
    bound_water : (n,) float
        Water held by a mass of dry starch, fibre and protein. [1]
    archie_exponent : (n,) float
        Exponent of a pack of grains. [1]
    picture : (n,) float
        Where on the way from a pack of grains (0) to a gel that ions enter (1) the dough lies. The share of the gel in
        it is sin²(π/2 · picture): a dough is more likely near one of the two than halfway. [1]
    walden_exponent : (n,) float
        Power of viscosity with which ions slow down. [1]
    air : (n,) float
        Volume share of air. [1]
    percolation : (n,) float
        Volume share of liquid below which it forms no way through. [1]
    mobile_single, mobile_double : (n,) float
        Share of a flour's sodium and potassium, and of its magnesium and calcium, that is free to move. [1]
    brine_error : (n,) float
        How far the tables of conductivity are off, in their half-widths. [1]
    dry_conductivity : (n,) float
        Conductivity of flour and fat without free water. [S/m]
    flour_ph : (n,) float
        pH of flour in much water. [1]
    flour_binding : (n,) float
        Hydrogen that a mass of protein, with what goes with it in flour, takes up for each unit of pH below. [mol/kg]
    activity_error : (n,) float
        How far water activity is off. [1]
    scatter : (n,) float
        How much better than its likes one batch conducts. [1]
    """

    bound_water: Array
    archie_exponent: Array
    picture: Array
    walden_exponent: Array
    air: Array
    percolation: Array
    mobile_single: Array
    mobile_double: Array
    brine_error: Array
    dry_conductivity: Array
    flour_ph: Array
    flour_binding: Array
    activity_error: Array
    scatter: Array
