"""Trials of "nothing lost": a child that is killed at any moment, and two that write at once."""

import shutil
import signal
import sqlite3
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path
from random import Random

import numpy as np
from tests.notebook.children import Nursery
from tests.notebook.looking import every, fingerprint, look, stretches
from tests.notebook.nursery import body_of, shared, written_value
from tests.notebook.old.making import thaw

from lumped.notebook import open_notebook

SCENES = ("load", "load", "load", "load", "two programs", "two programs", "beginning", "migrating", "backup")
"""What a child is at when it is killed; what stands here more often is tried more often."""

SPAN_S = {"load": 0.3, "two programs": 0.3, "beginning": 0.1, "migrating": 0.1, "backup": 0.04}
"""Within how long after a child's start the kill comes; the short ones take about that long."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What was found after a kill."""

    scene: str
    seed: int
    after_s: float
    revisions: int = 0  # acknowledged
    readings: int = 0
    beyond: int = 0  # commits that are there and were not acknowledged before the kill: at most one for each writer
    problems: tuple[str, ...] = ()


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
    """Give the seals of all revisions and readings of a file, by SQL alone."""
    with closing(sqlite3.connect(file)) as connection:
        tables = {name for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
        seals = "stretches" if "stretches" in tables else "batches"  # its name before layout 0004
        rows = connection.execute(f"SELECT seal FROM revisions UNION ALL SELECT seal FROM {seals}")
        return frozenset(seal for (seal,) in rows)


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
            kept |= {stretch.seal for each in notebook.series() for stretch in stretches(notebook, each.id)}
            problems += [f"lost from the old notebook: {seal}" for seal in sorted(at.old_seals - kept)]
        notebook.save("trial", body_of(10**6, 0))  # and it goes on
    return Outcome(scene=scene, seed=seed, after_s=after, problems=(*problems, *problems_found), **found)


def _kill_backup(seed: int, after: float, folder: Path, file: Path, at: Ground) -> Outcome:
    with open_notebook(file) as notebook:
        for step in range(20):
            notebook.save("trial", body_of(seed, step), document=at.document)
        notebook.append(at.series, np.arange(20_000.0))
        expected = fingerprint(notebook)
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
            if fingerprint(notebook) != expected:
                problems.append(f"{each.name} holds something else")
    with open_notebook(file) as notebook:
        notebook.backup(folder / "again.sqlite")  # what the killed one left is in nobody's way
    return Outcome(scene="backup", seed=seed, after_s=after, problems=tuple(problems))


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
    for seed in (1, 2):
        took = steps[seed]  # every step is a revision or a reading
        expected = [written_value(seed, step) for step in sorted(set(range(saves + appends)) - set(took))]
        mine = readings.value[readings.value // 1_000_000 == seed]
        if mine.tolist() != expected:
            problems.append(f"readings of writer {seed} are not each once and in its order")
    return TwoWriters(writes_each=saves + appends, seconds=seconds, problems=tuple(problems))
