"""`lumped card RECIPE`: a page to cook from, in one of four languages and any country's measures."""

import argparse
from datetime import date
from pathlib import Path
from typing import Any

from lumped.cli.moments import read_day
from lumped.cli.recipe import add_recipe, print_taught, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.texts import LANGUAGES, say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("card", help=say("cli-card"), description=say("cli-card"))
    add_recipe(verb)
    verb.add_argument("--pdf", type=Path, metavar="FILE", help=say("cli-card-pdf"))
    verb.add_argument("--picture", type=Path, metavar="FILE", help=say("cli-card-picture"))
    verb.add_argument("--paper", choices=("a4", "us-letter"), help=say("cli-paper"))
    verb.add_argument("--language", choices=tuple(LANGUAGES), default="en", help=say("cli-card-language"))
    verb.add_argument("--people", action="append", default=[], metavar="WHO", help=say("cli-card-people"))
    verb.add_argument("--measures", metavar="WHOSE", help=say("cli-card-measures"))
    verb.add_argument("--on", type=read_day, default=None, metavar="DAY", help=say("cli-card-on"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Make a card, print what stands on it, and write what was asked for."""
    from lumped import app
    from lumped.app.cards import card_of, write_card

    for path, endings in ((said.pdf, (".pdf",)), (said.picture, (".png",))):
        if path is not None:
            app.ready_to_write(path, endings)
    dough = recipe_named(said)
    made = card_of(
        dough, on=said.on or date.today(), language=said.language, measures=said.measures, people=said.people
    )  # fmt: skip
    paper = app.load_settings({"paper": said.paper}).paper
    write_card(made, pdf=said.pdf, picture=said.picture, paper=paper)
    if said.json:
        print_json(made.as_dict() | dough.as_dict())
        return 0
    shown = made.shown
    print_title(f"{made.title}: {shown['what']}")
    if shown["for_people"]:
        print_line(shown["for_people"])
        print_line("")
    print_table(shown["columns"], [tuple(row) for row in shown["rows"]])
    for heading in ("steps", "does", "trial", "careful"):
        print_notes(shown["headings"][heading], shown[heading], numbered=heading == "steps")
    print_notes(shown["headings"]["allergens"], [each for each in (shown["contains"], shown["traces"]) if each])
    print_line(" ".join((shown["code_words"], *shown["foot"])))
    print_taught(dough)
    for path in filter(None, (said.pdf, said.picture)):
        print_line(say("cli-written", file=str(path)))
    return 0
