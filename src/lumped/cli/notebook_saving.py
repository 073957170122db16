"""`lumped notebook save`, `restore`, `remove`: each adds a revision, and nothing is overwritten."""

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.cli.notebook_documents import as_json
from lumped.cli.notebook_opening import add_verb, opened
from lumped.cli.show import print_json, print_line, print_notes
from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.notebook import Notebook, Revision

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the group."""
    save = add_verb(verbs, "save", run_save)
    save.add_argument("files", type=Path, nargs="+", metavar="FILE", help=say("cli-notebook-file"))
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
    """Save files, and all ingredients of tables: what others name goes first."""
    files = _in_order(said.files)  # a name that was mistyped begins no notebook
    if said.new or said.document or said.derived_from:
        _refuse_many(files)
    saved: list[Revision] = []
    with opened(said, begin=True) as notebook:
        for file in files:
            found = _save_table(notebook, file, said) if _is_table(file) else (_save_one(notebook, file, said),)
            saved.extend(found)
    if said.json and len(files) == 1 and not _is_table(files[0]):
        return _print_json(saved[0])
    if said.json:
        print_json({"kind": "revisions", "schema": 1, "revisions": [as_json(each) for each in saved]})
    return 0


def _is_table(file: Path) -> bool:
    return file.suffix.lower() == ".csv"


def _in_order(files: Sequence[Path]) -> list[Path]:
    """See that all can be read, and give ingredients before the recipes that name them, and those before the rest."""
    from lumped.app.as_files import KINDS, kind_of
    from lumped.documents import text_of
    from lumped.pantry.label_table import labels_in

    kinds = {}
    for file in files:
        if _is_table(file):
            labels_in(text_of(file, no_text="label-csv-encoding"), str(file))
        kinds[file] = "ingredient" if _is_table(file) else kind_of(file)
    return sorted(kinds, key=lambda file: KINDS.index(kinds[file]))


def _refuse_many(files: Sequence[Path]) -> None:
    """Refuse what can be said of one document only."""
    if len(files) > 1:
        raise InputError("own-files-many", count=len(files))
    if _is_table(files[0]):
        raise InputError("own-table-many", file=str(files[0]))


def _save_one(notebook: "Notebook", file: Path, said: argparse.Namespace) -> "Revision":
    """Save a file and print what was saved."""
    from lumped.app import saving

    document = None if said.document is None else notebook.find(said.document).document
    source = None if said.derived_from is None else notebook.find(said.derived_from).reference
    saved = saving.save_file(notebook, file, document=document, new=said.new, note=said.note, derived_from=source)
    if said.json:
        return saved
    targets = {name: notebook.referred(target) for name, target in saved.links.items()}
    print_line(say(
        "notebook-saved-new" if saved.number == 1 else "notebook-saved",
        title=saved.title, number=saved.number, place=notebook.place.shown,
    ))  # fmt: skip
    print_notes(say("notebook-heading-links"), [
        say("notebook-link", name=name, title=each.title, number=each.number) for name, each in targets.items()
    ])  # fmt: skip
    return saved


def _save_table(notebook: "Notebook", file: Path, said: argparse.Namespace) -> "tuple[Revision, ...]":
    """Save each line of a table as an ingredient, all of them or none, and print what was saved."""
    from lumped.app import saving
    from lumped.documents import text_of

    text = text_of(file, no_text="label-csv-encoding")
    saved = saving.save_labels(notebook, text, str(file), note=said.note)
    if not said.json:
        print_line(say("own-table-saved", count=len(saved), place=notebook.place.shown))
        lines = [say("own-table-line", title=each.title, number=each.number) for each in saved]
        print_notes(say("own-table-heading"), lines)
    return saved


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
