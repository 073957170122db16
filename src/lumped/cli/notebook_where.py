"""`lumped notebook where`: where the notebook lies, whether it is there, and what is in it."""

import argparse
from typing import Any

from lumped.cli.notebook_opening import add_verb, opened, place_and_presence
from lumped.cli.show import print_json, print_line, print_table
from lumped.texts import say

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the group."""
    add_verb(verbs, "where", run)


def run(said: argparse.Namespace) -> int:
    """Say where the notebook lies and what is in it."""
    place, there = place_and_presence(said)
    folder = None if place.file is None else str(place.file.absolute().parent)
    content: dict[str, Any] = {"kind": "place", "schema": 1, "place": place.shown, "folder": folder, "there": False}
    if there:
        content |= {"there": True, **_inside(said)}
    if said.json:
        print_json(content)
        return 0
    print_table(["", ""], [
        (say(f"notebook-where-{key}"), _words(key, each))
        for key, each in content.items() if each is not None and key not in ("kind", "schema")
    ])  # fmt: skip
    if not there:
        print_line(say("notebook-how-to-begin"))
    return 0


def _words(key: str, value: Any) -> str:
    if key == "size_bytes":
        return say("notebook-size", kilobytes=f"{value / 1000:,.0f}")
    if isinstance(value, bool):
        return say("notebook-yes" if value else "notebook-no")
    return str(value)


def _inside(said: argparse.Namespace) -> dict[str, Any]:
    from lumped.notebook.layout import LAYOUTS

    with opened(said) as notebook:
        there, removed = notebook.entries(), notebook.entries(removed=True)
        file = notebook.place.file
        return {
            "size_bytes": None if file is None else file.stat().st_size, "read_only": notebook.read_only,
            "documents": len(there), "removed": len(removed),
            "revisions": sum(each.number for each in (*there, *removed)), "series": len(notebook.series()),
            "layout": LAYOUTS[-1],
        }  # fmt: skip
