"""A page without any script, for the few words that a form gets back."""

from html import escape

from lumped.texts import say
from lumped.web import paths
from lumped.web.theme import STYLES

__all__ = ["plain_page"]


def plain_page(words: str) -> str:
    """Write a page that holds a few words and a way back."""
    return (
        f'<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>{escape(say("web-title"))}</title>'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f'<link rel="stylesheet" href="{STYLES}"></head><body><main class="sheet-width"><div class="sorry" '
        f'role="alert"><p>{escape(words)}</p><a class="back" href="{paths.TABLE}">{escape(say("web-back"))}</a>'
        "</div></main></body></html>"
    )
