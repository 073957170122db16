"""A pack of cells: its open-circuit voltage behind the resistances of cells, wires and fuse."""

from dataclasses import dataclass
from typing import Literal

from lumped.circuit.law import StraightLine
from lumped.reference import handbook

__all__ = ["Fuse", "Pack", "TrippedPack", "pack", "pack_of_cells"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Fuse:
    """A resettable fuse: a small resistance that grows when the current heats it, and recovers when it cools.

    Parameters
    ----------
    hold_current, trip_current : float
        It surely carries the first for ever and surely trips at the second. [A]
    resistance : float
        Resistance while cold. [Ω]
    tripped_power : float
        What it turns into heat while tripped. [W]

    Examples
    --------
    >>> Fuse(hold_current=0.5, trip_current=1.0, resistance=0.5, tripped_power=0.8).resistance
    0.5
    """

    hold_current: float
    trip_current: float
    resistance: float
    tripped_power: float


@dataclass(frozen=True, slots=True, kw_only=True)
class TrippedPack(StraightLine):
    """A pack whose fuse has tripped.

    A tripped fuse holds its heat P, so its resistance is about V²/P with nearly the whole voltage across it: a straight
    line that is right at a short circuit and gives too much current elsewhere.
    """


@dataclass(frozen=True, slots=True, kw_only=True)
class Pack(StraightLine):
    """A pack, its fuse (if it has one) intact.

    Parameters
    ----------
    resistance, emf : float
        Resistance of cells, wires and fuse in series; open-circuit voltage. [Ω, V]
    fuse : Fuse or None
        The fuse.

    Examples
    --------
    >>> four = pack_of_cells(4, voltage=1.55, resistance=0.25, wires=0.1)
    >>> round(four.emf, 3), round(four.resistance, 3), round(four.current(4.0), 3)
    (6.2, 1.1, -2.0)
    """

    fuse: Fuse | None = None
    delay: float = 5.0

    def next(self, v: float, i: float, /) -> TrippedPack | None:
        """Give the law of the tripped pack once the current reaches the trip current."""
        if self.fuse is None or abs(i) < self.fuse.trip_current:
            return None
        tripped = self.emf**2 / self.fuse.tripped_power
        return TrippedPack(resistance=self.resistance + tripped, emf=self.emf)


def pack_of_cells(
    cells: int, *, voltage: float, resistance: float, wires: float = 0.0, fuse: Fuse | None = None
) -> Pack:
    """Put cells in series.

    Parameters
    ----------
    cells : int
        How many.
    voltage, resistance : float
        Open-circuit voltage and internal resistance of one cell. [V, Ω]
    wires : float
        Resistance of wires, springs and holder. [Ω]
    fuse : Fuse or None
        A fuse in series.

    Returns
    -------
    Pack
        Its law; the plus node is the red wire.

    Examples
    --------
    >>> round(pack_of_cells(2, voltage=1.55, resistance=0.25).emf, 3)
    3.1
    """
    total = cells * resistance + wires + (fuse.resistance if fuse else 0.0)
    return Pack(resistance=total, emf=cells * voltage, fuse=fuse)


def pack(key: str, *, state: Literal["fresh", "tired"] = "fresh", fuse: bool = False, against: float = 0.0) -> Pack:
    """Look up a pack.

    Parameters
    ----------
    key : str
        Key in the handbook's table of packs.
    state : {"fresh", "tired"}
        How full the cells are.
    fuse : bool
        Whether a resettable fuse is in series.
    against : float
        Where these cells stand in their kind's spread: -1 gives much, 1 little. [1]

    Returns
    -------
    Pack
        Its law.

    Examples
    --------
    >>> round(pack("pack-4aa-alkaline").emf, 2), round(pack("pack-4aa-alkaline", state="tired").emf, 2)
    (6.2, 4.6)
    """
    entry = handbook().entry("packs", key)
    cell = entry.facts["cell"]
    return pack_of_cells(
        entry.facts["cells"],
        voltage=handbook().value("packs", cell, f"{state}_voltage").at(-against),
        resistance=handbook().value("packs", cell, f"{state}_resistance").at(against),
        wires=handbook().value("packs", key, "wire_resistance").mean,
        fuse=_fuse() if fuse else None,
    )


def _fuse() -> Fuse:
    return Fuse(
        hold_current=handbook().value("packs", "fuse", "hold_current").mean,
        trip_current=handbook().value("packs", "fuse", "trip_current").mean,
        resistance=handbook().value("packs", "fuse", "resistance").mean,
        tripped_power=handbook().value("packs", "fuse", "tripped_power").mean,
    )
