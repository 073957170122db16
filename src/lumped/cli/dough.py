"""`lumped dough RECIPE`: what a dough does, from the kitchen scale to the resistivity, and the reasons between.

A recipe of the notebook comes with its own ingredients, and learns from the batches that are kept there.
"""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough import Dough

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("dough", help=say("cli-dough"), description=say("cli-dough"))
    verb.add_argument("recipe", metavar="RECIPE", help=say("cli-dough-recipe"))
    verb.add_argument("--batch", action="append", default=[], metavar="BATCH", help=say("cli-dough-batch"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--sources", action="store_true", help=say("cli-dough-sources"))
    verb.add_argument("--notebook", metavar="PLACE", help=say("cli-notebook-place"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Work out a recipe and print it."""
    if said.sources:
        return _print_sources(said)
    from lumped.dough.notes import first_words, narrowing_words
    from lumped.dough.safety import caution

    dough, taught = _worked_out(said)
    if said.json:
        print_json(dough.as_dict() | ({"taught": list(taught)} if taught else {}))
        return 0
    print_title(dough.name)
    line = "dough-carries" if dough.conducts else "dough-blocks"
    print_line(say(line, resistivity=dough.resistivity.text(), cm=dough.resistivity_ohm_cm.text()))
    for words in (*first_words(dough), ""):
        print_line(words)
    print_table([say("column-step"), say("column-figure")], [(step.words, step.value.text()) for step in dough.reasons])
    print_notes(say("heading-batches"), taught)
    print_notes(say("heading-findings"), dough.notes)
    print_notes(say("heading-narrower"), narrowing_words(dough))
    print_notes(say("heading-cautions"), (*dough.cautions, caution("rules").brief))
    return 0


def _worked_out(said: argparse.Namespace) -> "tuple[Dough, tuple[str, ...]]":
    """Work a recipe out; the notebook is opened only if something of it is named."""
    from lumped import app
    from lumped.app.given import names_file

    if all(map(names_file, (said.recipe, *said.batch))):
        return app.dough(Path(said.recipe), batches=[Path(each) for each in said.batch], labels=said.label), ()
    return app.dough_in_notebook(
        said.recipe, batches=said.batch, labels=said.label, kept_batches=not names_file(said.recipe),
        settings=app.load_settings({"notebook": said.notebook}),
    )  # fmt: skip


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
    print_title(say("sources-title", title=found.title))
    for status, rows in found.groups.items():
        print_line(say(f"sources-{status.replace(' ', '-')}"))
        print_table([say("larder-column-from"), say("larder-column-value"), say("larder-column-source")], rows)
    print_notes(say("sources-heading-books"), found.books)
    print_notes(say("heading-findings"), [say("sources-left-out")])
    return 0
