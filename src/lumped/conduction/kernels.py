"""Loops over unknowns, compiled: eight columns side by side, for all leads at once.

A `Network`'s row i holds links to its neighbours: with conductances g and what leaves it to leads, d,

    (A x)_i = d_i x_i + Σ_j g_ij (x_i - x_j).

Each loop reads a row's links once and all columns of its neighbours, in single precision; `imbalance` alone is in
double, for what is left over of Kirchhoff's law is a small difference of large currents. Unknowns of one colour share
no link, so that a sweep over them may run in any order: results don't depend on how many threads there are.
"""

from collections.abc import Callable
from types import FunctionType
from typing import Any

import numpy as np
from numba import prange
from numpy.typing import NDArray

from lumped.compiling import compiled

__all__ = ["COLUMNS", "PARALLEL", "SERIAL", "Kernels"]

Singles = NDArray[np.float32]
Doubles = NDArray[np.float64]
Integers = NDArray[np.int32]
COLUMNS = 8
_CHUNK = 1024  # rows of one partial sum: sums don't depend on the number of threads


def _relax(starts: Integers, columns: Integers, links: Singles, inverse: Singles, x: Singles, b: Singles,
           first: int, last: int) -> None:  # fmt: skip
    """Balance each unknown from `first` to `last`, all of one colour, with its neighbours as they are."""
    for i in prange(first, last):
        a0, a1, a2, a3 = b[i, 0], b[i, 1], b[i, 2], b[i, 3]
        a4, a5, a6, a7 = b[i, 4], b[i, 5], b[i, 6], b[i, 7]
        for e in range(starts[i], starts[i + 1]):
            j, g = columns[e], links[e]
            a0 += g * x[j, 0]
            a1 += g * x[j, 1]
            a2 += g * x[j, 2]
            a3 += g * x[j, 3]
            a4 += g * x[j, 4]
            a5 += g * x[j, 5]
            a6 += g * x[j, 6]
            a7 += g * x[j, 7]
        scale = inverse[i]
        x[i, 0], x[i, 1], x[i, 2], x[i, 3] = scale * a0, scale * a1, scale * a2, scale * a3
        x[i, 4], x[i, 5], x[i, 6], x[i, 7] = scale * a4, scale * a5, scale * a6, scale * a7


def _scale(inverse: Singles, x: Singles, b: Singles, first: int, last: int) -> None:
    """Balance unknowns whose neighbours are all at zero."""
    for i in prange(first, last):
        for c in range(COLUMNS):
            x[i, c] = inverse[i] * b[i, c]


def _multiply(starts: Integers, columns: Integers, links: Singles, leak: Singles, x: Singles, out: Singles) -> None:
    """Give A x, from differences: neighbours are nearly alike, and what makes them differ must not be lost."""
    for i in prange(len(leak)):
        d = leak[i]
        x0, x1, x2, x3, x4, x5, x6, x7 = x[i, 0], x[i, 1], x[i, 2], x[i, 3], x[i, 4], x[i, 5], x[i, 6], x[i, 7]
        a0, a1, a2, a3, a4, a5, a6, a7 = d * x0, d * x1, d * x2, d * x3, d * x4, d * x5, d * x6, d * x7
        for e in range(starts[i], starts[i + 1]):
            j, g = columns[e], links[e]
            a0 += g * (x0 - x[j, 0])
            a1 += g * (x1 - x[j, 1])
            a2 += g * (x2 - x[j, 2])
            a3 += g * (x3 - x[j, 3])
            a4 += g * (x4 - x[j, 4])
            a5 += g * (x5 - x[j, 5])
            a6 += g * (x6 - x[j, 6])
            a7 += g * (x7 - x[j, 7])
        out[i, 0], out[i, 1], out[i, 2], out[i, 3] = a0, a1, a2, a3
        out[i, 4], out[i, 5], out[i, 6], out[i, 7] = a4, a5, a6, a7


def _residual(starts: Integers, columns: Integers, links: Singles, leak: Singles, x: Singles, b: Singles,
              out: Singles, last: int) -> None:  # fmt: skip
    """Give b - A x; from `last` on, where a sweep has just balanced each unknown, it is zero."""
    for i in prange(len(leak)):
        if i >= last:
            for c in range(COLUMNS):
                out[i, c] = 0.0
            continue
        d = leak[i]
        x0, x1, x2, x3, x4, x5, x6, x7 = x[i, 0], x[i, 1], x[i, 2], x[i, 3], x[i, 4], x[i, 5], x[i, 6], x[i, 7]
        a0, a1, a2, a3 = b[i, 0] - d * x0, b[i, 1] - d * x1, b[i, 2] - d * x2, b[i, 3] - d * x3
        a4, a5, a6, a7 = b[i, 4] - d * x4, b[i, 5] - d * x5, b[i, 6] - d * x6, b[i, 7] - d * x7
        for e in range(starts[i], starts[i + 1]):
            j, g = columns[e], links[e]
            a0 += g * (x[j, 0] - x0)
            a1 += g * (x[j, 1] - x1)
            a2 += g * (x[j, 2] - x2)
            a3 += g * (x[j, 3] - x3)
            a4 += g * (x[j, 4] - x4)
            a5 += g * (x[j, 5] - x5)
            a6 += g * (x[j, 6] - x6)
            a7 += g * (x[j, 7] - x7)
        out[i, 0], out[i, 1], out[i, 2], out[i, 3] = a0, a1, a2, a3
        out[i, 4], out[i, 5], out[i, 6], out[i, 7] = a4, a5, a6, a7


