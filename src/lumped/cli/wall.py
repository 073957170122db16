"""`lumped wall RECIPE`: insulating enough for this? And `lumped what-if RECIPE`: one thing different."""

import argparse
from pathlib import Path
from typing import Any

from lumped.cli.recipe import add_recipe, print_taught, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the command line."""
    wall = verbs.add_parser("wall", help=say("cli-wall"), description=say("cli-wall"))
    add_recipe(wall)
    wall.add_argument("--thick", default="3 mm", metavar="LENGTH", help=say("cli-wall-thick"))
    wall.add_argument("--touch-cm2", type=float, default=4.0, metavar="AREA", help=say("cli-wall-touch"))
    wall.add_argument("--lamp", default="lamp-red", metavar="LAMP", help=say("cli-wall-lamp"))
    wall.add_argument("--beside", type=Path, metavar="RECIPE", help=say("cli-wall-beside"))
    wall.set_defaults(run=run_wall)
    change = verbs.add_parser("what-if", help=say("cli-what-if"), description=say("cli-what-if"))
    add_recipe(change)
    change.set_defaults(run=run_what_if)
    for verb in (wall, change):
        verb.add_argument("--json", action="store_true", help=say("cli-json"))


def run_wall(said: argparse.Namespace) -> int:
    """Judge a wall and print the verdict."""
    from lumped import app
    from lumped.quantities import parse_quantity

    thickness = parse_quantity(said.thick, "length")
    dough = recipe_named(said)
    found = app.wall_of(
        dough, thickness=thickness, area=said.touch_cm2 * 1e-4, lamp=said.lamp, beside=said.beside
    )  # fmt: skip
    if said.json:
        print_json({"kind": "wall", "schema": 1} | found.as_dict() | dough.as_dict())
        return 0
    if print_unfit(dough):
        print_line("")
    print_line(found.words)
    if found.lasting is not None:
        print_line(found.lasting.headline)
    print_line("")
    if found.lasting is not None:
        print_notes(say("heading-wall-lasts"), found.lasting.words)
    print_taught(dough)
    print_notes(say("heading-findings"), [say("wall-scene")])
    return 0


def run_what_if(said: argparse.Namespace) -> int:
    """Change one thing at a time and print what the resistivity does."""
    from lumped import app

    dough = recipe_named(said)
    found = app.what_if_of(dough)
    if said.json:
        changes = [each.as_dict() for each in found]
        print_json({"kind": "what-if", "schema": 1, "title": dough.recipe.title, "changes": changes} | dough.as_dict())
        return 0
    print_unfit(dough)
    print_title(say("what-if-title"))
    rows = [(each.words, say("what-if-factor", factor=each.factor.text())) for each in found]
    print_table([say("column-change"), say("column-factor")], rows)
    print_taught(dough)
    return 0
