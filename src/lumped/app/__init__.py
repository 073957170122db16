"""What Lumped can be asked to do: one function for each use, the same for the command line, the pages and Python.

`check` judges a sculpture file, `dough` works out a recipe, `ports` gives the conductances between leads, `sheet` and
`draw` put a verdict on paper. No function here prints or lays out anything.
"""

from lumped.app.doughs import dough, wall, wall_of, what_if, what_if_of
from lumped.app.schemas import schema
from lumped.app.sculptures import check, draw, parts, ports, sheet
from lumped.app.settings import Settings, load_settings
from lumped.app.shop import shop_with
from lumped.app.writing import ready_to_write

__all__ = [
    "Settings",
    "check",
    "dough",
    "draw",
    "load_settings",
    "parts",
    "ports",
    "ready_to_write",
    "schema",
    "sheet",
    "shop_with",
    "wall",
    "wall_of",
    "what_if",
    "what_if_of",
]
