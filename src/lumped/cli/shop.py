"""`lumped shop RECIPE… --people "28 of 9 in pairs" --region japan`: whole packets for several doughs together."""

import argparse
from typing import TYPE_CHECKING, Any

from lumped.cli.recipe import add_recipes, print_unfit, recipes_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.workshop.shopping import Shopping

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("shop", help=say("cli-shop"), description=say("cli-shop"))
    add_recipes(verb, words=say("cli-recipe"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-make-region"))
    verb.add_argument("--people", action="append", default=[], metavar="WHO", help=say("cli-make-people"))
    verb.add_argument("--mass", action="append", default=[], metavar="MASS", help=say("cli-shop-mass"))
    verb.add_argument("--have", action="append", default=[], metavar="WHAT", help=say("cli-shop-have"))
    verb.add_argument("--little-over", action="store_true", help=say("cli-shop-little-over"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Make a shopping list and print it."""
    from lumped.app.making import shopping_for

    together = recipes_named(said)
    found = shopping_for(
        together, said.region, people=said.people, masses=said.mass, have=said.have, little_over=said.little_over
    )  # fmt: skip
    if said.json:
        print_json(found.as_dict() | together.as_dict())
        return 0
    print_unfit(together)
    _print_shopping(found, little_over=said.little_over)
    print_notes(say("heading-left-out"), together.left_out)
    return 0


def _print_shopping(found: "Shopping", *, little_over: bool) -> None:
    from lumped.app import shopping_words as told

    print_title(told.shopping_title(found))
    print_line(told.dough_words(found))
    print_line("")
    for place, lines in told.places(found):
        print_line(place)
        print_table(told.shop_headings(found), told.shop_rows(lines), numbers=(2, 4, 5))
    if tapped := told.tap_words(found):
        print_line(tapped)
    print_line(told.sum_words(found))
    print_line("")
    print_notes(say("heading-hints"), found.hints)
    other = () if little_over else (say("cli-shop-least"),)
    print_notes(say("heading-findings"), [*told.used_words(found, little_over=little_over), *other])
