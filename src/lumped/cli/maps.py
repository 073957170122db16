"""`lumped salt RECIPE` and `lumped mix RECIPE`: what a recipe could be, as a row and as a triangle."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.recipe import add_recipe, print_taught, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.maps import MixMap
    from lumped.dough.salting import Salting

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the command line."""
    salt = verbs.add_parser("salt", help=say("cli-salt"), description=say("cli-salt"))
    add_recipe(salt)
    salt.add_argument("--of", metavar="INGREDIENT", help=say("cli-salt-of"))
    salt.set_defaults(run=run_salt)
    mix = verbs.add_parser("mix", help=say("cli-mix"), description=say("cli-mix"))
    add_recipe(mix)
    mix.add_argument("--of", action="append", default=[], metavar="INGREDIENT", help=say("cli-mix-of"))
    mix.add_argument("--show", default="resistivity", metavar="PROPERTY", help=say("cli-mix-show"))
    mix.add_argument("--whole", action="store_true", help=say("cli-mix-whole"))
    mix.set_defaults(run=run_mix)
    for verb in (salt, mix):
        verb.add_argument("--region", metavar="REGION", help=say("cli-region"))
        verb.add_argument("--picture", type=Path, metavar="FILE", help=say("cli-picture"))
        verb.add_argument("--theme", choices=("light", "dark", "print"), default="light", help=say("cli-theme"))
        verb.add_argument("--json", action="store_true", help=say("cli-json"))


def run_salt(said: argparse.Namespace) -> int:
    """Work a recipe out with all amounts of its salt, print it, and draw it if asked to."""
    from lumped.app import maps, ready_to_write

    if said.picture is not None:
        ready_to_write(said.picture, maps.PICTURES)
    dough = recipe_named(said)
    row = maps.salt_row(dough, salt=said.of, region=said.region)
    if said.picture is not None:
        maps.draw_salting(row, said.picture, theme=said.theme)
    if said.json:
        print_json(row.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    _print_row(row)
    print_taught(dough)
    if said.picture is not None:
        print_line(say("cli-written", file=str(said.picture)))
    return 0


def run_mix(said: argparse.Namespace) -> int:
    """Map three ingredients of a recipe, print what matters, and draw it if asked to."""
    from lumped.app import maps, ready_to_write

    if said.picture is not None:
        ready_to_write(said.picture, maps.PICTURES)
    dough = recipe_named(said)
    found = maps.mixes(dough, said.of, said.show, whole=said.whole, region=said.region)
    if said.picture is not None:
        maps.draw_map(found, said.picture, theme=said.theme)
    if said.json:
        print_json(found.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    _print_map(found)
    print_taught(dough)
    if said.picture is not None:
        print_line(say("cli-written", file=str(said.picture)))
    return 0


def _print_row(row: "Salting") -> None:
    from lumped.dough.safety import caution

    print_title(say("salt-picture-title", title=row.recipe.title, name=row.name), invented=row.recipe.invented)
    shown = [say(f"property-{key.replace('_', '-')}") for key in row.bands]
    print_table([row.name, say("column-share"), *shown], row.cells(), numbers=(0, 1))
    print_notes(say("heading-findings"), [*row.sentences(), say("salt-keeping"), *_remembered(row.money)])
    print_notes(say("heading-cautions"), [caution(key).brief for key in ("salt-skin", "rules")])


def _print_map(found: "MixMap") -> None:
    print_title(say("map-title", title=found.recipe.title, shown=found.shown.words), invented=found.recipe.invented)
    headings = ["", *(say("map-side", name=found.shop[key].name) for key in found.corners), found.shown.words]
    print_table(headings, _mixes(found), numbers=(1, 2, 3, 4), whole=(0,))
    against = [
        say("map-against", reason=found.words(reason), share=f"{100 * (margin > 0).mean():.0f}")
        for reason, margin in found.reasons.items()
        if (margin > 0).any()
    ]
    free = say("map-feasible", share=f"{100 * found.feasible.mean():.0f}")
    print_notes(say("heading-against"), [free, *against])
    print_notes(say("heading-findings"), [say("map-middle"), *_remembered(found.money)])


def _mixes(found: "MixMap") -> list[tuple[str, ...]]:
    """The recipe, and the lowest and the highest of the mixes that nothing stands against."""
    rows = [(say("map-row-recipe"), found.point, found.here)]
    if found.extremes is not None:
        least, most = found.extremes
        rows += [(say("map-row-least"), found.shares[least], float(found.values[least])),
                 (say("map-row-most"), found.shares[most], float(found.values[most]))]  # fmt: skip
    return [(words, *(f"{1e3 * found.total * share:.0f}" for share in shares), found.shown.text(value, found.money))
            for words, shares, value in rows]  # fmt: skip


def _remembered(money: str) -> list[str]:
    return [say("map-prices", money=money)] if money else []
