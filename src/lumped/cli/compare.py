"""`lumped beside RECIPE RECIPE …`: recipes, or revisions of one, side by side."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.notebook_opening import add_common, settings_of
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.comparing import Comparison

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("beside", help=say("cli-beside"), description=say("cli-beside-about"))
    verb.add_argument("recipes", nargs="+", metavar="RECIPE", help=say("cli-beside-recipe"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-region"))
    verb.add_argument("--batch", action="append", default=[], metavar="BATCH", help=say("cli-dough-batch"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    add_common(verb, default=None)
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Put recipes side by side and print them."""
    from lumped.app.beside import beside

    found = beside(said.recipes, settings=settings_of(said), region=said.region, labels=said.label,
                   batches=said.batch)  # fmt: skip
    if said.json:
        print_json(found.as_dict())
        return 0
    _print_comparison(found)
    return 0


def _print_comparison(found: "Comparison") -> None:
    from lumped.app.beside import amount_rows, outcome_rows, shared_notes, side_names

    for words in found.unfit:
        print_line(words)
    print_title(say("beside-title"))
    for heading, rows in (("column-goes-in", amount_rows(found)), ("column-comes-out", outcome_rows(found))):
        print_table([say(heading), *side_names(found)], [(row.words, *row.cells) for row in rows])
    print_notes(say("heading-batches"), found.taught)
    print_notes(say("heading-findings"), shared_notes(found))
    print_notes(say("heading-left-out"), found.left_out)
