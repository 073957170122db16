"""A recipe at the command line: a file, or a title of the notebook, whose batches teach."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from lumped.cli.show import print_line, print_notes
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.app.together import Together

__all__ = ["add_recipe", "add_recipes", "print_taught", "print_unfit", "recipe_named", "recipes_named"]


def add_recipe(verb: argparse.ArgumentParser, *, needed: bool = True) -> None:
    """Let a verb take a recipe, with batches and ingredients from files or the notebook."""
    verb.add_argument("recipe", nargs=None if needed else "?", metavar="RECIPE", help=say("cli-dough-recipe"))
    verb.add_argument("--batch", action="append", default=[], metavar="BATCH", help=say("cli-dough-batch"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--notebook", metavar="PLACE", help=say("cli-notebook-place"))


def recipe_named(said: argparse.Namespace) -> "Named":
    """Read the recipe that was said, with what its batches taught."""
    from lumped import app
    from lumped.app.named import named

    settings = app.load_settings({"notebook": said.notebook})
    return named(said.recipe, batches=said.batch, labels=said.label, settings=settings)


def add_recipes(verb: argparse.ArgumentParser, *, words: str) -> None:
    """Let a verb take several recipes, with ingredients, from files or the notebook."""
    verb.add_argument("recipes", nargs="+", metavar="RECIPE", help=words)
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--notebook", metavar="PLACE", help=say("cli-notebook-place"))


def recipes_named(said: argparse.Namespace) -> "Together":
    """Read the recipes that were said."""
    from lumped import app
    from lumped.app.together import read_together

    settings = app.load_settings({"notebook": said.notebook})
    return read_together(said.recipes, labels=said.label, settings=settings)


def print_unfit(dough: "Named | Together") -> tuple[str, ...]:
    """Say first of all, and give, what is no dough or does the opposite of what it is for; nothing of sound doughs."""
    told = dough.unfit
    for words in told:
        print_line(words)
    return told


def print_taught(dough: "Named | None") -> None:
    """Print what a recipe's batches taught, and which own ingredients were left out; nothing if that is nothing."""
    if dough is not None:
        print_notes(say("heading-batches"), dough.words)
        print_notes(say("heading-left-out"), dough.left_out)
