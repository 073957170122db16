"""`lumped trial RECIPE`: a one-minute go or no-go test of a batch."""

import argparse
from typing import Any

from lumped.cli.recipe import add_recipe, print_taught, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_title
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("trial", help=say("cli-trial"), description=say("cli-trial"))
    add_recipe(verb)
    verb.add_argument("--mould", metavar="MOULD", help=say("cli-trial-mould"))
    verb.add_argument("--lamp", metavar="LAMP", help=say("cli-trial-lamp"))
    verb.add_argument("--pack", metavar="PACK", help=say("cli-trial-pack"))
    verb.add_argument("--screws", metavar="GAUGE", help=say("cli-trial-screws"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Print what a test of a batch should show."""
    from lumped.app.trial import tried

    chosen = {name: each for name in ("mould", "lamp", "pack", "screws") if (each := getattr(said, name))}
    dough = recipe_named(said)
    found = tried(dough.kneading(), dough.shop, **chosen)
    if said.json:
        print_json(found.as_dict() | dough.as_dict())
        return 0
    print_unfit(dough)
    print_title(say("trial-title", title=found.title), invented=dough.recipe.invented)
    print_notes(say("heading-trial-needs"), found.needs)
    for words in found.words:
        print_line(words)
    print_line("")
    print_notes(say("heading-trial-steps"), found.steps, numbered=True)
    print_taught(dough)
    print_notes(say("heading-cautions"), found.cautions)
    return 0
