"""`lumped notebook list`, `show`, `history`, `compare`: what is written, what was, and how the two differ."""

import argparse
from typing import TYPE_CHECKING, Any

from lumped.cli.moments import local_time
from lumped.cli.notebook_opening import add_verb, opened, place_and_presence, shortened
from lumped.cli.notebook_readings import list_series
from lumped.cli.show import print_json, print_line, print_notes, print_table, print_title, print_toml
from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.notebook import Entry, Notebook, Revision

__all__ = ["add_to", "as_json"]


def add_to(verbs: Any) -> None:
    """Add the verbs to the group."""
    listing = add_verb(verbs, "list", run_list)
    listing.add_argument("words", nargs="*", metavar="WORD", help=say("cli-notebook-words"))
    of = listing.add_mutually_exclusive_group()
    of.add_argument("--kind", metavar="KIND", help=say("cli-notebook-kind"))
    of.add_argument("--series", action="store_true", help=say("cli-notebook-series"))
    listing.add_argument("--removed", action="store_true", help=say("cli-notebook-removed"))
    show = add_verb(verbs, "show", run_show)
    show.add_argument("name", metavar="NAME[@N]", help=say("cli-notebook-name-at"))
    history = add_verb(verbs, "history", run_history)
    history.add_argument("name", metavar="NAME", help=say("cli-notebook-name"))
    compare = add_verb(verbs, "compare", run_compare)
    compare.add_argument("name", metavar="NAME[@N]", help=say("cli-notebook-name-at"))
    compare.add_argument("other", nargs="?", metavar="NAME[@M]", help=say("cli-notebook-other"))


def run_list(said: argparse.Namespace) -> int:
    """List documents; before there is a notebook, say how it begins."""
    place, there = place_and_presence(said)
    if not there:
        if said.json:
            print_json({"kind": "entries", "schema": 1, "place": place.shown, "there": False, "entries": []})
        else:
            print_line(say("notebook-not-there", place=place.shown))
            print_line(say("notebook-how-to-begin"))
        return 0
    if said.series:
        return list_series(said)
    with opened(said) as notebook:
        found = notebook.entries(kind=said.kind, words=" ".join(said.words), removed=said.removed)
    if said.json:
        entries = [_entry_as_json(each) for each in found]
        print_json({"kind": "entries", "schema": 1, "place": place.shown, "there": True, "entries": entries})
        return 0
    if not found:
        asked = "none-found" if said.words or said.kind else "none-removed" if said.removed else "empty"
        print_line(say(f"notebook-list-{asked}"))
        return 0
    ids = shortened([each.document for each in found])
    headings = [say(f"column-{key}") for key in ("title", "kind", "revision", "saved", "id")]
    rows = [
        (each.title, each.kind, str(each.number), local_time(each.at), id) for each, id in zip(found, ids, strict=True)
    ]
    print_table(headings, rows, numbers=(2,), whole=(1, 2, 3, 4))
    return 0


def run_show(said: argparse.Namespace) -> int:
    """Print a document as the file that it could have been."""
    from lumped.app import gathering

    with opened(said) as notebook:
        revision = notebook.find(said.name)
        text = gathering.file_text(notebook, revision)
    if said.json:
        print_json({"kind": "revision", "schema": 1, "revision": {**as_json(revision), "body": revision.body}})
    else:
        print_toml(text)
    return 0


def run_history(said: argparse.Namespace) -> int:
    """Print all revisions of a document."""
    with opened(said) as notebook:
        found = notebook.history(notebook.find(said.name).document)
    if said.json:
        print_json({"kind": "history", "schema": 1, "revisions": [as_json(each) for each in found]})
        return 0
    newest = found[-1]
    print_title(say("notebook-document", title=newest.title, kind=newest.kind, id=newest.document))
    headings = [say(f"column-{key}") for key in ("revision", "saved", "by", "what")]
    rows = [
        (str(each.number), local_time(each.at), each.made_by, _what(each, before))
        for before, each in zip((None, *found), found, strict=False)
    ]
    print_table(headings, rows, numbers=(0,), whole=(0, 1))
    return 0


def run_compare(said: argparse.Namespace) -> int:
    """Print how two revisions differ."""
    with opened(said) as notebook:
        first = notebook.find(said.name)
        before, after = (
            (_one_before(notebook, first), first) if said.other is None else (first, notebook.find(said.other))
        )
        found = notebook.compare(before, after)
    if said.json:
        ends = {"before": as_json(before), "after": as_json(after)}
        print_json({"kind": "comparison", "schema": 1, **ends, "differences": [each.as_dict() for each in found]})
        return 0
    heading = _ends(before, after)
    if found:
        print_notes(heading, [each.text for each in found])
    else:
        print_line(say("notebook-compared-same", heading=heading))
    return 0


def _ends(before: "Revision", after: "Revision") -> str:
    numbers = {"number": before.number, "other": after.number}
    if before.document == after.document:
        return say("notebook-compared-revisions", title=after.title, **numbers)
    return say("notebook-compared", before=before.title, after=after.title, **numbers)


def _one_before(notebook: "Notebook", revision: "Revision") -> "Revision":
    if revision.number == 1:
        raise InputError("notebook-compare-first", title=revision.title)
    return notebook.revision(revision.document, revision.number - 1)


def _what(revision: "Revision", before: "Revision | None") -> str:
    """Tell what a revision is, in a few words."""
    from lumped.notebook import DERIVED

    words = []
    if revision.removed:
        words.append(say("notebook-what-removed"))
    if revision.restored is not None:
        words.append(say("notebook-what-restored", number=revision.restored))
    if before is not None and before.title != revision.title:
        words.append(say("notebook-what-renamed", title=before.title))
    if DERIVED in revision.links:
        words.append(say("notebook-what-derived", id=revision.links[DERIVED].document[:13]))
    return "; ".join((*words, *filter(None, [revision.note])))


def as_json(revision: "Revision") -> dict[str, Any]:
    """Give a revision as JSON shows it, without the body."""
    return {
        "document": revision.document, "kind": revision.kind, **revision.envelope(), "removed": revision.removed,
        "reference": None if revision.removed else str(revision.reference), "seal": revision.seal,
    }  # fmt: skip


def _entry_as_json(entry: "Entry") -> dict[str, Any]:
    from lumped.notebook.moments import as_iso

    return {
        "document": entry.document, "kind": entry.kind, "title": entry.title, "number": entry.number,
        "hash": entry.hash, "made_by": entry.made_by, "at": entry.when, "begun": as_iso(entry.begun),
        "removed": entry.removed,
    }  # fmt: skip
