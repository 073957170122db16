"""One pool of workers: jobs with progress that can be stopped, and a cache of their answers.

A job's answer is an `Answer`: what was asked for, or a failure in the words of the command line. Nothing that a worker
does can raise in the page.
"""

import multiprocessing
import os
import signal
import threading
import traceback
from collections import OrderedDict
from collections.abc import Callable
from concurrent.futures import CancelledError, Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from dataclasses import dataclass
from itertools import count
from typing import Any

from lumped.errors import LumpedError

__all__ = ["Answer", "Jobs", "Stopped", "Ticket"]

SLOTS = 256
CACHED = 96
Work = Callable[[Any, Callable[[float], None]], Any]
_shares: Any = None  # in a worker: progress of each slot, 0 to 1
_stops: Any = None  # in a worker: number of the last job of each slot that is no longer wanted


class Stopped(Exception):  # noqa: N818 - not an error
    """The answer is no longer wanted."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What came of a job: content, or a failure as the command line prints it; neither if it was stopped."""

    content: Any = None
    failure: dict[str, Any] | None = None

    @property
    def stopped(self) -> bool:
        """Whether the job was stopped before it had an answer."""
        return self.content is None and self.failure is None


class Ticket:
    """A job that was asked for."""

    def __init__(self, number: int, future: "Future[Answer]", shares: Any, stops: Any) -> None:
        self._number, self._future, self._shares, self._stops = number, future, shares, stops

    @property
    def done(self) -> bool:
        """Whether its answer is there."""
        return self._future.done()

    @property
    def share(self) -> float:
        """The share that is done, 0 to 1. [1]"""
        return 1.0 if self.done else float(self._shares[self._number % SLOTS])

    def stop(self) -> None:
        """Want the answer no longer: a job that waits is dropped, one that runs ends at its next report."""
        self._future.cancel()
        self._stops[self._number % SLOTS] = self._number

    def answer(self, timeout: float | None = None) -> Answer:
        """Wait for the answer."""
        try:
            return self._future.result(timeout)
        except (CancelledError, Stopped):
            return Answer()
        except BrokenProcessPool:
            return Answer(failure=LumpedError("work-broke-off").as_dict())


class Jobs:
    """The pool, and the answers that it gave.

    Parameters
    ----------
    workers : int
        How many processes compute.
    """

    def __init__(self, workers: int = 2) -> None:
        self._context = multiprocessing.get_context("spawn")
        self._shares = self._context.RawArray("d", SLOTS)
        self._stops = self._context.RawArray("q", SLOTS)
        self._workers, self._numbers = workers, count(1)
        self._pool = self._new_pool()
        self._answers: OrderedDict[tuple[str, str], Answer] = OrderedDict()

    def warm_up(self) -> None:
        """Start the workers now, so that the first question does not wait for them."""
        for _ in range(self._workers):
            self._pool.submit(_nap)

    def submit(self, work: Work, task: Any, key: str) -> Ticket:
        """Ask for a job.

        Parameters
        ----------
        work : callable
            A function of a module, called as `work(task, report)` in a worker; `report` is told the share that is
            done and ends the work if it is no longer wanted.
        task : object
            What to work on; it must survive pickling.
        key : str
            Hash of the task: the same work on the same key is answered from the cache.

        Returns
        -------
        Ticket
        """
        number = next(self._numbers)
        self._shares[number % SLOTS] = 0.0
        cached = self._answers.get((work.__name__, key))
        if cached is not None:
            self._answers.move_to_end((work.__name__, key))
            future: Future[Answer] = Future()
            future.set_result(cached)
        else:
            future = self._send(work, task, number)
            future.add_done_callback(lambda done: self._keep((work.__name__, key), done))
        return Ticket(number, future, self._shares, self._stops)

    def close(self) -> None:
        """Stop everything and end the workers."""
        for slot in range(SLOTS):
            self._stops[slot] = 2**62
        processes = list((self._pool._processes or {}).values())
        manager: threading.Thread | None = getattr(self._pool, "_executor_manager_thread", None)
        self._pool.shutdown(wait=False, cancel_futures=True)
        for process in processes:
            process.join(timeout=1.0)
            if process.is_alive():
                process.terminate()
        if manager is not None:
            manager.join(timeout=5.0)  # else the interpreter's own farewell may meet its closed pipe

    def _send(self, work: Work, task: Any, number: int) -> "Future[Answer]":
        try:
            return self._pool.submit(_worked, work, task, number)
        except BrokenProcessPool:
            self._pool = self._new_pool()
            return self._pool.submit(_worked, work, task, number)

    def _new_pool(self) -> ProcessPoolExecutor:
        return ProcessPoolExecutor(
            self._workers, mp_context=self._context, initializer=_begin, initargs=(self._shares, self._stops)
        )

    def _keep(self, key: tuple[str, str], done: "Future[Answer]") -> None:
        if done.cancelled() or done.exception() is not None:
            return
        failure = done.result().failure
        if failure is not None and failure["code"] == "work-broke-off":
            return  # trying again may help
        self._answers[key] = done.result()
        while len(self._answers) > CACHED:
            self._answers.popitem(last=False)


def _begin(shares: Any, stops: Any) -> None:
    """Make a worker ready: it leaves Ctrl-C to its parent, ends with it, and computes on one thread."""
    global _shares, _stops
    _shares, _stops = shares, stops
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    threading.Thread(target=_end_with_parent, daemon=True).start()
    for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
        os.environ.setdefault(name, "1")
    from lumped.app.answers import get_ready

    get_ready()


def _end_with_parent() -> None:
    """End this worker when the app is gone, however it went."""
    parent = multiprocessing.parent_process()
    if parent is not None:
        parent.join()
        os._exit(0)


def _nap() -> None:
    """Do nothing, in a worker that is ready."""


def _worked(work: Work, task: Any, number: int) -> Answer:
    """Do a job in a worker."""
    slot = number % SLOTS

    def report(share: float) -> None:
        if _stops[slot] >= number:
            raise Stopped
        _shares[slot] = share

    report(0.0)
    try:
        return Answer(content=work(task, report))
    except LumpedError as error:
        return Answer(failure=error.as_dict())
    except Stopped:
        raise
    except Exception:
        traceback.print_exc()
        return Answer(failure=LumpedError("work-broke-off").as_dict())
