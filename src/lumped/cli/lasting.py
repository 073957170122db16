"""`lumped dry`, `cool`, `refresh` and `keep`: how long a dough lasts."""

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.recipe import add_recipe, print_taught, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.drying import Dried
    from lumped.app.named import Named

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the command line."""
    dry = verbs.add_parser("dry", help=say("cli-dry"), description=say("cli-dry"))
    add_recipe(dry)
    dry.add_argument("--shape", default="roll", metavar="SHAPE", help=say("cli-dry-shape"))
    dry.add_argument("--thick", default="12 mm", metavar="LENGTH", help=say("cli-dry-thick"))
    dry.add_argument("--long", default="10 cm", metavar="LENGTH", help=say("cli-dry-long"))
    dry.add_argument("--wide", default="10 cm", metavar="LENGTH", help=say("cli-dry-wide"))
    dry.add_argument("--room", default="21 °C", metavar="TEMPERATURE", help=say("cli-dry-room"))
    dry.add_argument("--humidity", default="45 %", metavar="PERCENT", help=say("cli-dry-humidity"))
    dry.add_argument("--draught", default="quiet", metavar="DRAUGHT", help=say("cli-dry-draught"))
    dry.add_argument("--cover", default="open", metavar="COVER", help=say("cli-dry-cover"))
    dry.add_argument("--hours", type=float, default=24.0, metavar="HOURS", help=say("cli-dry-hours"))
    dry.add_argument("--picture", type=Path, metavar="FILE", help=say("cli-picture"))
    dry.add_argument("--theme", choices=("light", "dark", "print"), default="light", help=say("cli-theme"))
    dry.set_defaults(run=run_dry)
    cool = verbs.add_parser("cool", help=say("cli-cool"), description=say("cli-cool"))
    add_recipe(cool)
    cool.add_argument("--as", dest="form", metavar="WAY", help=say("cli-cool-as"))
    cool.add_argument("--thick", metavar="LENGTH", help=say("cli-cool-thick"))
    cool.add_argument("--mass", metavar="MASS", help=say("cli-cool-mass"))
    cool.add_argument("--across", default="18 cm", metavar="LENGTH", help=say("cli-cool-across"))
    cool.add_argument("--room", default="21 °C", metavar="TEMPERATURE", help=say("cli-dry-room"))
    cool.add_argument("--from", dest="beginning", metavar="TEMPERATURE", help=say("cli-cool-from"))
    cool.add_argument("--within", metavar="TIME", help=say("cli-cool-within"))
    cool.set_defaults(run=run_cool)
    again = verbs.add_parser("refresh", help=say("cli-refresh"), description=say("cli-refresh"))
    add_recipe(again, needed=False)
    again.add_argument("--weighed", required=True, metavar="MASS", help=say("cli-refresh-weighed"))
    again.add_argument("--now", required=True, metavar="MASS", help=say("cli-refresh-now"))
    again.set_defaults(run=run_refresh)
    keep = verbs.add_parser("keep", help=say("cli-keep"), description=say("cli-keep"))
    add_recipe(keep)
    keep.add_argument("--fridge", action="store_true", help=say("cli-keep-fridge"))
    keep.set_defaults(run=run_keep)
    for verb in (dry, cool, again, keep):
        verb.add_argument("--json", action="store_true", help=say("cli-json"))


def run_dry(said: argparse.Namespace) -> int:
    """Follow a drying piece, print it, and draw it if asked to."""
    from lumped.app import drying, maps, ready_to_write
    from lumped.quantities import parse_quantity

    if said.picture is not None:
        ready_to_write(said.picture, maps.PICTURES)
    where = drying.surroundings(room=said.room, humidity=said.humidity, draught=said.draught, cover=said.cover)
    sizes = {name: parse_quantity(getattr(said, key), "length")
             for name, key in (("thickness", "thick"), ("length", "long"), ("width", "wide"))}  # fmt: skip
    dough = recipe_named(said)
    found = drying.dried(dough, where, shape=said.shape, hours=said.hours, **sizes)
    if said.picture is not None:
        drying.draw_drying(found, said.picture, theme=said.theme)
    if said.json:
        print_json({"kind": "drying", "schema": 1} | found.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    _print_dried(found, dough)
    print_taught(dough)
    if said.picture is not None:
        print_line(say("cli-written", file=str(said.picture)))
    return 0


def _print_dried(found: "Dried", dough: "Named") -> None:
    from lumped.app.drying import drying_columns, drying_rows

    print_title(found.outlook.title, invented=dough.recipe.invented)
    for words in (found.piece, *found.words, ""):
        print_line(words)
    print_table(drying_columns(), drying_rows(found), whole=(0,))
    print_notes(say("heading-rest"), found.rest)


def run_cool(said: argparse.Namespace) -> int:
    """Tell how long a dough cools, or how to lay it out to be cool in time."""
    from lumped.app.cooling import cooled, in_time
    from lumped.quantities import parse_quantity

    def read(text: str | None, kind: str) -> float | None:
        return None if text is None else parse_quantity(text, kind)

    dough = recipe_named(said)
    where = {"across": parse_quantity(said.across, "length"), "room": parse_quantity(said.room, "temperature")}
    if said.within is not None:
        minutes = parse_quantity(said.within, "time") / 60
        found: Any = in_time(dough, minutes, said.form or "slab", **where)
    else:
        found = cooled(
            dough, said.form or "pot", mass=read(said.mass, "mass"), thickness=read(said.thick, "length"),
            beginning=read(said.beginning, "temperature"), **where,
        )  # fmt: skip
    if said.json:
        print_json({"kind": "cooling", "schema": 1} | found.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    print_title(found.title, invented=dough.recipe.invented)
    _print_told(found.words, dough)
    return 0


def _print_told(told: "Sequence[str]", dough: "Named | None") -> None:
    """Print sentences, and what the batches of a recipe taught."""
    more = ("",) if dough is not None and (dough.words or dough.left_out) else ()
    for words in (*told, *more):
        print_line(words)
    print_taught(dough)


def run_refresh(said: argparse.Namespace) -> int:
    """Tell what to knead into a dough that dried."""
    from lumped.app.refreshing import refreshed
    from lumped.quantities import parse_quantity

    before, now = (parse_quantity(text, "mass") for text in (said.weighed, said.now))
    dough = recipe_named(said) if said.recipe is not None else None
    found = refreshed(before, now, dough)
    if said.json:
        print_json({"kind": "refreshing", "schema": 1} | found.as_dict() | (dough.as_dict() if dough else {}))
        return 0
    if dough is not None and print_unfit(dough):
        print_line("")
    _print_told(found.words, dough)
    return 0


def run_keep(said: argparse.Namespace) -> int:
    """Tell what can grow in a dough."""
    from lumped.app.keeping import growth_columns, growth_rows, kept

    dough = recipe_named(said)
    found = kept(dough, fridge=said.fridge)
    if said.json:
        print_json({"kind": "keeping", "schema": 1} | found.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    print_title(found.title, invented=dough.recipe.invented)
    for words in (*found.words, ""):
        print_line(words)
    print_table(growth_columns(), growth_rows(found), numbers=(1,))
    print_taught(dough)
    return 0
