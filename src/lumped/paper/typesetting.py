"""One typesetter, kept warm, with the letters that ship in the package; a warning of its is a failure."""

import json
from functools import cache
from importlib.resources import as_file, files
from pathlib import Path
from typing import Any, Literal

import typst

from lumped.paper.letters import require_letters

__all__ = ["TypesettingError", "typeset"]


class TypesettingError(RuntimeError):
    """A template of ours is unsound: the typesetter refused it or warned."""


def typeset(template: str, data: dict[str, Any], *, kind: Literal["pdf", "png"] = "pdf", ppi: float = 144.0) -> bytes:
    """Fill a template with plain data.

    Parameters
    ----------
    template : str
        Name of a file in `templates/`, without its ending.
    data : dict
        What it shows; plain dicts, lists, text and numbers.
    kind : {"pdf", "png"}
        What to make.
    ppi : float
        Pixels an inch of a PNG. [1/inch]

    Returns
    -------
    bytes
        The document; of a PNG the first page.

    Raises
    ------
    InputError
        If a text has letters that the fonts lack.
    TypesettingError
        If the template is refused or gives a warning.

    Examples
    --------
    >>> typeset("svg", {"svg": '<svg xmlns="http://www.w3.org/2000/svg" width="4" height="3"/>'}, kind="png")[1:4]
    b'PNG'
    """
    require_letters(data)
    compiler, folder = _compiler()
    try:
        made, warnings = compiler.compile_with_warnings(
            input=str(folder / f"{template}.typ"),
            format=kind,
            ppi=ppi if kind == "png" else None,
            sys_inputs={"data": json.dumps(data, ensure_ascii=False, allow_nan=False)},
        )
    except typst.TypstError as error:
        raise TypesettingError(f"{template}: {error}") from None
    if warnings:
        raise TypesettingError(f"{template}: {warnings[0].message}")
    page = made[0] if isinstance(made, list) else made
    if page is None:
        raise TypesettingError(f"{template}: nothing was made")
    return bytes(page)


@cache
def _compiler() -> tuple[typst.Compiler, Path]:
    """Set up the typesetter once; the package's files are on disk in every way that it is installed."""
    package = files("lumped.paper")
    with as_file(package.joinpath("templates")) as templates, as_file(package.joinpath("fonts")) as fonts:
        made = typst.Compiler(
            input=str(templates / "svg.typ"), root=str(templates), font_paths=[str(fonts)], ignore_system_fonts=True
        )
        return made, templates
