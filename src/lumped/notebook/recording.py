"""Writing readings down as they come: one commit for all that came in a moment, none acknowledged before it.

An instrument gives a reading now and then, or thousands a second. `Recorder.add` takes each at once; a thread commits
what has gathered, at most half a second later. Only a committed reading counts as acknowledged: `committed` says how
many are, `wait` waits for one. What could not be written stays in memory and is tried again.
"""

from collections.abc import Callable
from datetime import datetime
from threading import Condition, Thread
from types import TracebackType

from lumped.errors import NotebookError
from lumped.notebook.moments import as_microseconds, now

__all__ = ["Recorder", "Waiting"]

EVERY = 0.25  # s between commits; with the commit itself a reading is on the disk within half a second
WAITING_LIMIT = 2_000_000  # readings that may wait in memory while the disk is not to be had

Waiting = tuple[int, float | None, str]
"""A reading that is not committed yet: moment in µs, value, remark."""


class Recorder:
    """Takes readings of one series.

    Parameters
    ----------
    write : callable
        Commits readings, all or none; raises NotebookError if it can't.
    every : float
        Longest time that a reading waits for its commit to begin. [s]
    clock : callable
        Gives the present moment.

    Examples
    --------
    >>> kept = []
    >>> with Recorder(kept.extend) as recorder:
    ...     place = recorder.add(4.7)
    ...     recorder.wait(place)
    >>> kept[0][1], recorder.committed
    (4.7, 1)
    """

    def __init__(
        self, write: Callable[[list[Waiting]], object], *, every: float = EVERY, clock: Callable[[], datetime] = now
    ) -> None:
        self._write, self._every, self._clock = write, every, clock
        self._changed = Condition()
        self._waiting: list[Waiting] = []
        self._committed = 0
        self._trouble: NotebookError | None = None
        self._attempts = 0
        self._closing = False
        self._thread = Thread(target=self._run, name="lumped-recorder", daemon=True)
        self._thread.start()

    def add(self, value: float | None, *, at: datetime | None = None, remark: str = "") -> int:
        """Take a reading.

        Parameters
        ----------
        value : float or None
            What was read; None if there was nothing to read, and the remark says why. [unit of the series]
        at : datetime, optional
            When; now if left out.
        remark : str
            What is worth saying of it.

        Returns
        -------
        int
            Its place among the readings of this recorder, from 1: acknowledged once `committed` has come to it.

        Raises
        ------
        NotebookError
            If too many are waiting because they can't be written.
        """
        moment = as_microseconds(at or self._clock())
        with self._changed:
            if len(self._waiting) >= WAITING_LIMIT and self._trouble is not None:
                raise self._trouble
            self._waiting.append((moment, value, remark))
            place = self._committed + len(self._waiting)
            self._changed.notify_all()
        return place

    @property
    def committed(self) -> int:
        """How many readings are acknowledged: on the disk, whatever happens now."""
        with self._changed:
            return self._committed

    @property
    def waiting(self) -> tuple[Waiting, ...]:
        """What was taken and is not committed yet."""
        with self._changed:
            return tuple(self._waiting)

    def wait(self, place: int) -> None:
        """Wait until a reading is committed.

        Raises
        ------
        NotebookError
            If an attempt to write it has failed; it goes on waiting in memory and will be tried again.
        """
        with self._changed:
            attempts = self._attempts
            self._changed.wait_for(lambda: self._committed >= place or (self._attempts > attempts and self._trouble))
            if self._committed < place and self._trouble is not None:
                raise self._trouble

    def close(self) -> None:
        """Commit what is waiting, and take no more.

        Raises
        ------
        NotebookError
            If it can't be written; `waiting` still holds it.
        """
        with self._changed:
            self._closing = True
            self._changed.notify_all()
        self._thread.join()
        if self._waiting:
            problem = self._trouble or NotebookError()
            raise NotebookError("readings-waiting", count=len(self._waiting), problem=str(problem)) from problem

    def __enter__(self) -> "Recorder":
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def _run(self) -> None:
        while True:
            with self._changed:
                self._changed.wait_for(lambda: self._waiting or self._closing)
                if not self._waiting:
                    return
                self._changed.wait_for(lambda: self._closing, timeout=self._every)
                closing, taken = self._closing, list(self._waiting)
            trouble = self._commit(taken)
            with self._changed:
                if trouble is None:
                    del self._waiting[: len(taken)]
                    self._committed += len(taken)
                self._trouble = trouble
                self._attempts += 1
                self._changed.notify_all()
                if closing and (trouble or not self._waiting):
                    return

    def _commit(self, taken: list[Waiting]) -> NotebookError | None:
        try:
            self._write(taken)
        except NotebookError as trouble:
            return trouble
        return None
