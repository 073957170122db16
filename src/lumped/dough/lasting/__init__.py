"""How long a dough lasts: drying, cooling, salt that creeps, mould.

All four are clocks: water leaves by its vapour pressure, heat by the air, salt by diffusion, and moulds grow where the
water activity lets them. Everything is computed on arrays in SI.
"""

from lumped.dough.lasting.air import OPEN, AirSide, Cover, Room, air_over, bag
from lumped.dough.lasting.dried import Drying
from lumped.dough.lasting.drying import dry
from lumped.dough.lasting.isotherm import Isotherm, brine_uptake, flour_uptake, isotherm_of, linear_isotherm
from lumped.dough.lasting.layers import Piece, Shape
from lumped.dough.lasting.moist import MoistDough, falling_diffusivity

__all__ = [
    "OPEN",
    "AirSide",
    "Cover",
    "Drying",
    "Isotherm",
    "MoistDough",
    "Piece",
    "Room",
    "Shape",
    "air_over",
    "bag",
    "brine_uptake",
    "dry",
    "falling_diffusivity",
    "flour_uptake",
    "isotherm_of",
    "linear_isotherm",
]
