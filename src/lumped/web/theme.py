"""How the pages look: one style sheet, the letters that the drawings use too, and a mark for the browser's tab."""

from importlib.resources import files

from nicegui import app, ui

__all__ = ["ICON", "STYLES", "serve_looks", "wear"]

STYLES = "/looks/theme.css"
ICON = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path fill="#c98a5e" d="M4 19c-1-7 5-11 12-11s13 4 12 '
    '11c-1 5-6 6-12 6S5 24 4 19z"/><path d="M11 14V4M21 14V4" stroke="#96351f" stroke-width="2.6"/></svg>'
)


def serve_looks() -> None:
    """Hand the style sheet and the letters to browsers."""
    app.add_static_file(local_file=str(files("lumped.web") / "theme.css"), url_path=STYLES)
    app.add_static_files("/letters", str(files("lumped.paper") / "fonts"))


def wear() -> None:
    """Dress the page that is being built."""
    ui.add_head_html(f'<link rel="stylesheet" href="{STYLES}"><meta name="color-scheme" content="light dark">')
