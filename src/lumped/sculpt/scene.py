"""A sculpture as it stands on the table: solids and leads in metres, doughs with their resistivity."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from lumped.circuit import Gauge
from lumped.dough import Dough
from lumped.shape import Solid

__all__ = ["PART_TABLES", "Leg", "Look", "Lump", "Part", "PartKind", "Sculpture"]

PartKind = Literal["lamp", "motor", "pack", "switch", "resistor"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """What a dough looks like: a colour (#rrggbb) and a mark pressed into it."""

    colour: str
    mark: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Lump:
    """One solid piece of one dough."""

    name: str
    dough: str
    shape: str
    solid: Solid


@dataclass(frozen=True, slots=True, kw_only=True)
class Leg:
    """One leg of a part.

    Parameters
    ----------
    part, name : str
        Whose leg it is, and its own name: "long", "red".
    gauge : Gauge
        What wire it is.
    entry, tip : (3,) float or None
        Where it goes in and where it ends; None if it dangles. [m]
    words : str
        The place as the file says it.
    """

    part: str
    name: str
    gauge: Gauge
    entry: NDArray[np.float64] | None
    tip: NDArray[np.float64] | None
    words: str

    @property
    def node(self) -> str:
        """Name of its metal in the network: "lamp.long"."""
        return f"{self.part}.{self.name}"


PART_TABLES: dict[PartKind, str] = {
    "lamp": "lamps", "motor": "motors", "pack": "packs", "switch": "switches", "resistor": "resistors",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A part with its legs, in the order plus, minus."""

    name: str
    key: str
    kind: PartKind
    title: str
    legs: tuple[Leg, Leg]
    state: str = ""
    fuse: bool = False

    @property
    def table(self) -> str:
        """The handbook's table that knows it."""
        return PART_TABLES[self.kind]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sculpture:
    """Lumps and parts on the table.

    Parameters
    ----------
    lumps : tuple of Lump
        In order: where they overlap, the later one wins.
    joined : tuple of (str, str)
        Legs twisted together outside the dough, by node name.
    """

    title: str
    story: str
    invented: bool
    path: Path
    doughs: Mapping[str, Dough]
    looks: Mapping[str, Look]
    lumps: tuple[Lump, ...]
    parts: tuple[Part, ...]
    joined: tuple[tuple[str, str], ...] = ()

    @property
    def legs(self) -> tuple[Leg, ...]:
        """All legs of all parts."""
        return tuple(leg for part in self.parts for leg in part.legs)

    @property
    def packs(self) -> tuple[Part, ...]:
        """The packs among the parts."""
        return tuple(part for part in self.parts if part.kind == "pack")

    def lump(self, name: str) -> Lump:
        """Give a lump by name."""
        return next(lump for lump in self.lumps if lump.name == name)
