"""A process that has read all modules and forks a child for each job, so that a child is at work within milliseconds.

It takes jobs as lines of JSON and answers with the child's number; the trial kills the child whenever it likes. What a
child has been acknowledged it writes into a pipe at once: what is in the pipe was promised.
"""

import json
import os
import sys
from collections.abc import Callable
from pathlib import Path
from random import Random
from typing import Any

import numpy as np

from lumped.notebook import Notebook, open_notebook

Acknowledge = Callable[..., None]


def body_of(seed: int, step: int) -> dict[str, Any]:
    """Give the body that a child writes in a step: anybody can make it anew and compare."""
    words = Random(1_000_003 * seed + step)
    text = "".join(words.choices("salt flour water lemon oil ½ €\n", k=words.choice((10, 200, 3_000, 9_000))))
    return {"title": f"Trial {seed}", "seed": seed, "step": step, "text": text}


def values_of(seed: int, step: int) -> np.ndarray:
    """Give the readings that a child appends in a step."""
    chance = np.random.default_rng((seed, step))
    return chance.normal(size=int(chance.integers(1, 400)))


def recorded_value(seed: int, place: int) -> float:
    """Give what a child's recorder takes at a place, from 1."""
    return seed + place / 1024  # exact in binary


def written_value(seed: int, step: int) -> float:
    """Give what one of many writers appends in a step: no two are the same."""
    return 1_000_000.0 * seed + step


def work(place: str, seed: int, document: str, series: str, acknowledge: Acknowledge, *, steps: int = 10**9) -> None:
    """Revise the shared document and own ones, append to the shared series, record into an own one, without end."""
    chance, own, recorded = Random(seed), [], 0
    with open_notebook(place, who=f"child {seed}") as notebook:
        acknowledge("open")
        document, series = shared(notebook, document, series)
        mine = notebook.begin_series(f"own {seed}", unit="V", instrument="invented", method="invented").id
        with notebook.record(mine) as recorder:
            for step in range(steps):
                draw = chance.random()
                if draw < 0.2:
                    saved = notebook.save("trial", body_of(seed, step))
                    own.append(saved.document)
                    acknowledge("save", seed, step, saved.document, saved.number)
                elif draw < 0.55:
                    to = chance.choice([document, *own])
                    saved = notebook.save("trial", body_of(seed, step), document=to)
                    acknowledge("save", seed, step, saved.document, saved.number)
                elif draw < 0.85:
                    stretch = notebook.append(series, values_of(seed, step))
                    acknowledge("append", seed, step, series, stretch.first)
                else:
                    for _ in range(20):
                        last = recorder.add(recorded_value(seed, (recorded := recorded + 1)), remark="")
                    if draw > 0.97:
                        recorder.wait(last)
                if committed := recorder.committed:
                    acknowledge("recorded", seed, mine, committed)
        acknowledge("recorded", seed, mine, recorder.committed)
    acknowledge("end")


def shared(notebook: Notebook, document: str, series: str) -> tuple[str, str]:
    """Give the shared document and series; in a notebook that is only just begun they are made here."""
    if not document:
        document = notebook.save("trial", body_of(0, 0)).document
        series = notebook.begin_series("shared", unit="S", instrument="invented", method="invented").id
    return document, series


def back_up(place: str, target: str, acknowledge: Acknowledge) -> None:
    """Make a backup."""
    with open_notebook(place) as notebook:
        acknowledge("open")
        notebook.backup(Path(target))
    acknowledge("backup", target)


def write_many(
    place: str, seed: int, document: str, series: str, acknowledge: Acknowledge, *, saves: int, appends: int
) -> None:
    """Revise the shared document and append to the shared series, so and so many times, in a mix."""
    jobs = ["save"] * saves + ["append"] * appends
    Random(seed).shuffle(jobs)
    with open_notebook(place, who=f"child {seed}") as notebook:
        acknowledge("open")
        for step, job in enumerate(jobs):
            if job == "save":
                notebook.save("trial", {"seed": seed, "step": step}, document=document)
            else:
                notebook.append(series, [written_value(seed, step)])
    acknowledge("end")


def open_and_save(place: str, seed: int, acknowledge: Acknowledge) -> None:
    """Open, save one document, and say what backup was made."""
    with open_notebook(place, who=f"child {seed}") as notebook:
        saved = notebook.save("trial", body_of(seed, 0))
        acknowledge("save", seed, 0, saved.document, saved.number)
        acknowledge("migrated", str(notebook.migrated_from or ""))
    acknowledge("end")


JOBS = {each.__name__: each for each in (work, back_up, write_many, open_and_save)}


def main() -> None:
    """Fork a child for each job that a line brings; `reap` waits for the end of one."""
    import alembic.command
    import alembic.config  # noqa: F401
    import psycopg  # noqa: F401
    import sqlalchemy.dialects.postgresql.psycopg  # noqa: F401

    print("ready", flush=True)
    for line in iter(sys.stdin.readline, ""):
        task = json.loads(line)
        if (number := task.pop("reap", None)) is not None:
            _, status = os.waitpid(number, 0)
            print(os.waitstatus_to_exitcode(status), flush=True)
            continue
        number = os.fork()
        if number == 0:
            _be_child(task)
        print(number, flush=True)


def _be_child(task: dict[str, Any]) -> None:
    code = 1
    try:
        pipe = os.open(task.pop("pipe"), os.O_WRONLY)
        job = JOBS[task.pop("job")]
        job(acknowledge=lambda *words: os.write(pipe, (json.dumps(words) + "\n").encode()), **task)
        code = 0
    except BaseException:
        import traceback

        traceback.print_exc()
    finally:
        sys.stderr.flush()
        os._exit(code)


if __name__ == "__main__":
    main()
