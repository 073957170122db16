"""`lumped ports SCULPTURE`: the conductances between the leads."""

import argparse
from pathlib import Path
from typing import Any

from lumped.cli.show import print_json, print_notes, print_table
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("ports", help=say("cli-ports"), description=say("cli-ports"))
    verb.add_argument("sculpture", type=Path, metavar="SCULPTURE", help=say("cli-sculpture"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.add_argument("--effort", choices=("quick", "full"), help=say("cli-effort"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Solve for the ports and print their matrix."""
    from lumped import app

    settings = app.load_settings({"effort": said.effort})
    result = app.ports(said.sculpture, effort=settings.effort, labels=said.label)
    if said.json:
        print_json(result)
        return 0
    names = [port["name"] for port in result["ports"]]
    rows = [[name, *(f"{1e3 * each:.3g}" for each in row)] for name, row in zip(names, result["matrix_S"], strict=True)]
    print_table([say("column-port-mS"), *names], rows, numbers=range(1, len(names) + 1))
    said_of_it = [
        say(
            "ports-computed",
            pitch=f"{1e3 * result['pitch_m']:.2f}", unknowns=result["unknowns"], error=f"{result['port_error']:.0e}",
        )
    ]  # fmt: skip
    if result["grid_spread"] is not None:
        said_of_it.append(say("ports-spread", spread=f"{100 * result['grid_spread']:.1f}"))
    print_notes(say("heading-computed"), said_of_it)
    return 0