def _imbalance(starts: Integers, columns: Integers, links: Doubles, leak: Doubles, x: Doubles, out: Doubles) -> None:
    """Give A x in double, from differences: what goes in and out of a cell cancels exactly."""
    for i in prange(len(leak)):
        for c in range(COLUMNS):
            out[i, c] = leak[i] * x[i, c]
        for e in range(starts[i], starts[i + 1]):
            j, g = columns[e], links[e]
            for c in range(COLUMNS):
                out[i, c] += g * (x[i, c] - x[j, c])


def _gathered(starts: Integers, members: Integers, fine: Singles, out: Singles) -> None:
    """Sum over each group's members."""
    for k in prange(len(starts) - 1):
        a0 = a1 = a2 = a3 = a4 = a5 = a6 = a7 = np.float32(0.0)
        for e in range(starts[k], starts[k + 1]):
            i = members[e]
            a0 += fine[i, 0]
            a1 += fine[i, 1]
            a2 += fine[i, 2]
            a3 += fine[i, 3]
            a4 += fine[i, 4]
            a5 += fine[i, 5]
            a6 += fine[i, 6]
            a7 += fine[i, 7]
        out[k, 0], out[k, 1], out[k, 2], out[k, 3] = a0, a1, a2, a3
        out[k, 4], out[k, 5], out[k, 6], out[k, 7] = a4, a5, a6, a7


def _handed_down(group: Integers, coarse: Singles, x: Singles) -> None:
    """Add to each unknown what its group moved by."""
    for i in prange(len(group)):
        k = group[i]
        for c in range(COLUMNS):
            x[i, c] += coarse[k, c]


def _dots(a: Singles, b: Singles, d: Singles, e: Singles) -> Doubles:
    """Products a·b, a·d and a·e of each column, (3, COLUMNS): chunks in single precision, their sum in double."""
    chunks = (len(a) + _CHUNK - 1) // _CHUNK
    part = np.zeros((chunks, 3, COLUMNS), np.float32)
    for k in prange(chunks):
        for i in range(k * _CHUNK, min((k + 1) * _CHUNK, len(a))):
            for c in range(COLUMNS):
                part[k, 0, c] += a[i, c] * b[i, c]
                part[k, 1, c] += a[i, c] * d[i, c]
                part[k, 2, c] += a[i, c] * e[i, c]
    total = np.zeros((3, COLUMNS))
    for k in range(chunks):
        total += part[k]
    return total


def _products(a: Singles, b: Singles) -> Doubles:
    """aᵀ b of all pairs of columns, (COLUMNS, COLUMNS): chunks in single precision, their sum in double."""
    chunks = (len(a) + _CHUNK - 1) // _CHUNK
    part = np.zeros((chunks, COLUMNS, COLUMNS), np.float32)
    for k in prange(chunks):
        for i in range(k * _CHUNK, min((k + 1) * _CHUNK, len(a))):
            for c in range(COLUMNS):
                for d in range(COLUMNS):
                    part[k, c, d] += a[i, c] * b[i, d]
    total = np.zeros((COLUMNS, COLUMNS))
    for k in range(chunks):
        total += part[k]
    return total


def _stepped(x: Singles, factor: Singles, p: Singles) -> None:
    """Add factor · p to x, a factor for each column."""
    for i in prange(len(x)):
        for c in range(COLUMNS):
            x[i, c] += factor[c] * p[i, c]


def _combined(out: Singles, first: Singles, a: Singles, second: Singles, b: Singles) -> None:
    """Give first · a + second · b, factors for each column; `out` may be one of the two."""
    for i in prange(len(out)):
        for c in range(COLUMNS):
            out[i, c] = first[c] * a[i, c] + second[c] * b[i, c]


class Kernels:
    """All loops, compiled for one thread or for all."""

    def __init__(self, *, parallel: bool) -> None:
        def made(function: Callable[..., Any]) -> Callable[..., Any]:
            loop = FunctionType(function.__code__, function.__globals__, function.__name__)
            loop.__qualname__ = f"{'all' if parallel else 'one'}.{function.__name__}"  # numba keeps them by this name
            return compiled(loop, parallel=parallel, fastmath={"contract"})

        self.relax = made(_relax)
        self.scale = made(_scale)
        self.multiply = made(_multiply)
        self.residual = made(_residual)
        self.imbalance = made(_imbalance)
        self.gathered = made(_gathered)
        self.handed_down = made(_handed_down)
        self.dots = made(_dots)
        self.products = made(_products)
        self.stepped = made(_stepped)
        self.combined = made(_combined)


SERIAL, PARALLEL = Kernels(parallel=False), Kernels(parallel=True)


def compile_all() -> None:
    """Compile every loop for the types that the solver gives it, or read back what was compiled before."""
    row, rows = np.zeros(2, np.int32), np.ones((1, COLUMNS), np.float32)
    none, one = np.zeros(0, np.int32), np.ones(1, np.float32)
    empty, factor, long = np.zeros(0, np.float32), np.ones(COLUMNS, np.float32), np.zeros((1, COLUMNS))
    for loops in (SERIAL, PARALLEL):
        loops.relax(row, none, empty, one, rows, rows, 0, 1)
        loops.scale(one, rows, rows, 0, 1)
        loops.multiply(row, none, empty, one, rows, rows)
        loops.residual(row, none, empty, one, rows, rows, rows, 1)
        loops.imbalance(row, none, np.zeros(0), np.ones(1), long, long)
        loops.gathered(row, none, rows, rows)
        loops.handed_down(np.zeros(1, np.int32), rows, rows)
        loops.dots(rows, rows, rows, rows)
        loops.products(rows, rows)
        loops.stepped(rows, factor, rows)
        loops.combined(rows, factor, rows, factor, rows)
