"""The same table as in the drawing, in space: meshes of lumps, bodies of parts, wires laid over dough. Millimetres."""

import base64
from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import gaussian_filter1d, maximum_filter1d

from lumped.picture import THEMES, arrange, view_of
from lumped.picture.bodies import Body
from lumped.picture.meshes import lump_meshes
from lumped.picture.wires import Wire
from lumped.sculpt import Leg, Sculpture
from lumped.verdict import Verdict

__all__ = ["scene_of"]

Floats = NDArray[np.float64]
_LYING = 1.2  # mm; the middle of a wire above what it lies on
_HEM = 5.0  # mm of cloth round everything, as in the drawing


def scene_of(verdict: Verdict) -> dict[str, Any]:
    """Give what a turning view needs.

    Parameters
    ----------
    verdict : Verdict
        The judged sculpture.

    Returns
    -------
    dict
        `lumps` (colour, corners and triangles, packed), `parts` (kind, key, state, body, wires), `cloth` (middle, size
        and colour by theme). [mm]
    """
    arrangement = arrange(view_of(verdict), labels=False)
    sculpture, box = verdict.sculpture, arrangement.box.widened(_HEM)
    wires: dict[str, list[Wire]] = {}
    for wire in arrangement.wires:
        wires.setdefault(wire.leg.part, []).append(wire)
    states = {each.part.name: each.state for each in verdict.parts}
    return {
        "lumps": [
            {
                "name": mesh.name, "colour": mesh.colour,
                "points": _packed(1e3 * mesh.vertices, "f4"), "faces": _packed(mesh.triangles, "u4"),
            }
            for mesh in lump_meshes(sculpture)
        ],
        "parts": [_part(body, wires.get(body.part.name, []), sculpture, states) for body in arrangement.bodies],
        "cloth": {
            "middle": [(box.left + box.right) / 2, (box.near + box.far) / 2],
            "size": [box.right - box.left, box.far - box.near],
            "colours": {name: THEMES[name].cloth for name in ("light", "dark")},
        },
    }  # fmt: skip


def _part(body: Body, wires: list[Wire], sculpture: Sculpture, states: Mapping[str, str]) -> dict[str, Any]:
    """A part's body, standing on what is below it, and its wires."""
    corners = np.vstack([body.corners, body.centre])
    below = float(_tops(corners, sculpture).max()) if body.part.kind in ("motor", "lamp") else 0.0
    return {
        "name": body.part.name, "kind": body.part.kind, "key": body.part.key, "state": states[body.part.name],
        "centre": _rounded([*body.centre, below]), "size": _rounded(body.size), "turn": float(body.turn),
        "wires": [_wire(wire, sculpture) for wire in wires],
    }  # fmt: skip


def _wire(wire: Wire, sculpture: Sculpture) -> dict[str, Any]:
    leg = wire.leg
    hidden = [] if leg.entry is None or leg.tip is None else [1e3 * leg.entry, 1e3 * leg.tip]
    return {
        "leg": leg.name, "stiff": wire.stiff, "radius": float(1e3 * leg.gauge.equivalent_radius),
        "lies": [_rounded(point) for point in _laid(wire.points, leg, sculpture)],
        "hidden": [_rounded(point) for point in hidden],
    }  # fmt: skip


def _laid(points: Floats, leg: Leg, sculpture: Sculpture) -> Floats:
    """Lay a wire on the table and over the dough on its way, softly, and lead it to where it goes in."""
    tops = _tops(points, sculpture)
    if leg.entry is not None and len(points) > 2:
        end = 1e3 * float(leg.entry[2])
        near = np.linalg.norm(points - points[-1], axis=1) < 8.0
        tops[near] = np.minimum(tops[near], max(0.0, end - _LYING))
    heights = gaussian_filter1d(maximum_filter1d(tops, 5), 2.0, mode="nearest") + _LYING
    if leg.entry is not None:
        heights[-1] = 1e3 * float(leg.entry[2])
    return np.column_stack([points, heights])


def _tops(points: Floats, sculpture: Sculpture) -> Floats:
    """How high dough reaches at points on the table, (n, 2) mm. [mm]"""
    tops = np.zeros(len(points))
    for lump in sculpture.lumps:
        low, high = 1e3 * lump.solid.bounds()
        there = np.column_stack([points, np.full(len(points), (low[2] + high[2]) / 2)])
        inside = lump.solid.distance(1e-3 * there) < 0
        tops[inside] = np.maximum(tops[inside], high[2])
    return tops


def _rounded(numbers: Any) -> list[float]:
    return [round(float(each), 2) for each in numbers]


def _packed(numbers: Any, kind: str) -> str:
    return base64.b64encode(np.ascontiguousarray(numbers, dtype=f"<{kind}").tobytes()).decode()
