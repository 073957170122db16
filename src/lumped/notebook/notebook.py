"""A notebook: documents, readings, and the care for both."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from types import TracebackType

from lumped.notebook.backing_up import copy_file, free_name
from lumped.notebook.copying import copy_contents
from lumped.notebook.frames import Frames
from lumped.notebook.kinds import Kinds
from lumped.notebook.log import Log
from lumped.notebook.place import Place, usual_place
from lumped.notebook.proving import prove
from lumped.notebook.records import Contents
from lumped.notebook.shelf import Shelf
from lumped.notebook.store import Store
from lumped.notebook.taking import Taken, contents_of, take_in
from lumped.notebook.verifying import Soundness, verify

__all__ = ["Notebook"]


class Notebook(Shelf, Log):
    """One person's or lab's store; `open_notebook` gives one.

    Use it in a `with` block, or call `close`. It may be used by several threads at once.
    """

    def __init__(
        self, store: Store, *, kinds: Kinds, who: str, clock: Callable[[], datetime], backup: Path | str | None
    ) -> None:
        super().__init__(store, kinds=kinds, who=who, clock=clock)
        self.migrated_from = backup
        """The backup that was made because the notebook was an older one; None if it was not."""

    @property
    def place(self) -> Place:
        """Where it lies."""
        return self._store.place

    @property
    def read_only(self) -> bool:
        """Whether it can only be read."""
        return self._store.read_only

    def close(self) -> None:
        """Let go of the file or the server."""
        self._store.close()

    def __enter__(self) -> "Notebook":
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()

    def backup(self, target: Path | None = None) -> Path:
        """Copy the notebook as it is at one moment, others may go on writing; see that the copy is sound.

        Parameters
        ----------
        target : Path, optional
            A file that is not there yet; in the folder `backups`, by the moment, if left out.

        Returns
        -------
        Path
            The copy: a notebook in a file, even of one on a server.

        Raises
        ------
        InputError
            If there is something of that name, or the folder of a named one is missing.
        NotebookError
            If it can't be read or written; then no file is left.
        """
        to = target or free_name(self._beside(), self._clock())
        if self.place.file is not None:
            copy_file(self._store, to, make_folder=target is None)
        else:
            copy_contents(self.contents(), to, self._clock(), make_folder=target is None)
        return to

    def _beside(self) -> Path:
        """Give the file beside which backups go: where the notebook lies, or where one usually would."""
        file = self.place.file
        return usual_place() if file is None or self.read_only else file

    def verify(self) -> Soundness:
        """See whether everything that was written is still there as it was written."""
        return verify(self._store)

    def contents(self) -> Contents:
        """Read everything out, as it is at one moment."""
        with self._store.reading() as connection:
            return contents_of(connection)

    def take_in(self, contents: Contents) -> Taken:
        """Add everything of another notebook that is not here yet; all of it, or nothing.

        Raises
        ------
        InputError
            If it does not hold together, or a document has gone on differently here.
        NotebookError
            If it can't be written.
        """
        prove(contents)
        with self._store.writing() as connection:
            return take_in(connection, contents)

    @property
    def frames(self) -> Frames:
        """What is in it as pandas frames."""
        return Frames(self)
