"""What all verbs of `lumped notebook` share: which notebook, who writes in it, and whether to print JSON."""

import argparse
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

from lumped.cli.show import print_error
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app import Settings
    from lumped.notebook import Notebook, Place

__all__ = ["add_common", "add_verb", "opened", "place_and_presence", "settings_of", "shortened"]


def add_verb(verbs: Any, name: str, run: Callable[[argparse.Namespace], int]) -> argparse.ArgumentParser:
    """Add a verb to the group; give its parser for what it needs besides."""
    words = say(f"cli-notebook-{name}")
    verb: argparse.ArgumentParser = verbs.add_parser(name, help=words, description=words)
    add_common(verb, default=argparse.SUPPRESS)
    verb.set_defaults(run=run)
    return verb


def add_common(parser: argparse.ArgumentParser, *, default: Any) -> None:
    """Add the options that may stand before or after a verb."""
    parser.add_argument("--json", action="store_true", default=default or False, help=say("cli-notebook-json"))
    parser.add_argument("--notebook", metavar="PLACE", default=default, help=say("cli-notebook-place"))
    parser.add_argument("--who", metavar="NAME", default=default, help=say("cli-notebook-who"))


def settings_of(said: argparse.Namespace) -> "Settings":
    """Give the settings with what was said on the command line."""
    from lumped import app

    return app.load_settings({"notebook": said.notebook, "who": said.who})


def place_and_presence(said: argparse.Namespace) -> "tuple[Place, bool]":
    """Give the place that was said, and whether something is there; a server, or what can't be seen, is tried."""
    from lumped.app import notebooks

    place = notebooks.place_of(settings_of(said))
    try:
        return place, place.file is None or place.file.exists()
    except OSError:
        return place, True


@contextmanager
def opened(said: argparse.Namespace, *, begin: bool = False) -> Iterator["Notebook"]:
    """Open the notebook that was said; tell on stderr if it was an older one."""
    from lumped.app import notebooks

    with notebooks.open_notebook(settings=settings_of(said), begin=begin) as notebook:
        if notebook.migrated_from is not None:
            print_error(say("notebook-was-older", backup=str(notebook.migrated_from)))
        yield notebook


def shortened(ids: list[str]) -> list[str]:
    """Shorten ids as far as they can still be told apart, not below what tells their moment.

    Examples
    --------
    >>> shortened(["01890a5d-ac96-774b-bcce-b302099a8057", "01890a5e-0000-774b-bcce-b302099a8057"])
    ['01890a5d-ac96', '01890a5e-0000']
    """
    length = 13
    while length < 36 and len({each[:length] for each in ids}) < len(set(ids)):
        length += 1
    return [each[:length] for each in ids]
