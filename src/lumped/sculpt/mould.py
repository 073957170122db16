"""A mould full of dough with two rods in it: how much resistance there is for each ohm metre of the dough.

The rods are solids of their own, a million times better than the dough, so that a screw that nearly fills a straw is
as it is: R = ρ · k with k from the field, `gap/A ≤ k ≤ gap/(π·r²)` for rods pushed into a tube from both ends. For
rods of 3 mm the handbook keeps what was computed.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np

from lumped.circuit import gauge
from lumped.errors import InputError
from lumped.quantities import Provenance, Value
from lumped.reference import handbook
from lumped.shape.solids import Block, Roll, Solid
from lumped.texts import say

__all__ = ["Mould", "mould", "moulds", "rods_resistance", "solved_factor"]

Point = tuple[float, float, float]
_METAL = 1e6  # conductivity of the rods in dough's: chosen, so that they add a ten-thousandth at most
_KEPT = 1.5e-3  # m; radius of the rods of which the handbook keeps the field
_ACROSS = 12  # cells across the thinnest side of the dough, or
_ROD = 5  # … across a rod, whichever is finer; a finer grid moves k by a per cent
_OPPOSITE = {"low": "high", "high": "low", "mean": "mean"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Mould:
    """A mould with two rods in it.

    Parameters
    ----------
    key, name, kind : str
        What programs and people call it; "tube" (rods from both ends) or "cube" (rods from above).
    rods : str
        Gauge of the rods, by key in the handbook.
    depth, gap : float
        How far each rod goes in, and how much dough lies between them. [m]
    wetted_area : float
        Of each rod. [m²]
    factor : Value
        Resistance between the rods over the dough's resistivity. [1/m]
    """

    key: str
    name: str
    kind: str
    rods: str
    depth: float
    gap: float
    wetted_area: float
    factor: Value


def moulds() -> tuple[str, ...]:
    """Give the keys of all moulds.

    Examples
    --------
    >>> moulds()
    ('straw', 'barrel', 'ice-cube')
    """
    return handbook().keys("moulds")


@cache
def mould(key: str, rods: str = "screw-stainless-3mm") -> Mould:
    """Give a mould full of dough, with two rods in it; the field is solved once, or kept in the handbook.

    Parameters
    ----------
    key : str
        Key in the handbook's table of moulds.
    rods : str
        Key of a round gauge.

    Returns
    -------
    Mould
        The ends of its factor are the smallest and the largest that its sizes allow.

    Raises
    ------
    HandbookError
        If there is no such mould or gauge.
    InputError
        If the gauge is not round, or too thick for the mould.

    Examples
    --------
    >>> straw = mould("straw")
    >>> straw.gap, 700 < straw.factor.mean < 1000
    (0.02, True)
    """
    entry, metal = handbook().entry("moulds", key), handbook().entry("gauges", rods)
    if metal.facts["shape"] != "round":
        raise InputError("mould-rods", rods=metal.name, known=", ".join(_round_gauges()))
    size, _ = _sizes(key)
    radius, kind = gauge(rods).equivalent_radius, entry.facts["kind"]
    narrowest = min(size[each].low for each in ("bore", "width") if each in size)
    if 2.5 * radius > narrowest:
        raise InputError("mould-thick", rods=metal.name, mould=entry.name, bore=f"{1e3 * narrowest:g}")
    factor = _kept(key) if math.isclose(radius, _KEPT) else solved_factor(key, radius)
    middle = {name: value.mean for name, value in size.items()}
    gap = middle["spacing"] - 2 * radius if kind == "cube" else middle["length"] - 2 * middle["depth"]
    return Mould(
        key=key, name=entry.name, kind=kind, rods=rods, depth=middle["depth"], gap=round(gap, 9),
        wetted_area=2 * math.pi * radius * middle["depth"],
        factor=factor,
    )  # fmt: skip


def _round_gauges() -> tuple[str, ...]:
    book = handbook()
    return tuple(key for key in book.keys("gauges") if book.entry("gauges", key).facts["shape"] == "round")


def _kept(key: str) -> Value:
    """The factor that the handbook keeps, as one over a length. [1/m]"""
    length = handbook().value("moulds", key, "length_3mm")
    return Value(
        mean=1 / length.mean, low=1 / length.high, high=1 / length.low, unit="1/m", spread="lognormal",
        provenance=_sizes(key)[1],
    )  # fmt: skip


def _sizes(key: str) -> tuple[dict[str, Value], Provenance]:
    rows = handbook().entry("moulds", key).rows
    size = {name: row.value for name, row in rows.items() if name != "length_3mm"}
    return size, Provenance.of((value.provenance for value in size.values()), note=say("mould-factor-note"))


def solved_factor(key: str, radius: float) -> Value:
    """Solve the field of a mould for the resistance between its rods over the dough's resistivity.

    Parameters
    ----------
    key : str
        Key in the handbook's table of moulds.
    radius : float
        Of the rods. [m]

    Returns
    -------
    Value
        Its ends are those where all sizes stand at the end that makes it small or large. [1/m]
    """
    size, origin = _sizes(key)
    kind = handbook().entry("moulds", key).facts["kind"]
    low, mean, high = (_factor(kind, size, radius, end) for end in ("low", "mean", "high"))
    return Value(mean=mean, low=low, high=high, unit="1/m", spread="lognormal", provenance=origin)


def _factor(kind: str, size: Mapping[str, Value], radius: float, end: str) -> float:
    """Resistance over resistivity where the sizes all stand at the end that makes it small or large. [1/m]"""
    more, less = end, _OPPOSITE[end]
    at = {name: getattr(value, more if name in ("spacing", "length") and kind + name != "cubelength" else less)
          for name, value in size.items()}  # fmt: skip
    if kind == "tube":
        half, depth = at["length"] / 2, at["depth"]
        dough: Solid = Roll(start=(-half, 0.0, 0.0), end=(half, 0.0, 0.0), radius=at["bore"] / 2)
        ends: tuple[tuple[Point, Point], ...] = tuple(
            ((side * half, 0.0, 0.0), (side * (half - depth), 0.0, 0.0)) for side in (-1, 1)
        )
        thin = at["bore"]
    else:
        top = at["height"] / 2
        dough = Block(centre=(0.0, 0.0, 0.0), size=(at["length"], at["width"], at["height"]))
        ends = tuple(
            ((side * at["spacing"] / 2, 0.0, top), (side * at["spacing"] / 2, 0.0, top - at["depth"]))
            for side in (-1, 1)
        )
        thin = min(at["width"], at["height"])
    return rods_resistance(dough, ends, radius, pitch=min(thin / _ACROSS, 2 * radius / _ROD))


def rods_resistance(dough: Solid, rods: tuple[tuple[Point, Point], ...], radius: float, *, pitch: float) -> float:
    """Give the resistance between two thick rods in a dough of 1 Ω·m.

    Parameters
    ----------
    dough : Solid
        The dough; its surface insulates.
    rods : pair of (start, end)
        Where the middle line of each rod begins and ends. [m]
    radius : float
        Of the rods. [m]
    pitch : float
        Edge of a cell. [m]

    Returns
    -------
    float
        Resistance over resistivity. [1/m]

    Examples
    --------
    >>> tube = Roll(start=(0.0, 0.0, 0.0), end=(0.06, 0.0, 0.0), radius=3e-3)
    >>> rods = (((0.0, 0.0, 0.0), (0.02, 0.0, 0.0)), ((0.06, 0.0, 0.0), (0.04, 0.0, 0.0)))
    >>> 0.02 / (math.pi * 3e-3**2) < rods_resistance(tube, rods, 1.5e-3, pitch=6e-4) < 0.02 / (math.pi * 1.5e-3**2)
    True
    """
    from lumped.conduction import FaceSystem, Lead, solve_ports  # the solver takes its time to come
    from lumped.shape import Piece, cells_of

    pieces = [Piece(name="dough", solid=dough, conductivity=1.0)]
    pieces += [Piece(name="rod", solid=Roll(start=a, end=b, radius=radius), conductivity=_METAL) for a, b in rods]
    cells = cells_of(pieces, [0] * len(pieces), pitch=pitch)
    system = FaceSystem(
        index=cells.index, body=cells.body, edges=cells.edges, conductance=cells.conductance,
        conductivity=cells.conductivity, origin=cells.origin, pitch=cells.pitch, share=cells.share,
    )  # fmt: skip
    leads = [Lead(name=str(k), body=0, points=np.array([a, b]), radius=radius / 3) for k, (a, b) in enumerate(rods)]
    return solve_ports(system, leads, port_rtol=1e-4).resistance("0", "1")
