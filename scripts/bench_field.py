"""How fast a sculpture is cut into cells and solved, beside general libraries on the same matrix in the same run.

The scene: a bent roll, a ring, straight rolls and a block of insulating dough, 10⁴ times less conducting, in one body
with wires pushed in. All figures are of this machine, now; which threads work is printed. A library's answer is
stopped at the round that first gives the port matrix as well as ours, which it could not know by itself.

    python scripts/bench_field.py [UNKNOWNS]
"""

import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # as the command does, before numpy looks

import numba
import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse import linalg

from lumped.conduction import FaceSystem, Lead, carried_over, solve_ports
from lumped.conduction.leads import Couplings
from lumped.conduction.solver import coupled
from lumped.shape import Block, PathRoll, Piece, Ring, Roll, cells_of

Floats = NDArray[np.float64]
PORT_RTOL = 1e-4
SLIDER = {25_000: 0.08, 60_000: 0.15}  # unknowns: seconds that are wanted from a moved slider to the port matrix
WANTED, MOST_BYTES, STEEPEST = 10.0, 500.0, 1.1
PIECES = (
    Piece(name="path", solid=PathRoll(points=((0, 0, 0.01), (0.06, 0.01, 0.01), (0.07, 0.06, 0.012),
                                              (0.02, 0.08, 0.01)), radius=0.01), conductivity=3.0),
    Piece(name="ring", solid=Ring(centre=(0.05, 0.12, 0.008), inner=0.015, outer=0.035, height=0.016),
          conductivity=3.0),
    Piece(name="stub", solid=Roll(start=(0.02, 0.075, 0.01), end=(0.03, 0.11, 0.012), radius=0.009), conductivity=3.0),
    Piece(name="block", solid=Block(centre=(0.1, 0.06, 0.01), size=(0.06, 0.02, 0.02), turn=0.4), conductivity=3e-4),
    Piece(name="roll", solid=Roll(start=(0.11, 0.07, 0.01), end=(0.15, 0.12, 0.02), radius=0.01), conductivity=3.0),
)  # fmt: skip
WIRES = (
    (0.005, 0.001, 0.02), (0.055, 0.009, 0.02), (0.03, 0.077, 0.02), (0.05, 0.147, 0.016), (0.1, 0.06, 0.02),
    (0.14, 0.108, 0.03), (0.02, 0.12, 0.016), (0.065, 0.04, 0.021),
)  # fmt: skip
LEADS = [
    Lead(name=f"{k}", body=0, points=np.array([(x, y, z), (x, y, z - 0.014)]), radius=2.5e-4)
    for k, (x, y, z) in enumerate(WIRES)
]
_VOLUME = 1.71e-4  # m³ that cells of the scene take, with those that its surface cuts; about


def main() -> int:
    unknowns = int(sys.argv[1]) if len(sys.argv) > 1 else 550_000
    if len(sys.argv) > 2:  # a process of its own, to see how much memory it takes
        return _memory(unknowns)
    print(f"{os.cpu_count()} cores, numba on {numba.get_num_threads()} threads above 150,000 unknowns, one below")
    kept = [_slider(size, wanted) for size, wanted in SLIDER.items()]
    kept.append(_growth())
    kept.append(_told_memory(unknowns))
    kept.append(_against_libraries(unknowns))
    return 0 if all(kept) else 1


def system_of(unknowns: int, *, moved: float = 0.0) -> FaceSystem:
    """Cut the scene into about so many unknowns, its first roll moved by so many metres."""
    pieces = list(PIECES)
    if moved:
        path = PIECES[0].solid
        assert isinstance(path, PathRoll)
        points = tuple((x + moved, y, z) for x, y, z in path.points)
        pieces[0] = Piece(name="path", solid=PathRoll(points=points, radius=path.radius), conductivity=3.0)
    cells = cells_of(pieces, [0] * len(pieces), pitch=(_VOLUME / unknowns) ** (1 / 3))
    return FaceSystem(
        index=cells.index, body=cells.body, edges=cells.edges, conductance=cells.conductance,
        conductivity=cells.conductivity, origin=cells.origin, pitch=cells.pitch, share=cells.share,
    )  # fmt: skip


def _slider(unknowns: int, wanted: float) -> bool:
    """Move a lump a little, cut and solve for six leads to a thousandth, from nothing and from the last answer."""
    cut, cold, warm, size = [], [], [], 0
    before, known = system_of(unknowns), solve_ports(system_of(unknowns), LEADS[:6], port_rtol=1e-3)
    for k in range(1, 24):
        start = time.perf_counter()
        system = system_of(unknowns, moved=2e-4 * k)
        cut.append(time.perf_counter() - start)
        cold.append(_timed(lambda system=system: solve_ports(system, LEADS[:6], port_rtol=1e-3)))
        start = time.perf_counter()
        near = carried_over(before, known.potentials, system)
        before, known = system, solve_ports(system, LEADS[:6], port_rtol=1e-3, start=near)
        warm.append(time.perf_counter() - start)
        size = system.size
    all_of_it = 1e3 * (median(cut[3:]) + median(warm[3:]))
    judged = _judged(wanted=f"{1e3 * wanted:.0f} ms", kept=all_of_it <= 1e3 * wanted)
    _row(f"a slider moved, {size:,} unknowns, 6 leads", f"{all_of_it:.0f} ms", judged)
    _row("  cutting; solving; solving from nothing",
         f"{1e3 * median(cut[3:]):.0f}, {1e3 * median(warm[3:]):.0f}, {1e3 * median(cold[3:]):.0f} ms", "")  # fmt: skip
    return all_of_it <= 1e3 * wanted


