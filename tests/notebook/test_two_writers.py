"""Two programs in one notebook at once: none of their writes lost, none double, numbers without gaps."""

import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.notebook.children import Nursery
from tests.notebook.trials import two_writers

from lumped.errors import InputError
from lumped.notebook import open_notebook
from lumped.notebook.documents import add_revision

WRITES = (500, 500)  # revisions and stretches of each writer, on a file; `make long` lets each write 10,000 times
ON_SERVER = (150, 150)


@pytest.fixture(scope="module")
def nursery() -> Iterator[Nursery]:
    started = Nursery()
    yield started
    started.close()


def test_two_programs_writing_at_once_lose_nothing_and_write_nothing_twice(
    place, nursery: Nursery, tmp_path: Path
) -> None:
    saves, appends = WRITES if isinstance(place, Path) else ON_SERVER
    assert two_writers(place, tmp_path, nursery, saves=saves, appends=appends).problems == ()


def test_who_saves_after_a_revision_that_is_no_longer_the_newest_is_told(place) -> None:
    told: list[InputError] = []
    with open_notebook(place, who="ann") as one, open_notebook(place, who="ben") as other:
        first = one.save("note", {"title": "Salt"})

        def save() -> None:
            try:
                other.save("note", {"title": "Salt", "by": "ben"}, document=first.document, after=1)
            except InputError as error:
                told.append(error)

        waiting = threading.Thread(target=save)
        with one._store.writing() as connection:  # ann is in the middle of saving the second while ben begins
            add_revision(connection, first)
            waiting.start()
            waiting.join(0.3)
        waiting.join()
        assert [each.made_by for each in one.history(first.document)] == ["ann", "ann"]
    assert [str(error) for error in told] == [
        "“Salt” has gone on meanwhile: ann saved revision 2. Look at it, then save again."
    ]


def test_one_sees_at_once_what_the_other_has_saved(place) -> None:
    with open_notebook(place, who="ann") as one, open_notebook(place, who="ben") as other:
        saved = one.save("note", {"title": "Salt"})
        assert other.revision(saved.document) == saved
        assert other.save("note", {"title": "Salt", "more": True}, document=saved.document, after=1).number == 2
        assert [each.made_by for each in one.history(saved.document)] == ["ann", "ben"]
