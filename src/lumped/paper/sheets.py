"""The sheet of one sculpture: built from at true size, read at arm's length."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from lumped.errors import InputError
from lumped.paper.steps import push_steps, shape_steps, start_steps, thicknesses
from lumped.paper.typesetting import typeset
from lumped.picture import THEMES, View, arrange, drawn, view_of
from lumped.picture.true_size import gauge_svg, ruler_svg
from lumped.sculpt import Lump, Nearness
from lumped.sculpt.bodies import near_pairs
from lumped.texts import say
from lumped.verdict import PartVerdict, Verdict

__all__ = ["sheet_data", "sheet_pdf"]

_ROOM = {"a4": (182.0, 205.0), "us-letter": (187.0, 188.0)}  # mm for the drawing, inside the margins
_LETTERS = 2.9  # mm
_GAPS = 15e-3  # m; gaps up to this are written down
_MOST_LUMPS = 60


def sheet_pdf(verdict: Verdict, *, paper: str = "a4") -> bytes:
    """Print the sheet of a sculpture.

    Parameters
    ----------
    verdict : Verdict
        What is printed.
    paper : {"a4", "us-letter"}
        Size of the sheet.

    Returns
    -------
    bytes
        A PDF: the drawing at true size first, what each part does after it.

    Raises
    ------
    InputError
        If there is no such size.
    """
    if paper not in _ROOM:
        raise InputError("paper-size", paper=paper, known=", ".join(_ROOM))
    return typeset("sheet", sheet_data(verdict, paper=paper))


def sheet_data(verdict: Verdict, *, paper: str = "a4") -> dict[str, Any]:
    """Gather what the sheet shows, as plain data."""
    sculpture = verdict.sculpture
    near = _near(verdict)
    drawing = _drawing(verdict, near, paper)
    return {
        "paper": paper, "title": sculpture.title, "story": " ".join(sculpture.story.split()),
        "invented": say("paper-invented") if sculpture.invented else "",
        **drawing,
        "ruler": ruler_svg(), "ruler_words": say("paper-ruler"), "ruler_alt": say("paper-alt-ruler"),
        "gauge": gauge_svg(sizes) if (sizes := thicknesses(sculpture)) else "",
        "gauge_words": say("paper-gauge"), "gauge_alt": say("paper-alt-gauge"),
        "headings": {key: say(f"paper-{key}") for key in _HEADINGS},
        "shape": shape_steps(sculpture, near), "push": push_steps(sculpture), "start": start_steps(sculpture),
        "columns": [say(f"paper-column-{key}") for key in ("part", "does", "volts", "milliamperes")],
        "rows": [_row(each) for each in verdict.parts],
        "know": list(verdict.findings), "careful": _halves(verdict.cautions), "computed": list(verdict.how_computed),
    }  # fmt: skip


_HEADINGS = ("shape", "push", "start", "does", "why", "know", "careful", "computed")


def _near(verdict: Verdict) -> tuple[Nearness, ...]:
    """Pairs of lumps that lie close, with gaps that are worth writing down."""
    lumps = verdict.sculpture.lumps
    if len(lumps) > _MOST_LUMPS:
        return verdict.readings.pairs
    pairs = near_pairs(lumps, hand_gap=_GAPS, hand_overlap=0.0)
    return tuple(pair for pair in pairs if not _filled(pair, lumps))


def _filled(pair: Nearness, lumps: Sequence[Lump]) -> bool:
    """Whether a third lump stands in the gap."""
    others = (lump for k, lump in enumerate(lumps) if k not in (pair.first, pair.second))
    return any(float(lump.solid.distance(pair.gap.point[None])[0]) < 0 for lump in others)


def _drawing(verdict: Verdict, near: tuple[Nearness, ...], paper: str) -> dict[str, Any]:
    """The drawing at the largest scale 1/n that fits, turned if that lets it be larger."""
    seen = view_of(verdict)
    apart = tuple(pair for pair in near if pair.gap.distance > 0 or pair.unsure)
    quiet = {name: replace(remark, words="") for name, remark in seen.remarks.items()}
    view = View(sculpture=seen.sculpture, remarks=quiet, near=apart, reading=seen.reading)
    for parts in range(1, 40):
        arrangement = arrange(view, letters=_LETTERS * parts, legs=True)
        box = arrangement.box.widened(0.5)
        size = (box.right - box.left) / parts, (box.far - box.near) / parts
        turned = not _fits(size, _ROOM[paper])
        if not turned or _fits(size[::-1], _ROOM[paper]):
            break
    svg = drawn(arrangement, THEMES["print"], size=1 / parts, unit="mm")
    remarks = [say("paper-true-size") if parts == 1 else say("paper-reduced", parts=parts)]
    if turned:
        remarks.append(say("paper-turned"))
    return {
        "drawing": svg, "drawing_mm": [round(each, 2) for each in size], "turned": turned, "remarks": remarks,
        "drawing_alt": say("paper-alt-drawing"),
        "table_ruler": ruler_svg(scale=1 / parts) if parts > 1 else "", "table_ruler_words": say("paper-table-ruler"),
    }  # fmt: skip


def _fits(size: tuple[float, float], room: tuple[float, float]) -> bool:
    return size[0] <= room[0] and size[1] <= room[1]


def _row(each: PartVerdict) -> dict[str, str]:
    return {
        "part": each.part.name, "title": each.part.title, "does": each.does,
        "volts": each.voltage.text(), "milliamperes": each.current.text(scale=1e3),
        "why": " ".join(map(str, each.reasons)),
    }  # fmt: skip


def _halves(lines: Sequence[str]) -> list[list[str]]:
    """Part lines into two columns of about the same height."""
    heights = [1 + len(line) // 55 for line in lines]
    cut = min(range(len(lines) + 1), key=lambda k: abs(sum(heights[:k]) - sum(heights[k:]) - 0.5))
    return [list(lines[:cut]), list(lines[cut:])]
