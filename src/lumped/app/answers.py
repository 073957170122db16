"""What a worker of the pool gives a page: plain, picklable content, all drawings made.

What is heavy is imported inside: the pages know these functions by name only, the workers import it when they start.
"""

from collections.abc import Callable
from functools import cache
from typing import Any, Literal

from lumped.app.given import Given, labels_laid_out, laid_out

__all__ = ["answered", "get_ready", "lump_drawn", "printed", "sketched"]

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
    from lumped.app.sculptures import check
    from lumped.picture import sculpture_svg

    with laid_out(given) as path:
        verdict = check(path, effort=given.effort, report=lambda share: report(0.9 * share),
                        labels=labels_laid_out(given))  # fmt: skip
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
    from lumped.app.labels import shop_of
    from lumped.picture import View, sculpture_svg
    from lumped.sculpt import read_sculpture

    with laid_out(given) as path:
        sculpture = read_sculpture(path, shop_of(given))
    report(0.5)
    return {f"dough-{theme}": sculpture_svg(View(sculpture=sculpture), theme=theme) for theme in THEMES}


def printed(task: tuple[Given, Paper], report: Report) -> bytes:
    """Make the printed sheet (PDF) of a sculpture, on paper of a size."""
    from lumped.app.sculptures import check
    from lumped.paper import sheet_pdf

    given, paper = task
    with laid_out(given) as path:
        verdict = check(path, effort=given.effort, report=lambda share: report(0.9 * share),
                        labels=labels_laid_out(given))  # fmt: skip
        return sheet_pdf(verdict, paper=paper)


def get_ready() -> None:
    """Import all that a worker will need."""
    import lumped.app.scenes
    import lumped.dough.kneading
    import lumped.paper
    import lumped.verdict  # noqa: F401


@cache
def lump_drawn(conducts: bool) -> dict[str, str]:
    """Draw a roll of a dough that carries current, or a slab of one that blocks it: SVG by theme ("dough-light")."""
    from lumped.picture.doughs import draw_lump
    from lumped.picture.svg import element
    from lumped.picture.theme import THEMES as LOOKS
    from lumped.sculpt import Look, Lump
    from lumped.shape import Block, Roll

    roll = Roll(start=(-0.030, 0, 0.012), end=(0.030, 0, 0.012), radius=0.012)
    solid = roll if conducts else Block(centre=(0, 0, 0.010), size=(0.060, 0.028, 0.020), turn=0.08)
    look = Look(colour="#c98a5e", mark="plain") if conducts else Look(colour="#e9dcc3", mark="waves")
    lump = Lump(name="", dough="", shape="roll" if conducts else "block", solid=solid)
    return {
        f"dough-{theme}": element(
            "svg", draw_lump(lump, look, LOOKS[theme], key=f"lump-{conducts}".lower()),
            xmlns="http://www.w3.org/2000/svg", viewBox="-38 -20 76 40",
        )
        for theme in THEMES
    }  # fmt: skip
