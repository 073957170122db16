"""Every drawing: sculptures seen from above, level lines, outlines at true size, meshes for a turnable view.

`sculpture_svg` lays a table: dough on a cloth, parts beside it, slips of paper with what each part does. All lengths
are millimetres on the table, x to the right and y away from you; what is drawn at (x, y) stands at (x, −y) in the
picture, for a picture counts downwards.
"""

from lumped.picture.arranging import arrange
from lumped.picture.meshes import LumpMesh, lump_meshes
from lumped.picture.outlines import lump_outlines, outline
from lumped.picture.sculpture import drawn, sculpture_svg
from lumped.picture.theme import THEMES
from lumped.picture.viewing import Remark, View, view_of

__all__ = [
    "THEMES", "LumpMesh", "Remark", "View", "arrange", "drawn", "lump_meshes", "lump_outlines", "outline",
    "sculpture_svg", "view_of",
]  # fmt: skip
