"""How long a dough lasts, as a page shows it: drying, refreshing, cooling, keeping, and where each stands written.

Each answer takes a recipe and what somebody wrote; figures come as text, such as "12 mm" or a bare "12".
"""

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given
from lumped.app.named import named_in
from lumped.app.sources import told_of

if TYPE_CHECKING:
    from lumped.app.drying import Dried
    from lumped.quantities import Provenance, Value

__all__ = ["cooled_told", "dried_told", "kept_told", "refreshed_told"]


def dried_told(
    given: Given, *, shape: str, thick: str, cover: str, room: str, humidity: str, draught: str, hours: str
) -> dict[str, Any]:
    """Follow a piece of a dough through its hours.

    Parameters
    ----------
    given : Given
        The recipe.
    shape, cover, draught : str
        Words of `app.drying.SHAPES`, and of the engine's covers and draughts.
    thick, room, humidity, hours : str
        Such as "12 mm", "21 °C", "45 %", "24".

    Returns
    -------
    dict
        `drawings` by theme, `words`, `rest`, `columns` and `rows` of the table, `title`, `sources`.

    Raises
    ------
    RecipeError, InputError, SolverError
        If the recipe, the piece, the room or the time can't be, or it can't be followed so long.
    """
    from lumped.app.drying import dried, drying_columns, drying_rows, surroundings
    from lumped.picture.drying_picture import drying_svgs
    from lumped.quantities import with_unit

    where = surroundings(room=with_unit(room, "°C"), humidity=humidity, draught=draught, cover=cover)
    found = dried(named_in(given), where, shape=shape, thickness=_read(thick, "length", "mm"),
                  hours=_read(hours, "time", "h") / 3600)  # fmt: skip
    drawings = drying_svgs(found.outlook, ("light", "dark"), hours=found.hours, told=False)
    return {
        "drawings": {f"dough-{theme}": drawing for theme, drawing in drawings.items()},
        "words": list(found.words), "rest": list(found.rest),
        "columns": list(drying_columns()), "rows": drying_rows(found), "sources": _sources_of(found),
    }  # fmt: skip


def _sources_of(found: "Dried") -> dict[str, Any]:
    from lumped.dough.lasting.outlook import BELIEVED
    from lumped.reference import handbook
    from lumped.texts import say

    out = found.outlook
    open_in = [(say(f"web-open-dry-{name}"), handbook().value(*row)) for name, row in BELIEVED.items()]
    open_in.append((say("web-open-dry-air-speed"), out.where.air_speed))
    rest = [(say("web-time-fresh"), out.fresh), (say("web-time-rest-share"), out.rest)]
    return {
        "time-dry": told_of(say("web-time-dry"), out.provenance, open_in, note=say("web-time-dry-note")),
        "time-rest": told_of(say("heading-rest"), out.provenance, rest, note=say("web-time-rest-note")),
    }  # fmt: skip


def refreshed_told(given: Given, weighed: str, now: str) -> dict[str, Any]:
    """Tell what to knead into a dough that dried: `words` and `sources`.

    Parameters
    ----------
    given : Given
        The recipe.
    weighed, now : str
        Its weight when fresh and today, such as "512 g".

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be, or the weights can't be.
    """
    from lumped.app.refreshing import refreshed
    from lumped.texts import say

    before, after = (_read(each, "mass", "g") for each in (weighed, now))
    found = refreshed(before, after, named_in(given))
    worse = [] if found.worse is None else [(say("web-time-worse"), found.worse)]
    origin = found.refresh.rest.provenance
    told = told_of(say("web-time-refresh"), origin, worse, note=say("web-time-refresh-note"))
    return {"words": list(found.words), "sources": {"time-refresh": told}}


def cooled_told(given: Given, *, form: str, thick: str, mass: str, room: str) -> dict[str, Any]:
    """Tell how long a dough stays too hot for hands: `hot`, `words`, `sources`.

    Parameters
    ----------
    given : Given
        The recipe.
    form : str
        "pot", "slab" or "ball".
    thick, mass : str
        How thick it lies, and how much it is; "" for what is usual, and for the whole recipe.
    room : str
        Temperature of the room.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be, or there is no such piece or room.
    """
    from lumped.app.cooling import cooled
    from lumped.texts import say

    found = cooled(
        named_in(given), form, room=_read(room, "temperature", "°C"),  # type: ignore[arg-type]
        thickness=_read(thick, "length", "mm") if thick.strip() and form != "pot" else None,
        mass=_read(mass, "mass", "g") if mass.strip() and form == "pot" else None,
    )  # fmt: skip
    if found.clock is None:
        return {"hot": False, "words": list(found.words), "sources": {}}
    clock = found.clock
    open_in = [(say("web-time-hot"), clock.beginning), (say("web-time-safe"), clock.safe)]
    told = told_of(say("web-time-cool"), clock.middle.provenance, open_in, note=say("web-time-cool-note"))
    return {"hot": True, "words": list(found.words), "sources": {"time-cool": told}}


def kept_told(given: Given, where: str) -> dict[str, Any]:
    """Tell who can grow in a dough, in the room or in the fridge.

    Parameters
    ----------
    given : Given
        The recipe.
    where : str
        "room" or "fridge".

    Returns
    -------
    dict
        `words` without how wet and sour it is, which stands in `figures`; the `caveat`,
        `columns` and `rows` of the table, `figures` and `sources`.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be.
    """
    from lumped.app.keeping import growth_columns, growth_rows, kept
    from lumped.quantities import Provenance
    from lumped.texts import say

    found = kept(named_in(given), fridge=where == "fridge")
    needs = [each.group.activity for each in found.keeping.growths]
    figures = {
        "activity": (found.activity, found.activity.provenance, "web-source-chain"),
        "ph": (found.ph, found.ph.provenance, "web-source-chain"),
        "growth": (None, Provenance.of([each.provenance for each in needs]), "web-time-growth-note"),
        "habit": (None, found.habit.provenance, "web-time-habit-note"),
    }  # fmt: skip
    return {
        "words": list(found.words[1:-1]), "caveat": found.words[-1],
        "columns": list(growth_columns()), "rows": growth_rows(found),
        "figures": [(f"time-{key}", say(f"web-time-{key}"), say("web-source-ask") if value is None else value.text())
                    for key, (value, _, _) in figures.items()],
        "sources": dict(_told_figures(figures.items())),
    }  # fmt: skip


def _told_figures(
    figures: "Iterable[tuple[str, tuple[Value | None, Provenance, str]]]",
) -> Iterator[tuple[str, dict[str, Any]]]:
    from lumped.texts import say

    for key, (_, origin, note) in figures:
        yield f"time-{key}", told_of(say(f"web-time-{key}"), origin, note=say(note))


def _read(text: str, kind: str, unit: str) -> float:
    from lumped.quantities import parse_quantity, with_unit

    return parse_quantity(with_unit(text, unit), kind)
