"""`lumped dough RECIPE`: what a dough does, from the kitchen scale to the resistivity, and the reasons between."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough import Dough

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("dough", help=say("cli-dough"), description=say("cli-dough"))
    verb.add_argument("recipe", type=Path, metavar="RECIPE", help=say("cli-recipe"))
    verb.add_argument("--batch", type=Path, action="append", default=[], metavar="FILE", help=say("cli-batch"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Work out a recipe and print it."""
    from lumped import app

    dough = app.dough(said.recipe, batches=said.batch, labels=said.label)
    if said.json:
        print_json(dough.as_dict())
        return 0
    print_title(dough.name)
    _print_what_it_does(dough)
    print_table([say("column-step"), say("column-figure")], [(step.words, step.value.text()) for step in dough.reasons])
    print_notes(say("heading-findings"), dough.notes)
    print_notes(say("heading-narrower"), [
        say("dough-influence", share=f"{100 * each.share:.0f}", words=each.words, factor=f"{each.factor_left:.2g}")
        for each in dough.influences
    ])  # fmt: skip
    print_notes(say("heading-cautions"), (*dough.cautions, say("caution-rules")))
    return 0


def _print_what_it_does(dough: "Dough") -> None:
    """The answers first: carries or blocks, feel, keeping."""
    line = "dough-carries" if dough.conducts else "dough-blocks"
    print_line(say(line, resistivity=dough.resistivity.text(), cm=dough.resistivity_ohm_cm.text()))
    if dough.feel is not None:
        print_line(dough.feel.words)
    facts = {each.key: each.value.text() for each in dough.facts}
    if facts:
        print_line(say("dough-facts", activity=facts["water_activity"], ph=facts["ph"], density=facts["density"]))
    print_line("")
