"""References from one document to a revision of another: `id@hash`."""

import re
from dataclasses import dataclass

from lumped.errors import InputError

__all__ = ["ID", "Reference", "is_id"]

ID = r"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}"
"""What an id looks like, as a regular expression."""
_FORM = re.compile(rf"({ID})@([0-9a-f]{{64}})")


@dataclass(frozen=True, slots=True, order=True)
class Reference:
    """One state of one document.

    Parameters
    ----------
    document : str
        Id of the document (UUID).
    hash : str
        Hash of the body that is meant.

    Examples
    --------
    >>> ref = Reference("01890a5d-ac96-774b-bcce-b302099a8057", 64 * "0")
    >>> Reference.read(str(ref)) == ref
    True
    """

    document: str
    hash: str

    def __str__(self) -> str:
        return f"{self.document}@{self.hash}"

    @classmethod
    def read(cls, text: str) -> "Reference":
        """Read a reference.

        Raises
        ------
        InputError
            If the text is none.
        """
        match = _FORM.fullmatch(text)
        if not match:
            raise InputError("reference-unreadable", text=text[:120])
        return cls(match[1], match[2])


def is_id(text: object) -> bool:
    """Tell whether a text is an id.

    Examples
    --------
    >>> is_id("01890a5d-ac96-774b-bcce-b302099a8057"), is_id("../x")
    (True, False)
    """
    return isinstance(text, str) and re.fullmatch(ID, text) is not None
