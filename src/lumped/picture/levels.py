"""Level lines of the potential on a slice through each lump's mid-height: V = Σ Xₖ·Vₖ over the leads k."""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from contourpy import contour_generator
from numpy.typing import NDArray
from scipy.ndimage import distance_transform_edt

from lumped.conduction import cell_potential
from lumped.sculpt import Sculpture
from lumped.verdict import Reading

__all__ = ["Level", "level_lines", "level_step"]

Floats = NDArray[np.float64]
_LINES = 9  # about so many in the body where most volts fall
_INSULATING = 30.0  # times the resistivity of the best dough: such lumps stay plain
_EDGE = 3  # cells that values are carried beyond the skin, so that lines reach it


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """One level line in one lump: its potential [V], its points (n, 2) [mm]."""

    volts: float
    points: Floats


def level_lines(sculpture: Sculpture, reading: Reading) -> dict[str, list[Level]]:
    """Give the level lines of all lumps that carry current.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    reading : Reading
        The field and the operating point.

    Returns
    -------
    dict of str to list of Level
        By name of the lump; insulating and idle lumps are left out.
    """
    slices = dict(_slices(sculpture, reading))
    spans = [float(np.ptp(volts[np.isfinite(volts)])) for _, _, volts in slices.values()]
    if not spans or max(spans) < 1e-4:
        return {}
    step = level_step(max(spans) / _LINES)
    lines = {name: _lines(*found, step) for name, found in slices.items()}
    return {name: found for name, found in lines.items() if found}


def level_step(least: float) -> float:
    """Give the next of 1, 2, 5, 10, … times a power of ten.

    Examples
    --------
    >>> level_step(0.13), level_step(0.021)
    (0.2, 0.05)
    """
    power = 10.0 ** np.floor(np.log10(least))
    return float(next(round(each * power, 12) for each in (1, 2, 5, 10) if each * power >= least * (1 - 1e-9)))


def _slices(sculpture: Sculpture, reading: Reading) -> Iterator[tuple[str, tuple[Floats, Floats, Floats]]]:
    """For each lump that carries current: x [mm], y [mm] and potentials (y, x) [V] at its mid-height."""
    solved = reading.solved
    ports, cells = solved.ports, solved.cells
    potentials = cell_potential(ports, [reading.point.potentials[name] for name in ports.names])
    bridges = len(solved.settled.pieces) - len(sculpture.lumps)
    driven = {run.body for run in solved.settled.runs if run.name not in ports.floating}
    least = min(sculpture.doughs[lump.dough].resistivity.mean for lump in sculpture.lumps)
    for k, lump in enumerate(sculpture.lumps):
        insulating = sculpture.doughs[lump.dough].resistivity.mean > _INSULATING * least
        if insulating or int(solved.settled.bodies[k + bridges]) not in driven:
            continue
        mine = np.flatnonzero(cells.piece == k + bridges)
        if not len(mine):
            continue
        middle = (lump.solid.bounds()[:, 2].mean() - cells.origin[2]) / cells.pitch - 0.5
        layers = np.unique(cells.index[mine, 2])
        mine = mine[cells.index[mine, 2] == layers[np.argmin(np.abs(layers - middle))]]
        yield lump.name, _grid(cells.index[mine, :2], potentials[mine], cells.origin, cells.pitch)


def _grid(index: NDArray[np.int64], volts: Floats, origin: Floats, pitch: float) -> tuple[Floats, Floats, Floats]:
    first, last = index.min(axis=0) - _EDGE, index.max(axis=0) + _EDGE
    grid = np.full(tuple(last - first + 1), np.nan)
    grid[tuple((index - first).T)] = volts
    away, (i, j) = distance_transform_edt(np.isnan(grid), return_indices=True)
    grid = np.where(away <= _EDGE, grid[i, j], np.nan)
    x, y = (1e3 * (origin[k] + pitch * (np.arange(first[k], last[k] + 1) + 0.5)) for k in (0, 1))
    return x, y, grid.T


def _lines(x: Floats, y: Floats, volts: Floats, step: float) -> list[Level]:
    contours = contour_generator(x=x, y=y, z=np.ma.masked_invalid(volts))
    low, high = np.nanmin(volts), np.nanmax(volts)
    levels = step * np.arange(np.ceil(low / step), np.floor(high / step) + 1)
    return [
        Level(volts=float(level), points=np.asarray(line))
        for level in levels
        for line in contours.lines(level)
        if len(line) > 2
    ]
