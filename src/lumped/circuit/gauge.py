"""Leads: what is pushed into the dough, as a plating over a core."""

import math
from collections.abc import Mapping
from dataclasses import dataclass

from lumped.reference import handbook

__all__ = ["Gauge", "gauge"]

# Radius of the round rod with the same far field, from the conformal map of the outside of the section: a square of
# side s gives Γ(1/4)²/(4·π^1.5)·s, a thin strip of width w gives w/4.
SQUARE = math.gamma(0.25) ** 2 / (4 * math.pi**1.5)
STRIP = 0.25


@dataclass(frozen=True, slots=True, kw_only=True)
class Gauge:
    """A kind of lead.

    Parameters
    ----------
    key, name : str
        Key in the handbook, and name in plain words.
    equivalent_radius : float
        Radius of the round rod that has the same resistance to the dough far from it. [m]
    perimeter : float
        Length round its section; times the depth, what the dough wets. [m]
    section : float
        Area of its section. [m²]
    plating, core : str
        Keys in the handbook's table of metals; the same where it is not plated.
    plating_thickness : float
        Thickness of the plating; 0 where it is not plated. [m]

    Examples
    --------
    >>> leg = gauge("leg-tinned-steel")
    >>> leg.plating, leg.core, round(leg.equivalent_radius * 1000, 4), round(leg.wetted_area(0.010) * 1e4, 3)
    ('tin', 'iron', 0.2951, 0.2)
    """

    key: str
    name: str
    equivalent_radius: float
    perimeter: float
    section: float
    plating: str
    core: str
    plating_thickness: float = 0.0

    def wetted_area(self, depth: float) -> float:
        """Give the area that dough wets of a lead pushed in to a depth; the tip is left out. [m² at m]"""
        return self.perimeter * depth


def gauge(key: str) -> Gauge:
    """Look up a gauge.

    Parameters
    ----------
    key : str
        Key in the handbook's table of gauges.

    Returns
    -------
    Gauge
        The gauge.

    Examples
    --------
    >>> gauge("nail-iron-3mm").equivalent_radius
    0.0015
    """
    entry = handbook().entry("gauges", key)
    size = {quantity: row.value.mean for quantity, row in entry.rows.items()}
    radius, perimeter, section = _section(entry.facts["shape"], size)
    return Gauge(
        key=key, name=entry.name, equivalent_radius=radius, perimeter=perimeter, section=section,
        plating=entry.facts["plating"], core=entry.facts["core"], plating_thickness=size.get("plating_thickness", 0.0),
    )  # fmt: skip


def _section(shape: str, size: Mapping[str, float]) -> tuple[float, float, float]:
    """Give equivalent radius, perimeter and area of a section. [m, m, m²]"""
    if shape == "round":
        radius = size["diameter"] / 2
        return radius, 2 * math.pi * radius, math.pi * radius**2
    if shape == "square":
        return SQUARE * size["side"], 4 * size["side"], size["side"] ** 2
    if shape == "strip":
        width, thickness = size["width"], size["thickness"]
        return STRIP * width, 2 * (width + thickness), width * thickness
    raise ValueError(f"no such section: {shape}")
