"""Writing readings down as they come: one commit for all that came in a moment, none acknowledged before it.

An instrument gives a reading now and then, or thousands a second. `Recorder.add` takes each at once; a thread commits
what has gathered, at most half a second later. Only a committed reading counts as acknowledged: `committed` says how
many are, `wait` waits for one. What could not be written stays in memory and is tried again.

An attempt may fail after its readings were written: the server falls silent before it answers, the folder is gone
when the commit is done. So the next attempt brings exactly the same readings, and says that they may be there.
"""

import math
from collections.abc import Callable
from datetime import datetime
from threading import Condition, Thread
from types import TracebackType

from lumped.errors import InputError, LumpedError, NotebookError
from lumped.notebook.lines import NOTE_LIMIT, plain_line
from lumped.notebook.moments import as_microseconds, now

__all__ = ["Recorder", "Waiting"]

EVERY = 0.25  # s between commits; with the commit itself a reading is on the disk within half a second
COMMIT_LIMIT = 50_000  # readings in one commit: after a long wait, many follow one another
WAITING_LIMIT = 2_000_000  # readings that may wait in memory while the disk is not to be had

Waiting = tuple[int, float | None, str]
"""A reading that is not committed yet: moment in µs, value, remark."""


class Recorder:
    """Takes readings of one series.

    Parameters
    ----------
    write : callable
        Given readings, commits them, all or none, and raises an error if it can't. Its second argument tells whether
        an attempt with just these has failed: then it looks first whether they are there.
    every : float
        Longest time that a reading waits for its commit to begin. [s]
    clock : callable
        Gives the present moment.

    Examples
    --------
    >>> kept = []
    >>> with Recorder(lambda readings, again: kept.extend(readings)) as recorder:
    ...     place = recorder.add(4.7)
    ...     recorder.wait(place)
    >>> kept[0][1], recorder.committed
    (4.7, 1)
    """

    def __init__(
        self,
        write: Callable[[list[Waiting], bool], object],
        *,
        every: float = EVERY,
        clock: Callable[[], datetime] = now,
    ) -> None:
        self._write, self._every, self._clock = write, every, clock
        self._changed = Condition()
        self._waiting: list[Waiting] = []
        self._committed = 0
        self._unsure = 0  # how many of the first waiting were in an attempt that failed
        self._trouble: Exception | None = None
        self._attempts = 0
        self._closing = self._ended = False
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
        InputError
            If it is infinite, or there is neither value nor remark, or the remark is no line.
        NotebookError
            If too many are waiting because they can't be written, or the recorder was closed.
        """
        moment = as_microseconds(at or self._clock())
        read, said = self._checked(value, remark)
        with self._changed:
            if self._closing or not self._thread.is_alive():  # a fork has no threads
                raise NotebookError("recorder-closed")
            if len(self._waiting) >= WAITING_LIMIT and self._trouble is not None:
                raise self._trouble
            self._waiting.append((moment, read, said))
            place = self._committed + len(self._waiting)
            self._changed.notify_all()
        return place

    def _checked(self, value: float | None, remark: str) -> tuple[float | None, str]:
        """See that a reading can be written: one that can't would keep all that follow from the disk."""
        said = plain_line(remark.strip(), NOTE_LIMIT)
        read = None if value is None or math.isnan(value) else float(value)
        if read is not None and math.isinf(read):
            raise InputError("readings-infinite", number=self.committed + len(self.waiting) + 1)
        if read is None and not said:
            raise InputError("readings-unsaid", number=self.committed + len(self.waiting) + 1)
        return read, said

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
            self._changed.wait_for(
                lambda: (
                    self._committed >= place
                    or self._ended
                    or not self._thread.is_alive()
                    or (self._attempts > attempts and self._trouble)
                )
            )
            if self._committed < place:
                raise self._trouble or NotebookError("recorder-closed")

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
        if self._waiting and self._trouble is not None:
            count, problem = len(self._waiting), str(self._trouble)
            raise NotebookError("readings-waiting", count=count, problem=problem) from self._trouble

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
                if self._trouble is None and 0 < len(self._waiting) < COMMIT_LIMIT:
                    self._changed.wait_for(lambda: self._closing, timeout=self._every)
                closing, again = self._closing, self._unsure > 0
                taken = self._waiting[: self._unsure or COMMIT_LIMIT]
            trouble = self._commit(taken, again) if taken else None
            with self._changed:
                if trouble is None:
                    del self._waiting[: len(taken)]
                    self._committed += len(taken)
                self._unsure = len(taken) if trouble else 0
                self._trouble = trouble
                self._attempts += 1
                self._ended = closing and (trouble is not None or not self._waiting)
                self._changed.notify_all()
                if self._ended:
                    return
                if trouble is not None:
                    self._changed.wait_for(lambda: self._closing, timeout=self._every)

    def _commit(self, taken: list[Waiting], again: bool) -> Exception | None:
        try:
            self._write(taken, again)
        except LumpedError as trouble:
            return trouble
        except Exception as error:  # whatever it is, the readings stay, and whoever waits is told
            return error
        return None
