"""What people do without meaning harm: links to files, folders changed, forks, odd numbers. Nothing is lost by it."""

import os
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, datetime

import numpy as np
import pandas as pd
import pytest
from tests.notebook.test_verifying import file  # noqa: F401 - the fixture

from lumped.errors import InputError
from lumped.notebook import Kind, Reference, open_notebook
from lumped.notebook.files import read_contents, write_contents


def begin_series(notebook):
    return notebook.begin_series("Roll", unit="Ω", instrument="meter", method="two nails").id


def forked(work) -> Callable[[], str]:
    """Begin something in a forked program; calling what is given back waits for what it says."""
    ours, its = os.pipe()
    child = os.fork()
    if not child:
        try:
            os.write(its, str(work()).encode())
        except BaseException as error:
            os.write(its, f"{type(error).__name__}: {error}".encode())
        os._exit(0)
    os.close(its)

    def told() -> str:
        with os.fdopen(ours, "rb") as said:
            text = said.read().decode()
        os.waitpid(child, 0)
        return text

    return told


needs_fork = pytest.mark.skipif(not hasattr(os, "fork"), reason="programs don't fork here")


# a file by other names


def test_a_notebook_that_is_opened_by_a_link_is_written_and_acknowledged(tmp_path):
    (tmp_path / "there").mkdir()
    (tmp_path / "link.sqlite").symlink_to(tmp_path / "there" / "notebook.sqlite")
    with open_notebook(tmp_path / "link.sqlite") as by_link, open_notebook(tmp_path / "there") as itself:
        by_link.save("note", {"title": "by the link"})
        itself.save("note", {"title": "by its name"})
        assert len(by_link.entries()) == len(itself.entries()) == 2


def test_a_program_that_changes_its_folder_goes_on_with_the_same_notebook(tmp_path, monkeypatch):
    (tmp_path / "elsewhere").mkdir()
    monkeypatch.chdir(tmp_path)
    with open_notebook("notebook.sqlite") as notebook:
        notebook.save("note", {"title": "before"})
        monkeypatch.chdir("elsewhere")
        notebook.save("note", {"title": "after"})
        assert notebook.backup().parent == tmp_path / "backups"
        assert notebook.verify().sound
    assert list((tmp_path / "elsewhere").iterdir()) == []


# a program that forks


@needs_fork
@pytest.mark.parametrize("its_own", [False, True])
def test_what_a_forked_program_is_acknowledged_is_there(place, its_own):
    ours = open_notebook(place)
    ours.save("note", {"title": "ours"})
    go, its = os.pipe()

    def work():
        os.read(go, 1)
        notebook = open_notebook(place) if its_own else ours
        return notebook.save("note", {"title": "of the fork"}).title

    told = forked(work)
    ours.close()  # the last to let go of a file takes its log away
    with open_notebook(place) as third:
        third.save("note", {"title": "of a third"})
        os.write(its, b"!")
        assert told() == "of the fork"
        third.save("note", {"title": "again"})
    with open_notebook(place) as notebook:
        assert {each.title for each in notebook.entries()} == {"ours", "of the fork", "of a third", "again"}


@needs_fork
def test_a_program_forked_in_the_middle_of_a_transaction_is_told_to_keep_off(place):
    with open_notebook(place) as notebook, notebook._store.reading():
        told = forked(lambda: notebook.save("note", {"title": "of the fork"}))()
    assert told.startswith("NotebookError: ")
    assert "forked" in told
    with open_notebook(place) as notebook:
        assert notebook.entries() == ()


@needs_fork
def test_a_recorder_takes_no_reading_in_a_fork_where_nobody_writes_it(tmp_path):
    with open_notebook(tmp_path) as notebook:
        series = begin_series(notebook)
        with notebook.record(series) as recorder:
            recorder.wait(recorder.add(1.0))
            assert "takes no more readings" in forked(lambda: recorder.add(2.0))()
            recorder.add(3.0)
        assert notebook.readings(series).value.tolist() == [1.0, 3.0]


