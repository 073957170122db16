"""Lumped: dough that carries current, dough that blocks it, and getting things to work with them.

A lump of dough, seen through its lead wires, is a *lumped element*. This package computes that element from the
lump's true shape and chemistry, hands it to a circuit, and says what each part will do and why. Rooms are imported
when they are first used, so that a light command answers at once.

Examples
--------
>>> import lumped
>>> from tempfile import TemporaryDirectory
>>> with TemporaryDirectory() as folder, lumped.open_notebook(folder) as notebook:
...     notebook.frames.documents().empty
True
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from lumped.app.frames import doughs as doughs
    from lumped.app.frames import ingredients as ingredients
    from lumped.app.frames import steps as steps
    from lumped.app.notebooks import open_notebook as open_notebook

__version__ = "0.1.0"

_ROOMS = (
    "app", "chemistry", "circuit", "conduction", "dough", "errors", "notebook", "paper", "picture", "quantities",
    "reference", "sculpt", "shape", "texts", "verdict",
)  # fmt: skip
_USES = {
    "doughs": "lumped.app.frames", "ingredients": "lumped.app.frames", "open_notebook": "lumped.app.notebooks",
    "steps": "lumped.app.frames",
}  # fmt: skip


def __getattr__(name: str) -> Any:
    if name in _ROOMS:
        return import_module(f"lumped.{name}")
    if name in _USES:
        return getattr(import_module(_USES[name]), name)
    raise AttributeError(f"module 'lumped' has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted([*globals(), *_ROOMS, *_USES])
