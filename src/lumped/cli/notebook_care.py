"""`lumped notebook backup`, `verify`, `export`, `import`: so that nothing is lost."""

import argparse
from pathlib import Path
from typing import Any

from lumped.cli.notebook_opening import add_verb, opened
from lumped.cli.show import print_json, print_line, print_notes
from lumped.errors import InputError
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the group."""
    backup = add_verb(verbs, "backup", run_backup)
    backup.add_argument("file", nargs="?", type=Path, metavar="FILE", help=say("cli-notebook-backup-file"))
    add_verb(verbs, "verify", run_verify)
    export = add_verb(verbs, "export", run_export)
    export.add_argument("to", type=Path, metavar="PLACE", help=say("cli-notebook-export-to"))
    taking = add_verb(verbs, "import", run_import)
    taking.add_argument("source", type=Path, metavar="PLACE", help=say("cli-notebook-import-from"))


def run_backup(said: argparse.Namespace) -> int:
    """Copy the notebook while others may be writing in it."""
    with opened(said) as notebook:
        file = notebook.backup(said.file)
    if said.json:
        print_json({"kind": "backup", "schema": 1, "file": str(file)})
    else:
        print_line(say("notebook-backed-up", file=str(file)))
    return 0


def run_verify(said: argparse.Namespace) -> int:
    """Hold everything against its hashes; 1 if something is wrong."""
    with opened(said) as notebook:
        found, place = notebook.verify(), notebook.place.shown
    if said.json:
        print_json(found.as_dict())
    else:
        counts = {name: getattr(found, name) for name in ("documents", "revisions", "series", "readings")}
        print_line(say("notebook-sound" if found.sound else "notebook-unsound", place=place))
        print_line(say("notebook-verified", **counts))
        print_notes(say("notebook-heading-problems"), found.problems)
    return 0 if found.sound else 1


def run_export(said: argparse.Namespace) -> int:
    """Write everything out to plain files."""
    from lumped.app import notebooks

    with opened(said) as notebook:
        notebooks.export(notebook, said.to)
    if said.json:
        print_json({"kind": "export", "schema": 1, "file": str(said.to)})
    else:
        print_line(say("cli-written", file=str(said.to)))
    return 0


def run_import(said: argparse.Namespace) -> int:
    """Take in what was exported; what is here stays."""
    from lumped.app import notebooks

    _refuse_nothing(said.source)
    with opened(said, begin=True) as notebook:
        taken = notebooks.bring_in(notebook, said.source)
    if said.json:
        print_json(taken.as_dict())
    else:
        counts = {name: getattr(taken, name) for name in ("documents", "revisions", "series", "readings", "already")}
        print_line(say("notebook-taken", **counts))
    return 0


def _refuse_nothing(source: Path) -> None:
    """A name that was mistyped begins no notebook; what is there and can't be seen is told when it is read."""
    try:
        source.lstat()
    except (FileNotFoundError, ValueError):
        raise InputError("document-missing", file=str(source)) from None
    except OSError:
        return
