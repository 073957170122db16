"""`lumped check SCULPTURE`: what each part will do, and why."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from rich.padding import Padding

from lumped.cli.show import console, plain, print_json, print_line, print_notes, print_table, print_title, progress
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.verdict import PartVerdict, Verdict

__all__ = ["add_to"]


def add_to(verbs: Any) -> None:
    """Add the verb to the command line."""
    verb = verbs.add_parser("check", help=say("cli-check"), description=say("cli-check"))
    verb.add_argument("sculpture", type=Path, metavar="SCULPTURE", help=say("cli-sculpture"))
    verb.add_argument("--label", type=Path, action="append", default=[], metavar="FILE", help=say("cli-label"))
    verb.add_argument("--json", action="store_true", help=say("cli-json"))
    verb.add_argument("--pdf", type=Path, metavar="FILE", help=say("cli-pdf"))
    verb.add_argument("--picture", type=Path, metavar="FILE", help=say("cli-picture"))
    verb.add_argument("--paper", choices=("a4", "us-letter"), help=say("cli-paper"))
    verb.add_argument("--effort", choices=("quick", "full"), help=say("cli-effort"))
    verb.set_defaults(run=run)


def run(said: argparse.Namespace) -> int:
    """Check a sculpture, print the verdict, and write what was asked for."""
    from lumped import app

    settings = app.load_settings({"paper": said.paper, "effort": said.effort})
    for path, endings in ((said.pdf, (".pdf",)), (said.picture, (".svg", ".png"))):
        if path is not None:
            app.ready_to_write(path, endings)
    with progress(say("cli-computing"), shown=not said.json) as report:
        verdict = app.check(said.sculpture, effort=settings.effort, report=report, labels=said.label)
    if said.pdf is not None:
        app.sheet(verdict, said.pdf, paper=settings.paper)
    if said.picture is not None:
        app.draw(verdict, said.picture)
    if said.json:
        print_json(verdict.as_dict())
        return 0
    _print_verdict(verdict)
    for path in filter(None, (said.pdf, said.picture)):
        print_line(say("cli-written", file=str(path)))
    return 0


def _print_verdict(verdict: "Verdict") -> None:
    print_title(verdict.sculpture.title, invented=verdict.sculpture.invented)
    headings = [say(f"column-{key}") for key in ("part", "does", "volts", "milliamperes")]
    print_table(headings, [_row(each) for each in verdict.parts], numbers=(2, 3))
    why = [f"{names}: {text}" for names, text in verdict.why]
    print_notes(say("heading-why"), why)
    if verdict.budget:
        print_notes(say("heading-volts"), [say_budget(verdict)])
    print_notes(say("heading-findings"), verdict.findings)
    print_notes(say("heading-cautions"), verdict.cautions)
    console().print(Padding(plain(" ".join(verdict.how_computed), style="dim"), (0, 0, 1, 0)))


def _row(each: "PartVerdict") -> tuple[str, str, str, str]:
    return f"{each.part.name} ({each.part.title})", each.does, each.voltage.text(), each.current.text(scale=1e3)


def say_budget(verdict: "Verdict") -> str:
    """Say where the volts go."""
    budget = verdict.budget
    assert budget is not None
    figures = {
        name: f"{getattr(budget, name):.1f}"
        for name in ("given", "parts", "metal", "dough_leads", "dough_path", "pack")
    }
    return say("budget", **figures)
