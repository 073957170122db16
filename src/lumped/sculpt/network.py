"""From solved ports and parts to a network: each lead pays its price where metal meets dough."""

from collections.abc import Iterable
from typing import Literal

from lumped.chemistry.electrodes import electrode
from lumped.circuit import Branch, Conductor, Law, Network, contact, lamp, motor, pack, resistor, switch
from lumped.sculpt.scene import Part, Sculpture
from lumped.sculpt.settling import MetalTouch
from lumped.sculpt.solving import Solved

__all__ = ["law_of", "network_of"]


def network_of(
    sculpture: Sculpture, solved: Solved, *, price: float = 0.0, against: float = 0.0, scale: float = 1.0
) -> Network:
    """Give the network of a sculpture.

    Parameters
    ----------
    sculpture : Sculpture
        Parts and joined legs.
    solved : Solved
        Ports, runs and metals that meet.
    price : float
        Where between cheap (-1) and dear (+1) the passage from metal to dough is. [1]
    against : float
        Where each part stands in its kind's spread: -1 in favour of current, 1 against it. [1]
    scale : float
        Factor on all conductances of the dough: with one dough the port matrix only scales. [1]

    Returns
    -------
    Network
        Nodes are legs ("lamp.long") and their ports ("lamp.long@0"); branches are parts, ports and touches.
    """
    branches = [
        Branch(name=part.name, law=law_of(part, against=against), plus=part.legs[0].node, minus=part.legs[1].node)
        for part in sculpture.parts
    ]
    for run in solved.settled.runs:
        gauge = run.leg.gauge
        law = electrode(gauge.plating, gauge.perimeter * run.length, price=price)
        branches.append(Branch(name=run.name, law=law, plus=run.leg.node, minus=run.name))
    branches += _touch_branches(solved.settled.touches)
    names = tuple(solved.ports.names)
    conductors = (Conductor(nodes=names, matrix=scale * solved.ports.matrix),) if names else ()
    return Network(branches=tuple(branches), conductors=conductors)


def law_of(part: Part, *, against: float = 0.0) -> Law:
    """Give the law of a part, from the handbook.

    Parameters
    ----------
    part : Part
        The part.
    against : float
        Where it stands in its kind's spread. [1]
    """
    match part.kind:
        case "lamp":
            return lamp(part.key, against=against)
        case "motor":
            return motor(part.key, against=against)
        case "pack":
            state: Literal["fresh", "tired"] = "tired" if part.state == "tired" else "fresh"
            return pack(part.key, state=state, fuse=part.fuse, against=against)
        case "switch":
            return switch(part.key, closed=part.state != "open")
        case "resistor":
            return resistor(part.key)


def _touch_branches(touches: Iterable[MetalTouch]) -> list[Branch]:
    return [
        Branch(name=f"{touch.first}~{touch.second}", law=contact(), plus=touch.first, minus=touch.second)
        for touch in touches
    ]
