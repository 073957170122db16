"""What hands do, step by step: shape, push in, switch on."""

from collections.abc import Iterable

import numpy as np

from lumped.sculpt import Leg, Lump, Nearness, Sculpture
from lumped.shape import Ball, Block, Disc, PathRoll, Ring, Roll
from lumped.texts import say

__all__ = ["push_steps", "shape_steps", "start_steps", "thicknesses"]

_MOST_NAMES = 6


def shape_steps(sculpture: Sculpture, near: Iterable[Nearness]) -> list[str]:
    """Say what to shape: lumps of one measure in one line, then gaps and what is pressed together.

    Parameters
    ----------
    sculpture : Sculpture
        What is built.
    near : iterable of Nearness
        Pairs of lumps that lie close.

    Returns
    -------
    list of str
    """
    groups: dict[tuple[object, ...], list[Lump]] = {}
    for lump in sculpture.lumps:
        groups.setdefault((lump.dough, *sorted(_measures(lump).items())), []).append(lump)
    lines = [
        say(
            f"paper-{_kind(group[0])}",
            names=_names([f"“{lump.name}”" for lump in group]),
            dough=group[0].dough,
            count=len(group),
            **_measures(group[0]),
        )
        for group in groups.values()
    ]
    for pair in near:
        first, second = (f"“{sculpture.lumps[k].name}”" for k in (pair.first, pair.second))
        apart = 1e3 * pair.gap.distance
        if apart > 0.05:
            lines.append(say("paper-gap", first=first, second=second, gap=f"{apart:.1f}"))
        elif apart < -0.05:
            lines.append(say("paper-pressed", first=first, second=second, depth=f"{-apart:.1f}"))
    return lines


def push_steps(sculpture: Sculpture) -> list[dict[str, object]]:
    """Say where each leg goes: for each part its name, title and a line for each leg; packs last.

    Parameters
    ----------
    sculpture : Sculpture
        What is built.
    """
    parts = sorted(sculpture.parts, key=lambda part: part.kind == "pack")
    return [
        {"name": part.name, "title": part.title, "legs": [_leg(leg, sculpture) for leg in part.legs]} for part in parts
    ]


def start_steps(sculpture: Sculpture) -> list[str]:
    """Say how it is switched on, and off."""
    lines = [
        say(f"paper-switch-{'open' if part.state == 'open' else 'closed'}", switch=f"“{part.name}”")
        for part in sculpture.parts
        if part.kind == "switch"
    ]
    if not sculpture.packs:
        return [*lines, say("paper-no-pack")]
    packs = _names([f"“{part.name}”" for part in sculpture.packs])
    pushed = all(leg.entry is not None for part in sculpture.packs for leg in part.legs if leg.name == "black")
    return [*lines, say("paper-last-wire" if pushed else "paper-last-any", pack=packs), say("paper-stop")]


def thicknesses(sculpture: Sculpture, *, most: int = 5) -> list[float]:
    """Give the different thicknesses of lumps, rolls first, at most `most`. [mm]"""
    rolls = {_thickness(lump) for lump in sculpture.lumps if isinstance(lump.solid, Roll | PathRoll)}
    others = {_thickness(lump) for lump in sculpture.lumps} - rolls
    return [size for size in (*sorted(rolls), *sorted(others)) if size <= 60][:most]


def _names(names: list[str]) -> str:
    if len(names) > _MOST_NAMES:
        return ", ".join(names[:_MOST_NAMES]) + ", …"
    if len(names) > 1:
        return say("paper-pair", first=", ".join(names[:-1]), second=names[-1])
    return names[0]


def _leg(leg: Leg, sculpture: Sculpture) -> str:
    name = say(f"paper-leg-{leg.name}")
    lines = [say("paper-leg", leg=name, place=leg.words)] if leg.entry is not None else []
    partners = [
        second if first == leg.node else first for first, second in sculpture.joined if leg.node in (first, second)
    ]
    for other in sculpture.legs:
        if other.node in partners:
            words = say(f"leg-{other.name}", part=other.part)
            lines.append(say("paper-leg-joined", leg=name, other=words))
    return "; ".join(lines) if lines else say("paper-leg-dangles", leg=name)


def _kind(lump: Lump) -> str:
    match lump.solid:
        case Ball():
            return "ball"
        case Roll():
            return "roll"
        case PathRoll():
            return "path"
        case Disc():
            return "disc"
        case Ring():
            return "ring"
    return "block"


def _thickness(lump: Lump) -> float:
    solid = lump.solid
    match solid:
        case Ball() | Roll() | PathRoll():
            return round(2e3 * solid.radius, 1)
    low, high = solid.bounds()
    return round(1e3 * float(high[2] - low[2]), 1)


def _measures(lump: Lump) -> dict[str, str]:
    """Measures of a lump as its sentence wants them. [mm]"""
    solid, sizes = lump.solid, {"thickness": _thickness(lump)}
    match solid:
        case Roll():
            sizes["length"] = 1e3 * float(np.linalg.norm(np.subtract(solid.end, solid.start)))
        case PathRoll():
            sizes["length"] = 1e3 * float(np.linalg.norm(np.diff(np.array(solid.points), axis=0), axis=1).sum())
        case Block():
            sizes["length"], sizes["width"] = 1e3 * solid.size[0], 1e3 * solid.size[1]
        case Disc():
            sizes["width"] = 2e3 * solid.radius
        case Ring():
            sizes["width"], sizes["hole"] = 2e3 * solid.outer, 2e3 * solid.inner
    return {name: f"{size:.4g}" for name, size in sizes.items()} | {"kind": _kind(lump)}
