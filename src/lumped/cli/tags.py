"""`lumped tags RECIPE`: labels for bags and trays."""

import argparse
from pathlib import Path
from typing import Any

from lumped.cli.moments import read_day
from lumped.cli.recipe import add_recipe, recipe_named
from lumped.cli.show import print_json, print_line, print_title
from lumped.texts import LANGUAGES, say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("tags", help=say("cli-tags"), description=say("cli-tags"))
    add_recipe(verb)
    verb.add_argument("--pdf", type=Path, metavar="FILE", help=say("cli-tags-pdf"))
    verb.add_argument("--paper", choices=("a4", "us-letter"), help=say("cli-paper"))
    verb.add_argument("--language", choices=tuple(LANGUAGES), default="en", help=say("cli-card-language"))
    verb.add_argument("--count", type=int, default=8, metavar="N", help=say("cli-tags-count"))
    verb.add_argument("--trays", type=int, default=1, metavar="N", help=say("cli-tags-trays"))
    verb.add_argument("--tare", default="", metavar="WEIGHT", help=say("cli-tags-tare"))
    verb.add_argument("--on", type=read_day, default=None, metavar="DAY", help=say("cli-tags-on"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Make labels, say what stands on them, and write them."""
    from lumped import app
    from lumped.app.tags import tags_of, write_tags

    if said.pdf is not None:
        app.ready_to_write(said.pdf, (".pdf",))
    dough = recipe_named(said)
    made = tags_of(
        dough, made_on=said.on, language=said.language, bags=said.count, trays=said.trays, tare=said.tare
    )  # fmt: skip
    if said.pdf is not None:
        write_tags(made, said.pdf, paper=app.load_settings({"paper": said.paper}).paper)
    if said.json:
        print_json(made.as_dict())
        return 0
    shown = made.shown
    print_title(f"{made.title}: {shown['what']}", invented=dough.recipe.invented)
    for words in (shown["not_food"], shown["careful"], shown["contains"], shown["traces"], shown["hash"]):
        if words:
            print_line(words)
    if said.pdf is not None:
        print_line(say("cli-written", file=str(said.pdf)))
    return 0
