"""`lumped notebook …`: the verbs for what people wrote and measured."""

from typing import Any

from lumped.cli import notebook_care, notebook_documents, notebook_readings, notebook_saving, notebook_where
from lumped.cli.notebook_opening import add_common
from lumped.texts import say

__all__ = ["add_to"]

_GROUPS = (notebook_where, notebook_documents, notebook_saving, notebook_readings, notebook_care)


def add_to(verbs: Any) -> None:
    """Add the group to the command line; alone it prints its verbs."""
    group = verbs.add_parser(
        "notebook", help=say("cli-notebook"), description=say("cli-notebook-about"), epilog=say("cli-notebook-begin")
    )
    add_common(group, default=None)
    group.set_defaults(run=lambda said: group.print_help() or 0)
    inner = group.add_subparsers(metavar="VERB", title=say("cli-verbs"))
    for each in _GROUPS:
        each.add_to(inner)
