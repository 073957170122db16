"""How long a dough lasts: drying, cooling, salt that creeps, mould.

All four are clocks: water leaves by its vapour pressure, heat by the air, salt by diffusion, and moulds grow where the
water activity lets them. Everything is computed on arrays in SI.
"""

from lumped.dough.lasting.air import OPEN, AirSide, Cover, Room, air_over, bag
from lumped.dough.lasting.cooling import Cooling, biot_number, cool, cool_pot, cooling_time, safe_warmth
from lumped.dough.lasting.creep import (
    creep_depth,
    creep_diffusivity,
    joint_share,
    salt_at,
    wall_left,
    wall_lifetime,
)
from lumped.dough.lasting.dried import Drying
from lumped.dough.lasting.drying import dry
from lumped.dough.lasting.heat import WarmDough, warm_dough
from lumped.dough.lasting.isotherm import Isotherm, brine_uptake, flour_uptake, isotherm_of, linear_isotherm
from lumped.dough.lasting.keeping import Group, Growth, Keeping, growth_margins, keeping
from lumped.dough.lasting.kneaded import isotherm_from, moist_from, warm_from
from lumped.dough.lasting.layers import Piece, Shape
from lumped.dough.lasting.moist import MoistDough, falling_diffusivity
from lumped.dough.lasting.refreshing import Refresh, refresh, resting_time, water_lost

__all__ = [
    "OPEN",
    "AirSide",
    "Cooling",
    "Cover",
    "Drying",
    "Group",
    "Growth",
    "Isotherm",
    "Keeping",
    "MoistDough",
    "Piece",
    "Refresh",
    "Room",
    "Shape",
    "WarmDough",
    "air_over",
    "bag",
    "biot_number",
    "brine_uptake",
    "cool",
    "cool_pot",
    "cooling_time",
    "creep_depth",
    "creep_diffusivity",
    "dry",
    "falling_diffusivity",
    "flour_uptake",
    "growth_margins",
    "isotherm_from",
    "isotherm_of",
    "joint_share",
    "keeping",
    "linear_isotherm",
    "moist_from",
    "refresh",
    "resting_time",
    "safe_warmth",
    "salt_at",
    "wall_left",
    "wall_lifetime",
    "warm_dough",
    "warm_from",
    "water_lost",
]