def _growth() -> bool:
    """How the time grows with the unknowns, cutting and 8 leads to 1e-4."""
    sizes, took = [], []
    for unknowns in (30_000, 120_000, 480_000, 1_920_000):
        best = np.inf
        for _ in range(2):
            start = time.perf_counter()
            system = system_of(unknowns)
            found = solve_ports(system, LEADS, port_rtol=PORT_RTOL)
            best = min(best, time.perf_counter() - start)
        sizes.append(system.size)
        took.append(best)
        _row(
            f"cut and solved, {system.size:,} unknowns, 8 leads", f"{1e3 * best:.0f} ms", f"({found.iterations} rounds)"
        )
    slope = float(np.polyfit(np.log(sizes), np.log(took), 1)[0])
    kept = slope <= STEEPEST
    _row("time grows as unknowns to the power", f"{slope:.2f}", _judged(wanted=f"{STEEPEST:g}", kept=kept))
    return kept


def _memory(unknowns: int) -> int:
    """Print the most memory that cutting and solving take beyond the program itself, and the number of unknowns."""
    solve_ports(system_of(5_000), LEADS, port_rtol=PORT_RTOL)  # loops are read back
    Path("/proc/self/clear_refs").write_text("5", encoding="ascii")  # the most begins again from what is held now
    before = _held("VmRSS")
    system = system_of(unknowns)
    solve_ports(system, LEADS, port_rtol=PORT_RTOL)
    print(_held("VmHWM") - before, system.size)
    return 0


def _held(row: str) -> int:
    """Memory of this process, as Linux tells it. [bytes]"""
    rows = dict(line.split(":", 1) for line in Path("/proc/self/status").read_text(encoding="ascii").splitlines())
    return 1024 * int(rows[row].split()[0])


def _told_memory(unknowns: int) -> bool:
    done = subprocess.run(
        [sys.executable, __file__, f"{unknowns}", "memory"], capture_output=True, text=True, check=True
    )
    taken, size = map(int, done.stdout.split())
    assert taken > 0, "the system did not tell how much memory was taken"
    kept = taken / size <= MOST_BYTES
    _row(
        f"memory at {size:,} unknowns, 8 leads",
        f"{taken / size:.0f} bytes",
        _judged(wanted=f"{MOST_BYTES:.0f}", kept=kept),
    )
    return kept


def _against_libraries(unknowns: int) -> bool:
    """The same matrix, 8 leads, set-up included, to the same port error."""
    import pyamg

    system = system_of(unknowns)
    ours = min(_timed(lambda: solve_ports(system, LEADS, port_rtol=PORT_RTOL)) for _ in range(3))
    exact = solve_ports(system, LEADS, port_rtol=1e-9).matrix
    error = _off(solve_ports(system, LEADS, port_rtol=PORT_RTOL).matrix, exact)
    _row(f"{system.size:,} unknowns, 8 leads, ours", f"{1e3 * ours:.0f} ms", f"(port error {error:.0e})")
    matrix, currents, own = _matrix(system, coupled(system, LEADS))
    best = np.inf
    for name, made in (("Ruge–Stüben", pyamg.ruge_stuben_solver), ("smoothed aggregation",
                        pyamg.smoothed_aggregation_solver)):  # fmt: skip
        took, rounds = _library(made, matrix, currents, own, exact=exact, wanted=max(error, 1e-9))
        best = min(best, took)
        _row(f"  pyamg {pyamg.__version__}, {name} and CG", f"{1e3 * took:.0f} ms", f"({rounds} rounds a lead)")
    kept = best / ours >= WANTED
    _row("ours is faster than the best of them", f"{best / ours:.1f}×", _judged(wanted=f"{WANTED:g}×", kept=kept))
    return kept


def _library(
    made: Callable[..., object],
    matrix: sparse.csr_array,
    currents: Floats,
    own: Floats,
    *,
    exact: Floats,
    wanted: float,
) -> tuple[float, int]:
    """Time a library's set-up, and as many rounds for each lead as bring the port error to what is wanted."""
    start = time.perf_counter()
    cycle = made(sparse.csr_matrix(matrix)).aspreconditioner()  # type: ignore[attr-defined]
    set_up = time.perf_counter() - start
    for rounds in range(2, 200):
        start = time.perf_counter()
        x = np.column_stack([linalg.cg(matrix, b, rtol=1e-14, maxiter=rounds, M=cycle)[0] for b in currents.T])
        took = time.perf_counter() - start
        found = np.diag(own) - (currents.T @ x + x.T @ currents - x.T @ (matrix @ x))
        if _off(found, exact[:-1, :-1]) <= wanted:
            return set_up + took, rounds
    return np.inf, 200


def _matrix(system: FaceSystem, couplings: Couplings) -> tuple[sparse.csr_array, Floats, Floats]:
    """The matrix with its leads, their currents for a volt, their own conductances; the last is held at zero."""
    w, g = couplings.weights, couplings.conductance
    member = sparse.csr_array((g, (np.arange(len(g)), couplings.port)))
    matrix = sparse.csr_array(system.laplacian() + w.T @ sparse.diags_array(g) @ w)
    return matrix, (w.T @ member).toarray()[:, :-1], np.asarray(member.sum(axis=0)).ravel()[:-1]


def _off(found: Floats, exact: Floats) -> float:
    """Largest difference of a conductance to what is exact, relative to the leads' own."""
    n = len(found)
    scale = np.sqrt(np.outer(np.diag(exact)[:n], np.diag(exact)[:n]))
    return float(np.max(np.abs(found - exact[:n, :n]) / scale))


def _timed(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def _row(what: str, figure: str, more: str) -> None:
    print(f"{what:<52}{figure:>12}  {more}", flush=True)


def _judged(*, wanted: str, kept: bool) -> str:
    return f"wanted {wanted}: {'reached' if kept else 'MISSED'}"


if __name__ == "__main__":
    sys.exit(main())
