"""Paper: templates that turn plain data and pictures into PDF at true size.

`sheet_pdf` prints one sculpture to build from; `svg_as_png` makes pixels of a picture. On the sheet 1 mm is 1 mm, or
a whole fraction of it that is said in words: a drawing is scaled by 1, 1/2, 1/3, … and its ruler with it.
"""

from lumped.paper.images import svg_as_png
from lumped.paper.sheets import sheet_data, sheet_pdf
from lumped.paper.typesetting import TypesettingError, typeset

__all__ = ["TypesettingError", "sheet_data", "sheet_pdf", "svg_as_png", "typeset"]
