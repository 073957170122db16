"""`lumped make RECIPE --people "28 of 9 in pairs"`: batches in grams and measures, times, cost."""

import argparse
from typing import TYPE_CHECKING, Any

from lumped.cli.recipe import add_recipe, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.workshop import Making

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("make", help=say("cli-make"), description=say("cli-make-about"))
    add_recipe(verb)
    verb.add_argument("--people", action="append", default=[], metavar="WHO", help=say("cli-make-people"))
    verb.add_argument("--mass", metavar="MASS", help=say("cli-make-mass"))
    verb.add_argument("--pot", metavar="VOLUME", help=say("cli-make-pot"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-make-region"))
    verb.add_argument("--measures", metavar="MEASURES", help=say("cli-make-measures"))
    verb.add_argument("--within", metavar="TIME", help=say("cli-make-within"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Plan making a dough and print it."""
    from lumped.app.making import make_of

    dough = recipe_named(said)
    made = make_of(
        dough, people=said.people, mass=said.mass, pot=said.pot, region=said.region, measures=said.measures,
        within=said.within,
    )  # fmt: skip
    if said.json:
        print_json(made.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    _print_making(made)
    print_notes(say("heading-left-out"), dough.left_out)
    return 0


def _print_making(made: "Making") -> None:
    from lumped.app import making_words as told

    print_title(told.making_title(made))
    for sentence in (*told.party_words(made), *made.holding, told.mass_words(made), *told.pot_words(made), ""):
        print_line(sentence)
    headings, rows = told.batch_rows(made)
    print_table(headings, rows, numbers=(1, 3))
    if shift := told.shift_words(made):
        print_line(shift)
        print_line("")
    print_table([say("column-work"), say("making-column-time")], told.work_rows(made))
    print_line(told.ready_words(made))
    print_line("")
    if made.within is not None:
        _print_in_time(made, f"{made.within / 60:.0f}")
    elif made.waits:
        print_table([say("column-cooling"), say("column-safe"), say("column-all-ready")], told.cooling_rows(made))
    print_notes(say("heading-cost"), list(told.cost_words(made)))
    print_notes(say("heading-cautions"), [each.brief for each in made.cautions])


def _print_in_time(made: "Making", minutes: str) -> None:
    from lumped.app.making_words import in_time_rows, in_time_words

    print_line(say("heading-in-time", minutes=minutes))
    print_line("")
    headings = [say("column-way"), say("column-all-ready"), say("column-in-time", minutes=minutes)]
    print_table(headings, in_time_rows(made))
    print_notes(say("heading-findings"), list(in_time_words(made)))
