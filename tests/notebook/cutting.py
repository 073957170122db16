"""A notebook with its log cut or overwritten from some byte on, as a disk that lies may leave it."""

import shutil
import sqlite3
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path
from random import Random

import numpy as np
from sqlalchemy import event
from tests.notebook.nursery import body_of, values_of

from lumped.notebook import open_notebook

__all__ = ["Commits", "commit_many", "damage", "half_moved"]

PAGE, FRAME_HEAD, SECTOR = 4096, 24, 512  # bytes
HEAD = 32  # bytes of a log before its first frame (SQLite's file format, section 4.1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Commits:
    """A file with its log, and what was there after each commit.

    Parameters
    ----------
    file : Path
        A copy that nobody has open; its log lies beside it.
    ends : tuple of int
        Length of the log after each commit; the first is that with no commit. [bytes]
    seals : tuple of frozenset of str
        The seals of all revisions, series and stretches after each.
    log : bytes
        The whole log.
    """

    file: Path
    ends: tuple[int, ...]
    seals: tuple[frozenset[str], ...]
    log: bytes = field(repr=False)

    def whole(self, cut: int) -> int:
        """Give the number of the last commit that lies wholly before a byte."""
        return max(k for k, end in enumerate(self.ends) if end <= max(cut, self.ends[0]))


def commit_many(folder: Path, *, commits: int = 60) -> Commits:
    """Write revisions, removals and readings of all sizes into a notebook that keeps all of them in its log."""
    begun, chance = folder / "begun.sqlite", Random(7)
    with open_notebook(begun) as notebook:
        first = notebook.save("trial", body_of(1, 0))
        series = notebook.begin_series("shared", unit="S", instrument="invented", method="invented")

    def keep_in_log(connection: sqlite3.Connection, _: object) -> None:
        connection.execute("PRAGMA wal_autocheckpoint = 0")

    with open_notebook(begun) as notebook:
        event.listen(notebook._store._engine, "connect", keep_in_log)
        notebook._store._engine.dispose()
        log, mine = log_of(begun), [first.document]
        ends, seals = [0], [seals_in(begun)]
        for step in range(1, commits + 1):
            draw = chance.random()
            if draw < 0.3:
                mine.append(notebook.save("trial", body_of(1, step)).document)
            elif draw < 0.6:
                notebook.save("trial", body_of(1, step), document=chance.choice(mine))
            elif draw < 0.7:
                notebook.remove(chance.choice(mine))
            else:
                notebook.append(series.id, np.tile(values_of(1, step), 1 + step % 5))
            ends.append(log.stat().st_size)
            seals.append(seals_in(begun))
        kept = folder / "kept.sqlite"
        shutil.copyfile(begun, kept)  # the file and its log, not the index: as after a power failure
        shutil.copyfile(log, log_of(kept))
    return Commits(file=kept, ends=tuple(ends), seals=tuple(seals), log=log_of(kept).read_bytes())


def damage(commits: Commits, folder: Path, cut: int, rubbish: bytes = b"") -> list[str]:
    """Open a copy with another log, and say what is wrong with what is there then.

    Parameters
    ----------
    commits : Commits
        What was written.
    folder : Path
        Where the copy goes; it is removed again.
    cut : int
        The first byte of the log that is not as it was.
    rubbish : bytes
        What is there instead.
    """
    folder.mkdir()
    file = folder / "notebook.sqlite"
    shutil.copyfile(commits.file, file)
    log_of(file).write_bytes(commits.log[:cut] + rubbish)
    expected = commits.seals[commits.whole(cut)]
    with open_notebook(file, begin=False) as notebook:
        problems = list(notebook.verify().problems)
        there = seals_in(file)
        notebook.save("note", {"title": "and on"})
    shutil.rmtree(folder)
    if expected - there:
        problems.append(f"{len(expected - there)} commits before byte {cut} are lost")
    if there - expected:
        problems.append(f"{len(there - expected)} are there that were not whole")
    return problems


def half_moved(commits: Commits, folder: Path, chance: Random) -> list[str]:
    """Open a copy whose power failed while the log was moved into the file, and say what is wrong with what is there.

    Each page that is in the log may be half written in the file; the log is cleared only after the file is on the disk.
    """
    folder.mkdir()
    file = folder / "notebook.sqlite"
    pages = {}  # the newest image of each page in the log
    for start in range(HEAD, len(commits.log), FRAME_HEAD + PAGE):
        number = int.from_bytes(commits.log[start : start + 4], "big")
        pages[number] = commits.log[start + FRAME_HEAD : start + FRAME_HEAD + PAGE]
    content = bytearray(commits.file.read_bytes())
    content.extend(bytes(max(0, chance.randrange(max(pages) + 1) * PAGE - len(content))))
    for number, new in pages.items():
        for at in range(0, PAGE, SECTOR):
            place = slice((number - 1) * PAGE + at, (number - 1) * PAGE + at + SECTOR)
            if place.stop <= len(content):  # the first page's sectors are old or new; others may be anything
                old = content[place]
                content[place] = chance.choice(
                    (old, new[at : at + SECTOR], chance.randbytes(SECTOR) if number > 1 else old)
                )
    file.write_bytes(content)
    log_of(file).write_bytes(commits.log)
    with open_notebook(file, begin=False) as notebook:
        problems = list(notebook.verify().problems)
        lost = commits.seals[-1] - seals_in(file)
    shutil.rmtree(folder)
    return [*problems, *(f"lost: {seal}" for seal in lost)]


def seals_in(file: Path) -> frozenset[str]:
    """Give the seals of all that is in a file: each vouches for the content of its record and of those before."""
    tables = ("revisions", "series", "stretches")
    with closing(sqlite3.connect(file)) as connection:
        connection.execute("PRAGMA wal_autocheckpoint = 0")
        return frozenset(seal for table in tables for (seal,) in connection.execute(f"SELECT seal FROM {table}"))


def log_of(file: Path) -> Path:
    return file.with_name(file.name + "-wal")
