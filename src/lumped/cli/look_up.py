"""`lumped parts` and `lumped schema`: what may stand in a file."""

import argparse
from typing import Any

from lumped.cli.show import print_json, print_table
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the command line."""
    parts = verbs.add_parser("parts", help=say("cli-parts"), description=say("cli-parts"))
    parts.add_argument("--json", action="store_true", help=say("cli-json"))
    parts.set_defaults(run=run_parts)
    schema = verbs.add_parser("schema", help=say("cli-schema"), description=say("cli-schema"))
    schema.add_argument("kind", choices=("sculpture", "recipe", "batch", "ingredient", "bundle"))
    schema.set_defaults(run=run_schema)


def run_parts(said: argparse.Namespace) -> int:
    """Print the parts, leads and ingredients of the handbook."""
    from lumped import app

    rows = app.parts()
    if said.json:
        print_json({"kind": "parts", "schema": 1, "parts": rows})
        return 0
    headings = [say("column-key"), say("column-name"), say("column-legs")]
    print_table(headings, [(row["key"], row["name"], ", ".join(row["legs"])) for row in rows])
    return 0


def run_schema(said: argparse.Namespace) -> int:
    """Print the JSON Schema of a kind of file."""
    from lumped import app

    print_json(app.schema(said.kind))
    return 0
