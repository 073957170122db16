"""The documents of a notebook: saved as revisions, found, compared, brought back."""

from collections.abc import Mapping
from dataclasses import replace

from lumped.errors import InputError
from lumped.notebook import documents as stored
from lumped.notebook.canonical import Body, hash_of
from lumped.notebook.comparing import Difference, differences
from lumped.notebook.identity import new_id
from lumped.notebook.keeper import Keeper
from lumped.notebook.lines import NOTE_LIMIT, TITLE_LIMIT, plain_line, shown
from lumped.notebook.records import DERIVED, Entry, Revision
from lumped.notebook.reference import Reference

__all__ = ["Shelf"]

LARGEST_NUMBER = 2**31 - 1  # what both databases hold


class Shelf(Keeper):
    """Documents; a `Notebook` is one."""

    def save(
        self,
        kind: str,
        body: Body,
        *,
        document: str | None = None,
        title: str | None = None,
        note: str = "",
        links: Mapping[str, Reference] | None = None,
        derived_from: Reference | None = None,
        after: int | None = None,
        schema: int | None = None,
    ) -> Revision:
        """Save a document: a revision is added, and nothing is overwritten.

        Parameters
        ----------
        kind : str
            Its kind.
        body : mapping
            What it holds.
        document : str, optional
            Id of the document that goes on; a new one begins if left out.
        title : str, optional
            Its title; the one in the body if left out.
        note : str
            Why.
        links : mapping of str to Reference, optional
            What it refers to, by the name it uses for it.
        derived_from : Reference, optional
            What it was made from.
        after : int, optional
            Save only if this is still the number of the newest revision.
        schema : int, optional
            Form of the body; the newest of its kind if left out.

        Returns
        -------
        Revision
            As it was saved; it is on the disk.

        Raises
        ------
        InputError
            If the body can't be read as its kind, a link leads nowhere, or somebody has saved a newer revision.
        NotebookError
            If it can't be written; then nothing was.
        """
        kind = self._line(kind)
        if not kind:
            raise InputError("document-kindless")
        hash_ = hash_of(body)
        reserved = sorted({"kind", "schema"} & set(body))
        if reserved:
            raise InputError("body-reserved", key=reserved[0])
        known = self._kinds[kind]
        form = known.schema if schema is None else schema
        if type(form) is not int or not 1 <= form <= LARGEST_NUMBER:
            raise InputError("document-form", form=repr(form)[:60])
        titled = self._line(known.title(body) if title is None else title, TITLE_LIMIT)
        if form == known.schema:
            known.check(body, titled)
        targets = {plain_line(name): target for name, target in (links or {}).items()}
        if derived_from is not None:
            targets[DERIVED] = derived_from
        return self._add(
            Revision(
                document=document or new_id(), kind=kind, number=0, schema=form, title=titled,
                body=body, hash=hash_, made_by=self.who, at=self._moment(), note=self._line(note, NOTE_LIMIT),
                links=targets,
            ),
            after=after, new=document is None,
        )  # fmt: skip

    def remove(self, document: str, *, note: str = "") -> Revision:
        """Remove a document: that is a revision too, and `restore` brings back any before it.

        Raises
        ------
        InputError
            If there is no such document.
        NotebookError
            If it can't be written.
        """
        newest = self.revision(document)
        if newest.removed:
            raise InputError("document-removed", title=newest.title)
        return self._add(replace(
            newest, body=None, hash="", made_by=self.who, at=self._moment(), note=self._line(note, NOTE_LIMIT),
            links={}, restored=None,
        ))  # fmt: skip

    def restore(self, document: str, number: int, *, note: str = "") -> Revision:
        """Bring back a revision: it is saved again as the newest.

        Raises
        ------
        InputError
            If there is no such document or revision, or it is a removal.
        NotebookError
            If it can't be written.
        """
        old = self.revision(document, number)
        if old.removed:
            raise InputError("restore-removal", title=old.title, number=number)
        return self._add(replace(
            old, made_by=self.who, at=self._moment(), note=self._line(note, NOTE_LIMIT), restored=old.number,
        ))  # fmt: skip

    def _add(self, revision: Revision, *, after: int | None = None, new: bool = False) -> Revision:
        with self._store.writing() as connection:
            stored.lock_document(connection, revision.document)
            newest = None if new else stored.newest_of(connection, revision.document)
            if not new and newest is None:
                raise InputError("document-unknown", name=revision.document)
            if after is not None and newest is not None and newest.number != after:
                raise InputError("document-moved-on", title=newest.title, number=newest.number, who=newest.made_by)
            return stored.add_revision(connection, revision)

    def revision(self, document: str, number: int | None = None) -> Revision:
        """Give a revision of a document, the newest if no number is named, as it was saved.

        Raises
        ------
        InputError
            If there is no such document or revision.
        """
        _refuse_what_names_nothing(document)
        with self._store.reading() as connection:
            if number is None:
                found = stored.newest_of(connection, document)
            else:
                found = stored.revision_of(connection, document, max(0, min(int(number), LARGEST_NUMBER)))
        if found is None and number is not None:
            raise InputError("revision-unknown", name=self.revision(document).title, number=str(number)[:20])
        if found is None:
            raise InputError("document-unknown", name=document)
        return found

    def body(self, revision: Revision) -> Body:
        """Give the body of a revision in the newest form of its kind; what is stored stays as it is.

        Raises
        ------
        InputError
            If the revision is a removal.
        NotebookError
            If it was written by a newer Lumped.
        """
        if revision.body is None:
            raise InputError("revision-removed", title=revision.title, number=revision.number)
        if revision.kind not in self._kinds:
            return revision.body
        return self._kinds[revision.kind].migrated(revision.body, revision.schema)

    def referred(self, reference: Reference) -> Revision:
        """Give the revision that a reference means: the first of its document with that body.

        Raises
        ------
        InputError
            If it is not in this notebook.
        """
        found = [each for each in self.history(reference.document) if each.hash == reference.hash]
        if not found:
            raise InputError("link-dead", name=str(reference)[:13], reference=str(reference))
        return found[0]

    def holding(self, kind: str, body: Body) -> Revision | None:
        """Give the newest revision of a kind that says just this; None if there is none."""
        with self._store.reading() as connection:
            return stored.revision_with(connection, kind, hash_of(body))

    def linking_to(self, document: str, *, kind: str | None = None) -> tuple[Revision, ...]:
        """Give the documents (of a kind) whose newest revision refers to a document, the newest first."""
        with self._store.reading() as connection:
            return stored.linking_to(connection, document, kind)

    def form(self, revision: Revision) -> int:
        """Tell the form in which `body` gives a revision: the newest of its kind."""
        return self._kinds.newest_form(revision.kind, revision.schema)

    def history(self, document: str) -> tuple[Revision, ...]:
        """Give all revisions of a document, the first first.

        Raises
        ------
        InputError
            If there is no such document.
        """
        _refuse_what_names_nothing(document)
        with self._store.reading() as connection:
            found = stored.history_of(connection, document)
        if not found:
            raise InputError("document-unknown", name=document)
        return found

    def entries(self, *, kind: str | None = None, words: str = "", removed: bool = False) -> tuple[Entry, ...]:
        """List documents, the newest first: of a kind, with all of these words, or those that were removed."""
        with self._store.reading() as connection:
            return stored.entries(connection, kind=kind, words=words, removed=removed)

    def find(self, name: str) -> Revision:
        """Give the revision that a person means.

        Parameters
        ----------
        name : str
            A title, an id or its beginning; then, if not the newest is meant, `@` with a number or the beginning of
            a hash.

        Raises
        ------
        InputError
            If there is none, or it could be several.

        Examples
        --------
        >>> from tempfile import TemporaryDirectory
        >>> from lumped.notebook import open_notebook
        >>> with TemporaryDirectory() as folder, open_notebook(folder) as notebook:
        ...     saved = notebook.save("note", {"title": "Salt"})
        ...     notebook.find("salt@1") == notebook.find(saved.document)
        True
        """
        _refuse_what_names_nothing(name)
        with self._store.reading() as connection:
            found, which = stored.find_documents(connection, name), None
            if not found and "@" in name:
                name, which = name.rsplit("@", 1)
                found = stored.find_documents(connection, name)
        if not found:
            raise InputError("document-unknown", name=name)
        if len(found) > 1:
            raise InputError(
                "document-ambiguous", name=name, count=len(found), ids=", ".join(each[:13] for each in found[:5])
            )
        if which is None:
            return self.revision(found[0])
        if which.isdecimal() and len(which) < 9:
            return self.revision(found[0], int(which))
        matching = [each for each in self.history(found[0]) if each.hash.startswith(which.lower()) and each.hash]
        if not matching or len(which) < 4:
            raise InputError("revision-unknown", name=name, number=which)
        return matching[-1]

    def compare(self, before: Revision, after: Revision) -> tuple[Difference, ...]:
        """Tell how two revisions differ, of one document or of two, in their newest form.

        Raises
        ------
        InputError
            If they are of different kinds.
        """
        if before.kind != after.kind:
            raise InputError("compare-kinds", one=before.kind, other=after.kind)
        bodies = [{} if each.removed else self.body(each) for each in (before, after)]
        return differences(bodies[0], bodies[1], keyed_by=self._kinds[after.kind].keyed_by)


def _refuse_what_names_nothing(name: str) -> None:
    """Refuse what no database can look for, and what is longer than a title with a hash."""
    if len(name) > TITLE_LIMIT + 65 or "\0" in name or any("\ud800" <= letter <= "\udfff" for letter in name):
        raise InputError("document-unknown", name=shown(name))