# odd readings


@pytest.mark.parametrize("where", [5, -1, 0.5, 1.0, True, "1", None])
def test_a_remark_that_belongs_to_no_reading_is_refused_and_not_dropped(tmp_path, where):
    with open_notebook(tmp_path) as notebook:
        with pytest.raises(InputError, match="remark"):
            notebook.append(begin_series(notebook), [1.0, 2.0], remarks={where: "fell off"})
        assert notebook.verify().readings == 0


def test_a_remark_may_be_placed_by_a_number_of_numpy(tmp_path):
    with open_notebook(tmp_path) as notebook:
        series = begin_series(notebook)
        notebook.append(series, [1.0, np.nan], remarks={np.int64(1): "fell off"})
        assert notebook.readings(series).remarks == {2: "fell off"}
        assert notebook.verify().sound


def test_a_remark_of_spaces_says_not_why_a_value_is_missing(tmp_path):
    with open_notebook(tmp_path) as notebook, pytest.raises(InputError, match=r"no. 1 has no value"):
        notebook.append(begin_series(notebook), [np.nan], remarks={0: "  "})


def test_what_is_masked_is_not_taken_for_a_value(tmp_path):
    with open_notebook(tmp_path) as notebook, pytest.raises(InputError, match=r"no. 2 has no value"):
        notebook.append(begin_series(notebook), np.ma.array([1.0, 99.0], mask=[False, True]))


@pytest.mark.parametrize("values", [["4.7", "x"], [1 + 2j], [[1, 2], [3]], {1: 2}, [10**400]])
def test_what_is_no_number_is_refused_in_words(tmp_path, values):
    with open_notebook(tmp_path) as notebook, pytest.raises(InputError, match="numbers"):
        notebook.append(begin_series(notebook), values)


@pytest.mark.parametrize(
    "at",
    [
        [1.7e9, 1.7e9 + 0.5],  # seconds, as time.time() gives them: not microseconds
        ["2026-05-09", "2026-05-10"],
        [datetime(2026, 5, 9, tzinfo=UTC), 5],
        np.array([2**64 - 1, 5], dtype=np.uint64),
        [10**30, 5],
        np.array([5, 6], dtype="m8[s]"),
    ],
)
def test_moments_that_could_be_misread_are_refused(tmp_path, at):
    with open_notebook(tmp_path) as notebook, pytest.raises(InputError, match="moment"):
        notebook.append(begin_series(notebook), [1.0, 2.0], at=at)


def test_readings_taken_from_a_frame_keep_their_moments(tmp_path):
    with open_notebook(tmp_path) as notebook:
        first, second = begin_series(notebook), begin_series(notebook)
        notebook.append(first, [1.0, 2.0], at=[datetime(1969, 7, 1, tzinfo=UTC), datetime(2026, 5, 9, 14, 30)])
        frame = notebook.frames.readings(first)
        for at in (frame.index, frame.index.to_series(), frame.index.tz_convert("Europe/Paris"), list(frame.index)):
            notebook.append(second, frame["value"], at=at)
        assert notebook.readings(second).at.tolist() == 4 * notebook.readings(first).at.tolist()
        assert isinstance(frame.index, pd.DatetimeIndex)


# odd documents


@pytest.mark.parametrize("form", [0, -1, True, 1.5, "1", 10**12])
def test_a_form_that_is_no_whole_number_from_1_on_is_refused(tmp_path, form):
    with open_notebook(tmp_path) as notebook, pytest.raises(InputError, match="form"):
        notebook.save("note", {"title": "Salt"}, schema=form)


def test_a_link_to_a_removal_is_refused(tmp_path):
    with open_notebook(tmp_path) as notebook:
        gone = notebook.remove(notebook.save("note", {"title": "gone"}).document)
        with pytest.raises(InputError, match="refers to"):
            notebook.save("note", {"title": "Salt"}, links={"from": Reference(gone.document, "")})


