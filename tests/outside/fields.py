"""Helpers for tests of the field solver: cut solids, and solve with some cells held at given potentials."""

import numpy as np
from scipy.sparse.linalg import spsolve

from lumped.conduction import FaceSystem
from lumped.shape import Block, Piece, cells_of


def cut(solid, pitch, offset=(0, 0, 0), conductivity=1.0):
    """One solid of one dough, as a face system."""
    return faces(
        cells_of([Piece(name="lump", solid=solid, conductivity=conductivity)], [0], pitch=pitch, offset=offset)
    )


def faces(cells):
    names = ("index", "body", "edges", "conductance", "conductivity", "origin", "pitch", "share")
    return FaceSystem(**{name: getattr(cells, name) for name in names})


def held(laplacian, fixed, values):
    """Potentials with `fixed` cells at `values`, and the currents that hold them there."""
    free = ~fixed
    V = values.copy()
    V[free] = spsolve(laplacian[free][:, free].tocsc(), -(laplacian[free][:, fixed] @ values[fixed]))
    return V, laplacian @ V


def tray(length, width, height, pitch=1.0, offset=(0, 0, 0)):
    """A tray of dough, one corner at the origin."""
    return cut(Block(centre=(length / 2, width / 2, height / 2), size=(length, width, height)), pitch, offset)


def sheet_potential(length, width, source, points, rows=60):
    """Potential of a line of unit current in a sheet with insulating edges (σ = 1, per unit thickness).

    Method of images: the row of images in x is summed in closed form, −ln(2 cosh qy − 2 cos qx)/4π with q = π/length,
    the rows in y one by one. Right up to a constant, and for sources that sum to zero.
    """
    total = np.zeros(len(points))
    q = np.pi / length
    for x0 in (source[0], -source[0]):
        for y0 in (source[1], -source[1]):
            for row in range(-rows, rows + 1):
                x, y = points[:, 0] - x0, np.abs(points[:, 1] - y0 - 2 * width * row)
                near = np.log1p(np.exp(-2 * q * y) - 2 * np.exp(-q * y) * np.cos(q * x))
                total -= (near + q * (y - abs(2 * width * row))) / (4 * np.pi)
    return total


def rods_in_sheet(length, width, first, second, radius):
    """Resistance between two rods through a sheet (σ = 1, times thickness): images, and acosh for the pair itself."""
    first, second, tiny = np.array(first), np.array(second), 1e-3
    near = np.array([tiny, 0.0])

    def driven(point):
        return sheet_potential(length, width, first, point) - sheet_potential(length, width, second, point)

    thin = (driven(first[None] + near) + driven(first[None] - near) - driven(second[None] + near)
            - driven(second[None] - near))[0] / 2  # fmt: skip
    apart = np.linalg.norm(first - second)
    return thin - np.log(apart / tiny) / np.pi + np.arccosh(apart / (2 * radius)) / np.pi
