"""Whatever is done to a notebook: every revision keeps its hash, and what goes out and comes back is the same."""

import shutil
import tempfile
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.notebook.making import bodies, contents

from lumped.errors import InputError
from lumped.notebook import hash_of, open_notebook
from lumped.notebook.files import read_contents, write_contents

PLAIN = bodies().map(lambda body: {key: each for key, each in body.items() if key not in ("kind", "schema", "title")})
EDITS = st.lists(
    st.one_of(
        st.tuples(st.just("begin"), PLAIN),
        st.tuples(st.just("save"), st.integers(0, 20), PLAIN),
        st.tuples(st.just("remove"), st.integers(0, 20)),
        st.tuples(st.just("restore"), st.integers(0, 20), st.integers(0, 20)),
        st.tuples(st.just("derive"), st.integers(0, 20), PLAIN),
    ),
    max_size=12,
)


def play(notebook, edits):
    """Do the edits; give the bodies that each document went through, as plain Python holds them."""
    expected: dict[str, list[dict | None]] = {}
    for what, *details in edits:
        ids = list(expected)
        document = ids[details[0] % len(ids)] if ids and what != "begin" else None
        if what == "begin" or document is None:
            body = details[-1] if isinstance(details[-1], dict) else {}
            expected[notebook.save("note", body, title="x").document] = [body]
        elif what == "save":
            notebook.save("note", details[1], title="x", document=document)
            expected[document].append(details[1])
        elif what == "remove" and expected[document][-1] is None:
            with pytest.raises(InputError, match="is removed already"):
                notebook.remove(document)
        elif what == "remove":
            notebook.remove(document)
            expected[document].append(None)
        elif what == "restore":
            number = details[1] % len(expected[document]) + 1
            if expected[document][number - 1] is None:
                with pytest.raises(InputError, match="is its removal"):
                    notebook.restore(document, number)
                continue
            notebook.restore(document, number)
            expected[document].append(expected[document][number - 1])
        elif expected[document][-1] is not None:
            origin = notebook.revision(document).reference
            made = notebook.save("note", details[1], title="x", derived_from=origin)
            expected[made.document] = [details[1]]
    return expected


@settings(max_examples=40)
@given(edits=EDITS)
def test_a_history_of_edits_replays_to_the_same_hashes(place_of_module, edits):
    with open_notebook(place_of_module) as notebook:
        expected = play(notebook, edits)
    with open_notebook(place_of_module) as notebook:
        for document, went_through in expected.items():
            history = notebook.history(document)
            assert [each.hash for each in history] == ["" if body is None else hash_of(body) for body in went_through]
            assert [each.body for each in history] == went_through
            assert [each.number for each in history] == list(range(1, len(history) + 1))
            replayed, *others = [body for body in went_through if body is not None]
            again = notebook.save("note", replayed, title="x")
            for body in others:
                notebook.save("note", body, title="x", document=again.document)
            kept = [each.hash for each in history if each.hash]
            assert [each.hash for each in notebook.history(again.document)] == kept
        assert notebook.verify().problems == ()


@pytest.fixture(scope="module", params=["file", "server"])
def place_of_module(request, tmp_path_factory):
    """One notebook for all examples: each begins documents of its own."""
    if request.param == "file":
        yield tmp_path_factory.mktemp("histories") / "notebook.sqlite"
        return
    server = request.getfixturevalue("server")
    address = server.fresh()
    yield address
    server.drop(address)


@pytest.fixture(scope="module", params=["file", "server"])
def fresh(request):
    """A way to a new place, and away with it."""

    @contextmanager
    def on_file():
        folder = tempfile.mkdtemp()
        yield Path(folder, "notebook.sqlite")
        shutil.rmtree(folder)

    @contextmanager
    def on_server():
        server = request.getfixturevalue("server")
        address = server.fresh()
        yield address
        server.drop(address)

    return on_file if request.param == "file" else on_server


