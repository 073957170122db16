"""What a part does, in one plain word, by thresholds from the handbook.

States of a kind of part are ordered from least to most, so that a range of readings is a range of words.
"""

from functools import cache

from lumped.circuit import MotorTurning, OperatingPoint, Pack, TrippedPack
from lumped.reference import handbook
from lumped.sculpt import Part
from lumped.sculpt.scene import PartKind

__all__ = ["STATES", "is_best", "merit_of", "order_of", "state_of"]

STATES: dict[PartKind, tuple[str, ...]] = {
    "lamp": ("dark", "barely-lit", "dim", "bright", "too-hot"),
    "motor": ("still", "straining", "turning"),
    "pack": ("idle", "working", "nearly-shorted", "fuse-tripped"),
    "switch": ("open", "closed"),
    "resistor": ("no-current", "carrying", "hot"),
}
_MERIT: dict[PartKind, tuple[str, ...]] = {
    "lamp": ("dark", "too-hot", "barely-lit", "dim", "bright"),
    "pack": ("fuse-tripped", "nearly-shorted", "idle", "working"),
    "resistor": ("no-current", "hot", "carrying"),
}


def state_of(part: Part, point: OperatingPoint) -> str:
    """Give the state of a part.

    Parameters
    ----------
    part : Part
        The part.
    point : OperatingPoint
        Where the circuit comes to rest.

    Returns
    -------
    str
        One of `STATES[part.kind]`.
    """
    current = abs(point.currents[part.name])
    match part.kind:
        case "lamp":
            return _lamp_state(part.key, point.currents[part.name])
        case "motor":
            return _motor_state(part, point)
        case "pack":
            if part.name in point.tripped:
                return "fuse-tripped"
            return ("idle", "working", "nearly-shorted")[
                (current > _figure("verdicts", "pack", "idle_current"))
                + (current > _figure("verdicts", "pack", "heavy_current"))
            ]
        case "switch":
            return "open" if part.state == "open" else "closed"
        case "resistor":
            hot = abs(point.power(part.name)) > _figure("verdicts", "resistor", "hot_power")
            return "hot" if hot else ("no-current", "carrying")[current > _figure("verdicts", "pack", "idle_current")]


def order_of(part: Part, state: str) -> int:
    """Give the place of a state among those of its kind, least first."""
    return STATES[part.kind].index(state)


def merit_of(part: Part, state: str) -> int:
    """Give the place of a state in the order of how well it serves, worst first."""
    return _MERIT.get(part.kind, STATES[part.kind]).index(state)


def is_best(part: Part, state: str) -> bool:
    """Tell whether a part does what it is for; a switch does so open and closed."""
    return part.kind == "switch" or state == _MERIT.get(part.kind, STATES[part.kind])[-1]


def _lamp_state(key: str, current: float) -> str:
    steps = ("barely_lit_current", "dim_current", "bright_current", "max_current")
    passed = sum(current > _figure("lamps", key, step) for step in steps)
    return STATES["lamp"][passed]


def _motor_state(part: Part, point: OperatingPoint) -> str:
    law, speed = point.laws[part.name], abs(point.speed(part.name))
    if not isinstance(law, MotorTurning) or speed == 0:
        return "still"
    free = law.speed(max(pack.emf for pack in point.laws.values() if isinstance(pack, Pack | TrippedPack)))
    return "straining" if speed < _figure("verdicts", "motor", "straining_share") * free else "turning"


@cache
def _figure(table: str, key: str, quantity: str) -> float:
    return handbook().value(table, key, quantity).mean
