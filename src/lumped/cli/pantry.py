"""`lumped pantry`: the ingredients, or one of them with the source of each figure."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.show import console, print_json, print_line, print_notes, print_table, print_title
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.pantry import Shown

__all__ = ["add_to"]
_ROOM_FOR_KEYS = 100  # columns


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("pantry", help=say("cli-pantry"), description=say("cli-pantry"))
    verb.add_argument("name", nargs="?", metavar="NAME", help=say("cli-pantry-name"))
    verb.add_argument("--role", metavar="ROLE", help=say("cli-pantry-role"))
    verb.add_argument("--region", metavar="REGION", help=say("cli-pantry-region"))
    verb.add_argument("--without", action="append", default=[], metavar="CLASS", help=say("cli-pantry-without"))
    verb.add_argument("--diet", action="append", default=[], metavar="DIET", help=say("cli-pantry-diet"))
    verb.add_argument("--free-of", action="append", default=[], metavar="ALLERGEN", help=say("cli-pantry-free-of"))
    verb.add_argument("--words", default="", metavar="TEXT", help=say("cli-pantry-words"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Print the list, or one ingredient."""
    from lumped.app.pantry import listed, looked_up

    if said.name is None:
        found = listed(
            role=said.role, region=said.region, without=said.without, diets=said.diet, free_of=said.free_of,
            words=said.words, labels=said.label,
        )  # fmt: skip
        if said.json:
            print_json(found.as_dict())
            return 0
        if not found.ingredients:
            print_line(say("larder-none"))
            return 0
        print_title(say("larder-title", count=len(found.ingredients)))
        columns = ("ingredient", "roles", "allergens", "traces", *(("price", "sold") if said.region else ()))
        headings = [say("column-key"), *(say(f"larder-column-{each}") for each in columns)]
        if said.region and console().width < _ROOM_FOR_KEYS:  # its name names it as well
            print_table(headings[1:], [row[1:] for row in found.rows])
        else:
            print_table(headings, found.rows, whole=(0,))
        return 0
    shown = looked_up(said.name, region=said.region, labels=said.label)
    if said.json:
        print_json(shown.as_dict())
        return 0
    _print_one(shown)
    return 0


def _print_one(shown: "Shown") -> None:
    from lumped.app.larder import quantity_words

    print_title(f"{shown.ingredient.name} ({shown.ingredient.key})")
    for words in (*shown.words, ""):
        print_line(words)
    figures = [(quantity_words(each["quantity"]), *(each[key] for key in ("figure", "status", "source")))
               for each in shown.figures]  # fmt: skip
    _table(("row", "value", "status", "source"), figures)
    _table(("measure", "method", "weighs", "status"), shown.weights)
    _table(("region", "price", "packs", "sold"), shown.prices)
    if any(each["dated"] for each in shown.offers):
        print_line(say("larder-prices-dated", dated=min(each["dated"] for each in shown.offers if each["dated"])))
        print_line("")
    _table(("language", "ingredient"), shown.names)
    print_notes(say("larder-heading-assumed"), shown.ingredient.assumed)
    print_notes(say("heading-cautions"), shown.cautions)
    print_notes(say("heading-remarks"), shown.remarks)


def _table(columns: tuple[str, ...], rows: Any) -> None:
    if rows:
        print_table([say(f"larder-column-{each}") for each in columns], rows)
