"""The few kinds of failure, drawn as a tree.

    LumpedError ─┬─ InputError (ValueError)       what a person gave can't be read or can't exist
                 │   ├─ RecipeError               … in a recipe
                 │   └─ SculptureError            … in a sculpture
                 ├─ HandbookError (LookupError)   the handbook has no such row, or a row is unsound
                 ├─ NotebookError (OSError)       the notebook can't be opened, read or written
                 └─ SolverError (ArithmeticError) a computation did not reach its accuracy

An error is a key of `texts` and the data that fill its slots, so the command line, JSON and the page all show the
same sentence. Errors survive pickling. What goes wrong on a table (a leg that dangles, two wires that touch) is a
finding of the verdict, never an error.
"""

from typing import Any

from lumped.texts import say

__all__ = [
    "HandbookError",
    "InputError",
    "LumpedError",
    "NotebookError",
    "RecipeError",
    "SculptureError",
    "SolverError",
]


class LumpedError(Exception):
    """A failure that a person can understand.

    Parameters
    ----------
    code : str
        Key of the sentence in `texts`; also the machine-readable code in JSON.
    **data : object
        What fills the sentence's slots.

    Examples
    --------
    >>> str(InputError("quantity-unreadable", text="six", example="6 cm"))
    '“six” is not an amount that Lumped can read here. Write a number with a unit, such as “6 cm”.'
    """

    def __init__(self, code: str = "", /, **data: Any) -> None:
        super().__init__(code)
        self.code = code
        self.data = data

    def __str__(self) -> str:
        return say(self.code, **self.data)

    def __reduce__(self) -> tuple[Any, ...]:
        return (_rebuilt, (type(self), self.code, self.data))

    def as_dict(self) -> dict[str, Any]:
        """Give the error as the command line and the page show it: code, message, data."""
        return {"code": self.code, "message": str(self), "data": self.data}


class InputError(LumpedError, ValueError):
    """What a person gave can't be read or can't exist."""


class RecipeError(InputError):
    """A recipe can't be read or can't exist."""


class SculptureError(InputError):
    """A sculpture can't be read or can't exist."""


class HandbookError(LumpedError, LookupError):
    """The handbook has no such row, or a row is unsound."""


class NotebookError(LumpedError, OSError):
    """The notebook can't be opened, read or written."""


class SolverError(LumpedError, ArithmeticError):
    """A computation did not reach the accuracy asked for."""


def _rebuilt(kind: type[LumpedError], code: str, data: dict[str, Any]) -> LumpedError:
    return kind(code, **data)
