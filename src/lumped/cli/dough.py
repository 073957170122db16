"""`lumped dough RECIPE`: what a dough does, from the kitchen scale to the resistivity, and the reasons between.

A recipe of the notebook comes with its own ingredients, and learns from the batches that are kept there.
"""

import argparse
from pathlib import Path
from typing import Any

from lumped.cli.recipe import add_recipe, print_taught, print_unfit, recipe_named
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.errors import InputError
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("dough", help=say("cli-dough"), description=say("cli-dough"))
    add_recipe(verb)
    verb.add_argument("--sources", action="store_true", help=say("cli-dough-sources"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Work out a recipe and print it."""
    if said.sources:
        return _print_sources(said)
    from lumped.app.named import dough_of
    from lumped.dough.blocking import blocking_of
    from lumped.dough.notes import first_words, narrowing_words
    from lumped.dough.safety import caution

    named = recipe_named(said)
    dough, against = dough_of(named), blocking_of(named.kneading(), named.shop, named.calibration)
    if said.json:
        told = {} if against is None else {"blocking": against.as_dict()}
        print_json(dough.as_dict() | told | named.as_dict())
        return 0
    unfit = print_unfit(named)
    print_title(dough.name, invented=dough.invented)
    print_line(say(f"dough-{dough.answer}", resistivity=dough.resistivity.text(), cm=dough.resistivity_ohm_cm.text()))
    for words in (*(each for each in first_words(dough) if each not in unfit), ""):
        print_line(words)
    print_table([say("column-step"), say("column-figure")], [(step.words, step.value.text()) for step in dough.reasons])
    print_taught(named)
    print_notes(say("heading-findings"), (*(against.words if against else ()), *dough.notes))
    print_notes(say("heading-narrower"), narrowing_words(dough))
    print_notes(say("heading-cautions"), (*dough.cautions, caution("rules").brief))
    return 0


def _print_sources(said: argparse.Namespace) -> int:
    from lumped.app.cited import cited
    from lumped.app.given import names_file

    for each in (said.recipe, *said.batch):
        if not names_file(each):
            raise InputError("own-sources-file", title=each, quoted=f'"{each}"')
    found = cited(Path(said.recipe), batches=[Path(each) for each in said.batch], labels=said.label)
    if said.json:
        print_json(found.as_dict())
        return 0
    print_title(say("sources-title", title=found.title), invented=found.invented)
    for status, rows in found.groups.items():
        print_line(say(f"sources-{status.replace(' ', '-')}"))
        print_table([say("larder-column-from"), say("larder-column-value"), say("larder-column-source")], rows)
    print_notes(say("sources-heading-books"), found.books)
    print_notes(say("heading-findings"), [say("sources-left-out")])
    return 0
