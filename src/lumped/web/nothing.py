"""What is shown where there is nothing to show."""

from nicegui import html

from lumped.texts import say
from lumped.web import paths
from lumped.web.words import Words

__all__ = ["nothing_here"]


def nothing_here(words: str = "") -> None:
    """Say that there is nothing here, and how to get back."""
    with html.main().classes("sheet-width"), html.div().classes("sorry"):
        Words("h1", words or say("web-no-page"))
        html.a(say("web-back"), href=paths.TABLE).classes("back")
