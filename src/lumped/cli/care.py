"""`lumped care RECIPE`: allergens, diets, what is dangerous to eat, what to mind."""

import argparse
from datetime import date
from pathlib import Path
from typing import Any

from lumped.cli.show import print_json, print_notes, print_table, print_title
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("care", help=say("cli-care"), description=say("cli-care"))
    verb.add_argument("recipe", type=Path, metavar="RECIPE", help=say("cli-recipe"))
    verb.add_argument("--age", type=float, default=2.0, metavar="YEARS", help=say("cli-care-age"))
    verb.add_argument("--dog", type=float, metavar="KG", help=say("cli-care-dog"))
    verb.add_argument("--on", type=date.fromisoformat, default=None, metavar="DAY", help=say("cli-care-on"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Print what to mind with a dough."""
    from lumped.app.care import care

    found = care(said.recipe, on=said.on or date.today(), age=said.age, dog=said.dog, labels=said.label)
    if said.json:
        print_json(found.as_dict())
        return 0
    print_title(found.title)
    rows = [
        (say(f"care-{where}"), "; ".join(f"{name} ({', '.join(keys)})" for name, keys in there.items()) or "–")
        for where, there in (("eu", found.allergens.eu), ("us", found.allergens.us), ("traces", found.allergens.traces))
    ]
    rows += [(diet, say("care-fits") if each.fits else each.why) for diet, each in found.diets.items()]
    print_table([say("column-care"), say("column-care-found")], rows)
    print_notes(say("heading-cautions"), [each.words for each in found.cautions])
    print_notes(say("heading-remarks"), [each.words for each in found.remarks])
    return 0
