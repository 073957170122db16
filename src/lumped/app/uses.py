"""The uses of Lumped, one function each."""

from collections.abc import Callable, Sequence
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from lumped.errors import InputError

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough import Dough
    from lumped.dough.what_if import Change
    from lumped.pantry import Pantry
    from lumped.verdict import Verdict
    from lumped.verdict.walls import WallVerdict

__all__ = [
    "check",
    "dough",
    "draw",
    "parts",
    "ports",
    "ready_to_write",
    "schema",
    "sheet",
    "shop_with",
    "wall",
    "wall_of",
    "what_if",
    "write_whole",
]


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


def dough(path: Path, *, batches: Sequence[Path] = (), labels: Sequence[Path] = ()) -> "Dough":
    """Work out the dough of a recipe file.

    Parameters
    ----------
    path : Path
        A recipe file.
    batches : sequence of Path
        Batch files that the prediction learns from, in the order in which they were made.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Returns
    -------
    Dough

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, the recipe can't exist, or a batch contradicts its recipe.
    """
    from lumped.app.named import dough_of, named_by_files

    return dough_of(named_by_files(path, batches=batches, labels=labels))


def shop_with(labels: Sequence[Path], shop: "Pantry | None" = None) -> "Pantry":
    """Give the handbook's ingredients, or those of a shop, with those of some ingredient files.

    Raises
    ------
    InputError
        If a file can't be read.
    """
    from lumped.pantry import pantry

    shop = shop or pantry()
    for each in labels:
        from lumped.pantry.label_file import read_label_toml
        from lumped.pantry.label_table import read_labels_csv

        added = read_labels_csv(each, shop) if each.suffix.lower() == ".csv" else (read_label_toml(each, shop),)
        shop = shop.with_added(*added)
    return shop


def what_if(path: Path, *, labels: Sequence[Path] = ()) -> "tuple[Change, ...]":
    """Change one thing of a recipe at a time, and see what its resistivity does.

    Parameters
    ----------
    path : Path
        A recipe file.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError
        If the recipe can't be read or can't exist.
    """
    from lumped.dough import read_recipe
    from lumped.dough.what_if import what_if as changed

    shop = shop_with(labels)
    return changed(read_recipe(path, shop), shop)


def wall(
    path: Path, *, thickness: float, area: float, lamp: str = "lamp-red", batches: Sequence[Path] = (),
    beside: Path | None = None, labels: Sequence[Path] = (),
) -> "WallVerdict":  # fmt: skip
    """Judge whether a wall of a dough insulates enough beside a lamp, and for how long.

    Parameters
    ----------
    path : Path
        A recipe file.
    thickness, area : float
        From lump to lump, and where the lumps touch the wall. [m], [m²]
    lamp : str
        Key of the lamp in the handbook.
    batches : sequence of Path
        Batch files that the prediction learns from.
    beside : Path, optional
        Recipe file of the conducting dough whose salt creeps in; a usual one if left out.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a recipe can't be read, or there is no such wall.
    HandbookError
        If there is no such lamp.
    """
    from lumped.app.named import named_by_files

    dough = named_by_files(path, batches=batches, labels=labels)
    return wall_of(dough, thickness=thickness, area=area, lamp=lamp, beside=beside)


def wall_of(
    dough: "Named", *, thickness: float, area: float, lamp: str = "lamp-red", beside: Path | None = None
) -> "WallVerdict":
    """Judge a wall of a recipe that was read; the arguments are those of `wall`."""
    from lumped.dough import read_recipe
    from lumped.dough.kneading import kneading
    from lumped.dough.lasting.salt_creep import salt_creep, usual_neighbour
    from lumped.verdict.walls import DRIER, Wall, judge_wall, lasts

    if not (0 < thickness <= 1 and 0 < area <= 1):
        raise InputError("wall-size", thickness=f"{1e3 * thickness:g}", area=f"{1e4 * area:g}")
    shop, done, made = dough.shop, dough.kneading(), Wall(thickness=thickness, area=area)
    salty = kneading(usual_neighbour() if beside is None else read_recipe(beside, shop), shop)
    lasting = lasts(made, salt_creep(done, salty, shop=shop), salt_creep(done, salty, water=DRIER, shop=shop), lamp)
    return judge_wall(made, done.value(done.chain.resistivity, "Ω·m"), lamp, lasting)


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


def ready_to_write(path: Path, endings: tuple[str, ...]) -> None:
    """See before a long computation that its result can be written; a missing folder is made.

    Parameters
    ----------
    path : Path
        Where something will be written.
    endings : tuple of str
        What its name may end in.

    Raises
    ------
    InputError
        If the ending is another one, or nothing can be written there.
    """
    if path.suffix.lower() not in endings:
        raise InputError("file-ending", file=str(path), endings=" or ".join(endings))
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        part = path.with_name(path.name + ".part")
        part.touch()
        part.unlink()
    except (OSError, ValueError) as error:
        raise _unwritable(path, error) from None


def schema(kind: Literal["sculpture", "recipe", "batch", "ingredient", "bundle"]) -> dict[str, Any]:
    """Give the JSON Schema of a kind of file.

    Parameters
    ----------
    kind : {"sculpture", "recipe", "batch", "ingredient", "bundle"}
        Which kind; a bundle is a notebook in one JSON file.
    """
    if kind == "bundle":
        from lumped.notebook.files import bundle_schema

        return bundle_schema()
    if kind == "sculpture":
        from lumped.sculpt import sculpture_schema

        return sculpture_schema()
    if kind == "batch":
        from lumped.dough.batch import batch_schema

        return batch_schema()
    if kind == "ingredient":
        from lumped.pantry.label_file import label_schema

        return label_schema()
    from lumped.dough import recipe_schema

    return recipe_schema()


def write_whole(path: Path, content: bytes) -> None:
    """Write a file whole or not at all.

    Raises
    ------
    InputError
        If it can't be written.
    """
    part = path.with_name(path.name + ".part")
    try:
        part.write_bytes(content)
        part.replace(path)
    except OSError as error:
        with suppress(OSError):
            part.unlink()
        raise _unwritable(path, error) from None


def _unwritable(path: Path, error: Exception) -> InputError:
    return InputError("file-unwritable", file=str(path), problem=getattr(error, "strerror", None) or str(error))