@settings(max_examples=12)
@given(all=contents(), ending=st.sampled_from(["", ".zip", ".json"]))
def test_what_is_exported_and_brought_back_is_the_same_notebook(fresh, all, ending):
    with tempfile.TemporaryDirectory() as folder, fresh() as one, fresh() as other:
        with open_notebook(one) as notebook:
            notebook.take_in(all)
            assert notebook.contents().fingerprint == all.fingerprint
            write_contents(notebook.contents(), Path(folder, f"out{ending}"))
        with open_notebook(other) as notebook:
            taken = notebook.take_in(read_contents(Path(folder, f"out{ending}")))
            assert notebook.contents().fingerprint == all.fingerprint
            assert taken.revisions == sum(map(len, all.documents.values()))
            assert notebook.verify().problems == ()


def test_taking_in_adds_what_is_new_and_leaves_what_is_here(place, tmp_path):
    with open_notebook(place) as here, open_notebook(tmp_path / "there.sqlite") as there:
        first = here.save("note", {"title": "Quay"})
        series = here.begin_series("R", unit="Ω", instrument="meter", method="four needles")
        here.append(series.id, [1.0, 2.0])
        there.take_in(here.contents())
        second = there.save("note", {"title": "Quay, east"}, document=first.document)
        there.append(series.id, [3.0])
        taken = here.take_in(there.contents())
        assert (taken.documents, taken.revisions, taken.readings, taken.already) == (0, 1, 1, 1)
        assert here.revision(first.document) == second
        assert here.readings(series.id).value.tolist() == [1.0, 2.0, 3.0]
        assert here.entries(words="east")
        assert here.take_in(there.contents()).as_dict()["revisions"] == 0


def test_two_that_went_on_differently_are_not_mixed(place, tmp_path):
    with open_notebook(place) as here, open_notebook(tmp_path / "there.sqlite") as there:
        first = here.save("note", {"title": "Quay"})
        series = here.begin_series("R", unit="Ω", instrument="meter", method="four needles")
        there.take_in(here.contents())
        there.save("note", {"title": "New there"})
        here.save("note", {"title": "Quay, west"}, document=first.document)
        there.save("note", {"title": "Quay, east"}, document=first.document)
        with pytest.raises(InputError, match="“Quay, east” has gone on differently here and there, from revision 2 on"):
            here.take_in(there.contents())
        assert [each.title for each in here.entries()] == ["Quay, west"]
        here.append(series.id, [1.0])
        with open_notebook(tmp_path / "third.sqlite") as third:
            third.take_in(there.contents())
            third.append(series.id, [2.0])
            with pytest.raises(InputError, match="has gone on differently"):
                here.take_in(third.contents())


def test_a_backup_is_the_same_notebook_while_somebody_goes_on_writing(place, tmp_path):
    copies = tmp_path / "copies"
    copies.mkdir()
    with open_notebook(place) as notebook:
        first = notebook.save("note", {"title": "Quay"})
        series = notebook.begin_series("R", unit="Ω", instrument="meter", method="four needles")
        with notebook.record(series.id) as recorder:
            recorder.wait(recorder.add(1.0))
            before = notebook.contents().fingerprint
            copy = notebook.backup(copies / "copy.sqlite")
            recorder.add(2.0)
        with open_notebook(copy) as backup:
            assert backup.contents().fingerprint == before
            assert backup.revision(first.document) == first
            assert backup.verify().sound
        assert [each.name for each in copy.parent.iterdir() if "wal" not in each.name and "shm" not in each.name] == [
            "copy.sqlite"
        ]
        with pytest.raises(InputError, match="is there already, and nothing is overwritten"):
            notebook.backup(copy)


def test_two_backups_in_one_second_are_two_files(tmp_path):
    with open_notebook(tmp_path / "lab.sqlite", clock=lambda: datetime(2026, 5, 9, 14, tzinfo=UTC)) as notebook:
        names = {notebook.backup().name for _ in range(3)}
    stem = "lab-20260509T140000Z"
    assert names == {f"{stem}.sqlite", f"{stem}-2.sqlite", f"{stem}-3.sqlite"}
