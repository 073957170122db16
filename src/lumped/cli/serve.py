"""`lumped serve`: the app on this computer."""

import argparse
from typing import Any

from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("serve", help=say("cli-serve"), description=say("cli-serve"))
    verb.add_argument("--port", type=int, help=say("cli-port"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Serve the app until Ctrl-C."""
    from lumped import app, web

    web.serve(app.load_settings({"port": said.port}))
    return 0
