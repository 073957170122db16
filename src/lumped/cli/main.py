"""Reading the command line, and failing in words."""

import argparse
import io
import json
import os
import sys
from collections.abc import Sequence

from lumped import __version__
from lumped.cli import (
    card,
    care,
    check,
    compare,
    dough,
    lasting,
    look_up,
    make,
    maps,
    measure,
    notebook,
    pantry,
    ports,
    serve,
    shop,
    swap,
    tags,
    trial,
    wall,
)  # fmt: skip
from lumped.cli.show import print_error
from lumped.cli.usage import Parser, usage_error
from lumped.errors import LumpedError
from lumped.texts import say

__all__ = ["main", "parser"]

_VERBS = (
    check, dough, care, maps, wall, trial, lasting, make, shop, card, tags, pantry, measure, swap, compare, ports,
    look_up, notebook, serve,
)  # fmt: skip


def parser() -> argparse.ArgumentParser:
    """Give the parser of the whole command line."""
    top = Parser(prog="lumped", description=say("cli-lumped"), epilog=say("cli-epilog"))
    top.add_argument("--version", action="version", version=f"lumped {__version__}")
    verbs = top.add_subparsers(dest="verb", metavar="VERB", title=say("cli-verbs"))
    for verb in _VERBS:
        verb.add_to(verbs)
    return top


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command `lumped`.

    Parameters
    ----------
    arguments : sequence of str, optional
        What follows `lumped` on the command line; that of the process if left out.

    Returns
    -------
    int
        Exit code.
    """
    _write_every_letter()
    top = parser()
    said = _understood(top, sys.argv[1:] if arguments is None else arguments)
    if said.verb is None:
        top.print_help()
        return 0
    try:
        result: int = said.run(said)
        sys.stdout.flush()  # here and not at the end of the program, where nobody would catch it
    except LumpedError as error:
        _print_failure(error, _hint(error, said), as_json=getattr(said, "json", False))
        return 1
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:  # whoever read our output has had enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    return result


def _understood(top: argparse.ArgumentParser, arguments: Sequence[str]) -> argparse.Namespace:
    """Read the arguments, or say what is wrong with them and end with 2."""
    try:
        said, rest = top.parse_known_args(arguments)
        if rest:
            raise usage_error(
                f"lumped {said.verb}" if said.verb else "lumped", f"unrecognized arguments: {' '.join(rest)}"
            )
    except LumpedError as error:
        _print_failure(error, "", as_json="--json" in arguments)
        raise SystemExit(2) from None
    return said


def _print_failure(error: LumpedError, hint: str, *, as_json: bool) -> None:
    if as_json:
        told = error.as_dict() | ({"hint": hint} if hint else {})
        print(json.dumps({"error": told}, default=str, allow_nan=False), file=sys.stderr)
    else:
        print_error(" ".join(filter(None, (str(error), hint))))


def _hint(error: LumpedError, said: argparse.Namespace) -> str:
    """Say what else may be done at the command line; "" if the error itself says it."""
    if error.code != "recipe-no-ingredient" or not hasattr(said, "label"):
        return ""
    from lumped.app.own_packets import packet_hint
    from lumped.app.settings import load_settings

    return packet_hint(error, load_settings({"notebook": getattr(said, "notebook", None)}))


def _write_every_letter() -> None:
    """Write files and pipes in UTF-8; on a terminal that knows fewer letters, write out those that it lacks."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper) and stream.isatty():
            stream.reconfigure(errors="backslashreplace")
        elif isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(encoding="utf-8")
