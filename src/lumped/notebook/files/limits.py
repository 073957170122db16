"""How much is taken in from files, so that a small file can't fill the memory or keep a machine busy for ever.

One piece is looked at before it is built, and what was built is counted; a limit on the sum serves for all.
"""

import sys
from dataclasses import dataclass
from typing import Any

from lumped.errors import InputError
from lumped.notebook.lines import shown

__all__ = ["MEMORY_LIMIT", "PIECE_LIMIT", "READING_BYTES", "STRETCH_BYTES", "Budget", "refuse_heavy"]

MEMORY_LIMIT = 500_000_000  # bytes; 10 million readings take 320 MB of it, 10,000 documents of 3 kB about 300 MB
PIECE_LIMIT = 16_000_000  # bytes of text in one revision: a body of 2 MB, each of its letters escaped
MARK_LIMIT = 2_000_000  # commas, colons and brackets in it: each makes at most about 64 bytes
UNPACKED_LIMIT = 8  # bytes read from a folder or out of an archive, for each byte of memory
PACKED_LIMIT = 200  # bytes out of an archive for each byte in it, beyond the first:
PACKED_FREE = 64_000_000  # bytes, which do no harm

READING_BYTES = 32  # three columns of eight bytes, and working space
STRETCH_BYTES = 256


@dataclass(slots=True, kw_only=True)
class Budget:
    """What may still be read.

    Parameters
    ----------
    memory : int
        Most memory that it may take. [bytes]
    archive : int or None
        Size of the archive from which it is read. [bytes]
    """

    memory: int = MEMORY_LIMIT
    archive: int | None = None
    _taken: int = 0
    _unpacked: int = 0

    def take(self, size: int) -> None:
        """Count memory.

        Raises
        ------
        InputError
            If it is too much.
        """
        self._taken += size
        if self._taken > self.memory:
            raise InputError("bundle-too-large", limit=f"{self.memory // 1_000_000} MB")

    def hold(self, value: Any) -> None:
        """Count the memory of what was read: tables, lists, text and numbers."""
        size, waiting = 0, [value]
        while waiting:
            each = waiting.pop()
            size += sys.getsizeof(each)
            if isinstance(each, dict):
                size += sum(map(sys.getsizeof, each))
                waiting.extend(each.values())
            elif isinstance(each, list):
                waiting.extend(each)
        self.take(size)

    def unpack(self, size: int, name: str) -> None:
        """Count bytes that come out of a folder or an archive.

        Raises
        ------
        InputError
            If they are too many, or too many for the size of the archive.
        """
        self._unpacked += size
        if self._unpacked > UNPACKED_LIMIT * self.memory:
            raise InputError("plain-too-large", file=shown(name), limit=f"{UNPACKED_LIMIT * self.memory // 10**6} MB")
        if self.archive is not None and self._unpacked > PACKED_FREE + PACKED_LIMIT * self.archive:
            raise InputError("plain-bomb", file=shown(name), ratio=PACKED_LIMIT)


def refuse_heavy(text: bytes, name: str) -> None:
    """See that one piece of JSON can be built without filling the memory.

    Raises
    ------
    InputError
        If it is too long or has too many values.
    """
    if len(text) > PIECE_LIMIT or sum(text.count(mark) for mark in (b",", b":", b"[", b"{")) > MARK_LIMIT:
        raise InputError("bundle-piece-too-large", where=shown(name), limit=f"{PIECE_LIMIT // 1_000_000} MB")
