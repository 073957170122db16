"""New ids: UUIDs of version 7 (RFC 9562), which sort by the time they were made."""

import uuid_utils

__all__ = ["new_id"]


def new_id() -> str:
    """Give a new id.

    Examples
    --------
    >>> len(new_id()), new_id() < new_id()
    (36, True)
    """
    return str(uuid_utils.uuid7())
