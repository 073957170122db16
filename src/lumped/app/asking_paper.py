"""A dough on paper, as workers write it for a page: its recipe card, and labels for its bags."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory

from lumped.app.asking import Question

__all__ = ["carded", "tagged"]

Report = Callable[[float], None]


def carded(question: Question, report: Report) -> bytes:
    """Write the recipe card (PDF): `language`, `paper`, the day (`on`) and for whom (`people`, or "") are said."""
    from lumped.app.cards import card_of, write_card
    from lumped.app.named import named_in

    said = question.said
    people = [said["people"]] if said["people"].strip() else []
    made = card_of(
        named_in(question.given), on=date.fromisoformat(said["on"]), language=said["language"], people=people
    )  # fmt: skip
    report(0.5)
    return _written(lambda file: write_card(made, pdf=file, paper=said["paper"]))


def tagged(question: Question, report: Report) -> bytes:
    """Write labels for bags and a tray (PDF): `language` and `paper` are said."""
    from lumped.app.named import named_in
    from lumped.app.tags import tags_of, write_tags

    said = question.said
    made = tags_of(named_in(question.given), language=said["language"])
    report(0.5)
    return _written(lambda file: write_tags(made, file, paper=said["paper"]))


def _written(write: Callable[[Path], None]) -> bytes:
    with TemporaryDirectory() as folder:
        file = Path(folder) / "paper.pdf"
        write(file)
        return file.read_bytes()
