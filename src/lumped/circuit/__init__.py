"""Parts as equations, the network they form, and its operating point.

Every part is a continuous, non-decreasing law i(v); with the port matrix Y of the dough Kirchhoff's law
Y·φ + Σ i(v) = 0 then has one solution, which Newton's method with a line search finds from any start. Start
thresholds (a motor's static friction, a fuse) are two such laws, solved from rest.
"""

from lumped.circuit.gauge import Gauge, gauge
from lumped.circuit.lamp import Lamp, lamp, lamp_from_forward_voltage
from lumped.circuit.law import Law, StagedLaw, StraightLine
from lumped.circuit.motor import Motor, MotorAtRest, MotorTurning, motor
from lumped.circuit.network import Branch, Conductor, Network
from lumped.circuit.operating_point import OperatingPoint, operating_point
from lumped.circuit.pack import Fuse, Pack, TrippedPack, pack, pack_of_cells
from lumped.circuit.resistor import contact, resistor, switch

__all__ = [
    "Branch",
    "Conductor",
    "Fuse",
    "Gauge",
    "Lamp",
    "Law",
    "Motor",
    "MotorAtRest",
    "MotorTurning",
    "Network",
    "OperatingPoint",
    "Pack",
    "StagedLaw",
    "StraightLine",
    "TrippedPack",
    "contact",
    "gauge",
    "lamp",
    "lamp_from_forward_voltage",
    "motor",
    "operating_point",
    "pack",
    "pack_of_cells",
    "resistor",
    "switch",
]
