"""A dough on paper, as workers write it for a page: its recipe card, and labels for its bags."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory

from lumped.app.asking import Question
from lumped.app.given import labels_laid_out, laid_out

__all__ = ["carded", "tagged"]

Report = Callable[[float], None]


def carded(question: Question, report: Report) -> bytes:
    """Write the recipe card (PDF): `language`, `paper` and the day (`on`) are said."""
    from lumped.app.cards import card, write_card

    said = question.said
    with laid_out(question.given) as path:
        made = card(path, on=date.fromisoformat(said["on"]), language=said["language"],
                    labels=labels_laid_out(question.given))  # fmt: skip
    report(0.5)
    return _written(lambda file: write_card(made, pdf=file, paper=said["paper"]))


def tagged(question: Question, report: Report) -> bytes:
    """Write labels for bags and a tray (PDF): `language` and `paper` are said."""
    from lumped.app.tags import tags, write_tags

    said = question.said
    with laid_out(question.given) as path:
        made = tags(path, language=said["language"], labels=labels_laid_out(question.given))
    report(0.5)
    return _written(lambda file: write_tags(made, file, paper=said["paper"]))


def _written(write: Callable[[Path], None]) -> bytes:
    with TemporaryDirectory() as folder:
        file = Path(folder) / "paper.pdf"
        write(file)
        return file.read_bytes()
