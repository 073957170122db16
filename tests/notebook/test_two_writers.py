"""Two programs in one notebook at once: none of their writes lost, none double, numbers without gaps."""

import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.notebook.trials import Nursery, two_writers

from lumped.errors import InputError
from lumped.notebook import open_notebook

WRITES = (500, 500)  # revisions and batches of each writer, on a file; `make long` lets each write 10,000 times
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


def test_of_two_who_save_after_the_same_revision_one_is_told(place) -> None:
    told: list[InputError] = []
    with open_notebook(place) as one, open_notebook(place) as other:
        document = one.save("note", {"title": "Salt", "by": 0}).document
        for number in range(1, 21):
            together = threading.Barrier(2)

            def save(notebook, number=number, together=together) -> None:
                together.wait()
                try:
                    notebook.save("note", {"title": "Salt", "by": number}, document=document, after=number)
                except InputError as error:
                    told.append(error)

            threads = [threading.Thread(target=save, args=(each,)) for each in (one, other)]
            for thread in threads:
                thread.start()
            for thread in threads:
                thread.join()
        assert [each.number for each in one.history(document)] == list(range(1, 22))
    assert {error.code for error in told} == {"document-moved-on"}
    assert len(told) == 20


def test_one_sees_at_once_what_the_other_has_saved(place) -> None:
    with open_notebook(place, who="ann") as one, open_notebook(place, who="ben") as other:
        saved = one.save("note", {"title": "Salt"})
        assert other.revision(saved.document) == saved
        assert other.save("note", {"title": "Salt", "more": True}, document=saved.document, after=1).number == 2
        assert [each.made_by for each in one.history(saved.document)] == ["ann", "ben"]
