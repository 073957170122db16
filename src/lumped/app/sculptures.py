"""A sculpture file: judged, drawn, on a sheet; what its bodies conduct, and the parts that it may name."""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from lumped.app.shop import shop_with
from lumped.app.writing import ready_to_write, write_whole

if TYPE_CHECKING:
    from lumped.verdict import Verdict

__all__ = ["check", "draw", "parts", "ports", "sheet"]


def check(
    path: Path,
    *,
    effort: Literal["quick", "full"] = "full",
    report: Callable[[float], None] = lambda share: None,
    labels: Sequence[Path] = (),
) -> "Verdict":
    """Judge the sculpture in a file.

    Parameters
    ----------
    path : Path
        A sculpture file.
    effort : {"quick", "full"}
        How finely to compute.
    report : callable
        Told the share that is done, 0 to 1. [1]
    labels : sequence of Path
        Ingredient files, for what its recipes name and the handbook does not have.

    Returns
    -------
    Verdict

    Raises
    ------
    SculptureError, RecipeError
        If the file, or a recipe it names, can't be read.
    SolverError
        If a computation does not reach its accuracy.
    """
    from lumped.sculpt import Effort, read_sculpture
    from lumped.verdict import judge

    return judge(read_sculpture(path, shop_with(labels)), Effort.named(effort), report)


def draw(verdict: "Verdict", path: Path) -> None:
    """Write a picture of a judged sculpture, SVG or PNG by the name's ending.

    Parameters
    ----------
    verdict : Verdict
        What to draw.
    path : Path
        Where to.

    Raises
    ------
    InputError
        If the ending is another one, or the file can't be written.
    """
    from lumped.paper import svg_as_png
    from lumped.picture import sculpture_svg

    ready_to_write(path, (".svg", ".png"))
    svg = sculpture_svg(verdict)
    write_whole(path, svg.encode() if path.suffix.lower() == ".svg" else svg_as_png(svg))


def sheet(verdict: "Verdict", path: Path, *, paper: str = "a4") -> None:
    """Write the printed sheet of a judged sculpture.

    Parameters
    ----------
    verdict : Verdict
        What to print.
    path : Path
        Where to; its name ends in .pdf.
    paper : {"a4", "us-letter"}
        Size of the sheet.

    Raises
    ------
    InputError
        If the ending is another one, or the file can't be written.
    """
    from lumped.paper import sheet_pdf

    ready_to_write(path, (".pdf",))
    write_whole(path, sheet_pdf(verdict, paper=paper))


def ports(
    path: Path, *, effort: Literal["quick", "full"] = "full", labels: Sequence[Path] = ()
) -> dict[str, Any]:  # fmt: skip
    """Give the conductances between the leads of a sculpture, as drawn.

    Parameters
    ----------
    path : Path
        A sculpture file.
    effort : {"quick", "full"}
        How finely to compute.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Returns
    -------
    dict
        Names of the ports, their matrix [S], and how well it was computed.
    """
    from lumped.sculpt import Effort, find_near_pairs, read_sculpture, settled, solve_settled

    sculpture = read_sculpture(path, shop_with(labels))
    case = settled(sculpture, [pair for pair in find_near_pairs(sculpture) if pair.touching])
    conductivities = {name: 1 / each.resistivity.mean for name, each in sculpture.doughs.items()}
    solved = solve_settled(case, conductivities, Effort.named(effort))
    return {
        "kind": "ports", "schema": 1, "title": sculpture.title,
        "ports": [
            {"name": run.name, "leg": run.leg.node, "body": run.body, "lumps": list(run.lumps), "length_m": run.length}
            for run in case.runs
        ],
        "matrix_S": solved.ports.matrix.tolist(),
        "alone": list(solved.ports.floating),
        "pitch_m": solved.ports.pitch, "unknowns": solved.ports.unknowns, "iterations": solved.ports.iterations,
        "port_error": solved.ports.port_error, "residual": solved.ports.residual, "grid_spread": solved.spread,
    }  # fmt: skip


def parts() -> list[dict[str, Any]]:
    """Give the parts and leads that a sculpture file may name.

    Returns
    -------
    list of dict
        Key, plain name, and legs (plus first; none for bare leads).

    Examples
    --------
    >>> next(row for row in parts() if row["key"] == "lamp-red")
    {'key': 'lamp-red', 'name': 'red lamp', 'legs': ['long', 'short']}
    """
    from lumped.reference import handbook

    book = handbook()
    entries = [
        book.entry(table, key)
        for table in ("lamps", "motors", "packs", "switches", "resistors", "gauges")
        for key in book.keys(table)
    ]
    return [
        {"key": each.key, "name": each.name, "legs": list(each.facts.get("legs", {}).values())}
        for each in entries
        if "legs" in each.facts or each.facts.get("kind") == "gauge"
    ]
