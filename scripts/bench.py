"""How fast readings are written down and read back, against a floor measured in the same run.

The floor is SQLite alone: the same rows into the same table with the same settings and as many commits, by one
`executemany` each, without seals. All figures are from this machine, now; threads: one.

    python scripts/bench.py [READINGS] [BATCH]
"""

import os
import sqlite3
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import numpy as np

from lumped.notebook import Notebook, open_notebook

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from tests.notebook.servers import Server, why_none  # noqa: E402

WANTED = 50_000  # readings a second, in batches


def main() -> int:
    readings = int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000
    batch = int(sys.argv[2]) if len(sys.argv) > 2 else 10_000
    print(f"{readings:,} readings in batches of {batch:,}, each batch a commit; 1 thread of {os.cpu_count()}")
    with tempfile.TemporaryDirectory(prefix="lumped-bench-") as name:
        folder = Path(name)
        floor = _floor(folder / "floor.sqlite", readings, batch)
        print(f"{'floor: SQLite alone, a file':<44}{readings / floor:>12,.0f} /s")
        written = _notebook("a notebook in a file", folder / "notebook.sqlite", readings, batch)
        print(f"{'  of the floor':<44}{floor / written:>12.2f}")
        if reason := why_none():
            print(f"on a server: {reason}")
        else:
            server = Server()
            try:
                _notebook("a notebook on a server (one on this machine)", server.fresh(), readings, batch)
            finally:
                server.close()
    fast = readings / written >= WANTED
    print(f"wanted in a file: {WANTED:,} /s: {'reached' if fast else 'MISSED'}")
    return 0 if fast else 1


def _floor(file: Path, readings: int, batch: int) -> float:
    with open_notebook(file) as notebook:
        _series(notebook)
    with closing(sqlite3.connect(file, isolation_level=None)) as connection:
        connection.execute("PRAGMA synchronous = FULL")
        connection.execute("PRAGMA foreign_keys = ON")
        rows = [
            [(1, first + k + 1, int(at), float(value), None) for k, (at, value) in enumerate(zip(*each, strict=True))]
            for first, each in _batches(readings, batch)
        ]
        return _seconds(lambda: [_commit(connection, each) for each in rows])


def _commit(connection: sqlite3.Connection, rows: list[Any]) -> None:
    connection.execute("BEGIN IMMEDIATE")
    connection.executemany("INSERT INTO readings (series, number, at, value, remark) VALUES (?, ?, ?, ?, ?)", rows)
    connection.execute("COMMIT")


def _notebook(what: str, place: str | Path, readings: int, batch: int) -> float:
    with open_notebook(place) as notebook:
        series = _series(notebook)
        given = [*_batches(readings, batch)]
        written = _seconds(lambda: [notebook.append(series, value, at=at) for _, (at, value) in given])
        read = _seconds(lambda: notebook.readings(series))
        thin = _seconds(lambda: notebook.readings(series, most=2_000))
        checked = _seconds(lambda: _see(notebook, series, readings))
    print(f"{what:<44}{readings / written:>12,.0f} /s written and sealed")
    print(f"{'  read back':<44}{readings / read:>12,.0f} /s")
    print(f"{'  read and thinned to 2,000':<44}{readings / thin:>12,.0f} /s")
    print(f"{'  verified, each seal computed anew':<44}{readings / checked:>12,.0f} /s")
    return written


def _see(notebook: Notebook, series: str, readings: int) -> None:
    if problems := notebook.verify().problems:
        raise SystemExit(f"not sound: {problems[0]}")
    if len(notebook.readings(series)) != readings:
        raise SystemExit("readings are missing")


def _series(notebook: Notebook) -> str:
    return notebook.begin_series("invented", unit="V", instrument="none", method="computed").id


def _batches(readings: int, batch: int) -> Iterator[tuple[int, tuple[Any, Any]]]:
    start = 1_700_000_000_000_000
    for first in range(0, readings, batch):
        at = start + 1_000 * np.arange(first, min(first + batch, readings), dtype=np.int64)
        yield first, (at, np.sin(at / 7e6) + 0.001 * (at % 97))


def _seconds(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


if __name__ == "__main__":
    sys.exit(main())
