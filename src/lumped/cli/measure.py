"""`lumped measure`: what a measure weighs, a weight in cups and spoons, a recipe rounded to a kitchen."""

import argparse
from pathlib import Path
from typing import Any

from lumped.cli.recipe import print_taught
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title
from lumped.errors import InputError, RecipeError
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("measure", help=say("cli-measure"), description=say("cli-measure"))
    verb.add_argument("what", nargs="?", metavar="WHAT", help=say("cli-measure-what"))
    verb.add_argument("ingredient", nargs="?", metavar="INGREDIENT", help=say("cli-measure-ingredient"))
    verb.add_argument("--in", dest="kitchen", metavar="MEASURES", help=say("cli-measure-in"))
    verb.add_argument("--method", metavar="HOW", help=say("cli-measure-method"))
    verb.add_argument("--take", type=Path, metavar="FILE", help=say("cli-measure-take"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--notebook", metavar="PLACE", help=say("cli-notebook-place"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Print an amount, a recipe or all measures."""
    if said.what is None:
        return _print_kitchens(said)
    if said.ingredient is not None:
        return _print_amount(said)
    if _is_amount(said.what):
        raise InputError("measuring-needs-ingredient", text=said.what, whose=_whose(said.what))
    return _print_recipe(said)


def _whose(text: str) -> str:
    """The option that names whose measures are meant, where they are not those of the United States."""
    from lumped.pantry.amounts import read_amount
    from lumped.pantry.measures import kitchen, kitchens

    try:
        unit = read_amount(text).unit
    except RecipeError:
        return ""
    having = [key for key in kitchens() if unit in kitchen(key).volumes]
    return f" --in {having[0]}" if having and "us" not in having else ""


def _is_amount(text: str) -> bool:
    """Tell whether a word is an amount, and neither a file nor a title."""
    from lumped.app.given import names_file
    from lumped.pantry.amounts import read_amount

    if names_file(text):
        return False
    try:
        read_amount(text)
    except RecipeError:
        return text[:1].isdigit()
    return True


def _print_kitchens(said: argparse.Namespace) -> int:
    from lumped.app.weighing import kitchen_table

    rows = kitchen_table()
    if said.json:
        print_json({"kind": "measures", "schema": 1, "measures": rows})
        return 0
    headings = _headings("kitchen", "measure", "holds", "source")
    shown = [
        (f"{each['name']} ({each['kitchen']})", each["measure"].replace("_", " "), f"{1e6 * each['volume_m3']:.6g}",
         "; ".join((each["status"], *each["sources"])))
        for each in rows
    ]  # fmt: skip
    print_table(headings, shown, numbers=(2,))
    return 0


def _print_amount(said: argparse.Namespace) -> int:
    from lumped.app.weighing import grams, weighed_amount

    found = weighed_amount(said.what, said.ingredient, kitchen=said.kitchen, method=said.method, labels=said.label)
    if said.json:
        print_json(found.as_dict())
        return 0
    for words in (*found.words, ""):
        print_line(words)
    rows = [(key, each.words, grams(each.mass), _shift(each.shift)) for key, each in found.ways.items()]
    if rows:
        print_table(_headings("kitchen", "words", "mass", "shift"), rows, numbers=(3,))
    return 0


def _shift(share: float) -> str:
    return f"{100 * share:+.1f} %".replace("-", "−") if abs(share) >= 5e-4 else "0"


def _print_recipe(said: argparse.Namespace) -> int:
    from lumped import app
    from lumped.app.measuring import measured_recipe, write_kept
    from lumped.app.named import named

    settings = app.load_settings({"notebook": said.notebook})
    dough = named(said.what, labels=said.label, settings=settings)  # before anything is asked: it may be missing
    if said.kitchen is None:
        from lumped.pantry.measures import kitchens

        raise InputError("measuring-needs-in", known=", ".join((*kitchens(), "scale")))
    found = measured_recipe(dough, kitchen=said.kitchen)
    if said.take is not None:
        write_kept(found, said.take)
    if said.json:
        print_json(found.as_dict() | dough.as_dict())
        return 0
    print_title(say("measuring-title", title=found.recipe.title, kitchen=found.kitchen), invented=found.recipe.invented)
    print_table(_headings("ingredient", "written", "words", "mass", "shift"), found.rows, numbers=(4,))
    print_table(_headings("property", "before", "after", "moved"), found.moves, numbers=(1, 2, 3))
    print_notes(say("heading-findings"), found.notes)
    print_taught(dough)
    return 0


def _headings(*keys: str) -> list[str]:
    return [say(f"measuring-column-{key}") for key in keys]
