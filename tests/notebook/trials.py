"""Trials of "nothing lost": children that are killed at any moment, and a close look at what they leave behind."""

import json
import os
import select
import shutil
import signal
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from random import Random
from typing import Any

import numpy as np
from tests.notebook.nursery import body_of, recorded_value, shared, values_of

from lumped.notebook import Notebook, open_notebook

SCENES = ("load", "load", "load", "load", "two programs", "two programs", "beginning", "migrating", "backup")
"""What a child is at when it is killed; what stands here more often is tried more often."""

SPAN_S = {"load": 0.4, "two programs": 0.4, "beginning": 0.1, "migrating": 0.1, "backup": 0.04}
"""Within how long after a child's start the kill comes; the short ones take about that long."""


class Child:
    """A child at work, and what it has been acknowledged."""

    def __init__(self, nursery: "Nursery", folder: Path, task: dict[str, Any]) -> None:
        pipe = folder / f"pipe-{next(nursery.names)}"
        os.mkfifo(pipe)
        self._handle = os.open(pipe, os.O_RDONLY | os.O_NONBLOCK)
        self._nursery, self._said = nursery, b""
        self.number = int(nursery.ask({**task, "pipe": str(pipe)}))

    def run_for(self, seconds: float) -> None:
        """Let it work, and take what it says."""
        until = time.monotonic() + seconds
        while (left := until - time.monotonic()) > 0:
            self._listen(left)

    def run_until(self, word: str, *, at_most: float = 60) -> None:
        """Let it work until it says something."""
        until = time.monotonic() + at_most
        while f'["{word}"' not in self._said.decode():
            assert time.monotonic() < until, f"the child did not say {word!r}"
            self._listen(0.05)

    def kill(self) -> int:
        """Kill it in the middle of whatever it does (no handler, no farewell)."""
        os.kill(self.number, signal.SIGKILL)
        return self.end()

    def end(self) -> int:
        """Wait for its end, and give its exit code: -9 if it was killed."""
        code = int(self._nursery.ask({"reap": self.number}))
        while self._listen(0):
            pass
        os.close(self._handle)
        return code

    def finish(self, *, at_most: float = 300) -> None:
        """Let it come to its own end, which must be a good one."""
        self.run_until("end", at_most=at_most)
        assert self.end() == 0

    @property
    def acknowledged(self) -> list[list[Any]]:
        """All that it was acknowledged, as it said; half a line was not said."""
        whole = self._said[: self._said.rfind(b"\n") + 1]
        return [json.loads(line) for line in whole.splitlines()]

    def _listen(self, seconds: float) -> bool:
        if not select.select([self._handle], [], [], seconds)[0]:
            return False
        said = os.read(self._handle, 65_536)
        self._said += said
        if not said:
            time.sleep(min(seconds, 0.002))  # nobody has the other end open yet, or any more
        return bool(said)


