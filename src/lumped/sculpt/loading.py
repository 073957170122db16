"""From a sculpture file to a sculpture on the table."""

from collections.abc import Mapping
from pathlib import Path

from lumped.circuit import Gauge, gauge
from lumped.documents import is_there
from lumped.dough import Dough, knead, measured_dough, read_recipe, unknown_dough
from lumped.errors import SculptureError
from lumped.pantry import Pantry
from lumped.reference import handbook
from lumped.sculpt.legs import place_leg
from lumped.sculpt.lumps import place_lumps
from lumped.sculpt.model import DoughEntry, PartEntry, SculptureFile
from lumped.sculpt.reading import nearest_remedy, read_sculpture_file
from lumped.sculpt.scene import PART_TABLES, Leg, Look, Lump, Part, PartKind, Sculpture
from lumped.texts import say

__all__ = ["LEG_LIMIT", "build_sculpture", "read_sculpture"]

LEG_LIMIT = 200
_STATES: dict[PartKind, tuple[str, ...]] = {"switch": ("open", "closed"), "pack": ("fresh", "tired")}


def read_sculpture(path: Path, shop: Pantry | None = None) -> Sculpture:
    """Read a sculpture file and put it on the table.

    Parameters
    ----------
    path : Path
        The TOML file.
    shop : Pantry, optional
        The ingredients that its recipes may name; the handbook's.

    Returns
    -------
    Sculpture

    Raises
    ------
    SculptureError, RecipeError
        If something can't be read or can't exist, with file, key, value and remedy.
    """
    return build_sculpture(read_sculpture_file(path), path, shop)


def build_sculpture(file: SculptureFile, path: Path, shop: Pantry | None = None) -> Sculpture:
    """Put the contents of a sculpture file on the table.

    Parameters
    ----------
    file : SculptureFile
        The checked contents.
    path : Path
        Where they come from: recipes are looked for beside it, messages name it.
    shop : Pantry, optional
        The ingredients that its recipes may name; the handbook's.

    Returns
    -------
    Sculpture
    """
    lumps = place_lumps(file.lumps, str(path))
    by_name = {lump.name: lump for lump in lumps}
    parts = tuple(_part(entry, by_name, str(path)) for entry in file.parts)
    if sum(len(part.legs) for part in parts) > LEG_LIMIT:
        count = 2 * len(parts)
        raise SculptureError("sculpture-leads", file=str(path), count=count, limit=LEG_LIMIT)
    nodes = {leg.node for part in parts for leg in part.legs}
    for pair in file.joined:
        for leg in pair:
            if leg not in nodes:
                raise SculptureError("sculpture-joined", file=str(path), leg=leg)
        if pair[0] == pair[1]:
            raise SculptureError("sculpture-joined-self", file=str(path), leg=pair[0])
    return Sculpture(
        title=file.title, story=file.story.strip(), invented=file.invented, path=path,
        doughs={name: _dough(name, entry, path, shop) for name, entry in file.doughs.items()},
        looks={name: Look(colour=entry.colour, mark=entry.mark) for name, entry in file.doughs.items()},
        lumps=lumps, parts=parts, joined=tuple(dict.fromkeys(tuple(sorted(pair)) for pair in file.joined)),  # type: ignore[misc]
    )  # fmt: skip


def _dough(name: str, entry: DoughEntry, path: Path, shop: Pantry | None) -> Dough:
    if entry.recipe is not None:
        recipe = path.parent / entry.recipe
        if not is_there(recipe) and is_there(path.parent / recipe.name):
            recipe = path.parent / recipe.name  # both were put into one folder
        if not is_there(recipe):
            raise SculptureError(
                "sculpture-recipe", file=str(path), dough=name, recipe=entry.recipe, folder=str(recipe.parent)
            )
        return knead(read_recipe(recipe, shop), shop)
    if entry.unknown is not None:
        return unknown_dough(entry.unknown)
    assert entry.resistivity_ohm_m is not None
    assert entry.measured_by is not None
    return measured_dough(
        entry.resistivity_ohm_m, entry.measured_by, low=entry.low_ohm_m, high=entry.high_ohm_m, name=name
    )


def _part(entry: PartEntry, lumps: Mapping[str, Lump], file: str) -> Part:
    kind, key = _kind_and_key(entry, file)
    row = handbook().entry(PART_TABLES[kind], key)
    legs = (row.facts["legs"]["plus"], row.facts["legs"]["minus"])
    if entry.state is not None and entry.state not in _STATES.get(kind, ()):
        states = _STATES.get(kind)
        remedy = say("remedy-choices", choices=", ".join(states)) if states else say("document-remedy-extra")
        raise SculptureError("sculpture-state", file=file, name=entry.name, state=entry.state, kind=kind, remedy=remedy)
    for leg in entry.legs:
        if leg not in legs:
            known = ", ".join(legs)
            raise SculptureError("sculpture-no-leg", file=file, name=entry.name, leg=leg, kind=kind, legs=known)
    wire = _gauge(entry.leads or row.facts["gauge"], entry.name, file)
    first, second = (_leg(entry, leg, wire, lumps, file) for leg in legs)
    return Part(
        name=entry.name, key=key, kind=kind, title=row.name,
        legs=(first, second), state=entry.state or "", fuse=entry.fuse,
    )  # fmt: skip


def _kind_and_key(entry: PartEntry, file: str) -> tuple[PartKind, str]:
    """Find a part by its key, or by its name as `lumped parts` prints it."""
    known: dict[str, tuple[PartKind, str]] = {}
    for kind, table in PART_TABLES.items():
        for key in handbook().keys(table):
            if handbook().entry(table, key).facts.get("kind") == kind:
                known |= {key: (kind, key), handbook().name(table, key): (kind, key)}
    if entry.part in known:
        return known[entry.part]
    remedy = nearest_remedy(entry.part, known)
    raise SculptureError("sculpture-no-part", file=file, name=entry.name, part=entry.part, remedy=remedy)


def _gauge(key: str, name: str, file: str) -> Gauge:
    if key not in handbook().keys("gauges"):
        remedy = nearest_remedy(key, handbook().keys("gauges"))
        raise SculptureError("sculpture-no-gauge", file=file, name=name, gauge=key, remedy=remedy)
    return gauge(key)


def _leg(entry: PartEntry, leg: str, wire: Gauge, lumps: Mapping[str, Lump], file: str) -> Leg:
    if leg not in entry.legs:
        raise SculptureError("sculpture-leg-missing", file=file, leg=f"{leg} leg", name=entry.name)
    place = entry.legs[leg]
    ends = place_leg(place, lumps, who=f"{entry.name}, {leg}", file=file)
    words = place if isinstance(place, str) else f"at {place.at_mm} mm"
    entry_point, tip = ends if ends is not None else (None, None)
    return Leg(part=entry.name, name=leg, gauge=wire, entry=entry_point, tip=tip, words=words)
