"""Sculptures: lumps of dough with parts pushed in, from a file that a person writes to a network.

`read_sculpture` puts a file on the table; `settled` decides which lumps touch and which metals meet; `solve_settled`
computes the conductances Y between all leads, currents into the dough being I = Y·V; `network_of` adds the parts and
what each lead pays where metal meets dough.
"""

from lumped.sculpt.bodies import Nearness
from lumped.sculpt.loading import build_sculpture, read_sculpture
from lumped.sculpt.model import SculptureFile, sculpture_schema
from lumped.sculpt.network import law_of, network_of
from lumped.sculpt.scene import Leg, Look, Lump, Part, Sculpture
from lumped.sculpt.settling import MetalTouch, Run, Settled, find_near_pairs, lead_distance, settled
from lumped.sculpt.solving import Effort, Solved, choose_pitch, solve_settled

__all__ = [
    "Effort",
    "Leg",
    "Look",
    "Lump",
    "MetalTouch",
    "Nearness",
    "Part",
    "Run",
    "Sculpture",
    "SculptureFile",
    "Settled",
    "Solved",
    "build_sculpture",
    "choose_pitch",
    "find_near_pairs",
    "law_of",
    "lead_distance",
    "network_of",
    "read_sculpture",
    "sculpture_schema",
    "settled",
    "solve_settled",
]