class Nursery:
    """Starts children quickly; `close` ends it."""

    def __init__(self) -> None:
        self.names: Iterator[int] = iter(range(10**9))
        self._process = subprocess.Popen(
            [sys.executable, "-W", "ignore", "-m", "tests.notebook.nursery"], cwd=Path(__file__).parents[2],
            stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
        )  # fmt: skip
        assert self._heard() == "ready"

    def start(self, folder: Path, job: str, **task: Any) -> Child:
        """Start a child at a job of the nursery."""
        return Child(self, folder, {"job": job, **task})

    def ask(self, task: dict[str, Any]) -> str:
        assert self._process.stdin is not None
        self._process.stdin.write(json.dumps(task) + "\n")
        self._process.stdin.flush()
        return self._heard()

    def close(self) -> None:
        self._process.communicate(timeout=20)

    def _heard(self) -> str:
        assert self._process.stdout is not None
        return self._process.stdout.readline().strip()


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What was found after a kill."""

    scene: str
    seed: int
    after_s: float
    revisions: int = 0  # acknowledged
    readings: int = 0
    beyond: int = 0  # commits that are there and were not acknowledged before the kill: at most one for each writer
    problems: tuple[str, ...] = field(default=())


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """What the trials start from, made once: each copies it."""

    begun: Path
    document: str
    series: str
    old: Path
    old_seals: frozenset[str]
    nursery: Nursery


@contextmanager
def ground(folder: Path) -> Iterator[Ground]:
    """Make a begun notebook with a shared document and series, and one of the oldest layout; start the nursery."""
    from tests.notebook.old.making import thaw

    folder.mkdir(exist_ok=True)
    begun = folder / "begun.sqlite"
    with open_notebook(begun) as notebook:
        document, series = shared(notebook, "", "")
    nursery = Nursery()
    try:
        old = thaw(folder / "old.sqlite")
        yield Ground(begun=begun, document=document, series=series, old=old, old_seals=old_seals(old), nursery=nursery)
    finally:
        nursery.close()


def old_seals(file: Path) -> frozenset[str]:
    import sqlite3

    connection = sqlite3.connect(file)
    try:
        return frozenset(
            seal for (seal,) in connection.execute("SELECT seal FROM revisions UNION ALL SELECT seal FROM batches")
        )
    finally:
        connection.close()


def kill_once(seed: int, folder: Path, at: Ground) -> Outcome:
    """Kill a child at a moment that the seed draws, and look at what is left.

    Parameters
    ----------
    seed : int
        Draws the scene and the moment; the moment counts by the clock, so no two runs are alike.
    folder : Path
        An empty one.
    at : Ground
        What to start from.
    """
    chance = Random(seed)
    scene = SCENES[seed % len(SCENES)]
    file = folder / "notebook.sqlite"
    after = chance.uniform(0, SPAN_S[scene])
    document, series = at.document, at.series
    if scene == "migrating":
        shutil.copyfile(at.old, file)
    elif scene != "beginning":
        shutil.copyfile(at.begun, file)
    if scene in ("beginning", "migrating"):
        document = series = ""
    if scene == "backup":
        return _kill_backup(seed, after, folder, file, at)
    shares = {"document": document, "series": series}
    child = at.nursery.start(folder, "work", place=str(file), seed=seed + 1, **shares)
    children = [child]
    if scene == "two programs":
        children.append(at.nursery.start(folder, "work", place=str(file), seed=500_000 + seed, steps=60, **shares))
    child.run_for(after)
    problems = [] if child.kill() == -signal.SIGKILL else ["the child was gone before it was killed"]
    for other in children[1:]:
        other.finish()
    with open_notebook(file) as notebook:
        found, problems_found = look([each.acknowledged for each in children], notebook, killed=1)
        if scene == "migrating":
            kept = {each.seal for entry in every(notebook) for each in notebook.history(entry)}
            kept |= {batch.seal for each in notebook.series() for batch in batches(notebook, each.id)}
            problems += [f"lost from the old notebook: {seal}" for seal in sorted(at.old_seals - kept)]
        notebook.save("trial", body_of(10**6, 0))  # and it goes on
    return Outcome(scene=scene, seed=seed, after_s=after, problems=(*problems, *problems_found), **found)


def _kill_backup(seed: int, after: float, folder: Path, file: Path, at: Ground) -> Outcome:
    with open_notebook(file) as notebook:
        for step in range(20):
            notebook.save("trial", body_of(seed, step), document=at.document)
        notebook.append(at.series, np.arange(20_000.0))
        print_ = fingerprint(notebook)
    target = folder / "copy.sqlite"
    child = at.nursery.start(folder, "back_up", place=str(file), target=str(target))
    child.run_for(after)
    child.kill()
    problems = []
    if ["backup", str(target)] in child.acknowledged and not target.exists():
        problems.append("an acknowledged backup is not there")
    for each in (file, *([target] if target.exists() else [])):
        with open_notebook(each, begin=False) as notebook:
            problems += [f"{each.name}: {problem}" for problem in notebook.verify().problems]
            if fingerprint(notebook) != print_:
                problems.append(f"{each.name} holds something else")
    with open_notebook(file) as notebook:
        notebook.backup(folder / "again.sqlite")  # what the killed one left is in nobody's way
    return Outcome(scene="backup", seed=seed, after_s=after, problems=tuple(problems))


def look(
    acknowledged: Sequence[list[list[Any]]], notebook: Notebook, *, killed: int
) -> tuple[dict[str, int], list[str]]:
    """Look whether all that was acknowledged is there as it was written, and nothing twice or half.

    Parameters
    ----------
    acknowledged : sequence of list
        What each child was acknowledged.
    notebook : Notebook
        What they left.
    killed : int
        How many were killed: each may have had one commit done that it was not told of.
    """
    problems = list(notebook.verify().problems)
    counts = {"revisions": 0, "readings": 0, "beyond": 0}
    for check in (_look_at_documents, _look_at_readings, _look_at_recorded):
        found, told = check([each for one in acknowledged for each in one], notebook)
        problems += told
        for key, count in found.items():
            counts[key] += count
    if counts["beyond"] > killed:
        problems.append(f"{counts['beyond']} commits that nobody was told of")
    return counts, problems


def _look_at_documents(said: list[list[Any]], notebook: Notebook) -> tuple[dict[str, int], list[str]]:
    there: dict[tuple[int, int], tuple[str, int]] = {}
    problems = []
    for document in every(notebook):
        history = [each for each in notebook.history(document) if each.kind == "trial"]
        if [each.number for each in history] != list(range(1, len(history) + 1)):
            problems.append(f"gaps in the numbers of {document}")
        for each in history:
            body = each.body or {}
            name = (body["seed"], body["step"])
            if name in there:
                problems.append(f"{name} is there twice")
            there[name] = (document, each.number)
            if body != body_of(*name):
                problems.append(f"{name} is not what was written")
    promised = {(seed, step): (document, number) for _, seed, step, document, number in _only(said, "save")}
    problems += [f"lost: {name}" for name, where in promised.items() if there.get(name) != where]
    beyond = {name for name in there if name[0] not in (0, 10**6)} - set(promised)
    return {"revisions": len(promised), "beyond": len(beyond)}, problems


def _look_at_readings(said: list[list[Any]], notebook: Notebook) -> tuple[dict[str, int], list[str]]:
    problems, beyond, count = [], 0, 0
    promised = {(series, first): (seed, step) for _, seed, step, series, first in _only(said, "append")}
    for each in notebook.series():
        if each.title != "shared":
            continue
        readings, there = notebook.readings(each.id), batches(notebook, each.id)
        if readings.number.tolist() != list(range(1, len(readings) + 1)):
            problems.append("gaps in the numbers of readings")
        beyond += len({batch.first for batch in there} - {first for series, first in promised if series == each.id})
        for (series, first), name in promised.items():
            expected = values_of(*name)
            if series == each.id:
                count += len(expected)
                if not np.array_equal(readings.value[first - 1 : first - 1 + len(expected)], expected):
                    problems.append(f"lost: readings of {name}")
    if promised and not any(each.title == "shared" for each in notebook.series()):
        problems.append("lost: the shared series")
    return {"readings": count, "beyond": beyond}, problems


def _look_at_recorded(said: list[list[Any]], notebook: Notebook) -> tuple[dict[str, int], list[str]]:
    promised: dict[str, tuple[int, int]] = {}
    for _, seed, series, committed in _only(said, "recorded"):
        promised[series] = (seed, committed)
    problems = []
    for series, (seed, committed) in promised.items():
        values = notebook.readings(series).value
        if len(values) < committed:
            problems.append(f"lost: {committed - len(values)} recorded readings")
        if values.tolist() != [recorded_value(seed, place + 1) for place in range(len(values))]:
            problems.append("recorded readings are not those that were taken, each once and in order")
    return {"readings": sum(committed for _, committed in promised.values())}, problems


def _only(said: list[list[Any]], word: str) -> list[list[Any]]:
    return [each for each in said if each[0] == word]


def every(notebook: Notebook) -> list[str]:
    """Give the ids of all documents, removed ones too."""
    return [each.document for gone in (False, True) for each in notebook.entries(removed=gone)]


def batches(notebook: Notebook, series: str) -> Sequence[Any]:
    from lumped.notebook.series import batches_of

    with notebook._store.reading() as connection:
        return batches_of(connection, series)


def fingerprint(notebook: Notebook) -> str:
    """Give the hash over all newest seals."""
    return notebook.contents().fingerprint


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoWriters:
    """What two writers left."""

    writes_each: int
    seconds: float
    problems: tuple[str, ...]


def two_writers(place: str | Path, folder: Path, nursery: Nursery, *, saves: int, appends: int) -> TwoWriters:
    """Let two programs write into one document and one series, so many times each, and count."""
    with open_notebook(place) as notebook:
        document = notebook.save("trial", {"seed": 0, "step": 0}).document
        series = notebook.begin_series("shared", unit="S", instrument="invented", method="invented").id
    start = time.monotonic()
    task = {"place": str(place), "document": document, "series": series, "saves": saves, "appends": appends}
    children = [nursery.start(folder, "write_many", seed=seed, **task) for seed in (1, 2)]
    for child in children:
        child.finish(at_most=1200)
    seconds = time.monotonic() - start
    with open_notebook(place) as notebook:
        history, readings = notebook.history(document), notebook.readings(series)
        problems = list(notebook.verify().problems)
    if [each.number for each in history] != list(range(1, 2 * saves + 2)):
        problems.append("revisions are missing, or their numbers have gaps")
    if readings.number.tolist() != list(range(1, 2 * appends + 1)):
        problems.append("readings are missing, or their numbers have gaps")
    written = Counter((each.body or {})["seed"] for each in history[1:])
    if written != {seed: saves for seed in (1, 2) if saves}:
        problems.append(f"revisions by writer: {dict(written)}")
    steps: dict[int, list[int]] = {1: [], 2: []}
    for each in history[1:]:
        steps[(each.body or {})["seed"]].append((each.body or {})["step"])
    if any(a >= b for each in steps.values() for a, b in pairwise(each)):
        problems.append("a writer's revisions are not each once and in its order")
    if len(set(readings.value.tolist())) != 2 * appends:
        problems.append("readings are there twice")
    return TwoWriters(writes_each=saves + appends, seconds=seconds, problems=tuple(problems))
