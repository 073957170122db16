"""What is joined to what, before any current is computed."""

from collections.abc import Iterable
from typing import Literal

from lumped.sculpt import Part, Sculpture
from lumped.verdict import changes
from lumped.verdict.readings import Reading

__all__ = ["Joining", "joining_of"]

Joining = Literal["in-a-loop", "legs-joined", "pack-joined", "apart"]


def joining_of(part: Part, sculpture: Sculpture, reading: Reading) -> Joining:
    """Tell how a part is joined to the packs, itself and the packs left out.

    Parameters
    ----------
    part : Part
        The part.
    sculpture : Sculpture
        What stands on the table.
    reading : Reading
        One reading of it.

    Returns
    -------
    {"in-a-loop", "legs-joined", "pack-joined", "apart"}
        In a loop with a pack; both its legs joined to each other, in one lump or otherwise; both wires of a pack joined
        where the part is; or joined to no pack's two wires.
    """
    bare = _homes(reading, sculpture.parts)
    plus, minus = (leg.node for leg in part.legs)
    if _same(bare, plus, minus):
        return "legs-joined"
    packs = [pack for pack in sculpture.packs if pack is not part]
    if packs and all(_same(bare, *(leg.node for leg in pack.legs)) for pack in packs):
        return "pack-joined"
    home = _homes(reading, [part, *sculpture.packs])
    for pack in packs:
        red, black = (leg.node for leg in pack.legs)
        if (_same(home, plus, red) and _same(home, minus, black)) or (
            _same(home, plus, black) and _same(home, minus, red)
        ):
            return "in-a-loop"
    return "apart"


def _same(homes: dict[str, int], one: str, other: str) -> bool:
    return one in homes and homes[one] == homes.get(other)


def _homes(reading: Reading, left_out: Iterable[Part]) -> dict[str, int]:
    """Number of the connected piece that each node is in, some parts left out."""
    pieces = changes.without_parts(reading.network, left_out).pieces()
    return {node: k for k, piece in enumerate(pieces) for node in piece}
