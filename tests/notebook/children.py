"""Children that write into a notebook, and can be killed in the middle of whatever they do."""

import json
import os
import select
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

__all__ = ["Child", "Nursery"]


class Child:
    """A child at work, and what it has been acknowledged."""

    def __init__(self, nursery: "Nursery", folder: Path, task: dict[str, Any]) -> None:
        pipe = folder / f"pipe-{next(nursery.names)}"
        os.mkfifo(pipe)
        self._handle = os.open(pipe, os.O_RDONLY | os.O_NONBLOCK)
        self._nursery, self._said, self._gone = nursery, b"", False
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
            assert self._listen(0.05) or not self._gone, f"the child ended without saying {word!r}"

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
            self._gone = bool(self._said)  # it had the other end open
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
