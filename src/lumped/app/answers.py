"""What a worker of the pool gives a page: plain, picklable content, all drawings made.

What is heavy is imported inside: the pages know these functions by name only, the workers import it when they start.
"""

from collections.abc import Callable
from typing import Any, Literal

from lumped.app.given import Given, laid_out

__all__ = ["answered", "get_ready", "printed", "sketched"]

VIEWS: tuple[Literal["dough", "potential"], ...] = ("dough", "potential")
THEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")
Paper = Literal["a4", "us-letter"]
Report = Callable[[float], None]


def answered(given: Given, report: Report) -> dict[str, Any]:
    """Judge a sculpture and make all that a page shows of it.

    Parameters
    ----------
    given : Given
        The sculpture.
    report : callable
        Told the share that is done.

    Returns
    -------
    dict
        `verdict` as JSON shows it; `keys` of the parts in the handbook; `story`; `drawings` (SVG by view and theme:
        "dough-light"); `scene` for turning.
    """
    from lumped.app.scenes import scene_of
    from lumped.app.uses import check
    from lumped.picture import sculpture_svg

    with laid_out(given) as path:
        verdict = check(path, effort=given.effort, report=lambda share: report(0.9 * share))
    drawings = {f"{view}-{theme}": sculpture_svg(verdict, theme=theme, view=view) for view in VIEWS for theme in THEMES}
    report(1.0)
    return {
        "verdict": verdict.as_dict(),
        "keys": {part.name: part.key for part in verdict.sculpture.parts},
        "story": verdict.sculpture.story,
        "drawings": drawings,
        "scene": scene_of(verdict),
    }


def sketched(given: Given, report: Report) -> dict[str, str]:
    """Draw a sculpture that is not judged yet: SVG by view and theme ("dough-light")."""
    from lumped.picture import View, sculpture_svg
    from lumped.sculpt import read_sculpture

    with laid_out(given) as path:
        sculpture = read_sculpture(path)
    report(0.5)
    return {f"dough-{theme}": sculpture_svg(View(sculpture=sculpture), theme=theme) for theme in THEMES}


def printed(task: tuple[Given, Paper], report: Report) -> bytes:
    """Make the printed sheet (PDF) of a sculpture, on paper of a size."""
    from lumped.app.uses import check
    from lumped.paper import sheet_pdf

    given, paper = task
    with laid_out(given) as path:
        verdict = check(path, effort=given.effort, report=lambda share: report(0.9 * share))
        return sheet_pdf(verdict, paper=paper)


def get_ready() -> None:
    """Import all that a worker will need."""
    import lumped.app.scenes
    import lumped.paper
    import lumped.verdict  # noqa: F401
