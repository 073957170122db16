"""What a page is shown of the notebook: where it lies, its leaves, and a document with all round it."""

from dataclasses import dataclass

from lumped.app.gathering import file_text, given_from, with_batches
from lumped.app.given import Given
from lumped.app.outcomes import Outcome, outcomes_of
from lumped.notebook import DERIVED, Entry, Notebook, Reference, Revision

__all__ = ["Kept", "Leaf", "Related", "Where", "kept_in"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Where:
    """Where the notebook lies, who writes in it, and whether it is there and can be written."""

    place: str
    folder: str
    who: str
    there: bool
    read_only: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Leaf:
    """A document in a list; a sculpture that can be read comes as `given`, to be drawn."""

    entry: Entry
    given: Given | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Related:
    """A revision of another document: made from this one, or used by it."""

    document: str
    kind: str
    title: str
    number: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """A document of the notebook as a page shows it.

    Parameters
    ----------
    revision : Revision
        The revision that is looked at.
    history : tuple of Revision
        All revisions, the first first.
    given : Given or None
        A document as the workers take it, with what it names; None if it is of a kind without files, or removed.
    text : str
        The document as a file; empty if it is removed.
    outcomes : tuple of Outcome
        What was noted of a sculpture.
    made_from : Related or None
        What it was derived from.
    made_into, used_by, uses : tuple of Related
        What was derived from it; what refers to it; what it refers to.
    """

    revision: Revision
    history: tuple[Revision, ...]
    given: Given | None
    text: str
    outcomes: tuple[Outcome, ...]
    made_from: Related | None
    made_into: tuple[Related, ...]
    used_by: tuple[Related, ...]
    uses: tuple[Related, ...]

    @property
    def newest(self) -> Revision:
        """The newest revision."""
        return self.history[-1]

    @property
    def old(self) -> bool:
        """Whether it has gone on since."""
        return self.revision.number < self.newest.number


def kept_in(notebook: Notebook, document: str, number: int | None = None) -> Kept:
    """Give a document of a notebook, as its newest revision or an older one says, with all round it.

    Raises
    ------
    InputError
        If there is no such document or revision.
    NotebookError
        If it can't be read, or a newer Lumped wrote it.
    """
    history = notebook.history(document)
    revision = history[-1] if number is None else notebook.revision(document, number)
    linking = notebook.linking_to(document)
    derived = [each for each in linking if _of(document, each.links.get(DERIVED))]
    using = [each for each in linking if each not in derived and each.kind != "outcome"]
    uses = [target for name, target in revision.links.items() if name != DERIVED]
    origin = revision.links.get(DERIVED)
    return Kept(
        revision=revision, history=history, given=_given(notebook, revision),
        text="" if revision.removed else file_text(notebook, revision),
        outcomes=outcomes_of(notebook, document) if revision.kind == "sculpture" else (),
        made_from=_related(notebook.referred(origin)) if origin is not None else None,
        made_into=tuple(map(_related, derived)), used_by=tuple(map(_related, using)),
        uses=tuple(_related(notebook.referred(each)) for each in uses),
    )  # fmt: skip


def _given(notebook: Notebook, revision: Revision) -> Given | None:
    if revision.removed or revision.kind not in ("sculpture", "recipe", "batch", "ingredient"):
        return None
    given = given_from(notebook, revision)
    if revision.kind != "recipe":
        return given
    return with_batches(notebook, given, revision.document)


def _of(document: str, target: Reference | None) -> bool:
    return target is not None and target.document == document


def _related(revision: Revision) -> Related:
    return Related(document=revision.document, kind=revision.kind, title=revision.title, number=revision.number)
