"""What other rooms tell the notebook of their documents: name, newest schema, how to read and to migrate one.

The notebook keeps bodies as they were saved. A body of an older schema is migrated when it is read, by pure functions
that live beside the model; what is stored stays as it was.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any

from lumped.errors import NotebookError
from lumped.notebook.canonical import Body

__all__ = ["Kind", "Kinds"]


def _title_in(body: Body) -> str:
    title = body.get("title")
    return title if isinstance(title, str) else ""


def _any_body(body: Body, name: str) -> None:
    """Take every body: what it means is nobody's business here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kind:
    """A kind of document.

    Parameters
    ----------
    name : str
        What documents call themselves: `kind = "recipe"`.
    schema : int
        The newest form, and the one that is written.
    check : callable
        Given a body of the newest form and a name for messages; raises InputError if it can't be read.
    title : callable
        Given a body; the title in it.
    migrations : mapping of int to callable
        From form n to form n + 1: a pure function of a body.
    keyed_by : tuple of str
        Keys whose value tells the entries of a list apart, for comparing: a lump by its `name`.

    Examples
    --------
    >>> Kind(name="pot", schema=2, migrations={1: lambda body: {**body, "lid": False}}).migrated({}, 1)
    {'lid': False}
    """

    name: str
    schema: int = 1
    check: Callable[[Body, str], Any] = _any_body
    title: Callable[[Body], str] = _title_in
    migrations: Mapping[int, Callable[[Body], Body]] = field(default_factory=lambda: MappingProxyType({}))
    keyed_by: tuple[str, ...] = ("name",)

    def migrated(self, body: Body, schema: int) -> Body:
        """Give a body in the newest form.

        Raises
        ------
        NotebookError
            If it was written by a newer Lumped.
        """
        if schema > self.schema:
            raise NotebookError("notebook-newer-schema", kind=self.name, schema=schema, known=self.schema)
        for form in range(schema, self.schema):
            body = self.migrations[form](body)
        return body


class Kinds:
    """The kinds that a notebook was told of; others are kept as they are.

    Parameters
    ----------
    kinds : iterable of Kind
        What the rooms register.

    Examples
    --------
    >>> Kinds([Kind(name="pot", schema=3)])["pot"].schema, Kinds()["anything"].schema
    (3, 1)
    """

    def __init__(self, kinds: Iterable[Kind] = ()) -> None:
        self._known = {kind.name: kind for kind in kinds}

    def __getitem__(self, name: str) -> Kind:
        return self._known.get(name) or Kind(name=name, schema=1)

    def newest_form(self, name: str, schema: int) -> int:
        """Give the newest form of a kind; of one that nobody registered, the form that it has."""
        return self._known[name].schema if name in self._known else schema

    def __contains__(self, name: object) -> bool:
        return name in self._known
