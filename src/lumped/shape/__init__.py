"""Solids, and which body owns which share of each cell's face.

A solid is its signed distance d; pieces come in order and the later one has the space where two overlap. The
conductance of a face is σ × share × pitch, its share the part of the face where the body's signed distance is
negative.
"""

from lumped.shape.cells import Cells, cells_of
from lumped.shape.gaps import Gap, gap_between
from lumped.shape.pieces import Piece
from lumped.shape.solids import Ball, Block, Cut, Disc, PathRoll, Ring, Roll, Solid, Taper

__all__ = [
    "Ball", "Block", "Cells", "Cut", "Disc", "Gap", "PathRoll", "Piece", "Ring", "Roll", "Solid", "Taper", "cells_of",
    "gap_between",
]  # fmt: skip
