"""A thing that is the same only as itself, so that what was worked out of it can be remembered without comparing it."""

from typing import Any

__all__ = ["Same"]


class Same:
    """A thing by what it is, not by what it is like; it can stand in the key of a memory.

    Parameters
    ----------
    it : object
        The thing; it is kept as long as the memory is.

    Examples
    --------
    >>> first, second = [1], [1]
    >>> Same(first) == Same(first), Same(first) == Same(second)
    (True, False)
    """

    def __init__(self, it: Any) -> None:
        self.it = it

    def __hash__(self) -> int:
        return id(self.it)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Same) and other.it is self.it