def test_two_links_whose_names_differ_in_a_space_are_both_kept(tmp_path):
    with open_notebook(tmp_path / "notebook.sqlite") as notebook:
        one, other = (notebook.save("note", {"title": title}).reference for title in ("one", "other"))
        both = notebook.save("note", {"title": "both"}, links={"a": one, " a": other})
        assert both.links == {"a": one, " a": other}
        write_contents(notebook.contents(), tmp_path / "all.zip")
        assert read_contents(tmp_path / "all.zip").fingerprint == notebook.contents().fingerprint


def test_spaces_round_a_kind_do_not_let_pass_what_it_refuses(tmp_path):
    def refuse(body, name):
        raise InputError("readings-none")

    with open_notebook(tmp_path, kinds=[Kind(name="pot", check=refuse)]) as notebook, pytest.raises(InputError):
        notebook.save(" pot ", {"title": "Salt"})


@pytest.mark.parametrize("number", [True, "1", np.int64(1)])
def test_a_restored_revision_is_sealed_with_its_number_however_it_was_named(tmp_path, number):
    with open_notebook(tmp_path) as notebook:
        saved = notebook.save("note", {"title": "Salt"})
        assert notebook.restore(saved.document, number).restored == 1
        assert notebook.verify().sound


@pytest.mark.parametrize("number", [10**30, -(10**30)])
def test_a_number_beyond_all_revisions_is_told(tmp_path, number):
    with open_notebook(tmp_path) as notebook:
        saved = notebook.save("note", {"title": "Salt"})
        with pytest.raises(InputError, match="has no revision"):
            notebook.revision(saved.document, number)


@pytest.mark.parametrize("body", [[1], None, "text"])
def test_a_body_that_is_no_table_is_refused_in_words(tmp_path, body):
    with open_notebook(tmp_path) as notebook, pytest.raises(InputError, match="can't hold"):
        notebook.save("note", body)


# damage of other sorts


@pytest.mark.parametrize(
    "order",
    [
        "UPDATE readings SET value = 'abc' WHERE number = 3",
        "UPDATE readings SET remark = x'41' WHERE number = 3",
        "UPDATE revisions SET at = 9000000000000000000",
        "UPDATE revisions SET at = 'x'",
        "UPDATE revisions SET title = CAST(title AS BLOB)",  # one bit of the head of a row
        "UPDATE revisions SET body = CAST(body AS BLOB)",
        "UPDATE revisions SET seal = CAST(seal AS BLOB)",
        "UPDATE documents SET kind = CAST(kind AS BLOB)",
        "UPDATE series SET at = 9000000000000000000",
        "UPDATE series SET title = CAST(title AS BLOB)",
        "UPDATE stretches SET size = 'x' WHERE first = 11",
        "UPDATE stretches SET seal = CAST(seal AS BLOB)",
        "UPDATE search SET words = 'nothing'",
        "DELETE FROM search",
        "DROP TABLE search",
        "DELETE FROM notebook",
        "INSERT INTO notebook VALUES ('another', 0)",
    ],
)
def test_rubbish_of_any_type_is_found_and_the_rest_is_looked_at(file, order):  # noqa: F811
    with closing(sqlite3.connect(file)) as connection:
        connection.execute(order)
        connection.commit()
    with open_notebook(file) as notebook:
        assert not notebook.verify().sound


# odd words


ODD = ["a\0b", "half \ud800", 60_000 * "x", 2_000 * "many ", "x@" + 5_000 * "1"]


@pytest.mark.parametrize("words", ODD, ids=["nul", "half", "long", "many", "number"])
def test_words_that_stand_nowhere_are_looked_for_and_not_found(place, words):
    with open_notebook(place) as notebook:
        saved = notebook.save("note", {"title": "Salt"})
        for look in (notebook.find, notebook.revision, notebook.history):
            with pytest.raises(InputError) as told:
                look(words)
            assert 20 < len(str(told.value)) < 300
        assert notebook.entries(words=words) == ()
        assert notebook.find(saved.document) == saved
