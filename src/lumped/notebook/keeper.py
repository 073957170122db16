"""What all of a notebook's doings share: its store, its kinds, who writes, and the clock."""

from collections.abc import Callable
from datetime import datetime

from lumped.notebook.kinds import Kinds
from lumped.notebook.lines import LINE_LIMIT, plain_line
from lumped.notebook.moments import as_microseconds
from lumped.notebook.store import Store

__all__ = ["Keeper"]


class Keeper:
    """What reads and writes in one store."""

    def __init__(self, store: Store, *, kinds: Kinds, who: str, clock: Callable[[], datetime]) -> None:
        self._store, self._kinds, self._clock = store, kinds, clock
        self._who = self._line(who)

    @property
    def who(self) -> str:
        """Who writes."""
        return self._who

    def _moment(self) -> int:
        return as_microseconds(self._clock())

    @staticmethod
    def _line(text: str, limit: int = LINE_LIMIT) -> str:
        """Give what a person wrote as one line that does nothing."""
        return plain_line(text.strip(), limit)
