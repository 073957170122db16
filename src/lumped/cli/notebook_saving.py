"""`lumped notebook save`, `restore`, `remove`: each adds a revision, and nothing is overwritten."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.notebook_documents import as_json
from lumped.cli.notebook_opening import add_verb, opened
from lumped.cli.show import print_json, print_line, print_notes
from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.notebook import Revision

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the group."""
    save = add_verb(verbs, "save", run_save)
    save.add_argument("file", type=Path, metavar="FILE", help=say("cli-notebook-file"))
    to = save.add_mutually_exclusive_group()
    to.add_argument("--new", action="store_true", help=say("cli-notebook-new"))
    to.add_argument("--as", dest="document", metavar="NAME", help=say("cli-notebook-as"))
    save.add_argument("--derived-from", metavar="NAME[@N]", help=say("cli-notebook-derived"))
    restore = add_verb(verbs, "restore", run_restore)
    restore.add_argument("name", metavar="NAME", help=say("cli-notebook-name"))
    restore.add_argument("number", type=int, metavar="N", help=say("cli-notebook-number"))
    remove = add_verb(verbs, "remove", run_remove)
    remove.add_argument("name", metavar="NAME", help=say("cli-notebook-name"))
    for verb in (save, restore, remove):
        verb.add_argument("--note", default="", metavar="TEXT", help=say("cli-notebook-note"))


def run_save(said: argparse.Namespace) -> int:
    """Save a file, or all ingredients of a table."""
    from lumped.app import as_files, saving

    if said.file.suffix.lower() == ".csv":
        return _save_table(said)
    as_files.kind_of(said.file)  # a name that was mistyped begins no notebook
    with opened(said, begin=True) as notebook:
        document = None if said.document is None else notebook.find(said.document).document
        source = None if said.derived_from is None else notebook.find(said.derived_from).reference
        saved = saving.save_file(
            notebook, said.file, document=document, new=said.new, note=said.note, derived_from=source
        )
        targets = {name: notebook.referred(target) for name, target in saved.links.items()}
        place = notebook.place.shown
    if said.json:
        return _print_json(saved)
    print_line(say(
        "notebook-saved-new" if saved.number == 1 else "notebook-saved",
        title=saved.title, number=saved.number, place=place,
    ))  # fmt: skip
    print_notes(say("notebook-heading-links"), [
        say("notebook-link", name=name, title=each.title, number=each.number) for name, each in targets.items()
    ])  # fmt: skip
    return 0


def _save_table(said: argparse.Namespace) -> int:
    """Save each line of a table as an ingredient: all of them, or none."""
    from lumped.app import saving
    from lumped.documents import text_of
    from lumped.pantry.label_table import labels_in

    if said.new or said.document or said.derived_from:
        raise InputError("own-table-many", file=str(said.file))
    text = text_of(said.file, no_text="label-csv-encoding")
    labels_in(text, str(said.file))  # a table that can't be read begins no notebook
    with opened(said, begin=True) as notebook:
        saved = saving.save_labels(notebook, text, str(said.file), note=said.note)
        place = notebook.place.shown
    if said.json:
        print_json({"kind": "revisions", "schema": 1, "revisions": [as_json(each) for each in saved]})
        return 0
    print_line(say("own-table-saved", count=len(saved), place=place))
    print_notes(
        say("own-table-heading"), [say("own-table-line", title=each.title, number=each.number) for each in saved]
    )
    return 0


def run_restore(said: argparse.Namespace) -> int:
    """Bring back a revision."""
    with opened(said) as notebook:
        saved = notebook.restore(notebook.find(said.name).document, said.number, note=said.note)
    if said.json:
        return _print_json(saved)
    print_line(say("notebook-restored", title=saved.title, old=said.number, number=saved.number))
    return 0


def run_remove(said: argparse.Namespace) -> int:
    """Remove a document as a whole; what was is still there."""
    with opened(said) as notebook:
        found = notebook.find(said.name)
        newest = notebook.revision(found.document)
        if newest.number != found.number:
            raise InputError("notebook-remove-one", title=newest.title, number=found.number)
        saved = notebook.remove(found.document, note=said.note)
    if said.json:
        return _print_json(saved)
    print_line(say("notebook-removed", title=saved.title, id=saved.document[:13], number=newest.number))
    return 0


def _print_json(saved: "Revision") -> int:
    print_json({"kind": "revision", "schema": 1, "revision": as_json(saved)})
    return 0
