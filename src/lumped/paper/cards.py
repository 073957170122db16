"""Recipe cards and labels on paper: the largest letters with which a card still fits its page."""

import re
from typing import Any

from lumped.errors import InputError
from lumped.paper.typesetting import typeset

__all__ = ["PAPERS", "card_pdf", "card_png", "tags_pdf"]

PAPERS = ("a4", "us-letter")
_SIZES = (10.5, 10.0, 9.5, 9.0, 8.6, 8.2)  # pt, of the letters that one cooks by
_TWO_PAGES = 10.0
_PAGE = re.compile(rb"/Type\s*/Page\b")


def card_pdf(data: dict[str, Any], *, paper: str = "a4") -> bytes:
    """Print a card: on one page if any size of letters lets it, else on two with letters that are easily read.

    Parameters
    ----------
    data : dict
        What stands on it, as plain text and pictures.
    paper : {"a4", "us-letter"}
        Size of the sheet.

    Raises
    ------
    InputError
        If there is no such paper.
    """
    return typeset("card", {**data, "paper": _known(paper), "size": _size(data, paper)})


def card_png(data: dict[str, Any], *, paper: str = "a4", ppi: float = 144.0) -> bytes:
    """Make a picture of a card's first page."""
    return typeset("card", {**data, "paper": _known(paper), "size": _size(data, paper)}, kind="png", ppi=ppi)


def tags_pdf(data: dict[str, Any], *, paper: str = "a4") -> bytes:
    """Print labels of bags and trays.

    Raises
    ------
    InputError
        If there is no such paper.
    """
    return typeset("tags", {**data, "paper": _known(paper)})


def _known(paper: str) -> str:
    if paper not in PAPERS:
        raise InputError("paper-size", paper=paper, known=", ".join(PAPERS))
    return paper


def _size(data: dict[str, Any], paper: str) -> float:
    """The largest letters with which the card is one page. [pt]"""
    for size in _SIZES:
        page = typeset("card", {**data, "paper": _known(paper), "size": size})
        if len(_PAGE.findall(page)) == 1:
            return size
    return _TWO_PAGES
