"""The pool: progress, stopping, failures in words, and a cache."""

import pickle
import subprocess
import sys
import time
from pathlib import Path

import pytest

from lumped.app.jobs import Answer, Jobs, Stopped
from lumped.errors import InputError, LumpedError


def doubled(number, report):
    report(0.5)
    return 2 * number


def endless(started_at, report):
    step = 0
    while True:
        step += 1
        report(min(0.9, step / 10))
        time.sleep(0.01)


def refused(_, report):
    raise InputError("document-missing", file="none.toml")


def broken(_, report):
    raise ZeroDivisionError


def dying(_, report):
    import os

    os._exit(1)


@pytest.fixture(scope="module")
def jobs():
    jobs = Jobs(workers=1)
    yield jobs
    jobs.close()


def wait_until(true, seconds=20.0):
    until = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < until, "it never came"
        time.sleep(0.01)


def test_a_job_gives_its_answer(jobs):
    assert jobs.submit(doubled, 21, "21").answer(30).content == 42


def test_the_same_question_is_answered_from_the_cache(jobs):
    jobs.submit(doubled, 4, "four").answer(30)
    again = jobs.submit(doubled, "never looked at", "four")
    assert again.done
    assert again.answer().content == 8


def test_a_running_job_tells_its_share_and_ends_when_it_is_stopped(jobs):
    ticket = jobs.submit(endless, 0, "endless")
    wait_until(lambda: ticket.share >= 0.5)
    ticket.stop()
    assert ticket.answer(20).stopped
    assert jobs.submit(doubled, 1, "after").answer(20).content == 2


def test_a_waiting_job_that_is_stopped_never_runs(jobs):
    first, second = jobs.submit(endless, 0, "first"), jobs.submit(endless, 0, "second")
    third = jobs.submit(endless, 0, "third")
    for ticket in (third, second, first):
        ticket.stop()
    assert [ticket.answer(20).stopped for ticket in (first, second, third)] == [True] * 3


def test_a_stopped_job_is_not_kept_in_the_cache(jobs):
    ticket = jobs.submit(endless, 0, "again")
    ticket.stop()
    ticket.answer(20)
    again = jobs.submit(endless, 0, "again")
    assert not again.done
    again.stop()


def test_a_failure_is_the_dict_that_the_command_line_prints(jobs):
    answer = jobs.submit(refused, None, "refused").answer(30)
    assert answer.failure == InputError("document-missing", file="none.toml").as_dict()


def test_a_fault_of_ours_is_said_in_words_too(jobs):
    assert jobs.submit(broken, None, "broken").answer(30).failure == LumpedError("work-broke-off").as_dict()


def test_after_a_worker_died_the_next_question_is_answered():
    jobs = Jobs(workers=1)
    try:
        answer = jobs.submit(dying, None, "dying").answer(30)
        assert answer.failure == LumpedError("work-broke-off").as_dict()
        assert jobs.submit(doubled, 3, "three").answer(30).content == 6
    finally:
        jobs.close()


def test_closing_ends_a_running_job():
    jobs = Jobs(workers=1)
    ticket = jobs.submit(endless, 0, "running")
    wait_until(lambda: ticket.share > 0)
    jobs.close()
    wait_until(lambda: ticket.done)


def test_workers_end_when_the_app_is_killed():
    code = "from lumped.app.jobs import Jobs, _nap\nimport time\njobs = Jobs(1)\njobs._pool.submit(_nap).result()\n"
    code = f"{code}print(*jobs._pool._processes, flush=True)\ntime.sleep(60)"
    app = subprocess.Popen([sys.executable, "-c", code], stdout=subprocess.PIPE, text=True)
    worker = app.stdout.readline().strip()
    assert Path(f"/proc/{worker}").exists()
    app.kill()
    app.communicate()
    wait_until(lambda: not running(worker))


def running(process):
    try:
        return Path(f"/proc/{process}/stat").read_text().split(") ")[1][0] != "Z"
    except (FileNotFoundError, ProcessLookupError):
        return False


def test_answers_and_stopping_survive_pickling():
    assert pickle.loads(pickle.dumps(Answer(content=1))) == Answer(content=1)
    assert isinstance(pickle.loads(pickle.dumps(Stopped())), Stopped)
